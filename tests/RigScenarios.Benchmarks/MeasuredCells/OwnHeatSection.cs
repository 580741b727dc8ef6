using System.Globalization;
using System.Text;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>The part of docs/measured-cells.md that shows how much of a cold discharge hangs on the cell's own heat.</summary>
internal static class OwnHeatSection
{
    private static readonly double[] Conductances = [0.1, 0.37, MeasuredCellModel.WattsPerKelvin, 0.7];

    public static void Write(StringBuilder text, IReadOnlyList<MeasuredDischarge> measured)
    {
        text.Append("""

            ## Where the cell's own heat decides

            The same discharges, as they would be in a rig that takes more or less of the heat: charge as a part of the capacity.
            A closed pack loses about 0.1 W/K for each cell.


            """);
        text.Append("| chamber °C | rate | measured | ").AppendJoin(" | ", Conductances.Select(watts =>
                string.Create(CultureInfo.InvariantCulture, $"{watts:0.##} W/K"))).Append(" |\n| --- | --- | --- ")
            .Append(string.Concat(Conductances.Select(_ => "| --- "))).Append("|\n");
        var models = Conductances.Select(watts => new MeasuredCellModel(measured, wattsPerKelvin: watts)).ToList();
        foreach (var one in measured.Where(one => one is { ChamberCelsius: <= -10, Rate: not "C/20" }))
        {
            text.Append(CultureInfo.InvariantCulture,
                    $"| {one.ChamberCelsius:0} | {one.Rate} | {Part(one.AmpereHours, models[0])} | ")
                .AppendJoin(" | ", models.Select(model => Part(model.Compare(one).AmpereHours, model))).Append(" |\n");
        }

        text.Append("""

            An answer runs its cold batteries again with 30 % more and 30 % less heat lost, and says so where that moves the time
            by a twentieth or more.

            """);
    }

    private static string Part(double ampereHours, MeasuredCellModel model) =>
        string.Create(CultureInfo.InvariantCulture, $"{100 * ampereHours / model.CapacityAmpereHours:0} %");
}
