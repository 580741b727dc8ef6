using System.Globalization;
using System.Text;
using RigScenarios.Cells.Aging;

namespace RigScenarios.Benchmarks.AgedCells;

/// <summary>The last part of docs/aging.md: eleven measured cells beside what each set says of them.</summary>
internal static class MeasuredSection
{
    public const string Title = "## Eleven measured cells";

    // About so many full cycles, where a battery of a few shoots a month may end.
    private const double FewCycles = 200;

    public static void Write(StringBuilder text, IReadOnlyList<AgedCell> cells)
    {
        text.Append(CultureInfo.InvariantCulture, $"""

            {Title}

            Cells of 75 Ah, NMC and graphite, stored or cycled for 210 to 294 days. K. Smith et al., "Life prediction model
            for grid-connected Li-ion battery energy storage system", American Control Conference 2017, 4062-4068; measured
            capacities from the validation files of NREL's ssc, BSD-3-Clause, © Alliance for Sustainable Energy. Nothing is
            fitted. Taken: the mean temperature, 1C (the rate is not in the data), cycles times depth as full cycles,
            fractions of the first capacity (it rises by up to 1.2 % at first, which no set has).

            What a set says at the end minus what was measured, points of the first capacity:

            | cell | °C | held at or depth | days | cycles | measured |
            """);
        foreach (var set in AgingSets.All)
            text.Append(CultureInfo.InvariantCulture, $" {Head(set)} |");
        text.Append(" as new |\n| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
        foreach (var cell in cells)
        {
            var end = cell.End;
            text.Append(CultureInfo.InvariantCulture,
                $"| {cell.Number}, {(cell.IsStored ? "stored" : "cycled")} | {cell.Celsius:0.0} | "
                + $"{(cell.IsStored ? cell.Charge : cell.Depth):0.00} | {end.Days:0} | "
                + $"{(cell.IsStored ? "–" : end.Cycles.ToString("0", CultureInfo.InvariantCulture))} | {end.Left:0.000} |");
            foreach (var set in AgingSets.All)
                text.Append(CultureInfo.InvariantCulture, $" {Points(cell.Error(set, end))} |");
            text.Append(CultureInfo.InvariantCulture, $" {Points(100 * (1 - end.Left))} |\n");
        }

        Means(text, "all", cells);
        Means(text, "stored", [.. cells.Where(cell => cell.IsStored)]);
        Means(text, "cycled", [.. cells.Where(cell => !cell.IsStored)]);
        text.Append("\n\\* made for another chemistry.\n");
        Claims(text, cells);
    }

    private static void Means(StringBuilder text, string which, IReadOnlyList<AgedCell> cells)
    {
        text.Append(CultureInfo.InvariantCulture, $"| rms, {which} ({cells.Count}) | | | | | |");
        foreach (var set in AgingSets.All)
            text.Append(CultureInfo.InvariantCulture, $" {Rms(cells.Select(cell => cell.Error(set, cell.End))):0.0} |");
        text.Append(CultureInfo.InvariantCulture, $" {Rms(cells.Select(cell => 100 * (1 - cell.End.Left))):0.0} |\n");
    }

    private static void Claims(StringBuilder text, IReadOnlyList<AgedCell> cells)
    {
        var nmc = AgingSets.Nmc;
        var stored = cells.Where(cell => cell.IsStored).ToList();
        var cycled = cells.Where(cell => !cell.IsStored).ToList();
        var few = cycled.Select(cell => (Cell: cell, Point: cell.Points.MinBy(
            point => Math.Abs(cell.FullCycles(point) - FewCycles))!)).ToList();
        var low = few.Select(one => -one.Cell.Error(nmc, one.Point)).ToList();
        var full = few.Select(one => one.Cell.FullCycles(one.Point)).ToList();
        var worse = cycled.Count(cell => Math.Abs(cell.Error(nmc, cell.End)) > 100 * (1 - cell.End.Left));
        var off = stored.Max(cell => Math.Abs(cell.Error(nmc, cell.End)));
        var near = cycled.Count(cell => Math.Abs(cell.Error(nmc, cell.End)) <= 5);
        var hottest = stored.MaxBy(cell => cell.Celsius)!;
        var high = hottest.Points.Select(point => hottest.Error(nmc, point)).ToList();
        var others = stored.Where(cell => cell != hottest)
            .Max(cell => cell.Points.Max(point => Math.Abs(cell.Error(nmc, point))));
        text.Append("\nWhere `nmc`, which speaks for such a battery, misses:\n\n");
        text.Append(AgedCellsPage.Wrapped(
            $"- **Storage**: off by at most {off:0.0} points at the end, so the claim is 5 points, from "
            + $"{stored.Min(cell => cell.Celsius):0} to {stored.Max(cell => cell.Celsius):0} °C: {Words(stored.Count)} cells of "
            + "one type, at the end of 210 to 286 days. On the way there two of them fall faster and then slower than the law: "
            + $"it is up to {high.Max():0.0} points too high for the full one at {hottest.Celsius:0} °C within "
            + $"{hottest.Points.Where(point => hottest.Error(nmc, point) > 5).Max(point => point.Days):0} days, up to "
            + $"{others:0.0} for the others. Of cooler and of longer storage nobody has data here."));
        text.Append(AgedCellsPage.Wrapped(
            $"- **Cycling**: within 5 points for {Words(near)} of the {Words(cycled.Count)} cells. By about {FewCycles:0} full "
            + $"cycles ({full.Min():0} to {full.Max():0}) it is {low.Min():0} to {low.Max():0} points too low, so the claim is: "
            + "for a good cell too low by up to 13 points at 200 full cycles. At the end it is worse than \"as new\" for "
            + $"{Words(worse)} of them; in the cold two errors cancel."));
        text.Append("- **A measured capacity outweighs any set**, and the answer asks for one.\n");
    }

    private static string Head(AgingSet set) =>
        set.Chemistry.Name == RigScenarios.Cells.CellChemistries.Lfp.Name ? $"{set.Name} \\*" : set.Name;

    private static double Rms(IEnumerable<double> errors) => Math.Sqrt(errors.Average(error => error * error));

    private static string Points(double error) => error.ToString("+0.0;-0.0;0.0", CultureInfo.InvariantCulture);

    private static string Words(int count) => count switch
    {
        0 => "none",
        1 => "one",
        4 => "four",
        5 => "five",
        7 => "seven",
        _ => count.ToString(CultureInfo.InvariantCulture),
    };
}
