using System.Text.Json.Nodes;
using RigScenarios.Benchmarks.Cases.Aging;

namespace RigScenarios.Benchmarks;

/// <summary>`aging CASES.json RESULTS.json`: follows each history of the file and writes what became of the battery.</summary>
internal static class AgingCommand
{
    public const string Usage = "aging CASES.json RESULTS.json";

    public static int Run(ReadOnlySpan<string> arguments)
    {
        if (arguments.Length != 2)
        {
            Console.Error.WriteLine($"Two files are needed: {Usage}");
            return 2;
        }

        var cases = AgingCaseReader.Read(arguments[0]);
        var results = new JsonObject
        {
            ["model"] = "aging-model.md",
            ["format"] = "aging-format.md",
            ["results"] = new JsonArray([.. cases.Select(AgingAnswer.Of)]),
        };
        OutputFile.Write(arguments[1], results.ToJsonString());
        Console.WriteLine($"{cases.Count} cases, results in {arguments[1]}");
        return 0;
    }
}
