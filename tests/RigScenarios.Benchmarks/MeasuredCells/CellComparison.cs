namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>What a measured discharge has given to the model that now predicts it.</summary>
internal enum RowUse
{
    /// <summary>The capacity is set so that this one is met: no error of the charge by construction.</summary>
    Set,

    /// <summary>The cold table was fitted on it, and its voltage gave resistance and activation energy.</summary>
    Fitted,

    /// <summary>Its voltage gave resistance and activation energy, its charge nothing.</summary>
    VoltageUsed,

    /// <summary>Nothing was taken from it.</summary>
    HeldOut,
}

/// <summary>A measured discharge beside the predicted one.</summary>
internal sealed record CellComparison(MeasuredDischarge Measured, double AmpereHours, double WattHours, double EndCelsius)
{
    /// <summary>Error of the charge, and so of the runtime at the measured current; 0.01 is 1 % too much.</summary>
    public double ChargeError => (AmpereHours / Measured.AmpereHours) - 1;

    /// <summary>Error of the delivered energy.</summary>
    public double EnergyError => (WattHours / Measured.WattHours) - 1;

    /// <summary>What the discharge has given to the model.</summary>
    public RowUse Use => (Measured.ChamberCelsius, Measured.Rate) switch
    {
        (25, "C/20") => RowUse.Set,
        ( < 40, "C/2") => RowUse.Fitted,
        (_, "1C") => RowUse.VoltageUsed,
        _ => RowUse.HeldOut,
    };

    /// <summary>
    /// Error of the runtime that the model claims to keep, as a part: 2 % at 25 °C, 3 % down to -10 °C (there from C/2), 20 % at
    /// -20 °C, for the steady loads of a camera battery, up to 1C. Null where nothing is claimed.
    /// </summary>
    public double? ClaimedTolerance => WhyNotClaimed is not null ? null : Measured.ChamberCelsius switch
    {
        25 => 0.02,
        -20 => 0.20,
        _ => 0.03,
    };

    /// <summary>Why nothing is claimed for such a discharge; null where something is.</summary>
    public string? WhyNotClaimed => (Measured.ChamberCelsius, Measured.Rate) switch
    {
        (40, _) => "this cell gave 3 % less at 40 °C than at 25 °C, which the model doesn't know of",
        (-10, "C/20") => "a discharge of a day gives more in the cold than the table fitted at C/2 says",
        (_, "2C") => "a steady ohmic resistance is too kind at high current, far too kind in the cold",
        _ => null,
    };
}
