using System.Globalization;
using System.Text;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>The part of docs/measured-cells.md that predicts each temperature from the others.</summary>
internal static class LeftOutSection
{
    public static void Write(
        StringBuilder text, IReadOnlyList<MeasuredDischarge> measured, OwnOpenCircuit own, string folder)
    {
        text.Append("""

            ## One temperature left out

            A prediction: six values fitted again on the other five temperatures (least squares of charge and energy, with either
            open-circuit voltage), then held against the one that they have not seen. The capacity comes from C/20 at 25 °C
            always, the share of the near well stays. Fitted by the same command with `--refit`, which takes half a minute and
            keeps the values in `left-out.csv` beside the data. Largest error of charge, energy in %, and its rate:


            """);
        text.Append("| left out °C | default voltage | own voltage | exchange time s | its activation energy kJ/mol "
            + "| low-rate capacity at -20, 10 °C | resistance Ω·Ah | its activation energy kJ/mol |\n"
            + "| --- | --- | --- | --- | --- | --- | --- | --- |\n");
        var all = LeftOut.Read(folder)
            .Select(one => (One: one, Rows: one.Predict(measured, null), Own: one.Predict(measured, own))).ToList();
        foreach (var (one, rows, with) in all)
        {
            text.Append(CultureInfo.InvariantCulture,
                $"| {one.ChamberCelsius:0} | {Worst(rows)} | {Worst(with)} | {one.Set.ExchangeSeconds:F1} | "
                + $"{one.Set.ExchangeKilojoules:F1} | {one.Set.Usable[0].Fraction:F3}, {one.Set.Usable[1].Fraction:F3} | "
                + $"{one.Set.OhmAmpereHours:F3} | {one.Set.ActivationKilojoules:F1} |\n");
        }

        var predicted = all.SelectMany(item => item.Rows).OrderByDescending(row => row.Largest).ToList();
        var ownOnes = all.SelectMany(item => item.Own).OrderByDescending(row => row.Largest).ToList();
        text.Append(CultureInfo.InvariantCulture, $"""

            With the default voltage the worst is {PageText.Name(predicted[0].Measured)}, {100 * predicted[0].Largest:F1} %, all
            others are within {100 * predicted[1].Largest:F1} %; with the cell's own the worst is {PageText.Name(ownOnes[0].Measured)},
            {100 * ownOnes[0].Largest:F1} %. The claim above rests on this table as much as on the first.

            """);
    }

    private static string Worst(IReadOnlyList<CellComparison> rows) =>
        $"{PageText.Largest(rows.Select(row => row.ChargeError))}, {PageText.Largest(rows.Select(row => row.EnergyError))} "
        + $"({rows.MaxBy(row => row.Largest)!.Measured.Rate})";
}
