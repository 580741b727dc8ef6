using RigScenarios.Charts.Pages;
using RigScenarios.Search.Rigs;

namespace RigScenarios.Charts.Search;

/// <summary>The result of a search for the best rig as parts of a page that has more to show than that. Its cautions are not
/// among them: a page says where they stand.</summary>
public static class RigSearchParts
{
    /// <summary>The parts: what was found, what must hold, the front, the rigs, what more money buys, how far it goes.</summary>
    /// <param name="result">The result.</param>
    public static IEnumerable<PagePart> Of(RigSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return Parts(result);
    }

    private static IEnumerable<PagePart> Parts(RigSearchResult result)
    {
        yield return new AnswerPart(RigSearchSentences.Headline(result), []);
        yield return new ProsePart(RigSearchSentences.Musts(result));
        if (RigSearchSentences.Conflicts(result) is { Count: > 0 } conflicts)
            yield return new ListPart("What stands in the way:", conflicts);
        if (RigFront.Of(result) is { } front)
            yield return new FigurePart(front);
        if (result.Picks.Count > 0)
        {
            yield return new TablePart(RigSearchPage.Figures(result) with { Caption = "What each rig costs and gives" });
            yield return new TablePart(RigSearchPage.Parts(result) with { Caption = "What stands in each place" });
        }
        if (RigSearchSentences.MoreMoney(result) is { Count: > 0 } more)
            yield return new ListPart("What more money buys:", more);
        if (RigSearchSentences.MustPrices(result) is { Count: > 0 } prices)
            yield return new ListPart("What each must costs:", prices);
        yield return new ListPart("How far this goes:",
            [.. RigSearchSentences.Work(result), .. RigSearchSentences.RestsOn(result)]);
    }
}
