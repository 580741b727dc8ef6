using System.Text.Encodings.Web;
using System.Text.Json.Nodes;
using System.Text.Json;
using Microsoft.CodeAnalysis.CSharp;
using RigScenarios.Charts.Pages;
using RigScenarios.Files;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Engine;
using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Notebooks.Compiler;

/// <summary>A run as a notebook file with its outputs in it, for those who go on in a notebook program. The original stays as it
/// is.</summary>
public static class ExecutedNotebook
{
    private static readonly JsonSerializerOptions Readable = new()
    {
        WriteIndented = true,
        IndentSize = 1,
        // The file is no web page: "°C" may stay what it is.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The notebook with outputs, as JSON.</summary>
    public static string Of(NotebookRun run)
    {
        ArgumentNullException.ThrowIfNull(run);
        var root = JsonNode.Parse(TextFile.TryRead(run.Notebook.FilePath, Notebook.LargestBytes).Text
            ?? throw new IOException($"{run.Notebook.FilePath} can't be read any more."))!;
        var cells = root["cells"]!.AsArray();
        for (var i = 0; i < run.Cells.Count; i++)
        {
            var cell = cells[run.Cells[i].Cell.Number - 1]!;
            cell["execution_count"] = i + 1;
            cell["outputs"] = new JsonArray([.. run.Cells[i].Outputs.Select(Output)]);
        }

        var given = run.Parameters.Where(value => value.IsGiven).ToList();
        if (run.Notebook.Parameters.Cell is { } number && given.Count > 0)
            cells.Insert(number, Injected(given.Select(value => $"{value.Parameter.Name} = "
                + $"{Literal(value.Parameter, value.Value)};")));
        return root.ToJsonString(Readable) + "\n";
    }

    /// <summary>Writes the notebook: first under a temporary name, then moved.</summary>
    /// <exception cref="IOException">The folder cannot be written to.</exception>
    public static Task WriteAsync(NotebookRun run, string path, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(run);
        return Task.Run(() => TextFile.Write(path, Of(run)), cancellation);
    }

    private static JsonObject Output(PagePart part)
    {
        if (part is PrintedPart printed)
            return new JsonObject { ["output_type"] = "stream", ["name"] = "stdout", ["text"] = printed.Text };
        var data = new JsonObject { ["text/html"] = PartHtml.Of(part) };
        if (PartText.Of(part) is { Length: > 0 } text)
            data["text/plain"] = text;
        return new JsonObject { ["output_type"] = "display_data", ["data"] = data, ["metadata"] = new JsonObject() };
    }

    // The open convention of parameterised notebooks: the values given stand in a cell of their own after the parameters.
    private static JsonObject Injected(IEnumerable<string> assignments) => new()
    {
        ["cell_type"] = "code",
        ["execution_count"] = null,
        ["id"] = "injected-parameters",
        ["metadata"] = new JsonObject { ["tags"] = new JsonArray("injected-parameters") },
        ["outputs"] = new JsonArray(),
        ["source"] = string.Join('\n', assignments),
    };

    /// <summary>A value as C# writes it.</summary>
    internal static string Literal(NotebookParameter parameter, string value) => parameter.Kind switch
    {
        _ when parameter.IsOptional && value.Length == 0 => "null",
        ParameterKind.Date =>
            $"new DateOnly({value.Replace("-0", "-", StringComparison.Ordinal).Replace("-", ", ", StringComparison.Ordinal)})",
        ParameterKind.Text or ParameterKind.ScenarioFile or ParameterKind.Build or ParameterKind.Day or ParameterKind.Part
            or ParameterKind.Places => SymbolDisplay.FormatLiteral(value, quote: true),
        _ => value + parameter.LiteralSuffix,
    };
}
