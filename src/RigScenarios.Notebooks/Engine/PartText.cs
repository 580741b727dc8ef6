using RigScenarios.Charts.Pages;
using RigScenarios.Limits;

namespace RigScenarios.Notebooks.Engine;

/// <summary>Parts of a page as plain text, for places that show no HTML.</summary>
internal static class PartText
{
    public static string Of(PagePart part) => part switch
    {
        AnswerPart answer =>
            string.Join('\n', [answer.Text, .. answer.Lines.Select(line => $"{line.Title}: {line.Verdict.InWords()}. "
                + $"{line.Words}"),
            .. answer.Cautions.Select(caution => $"- {caution}")]),
        ListPart list =>
            string.Join('\n',
            [list.Heading, .. list.Items.Select((item, i) => list.IsNumbered ? $"{i + 1}. {item}" : $"- {item}")]),
        FigurePart figure => $"{figure.Figure.Title}\n{figure.Figure.AlternativeText}",
        DrawingPart drawing => $"{drawing.Drawing.Title}\n{drawing.Drawing.AlternativeText}",
        TablePart table =>
            string.Join('\n', [string.Join(" | ", table.Table.Columns.Select(c => c.Title)),
            .. table.Table.Rows.Select(row => string.Join(" | ", row))]),
        HeadingPart heading => heading.Text,
        ProsePart prose => prose.Text,
        PrintedPart printed => printed.Text,
        _ => "",
    };
}
