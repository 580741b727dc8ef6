using System.Globalization;
using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Cells.Aging;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>What is said of a battery's age: how far it has aged, how well that is known, and what it rests on.</summary>
public static class AgingSentences
{
    /// <summary>How far the published fits were off on measured cells that none of them was fitted to (docs/aging.md).</summary>
    public const string MeasuredCells =
        "Held against eleven measured cells, nothing fitted: within 5 points after 7 to 10 months of standing (32 to 55 °C), "
        + "and up to 13 points too low for good cells after 200 full cycles.";

    /// <summary>What outweighs all of it.</summary>
    public const string Measure =
        "A measured capacity outweighs any fit: empty it once at a load you know, and give what it held as \"capacity-left\".";

    /// <summary>Swollen, damaged, recalled, repaired at home.</summary>
    public const string Retire =
        "Swollen, dented, leaking, wet, recalled, or opened and repaired at home: out of use at once, whatever its age. Don't "
        + "charge it, keep it outdoors away from what burns, and give it to a collection point by local rules.";

    /// <summary>An age in short: "89 % of the capacity left, 1.16 times the resistance of a new one".</summary>
    /// <param name="age">The age.</param>
    public static string Of(Age age)
    {
        ArgumentNullException.ThrowIfNull(age);
        return $"{Percent(age.CapacityLeft)} of the capacity left, {Times(age)} the resistance of a new one";
    }

    /// <summary>What is known of one battery's age, the answer first, with all that it rests on.</summary>
    /// <param name="known">What is known.</param>
    public static IReadOnlyList<string> Of(KnownAge known)
    {
        ArgumentNullException.ThrowIfNull(known);
        return [.. HowOld(known), .. known.History is { } history ? Warnings(known.Set, history.Warnings) : [],
            .. known.IsUnknown ? Array.Empty<string>() : [.. known.IsMeasured ? Array.Empty<string>() : [MeasuredCells]],
            .. known.IsMeasured ? Array.Empty<string>() : [Measure]];
    }

    /// <summary>How old one battery is, and how well that is known: one sentence or two.</summary>
    /// <param name="known">What is known.</param>
    public static IReadOnlyList<string> HowOld(KnownAge known)
    {
        ArgumentNullException.ThrowIfNull(known);
        if (known.IsUnknown)
            return [$"Age not known: taken as new. {Unknown(known.Set, known.IsSetAssumed)}"];
        var rests = known.IsMeasured ? "measured" : $"by its life: {Life(known.Life!)}";
        var line = $"{Percent(known.Age.CapacityLeft)} of the capacity left ({rests}), {Times(known.Age)} the resistance of a "
            + $"new one ({Resistance(known)}).";
        return known.Ends is { } ends ? [line, Band(known, ends)] : [line];
    }

    /// <summary>What three years in a room do to a battery of which nothing is said, from the model.</summary>
    /// <param name="set">The set that speaks for it.</param>
    /// <param name="assumed">Whether its chemistry was assumed.</param>
    public static string Unknown(AgingSet set, bool assumed)
    {
        ArgumentNullException.ThrowIfNull(set);
        var life = LifeInWords.Usual with { Bought = new MonthOrDay(2023, 6, 1), Until = new DateOnly(2026, 6, 1) };
        var chemistry = assumed ? null : set.Chemistry.Name;
        var known = new KnownAge(chemistry, life, null, null);
        return $"After three years, {Use(life)}, one has {Percent(known.Age.CapacityLeft)} left "
            + $"({Range(known.Ends!)} by other published fits) and {Times(known.Age)} the resistance.";
    }

    /// <summary>The spread of the published fits: "Other published fits say 76 to 90 % left; no bound on what yours may
    /// do."</summary>
    /// <param name="known">What is known.</param>
    /// <param name="ends">Its ends.</param>
    public static string Band(KnownAge known, AgeEnds ends)
    {
        ArgumentNullException.ThrowIfNull(known);
        ArgumentNullException.ThrowIfNull(ends);
        return known.IsMeasured
            ? $"A capacity measured by one run is known to {Percent(KnownAge.MeasuredWithin)}: {Range(ends)}."
            : $"Other published fits say {Range(ends)}: their spread, and no bound on what yours may do.";
    }

    /// <summary>Warnings as sentences, in their order; where something lies outside the tests the first says
    /// "extrapolated".</summary>
    /// <param name="set">The set.</param>
    /// <param name="warnings">The warnings.</param>
    public static IReadOnlyList<string> Warnings(AgingSet set, IEnumerable<AgingWarning> warnings)
    {
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(warnings);
        var given = warnings.Distinct().ToList();
        var tests = given.Select(warning => Tested(warning, set.Tested)).OfType<string>().ToList();
        return
        [
            .. tests.Count > 0 ? [$"Extrapolated: its life lies outside what the fit was tested on ({string.Join(", ", tests)})."]
                : Array.Empty<string>(),
            .. given.Where(warning => Tested(warning, set.Tested) is null).Select(warning => Of(warning, set)),
        ];
    }

    /// <summary>One warning as a sentence.</summary>
    /// <param name="warning">The warning.</param>
    /// <param name="set">The set that it is a warning of.</param>
    /// <exception cref="ArgumentOutOfRangeException">It is no warning.</exception>
    public static string Of(AgingWarning warning, AgingSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        if (Tested(warning, set.Tested) is { } tests)
            return $"Extrapolated: its life lies outside what the fit was tested on ({tests}).";
        return warning switch
        {
            AgingWarning.ColdCharge =>
                "Charged below 10 °C: what that does to the cells no fit knows, so that less may be left than told.",
            AgingWarning.Knee =>
                "Below 80 % many cells fall off suddenly, and no fit knows when: replace it.",
            AgingWarning.LowVoltage => "The voltage given lies below the fit: it counts no loss by standing there.",
            AgingWarning.NoCalendar => "The fit counts cycles alone: what standing takes is not in it.",
            AgingWarning.ResistanceByRule =>
                "The resistance follows the capacity by a rule, good to some 0.1 at 80 %; nobody measured it.",
            AgingWarning.DefaultModel =>
                $"What the cells are made of is not given: taken as {set.Chemistry.Name.ToUpperInvariant()}, which most "
                    + "camera batteries hold.",
            AgingWarning.MeasuredAboveNew => "More was measured than a new one holds: taken as not aged until then.",
            AgingWarning.PaceLimited =>
                "Its own pace is beyond four times or a quarter of the fit's, the spread between cells: held there from now on.",
            _ => throw new ArgumentOutOfRangeException(nameof(warning), warning, "It is no warning."),
        };
    }

    // What the set was tested on where a warning says that something lies outside; null for any other warning.
    private static string? Tested(AgingWarning warning, AgingRange tested) => warning switch
    {
        AgingWarning.CalendarTemperature => $"stored at {Celsius(tested.Storage)}",
        AgingWarning.CycleTemperature => $"cycled at {Celsius(tested.Cycles)}",
        AgingWarning.Rate => $"emptied at {Rates(tested.RatePerHour)}",
        AgingWarning.Depth => $"emptied by {Percent(tested.Depth)} each time",
        AgingWarning.ChargeState => $"stored at {Percent(tested.StorageCharge)} charge",
        AgingWarning.BeyondTests => $"for {Longest(tested)}",
        _ => null,
    };

    /// <summary>A life in words: "bought 2023-03, kept full in a room, 2 shoots a month that half empty it".</summary>
    /// <param name="life">The life; what it leaves open is told as it is taken.</param>
    public static string Life(LifeInWords life)
    {
        ArgumentNullException.ThrowIfNull(life);
        var bought = life is { SecondHand: true } ? "second-hand, " : life.Bought is { } date ? $"bought {date}, " : "";
        return bought + Use(life);
    }

    /// <summary>The use in words: "kept full in a room, 2 shoots a month that half empty it".</summary>
    /// <param name="life">The life; what it leaves open is told as it is taken.</param>
    public static string Use(LifeInWords life)
    {
        ArgumentNullException.ThrowIfNull(life);
        var whole = life.Completed;
        return whole.ShootsPerMonth switch
        {
            0 => Shelf(life),
            1 => $"{Shelf(life)} that {EmptiesOne(whole.Emptied!)}",
            _ => $"{Shelf(life)} that {Empties(whole.Emptied!)}",
        };
    }

    /// <summary>The same without a word of how far a shoot empties it: "kept full in a room, 2 shoots a month".</summary>
    /// <param name="life">The life; what it leaves open is told as it is taken.</param>
    internal static string Shelf(LifeInWords life)
    {
        var whole = life.Completed;
        var shoots = whole.ShootsPerMonth!.Value;
        var count = shoots.ToString("0.##", CultureInfo.InvariantCulture);
        return $"kept {KeptAs(whole.Kept!)} {In(whole.Place!)}, "
            + (shoots == 0 ? "no shoots" : $"{count} {(shoots == 1 ? "shoot" : "shoots")} a month");
    }

    /// <summary>Where it is kept: "in a room", "at 25 °C".</summary>
    internal static string In(StoragePlace place) => place.Word switch
    {
        "fridge" => "in a fridge",
        "room" => "in a room",
        "warm store" => "in a warm store",
        "hot van" => "in a hot van",
        _ => FormattableString.Invariant($"at {place.Temperature.DegreesCelsius:0.#} °C"),
    };

    /// <summary>At which charge it is kept: "full", "at 60 % charge".</summary>
    internal static string KeptAs(Kept kept) => kept.Word switch
    {
        "half" => "half full",
        { } word => word,
        null => $"at {Percent(kept.ChargeAfter(Emptied.ToTheEnd))} charge",
    };

    private static string Empties(Emptied emptied) => emptied.Word switch
    {
        "a little" => "empty it a little",
        "half" => "half empty it",
        "mostly" => "mostly empty it",
        "to the end" => "empty it to the end",
        _ => $"empty it by {Percent(emptied.Depth)}",
    };

    private static string EmptiesOne(Emptied emptied) => emptied.Word switch
    {
        "a little" => "empties it a little",
        "half" => "half empties it",
        "mostly" => "mostly empties it",
        "to the end" => "empties it to the end",
        _ => $"empties it by {Percent(emptied.Depth)}",
    };

    /// <summary>Capacity left from the least to the greatest end: "76 to 90 %".</summary>
    internal static string Range(AgeEnds ends) => FormattableString.Invariant(
        $"{ends.Least.CapacityLeft.Percent:0} to {ends.Greatest.CapacityLeft.Percent:0} %");

    internal static string Percent(Ratio share) => FormattableString.Invariant($"{share.Percent:0} %");

    internal static string Times(Age age) => FormattableString.Invariant($"{age.ResistanceFactor:0.00} times");

    private static string Resistance(KnownAge known) => known.IsResistanceMeasured ? "measured"
        : known.History is null || known.History.Warnings.Contains(AgingWarning.ResistanceByRule)
            ? "by the rule that it grows with what is lost" : "by the same fit";

    private static string Celsius(TestedRange<Temperature>? range) => range is { } tested ? FormattableString.Invariant(
        $"{tested.Least.DegreesCelsius:0} to {tested.Greatest.DegreesCelsius:0} °C") : "other temperatures";

    private static string Percent(TestedRange<Ratio>? range) => range is { } tested ? FormattableString.Invariant(
        $"{tested.Least.Percent:0} to {tested.Greatest.Percent:0} %") : "other shares";

    private static string Rates(TestedRange<double>? range) => range is { } tested ? FormattableString.Invariant(
        $"{tested.Least:0.##} to {tested.Greatest:0.##} times the capacity an hour") : "other rates";

    private static string Longest(AgingRange tested)
    {
        var days = tested.LongestTime is { } time ? FormattableString.Invariant($"{time.Days:0} days") : null;
        var cycles = tested.MostCycles is { } most ? FormattableString.Invariant($"{most:0} full cycles") : null;
        return days is not null && cycles is not null ? $"{days} and {cycles}" : days ?? cycles ?? "less";
    }
}
