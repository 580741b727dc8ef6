using RigScenarios.Builds;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Days;

/// <summary>A day of work: blocks one after the other.</summary>
public sealed record ShootingDay
{
    /// <summary>Its name for people; null to use the short name.</summary>
    public string? Title { get; init; }

    /// <summary>When the first block begins; null if clock times don't matter.</summary>
    public TimeOnly? Starts { get; init; }

    /// <summary>Temperature of the air on this day; null for that of the scenario.</summary>
    public Temperature? Ambient { get; init; }

    /// <summary>The blocks, in order.</summary>
    public OrderedMap<DayBlock> Blocks { get; init; } = OrderedMap<DayBlock>.Empty;

    /// <summary>The length of all blocks together.</summary>
    public Duration Length => Duration.FromSeconds(Blocks.Values.Sum(block => block.Length.Seconds));
}

/// <summary>A stretch of the day in which every device keeps one state.</summary>
public sealed record DayBlock
{
    /// <summary>Its name for people; null to use the short name.</summary>
    public string? Title { get; init; }

    /// <summary>How long it takes.</summary>
    public Duration Length { get; init; }

    /// <summary>The state of each device, by its name in the kit.</summary>
    public OrderedMap<PowerState> States { get; init; } = OrderedMap<PowerState>.Empty;

    /// <summary>The state of devices that <see cref="States"/> doesn't name; null means off.</summary>
    public PowerState? Others { get; init; }

    /// <summary>The state of a device in this block.</summary>
    public PowerState StateOf(string device) => States.TryGetValue(device, out var state) ? state : Others ?? PowerState.Off;
}
