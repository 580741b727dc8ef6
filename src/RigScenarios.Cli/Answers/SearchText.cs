using RigScenarios.Search.Rigs;
using Spectre.Console;

namespace RigScenarios.Cli.Answers;

/// <summary>Writes the result of a search: the rigs with their figures and parts, why these, what more money buys, what stands in
/// the way.</summary>
internal static class SearchText
{
    public static void Write(IAnsiConsole console, RigSearchResult result, IEnumerable<string> written)
    {
        var build = result.Question.Start.Title ?? result.Question.Best.Build;
        Paragraph.Write(console, $"{result.Question.Scenario.Title}. {build}. {RigSearchSentences.Musts(result)}");
        Paragraph.Write(console, RigSearchSentences.Headline(result), bold: true);
        foreach (var line in RigSearchSentences.Conflicts(result))
            Paragraph.Write(console, line, "  - ");
        foreach (var (number, pick) in result.Picks.Index())
            Pick(console, result, pick, number + 1);
        Paragraph.List(console, "What more money buys", RigSearchSentences.MoreMoney(result));
        Paragraph.List(console, "What each must costs", RigSearchSentences.MustPrices(result));
        if (result.Upgrades is not null)
            Paragraph.List(console, "In which order to buy", [RigUpgradeSentences.Headline(result),
                .. RigUpgradeSentences.Years(result), .. RigUpgradeSentences.RestsOn(result)]);
        Paragraph.List(console, "How far this goes", [.. RigSearchSentences.Work(result), .. RigSearchSentences.RestsOn(result)]);
        AnswerText.Cautions(console, RigSearchShape.Cautions(result));
        foreach (var file in written)
            console.MarkupLine(Markup.Escape($"Written: {file}"));
    }

    private static void Pick(IAnsiConsole console, RigSearchResult result, RigPick pick, int number)
    {
        Paragraph.Heading(console, $"Rig {number}: {RigSearchSentences.Figures(result, pick)}");
        Paragraph.Write(console, pick.Figures.Headline, "  ");
        if (pick.Figures.AskFirst.Length > 0)
            Paragraph.Write(console, pick.Figures.AskFirst, "  ");
        foreach (var part in RigSearchSentences.Parts(result, pick.Choice))
            Paragraph.Write(console, part, "  - ");
        foreach (var choice in pick.JustAsGood)
            Paragraph.Write(console, $"Just as good: {string.Join(", ", RigSearchSentences.Parts(result, choice))}.", "  = ");
        if (pick.Others.Count > 0)
            Paragraph.Write(console, "Why these parts:", "  ");
        foreach (var other in pick.Others)
            Paragraph.Write(console, RigSearchSentences.Why(result, other), "    ");
    }
}
