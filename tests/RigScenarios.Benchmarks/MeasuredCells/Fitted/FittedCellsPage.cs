using System.Globalization;
using System.Text;
using RigScenarios.Fits;

namespace RigScenarios.Benchmarks.MeasuredCells.Fitted;

/// <summary>The page docs/fitted-cells.md: what tests at 25 °C are worth at other temperatures. A check holds the page against
/// this.</summary>
internal static class FittedCellsPage
{
    /// <summary>What an independent program found by the same equations: rms over all other chambers, %. Its run-times come from
    /// another integrator, its logs from the full data.</summary>
    public static readonly double[] Elsewhere = [8.2, 3.7, 1.8, 3.1, 2.4];

    private const string Command = "fitted-cells tests/RigScenarios.Checks/data/measured docs/fitted-cells.md";

    private static readonly double[] Chambers = [25, 40, 10, 0, -10, -20];

    /// <param name="folder">The folder of the measured data.</param>
    public static string Of(string folder)
    {
        var ways = FittedCell.All(folder).Select(cell => FittedCellErrors.Of(cell, folder)).ToList();
        var text = new StringBuilder($"""
            # Fitted at 25 °C, predicted in the cold

            Made by `dotnet run -c Release --project tests/RigScenarios.Benchmarks -- {Command}`;
            change the model, not this page. A test fails where the two differ.

            One measured 3 Ah cell, 23 discharges to 2.8 V (P. Kollmeyer, C. Vidal, M. Naguib, M. Skells (2020),
            doi:10.17632/cp3473x7xv.3, CC BY 4.0; the same data as in [measured-cells.md](measured-cells.md)). It is taken as its
            owner would have it: a label of 3.0 Ah, the project's NMC values, the open-circuit voltage of another cell. Then come
            tests at 25 °C, and nothing of the other temperatures. The errors there are predictions of capacity and resistance,
            but not of the cold itself: the cold values of the model were once fitted on this same cell.

            ## Error of the run-time

            Root mean square over the currents of each chamber, %. "Elsewhere" is all chambers but 25 °C; the last column is what
            an independent program found there by the same equations.

            | what was measured at 25 °C |
            """);
        foreach (var chamber in Chambers)
            text.Append(CultureInfo.InvariantCulture, $" {chamber:0} °C |");
        text.Append(" elsewhere | worst | other program |\n| --- |")
            .Append(string.Concat(Enumerable.Repeat(" --- |", Chambers.Length + 3))).Append('\n');
        foreach (var (index, way) in ways.Index())
        {
            text.Append(CultureInfo.InvariantCulture, $"| {way.Cell.Name} |");
            foreach (var chamber in Chambers)
                text.Append(CultureInfo.InvariantCulture, $" {100 * way.Rms(chamber):F1} |");
            text.Append(CultureInfo.InvariantCulture,
                $" {100 * way.RmsElsewhere:F1} | {100 * way.WorstElsewhere:+0.0;-0.0} | {Elsewhere[index]:F1} |\n");
        }
        Found(text, ways);
        EachDischarge(text, ways);
        return text.ToString();
    }

    private static void Found(StringBuilder text, List<FittedCellErrors> ways)
    {
        text.Append("""

            ## What was found

            With the 95 % interval. The capacity is told over the 3.0 Ah of the label, or over what the bench discharge gave.

            | what was measured at 25 °C | over | capacity | resistance over the project's |
            | --- | --- | --- | --- |

            """);
        foreach (var way in ways.Where(way => way.Cell.Fit is not null))
        {
            text.Append(CultureInfo.InvariantCulture,
                $"| {way.Cell.Name} | {way.Cell.Pack.Capacity.AmpereHours:F3} Ah | {Interval(way, UnknownKind.Capacity)} | "
                + $"{Interval(way, UnknownKind.Resistance)} |\n");
        }
        text.Append("""

            One run-time fixes the capacity and says nothing of the resistance. Two logs do nearly all that can be done. Four logs
            are tighter, and worse: the open-circuit voltage of another cell errs in its shape, not only by one offset, and a very
            slow and a very fast discharge pull at both ends of it. With its own table the cell is right at 25 °C; what is missed
            elsewhere is the model of the cold. This cell gave less at 40 °C than at 25 °C, which no fit at 25 °C can know.

            """);
    }

    private static void EachDischarge(StringBuilder text, List<FittedCellErrors> ways)
    {
        text.Append("\n## Each discharge\n\nError of the run-time, %; above zero the prediction is too long.\n\n")
            .Append("| °C | rate | measured Ah |");
        foreach (var way in ways)
            text.Append(CultureInfo.InvariantCulture, $" {way.Cell.Name} |");
        text.Append("\n| --- | --- | --- |").Append(string.Concat(Enumerable.Repeat(" --- |", ways.Count))).Append('\n');
        foreach (var (index, (measured, _)) in ways[0].Errors.Index())
        {
            text.Append(CultureInfo.InvariantCulture,
                $"| {measured.ChamberCelsius:0} | {measured.Rate} | {measured.AmpereHours:F3} |");
            foreach (var way in ways)
                text.Append(CultureInfo.InvariantCulture, $" {100 * way.Errors[index].Error:+0.0;-0.0;0.0} |");
            text.Append('\n');
        }
    }

    private static string Interval(FittedCellErrors way, UnknownKind kind)
    {
        var found = way.Cell.Fit![kind];
        return string.Create(CultureInfo.InvariantCulture, $"{found.Value:F3} ({found.Low:F3} to {found.High:F3})");
    }
}
