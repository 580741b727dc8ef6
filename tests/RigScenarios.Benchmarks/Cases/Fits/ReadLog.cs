using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using RigScenarios.Fits.Logs;

namespace RigScenarios.Benchmarks.Cases.Fits;

/// <summary>A log of a case as it was read.</summary>
internal sealed record ReadLog(LogRows Rows)
{
    public static ReadLog? Read(JsonElement log, CaseFields fields, string folder, List<string> problems)
    {
        var lines = File.ReadLines(Path.Combine(folder, fields.Text(log, "file"))).Skip(1)
            .Select(line => line.Split(',').Select(one => double.Parse(one, CultureInfo.InvariantCulture)).ToArray()).ToArray();
        return new ReadLog(LogRows.Of([.. lines.Select(l => l[0])], [.. lines.Select(l => l[1])], [.. lines.Select(l => l[2])]));
    }

    public JsonObject Counts() => new() { ["rows"] = Rows.Count };
}
