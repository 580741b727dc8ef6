using System.Globalization;
using System.Text;
using RigScenarios.Benchmarks.Cases;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>`measured-cells [DATA_FOLDER] [OUT.md]`: predicts the measured discharges and writes how far off it is.</summary>
internal static class MeasuredCellsCommand
{
    public const string Usage = "measured-cells [DATA_FOLDER] [OUT.md]";

    public static int Run(ReadOnlySpan<string> arguments)
    {
        if (arguments.Length > 2)
        {
            Console.Error.WriteLine($"At most a folder and a file are needed: {Usage}");
            return 2;
        }

        var folder = arguments.Length > 0 ? arguments[0] : MeasuredDischarge.FindFolder(Environment.CurrentDirectory)
            ?? throw new CaseFileException(
                $"The measured data ({MeasuredDischarge.FileName}) is not in the reference folder beside the project; name "
                    + $"its folder: {Usage}");
        var model = new MeasuredCellModel(MeasuredDischarge.Read(folder));
        var text = Page(model);
        if (arguments.Length == 2)
            OutputFile.Write(arguments[1], text);
        else
            Console.Write(text);
        return 0;
    }

    private static string Page(MeasuredCellModel model)
    {
        var rows = model.CompareAll();
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"""
            # The discharge model against a measured cell

            Made by `dotnet run -c Release --project tests/RigScenarios.Benchmarks -- measured-cells DATA_FOLDER docs/measured-cells.md`;
            change the model, not this page.

            Measured: one 3 Ah NMC/graphite 18650 cell, constant current to 2.8 V, at six chamber temperatures. P. Kollmeyer, C. Vidal,
            M. Naguib, M. Skells (2020), doi:10.17632/cp3473x7xv.3, CC BY 4.0. One cell only: another of the same type may differ by 3 %.

            Predicted: the project's NMC defaults for a pack of one cell. From these measurements come
            the capacity, {model.CapacityAmpereHours:F3} Ah, set so that the one C/20 discharge at 25 °C (marked *) is met; the cold table, fitted on the
            C/2 discharges (marked †; with another open-circuit curve, so they are not met exactly); the sustained resistance and its activation energy, means over
            C/2 and 1C. The open-circuit voltage comes from another cell type. Heat: 47 J/K and 0.37 W/K (single cell, fan chamber). The
            chamber is taken at the temperature with which its C/20 discharge begins, the cell at the one with which its own begins.

            A positive error says that the prediction is too long or too much. Charge at the measured current is runtime.

            | chamber °C | rate | current A | charge measured Ah | predicted Ah | error % | held within % | energy measured Wh | predicted Wh | error % | cell at end, predicted °C |
            | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |

            """);
        foreach (var row in rows)
        {
            var (one, mark) = (row.Measured, row.Measured switch
            {
                { ChamberCelsius: 25, Rate: "C/20" } => " *",
                { Rate: "C/2", ChamberCelsius: < 40 } => " †",
                _ => "",
            });
            text.Append(CultureInfo.InvariantCulture,
                $"| {one.ChamberCelsius:F0} | {one.Rate}{mark} | {one.Amperes:F3} | {one.AmpereHours:F3} | "
                    + $"{row.AmpereHours:F3} | {100 * row.ChargeError:+0.0;-0.0;0.0} | "
                        + $"{(row.ClaimedTolerance is { } claim ? $"{100 * claim:F0}" : "–")} | {one.WattHours:F2} | "
                            + $"{row.WattHours:F2} | {100 * row.EnergyError:+0.0;-0.0;0.0} | {row.EndCelsius:F1} |\n");
        }

        text.Append("\n## How well it does\n\n| chamber °C | rates | largest error of the charge % | of the energy % |\n| --- "
            + "| --- | --- | --- |\n");
        foreach (var (name, belongs) in new (string, Func<MeasuredDischarge, bool>)[]
        {
            ("C/20 to 1C", one => one.Rate != "2C"),
            ("2C", one => one.Rate == "2C"),
        })
        {
            foreach (var group in rows.Where(row => belongs(row.Measured)).GroupBy(row => row.Measured.ChamberCelsius))
            {
                text.Append(CultureInfo.InvariantCulture,
                    $"| {group.Key:F0} | {name} | {Largest(group.Select(row => row.ChargeError)):+0.0;-0.0} | "
                        + $"{Largest(group.Select(row => row.EnergyError)):+0.0;-0.0} |\n");
            }
        }

        text.Append("\nWorst of the whole table: ");
        text.AppendJoin("; ", rows.OrderByDescending(row => Math.Abs(row.ChargeError)).Take(4).Select(row =>
            $"{row.Measured.Rate} at {row.Measured.ChamberCelsius:F0} °C, {100 * row.ChargeError:+0.0;-0.0} %"));
        text.Append(".\n\n");
        var warm = rows.Where(row => row.Measured is { ChamberCelsius: 25, Rate: not "2C" })
            .Select(row => 100 * row.EnergyError).ToList();
        double At(double celsius, string rate) =>
            100 * rows.First(row => row.Measured.ChamberCelsius == celsius && row.Measured.Rate == rate).ChargeError;
        text.Append(CultureInfo.InvariantCulture, $"""
            An answer states the largest of these errors, of charge or energy, among the rows around its run: from the next colder to the next warmer
            chamber, and from the next lower to the next higher rate. Beyond the rows it says that nobody has measured it.

            Held by a check: the runtime at a steady current of C/20 to 1C within 2 % at 25 °C, 3 % at 10 and 0 °C, 20 % at -20 °C; at -10 °C within 3 % at C/2 and 1C.
            Not held (–):

            - 2C at any temperature: a steady ohmic resistance is too kind to the cell in the cold, where the prediction is far too long. A camera
              pack seldom sees more than 1C.
            - 40 °C: this cell gave 3 % less at 40 °C than at 25 °C, which the model doesn't know of; it predicts {At(40, "C/20"):F0} to {At(40, "2C"):F0} % too much.
            - C/20 at -10 °C: a discharge of a day gives more than the cold table, fitted at C/2, says. In the cold the
              prediction for very light loads is too short, by {-At(-10, "C/20"):F0} % at -10 °C and {-At(-20, "C/20"):F0} % at -20 °C.

            The energy is a little high at 25 °C ({warm.Min():F1} to {warm.Max():F1} % up to 1C), because the open-circuit voltage is that of another
            cell; for a constant power, which is what a camera draws, the error of the runtime is that of the energy.

            """);
        return text.ToString();
    }

    private static double Largest(IEnumerable<double> errors) => 100 * errors.MaxBy(Math.Abs);
}
