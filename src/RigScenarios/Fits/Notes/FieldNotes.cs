using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Fits.Notes;

/// <summary>What somebody wrote down about one battery: how long it lasted on which days, logs, tests done. As it stands in a
/// file, with names of a scenario's builds and devices.</summary>
public sealed record FieldNotes
{
    /// <summary>A remark.</summary>
    public string? Note { get; init; }

    /// <summary>The scenario file whose builds and devices the notes name, from the folder of the notes; null where it is said
    /// elsewhere.</summary>
    public string? Scenario { get; init; }

    /// <summary>The build of notes and logs that name none; null for the scenario's first.</summary>
    public string? Build { get; init; }

    /// <summary>The air of notes and logs that say nothing of it; null for that of the scenario.</summary>
    public Temperature? Air { get; init; }

    /// <summary>The notes.</summary>
    public OrderedMap<WrittenNote> Notes { get; init; } = OrderedMap<WrittenNote>.Empty;

    /// <summary>The logs.</summary>
    public OrderedMap<WrittenLog> Logs { get; init; } = OrderedMap<WrittenLog>.Empty;

    /// <summary>What a power meter read at the inlet of a device, in the states in which it was read.</summary>
    public OrderedMap<PowerDraw> Meters { get; init; } = OrderedMap<PowerDraw>.Empty;

    /// <summary>What a capacity test gave; null without one.</summary>
    public CapacityTest? Capacity { get; init; }

    /// <summary>What a pulse test gave; null without one.</summary>
    public PulseTestDone? Pulse { get; init; }

    /// <summary>Whether all draws have one scale, or each device its own.</summary>
    public LoadScales Scales { get; init; }

    /// <summary>Devices whose draw is known for certain and does not scale.</summary>
    public IReadOnlyList<string> Known { get; init; } = [];

    /// <summary>Whether the thermometer of all notes and logs may be off by one amount, which is then fitted too.</summary>
    public bool AirIsUncertain { get; init; }
}

/// <summary>What is scaled by the notes.</summary>
public enum LoadScales
{
    /// <summary>All draws by one factor.</summary>
    Together,

    /// <summary>Each device by its own.</summary>
    Each,
}

/// <summary>A capacity test: a full battery emptied at a slow, measured current.</summary>
/// <param name="Charge">The charge that it gave; null where the energy is given.</param>
/// <param name="Energy">The energy that it gave; null where the charge is given.</param>
public sealed record CapacityTest(ElectricCharge? Charge = null, Energy? Energy = null);

/// <summary>A pulse test: the resistance after ten seconds of a step, over that of a new battery.</summary>
/// <param name="ResistanceGrowth">How many times that of a new battery.</param>
/// <param name="Temperature">The battery's temperature then; null for a room of 20 °C.</param>
public sealed record PulseTestDone(double ResistanceGrowth = 1, Temperature? Temperature = null);
