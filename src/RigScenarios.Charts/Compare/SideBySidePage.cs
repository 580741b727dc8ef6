using RigScenarios.Answers;
using RigScenarios.Builds;
using RigScenarios.Charts.Pages;
using RigScenarios.Limits;
using RigScenarios.Search.Compare;

namespace RigScenarios.Charts.Compare;

/// <summary>Rigs side by side as a page and as its tables. All words are those of the core.</summary>
public static class SideBySidePage
{
    private const string Footer = "Predictions, not measurements: the makers' limits, local rules and qualified people go first.";

    /// <summary>The page: which work, verdicts and figures, what each difference comes from, limits, cautions.</summary>
    /// <param name="side">The comparison.</param>
    public static ChartPage Of(SideBySide side)
    {
        ArgumentNullException.ThrowIfNull(side);
        var page = new ChartPage { Title = "Rigs side by side", Footer = Footer }
            .WithAnswer(SideBySideWords.Headline(side))
            .With(new ListPart("Each for itself", SideBySideWords.Lines(side)))
            .WithHeading("Verdicts and figures")
            .With(Figures(side))
            .WithProse(SideBySideWords.Rule);
        foreach (var (place, rig) in side.Rigs.Index().Where(item => item.Index != side.Base))
        {
            page = page.WithHeading($"{rig.Name} against {side.Rigs[side.Base].Name}")
                .With(new ListPart("What differs", SideBySideWords.Against(side, place)));
            if (SideBySideWords.Causes(side, place) is { Count: > 0 } causes)
                page = page.With(new ListPart("What it comes from", causes));
        }
        if (MarginsSideBySide.Of(side) is { } margins)
            page = page.WithHeading("Limits").With(margins);
        if (side.Limits.Count > 0)
            page = page.With(Limits(side));
        foreach (var (heading, lines) in new[]
        {
            ("Past its limit", SideBySideWords.Broken(side)), ("To know", SideBySideWords.Notices(side)),
            ("Cautions", SideBySideWords.Cautions(side)),
        })
            page = lines.Count > 0 ? page.With(new ListPart(heading, lines)) : page;
        return page;
    }

    /// <summary>Verdicts and figures of all rigs, with the difference of each to the base.</summary>
    /// <param name="side">The comparison.</param>
    public static ChartTable Figures(SideBySide side)
    {
        ArgumentNullException.ThrowIfNull(side);
        var table = ChartTable.Of(["", .. side.Rigs.Select((rig, place) => place == side.Base ? $"{rig.Name} (base)" : rig.Name),
            "best"]);
        return table.WithRows(
        [
            .. side.Verdicts.Select(row => (object?[])[Title(row.Kind), .. row.Verdicts.Select(verdict => verdict?.InWords()
                ?? "not asked"),
                SideBySideWords.Best(side, row.Best)]),
            .. side.Figures.Select(row => (object?[])[$"{FigureWords.Name(row.Kind)} ({FigureWords.Meaning(row.Kind)})",
                .. row.Values.Select((value, place) => Cell(value, row.Differences[place])),
                SideBySideWords.Best(side, row.Best)]),
        ]);
    }

    /// <summary>What is left to the limits that are passed or near in one of them.</summary>
    /// <param name="side">The comparison.</param>
    public static ChartTable Limits(SideBySide side)
    {
        ArgumentNullException.ThrowIfNull(side);
        return (ChartTable.Of(["limit", .. side.Rigs.Select(rig => rig.Name)]) with { Caption = "Least left first." })
            .WithRows(side.Limits.Select(row => (object?[])[SideBySideWords.Name(row),
                .. row.Limits.Select(SideBySideWords.Left)]));
    }

    private static string Title(QuestionKind? kind) =>
        kind is { } asked ? AnswerSentences.Title(asked, Stance.Tripod).ToLowerInvariant() : "all questions";

    private static string Cell(FigureValue value, FigureDifference? difference) => difference is null
        ? FigureWords.Value(value) : $"{FigureWords.Value(value)} ({FigureWords.Of(difference)})";
}
