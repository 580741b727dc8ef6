using RigScenarios.Charts.Pages;
using RigScenarios.Search.Rigs;

namespace RigScenarios.Charts.Search;

/// <summary>The result of a search for the best rig as parts of a page that has more to show than that. Its cautions are not
/// among them: a page says where they stand.</summary>
public static class RigSearchParts
{
    /// <summary>The parts: what was found, what must hold, what stands in the way, the front, the rigs, what more
    /// money buys, in which order to buy, how far it goes.</summary>
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
        foreach (var section in RigSearchSections.Before(result))
            yield return new ListPart($"{section.Title}:", section.Lines);
        if (RigFront.Of(result) is { } front)
            yield return new FigurePart(front);
        if (result.Picks.Count > 0)
        {
            yield return new TablePart(RigSearchPage.Figures(result));
            yield return new TablePart(RigSearchPage.Parts(result));
        }
        foreach (var section in RigSearchSections.After(result))
            yield return new ListPart($"{section.Title}:", section.Lines);
    }
}
