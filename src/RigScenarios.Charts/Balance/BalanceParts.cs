using RigScenarios.Answers;
using RigScenarios.Charts.Pages;

namespace RigScenarios.Charts.Balance;

/// <summary>The questions of balance and stand as parts of a page: their lines of the answer, how to set the head, what to move,
/// the drawing, the limits, what to take care of.</summary>
public static class BalanceParts
{
    // More of them would hide the first.
    private const int MostHelps = 3;

    /// <summary>The parts; none where nothing of the build has a mass.</summary>
    /// <param name="answer">An answer.</param>
    public static IEnumerable<PagePart> Of(RigAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return answer.Balance is { } balance ? Of(answer, balance) : [];
    }

    private static IEnumerable<PagePart> Of(RigAnswer answer, BuildBalance balance)
    {
        yield return new HeadingPart("Does it balance and stand?", 3);
        foreach (var line in AnswerSentences.Questions(answer)
            .Where(line => line.Kind is QuestionKind.Balance or QuestionKind.Stand))
            yield return new ProsePart($"{line.Title}: {line.Words}");
        yield return new ProsePart(BalanceWords.Centre(balance));
        foreach (var words in new[] { BalanceWords.Setting(balance), TripodWords.Tipping(balance) })
        {
            if (words is not null)
                yield return new ProsePart(words);
        }
        yield return new DrawingPart(RigDrawing.Of(balance.Rig.Placed, RigDrawingOptions.Of(balance)));
        var helps = BalanceHelp.Find(balance).Take(MostHelps).ToList();
        if (helps.Count > 0)
        {
            yield return new HeadingPart("What to move", 4);
            foreach (var help in helps)
                yield return new ProsePart(Named(balance, help.Words));
        }
        yield return new TablePart(Margins(balance));
        yield return new ListPart("Cautions", [.. BalanceWords.Cautions(balance).Select(caution => Named(balance, caution))]);
    }

    /// <summary>All limits as a table.</summary>
    /// <param name="balance">The balance of the build.</param>
    public static ChartTable Margins(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        return ChartTable.Of("limit", "what there is", "what is allowed", "left", "rests on")
            .WithRows(balance.BalanceLimits.Concat(balance.StandLimits).Select(limit => new object?[]
            {
                Named(balance, BalanceLimitWords.Name(limit)), BalanceLimitWords.Worst(limit), BalanceLimitWords.Allowed(limit),
                BalanceLimitWords.Left(limit), limit.Basis.Source,
            })) with { Caption = "First head, shoulder or hand, then tripod and joints; of each the least left first" };
    }

    /// <summary>A thing that the kit calls by a short name is called as people call it.</summary>
    private static string Named(BuildBalance balance, string words) => string.Join(' ', words.Split(' ').Select(word =>
    {
        var bare = word.TrimEnd('.', ',', ';', ':');
        return bare.Contains('-', StringComparison.Ordinal) && balance.Rig.Things.TryGetValue(bare, out var part)
            ? part.Name + word[bare.Length..] : word;
    }));
}
