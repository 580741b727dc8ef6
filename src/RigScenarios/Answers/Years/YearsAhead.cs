using RigScenarios.Cells;
using RigScenarios.Cells.Aging;
using RigScenarios.Numerics;
using UnitsNet;

namespace RigScenarios.Answers.Years;

/// <summary>
/// The years ahead: how the batteries of a build go on to age, when its days no longer last, when to replace them, how best to
/// keep them, and what they cost. Every figure of a day is a run of the simulation with that day's ages. docs/battery-age.md.
/// </summary>
public static class YearsAhead
{
    private const double DaysOfYear = 365.25;
    private const int MonthsOfYear = 12;

    // Half-years for the next years, and fewer runs for a table over decades.
    private const int MostDatesOfHalfYears = 10;
    private const int MostDates = 20;

    /// <summary>Looks ahead.</summary>
    /// <param name="now">The answer of today; its build, days, wish and arriving batteries hold for all years.</param>
    /// <param name="question">What is asked; null for the usual.</param>
    /// <param name="progress">Told of the part that is done, 0…1; null for nobody.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ArgumentException">No date is known from which on to look, or the plan has no such battery.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static YearsResult Of(RigAnswer now, YearsQuestion? question = null, IProgress<double>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(now);
        question ??= new YearsQuestion();
        var from = StartOf(now, question);
        var coldest = now.Plan.Days.SelectMany(day => day.AmbientPoints.Select(point => point.Temperature)
            .DefaultIfEmpty(day.Ambient ?? now.Plan.Ambient)).Min();
        var days = new AgedDays(now.Powered, now.Plan, coldest > question.Cold ? question.Cold : null, cancellation);
        var lives = now.Plan.Batteries.Values.Select(battery => battery.Life ?? LifeInWords.Usual).ToList();
        BatteriesAhead Kept(Func<LifeInWords, LifeInWords> how) => new([.. now.Plan.Batteries.Select((battery, i) =>
            new BatteryPath(battery.Value.KnownAge, AheadPattern.Of(how(lives[i]), now.Simulation.Batteries[battery.Key],
                now.Plan.Days.Count)))], days, now.Options.Wish, cancellation);
        var ahead = Kept(life => life);

        var times = Times(question.Years);
        var jobs = new List<Action>();
        var rows = new DaysOnDate[times.Count];
        for (var i = 0; i < times.Count; i++)
        {
            var (row, time) = (i, times[i]);
            jobs.Add(() => rows[row] = Row(ahead, from, time, coldest > question.Cold));
        }
        var fails = new Duration?[3];
        var asNew = days.At([.. lives.Select(_ => Age.New)]);
        // Days that no new battery lasts are not ended by any age.
        var ends = asNew.Lasts(now.Options.Wish);
        foreach (var end in Enum.GetValues<AgeEnd>().Where(_ => ends))
            jobs.Add(() => fails[(int)end] = ahead.UntilDaysFail(end));
        var chosen = question.Battery is { } wanted ? now.Plan.Batteries.Keys.ToList().IndexOf(wanted) : 0;
        ArgumentOutOfRangeException.ThrowIfNegative(chosen, nameof(question));
        var ways = StorageWays.Of(lives[chosen]);
        var cases = new StorageCase[ways.Count];
        for (var i = 0; i < ways.Count; i++)
        {
            var (number, way) = (i, ways[i]);
            jobs.Add(() => cases[number] = StorageWays.Run(way, Kept(life => life with { Kept = way.Kept, Place = way.Place }),
                chosen, from, ends));
        }
        Run(jobs, progress, cancellation);

        var lastDay = Dates(from, fails[0], fails[1], fails[2]);
        return new YearsResult
        {
            Now = now, Question = question, From = from, Days = rows, New = asNew, LastDay = lastDay,
            Batteries = [.. now.Plan.Batteries.Select((battery, i) => Outlook(now, question, from, battery.Key, lives[i],
                ahead.Paths[i], fails, rows))],
            Storage = [.. cases.OrderByDescending(one => one.After[^1].Age.CapacityLeft.DecimalFractions)],
            Runs = days.Runs,
        };
    }

    // The latest day for which an age is asked: a battery of an earlier one is not made older for the difference.
    private static DateOnly StartOf(RigAnswer now, YearsQuestion question)
    {
        var told = now.Plan.Batteries.Values.Select(battery => battery.Life?.Until).Where(until => until is not null).ToList();
        return (told.Count > 0 ? told.Max() : null) ?? question.From ?? now.Options.Today
            ?? throw new ArgumentException(
                "The day from which on it is asked is not given; accepted: a date, or a battery's life "
                + "that says until when it goes.", nameof(question));
    }

    private static void Run(List<Action> jobs, IProgress<double>? progress, CancellationToken cancellation)
    {
        var done = 0;
        try
        {
            Parallel.ForEach(jobs, EveryCore.Until(cancellation), job =>
            {
                job();
                progress?.Report((double)Interlocked.Increment(ref done) / jobs.Count);
            });
        }
        catch (AggregateException exception)
            when (exception.InnerExceptions.Any(inner => inner is OperationCanceledException))
        {
            throw new OperationCanceledException("The look ahead was stopped.", exception, cancellation);
        }
    }

    private static List<Duration> Times(int years)
    {
        var half = 2 * years <= MostDatesOfHalfYears;
        var step = half ? 0.5 : Math.Max(1, Math.Ceiling((double)years / MostDates));
        var times = new List<Duration>();
        for (var year = 0.0; year < years; year += step)
            times.Add(Duration.FromDays(year * DaysOfYear));
        times.Add(Duration.FromDays(years * DaysOfYear));
        return times;
    }

    private static DaysOnDate Row(BatteriesAhead ahead, DateOnly from, Duration time, bool cold) => new(
        DateAfter(from, time), time.Days / DaysOfYear, ahead.DaysAt(time), ahead.DaysAt(time, AgeEnd.Least),
        ahead.DaysAt(time, AgeEnd.Greatest), cold ? ahead.DaysAt(time, AgeEnd.Middle, true) : null,
        cold ? ahead.DaysAt(time, AgeEnd.Least, true) : null, cold ? ahead.DaysAt(time, AgeEnd.Greatest, true) : null);

    private static BatteryOutlook Outlook(RigAnswer now, YearsQuestion question, DateOnly from, string name, LifeInWords life,
        BatteryPath path, Duration?[] fails, IReadOnlyList<DaysOnDate> rows)
    {
        var battery = now.Plan.Batteries[name];
        var left = Enum.GetValues<AgeEnd>().Select(end => path.TimeTo(LifeResult.Replaced, end)).ToList();
        var first = left.Zip(fails, Earlier).ToList();
        var replace = new Replacement(Dates(from, first[0], first[1], first[2]), first[0] is null ? null
            : fails[0] is { } day && !(left[0] < day) ? ReplaceCause.Days : ReplaceCause.Capacity);
        return new BatteryOutlook
        {
            Name = name, Title = battery.Part.Name, Known = battery.KnownAge, Use = life,
            DaysAsPlanned = path.Ahead is Shooting { Course: not null },
            Ages = [.. Enumerable.Range(0, (question.Years * MonthsOfYear) + 1).Select(month =>
            {
                var time = Duration.FromDays(month * DaysOfYear / MonthsOfYear);
                return new AgeOnDate(DateAfter(from, time), (double)month / MonthsOfYear, path.At(time),
                    path.At(time, AgeEnd.Least), path.At(time, AgeEnd.Greatest));
            })],
            Eighty = Dates(from, left[0], left[1], left[2]), Replace = replace,
            Cost = CostOfBattery.Of(battery, name, life, from, first[0], now.Plan.Days.Count, rows), Warnings = path.Warnings,
        };
    }

    private static Duration? Earlier(Duration? one, Duration? other) =>
        one is { } first && other is { } second ? (first < second ? first : second) : one ?? other;

    private static DateBand Dates(DateOnly from, Duration? middle, Duration? least, Duration? greatest) =>
        new(DateAfter(from, middle), DateAfter(from, least), DateAfter(from, greatest));

    /// <summary>The date after a time; null where the time is.</summary>
    internal static DateOnly? DateAfter(DateOnly from, Duration? time) => time is { } given ? DateAfter(from, given) : null;

    private static DateOnly DateAfter(DateOnly from, Duration time) => from.AddDays((int)Math.Round(time.Days));
}
