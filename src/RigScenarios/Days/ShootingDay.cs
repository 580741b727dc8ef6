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

    /// <summary>
    /// Temperature of the air at times of the day, in order; linear between them, flat before the first and after the last. A
    /// time that is
    /// not later than the one before lies on the next day. Empty for <see cref="Ambient"/> all day.
    /// </summary>
    public IReadOnlyList<AmbientPoint> AmbientPoints { get; init; } = [];

    /// <summary>The blocks, in order.</summary>
    public OrderedMap<DayBlock> Blocks { get; init; } = OrderedMap<DayBlock>.Empty;

    /// <summary>The length of all blocks together.</summary>
    public Duration Length => Duration.FromSeconds(Blocks.Values.Sum(block => block.Length.Seconds));

    /// <summary>The times of <see cref="AmbientPoints"/>, seconds from the day's own midnight, rising.</summary>
    internal IEnumerable<double> AmbientPointTimes()
    {
        var last = double.NegativeInfinity;
        var midnight = 0.0;
        foreach (var point in AmbientPoints)
        {
            var clock = point.Time.ToTimeSpan().TotalSeconds;
            if (midnight + clock <= last)
                midnight += 86400;
            last = midnight + clock;
            yield return last;
        }
    }

    // Lists compare by reference by themselves, and two days that say the same are the same.

    /// <summary>Whether two days say the same.</summary>
    public bool Equals(ShootingDay? other) =>
        other is not null && Title == other.Title && Starts == other.Starts && Ambient.Equals(other.Ambient)
        && AmbientPoints.SequenceEqual(other.AmbientPoints) && Blocks.Equals(other.Blocks);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Title, Starts, AmbientPoints.Count, Blocks);
}

/// <summary>Temperature of the air at a time of the day.</summary>
/// <param name="Time">The time.</param>
/// <param name="Temperature">The temperature.</param>
public sealed record AmbientPoint(TimeOnly Time, Temperature Temperature);

/// <summary>Takes with resets between them, repeated through a block, beginning with a take.</summary>
/// <param name="Take">Length of a take; above 0.</param>
/// <param name="Reset">Length of the reset after it; above 0.</param>
public sealed record TakeCycle(Duration Take, Duration Reset)
{
    /// <summary>The state of devices in a reset, by their names in the kit; one that isn't named and records in a take stands by,
    /// others stay as they are.</summary>
    public OrderedMap<PowerState> ResetStates { get; init; } = OrderedMap<PowerState>.Empty;
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

    /// <summary>Whether the camera rolls through all of it, so that nobody may swap; with <see cref="Cycle"/> only takes roll,
    /// whatever this says.</summary>
    public bool Rolling { get; init; }

    /// <summary>Takes and resets that repeat in it; null if the states hold all the time.</summary>
    public TakeCycle? Cycle { get; init; }

    /// <summary>The state of a device in the resets of this block.</summary>
    public PowerState StateInReset(string device) =>
        Cycle?.ResetStates.TryGetValue(device, out var state) == true ? state
        : StateOf(device) is PowerState.Record && Cycle is not null ? PowerState.Standby : StateOf(device);

    /// <summary>The state of a device in this block, in its takes where it has a cycle.</summary>
    public PowerState StateOf(string device) => States.TryGetValue(device, out var state) ? state : Others ?? PowerState.Off;
}
