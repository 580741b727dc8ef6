using RigScenarios.Batteries;
using UnitsNet;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>
/// A measured load that changes every second, with currents into the cell among it, and what the model makes of it. Two things
/// are compared: the voltage second by second over the whole record, as if the cell went on below 2.8 V, and the charge and
/// energy until 2.8 V.
/// </summary>
/// <param name="ChamberCelsius">Setting of the chamber, °C.</param>
/// <param name="LargestAmperes">The largest current, A.</param>
/// <param name="AmpereHours">Net charge out of the cell over the record, which ends where the cell reached 2.8 V, Ah.</param>
/// <param name="WattHours">Net energy, Wh.</param>
/// <param name="PredictedAmpereHours">Net charge until the model reaches 2.8 V, Ah; that of the record if it doesn't.</param>
/// <param name="PredictedWattHours">Net energy until then, Wh.</param>
/// <param name="Outlasts">Whether the model is still above 2.8 V at the end of the record.</param>
/// <param name="VoltsRms">Root mean square of predicted less measured voltage, V.</param>
/// <param name="VoltsMean">Mean of it, V: above zero the prediction is too high.</param>
/// <param name="Followed">The part of the record's seconds over which that is known: less than all where the model is empty
/// before.</param>
internal sealed record DriveCycle(
    double ChamberCelsius, double LargestAmperes, double AmpereHours, double WattHours, double PredictedAmpereHours,
    double PredictedWattHours, bool Outlasts, double VoltsRms, double VoltsMean, double Followed)
{
    private static readonly Duration Second = Duration.FromSeconds(1);
    private static readonly DischargeOptions Discharging = new() { TimeLimit = Second, SeriesPoints = 0 };

    /// <summary>All that are recorded.</summary>
    public static IReadOnlyList<DriveCycle> Read(string folder, MeasuredCellModel model) =>
        [.. MeasuredTable.Read(Path.Combine(folder, "nmc18650_drive_cycle_1s.csv"))
            .GroupBy(row => row.Number("ambient_C"),
                row => (row.Number("current_A"), row.Number("voltage_V")))
            .Select(rows => Of(model.Cell(), rows.Key, model.Chamber(rows.Key), [.. rows]))];

    private static DriveCycle Of(Pack cell, double chamber, Temperature air, List<(double Amperes, double Volts)> rows)
    {
        var ends = Follow(cell, air, rows);
        var whole = Follow(cell with { CutoffVoltage = ElectricPotential.FromVolts(0.5) }, air, rows);
        return new DriveCycle(
            chamber, rows.Max(row => row.Amperes), rows.Sum(row => row.Amperes) / 3600,
            rows.Sum(row => row.Amperes * row.Volts) / 3600, ends.Charge, ends.Energy, ends.Seconds == rows.Count,
            Math.Sqrt(whole.Squares / whole.Seconds), whole.Sum / whole.Seconds, (double)whole.Seconds / rows.Count);
    }

    private static (double Charge, double Energy, double Squares, double Sum, int Seconds) Follow(
        Pack cell, Temperature air, List<(double Amperes, double Volts)> rows)
    {
        var state = DischargeStart.Full with { Temperature = air };
        double charge = 0, energy = 0, squares = 0, sum = 0;
        var seconds = 0;
        foreach (var (amperes, volts) in rows)
        {
            if (MeanVolts(cell, air, ref state, amperes) is not { } predicted)
                break;
            seconds++;
            charge += amperes / 3600;
            energy += amperes * predicted / 3600;
            sum += predicted - volts;
            squares += (predicted - volts) * (predicted - volts);
        }

        return (charge, energy, squares, sum, seconds);
    }

    // The mean voltage over a second of the current, as the record has it: energy over charge. Null where the cell reached its
    // end.
    private static double? MeanVolts(Pack cell, Temperature air, ref DischargeStart state, double amperes)
    {
        if (amperes < 0)
        {
            var charge = ChargeRun.Run(cell, air, state, new ChargeSetting(ElectricCurrent.FromAmperes(-amperes))
            {
                FullVoltage = ElectricPotential.FromVolts(5),
                CoulombicEfficiency = Ratio.FromDecimalFractions(1),
                Lowest = Temperature.FromDegreesCelsius(-40),
                Highest = Temperature.FromDegreesCelsius(80),
                TimeLimit = Second,
                SeriesPoints = 0,
            });
            state = charge.FinalState;
            return charge.EnergyIn.Joules / charge.ChargeIn.Coulombs;
        }

        var run = Discharge.Run(cell, air, state, Demand.OfCurrent(ElectricCurrent.FromAmperes(amperes)), Discharging);
        state = run.FinalState with { DemandOffset = Duration.Zero };
        return run.Cause != EndCause.TimeLimit ? null
            : amperes > 0 ? run.Energies.Delivered.Joules / run.Energies.ChargeDrawn.Coulombs
            : run.EndVoltage!.Value.Volts;
    }
}
