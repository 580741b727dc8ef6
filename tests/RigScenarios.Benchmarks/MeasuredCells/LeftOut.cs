using System.Globalization;
using System.Text;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>
/// The values that come out where one temperature is left out. To find them takes a minute, so they lie beside the data in a
/// file that `measured-cells --refit` writes; what they predict is computed anew each time.
/// </summary>
/// <param name="ChamberCelsius">The temperature that was left out, °C.</param>
/// <param name="Set">The values.</param>
internal sealed record LeftOut(double ChamberCelsius, CellSet Set)
{
    public const string FileName = "left-out.csv";

    private const string Columns =
        "left_out_C,exchange_time_s,exchange_kJ_per_mol,usable_at_minus20C,usable_at_10C,ohm_Ah,activation_kJ_per_mol";

    /// <summary>All that lie beside the data.</summary>
    public static IReadOnlyList<LeftOut> Read(string folder) =>
        [.. MeasuredTable.Read(Path.Combine(folder, FileName)).Select(row => new LeftOut(
            row.Number("left_out_C"), CellSet.Now with
            {
                ExchangeSeconds = row.Number("exchange_time_s"),
                ExchangeKilojoules = row.Number("exchange_kJ_per_mol"),
                Usable =
                [
                    (CellSet.Now.Usable[0].Celsius, row.Number("usable_at_minus20C")),
                    (CellSet.Now.Usable[1].Celsius, row.Number("usable_at_10C")), CellSet.Now.Usable[2],
                ],
                OhmAmpereHours = row.Number("ohm_Ah"),
                ActivationKilojoules = row.Number("activation_kJ_per_mol"),
            }))];

    /// <summary>Fits each of them again: the text of the file.</summary>
    public static string Refitted(string folder)
    {
        var measured = MeasuredDischarge.Read(folder);
        var text = new StringBuilder(Columns).Append('\n');
        var fit = new LeftOutFit(measured, folder);
        foreach (var chamber in measured.Select(one => one.ChamberCelsius).Distinct())
        {
            var set = fit.Without(chamber);
            text.Append(CultureInfo.InvariantCulture,
                $"{chamber:0},{set.ExchangeSeconds:G6},{set.ExchangeKilojoules:G6},{set.Usable[0].Fraction:G6},"
                + $"{set.Usable[1].Fraction:G6},{set.OhmAmpereHours:G6},{set.ActivationKilojoules:G6}\n");
        }

        return text.ToString();
    }

    /// <summary>The discharges that the values have not seen, as they predict them.</summary>
    /// <param name="measured">All discharges.</param>
    /// <param name="own">The cell's own open-circuit voltage; the project's if null.</param>
    public IReadOnlyList<CellComparison> Predict(IReadOnlyList<MeasuredDischarge> measured, OwnOpenCircuit? own) =>
        [.. new MeasuredCellModel(measured, Set, own: own).CompareAll()
            .Where(row => row.Measured.ChamberCelsius == ChamberCelsius)];
}
