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
        foreach (var section in RigSearchSections.Before(result))
            Paragraph.List(console, section.Title, section.Lines);
        foreach (var (number, pick) in result.Picks.Index())
            Pick(console, result, pick, number);
        foreach (var section in RigSearchSections.After(result))
            Paragraph.List(console, section.Title, section.Lines);
        AnswerText.Cautions(console, RigSearchShape.Cautions(result));
        foreach (var file in written)
            console.MarkupLine(Markup.Escape($"Written: {file}"));
    }

    private static void Pick(IAnsiConsole console, RigSearchResult result, RigPick pick, int number)
    {
        Paragraph.Heading(console, $"Rig {number + 1}: {RigSearchSentences.Figures(result, pick)}");
        Paragraph.Write(console, pick.Figures.Headline, "  ");
        if (pick.Figures.AskFirst.Length > 0)
            Paragraph.Write(console, pick.Figures.AskFirst, "  ");
        foreach (var part in RigSearchSentences.Parts(result, pick.Choice))
            Paragraph.Write(console, part, "  - ");
        foreach (var choice in pick.JustAsGood)
            Paragraph.Write(console, $"Just as good: {string.Join(", ", RigSearchSentences.Parts(result, choice))}.", "  = ");
        if (RigSearchSections.Why(result, number) is not { } why)
            return;
        Paragraph.Write(console, $"{why.Title}:", "  ");
        foreach (var line in why.Lines)
            Paragraph.Write(console, line, "    ");
    }
}
