using System.Globalization;
using System.Text;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>The page docs/measured-cells.md: the measured discharges beside the predicted ones. A test holds the page against
/// this.</summary>
internal static class MeasuredCellsPage
{
    private const string DataFolder = "tests/RigScenarios.Checks/data/measured";

    private const string Target = "docs/measured-cells.md";

    private static readonly string[] Rates = ["C/20 to 1C", "2C"];

    /// <param name="folder">The folder of the measured data.</param>
    public static string Of(string folder)
    {
        var model = new MeasuredCellModel(MeasuredDischarge.Read(folder));
        var rows = model.CompareAll();
        var text = new StringBuilder();
        Beginning(text, model);
        foreach (var row in rows)
            Row(text, row);
        HowWell(text, rows);
        WhatIsHeld(text, rows);
        ChangingLoadSection.Write(text, model, folder);
        OtherCellsSection.Write(text);
        return text.ToString();
    }

    private static void Beginning(StringBuilder text, MeasuredCellModel model)
    {
        text.Append(CultureInfo.InvariantCulture, $"""
            # The discharge model against a measured cell

            Made by `dotnet run -c Release --project tests/RigScenarios.Benchmarks -- measured-cells {DataFolder} {Target}`;
            change the model, not this page. A test fails where the two differ.

            Measured: one 3 Ah NMC/graphite 18650 cell, constant current to 2.8 V, at six chamber temperatures. P. Kollmeyer,
            C. Vidal, M. Naguib, M. Skells (2020), doi:10.17632/cp3473x7xv.3, CC BY 4.0. One cell only: another of the same type
            may differ by 3 %.

            Predicted: the project's NMC defaults for a pack of one cell. What a row has given to the model is marked, so that
            nobody takes a fit for a prediction:

            | mark | the row is | what came from it |
            | --- | --- | --- |
            | * | set | the capacity, {model.CapacityAmpereHours:F3} Ah, is such that its charge is met: no error possible |
            | † | fitted | the cold table, with another open-circuit curve, so not met exactly; resistance, activation energy |
            | ‡ | used for its voltage | resistance and activation energy, means over C/2 and 1C; its charge is predicted |
            | none | held out | nothing: a prediction |

            The open-circuit voltage comes from another cell type. Heat: 47 J/K and 0.37 W/K (single cell, fan chamber), which
            reproduce the rise of temperature of the one discharge at 2C and 25 °C. The chamber is taken at the temperature with
            which its C/20 discharge begins, the cell at the one with which its own begins.

            A positive error says that the prediction is too long or too much. Charge at the measured current is runtime.


            """);
        text.Append("| chamber °C | rate | current A | charge measured Ah | predicted Ah | error % | held within % "
            + "| energy measured Wh | predicted Wh | error % | cell at end, predicted °C |\n");
        text.Append("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
    }

    private static void Row(StringBuilder text, CellComparison row)
    {
        var one = row.Measured;
        text.Append(CultureInfo.InvariantCulture,
            $"| {one.ChamberCelsius:F0} | {one.Rate}{Mark(row.Use)} | {one.Amperes:F3} | {one.AmpereHours:F3} | "
            + $"{row.AmpereHours:F3} | {Percent(row.ChargeError)} | {Claim(row)} | {one.WattHours:F2} | "
            + $"{row.WattHours:F2} | {Percent(row.EnergyError)} | {row.EndCelsius:F1} |\n");
    }

    private static void HowWell(StringBuilder text, IReadOnlyList<CellComparison> rows)
    {
        text.Append("\n## How well it does\n\n| chamber °C | rates | largest error of the charge % | of the energy % |\n"
            + "| --- | --- | --- | --- |\n");
        foreach (var name in Rates)
        {
            foreach (var group in rows.Where(row => (row.Measured.Rate == "2C") == (name == "2C"))
                .GroupBy(row => row.Measured.ChamberCelsius))
            {
                text.Append(CultureInfo.InvariantCulture,
                    $"| {group.Key:F0} | {name} | {Largest(group.Select(row => row.ChargeError))} | "
                    + $"{Largest(group.Select(row => row.EnergyError))} |\n");
            }
        }

        text.Append("\n| what the rows have given | rows | largest error of the charge % | of the energy % |\n"
            + "| --- | --- | --- | --- |\n");
        foreach (var group in rows.GroupBy(row => (row.Use, Claimed: row.ClaimedTolerance is not null))
            .OrderBy(group => group.Key.Use).ThenByDescending(group => group.Key.Claimed))
        {
            text.Append(CultureInfo.InvariantCulture,
                $"| {Name(group.Key.Use)}{Claimed(group.Key.Use, group.Key.Claimed)} | {group.Count()} | "
                + $"{Largest(group.Select(row => row.ChargeError))} | {Largest(group.Select(row => row.EnergyError))} |\n");
        }

        text.Append("\nWorst of the whole table: ");
        text.AppendJoin("; ", rows.OrderByDescending(row => Math.Abs(row.ChargeError)).Take(4).Select(row =>
            $"{row.Measured.Rate} at {row.Measured.ChamberCelsius:F0} °C, {Percent(row.ChargeError)} %"));
        text.Append(".\n");
    }

    private static void WhatIsHeld(StringBuilder text, IReadOnlyList<CellComparison> rows)
    {
        var warm = rows.Where(row => row.Measured is { ChamberCelsius: 25, Rate: not "2C" })
            .Select(row => 100 * row.EnergyError).ToList();
        var claimed = rows.Where(row => row is { ClaimedTolerance: not null, Use: not RowUse.Set }).ToList();
        var heldOut = claimed.Count(row => row.Use == RowUse.HeldOut);
        text.Append(CultureInfo.InvariantCulture, $"""

            An answer states the largest of these errors, of charge or energy, among the rows around its run: from the next
            colder to the next warmer chamber, and from the next lower to the next higher rate. Beyond the rows it says that
            nobody has measured it.

            Held by a check, {claimed.Count} of {rows.Count} rows and {heldOut} of these held out: the runtime at a steady
            current of C/20 to 1C within 2 % at 25 °C, 3 % at 10 and 0 °C, 20 % at -20 °C; at -10 °C within 3 % at C/2 and 1C.

            Not claimed, and so with a dash above; a check holds that the errors are these, neither larger nor smaller:

            | chamber °C | rate | error of the charge % | of the energy % | why |
            | --- | --- | --- | --- | --- |

            """);
        foreach (var row in rows.Where(row => row.WhyNotClaimed is not null))
        {
            text.Append(CultureInfo.InvariantCulture,
                $"| {row.Measured.ChamberCelsius:F0} | {row.Measured.Rate} | {Percent(row.ChargeError)} | "
                + $"{Percent(row.EnergyError)} | {row.WhyNotClaimed} |\n");
        }

        double At(double celsius, string rate) => 100 * rows.First(row =>
            row.Measured.ChamberCelsius == celsius && row.Measured.Rate == rate).ChargeError;
        var (cold, coldest) = (-At(-10, "C/20"), -At(-20, "C/20"));
        text.Append(CultureInfo.InvariantCulture, $"""

            A camera battery seldom sees more than 1C. In the cold the prediction for very light loads is too short, by
            {cold:F0} % at -10 °C and {coldest:F0} % at -20 °C: claimed at -20 °C only because so little is claimed there.

            The energy is a little high at 25 °C ({warm.Min():F1} to {warm.Max():F1} % up to 1C), because the open-circuit
            voltage is that of another cell; for a constant power, which is what a camera draws, the error of the runtime is
            that of the energy.

            """);
    }

    private static string Mark(RowUse use) => use switch
    {
        RowUse.Set => " *",
        RowUse.Fitted => " †",
        RowUse.VoltageUsed => " ‡",
        _ => "",
    };

    private static string Name(RowUse use) => use switch
    {
        RowUse.Set => "* set",
        RowUse.Fitted => "† fitted",
        RowUse.VoltageUsed => "‡ used for their voltage",
        _ => "held out",
    };

    private static string Claimed(RowUse use, bool claimed) =>
        use == RowUse.Set ? "" : claimed ? ", claimed" : ", not claimed";

    private static string Claim(CellComparison row) => row.Use == RowUse.Set ? "set"
        : row.ClaimedTolerance is { } claim ? (100 * claim).ToString("F0", CultureInfo.InvariantCulture) : "–";

    private static string Percent(double error) => (100 * error).ToString("+0.0;-0.0;0.0", CultureInfo.InvariantCulture);

    private static string Largest(IEnumerable<double> errors) => Percent(errors.MaxBy(Math.Abs));
}
