using RigScenarios.Costs;
using RigScenarios.Limits;

namespace RigScenarios.Answers;

/// <summary>Words for what would make it work. A set is told with what it was run to leave, and never with less.</summary>
public static class WouldWorkSentences
{
    /// <summary>The line above the sets, or what was tried where there is none; null where nothing was looked for.</summary>
    /// <param name="sets">What was found.</param>
    public static string? Heading(WorkingSets sets)
    {
        ArgumentNullException.ThrowIfNull(sets);
        if (!sets.Asked)
            return null;
        if (sets.Sets.Count == 0)
        {
            var how = sets.Exhausted ? "" : $"; {sets.Run} sets of them were run, the most promising first";
            return $"Nothing that was tried makes it work: {sets.Tried.Count} changes, alone and up to three together{how}.";
        }
        var size = sets.Sets[0].Changes.Count switch { 1 => "One change", 2 => "Two changes together",
            _ => "Three changes together" };
        var make = sets.Sets[0].Changes.Count == 1 ? "makes" : "make";
        var ways = sets.Sets.Count == 1 ? "" : $", in {sets.Sets.Count} ways";
        return sets.Reach == Verdict.Holds ? $"{size} {make} it work{ways}:"
            : $"{size} {make} it just work{ways}; nothing better was found:";
    }

    /// <summary>One set with what it leaves: "Take the kit's heavy lead to the splitter (from the kit): then it lasts until wrap
    /// at 22:50 with 13 min left, and nothing is past a limit."</summary>
    /// <param name="set">The set.</param>
    public static string Of(WorkingSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return $"{Changes(set)} ({Effort(set)}): {Then(set)}.";
    }

    /// <summary>What stays in the way where no set was found, in lines; empty where one was found.</summary>
    /// <param name="sets">What was found.</param>
    public static IReadOnlyList<string> InTheWay(WorkingSets sets)
    {
        ArgumentNullException.ThrowIfNull(sets);
        if (!sets.Asked || sets.Sets.Count > 0)
            return [];
        if (sets.Nearest is not { } nearest)
            return ["None of them helps."];
        return
        [
            $"Nearest: {Lower(Changes(nearest))} ({Effort(nearest)}). What stays in the way then:",
            .. AnswerSentences.Questions(nearest.Then).Where(line => line.Verdict == Verdict.Fails)
                .Select(line => $"{line.Title}: {Lower(line.Words)}"),
        ];
    }

    /// <summary>The changes of a set as one order: "Take …, and plug …".</summary>
    /// <param name="set">The set.</param>
    public static string Changes(WorkingSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        var words = set.Changes.Select((change, index) => (index == 0 ? change.Words : Lower(change.Words))
            + (change.Provided is { } provided ? $", if {provided}" : "")).ToList();
        return words.Count == 1 ? words[0] : $"{string.Join("; ", words.Take(words.Count - 1))}; and {words[^1]}";
    }

    /// <summary>What a set asks for: "nothing to buy", "from the kit", "to buy: 495 EUR".</summary>
    /// <param name="set">The set.</param>
    public static string Effort(WorkingSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return set.CostsMore is { } more && more.Amount != 0 && more.Amount != set.Price?.Amount
            ? $"{Asked(set)}; {MoneyText.Of(more with { Amount = Math.Abs(more.Amount) })} "
                + $"{(more.Amount > 0 ? "more" : "less")} to pay" : Asked(set);
    }

    private static string Asked(WorkingSet set)
    {
        return set.Effort switch
        {
            ChangeEffort.Nothing => "nothing to buy",
            ChangeEffort.FromKit => "from the kit",
            ChangeEffort.GivesUp => "nothing to buy, but something is given up",
            _ when set.Price is { } price =>
                $"to buy: {MoneyText.Of(price)}"
                + (set.Changes.Any(change => change is { Effort: ChangeEffort.Buy, Price: null }) ? " and more" : ""),
            _ => "to pay for, price not known",
        };
    }

    /// <summary>What a set leaves, as a clause.</summary>
    /// <param name="set">The set.</param>
    public static string Then(WorkingSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        var past = set.Then.Questions.Any(question => question.Limits.Any(limit => limit is { HasForce: true, IsPassed: true }));
        return $"then {AnswerSentences.Lasts(set.Then)}{(past ? "" : ", and nothing is past a limit")}"
            + $"{Besides(set.Then, Verdict.Close, "close")}{Besides(set.Then, Verdict.NotKnown, "still not known")}";
    }

    private static string Besides(RigAnswer then, Verdict verdict, string words)
    {
        var titles = then.Questions.Where(question => question.Verdict == verdict)
            .Select(question => AnswerSentences.Title(question.Kind, then.TheBuild.Stance).ToLowerInvariant()).ToList();
        return titles.Count == 0 ? "" : $"; {words}: {string.Join(", ", titles)}";
    }

    private static string Lower(string text) => char.ToLowerInvariant(text[0]) + text[1..];
}
