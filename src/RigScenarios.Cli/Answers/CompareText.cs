using RigScenarios.Answers;
using RigScenarios.Builds;
using RigScenarios.Limits;
using RigScenarios.Search.Compare;
using Spectre.Console;

namespace RigScenarios.Cli.Answers;

/// <summary>Writes rigs side by side for people: which work, the table, what each gains and loses and why, limits,
/// cautions.</summary>
internal static class CompareText
{
    public static void Write(IAnsiConsole console, SideBySide side)
    {
        Paragraph.Write(console, SideBySideWords.Headline(side), bold: true);
        foreach (var line in SideBySideWords.Lines(side))
            Paragraph.Write(console, line, "  - ");
        Figures(console, side);
        for (var rig = 0; rig < side.Rigs.Count; rig++)
        {
            if (rig != side.Base)
                Against(console, side, rig);
        }
        Limits(console, side);
        Paragraph.List(console, "Past its limit", SideBySideWords.Broken(side));
        Paragraph.List(console, "To know", [.. SideBySideWords.Notices(side), SideBySideWords.Rule]);
        AnswerText.Cautions(console, SideBySideWords.Cautions(side));
    }

    private static void Figures(IAnsiConsole console, SideBySide side)
    {
        var table = Of(["", .. side.Rigs.Select(rig => rig.Name), "best"]);
        foreach (var row in side.Verdicts)
            Row(table, [row.Kind is { } kind ? AnswerSentences.Title(kind, Stance.Tripod) : "All questions",
                .. row.Verdicts.Select(verdict => verdict?.InWords() ?? "not asked"),
                SideBySideWords.Best(side, row.Best)]);
        foreach (var row in side.Figures)
            Row(table, [FigureWords.Name(row.Kind), .. row.Values.Select(FigureWords.Value),
                SideBySideWords.Best(side, row.Best)]);
        console.WriteLine();
        console.Write(table);
    }

    private static void Against(IAnsiConsole console, SideBySide side, int rig)
    {
        Paragraph.List(console, $"{side.Rigs[rig].Name} against {side.Rigs[side.Base].Name}", SideBySideWords.Against(side, rig));
        if (SideBySideWords.Causes(side, rig) is { Count: > 0 } causes)
        {
            Paragraph.Write(console, "What it comes from:", "  ");
            foreach (var cause in causes)
                Paragraph.Write(console, cause, "    - ");
        }
    }

    private static void Limits(IAnsiConsole console, SideBySide side)
    {
        if (side.Limits.Count == 0)
            return;
        Paragraph.Heading(console, "Limits that are passed or near in one of them, least left first");
        var table = Of(["", .. side.Rigs.Select(rig => rig.Name)]);
        foreach (var row in side.Limits)
            Row(table, [SideBySideWords.Name(row), .. row.Limits.Select(SideBySideWords.Left)]);
        console.Write(table);
    }

    private static Table Of(params IEnumerable<string> columns) =>
        new Table().Border(TableBorder.Simple).AddColumns([.. columns.Select(Markup.Escape)]);

    private static void Row(Table table, params IEnumerable<string> cells) => table.AddRow(cells.Select(cell => new Text(cell)));
}
