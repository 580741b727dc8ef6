using RigScenarios.Batteries;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>The voltage of a discharge at a steady current at five places of it: after a sixth to five sixths of the charge that
/// was measured. Straight between its points.</summary>
internal static class MeasuredCourse
{
    private const int Places = 5;

    /// <summary>As measured, V.</summary>
    public static IReadOnlyList<double> Of(string folder, MeasuredDischarge one) => At(
        one, [.. MeasuredTable.Read(Path.Combine(folder, "nmc18650_cc_discharge.csv"))
            .Where(row => row.Number("ambient_C") == one.ChamberCelsius && row.Text("rate") == one.Rate)
            .Select(row => (row.Number("discharged_Ah"), row.Number("voltage_V")))]);

    /// <summary>As predicted, V; that at its end where it ends before.</summary>
    public static IReadOnlyList<double> Of(DischargeResult result, MeasuredDischarge one) => At(
        one, [.. result.Series.Select(point => (one.Amperes * point.Time.Hours, point.Voltage.Volts))]);

    private static List<double> At(MeasuredDischarge one, List<(double Drawn, double Volts)> points) =>
        [.. Enumerable.Range(1, Places).Select(i => At(points, one.AmpereHours * i / (Places + 1)))];

    private static double At(List<(double Drawn, double Volts)> points, double drawn)
    {
        var i = points.FindIndex(point => point.Drawn >= drawn);
        if (i <= 0)
            return i == 0 ? points[0].Volts : points[^1].Volts;
        var (before, after) = (points[i - 1], points[i]);
        return before.Volts + ((after.Volts - before.Volts) * (drawn - before.Drawn) / (after.Drawn - before.Drawn));
    }
}
