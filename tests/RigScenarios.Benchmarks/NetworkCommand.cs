using System.Text.Json.Nodes;
using System.Text.Json;
using RigScenarios.Benchmarks.Cases;

namespace RigScenarios.Benchmarks;

/// <summary>`network CASES.json RESULTS.json`: solves each network and each run of the file and writes what came out.</summary>
internal static class NetworkCommand
{
    public const string Usage = "network CASES.json RESULTS.json";

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    public static int Run(ReadOnlySpan<string> arguments)
    {
        if (arguments.Length != 2)
        {
            Console.Error.WriteLine($"Two files are needed: {Usage}");
            return 2;
        }

        var file = NetworkCaseReader.Read(arguments[0]);
        var results = new JsonObject
        {
            ["static"] = new JsonArray([.. file.Static.Select(NetworkAnswer.Of)]),
            ["runs"] = new JsonArray([.. file.Runs.Select(one => NetworkRunAnswer.Of(one).ToJson(one.Id))]),
        };
        OutputFile.Write(arguments[1], results.ToJsonString(Indented) + "\n");
        Console.WriteLine($"{file.Static.Count} networks and {file.Runs.Count} runs, results in {arguments[1]}");
        return 0;
    }
}
