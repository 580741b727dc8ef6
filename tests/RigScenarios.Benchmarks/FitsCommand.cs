using System.Text.Json;
using System.Text.Json.Nodes;
using RigScenarios.Benchmarks.Cases.Fits;

namespace RigScenarios.Benchmarks;

/// <summary>`fits FOLDER RESULTS.json`: fits each case of a folder and writes what came out.</summary>
internal static class FitsCommand
{
    public const string Usage = "fits FOLDER RESULTS.json";

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    public static int Run(ReadOnlySpan<string> arguments)
    {
        if (arguments.Length != 2)
        {
            Console.Error.WriteLine($"A folder and a file are needed: {Usage}");
            return 2;
        }

        var results = FitCaseAnswers.In(arguments[0]);
        OutputFile.Write(arguments[1], new JsonObject { ["results"] = results }.ToJsonString(Indented));
        Console.WriteLine($"{results.Count} cases, results in {arguments[1]}");
        return 0;
    }
}
