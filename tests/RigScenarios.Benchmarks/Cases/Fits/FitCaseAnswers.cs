using System.Text.Json.Nodes;
using RigScenarios.Fits;

namespace RigScenarios.Benchmarks.Cases.Fits;

/// <summary>What comes out of every case of a folder of fits, pulse and bench tests among them (fit-format.md).</summary>
internal static class FitCaseAnswers
{
    public static JsonArray In(string folder)
    {
        var fits = FitCaseReader.Read(folder).ToDictionary(one => one.Id);
        using var document = CaseFile.Parse(FitCaseReader.FileOf(folder));
        var results = new JsonArray();
        foreach (var element in document.RootElement.GetProperty("cases").EnumerateArray())
        {
            var id = element.GetProperty("id").GetString()!;
            results.Add((JsonNode)(element.GetProperty("kind").GetString() switch
            {
                "pulse" => PulseCase.Answer(id, element, folder),
                "bench" => BenchCase.Answer(id, element, folder),
                _ => FitAnswer.Of(fits[id], BatteryFit.Find(fits[id].Problem)),
            }));
        }

        return results;
    }
}
