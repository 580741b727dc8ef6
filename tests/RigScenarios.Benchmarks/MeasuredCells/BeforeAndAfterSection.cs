using System.Globalization;
using System.Text;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>The part of docs/measured-cells.md that holds one well against two.</summary>
internal static class BeforeAndAfterSection
{
    public static void Write(
        StringBuilder text, IReadOnlyList<MeasuredDischarge> measured, OwnOpenCircuit own, IReadOnlyList<CellComparison> now)
    {
        List<(string Name, IReadOnlyList<CellComparison> Rows)> models =
        [
            ("before", Before(measured, MeasuredCellModel.FormerWattsPerKelvin)),
            ("before, this heat", Before(measured, MeasuredCellModel.WattsPerKelvin)),
            ("now", now),
            ("now, own voltage", new MeasuredCellModel(measured, own: own).CompareAll()),
        ];
        text.Append(CultureInfo.InvariantCulture, $"""

            ## Before and after

            Before: one well, and a table that takes charge away by temperature alone, fitted on the discharges at C/2. That is
            still what a battery gets whose file has its own cold table or its own resistances and says nothing of wells. It was
            held against the rig with {MeasuredCellModel.FormerWattsPerKelvin:F2} W/K, from the rise of one discharge; a part
            of its error at large currents was that heat, the rest no table by temperature can mend. Own voltage: that of this
            cell, from C/20 at 25 °C, with {own.CapacityAmpereHours:F2} Ah. Errors of charge, energy in %.


            """);
        text.Append("| chamber °C | rate | ").AppendJoin(" | ", models.Select(model => model.Name)).Append(" |\n")
            .Append("| --- | --- | --- | --- | --- | --- |\n");
        for (var i = 0; i < measured.Count; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"| {measured[i].ChamberCelsius:0} | {measured[i].Rate} | ")
                .AppendJoin(" | ", models.Select(model =>
                    $"{PageText.Percent(model.Rows[i].ChargeError)}, {PageText.Percent(model.Rows[i].EnergyError)}"))
                .Append(" |\n");
        }

        text.Append("| all | largest | ").AppendJoin(" | ", models.Select(model =>
                $"{PageText.Largest(model.Rows.Select(row => row.ChargeError))}, "
                + PageText.Largest(model.Rows.Select(row => row.EnergyError)))).Append(" |\n")
            .Append("| all | root mean square | ").AppendJoin(" | ", models.Select(model =>
                $"{PageText.Rms(model.Rows.Select(row => row.ChargeError))}, "
                + PageText.Rms(model.Rows.Select(row => row.EnergyError)))).Append(" |\n");
    }

    /// <summary>One well with its values, in a rig of a heat conductance.</summary>
    public static IReadOnlyList<CellComparison> Before(IReadOnlyList<MeasuredDischarge> measured, double wattsPerKelvin) =>
        new MeasuredCellModel(measured, CellSet.Before, wattsPerKelvin).CompareAll();
}
