using System.Text.Json;
using RigScenarios.Scenarios;

namespace RigScenarios.Requests.Messages;

/// <summary>A problem as a page shows it. All texts are plain text; the page sets them as text, never as HTML.</summary>
/// <param name="Text">What is wrong, in one sentence or two.</param>
/// <param name="Path">The field or parameter, or empty.</param>
/// <param name="Accepted">What is accepted, with an example, or null.</param>
/// <param name="Nearest">The nearest valid name, or null.</param>
/// <param name="Line">Line in the text, from 1, or null.</param>
/// <param name="Column">Column in the line, from 1, or null.</param>
/// <param name="Severity">"error" or "warning".</param>
internal sealed record Problem(
    string Text, string Path = "", string? Accepted = null, string? Nearest = null, int? Line = null, int? Column = null,
    string Severity = "error")
{
    public static Problem Of(Diagnostic diagnostic) => new(
        diagnostic.Problem,
        diagnostic.Path,
        diagnostic.Accepted,
        diagnostic.Nearest,
        diagnostic.At == TextPlace.None ? null : diagnostic.At.Line,
        diagnostic.At == TextPlace.None ? null : diagnostic.At.Column,
        diagnostic.Severity == Scenarios.Severity.Error ? "error" : "warning");

    public static IReadOnlyList<Problem> Of(IEnumerable<Diagnostic> diagnostics) => [.. diagnostics.Select(Of)];

    /// <summary>The problems of a text and of the parts files it names: those of other files say which, and have no line in the
    /// text.</summary>
    /// <param name="diagnostics">The problems.</param>
    /// <param name="path">The file that the text is meant for.</param>
    public static IReadOnlyList<Problem> Of(IEnumerable<Diagnostic> diagnostics, string path) =>
    [
        .. diagnostics.Select(diagnostic => diagnostic.File == path || diagnostic.File.Length == 0
            ? Of(diagnostic)
            : Of(diagnostic) with { Text = $"In {Where(diagnostic)}: {diagnostic.Problem}", Line = null, Column = null }),
    ];

    /// <summary>Writes the fields of a problem as JSON.</summary>
    public static void Write(Utf8JsonWriter json, Problem problem)
    {
        json.WriteString("text", problem.Text);
        json.WriteString("path", problem.Path);
        json.WriteString("accepted", problem.Accepted);
        json.WriteString("nearest", problem.Nearest);
        WriteCount(json, "line", problem.Line);
        WriteCount(json, "column", problem.Column);
        json.WriteString("severity", problem.Severity);
    }

    private static void WriteCount(Utf8JsonWriter json, string name, int? count)
    {
        if (count is { } number)
            json.WriteNumber(name, number);
        else
            json.WriteNull(name);
    }

    private static string Where(Diagnostic diagnostic) =>
        System.IO.Path.GetFileName(diagnostic.File) + (diagnostic.At == TextPlace.None ? "" : $", line {diagnostic.At.Line}");
}
