using RigScenarios.Answers;
using RigScenarios.Answers.Years;
using RigScenarios.Charts.Lines;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Charts.Aging;

/// <summary>The years ahead of a battery and of the planned days with it: capacity, resistance, and how long the rig runs, each
/// between the published fits.</summary>
public static class YearsAheadChart
{
    /// <summary>What the pale area of these charts is.</summary>
    public const string Band = "other published fits";

    private const int PlannedLook = 0;
    private const int ColdLook = 1;

    /// <summary>The figure: three panels over the years from now, with marks for 80 % and for the first day that does not
    /// last.</summary>
    /// <param name="years">The years ahead.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="battery">Which battery's capacity and resistance are shown, from 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such battery.</exception>
    public static Figure Of(YearsResult years, string title, int battery = 0)
    {
        ArgumentNullException.ThrowIfNull(years);
        ArgumentOutOfRangeException.ThrowIfNegative(battery);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(battery, years.Batteries.Count);
        var one = years.Batteries[battery];
        return new LineChart
        {
            Slug = "years-ahead",
            Title = title,
            Caption = $"The pale area: {Band}, and no bound on what a battery may do. Marked where they lie within these years: "
                + "the first day that does not last, and 80 % of the capacity.",
            Cautions = [AgingSentences.MeasuredCells, AgingSentences.Measure],
            X = new ChartAxis($"time from {YearsSentences.Month(years.From)}", "years"),
            Panels = [Capacity(one), Resistance(one), Runtime(years)],
            Marks = [.. Marks(years, one)],
        }.ToFigure();
    }

    private static ChartPanel Capacity(BatteryOutlook battery)
    {
        var axis = ChartAxis.Of("capacity left", RatioUnit.Percent);
        return new ChartPanel(axis, [OfAge("capacity", battery, age => axis.Value(age.CapacityLeft)) with { BandName = Band }])
        {
            Limits = [new LimitLine("replaced by convention: 80 %", 80)],
        };
    }

    private static ChartPanel Resistance(BatteryOutlook battery) => new(
        new ChartAxis("resistance, times that of a new one"),
        [OfAge("resistance", battery, age => age.ResistanceFactor) with { BandName = Band }]);

    private static ChartPanel Runtime(YearsResult years)
    {
        var axis = ChartAxis.Of("the rig runs from call time", DurationUnit.Hour) with { FromZero = true };
        var lines = new List<ChartLine>
        {
            OfDays("in the planned air", years, day => (day.Days, day.Least, day.Greatest), axis) with
            {
                Look = PlannedLook, BandName = Band,
            },
        };
        if (years.Days.All(day => day is { Cold: not null, ColdLeast: not null, ColdGreatest: not null }))
            lines.Add(OfDays($"at {TradeUnits.Text(years.Question.Cold)}", years,
                day => (day.Cold!, day.ColdLeast!, day.ColdGreatest!), axis) with { Look = ColdLook });
        var times = new AnswerTimes(years.Now.Plan.Days);
        var wrap = times.Wrap(years.Now.Plan.Days.Count - 1);
        return new ChartPanel(axis, lines)
        {
            Limits = [new LimitLine($"wrap, {times.At(wrap)}", axis.Value(wrap - times.Start(0)))],
        };
    }

    private static ChartLine OfAge(string name, BatteryOutlook battery, Func<Cells.Age, double> value)
    {
        double[] Of(AgeOnDate at) => [value(at.Age), value(at.Least), value(at.Greatest)];
        return new ChartLine(name, [.. battery.Ages.Select(at => at.Years)], [.. battery.Ages.Select(at => value(at.Age))])
        {
            Lower = [.. battery.Ages.Select(at => Of(at).Min())],
            Upper = [.. battery.Ages.Select(at => Of(at).Max())],
        };
    }

    private static ChartLine OfDays(string name, YearsResult years,
        Func<DaysOnDate, (DayFigures Middle, DayFigures Least, DayFigures Greatest)> of, ChartAxis axis)
    {
        double[] Of(DaysOnDate day) => [axis.Value(of(day).Middle.Runtime), axis.Value(of(day).Least.Runtime),
            axis.Value(of(day).Greatest.Runtime)];
        return new ChartLine(name, [.. years.Days.Select(day => day.Years)],
            [.. years.Days.Select(day => axis.Value(of(day).Middle.Runtime))])
        {
            Kind = LineKind.CurveWithPoints,
            Lower = [.. years.Days.Select(day => Of(day).Min())],
            Upper = [.. years.Days.Select(day => Of(day).Max())],
        };
    }

    private static IEnumerable<ChartMark> Marks(YearsResult years, BatteryOutlook battery)
    {
        var last = years.Days[^1].Years;
        (DateOnly? Date, string Words)[] dates =
            [(battery.Eighty.Middle, "80 % left"), (years.LastDay.Middle, "lasts no longer")];
        foreach (var (date, words) in dates)
        {
            if (date is { } day && YearsTo(years, day) is var at && at > 0 && at <= last)
                yield return new ChartMark($"{YearsSentences.Month(day)}: {words}", at);
        }
    }

    private static double YearsTo(YearsResult years, DateOnly day) => (day.DayNumber - years.From.DayNumber) / DaysOfYear;

    private const double DaysOfYear = 365.25;
}
