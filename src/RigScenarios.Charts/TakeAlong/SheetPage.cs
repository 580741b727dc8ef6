using System.Globalization;
using System.Text;
using RigScenarios.Answers.TakeAlong;
using RigScenarios.Charts.Pages;
using RigScenarios.Limits;

namespace RigScenarios.Charts.TakeAlong;

/// <summary>A sheet to take along as one page of its own: nothing is fetched, nothing runs in it, and it prints on one page of A4
/// or Letter, in black and white.</summary>
public static class SheetPage
{
    private static readonly Lazy<string> Style = new(() =>
    {
        using var stream = typeof(SheetPage).Assembly.GetManifestResourceStream(typeof(SheetPage), "sheet.css")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    });

    /// <summary>The whole page. The same sheet gives the same text, to the letter.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="whole">Whether nothing is left out: it may then take more than one page.</param>
    /// <param name="paper">What it is printed on.</param>
    public static string Of(TakeAlongSheet sheet, bool whole = false, SheetPaper paper = SheetPaper.Either)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var layout = SheetLayout.Of(sheet, whole, paper);
        var html = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        html.Append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; "
            + "base-uri 'none'; form-action 'none'\">\n<meta name=\"viewport\" content=\"width=device-width, "
            + "initial-scale=1\">\n");
        html.Append($"<title>{HtmlText.Escape($"{sheet.Title}. {sheet.Subtitle}")}</title>\n<style>\n");
        html.Append($"{Style.Value}{paper.Style()}</style>\n");
        html.Append(CultureInfo.InvariantCulture,
            $"</head>\n<body style=\"font-size:{SheetLayout.Size * layout.Scale:0.##}pt\">\n<main>\n");
        Head(html, sheet);
        var placed = layout.Placed;
        html.Append($"{string.Concat(placed.Above.Select(Section))}<div class=\"columns\">\n");
        foreach (var column in new[] { placed.Left, placed.Right })
            html.Append($"<div>\n{string.Concat(column.Select(Section))}</div>\n");
        html.Append($"</div>\n{string.Concat(placed.Below.Select(Section))}");
        if (layout.LeftOut is { Length: > 0 } cut)
            html.Append($"<p class=\"cut\">{HtmlText.Prose(cut)}</p>\n");
        return html.Append($"<footer>{HtmlText.Prose(sheet.Foot)}</footer>\n</main>\n</body>\n</html>\n").ToString();
    }

    private static void Head(StringBuilder html, TakeAlongSheet sheet)
    {
        html.Append($"<h1>{HtmlText.Prose(sheet.Title)}</h1>\n<p class=\"what\">{HtmlText.Prose(sheet.Subtitle)}</p>\n");
        foreach (var day in sheet.Days)
            html.Append($"<p class=\"day\">{HtmlText.Prose(day)}</p>\n");
        if (sheet.Headline.Length == 0)
            return;
        var sign = sheet.Verdict is { } verdict ? VerdictSign.Svg(verdict) : "";
        html.Append($"<p class=\"verdict\">{sign}<span>{HtmlText.Prose(sheet.Headline)}</span></p>\n");
        if (sheet.Questions.Count == 0)
            return;
        html.Append("<table class=\"questions\"><tbody>\n");
        foreach (var line in sheet.Questions)
            html.Append($"<tr><th scope=\"row\">{HtmlText.Prose(line.Title)}</th><td>{HtmlText.Escape(line.Verdict.InWords())}"
                + $"</td><td>{HtmlText.Prose(line.Words)}</td></tr>\n");
        html.Append("</tbody></table>\n");
    }

    private const string YourEstimate = "Your estimate, and what it rests on";

    private static string Section(PlacedSection placed)
    {
        var section = placed.Section;
        var shown = section.Rows.Take(placed.Rows);
        var body = section.Form switch
        {
            SheetForm.Table => Table(section, shown, placed.Widths),
            SheetForm.Blanks => "<table class=\"blanks\"><thead><tr><th scope=\"col\">Question</th><th scope=\"col\">In</th><th "
                + $"scope=\"col\">{HtmlText.Prose(section.Columns is [.., var last] ? last : YourEstimate)}</th>"
                + "</tr></thead><tbody>\n"
                    + string.Concat(shown.Select(row =>
                    $"<tr><td>{HtmlText.Prose(row[0])}</td><td>{HtmlText.Prose(row[1])}</td><td></td></tr>\n"))
                    + "</tbody></table>\n",
            SheetForm.Checks => List("checks", shown),
            _ => List("sentences", shown),
        };
        var note = section.Note.Length > 0 ? $"<p class=\"note\">{HtmlText.Prose(section.Note)}</p>\n" : "";
        return $"<section>\n<h2>{HtmlText.Prose(section.Title)}</h2>\n{body}{note}</section>\n";
    }

    private static string List(string kind, IEnumerable<IReadOnlyList<string>> rows) => $"<ul class=\"{kind}\">\n"
        + string.Concat(rows.Select(row => $"<li>{HtmlText.Prose(row[0])}</li>\n")) + "</ul>\n";

    private static string Table(SheetSection section, IEnumerable<IReadOnlyList<string>> rows, IReadOnlyList<double> widths)
    {
        // A column of figures is set to the right; one in which nothing stands is for a pencil.
        var figures = Enumerable.Range(0, section.Columns.Count).Select(i =>
            section.Rows.Select(row => row[i]).Where(cell => cell.Length > 0).ToList() is { Count: > 0 } cells
                && cells.TrueForAll(cell => double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out _)))
            .ToList();
        string Side(int i) => figures[i] ? " class=\"figure\"" : "";
        var html = new StringBuilder("<table><colgroup>");
        foreach (var width in widths)
            html.Append(CultureInfo.InvariantCulture, $"<col style=\"width:{width}%\">");
        html.Append("</colgroup><thead><tr>");
        foreach (var (i, title) in section.Columns.Index())
            html.Append($"<th scope=\"col\"{Side(i)}>{HtmlText.Prose(title)}</th>");
        html.Append("</tr></thead><tbody>\n");
        foreach (var row in rows)
            html.Append($"<tr>{string.Concat(row.Select((cell, i) => $"<td{Side(i)}>{HtmlText.Prose(cell)}</td>"))}</tr>\n");
        return html.Append("</tbody></table>\n").ToString();
    }
}
