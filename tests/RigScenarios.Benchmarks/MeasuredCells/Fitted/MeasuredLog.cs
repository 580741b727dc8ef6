using RigScenarios.Fits.Logs;

namespace RigScenarios.Benchmarks.MeasuredCells.Fitted;

/// <summary>
/// The course of a measured discharge as a power log. The file has it over the charge; the time comes from the summary's length,
/// for the current is steady.
/// </summary>
internal static class MeasuredLog
{
    private const string FileName = "nmc18650_cc_discharge.csv";

    public static LogRows Of(string folder, double chamber, string rate)
    {
        var length = MeasuredTable.Read(Path.Combine(folder, MeasuredDischarge.FileName))
            .First(row => IsOf(row, chamber, rate)).Number("duration_s");
        var rows = MeasuredTable.Read(Path.Combine(folder, FileName)).Where(row => IsOf(row, chamber, rate)).ToList();
        var whole = rows[^1].Number("discharged_Ah");
        return LogRows.Of(
            [.. rows.Select(row => length * row.Number("discharged_Ah") / whole)],
            [.. rows.Select(row => row.Number("voltage_V"))],
            [.. rows.Select(row => row.Number("current_A"))], samples: true);
    }

    private static bool IsOf(MeasuredTable row, double chamber, string rate) =>
        row.Number("ambient_C") == chamber && row.Text("rate") == rate;
}
