using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Fits.Notes;

/// <summary>What is the same in a note and a log: conditions, and what ran.</summary>
public abstract record WrittenUse
{
    /// <summary>The build that was used; null for the one of the file.</summary>
    public string? Build { get; init; }

    /// <summary>The day, for people.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>A remark, such as the weather.</summary>
    public string? Remark { get; init; }

    /// <summary>The air around the rig; null for that of the file.</summary>
    public Temperature? Air { get; init; }

    /// <summary>The battery's own temperature at the start; null for that of the air.</summary>
    public Temperature? StartTemperature { get; init; }

    /// <summary>Charge at the start; null means full.</summary>
    public Ratio? Charge { get; init; }

    /// <summary>What each device did, by its name in the kit.</summary>
    public OrderedMap<DeviceUse> Devices { get; init; } = OrderedMap<DeviceUse>.Empty;

    /// <summary>What the devices did that are not named; null means off.</summary>
    public DeviceUse? Others { get; init; }
}

/// <summary>One note: how long the battery lasted on a day.</summary>
public sealed record WrittenNote : WrittenUse
{
    /// <summary>What ran one after the other, where it was not the same all the time.</summary>
    public IReadOnlyList<WrittenStretch> Stretches { get; init; } = [];

    /// <summary>The day of the scenario whose blocks were kept, as what ran; null where the note says what ran.</summary>
    public string? AsPlanned { get; init; }

    /// <summary>How long it lasted; null where it was still running.</summary>
    public Duration? Lasted { get; init; }

    /// <summary>When it was last seen running, from the start; null where it ended.</summary>
    public Duration? StillRunningAfter { get; init; }

    /// <summary>The charge that was shown then; null where nobody looked.</summary>
    public Ratio? Shown { get; init; }

    /// <summary>What ended it: <c>battery</c> or a device by its name in the kit; null where nobody said.</summary>
    public string? EndedBy { get; init; }

    /// <summary>Whether the load was the same to a per cent all the time, as on a bench.</summary>
    public bool Steady { get; init; }

    /// <summary>How far the time is off, one standard deviation; null for 3 min.</summary>
    public Duration? ClockWithin { get; init; }
}

/// <summary>A stretch of a note in which what ran stayed the same.</summary>
public sealed record WrittenStretch
{
    /// <summary>How long; null for the last one, which goes on to the end.</summary>
    public Duration? Length { get; init; }

    /// <summary>What each device did, by its name in the kit.</summary>
    public OrderedMap<DeviceUse> Devices { get; init; } = OrderedMap<DeviceUse>.Empty;

    /// <summary>What the devices did that are not named; null means off.</summary>
    public DeviceUse? Others { get; init; }
}

/// <summary>One log of voltage and current over time.</summary>
public sealed record WrittenLog : WrittenUse
{
    /// <summary>The file, from the folder of the notes.</summary>
    public string File { get; init; } = "";

    /// <summary>The columns' names; those that are left out tell themselves.</summary>
    public LogColumnNames Columns { get; init; } = new();

    /// <summary>The columns' units; those that are left out tell themselves.</summary>
    public LogColumnUnits Units { get; init; } = new();

    /// <summary>What stands between two columns; null where it tells itself.</summary>
    public LogSeparator? Separator { get; init; }

    /// <summary>The decimal mark; null where it tells itself.</summary>
    public DecimalMark? DecimalMark { get; init; }

    /// <summary>Whether a row is the mean until the next one, or a sample.</summary>
    public LogRowKind Rows { get; init; }
}

/// <summary>The names of a log's columns.</summary>
/// <param name="Time">Time; null to find it.</param>
/// <param name="Voltage">Voltage at the battery; null to find it.</param>
/// <param name="Current">Current out of the battery; null to find it.</param>
public sealed record LogColumnNames(string? Time = null, string? Voltage = null, string? Current = null);

/// <summary>The units of a log's columns.</summary>
/// <param name="Time">Of the time; null to take it from the log.</param>
/// <param name="Voltage">Of the voltage; null to take it from the log.</param>
/// <param name="Current">Of the current; null to take it from the log.</param>
public sealed record LogColumnUnits(LogTimeUnit? Time = null, LogVoltageUnit? Voltage = null, LogCurrentUnit? Current = null);
