using System.Text.Json;
using System.Text.Json.Nodes;
using RigScenarios.Benchmarks.Cases.Days;

namespace RigScenarios.Benchmarks;

/// <summary>`days FOLDER RESULTS.json` and `one-day FOLDER RESULTS.json`: run the scenario files of a folder and write what came
/// out.</summary>
internal static class DayCommand
{
    public const string Days = "days FOLDER RESULTS.json";

    public const string OneDay = "one-day FOLDER RESULTS.json";

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    public static int RunDays(ReadOnlySpan<string> arguments) => Run(arguments, Days, "day-format.md", one => DayAnswer.Of(one));

    public static int RunOneDay(ReadOnlySpan<string> arguments) =>
        Run(arguments, OneDay, "one-day-format.md", one => OneDayAnswer.Of(one));

    private static int Run(ReadOnlySpan<string> arguments, string usage, string format, Func<DayCase, JsonObject> answer)
    {
        if (arguments.Length != 2)
        {
            Console.Error.WriteLine($"A folder and a file are needed: {usage}");
            return 2;
        }

        var cases = DayCase.In(arguments[0]);
        var results = new JsonObject
        {
            ["format"] = format,
            ["cases"] = new JsonObject(cases.Select(one => KeyValuePair.Create(one.Id, (JsonNode?)answer(one)))),
        };
        OutputFile.Write(arguments[1], results.ToJsonString(Indented) + "\n");
        Console.WriteLine($"{cases.Count} cases, results in {arguments[1]}");
        return 0;
    }
}
