using RigScenarios.Answers;
using RigScenarios.Answers.Fitted;
using RigScenarios.Charts.Lines;
using RigScenarios.Days;
using UnitsNet.Units;

namespace RigScenarios.Charts.Fits;

/// <summary>What is left in the battery over a day: as its label has it, and as notes and logs say, with the band of what is
/// open.</summary>
public static class FittedDayChart
{
    /// <summary>The figure.</summary>
    /// <param name="band">The day, run four times.</param>
    /// <param name="title">What the chart answers.</param>
    public static Figure Of(DayBand band, string title = "Does the battery last the day?")
    {
        ArgumentNullException.ThrowIfNull(band);
        var (axis, times) = (ChartAxis.Of("charge left", ElectricChargeUnit.AmpereHour) with { From = 0 },
            new AnswerTimes(band.Fitted.Plan.Days));
        var (fitted, least, most) = (Course.Of(band.Fitted), Course.Of(band.Least), Course.Of(band.Most));
        // All times of all three, so that the band turns where each of them does.
        double[] hours = [.. fitted.Hours.Concat(least.Hours).Concat(most.Hours).Distinct().Order()];
        var labelled = Course.Of(band.AsLabelled);
        var line = new ChartLine("as your notes say", hours, [.. hours.Select(fitted.At)])
        {
            Lower = [.. hours.Select(hour => Math.Min(least.At(hour), fitted.At(hour)))],
            Upper = [.. hours.Select(hour => Math.Max(most.At(hour), fitted.At(hour)))],
            Look = 0,
        };
        var day = band.Fitted.Plan.Days[0];
        return new LineChart
        {
            Slug = "fitted-day",
            Title = title,
            Caption = "The band holds 95 % of what battery and day may still be. A line that stays level has stopped with "
                + "that much "
                + "left inside.",
            Cautions = [AnswerCautions.Predicted(band.Fitted.Simulation.ExpectedError)],
            X = ChartAxis.ClockTime(),
            Blocks = [.. Blocks(times, day)],
            Panels = [new ChartPanel(axis, [line, new ChartLine("new, as the label has it", labelled.Hours, labelled.AmpereHours)
                { Look = 1 }])],
        }.ToFigure();
    }

    private static IEnumerable<ChartBlock> Blocks(AnswerTimes times, ShootingDay day)
    {
        var at = times.Start(0).Hours;
        foreach (var (name, block) in day.Blocks)
        {
            yield return new ChartBlock(block.Title ?? name, at, at + block.Length.Hours);
            at += block.Length.Hours;
        }
    }

    /// <summary>The charge of the battery over the day, in ampere-hours.</summary>
    private sealed record Course(double[] Hours, double[] AmpereHours)
    {
        public static Course Of(RigAnswer answer)
        {
            var (name, battery) = answer.Plan.Batteries.First();
            var label = battery.Part.Battery!;
            var holds = (label.Capacity?.AmpereHours ?? (label.Energy.WattHours / label.Voltage.Volts))
                * (battery.CapacityLeft?.DecimalFractions ?? 1);
            var wrap = new AnswerTimes(answer.Plan.Days).Wrap(0).Hours;
            var points = answer.Simulation.Batteries[name].Charges.Where(point => point.Time.Hours <= wrap).ToList();
            return new([.. points.Select(point => point.Time.Hours)],
                [.. points.Select(point => point.Charge.DecimalFractions * holds)]);
        }

        /// <summary>The charge at a time, straight between two points.</summary>
        public double At(double hour)
        {
            var next = Array.FindIndex(Hours, given => given >= hour);
            if (next <= 0)
                return next < 0 ? AmpereHours[^1] : AmpereHours[0];
            var length = Hours[next] - Hours[next - 1];
            var part = length > 0 ? (hour - Hours[next - 1]) / length : 1;
            return AmpereHours[next - 1] + (part * (AmpereHours[next] - AmpereHours[next - 1]));
        }
    }
}
