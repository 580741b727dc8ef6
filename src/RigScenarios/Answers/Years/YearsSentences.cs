using System.Globalization;
using UnitsNet;

namespace RigScenarios.Answers.Years;

/// <summary>The years ahead in sentences: when to replace, how to keep, what it costs.</summary>
public static class YearsSentences
{
    /// <summary>How cool storage is done without harm.</summary>
    public const string Fridge =
        "In a fridge: dry, in a closed bag, never below 0 °C, not beside food. Let it warm up in its bag before it is used or "
        + "charged. The maker's limits go first.";

    /// <summary>When to replace one battery, with the cause and the band: the answer, in one sentence.</summary>
    /// <param name="result">The years.</param>
    /// <param name="battery">The battery.</param>
    public static string Replace(YearsResult result, BatteryOutlook battery)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(battery);
        var (date, cause) = (battery.Replace.Date, battery.Replace.Cause);
        var name = Name(result, battery);
        if (date.Middle is not { } day)
            return $"{name}: nothing asks for a new one within 40 years by this "
                + $"fit{Band(date, " (the worst of the published fits: ")}.";
        if (day <= result.From)
            return cause == ReplaceCause.Days
                ? $"{name}: to be replaced now, for {Days(result)} {(result.Now.Plan.Days.Count > 1 ? "don't" : "doesn't")} "
                    + "last with it."
                : $"{name}: to be replaced now, for no more than 80 % of its capacity is left.";
        var why = cause == ReplaceCause.Days ? Days(result) + " no longer last"
            + (result.Now.Plan.Days.Count > 1 ? "" : "s") + " then"
            : "80 % of its capacity is left then";
        return $"{name}: to be replaced in {Month(day)}{Band(date, " (published fits: ")}, for {why}.";
    }

    /// <summary>What the days do over the years, in one sentence.</summary>
    /// <param name="result">The years.</param>
    public static string Lasting(YearsResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var (now, last) = (result.Days[0], result.Days[^1]);
        var several = result.Now.Plan.Days.Count > 1;
        var days = AnswerSentences.Upper(Days(result));
        var wish = result.Now.Options.Wish is { } reserve ? $" with {AnswerTimes.Length(reserve)} left" : "";
        if (!result.LastsWhenNew)
            return $"{days} {(several ? "don't" : "doesn't")} last{wish}, and no new battery of the same kind changes that: "
                + $"{Left(now.Days)} as they are, {Left(result.New)} new. The other answers say what would.";
        if (result.LastDay.Middle is { } day && day <= result.From)
            return $"{days} {(several ? "don't" : "doesn't")} last now{wish} ({Left(now.Days)}); with new batteries "
                + $"{(several ? "they do" : "it does")} ({Left(result.New)}).";
        var until = result.LastDay.Middle is { } date
            ? $"{days} {Lasts(result)}{wish} until {Month(date)}{Band(result.LastDay, " (published fits: ")}"
            : $"{days} {Lasts(result)}{wish} for 40 years by this fit"
                + Band(result.LastDay, " (the worst of the published fits: until ");
        return $"{until}: {Left(now.Days)} now, {Left(last.Days)} in {Years(last.Years)}.";
    }

    /// <summary>What is left after wrap: "1 h 27 min left", "more than 240 h left"; where it stops before: "12 min
    /// short".</summary>
    /// <param name="days">The days.</param>
    public static string Left(DayFigures days)
    {
        ArgumentNullException.ThrowIfNull(days);
        return days.IsLowerBound ? $"more than {AnswerTimes.Length(days.Reserve)} left"
            : days.Reserve < Duration.Zero ? $"{AnswerTimes.Length(-days.Reserve)} short"
                : $"{AnswerTimes.Length(days.Reserve)} left";
    }

    /// <summary>Hours and minutes after wrap with their band, as narrow as a table wants them: "1:24 (0:36 to 1:48)"; below zero
    /// where it stops before.</summary>
    /// <param name="middle">By the set that speaks for the batteries.</param>
    /// <param name="least">With the least capacity left of the published fits.</param>
    /// <param name="greatest">With the most.</param>
    public static string Clock(DayFigures middle, DayFigures least, DayFigures greatest)
    {
        ArgumentNullException.ThrowIfNull(middle);
        ArgumentNullException.ThrowIfNull(least);
        ArgumentNullException.ThrowIfNull(greatest);
        var (from, to) = (Clock(least), Clock(greatest));
        return from == to ? Clock(middle) : $"{Clock(middle)} ({from} to {to})";
    }

    /// <summary>The batteries that are told of: the one that was asked about, or all.</summary>
    /// <param name="result">The years.</param>
    public static IReadOnlyList<BatteryOutlook> Told(YearsResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.Question.Battery is { } one
            ? [.. result.Batteries.Where(battery => battery.Name == one)] : result.Batteries;
    }

    /// <summary>What the years rest on: how each battery is used, the fit, what lies outside its tests.</summary>
    /// <param name="result">The years.</param>
    public static IReadOnlyList<string> RestsOn(YearsResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var told = Told(result);
        var lines = new List<string>();
        foreach (var battery in told)
        {
            lines.Add((told.Count > 1 ? $"{AnswerSentences.Upper(LimitSentences.Element(battery.Name))}: " : "") + Use(battery));
            lines.Add($"The fit: {battery.Known.Set.Description} ({Source(battery.Known.Set.Source)}).");
        }
        lines.AddRange(told.SelectMany(battery => AgingSentences.Warnings(battery.Known.Set, battery.Warnings)));
        lines.Add("80 % is the usual convention for a worn battery: no fit knows the sudden fall that many cells show below it.");
        lines.AddRange([AgingSentences.MeasuredCells, AgingSentences.Measure]);
        return [.. lines.Distinct()];
    }

    /// <summary>Which way of keeping leaves most, against the way of now.</summary>
    /// <param name="result">The years.</param>
    public static string Keeping(YearsResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var best = result.Storage[0];
        var now = result.Storage.First(one => one.IsAsNow);
        var (then, like) = (best.After[^1], now.After[^1]);
        if (best == now)
            return $"Kept as now ({Way(now)}) it holds most: {Percent(then.Age.CapacityLeft)} after {then.Years} years.";
        return $"{AnswerSentences.Upper(Way(best))} leaves most: {Percent(then.Age.CapacityLeft)} after {then.Years} years, not "
            + $"{Percent(like.Age.CapacityLeft)} as now ({Way(now)}). {AnswerSentences.Upper(Days(result))}: "
            + $"{Left(then.Days)} then, not {Left(like.Days)}.";
    }

    /// <summary>One way of keeping: "half full in a fridge: 96, 93 and 91 % after 1, 3 and 5 years".</summary>
    /// <param name="result">The years.</param>
    /// <param name="way">The way.</param>
    public static string Of(YearsResult result, StorageCase way)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(way);
        var shares = string.Join(", ", way.After.Select(year => Percent(year.Age.CapacityLeft)));
        var replaced = (way.Eighty, way.LastDay) switch
        {
            (null, null) => "not to be replaced within 40 years",
            var (eighty, last) when Earlier(eighty, last) <= result.From => "to be replaced already",
            (var eighty, var last) => $"to be replaced in {Month(Earlier(eighty, last)!.Value)}",
        };
        return $"{AnswerSentences.Upper(Way(way))}{(way.IsAsNow ? " (as now)" : "")}: {shares} after "
            + $"{string.Join(", ", way.After.Select(year => year.Years))} years; {replaced}.";
    }

    /// <summary>A way of keeping in short: "half full in a fridge".</summary>
    /// <param name="way">The way.</param>
    public static string Way(StorageCase way)
    {
        ArgumentNullException.ThrowIfNull(way);
        return $"{AgingSentences.KeptAs(way.Kept)} {AgingSentences.In(way.Place)}";
    }

    /// <summary>What a battery costs until it is replaced: its wear, which is not what owning batteries over some years comes
    /// to.</summary>
    /// <param name="battery">The battery.</param>
    public static string Cost(BatteryOutlook battery)
    {
        ArgumentNullException.ThrowIfNull(battery);
        var cost = battery.Cost;
        if (cost.Price is not { } price)
            return "Its price is not known (\"buy\" of the part), so that no cost is told.";
        if (cost is not { ShootingDays: { } days, Delivered: { } energy })
            return $"{price} spread over more than 40 years: no cost a day is told.";
        if (cost is not { PerShootingDay: { } day, PerKilowattHour: { } each })
            return $"{price}, and no shooting day until it is replaced: no cost a day is told.";
        return string.Create(CultureInfo.InvariantCulture, $"Wear of this battery: {price} over {days:0} shooting days and "
            + $"{energy.KilowattHours:0.0} kWh until it is replaced, that is {day} a day and {each} a kWh.");
    }

    /// <summary>How it is used from now on, and whether somebody said so.</summary>
    /// <param name="battery">The battery.</param>
    public static string Use(BatteryOutlook battery)
    {
        ArgumentNullException.ThrowIfNull(battery);
        var said = battery.Known.Life is null ? "Nobody says how it is kept and used; taken" : "From now on";
        return battery.DaysAsPlanned ? $"{said}: {AgingSentences.Shelf(battery.Use)}, each as planned."
            : $"{said}: {AgingSentences.Use(battery.Use)}.";
    }

    /// <summary>The cautions of batteries that grow old.</summary>
    /// <param name="result">The years.</param>
    public static IReadOnlyList<string> Cautions(YearsResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return [AgingSentences.Retire, Fridge, PowerCautions.Keeping, AnswerCautions.Always];
    }

    /// <summary>A month: "March 2029".</summary>
    /// <param name="date">A day of it.</param>
    public static string Month(DateOnly date) => date.ToString("MMMM yyyy", CultureInfo.InvariantCulture);

    private static string Clock(DayFigures days)
    {
        var minutes = (long)Math.Round(Math.Abs(days.Reserve.Minutes), MidpointRounding.AwayFromZero);
        var clock = FormattableString.Invariant($"{minutes / 60}:{minutes % 60:00}");
        return (days.IsLowerBound ? "over " : days.Reserve.Minutes < 0 && minutes > 0 ? "−" : "") + clock;
    }

    // Names and year are enough where people read; JSON and docs have the whole of it.
    private static string Source(Cells.Citation source)
    {
        var first = source.Authors.Split([',', ';'])[0];
        return $"{first}{(first == source.Authors || first.EndsWith("et al.", StringComparison.Ordinal) ? "" : " et al.")} "
            + $"{source.Year}";
    }

    private static string Years(double years) => years == 1 ? "a year" : FormattableString.Invariant($"{years:0} years");

    private static string Band(DateBand band, string before) => (band.Middle, band.Earliest, band.Latest) switch
    {
        (null, { } earliest, _) => $"{before}{Month(earliest)})",
        (null, null, _) => "",
        (_, { } earliest, { } latest) when Month(earliest) == Month(latest) => "",
        (_, { } earliest, { } latest) => $"{before}{Month(earliest)} to {Month(latest)})",
        (_, { } earliest, null) => $"{before}{Month(earliest)} to beyond 40 years)",
        _ => "",
    };

    private static string Name(YearsResult result, BatteryOutlook battery) => result.Batteries.Count > 1
        ? $"{AnswerSentences.Upper(LimitSentences.Element(battery.Name))} ({battery.Title})" : battery.Title;

    private static string Days(YearsResult result) => result.Now.Plan.Days.Count > 1 ? "the days" : "the day";

    private static string Lasts(YearsResult result) => result.Now.Plan.Days.Count > 1 ? "last" : "lasts";

    private static DateOnly? Earlier(DateOnly? one, DateOnly? other) =>
        one is { } first && other is { } second ? (first < second ? first : second) : one ?? other;

    private static string Percent(Ratio share) => AgingSentences.Percent(share);
}
