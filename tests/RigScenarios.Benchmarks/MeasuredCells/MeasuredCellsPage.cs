using System.Globalization;
using System.Text;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>The page docs/measured-cells.md: the measured discharges beside the predicted ones. A test holds the page against
/// this.</summary>
internal static class MeasuredCellsPage
{
    private const string DataFolder = "tests/RigScenarios.Checks/data/measured";

    private const string Target = "docs/measured-cells.md";

    /// <param name="folder">The folder of the measured data.</param>
    public static string Of(string folder)
    {
        var measured = MeasuredDischarge.Read(folder);
        var own = OwnOpenCircuit.Read(folder);
        var model = new MeasuredCellModel(measured);
        var rows = model.CompareAll();
        var text = new StringBuilder();
        Beginning(text, model);
        foreach (var row in rows)
            Row(text, row);
        Claims(text, rows);
        BeforeAndAfterSection.Write(text, measured, own, rows);
        LeftOutSection.Write(text, measured, own, folder);
        OwnHeatSection.Write(text, measured);
        ChangingLoadSection.Write(text, model, new MeasuredCellModel(measured, own: own), folder);
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

            Predicted: the project's NMC defaults ([discharge.md](discharge.md)) for a pack of one cell of
            {model.CapacityAmpereHours:F3} Ah. **The first table is no prediction.** The defaults were fitted on these very
            discharges:

            - **From all 23 rows**, with this open-circuit voltage and with the cell's own: exchange of the two wells, low-rate
              capacity in the cold, resistance and its growth in the cold. The shape of the model was chosen with all of them in
              view. The share of the near well is set to a half, not fitted.
            - **From C/20 at 25 °C**: the capacity.
            - **From the temperatures at the ends of these discharges**: the heat of the rig, 47 J/K (by the cell's mass) and
              {MeasuredCellModel.WattsPerKelvin:F2} W/K.
            - **Not from here**: the open-circuit voltage, which is that of another cell type.

            What was not fitted stands below: one temperature left out, pulses, a load that changes every second, other cells. The
            chamber is taken at the temperature with which its C/20 discharge begins, the cell at the one with which its own
            begins.

            A positive error says that the prediction is too long or too much. Charge at the measured current is runtime.


            """);
        text.Append("| chamber °C | rate | current A | charge measured Ah | predicted Ah | error % | energy measured Wh "
            + "| predicted Wh | error % | claimed within % | cell at end, measured °C | predicted °C |\n");
        text.Append("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
    }

    private static void Row(StringBuilder text, CellComparison row)
    {
        var one = row.Measured;
        text.Append(CultureInfo.InvariantCulture,
            $"| {one.ChamberCelsius:F0} | {one.Rate} | {one.Amperes:F3} | {one.AmpereHours:F3} | {row.AmpereHours:F3} | "
            + $"{PageText.Percent(row.ChargeError)} | {one.WattHours:F2} | {row.WattHours:F2} | "
            + $"{PageText.Percent(row.EnergyError)} | {100 * row.ClaimedTolerance:F0} | {one.EndCelsius:F1} | "
            + $"{row.EndCelsius:F1} |\n");
    }

    private static void Claims(StringBuilder text, IReadOnlyList<CellComparison> rows)
    {
        var warm = rows.Where(row => row.Measured.ChamberCelsius == 40).Select(row => row.ChargeError).ToList();
        var (least, most) = (PageText.Percent(warm.Min()), PageText.Percent(warm.Max()));
        text.Append(CultureInfo.InvariantCulture, $"""

            ## What is claimed

            5 % for C/20 to 1C from -20 to 40 °C; 5 % up to 2C from 0 °C up; 10 % above 1C below 0 °C. An answer states the claim
            for where its battery was, and never less than the largest error, of charge or energy, among the rows around its run:
            from the next colder to the next warmer chamber, from the next lower to the next higher rate. Beyond the rows it says
            that nobody has measured it: at -30 °C and above 2C the model is extrapolated. Age, another cell, LFP (whose cold
            values are borrowed from this cell) and a load that changes come on top. For a constant power, which is what a camera
            draws, the error of the runtime is that of the energy.

            At 40 °C the charge is {least} to {most} % too much for this cell: from that set on, the second that was measured, it
            gave 3 % less than in the first, at 25 °C. Its rested voltages agree down to half charge and part below, so that looks
            like age, not like temperature. The low-rate capacity contains it: a new cell may give up to 3 % more at 10 °C and
            below.

            """);
    }
}
