using RigScenarios.Limits;

namespace RigScenarios.Batteries;

/// <summary>What ended a discharge.</summary>
public enum EndCause
{
    /// <summary>The pack's terminal voltage fell to its cut-off.</summary>
    VoltageCutoff,

    /// <summary>The state of charge of the near well fell to zero.</summary>
    Empty,

    /// <summary>The pack cannot deliver the demand at any voltage.</summary>
    PowerLimit,

    /// <summary>The current reached the pack's limit.</summary>
    OverCurrent,

    /// <summary>The pack's temperature reached its limit.</summary>
    OverTemperature,

    /// <summary>The run reached its time limit; the pack could go on.</summary>
    TimeLimit,

    /// <summary>The terminal voltage fell to the voltage that the run was asked to watch.</summary>
    WatchedVoltage,

    /// <summary>The state of charge of the near well fell to the one that the run was asked to watch.</summary>
    WatchedCharge,

    /// <summary>A charge: the state of charge of the near well rose to one, or that of the pack to the one asked for.</summary>
    Full,

    /// <summary>A charge: the pack's temperature fell to the lower end of its charge window.</summary>
    UnderTemperature,
}

/// <summary>The end causes as reasons, and in words.</summary>
public static class EndCauseWords
{
    /// <summary>The cause as the reason why something stopped.</summary>
    /// <param name="cause">The cause; one at which a run ends that was only watched is none.</param>
    /// <param name="element">The device whose inner battery it is; null for the battery of the rig.</param>
    /// <exception cref="ArgumentOutOfRangeException">The cause stops nothing.</exception>
    public static StopReason AsStop(this EndCause cause, string? element = null) => new(
        cause switch
        {
            EndCause.VoltageCutoff => StopKind.VoltageCutoff,
            EndCause.Empty => StopKind.Empty,
            EndCause.PowerLimit => StopKind.PowerLimit,
            EndCause.OverCurrent => StopKind.OverCurrent,
            EndCause.OverTemperature => StopKind.OverTemperature,
            EndCause.TimeLimit => StopKind.TimeOver,
            _ => throw new ArgumentOutOfRangeException(nameof(cause), $"{cause} stops nothing."),
        },
        element);

    /// <summary>The cause in the words of messages, tables and files: "voltage cut-off", "empty", "power limit", …</summary>
    public static string InWords(this EndCause cause) => cause switch
    {
        EndCause.WatchedVoltage => "watched voltage",
        EndCause.WatchedCharge => "watched charge",
        EndCause.Full => "full",
        EndCause.UnderTemperature => "under-temperature",
        _ => cause.AsStop().ToString(),
    };
}
