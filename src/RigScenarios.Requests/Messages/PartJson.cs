using System.Text.Json;
using RigScenarios.Charts;
using RigScenarios.Charts.Pages;

namespace RigScenarios.Requests.Messages;

/// <summary>Parts of a page as JSON, for a page that draws them itself. All texts stay plain text; only "html", "svg" and
/// "narrowSvg" are markup, made here from escaped text.</summary>
internal static class PartJson
{
    public static void Write(Utf8JsonWriter json, PagePart part)
    {
        json.WriteStartObject();
        switch (part)
        {
            case AnswerPart answer:
                json.WriteString("type", "answer");
                json.WriteString("text", answer.Text);
                WriteTexts(json, "cautions", answer.Cautions);
                json.WriteBoolean("mayBeTaken", answer.Whole is not null);
                json.WriteString("line", PartHtml.LineOf(answer));
                json.WriteBoolean("isVerdict", answer.Verdict is not null);
                // Its cautions are texts of their own: a page may put them elsewhere.
                if (answer.Verdict is not null)
                    json.WriteString("html", PartHtml.BlockOf(answer));
                break;
            case FigurePart figure:
                json.WriteString("type", "figure");
                WriteFigure(json, figure.Figure);
                break;
            case DrawingPart drawing:
                json.WriteString("type", "drawing");
                WriteDrawing(json, drawing.Drawing);
                break;
            case TablePart table:
                json.WriteString("type", "table");
                WriteTable(json, table.Table);
                break;
            case PrintedPart printed:
                json.WriteString("type", "printed");
                json.WriteString("text", printed.Text);
                break;
            case ProsePart prose:
                json.WriteString("type", "prose");
                json.WriteString("text", prose.Text);
                break;
            case HeadingPart heading:
                json.WriteString("type", "heading");
                json.WriteString("text", heading.Text);
                json.WriteNumber("level", heading.Level);
                break;
            case ScenarioPart scenario:
                json.WriteString("type", "scenario");
                json.WriteString("name", scenario.Name);
                json.WriteString("text", scenario.Text);
                break;
            case ControlPart control:
                json.WriteString("type", "control");
                json.WriteString("name", control.Parameter);
                json.WriteString("holds", control.Holds);
                json.WriteBoolean("isOfFile", control.IsOfFile);
                json.WriteString("whyNothing", control.WhyNothing);
                break;
            default:
                json.WriteString("type", "html");
                json.WriteString("html", PartHtml.Of(part));
                break;
        }
        json.WriteEndObject();
    }

    /// <summary>Writes parts as the list "parts".</summary>
    public static void WriteAll(Utf8JsonWriter json, IEnumerable<PagePart> parts)
    {
        json.WriteStartArray("parts");
        foreach (var part in parts)
            Write(json, part);
        json.WriteEndArray();
    }

    /// <summary>Whether a living page shows the part: scripts it has itself.</summary>
    public static bool IsShown(PagePart part) => part is not ScriptPart;

    private static void WriteFigure(Utf8JsonWriter json, Figure figure)
    {
        json.WriteString("slug", figure.Slug);
        json.WriteString("title", figure.Title);
        json.WriteString("caption", figure.Caption);
        WriteTexts(json, "cautions", figure.Cautions);
        json.WriteString("alternative", figure.AlternativeText);
        json.WriteNumber("height", figure.Height);
        json.WritePropertyName("specification");
        // Checked, although it was made by the charts: one broken figure must not break the whole message.
        json.WriteRawValue(figure.Specification);
        WriteTable(json, figure.Data);
    }

    // The one text besides "html" that is markup: made by the drawings from escaped text.
    private static void WriteDrawing(Utf8JsonWriter json, Drawing drawing)
    {
        json.WriteString("slug", drawing.Slug);
        json.WriteString("title", drawing.Title);
        json.WriteString("caption", drawing.Caption);
        WriteTexts(json, "cautions", drawing.Cautions);
        json.WriteString("alternative", drawing.AlternativeText);
        json.WriteString("svg", drawing.Svg);
        json.WriteString("narrowSvg", drawing.NarrowSvg);
        WriteTable(json, drawing.Data);
    }

    private static void WriteTable(Utf8JsonWriter json, ChartTable table)
    {
        json.WriteStartObject("table");
        json.WriteString("caption", table.Caption);
        json.WriteStartArray("columns");
        foreach (var column in table.Columns)
        {
            json.WriteStartObject();
            json.WriteString("title", column.Title);
            json.WriteBoolean("isNumber", column.IsNumber);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartArray("rows");
        foreach (var row in table.Rows)
        {
            json.WriteStartArray();
            foreach (var cell in row)
                json.WriteStringValue(cell);
            json.WriteEndArray();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteTexts(Utf8JsonWriter json, string name, IReadOnlyList<string> texts)
    {
        json.WriteStartArray(name);
        foreach (var text in texts)
            json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
