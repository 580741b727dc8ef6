using RigScenarios.Charts.Pages;

namespace RigScenarios.Notebooks.Engine;

/// <summary>Parts of a page as plain text, for places that show no HTML.</summary>
internal static class PartText
{
    public static string Of(PagePart part) => part switch
    {
        AnswerPart answer => string.Join('\n', [answer.Text, .. answer.Cautions.Select(caution => $"- {caution}")]),
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
