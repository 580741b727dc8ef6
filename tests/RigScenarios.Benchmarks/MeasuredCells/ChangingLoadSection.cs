using System.Globalization;
using System.Text;

namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>The part of docs/measured-cells.md about pulses and a load that changes every second.</summary>
internal static class ChangingLoadSection
{
    /// <param name="text">The page.</param>
    /// <param name="model">The defaults.</param>
    /// <param name="own">The same with the cell's own open-circuit voltage.</param>
    /// <param name="folder">The folder of the measured data.</param>
    public static void Write(StringBuilder text, MeasuredCellModel model, MeasuredCellModel own, string folder)
    {
        text.Append("""

            ## A pulse

            What a pulse of 1C shows on the rested cell of the first table, mean of 35 to 68 % of charge. From the pulses come
            the floor in the warm (40 °C) and the share that acts at once (25 °C); the growth in the cold is that of steady loads.

            | chamber °C | 1 s, measured mΩ | predicted | error % | 10 s, measured mΩ | predicted | error % |
            | --- | --- | --- | --- | --- | --- | --- |

            """);
        foreach (var pulses in MeasuredPulse.Read(folder).Where(pulse => pulse.IsMiddle).GroupBy(pulse => pulse.ChamberCelsius))
        {
            var measured1 = pulses.Average(one => one.Milliohms1);
            var predicted1 = pulses.Average(one => one.Predicted(model, 1));
            var measured10 = pulses.Average(one => one.Milliohms10);
            var predicted10 = pulses.Average(one => one.Predicted(model, 10));
            text.Append(CultureInfo.InvariantCulture,
                $"| {pulses.Key:0} | {measured1:F1} | {predicted1:F1} | {PageText.Percent((predicted1 / measured1) - 1)} | "
                + $"{measured10:F1} | {predicted10:F1} | {PageText.Percent((predicted10 / measured10) - 1)} |\n");
        }

        text.Append("""

            In the deep cold the first seconds are the weakest point of the model: the pulse is far too small there, because what
            a steady load shows is in the slow exchange of the two wells. Within a tenth of a second the model shows nearly what
            it shows after one, at 25 °C nearly twice the measured value: what acts within half a second counts as instant. Under
            a fast inrush the voltage falls less than predicted. Nearly full and nearly empty cells resist more than the model
            knows.

            ## A load that changes every second

            A vehicle's load on the same cell, peaks up to six times the capacity in an hour, with currents into the cell.
            Nothing was fitted on it, and nothing is claimed for it. The voltage is compared over the whole record, also where the
            model is below 2.8 V.


            """);
        text.Append("| chamber °C | largest A | voltage error, rms mV | mean mV | own voltage, rms mV | mean mV "
            + "| charge to 2.8 V, measured Ah | predicted | energy, measured Wh | predicted |\n"
            + "| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
        foreach (var (cycle, with) in DriveCycle.Read(folder, model).Zip(DriveCycle.Read(folder, own)))
        {
            var over = cycle.Outlasts ? "over " : "";
            text.Append(CultureInfo.InvariantCulture,
                $"| {cycle.ChamberCelsius:0} | {cycle.LargestAmperes:F1} | {1000 * cycle.VoltsRms:F0} | "
                + $"{1000 * cycle.VoltsMean:+0;-0} | {1000 * with.VoltsRms:F0} | {1000 * with.VoltsMean:+0;-0} | "
                + $"{cycle.AmpereHours:F3} | {over}{cycle.PredictedAmpereHours:F3} | {cycle.WattHours:F2} | "
                + $"{over}{cycle.PredictedWattHours:F2} |\n");
        }

        text.Append("""

            At 25 and -20 °C the model runs as long as the record. At 0 and -10 °C it still ends at a peak, too early: a
            resistance that grows with the cold alike at every current is too much for a short peak of 2C and more. Between
            the loads its voltage is too low in the cold. A camera stays below 1C, where the first table holds.

            """);
    }
}
