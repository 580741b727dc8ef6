using RigScenarios.Answers;
using RigScenarios.Charts.Pages;

namespace RigScenarios.Charts.Balance;

/// <summary>Whether a build balances, as parts of a page: the answer, how to set the head, what to move, the drawing, the
/// limits.</summary>
public static class BalanceParts
{
    // More of them would hide the first.
    private const int MostHelps = 3;

    /// <summary>The parts, from the answer to the limits.</summary>
    /// <param name="balance">The balance of the build.</param>
    public static IEnumerable<PagePart> Of(BuildBalance balance)
    {
        ArgumentNullException.ThrowIfNull(balance);
        yield return new HeadingPart("Does it balance?", 3);
        yield return new AnswerPart(Named(balance, BalanceWords.Answer(balance)),
            [.. BalanceWords.Cautions(balance).Select(caution => Named(balance, caution))]);
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
