using System.Globalization;
using System.Text;
using RigScenarios.Limits;

namespace RigScenarios.Charts.Pages;

/// <summary>Figures, tables and answers as pieces of HTML, for a page or for a notebook's output.</summary>
public static class PartHtml
{
    private const int ManyColumns = 4;

    /// <summary>A part as HTML. A figure needs <see cref="ChartScript"/> once on the page before it.</summary>
    public static string Of(PagePart part) => part switch
    {
        HeadingPart heading => string.Create(CultureInfo.InvariantCulture,
            $"<h{Math.Clamp(heading.Level, 2, 4)}>{HtmlText.Prose(heading.Text)}</h{Math.Clamp(heading.Level, 2, 4)}>\n"),
        ProsePart prose => $"<p>{HtmlText.Prose(prose.Text)}</p>\n",
        AnswerPart answer => Answer(answer),
        ListPart list => List(list),
        TablePart table => Table(table.Table),
        FigurePart figure => Figure(figure.Figure),
        DrawingPart drawing => Drawing(drawing.Drawing),
        PrintedPart printed => $"<pre class=\"rs-printed\">{HtmlText.Escape(printed.Text)}</pre>\n",
        HtmlPart html => html.Html,
        ScriptPart => ChartScript.Html,
        ScenarioPart or ControlPart => "",
        _ => throw new ArgumentException($"No page can show a {part?.GetType().Name}.", nameof(part)),
    };

    /// <summary>An answer without its cautions, for a page that puts them elsewhere.</summary>
    internal static string BlockOf(AnswerPart answer) => Answer(answer with { Cautions = [] });

    /// <summary>An answer in one line, with the sign of its verdict.</summary>
    internal static string LineOf(AnswerPart answer) => answer.Verdict is { } verdict
        ? $"<span class=\"rs-answer-line rs-block {VerdictSign.Class(verdict)}\">{VerdictSign.Svg(verdict)}"
            + $"<span>{HtmlText.Prose(answer.Line ?? answer.Text)}</span></span>"
        : $"<span class=\"rs-answer-line\"><span>{HtmlText.Prose(answer.Line ?? answer.Text)}</span></span>";

    private static string Answer(AnswerPart answer)
    {
        if (answer.Verdict is not { } verdict)
            return $"<div class=\"rs-answer\"><p>{HtmlText.Prose(answer.Text)}</p>{Cautions(answer.Cautions)}</div>\n";
        // A group and no landmark: two versions may stand beside each other.
        var html = new StringBuilder($"<div class=\"rs-answer rs-block {VerdictSign.Class(verdict)}\" role=\"group\" "
            + "aria-label=\"The answer\">");
        html.Append($"<p>{VerdictSign.Svg(verdict)}<span>{HtmlText.Prose(answer.Text)}</span></p><table "
            + "class=\"rs-questions\"><tbody>");
        foreach (var line in answer.Lines)
        {
            html.Append($"<tr class=\"{VerdictSign.Class(line.Verdict)}\"><th scope=\"row\">{HtmlText.Escape(line.Title)}</th>");
            html.Append($"<td class=\"rs-verdict\">{VerdictSign.Svg(line.Verdict)} "
                + $"{HtmlText.Escape(line.Verdict.InWords())}</td>");
            html.Append($"<td>{HtmlText.Prose(line.Words)}</td></tr>");
        }

        return html.Append($"</tbody></table>{Cautions(answer.Cautions)}</div>\n").ToString();
    }

    private static string List(ListPart list)
    {
        var tag = list.IsNumbered ? "ol" : "ul";
        var items = string.Concat(list.Items.Select(item => $"<li>{HtmlText.Prose(item)}</li>"));
        return $"<div class=\"rs-list\"><p>{HtmlText.Prose(list.Heading)}</p>"
            + (items.Length > 0 ? $"<{tag}>{items}</{tag}>" : "") + "</div>\n";
    }

    // What does not fit beside each other scrolls, and what scrolls must be reached by keyboard.
    private static string Table(ChartTable table)
    {
        // With so many columns a row is a small list on a phone, each value with its title: roles keep it a table to all readers.
        var isMany = table.Columns.Count >= ManyColumns;
        string Role(string role) => isMany ? $" role=\"{role}\"" : "";
        var name = table.Caption.Length > 0 ? table.Caption : "Table";
        var html = new StringBuilder($"<div class=\"rs-table{(isMany ? " rs-many" : "")}\" tabindex=\"0\" role=\"group\" "
            + $"aria-label=\"{HtmlText.Escape(name)}\"><table{Role("table")}>");
        if (table.Caption.Length > 0)
            html.Append($"<caption>{HtmlText.Prose(table.Caption)}</caption>");
        html.Append($"<thead{Role("rowgroup")}><tr{Role("row")}>");
        foreach (var column in table.Columns)
            html.Append(column.Title.Length == 0 ? $"<td{Role("cell")}></td>"
                : $"<th{Side(column)} scope=\"col\"{Role("columnheader")}>{HtmlText.Escape(column.Title)}</th>");
        html.Append($"</tr></thead><tbody{Role("rowgroup")}>");
        foreach (var row in table.Rows)
        {
            html.Append($"<tr{Role("row")}>");
            for (var i = 0; i < row.Count; i++)
            {
                var title = isMany ? $" data-title=\"{HtmlText.Escape(table.Columns[i].Title)}\"" : "";
                html.Append($"<td{Side(table.Columns[i])}{Role("cell")}{title}>{HtmlText.Prose(row[i])}</td>");
            }
            html.Append("</tr>");
        }

        return html.Append("</tbody></table></div>\n").ToString();
    }

    private static string Figure(Figure figure)
    {
        var slug = HtmlText.Escape(figure.Slug);
        var html = new StringBuilder($"<figure class=\"rs-figure\"><div "
            + $"class=\"rs-figure-title\">{HtmlText.Prose(figure.Title)}</div>");
        html.Append(CultureInfo.InvariantCulture,
            $"<div class=\"rs-chart\" data-figure=\"{slug}\" role=\"img\" "
                + $"aria-label=\"{HtmlText.Escape(figure.AlternativeText)}\" style=\"min-height:{figure.Height}px\"></div>");
        html.Append(CaptionOf(figure.Caption, figure.Cautions));
        html.Append($"<details class=\"rs-numbers\"><summary>The numbers</summary>{Table(figure.Data)}</details>");
        return html.Append($"<script>{ScriptOf(figure)}</script></figure>\n").ToString();
    }

    /// <summary>The script that draws a figure, as it stands on the page.</summary>
    internal static string ScriptOf(Figure figure) => $"rigFigure(\"{HtmlText.Escape(figure.Slug)}\", {figure.Specification});";

    private static string Drawing(Drawing drawing) =>
        $"<figure class=\"rs-figure rs-drawing\" data-drawing=\"{HtmlText.Escape(drawing.Slug)}\"><div "
            + $"class=\"rs-figure-title\">{HtmlText.Prose(drawing.Title)}</div>"
        + $"<div class=\"rs-sheet\">{drawing.Svg}{drawing.NarrowSvg}</div>{CaptionOf(drawing.Caption, drawing.Cautions)}"
        + $"<details class=\"rs-numbers\"><summary>The numbers</summary>{Table(drawing.Data)}</details></figure>\n";

    private static string CaptionOf(string caption, IReadOnlyList<string> cautions) => caption.Length == 0 && cautions.Count == 0
        ? ""
        : $"<figcaption>{(caption.Length > 0 ? $"<p>{HtmlText.Prose(caption)}</p>" : "")}{Cautions(cautions)}</figcaption>";

    private static string Cautions(IReadOnlyList<string> cautions) => cautions.Count == 0
        ? ""
        : $"<ul class=\"rs-cautions\">{string.Concat(cautions.Select(caution => $"<li>{HtmlText.Prose(caution)}</li>"))}</ul>";

    private static string Side(TableColumn column) => column.IsNumber ? " class=\"rs-number\"" : "";
}
