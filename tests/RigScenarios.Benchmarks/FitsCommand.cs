using System.Text.Json;
using System.Text.Json.Nodes;
using RigScenarios.Benchmarks.Cases;
using RigScenarios.Benchmarks.Cases.Fits;
using RigScenarios.Fits;

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

        var folder = arguments[0];
        var fits = FitCaseReader.Read(folder).ToDictionary(one => one.Id);
        using var document = CaseFile.Parse(FitCaseReader.FileOf(folder));
        var results = new JsonArray();
        foreach (var element in document.RootElement.GetProperty("cases").EnumerateArray())
        {
            var id = element.GetProperty("id").GetString()!;
            results.Add(element.GetProperty("kind").GetString() switch
            {
                "pulse" => PulseCase.Answer(id, element, folder),
                "bench" => BenchCase.Answer(id, element, folder),
                _ => FitAnswer.Of(fits[id], BatteryFit.Find(fits[id].Problem)),
            });
        }

        OutputFile.Write(arguments[1], new JsonObject { ["results"] = results }.ToJsonString(Indented));
        Console.WriteLine($"{results.Count} cases, results in {arguments[1]}");
        return 0;
    }
}
