using System.Text.Json;
using System.Text.Json.Nodes;
using RigScenarios.Fits.Logs;
using RigScenarios.Scenarios;

namespace RigScenarios.Benchmarks.Cases.Fits;

/// <summary>A log that a case of fit-format.md names: where it is, how it is laid out, and what is told of it
/// afterwards.</summary>
internal static class LogCase
{
    /// <summary>Reads the log of an element with the fields `file`, `columns`, `separator`, `decimal` and `rows`.</summary>
    /// <exception cref="CaseFileException">It can't be used.</exception>
    public static LogReading Read(JsonElement element, string folder)
    {
        var file = element.GetProperty("file").GetString()!;
        var columns = new LogColumns
        {
            Time = Column(element, "time"),
            Voltage = Column(element, "voltage"),
            Current = Column(element, "current"),
            Separator = Letter(element, "separator"),
            DecimalMark = Letter(element, "decimal"),
            Samples = element.TryGetProperty("rows", out var rows) && rows.GetString() == "sample",
        };
        try
        {
            return PowerLogFile.Read(Path.Combine(folder, file), columns);
        }
        catch (ScenarioProblemsException error)
        {
            throw new CaseFileException(error.Message, error);
        }
    }

    /// <summary>What was done while reading, as the results tell it.</summary>
    public static JsonObject Facts(LogReading log) => new()
    {
        ["rows"] = log.Counts.Rows,
        ["dropped"] = log.Counts.Dropped,
        ["resets"] = log.Counts.Resets,
        ["duplicates"] = log.Counts.Duplicates,
        ["flipped"] = log.Counts.Flipped,
        ["gaps"] = log.Counts.Gaps,
        ["median_s"] = log.Median.Seconds,
    };

    private static LogColumn? Column(JsonElement element, string quantity) =>
        element.TryGetProperty("columns", out var columns) && columns.TryGetProperty(quantity, out var column)
            ? new LogColumn(column[0].GetString()!, column[1].GetDouble()) : null;

    private static char? Letter(JsonElement element, string name) =>
        element.TryGetProperty(name, out var text) && text.GetString() is [var letter] ? letter : null;
}
