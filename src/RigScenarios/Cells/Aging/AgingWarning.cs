namespace RigScenarios.Cells.Aging;

/// <summary>What a figure of aging rests on that is not as it should be. None of them changes the figure.</summary>
public enum AgingWarning
{
    /// <summary>It stood at a temperature at which the set was not tested.</summary>
    CalendarTemperature,

    /// <summary>It was cycled at a temperature at which the set was not tested.</summary>
    CycleTemperature,

    /// <summary>It was cycled at a rate at which the set was not tested.</summary>
    Rate,

    /// <summary>It was cycled to a depth at which the set was not tested.</summary>
    Depth,

    /// <summary>It stood at a charge at which the set was not tested.</summary>
    ChargeState,

    /// <summary>Longer, in time or in cycles, than the set was tested.</summary>
    BeyondTests,

    /// <summary>Charged below 10 °C: no set knows the plating of lithium.</summary>
    ColdCharge,

    /// <summary>Below 80 % of the capacity: no set knows the knee, after which it falls fast.</summary>
    Knee,

    /// <summary>A mean voltage was given that lies below the foot of the set's law.</summary>
    LowVoltage,

    /// <summary>The set knows no aging by standing, and the battery stood.</summary>
    NoCalendar,

    /// <summary>The resistance follows from the capacity by <see cref="Wear"/>, not from a law of its own.</summary>
    ResistanceByRule,

    /// <summary>The chemistry is not known: the set is the default.</summary>
    DefaultModel,

    /// <summary>More was measured than a new battery has.</summary>
    MeasuredAboveNew,

    /// <summary>The measured pace lies outside a quarter to four times that of the set, and was held there.</summary>
    PaceLimited,
}

/// <summary>The names of the warnings as files and JSON write them.</summary>
public static class AgingWarningNames
{
    /// <summary>The name in capital letters: CALENDAR_TEMPERATURE, R_BY_RULE, …</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is no warning.</exception>
    public static string Name(this AgingWarning warning) => warning switch
    {
        AgingWarning.CalendarTemperature => "CALENDAR_TEMPERATURE",
        AgingWarning.CycleTemperature => "CYCLE_TEMPERATURE",
        AgingWarning.Rate => "RATE",
        AgingWarning.Depth => "DEPTH",
        AgingWarning.ChargeState => "CHARGE_STATE",
        AgingWarning.BeyondTests => "LONG",
        AgingWarning.ColdCharge => "COLD_CHARGE",
        AgingWarning.Knee => "KNEE",
        AgingWarning.LowVoltage => "LOW_VOLTAGE",
        AgingWarning.NoCalendar => "NO_CALENDAR",
        AgingWarning.ResistanceByRule => "R_BY_RULE",
        AgingWarning.DefaultModel => "DEFAULT_MODEL",
        AgingWarning.MeasuredAboveNew => "MEASURED_ABOVE_NEW",
        AgingWarning.PaceLimited => "PACE_LIMITED",
        _ => throw new ArgumentOutOfRangeException(nameof(warning)),
    };
}
