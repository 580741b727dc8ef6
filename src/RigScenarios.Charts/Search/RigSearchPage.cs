using RigScenarios.Charts.Pages;
using RigScenarios.Search.Choices;
using RigScenarios.Search.Rigs;

namespace RigScenarios.Charts.Search;

/// <summary>The result of a search for the best rig as a page: the answer, a table of the rigs, why each part, what more money
/// buys.</summary>
public static class RigSearchPage
{
    private const string Footer = "Made by RigScenarios. Predictions, not measurements: the makers' limits go first.";

    /// <summary>The page.</summary>
    /// <param name="result">The result.</param>
    public static ChartPage Of(RigSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var question = result.Question;
        var page = new ChartPage { Title = $"{question.Scenario.Title}: the best rig", Footer = Footer }
            .WithProse(RigSearchSentences.Musts(result))
            .WithAnswer(RigSearchSentences.Headline(result), RigSearchShape.Cautions(result));
        page = RigSearchSections.Before(result).Aggregate(page, Lines);
        if (result.Picks.Count > 0)
            page = page.WithHeading("The rigs").With(Figures(result)).With(Parts(result));
        if (RigFront.Of(result) is { } front)
            page = page.With(front);
        foreach (var (number, pick) in result.Picks.Index())
        {
            string[] ask = pick.Figures.AskFirst.Length > 0 ? [pick.Figures.AskFirst] : [];
            if (RigSearchSections.Why(result, number) is { } why)
                page = Lines(page, why with { Lines = [pick.Figures.Headline, .. ask, .. why.Lines] });
        }
        return RigSearchSections.After(result).Aggregate(page, Lines);
    }

    /// <summary>The rigs with their figures.</summary>
    /// <param name="result">The result.</param>
    public static ChartTable Figures(RigSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var table = ChartTable.Of(["rig", .. result.Picks.Count == 0 ? []
            : RigSearchSentences.Cells(result, result.Picks[0]).Select(cell => cell.Title)]);
        return result.Picks.Index().Aggregate(table, (rows, pick) =>
            rows.With([$"{pick.Index + 1}", .. RigSearchSentences.Cells(result, pick.Item).Select(cell => cell.Words)]))
            with { Caption = "What each rig costs and gives" };
    }

    /// <summary>The parts of the rigs, one row a place.</summary>
    /// <param name="result">The result.</param>
    public static ChartTable Parts(RigSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var table = ChartTable.Of(["place", .. result.Picks.Select((_, number) => $"rig {number + 1}")]);
        return result.Question.Places.Index().Aggregate(table, (rows, place) => rows.With([place.Item.Name,
            .. result.Picks.Select(pick => Title(place.Item, pick.Choice, place.Index))]))
            with { Caption = "What stands in each place" };
    }

    private static string Title(RigPlace place, Choice choice, int number) => place.Candidates[choice[number]].Title;

    private static ChartPage Lines(ChartPage page, RigSearchSection section) =>
        section.Lines.Aggregate(page.WithHeading(section.Title), (all, line) => all.WithProse(line));
}
