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

            A prediction: six values fitted again on the other five temperatures (least squares of charge, energy and
            voltage on the way, with either open-circuit voltage), then held against the one that they have not seen. The
            capacity comes from C/20 at 25 °C always, the share of the near well stays. Fitted by the same command with
            `--refit`, which takes a minute and keeps the values in `left-out.csv` beside the data. Largest error of charge,
            energy in %, and the rate of the larger one:


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
        var between = predicted.Concat(ownOnes).Where(row => row.Measured is not { ChamberCelsius: -20, Rate: "2C" })
            .Max(row => row.Largest);
        text.Append(CultureInfo.InvariantCulture, $"""

            With the default voltage the worst is {PageText.Name(predicted[0].Measured)}, {100 * predicted[0].Largest:F1} %;
            with the cell's own, {PageText.Name(ownOnes[0].Measured)}, {100 * ownOnes[0].Largest:F1} %. That temperature lies
            beyond the five, so it is extrapolated, and what is claimed above for such currents rests on having seen it: without,
            it would be {Math.Ceiling(100 * predicted[0].Largest):F0} %. All else is within {100 * between:F1} %, where 5 % are
            claimed (2C below 0 °C: 10 %).

            """);
    }

    private static string Worst(IReadOnlyList<CellComparison> rows) =>
        $"{PageText.Largest(rows.Select(row => row.ChargeError))}, {PageText.Largest(rows.Select(row => row.EnergyError))} "
        + $"({rows.MaxBy(row => row.Largest)!.Measured.Rate})";
}
