namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>A measured discharge beside the predicted one.</summary>
internal sealed record CellComparison(MeasuredDischarge Measured, double AmpereHours, double WattHours, double EndCelsius)
{
    /// <summary>Error of the charge, and so of the runtime at the measured current; 0.01 is 1 % too much.</summary>
    public double ChargeError => (AmpereHours / Measured.AmpereHours) - 1;

    /// <summary>Error of the delivered energy.</summary>
    public double EnergyError => (WattHours / Measured.WattHours) - 1;

    /// <summary>The larger of the two, without its sign.</summary>
    public double Largest => Math.Max(Math.Abs(ChargeError), Math.Abs(EnergyError));

    /// <summary>
    /// Error of the runtime that the model claims to keep, as a part: 5 % from C/20 to 1C at -20 to 40 °C and at 2C from 0 °C up,
    /// 10 % at 2C below.
    /// </summary>
    public double ClaimedTolerance => Measured is { Rate: "2C", ChamberCelsius: < 0 } ? 0.10 : 0.05;
}
