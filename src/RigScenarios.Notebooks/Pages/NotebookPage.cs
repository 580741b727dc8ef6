using System.Text;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Notebooks.Pages;

/// <summary>A run of a notebook as one self-contained page: prose, what it was made with, answers and charts; the code folded
/// away.</summary>
public static class NotebookPage
{
    /// <summary>The page of a run. Of a run that failed, the page of what there is, and why it stopped.</summary>
    public static ChartPage Of(NotebookRun run)
    {
        ArgumentNullException.ThrowIfNull(run);
        var lastCell = run.Failure?.Cell ?? int.MaxValue;
        var parts = new List<PagePart>();
        foreach (var cell in run.Notebook.Cells.Where(cell => cell.Number <= lastCell && !cell.IsForNotebookPrograms))
        {
            if (cell.Kind == CellKind.Prose)
                parts.Add(new HtmlPart(run.Notebook.ProseHtml(cell)));
            if (cell.Kind == CellKind.Code)
                parts.AddRange(CodeParts(cell, run));
        }

        if (run.Failure is { } failure)
            parts.AddRange([new HeadingPart("This notebook stopped here"), new PrintedPart(failure.ToString())]);
        return new ChartPage
        {
            Title = run.Notebook.Title,
            ShowsTitle = !run.Notebook.Cells.Any(cell => cell.Kind == CellKind.Prose
                && cell.Text.Split('\n').Any(line => line.StartsWith("# ", StringComparison.Ordinal))),
            Parts = parts,
            Footer = $"Made from the notebook {run.Notebook.FileName}. The page is complete in itself and works with no network.",
        };
    }

    private static IEnumerable<PagePart> CodeParts(NotebookCell cell, NotebookRun run)
    {
        if (cell.Number == run.Notebook.Parameters.Cell && run.Parameters.Count > 0)
            yield return new HtmlPart(ParameterTable(run));
        foreach (var output in run.Cells.FirstOrDefault(r => r.Cell.Number == cell.Number)?.Outputs ?? [])
            yield return output;
        if (!cell.IsStart)
            yield return new HtmlPart(
                $"<details class=\"rs-code\"><summary>Code (cell "
                    + $"{cell.Number})</summary><pre><code>{HtmlText.Escape(cell.Text.TrimEnd())}</code></pre></details>\n");
    }

    private static string ParameterTable(NotebookRun run)
    {
        var values = run.Parameters;
        var held = run.Cells.SelectMany(cell => cell.Outputs).OfType<ControlPart>().ToLookup(part => part.Parameter);
        var hasGiven = values.Any(value => value.IsGiven);
        var html = new StringBuilder("<div class=\"rs-table rs-parameters\" tabindex=\"0\" role=\"group\" "
            + "aria-label=\"Values\"><table><caption>This page was made with</caption><tbody>");
        foreach (var value in values)
        {
            var parameter = value.Parameter;
            html.Append(
                $"<tr{(value.IsGiven ? " class=\"rs-changed\"" : "")}><td>{HtmlText.Escape(Capital(parameter.Label))}</td>");
            html.Append($"<td class=\"rs-number\">{HtmlText.Prose(Used(value, held[parameter.Name]))}</td>");
            if (hasGiven)
                html.Append(
                    $"<td>{(value.IsGiven ? $"instead of {HtmlText.Prose(Own(parameter, held[parameter.Name]))}" : "")}</td>");
            html.Append("</tr>");
        }

        return html.Append("</tbody></table></div>\n").ToString();
    }

    private static string Used(ParameterValue value, IEnumerable<ControlPart> held) =>
        value.Parameter.IsOptional && value.Value.Length == 0 ? Own(value.Parameter, held) : Shown(value.Value, value.Parameter);

    // What stands where nobody gave a value: of the file, of the notebook for a file that says nothing, or the notebook's own.
    private static string Own(NotebookParameter parameter, IEnumerable<ControlPart> held) => !parameter.IsOptional
        ? Shown(parameter.Default, parameter)
        : held.LastOrDefault(part => part.Holds is not null) is not { } part ? "as in the file"
        : $"{Shown(part.Holds!, parameter)}, {(part.IsOfFile ? "as in the file" : "which the file leaves open")}";

    private static string Shown(string value, NotebookParameter parameter) => parameter.Kind switch
    {
        ParameterKind.ScenarioFile => Path.GetFileName(value),
        ParameterKind.YesNo => value == "true" ? "yes" : "no",
        ParameterKind.Places => value.Length == 0 ? "nothing moved" : value.Replace(" -", " −", StringComparison.Ordinal),
        ParameterKind.Number or ParameterKind.WholeNumber => $"{value.Replace('-', '−')} {parameter.Unit}".TrimEnd(),
        _ => value,
    };

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
