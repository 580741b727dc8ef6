using RigScenarios.Batteries;
using UnitsNet;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>The resistance that a pulse of 1C shows on the rested cell: the fall of its voltage over the current.</summary>
/// <param name="ChamberCelsius">Setting of the chamber, °C.</param>
/// <param name="CellCelsius">Temperature of the cell, °C.</param>
/// <param name="DrawnAmpereHours">Charge drawn before, Ah.</param>
/// <param name="Charge">State of charge by the authors' count, 0…1.</param>
/// <param name="RestedVolts">Voltage before the pulse, V; rested for an hour, but only 10 s at the full cell.</param>
/// <param name="Milliohms1">After 1 s, mΩ.</param>
/// <param name="Milliohms10">After 10 s, mΩ.</param>
internal sealed record MeasuredPulse(
    double ChamberCelsius, double CellCelsius, double DrawnAmpereHours, double Charge, double RestedVolts, double Milliohms1,
    double Milliohms10)
{
    private const double Amperes = 3;

    /// <summary>All that are recorded.</summary>
    public static IReadOnlyList<MeasuredPulse> Read(string folder) =>
        [.. MeasuredTable.Read(Path.Combine(folder, "nmc18650_hppc_1C_pulse_resistance.csv")).Select(row => new MeasuredPulse(
            row.Number("ambient_C"), row.Number("cell_temperature_C"), row.Number("discharged_Ah"),
            row.Number("soc_vs_2p7807Ah"), row.Number("rested_voltage_V"), row.Number("R_1s_mohm"), row.Number("R_10s_mohm")))];

    /// <summary>Whether it belongs to the middle of the charge, 35 to 68 %, over which the published means are taken.</summary>
    public bool IsMiddle => Charge is > 0.34 and < 0.70;

    /// <summary>Voltage at rest as the model has it, V.</summary>
    public double PredictedRest(MeasuredCellModel model) =>
        model.Cell().OpenCircuitVoltage.At(ChargeIn(model)).Volts;

    /// <summary>What the model shows after so many seconds, mΩ.</summary>
    public double Predicted(MeasuredCellModel model, double seconds)
    {
        var cell = Temperature.FromDegreesCelsius(CellCelsius);
        var run = Discharge.Run(
            model.Cell(), cell, new DischargeStart { StateOfCharge = ChargeIn(model), Temperature = cell },
            Demand.OfCurrent(ElectricCurrent.FromAmperes(Amperes)),
            new DischargeOptions { TimeLimit = Duration.FromSeconds(seconds), SeriesPoints = 0 });
        return 1000 * (PredictedRest(model) - run.EndVoltage!.Value.Volts) / Amperes;
    }

    private Ratio ChargeIn(MeasuredCellModel model) =>
        Ratio.FromDecimalFractions(1 - (Math.Max(0, DrawnAmpereHours) / model.CapacityAmpereHours));
}
