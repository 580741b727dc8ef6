using System.Text.Json;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Requests.Live;

/// <summary>A notebook as JSON before anything has been run: its prose, its code, its parameters.</summary>
internal static class NotebookJson
{
    public static void Write(Utf8JsonWriter json, Notebook notebook)
    {
        json.WriteString("kind", "notebook");
        json.WriteString("name", notebook.Name);
        json.WriteString("title", notebook.Title);
        json.WriteStartArray("cells");
        foreach (var cell in notebook.Cells.Where(cell => cell is { Kind: CellKind.Prose or CellKind.Code,
            IsForNotebookPrograms: false }))
            WriteCell(json, cell, notebook);
        json.WriteEndArray();
        json.WriteStartArray("parameters");
        foreach (var parameter in notebook.Parameters.All)
            WriteParameter(json, parameter);
        json.WriteEndArray();
    }

    public static void WriteChoices(Utf8JsonWriter json, IReadOnlyList<ParameterChoice> choices)
    {
        json.WriteStartArray("choices");
        foreach (var choice in choices)
        {
            json.WriteStartObject();
            json.WriteString("value", choice.Value);
            json.WriteString("title", choice.Title);
            json.WriteString("detail", choice.Detail);
            if (choice.Stretch is { } stretch)
            {
                json.WriteNumber("least", Math.Round(stretch.Least, 3));
                json.WriteNumber("greatest", Math.Round(stretch.Greatest, 3));
                json.WriteNumber("at", Math.Round(stretch.At, 3));
            }
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void WriteCell(Utf8JsonWriter json, NotebookCell cell, Notebook notebook)
    {
        json.WriteStartObject();
        json.WriteNumber("number", cell.Number);
        if (cell.Kind == CellKind.Prose)
        {
            json.WriteString("kind", "prose");
            json.WriteString("html", notebook.ProseHtml(cell, AddressOf));
        }
        else
        {
            json.WriteString("kind", "code");
            json.WriteString("code", cell.Text);
            json.WriteBoolean("isParameters", cell.Number == notebook.Parameters.Cell);
            json.WriteBoolean("isStart", cell.IsStart);
        }
        json.WriteEndObject();
    }

    // All notebooks of the shelf lie in one folder: the name alone says which.
    private static string AddressOf(string path) => $"/n/{path[(path.LastIndexOf('/') + 1)..]}";

    private static void WriteParameter(Utf8JsonWriter json, NotebookParameter parameter)
    {
        json.WriteStartObject();
        json.WriteString("name", parameter.Name);
        json.WriteString("label", parameter.Label);
        json.WriteString("kind", parameter is { Kind: ParameterKind.Text, Choices.Count: > 0 } ? "choice"
            : JsonNamingPolicy.KebabCaseLower.ConvertName(parameter.Kind.ToString()));
        json.WriteString("unit", parameter.Unit);
        json.WriteString("of", parameter.Of);
        WriteNumber(json, "minimum", parameter.Minimum);
        WriteNumber(json, "maximum", parameter.Maximum);
        json.WriteString("default", parameter.Default);
        json.WriteBoolean("isOptional", parameter.IsOptional);
        WriteChoices(json, [.. parameter.Choices.Select(choice => new ParameterChoice(choice, choice, ""))]);
        json.WriteEndObject();
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number)
            json.WriteNumber(name, number);
        else
            json.WriteNull(name);
    }
}
