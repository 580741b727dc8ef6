using System.Globalization;
using System.Text;
using RigScenarios.Batteries.Batch;
using UnitsNet.Units;

namespace RigScenarios.Benchmarks.Solvers;

/// <summary>Discharges as lines of numbers, in SI units but the capacity (Ah): the programs beside this file read
/// them.</summary>
internal static class SolverCases
{
    /// <summary>The text: the number of thousands, the rest of the count, then a line for each discharge.</summary>
    /// <param name="scenarios">The discharges; with one well each.</param>
    public static string Text(IReadOnlyList<BatchScenario> scenarios)
    {
        var text = new StringBuilder();
        Write(text, [scenarios.Count / 1000, scenarios.Count % 1000]);
        foreach (var one in scenarios)
            Write(text, [.. PackNumbers(one), .. Points(one), .. Demand(one)]);
        return text.ToString();
    }

    private static IEnumerable<double> PackNumbers(BatchScenario one)
    {
        var pack = one.Pack;
        var air = one.Ambient.Kelvins;
        return
        [
            pack.SeriesGroups, pack.Capacity.AmpereHours, pack.Resistance0.Ohms, pack.Resistance1.Ohms,
            pack.TimeConstant1.Seconds, pack.Resistance2.Ohms, pack.TimeConstant2.Seconds, pack.LeadResistance.Ohms,
            pack.ActivationEnergy.JoulesPerMole,
            pack.HeatCapacity.JoulesPerKelvin, pack.HeatConductance.WattsPerKelvin, pack.Age.CapacityLeft.DecimalFractions,
            pack.Age.ResistanceFactor, pack.CutoffVoltage.Volts, pack.MaximumCurrent.Amperes, pack.MaximumTemperature.Kelvins,
            pack.ResistanceFloor, air, one.Start.StateOfCharge.DecimalFractions, one.Start.Temperature?.Kelvins ?? air,
            (one.TimeLimit ?? throw new ArgumentException("Each needs a time limit.", nameof(one))).Seconds,
        ];
    }

    private static IEnumerable<double> Points(BatchScenario one)
    {
        var volts = one.Pack.OpenCircuitVoltage.Points;
        var usable = one.Pack.UsableCapacity.Points;
        return
        [
            volts.Count, .. volts.SelectMany(point => new[] { point.StateOfCharge.DecimalFractions, point.Voltage.Volts }),
            usable.Count, .. usable.SelectMany(point => new[] { point.Temperature.Kelvins, point.Fraction.DecimalFractions }),
        ];
    }

    private static IEnumerable<double> Demand(BatchScenario one) =>
    [
        one.Demand.Segments.Count,
        .. one.Demand.Segments.SelectMany(block => new double[]
        {
            block.Length.Seconds, (double)block.ConstantPower.As(PowerUnit.Watt),
            block.ConstantCurrent.Amperes, block.Conductance.Siemens,
        }),
    ];

    private static void Write(StringBuilder text, IEnumerable<double> numbers) =>
        text.AppendJoin(' ', numbers.Select(number => number.ToString("R", CultureInfo.InvariantCulture))).Append('\n');
}
