using System.Globalization;
using System.Numerics;
using RigScenarios.Answers;
using RigScenarios.Scenarios;
using RigScenarios.Search.Choices;
using UnitsNet;

namespace RigScenarios.Search.Rigs;

/// <summary>The sentences of a search for the best rig: the same in every face.</summary>
public static class RigSearchSentences
{
    /// <summary>What was found, in one sentence.</summary>
    /// <param name="result">The result.</param>
    public static string Headline(RigSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var wishes = string.Join(", ", result.Question.Best.Wishes.Select(RigSearchWords.Wish));
        return result.Picks.Count switch
        {
            0 when result.Front.IsComplete => "No: no rig of these parts holds all that must hold.",
            0 => $"Not known: no rig was found that holds all that must hold, and {Ended(result)} before all were looked at.",
            1 when result.Front.IsComplete => $"One rig: no other one that holds all musts is better in any wish ({wishes}).",
            1 => $"One rig so far, best in what was looked at ({wishes}).",
            var count => $"{count} rigs{(result.Front.IsComplete ? "" : " so far")}: none is better than another in every wish "
                + $"({wishes}).",
        };
    }

    /// <summary>What must hold, in one line; "nothing but that the parts go together" where nothing is asked.</summary>
    /// <param name="result">The result.</param>
    public static string Musts(RigSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var musts = result.Model.AskedMusts.Where(must => must != RigMust.Fits)
            .Select(must => RigSearchWords.Must(result.Question, must)).ToList();
        return musts.Count == 0 ? "Must: nothing but that the parts go together." : $"Must: {string.Join("; ", musts)}.";
    }

    /// <summary>How much was looked at, and what is still open.</summary>
    /// <param name="result">The result.</param>
    public static IReadOnlyList<string> Work(RigSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var front = result.Front;
        List<string> lines = [front.IsComplete && result.Picks.Count == 0
            ? $"All {Number(front.Choices)} choices of parts are decided: it is proven of each that it does not go together, or "
                + "fails something that must hold."
            : front.IsComplete
            ? $"All {Number(front.Choices)} choices of parts are decided: {Number(front.Evaluated)} were run through the answer, "
                + "for the others it is proven that they do not go together, fail, or are no better."
            : $"Not all is decided: of {Number(front.Choices)} choices at most {Number(front.UndecidedAtMost)} are open, after "
                + $"{Number(front.Evaluated)} were run."];
        if (!front.IsComplete && result.Question.Best.Wishes.Zip(front.OpenAtLeast)
            .Where(open => double.IsFinite(open.Second)).Select(open => Bound(result, open.First, open.Second)).ToList()
                is { Count: > 0 } bounds)
            lines.Add($"Of the open ones none is better than {string.Join(", ", bounds)}.");
        if (!result.IsExplained)
            lines.Add($"{Upper(Ended(result))} before all that is told of these rigs could be looked for; with more time there "
                + "is more to tell.");
        return lines;
    }

    /// <summary>How far a search has come, while it goes on.</summary>
    /// <param name="progress">What it reports.</param>
    public static string SoFar(FrontProgress progress)
    {
        ArgumentNullException.ThrowIfNull(progress);
        return $"{Number(progress.Evaluated)} {(progress.Evaluated == 1 ? "choice" : "choices")} run through the answer; "
            + $"{Number(progress.Entries)} {(progress.Entries == 1 ? "rig" : "rigs")} found so far.";
    }

    /// <summary>A pick in figures: "735 EUR, 4.05 kg, 1 h 20 min left after wrap".</summary>
    /// <param name="result">The result.</param>
    /// <param name="pick">One of its picks.</param>
    public static string Figures(RigSearchResult result, RigPick pick)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(pick);
        return string.Join(", ", Cells(result, pick).Select(cell => cell.Words));
    }

    /// <summary>The figures of a pick with their names, for a table: cost, mass, what is left after wrap, the least
    /// margin.</summary>
    /// <param name="result">The result.</param>
    /// <param name="pick">One of its picks.</param>
    public static IReadOnlyList<(string Title, string Words)> Cells(RigSearchResult result, RigPick pick)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(pick);
        var atLeast = pick.Cost is not null && result.Model.Unpriced.Count > 0 ? "at least " : "";
        return
        [
            ("cost", atLeast + RigSearchWords.Amount(pick.Cost, result.Model.Currency)),
            ("mass", pick.Grams is { } grams ? RigSearchWords.Weight(Mass.FromGrams((double)grams)) : "mass not known"),
            ("left after wrap", pick.Figures.Reserve is not { } reserve ? "nothing arrives"
                : $"{(pick.Figures.IsReserveLowerBound ? "more than " : "")}{AnswerTimes.Length(reserve)} left"),
            ("least margin", pick.Figures.Least is { Share: { } share } least
                ? $"least margin {RigSearchWords.Percent(share)} ({LimitSentences.Element(least.Element)})" : "no limit known"),
        ];
    }

    /// <summary>The parts of a pick, place by place: "battery: Brick 150 Wh (now: Brick 98 Wh)".</summary>
    /// <param name="result">The result.</param>
    /// <param name="choice">The choice of a pick.</param>
    public static IReadOnlyList<string> Parts(RigSearchResult result, Choice choice)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(choice);
        return [.. result.Question.Places.Select((place, number) => place.Candidates[choice[number]] is { IsNow: true } now
            ? $"{place.Name}: {now.Title} (as now)"
            : $"{place.Name}: {place.Candidates[choice[number]].Title} (now: {place.Candidates[0].Title})")];
    }

    /// <summary>The parts of a choice by their names alone, in the order of the places; what stays empty is left out.</summary>
    /// <param name="result">The result.</param>
    /// <param name="choice">The choice.</param>
    public static IReadOnlyList<string> Titles(RigSearchResult result, Choice choice)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(choice);
        return [.. result.Question.Places.Select((place, number) => place.Candidates[choice[number]])
            .Where(candidate => !candidate.IsEmpty).Select(candidate => candidate.Title)];
    }

    /// <summary>Why a part: what would come next in its place, and what it would lose.</summary>
    /// <param name="result">The result.</param>
    /// <param name="other">What would stand there instead.</param>
    public static string Why(RigSearchResult result, OtherPart other)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(other);
        var place = result.Question.Places[other.Place];
        if (other.Candidate is not { } candidate)
            return $"{place.Name}: nothing else goes together with the rest. {other.Reason}";
        // What fails is not weighed by its wishes: money and mass are what it would save.
        var differences = result.Question.Best.Wishes.Zip(other.Differences)
            .Where(one => other.Fails.Count == 0 || one.First is RigWish.LeastCost or RigWish.LeastMass)
            .Select(one => Difference(result, one.First, one.Second)).OfType<string>().ToList();
        var words = differences.Count > 0 ? string.Join(", ", differences) : "the same in every wish";
        var title = place.Candidates[candidate].Title;
        return other.Fails.Count == 0 ? $"{place.Name}: next comes {title}: {words}."
            : other.Fails[0].Must == RigMust.Fits
                ? $"{place.Name}: next comes {title}, but then the parts make no sound rig. {other.Fails[0].Why}"
            : $"{place.Name}: next comes {title}{(differences.Count > 0 ? $": {words};" : ",")} but then it fails "
                + $"{Listed(result, other.Fails.Select(one => one.Must))}. {other.Fails[0].Why}";
    }

    /// <summary>What more money buys, step by step.</summary>
    /// <param name="result">The result.</param>
    public static IReadOnlyList<string> MoreMoney(RigSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var hundred = result.NextHundred.Select(next => next.To is not { } to
            ? $"Up to 100 {result.Model.Currency} more than the cheapest rig buys nothing for the "
                + $"{RigSearchWords.Wish(next.Wish)}."
            : $"Within 100 {result.Model.Currency} more than the cheapest rig, {RigSearchWords.Wish(next.Wish)}: rig {to + 1}, "
                + $"for {Money(result, next.Extra)} more, {Gain(result, next.Wish, next.Gain)}.");
        return [.. hundred, .. result.MoreMoney.Select(step => $"{Money(result, step.Extra)} more, from rig {step.From + 1} to "
            + $"rig {step.To + 1}: {Gain(result, step.Wish, step.Gain)}.")];
    }

    /// <summary>What each must costs.</summary>
    /// <param name="result">The result.</param>
    public static IReadOnlyList<string> MustPrices(RigSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        // What there was no time for is told once, with how far the search goes.
        var known = result.MustPrices.Where(price => price.Extra is not null || result.IsExplained);
        return [.. known.Select(price => price.Extra switch
        {
            null => $"What it costs {RigSearchWords.Must(result.Question, price.Must)} is not known.",
            0 => $"{Upper(RigSearchWords.Must(result.Question, price.Must))} costs nothing more.",
            { } extra => $"{Upper(RigSearchWords.Must(result.Question, price.Must))} costs {Money(result, extra)}: without it "
                + "the cheapest rig would be that much cheaper.",
        })];
    }

    /// <summary>What the figures rest on beside the cautions of the answers.</summary>
    /// <param name="result">The result.</param>
    public static IReadOnlyList<string> RestsOn(RigSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var run = result.Picks.Count > 0 ? "Every rig was run through the whole answer. " : "";
        List<string> lines = [$"{run}Parts go together as far as their files say what they need and give: look at mounts, plugs "
            + "and lengths before you buy."];
        if (!result.Question.Best.Musts.StandCounts)
            lines.Add("What the build stands on is not described in full: whether any of these rigs tips over is not known.");
        if (result.Model.Unpriced.Count > 0)
            lines.Add($"No price is known of {string.Join(", ", result.Model.Unpriced.Select(LimitSentences.Element))}: every "
                + "cost here is \"at least\".");
        if (result.Question.Places.Any(place => place.Candidates.Any(candidate => candidate.IsNew)))
            lines.Add("What comes new counts as bought at its price, and a battery that comes new as fresh.");
        return lines;
    }

    /// <summary>Why the search was not at its end.</summary>
    internal static string Ended(RigSearchResult result) => result.IsStopped ? "the search was stopped" : "the time was over";

    private static string? Difference(RigSearchResult result, RigWish wish, double difference)
    {
        if (double.IsNaN(difference))
            return $"{RigSearchWords.Wish(wish)} not known";
        return wish switch
        {
            RigWish.LeastCost => difference == 0 ? null
                : $"{Money(result, Math.Abs(difference))} {(difference > 0 ? "more" : "less")}",
            RigWish.LeastMass => difference == 0 ? null
                : $"{RigSearchWords.Weight(Mass.FromGrams(Math.Abs(difference)))} {(difference > 0 ? "heavier" : "lighter")}",
            RigWish.LongestDay => Math.Abs(difference) < 0.5 / 60 ? null
                : $"{AnswerTimes.Length(Duration.FromHours(Math.Abs(difference)))} {(difference > 0 ? "shorter" : "longer")}",
            _ => Math.Abs(difference) < 1e-9 ? null : $"{Points(difference)} {(difference > 0 ? "less" : "more")} margin",
        };
    }

    // No margin is known to half a percent of its limit; that it differs at all may be why a rig is told.
    private static string Points(double share) => Math.Round(100 * Math.Abs(share)) is >= 1 and var points
        ? string.Create(CultureInfo.InvariantCulture, $"{points:0} percentage {(points == 1 ? "point" : "points")}") : "slightly";

    private static string Gain(RigSearchResult result, RigWish wish, double gain) =>
        Difference(result, wish, -gain) ?? "better by less than these figures show";

    private static string Bound(RigSearchResult result, RigWish wish, double least) => wish switch
    {
        RigWish.LeastCost => Money(result, least),
        RigWish.LeastMass => RigSearchWords.Weight(Mass.FromGrams(least)),
        RigWish.LongestDay => $"{AnswerTimes.Length(Duration.FromHours(-least))} left after wrap",
        _ => $"a least margin of {RigSearchWords.Percent(-least)}",
    };

    internal static string Money(RigSearchResult result, double amount) =>
        RigSearchWords.Amount((decimal)Math.Round(amount, 6), result.Model.Currency);

    internal static string Listed(RigSearchResult result, IEnumerable<RigMust> musts)
    {
        var words = musts.Select(must => RigSearchWords.Must(result.Question, must)).ToList();
        return words.Count < 2 ? string.Concat(words) : $"{string.Join(", ", words.SkipLast(1))} and {words[^1]}";
    }

    private static string Number(BigInteger number) => number < 10_000_000_000
        ? number.ToString("N0", CultureInfo.InvariantCulture) : ((double)number).ToString("0.0E+0", CultureInfo.InvariantCulture);

    internal static string Upper(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
