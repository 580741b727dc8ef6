using System.Globalization;
using System.Text;
using RigScenarios.Batteries;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>The part of docs/measured-cells.md that holds the defaults against published discharges of other cells.</summary>
internal static class OtherCellsSection
{
    public static void Write(StringBuilder text)
    {
        text.Append("""

            ## Other cells

            The same defaults for cells of four other types, each with the capacity that its slowest discharge asks for (*), its
            own mass and size, in still air, to 2.5 V. Nothing else was fitted. Three are data sheets at second hand, two of these
            read from curves (within 1 or 2 %); one was measured, two specimens. Names and sources: `OtherDischarge` of the
            command. None of them is a camera battery.

            | cell | air °C | rate | charge published Ah | predicted Ah | error % | energy published Wh | predicted Wh | error % |
            | --- | --- | --- | --- | --- | --- | --- | --- | --- |

            """);
        var rows = OtherDischarge.All.Select(one => (One: one, one.Cell.Run(one.Amperes, one.Celsius).Energies)).ToList();
        foreach (var (one, energies) in rows)
        {
            text.Append(CultureInfo.InvariantCulture,
                $"| {one.Cell.Name} | {one.Celsius:0.#} | {one.Rate}{(one.IsSet ? " *" : "")} | {one.AmpereHours:F2} | "
                + $"{energies.ChargeDrawn.AmpereHours:F2} | {(one.IsSet ? "set" : Percent(ChargeError(one, energies)))} | "
                + $"{one.WattHours?.ToString("F2", CultureInfo.InvariantCulture) ?? "–"} | {energies.Delivered.WattHours:F2} | "
                + $"{(one.WattHours is null ? "–" : Percent(EnergyError(one, energies)))} |\n");
        }

        var charges = rows.Where(row => row.One is { IsSet: false, Celsius: > -20 })
            .Select(row => ChargeError(row.One, row.Energies)).ToList();
        var cold = rows.Single(row => row.One.Celsius == -20);
        var energy = rows.Where(row => row.One is { IsSet: false, WattHours: not null })
            .Select(row => EnergyError(row.One, row.Energies)).ToList();
        var (least, most) = (Percent(charges.Min()), Percent(charges.Max()));
        var (low, high) = (Percent(energy.Min()), Percent(energy.Max()));
        var frost = Percent(ChargeError(cold.One, cold.Energies));
        text.Append(CultureInfo.InvariantCulture, $"""

            From -10 °C up the charge, and so the runtime at a steady current, is off by {least} to {most} %; at -20 °C by
            {frost} %, where self-heating decides and nobody says how the cell was cooled. The energy, and so the runtime at a
            steady power, is {low} to {high} % too much for the measured cell, whose open-circuit voltage is lower than the one
            assumed. The claims above are for the cell of the first table; another one adds this.

            """);
    }

    private static double ChargeError(OtherDischarge one, EnergyAccount energies) =>
        (energies.ChargeDrawn.AmpereHours / one.AmpereHours) - 1;

    private static double EnergyError(OtherDischarge one, EnergyAccount energies) =>
        (energies.Delivered.WattHours / one.WattHours!.Value) - 1;

    private static string Percent(double error) => (100 * error).ToString("+0.0;-0.0;0.0", CultureInfo.InvariantCulture);
}
