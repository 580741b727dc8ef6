using RigScenarios.Cells;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>
/// The measured cell's own open-circuit voltage, from its discharge at C/20 and 25 °C: its voltage with what the sustained
/// resistance takes put back. Below 2.8 V and above the first record it goes on as it ends.
/// </summary>
/// <param name="records">Charge drawn, Ah, and voltage, V, of that discharge, in order.</param>
/// <param name="amperes">Its current, A.</param>
internal sealed class OwnOpenCircuit(IReadOnlyList<(double Drawn, double Volts)> records, double amperes)
{
    // So many records at either end say how it goes on.
    private const int Ends = 4;

    /// <summary>The capacity that goes with it, Ah: by it the slowest discharge at 25 °C leaves a sixtieth inside at
    /// 2.8 V.</summary>
    public double CapacityAmpereHours => 2.83;

    /// <summary>Read from the measured data.</summary>
    /// <param name="folder">Their folder.</param>
    public static OwnOpenCircuit Read(string folder)
    {
        var rows = MeasuredTable.Read(Path.Combine(folder, "nmc18650_cc_discharge.csv"))
            .Where(row => row.Number("ambient_C") == 25 && row.Text("rate") == "C/20").ToList();
        return new([.. rows.Select(row => (row.Number("discharged_Ah"), row.Number("voltage_V")))],
            rows.Average(row => row.Number("current_A")));
    }

    /// <summary>The table, for a sustained resistance times capacity in Ω·Ah.</summary>
    public OpenCircuitVoltage With(double ohmAmpereHours)
    {
        var lift = amperes * ohmAmpereHours / CapacityAmpereHours;
        var points = records.Select(one => (Charge: 1 - (one.Drawn / CapacityAmpereHours), Volts: one.Volts + lift)).Reverse()
            .ToList();
        var empty = Beyond(points[0], points[Ends], 0);
        var full = Beyond(points[^1], points[^Ends], 1);
        points = [(0, empty), .. points, (1, full)];
        return OpenCircuitVoltage.FromTable([.. points.Select(one => one.Charge)], [.. points.Select(one => one.Volts)]);
    }

    private static double Beyond((double Charge, double Volts) end, (double Charge, double Volts) inside, double charge) =>
        end.Volts + ((inside.Volts - end.Volts) * (charge - end.Charge) / (inside.Charge - end.Charge));
}
