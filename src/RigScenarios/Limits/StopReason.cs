namespace RigScenarios.Limits;

/// <summary>
/// Why something stopped: the one list for devices, batteries and days. A new reason is a line here, a line in
/// <see cref="StopReason.ToString"/>, and the
/// model that finds it.
/// </summary>
public enum StopKind
{
    /// <summary>An element of the wiring ran short of voltage.</summary>
    ShortOfVoltage,

    /// <summary>The battery's voltage fell to its cut-off.</summary>
    VoltageCutoff,

    /// <summary>The battery's charge fell to zero.</summary>
    Empty,

    /// <summary>The battery cannot deliver what is asked at any voltage.</summary>
    PowerLimit,

    /// <summary>The current reached the battery's limit.</summary>
    OverCurrent,

    /// <summary>The battery's temperature reached its limit.</summary>
    OverTemperature,

    /// <summary>The battery is swapped, as planned; the restart after it counts as well.</summary>
    PlannedSwap,

    /// <summary>No battery is left, and none will come from a charger.</summary>
    NothingLeft,

    /// <summary>No battery is fit for use until one is charged.</summary>
    WaitingForCharge,

    /// <summary>Nothing stopped it: the time that was looked at is over.</summary>
    TimeOver,
}

/// <summary>Why something stopped.</summary>
/// <param name="Kind">The reason.</param>
/// <param name="Element">The element of the wiring that ran short, or the device whose inner battery ended; null where there is
/// none.</param>
public sealed record StopReason(StopKind Kind, string? Element = null)
{
    /// <summary>The reason in the words of files and tables: "drop-out of camera", "voltage cut-off", "planned swap", …</summary>
    public override string ToString() => Element is { } device && Kind != StopKind.ShortOfVoltage
        ? $"{Words} of the battery inside {device}" : Words;

    private string Words => Kind switch
    {
        StopKind.ShortOfVoltage => $"drop-out of {Element}",
        StopKind.VoltageCutoff => "voltage cut-off",
        StopKind.Empty => "empty",
        StopKind.PowerLimit => "power limit",
        StopKind.OverCurrent => "over-current",
        StopKind.OverTemperature => "over-temperature",
        StopKind.PlannedSwap => "planned swap",
        StopKind.NothingLeft => "nothing left",
        StopKind.WaitingForCharge => "waiting for charge",
        _ => "time limit",
    };
}
