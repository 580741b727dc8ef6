using System.Text.Json.Nodes;
using RigScenarios.Answers;
using RigScenarios.Answers.TakeAlong;
using RigScenarios.Limits;

namespace RigScenarios.Cli.Answers;

/// <summary>A sheet to take along for programs: its sections as they are printed, nothing left out, and its table with numbers as
/// numbers. The shape is documented in docs/json.md; fields are added, never changed.</summary>
internal static class SheetJson
{
    /// <summary>The sheet.</summary>
    /// <param name="kind">Which sheet.</param>
    /// <param name="build">The build's short name; null for the whole kit.</param>
    /// <param name="answer">The answer that it is made of; null where nothing was run.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="table">Its table.</param>
    public static string Text(SheetKind kind, string? build, RigAnswer? answer, TakeAlongSheet sheet, SheetTable table) =>
        JsonText.Of(new
    {
        format = "rigscenarios sheet 1",
        title = sheet.Title,
        kind = kind.ToString().ToLowerInvariant(),
        build,
        days = answer?.Days,
        verdict = answer?.Verdict.InWords(),
        answer = sheet.Headline,
        sections = Sections(sheet),
        rows = Rows(table),
    });

    private static IEnumerable<object> Sections(TakeAlongSheet sheet) => sheet.Sections.Select(section => new
    {
        title = section.Title, columns = section.Columns, rows = section.Rows, note = section.Note,
    });

    private static JsonArray Rows(SheetTable table) => new([.. table.Rows.Select(row => new JsonObject(
        table.Columns.Zip(row, (column, cell) => KeyValuePair.Create(column.Key, Value(cell)))))]);

    private static JsonNode? Value(SheetCell cell) => cell switch
    {
        { Text: { } text } => text,
        { Number: { } number } => number,
        _ => null,
    };
}
