using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Costs;

/// <summary>The scenario by hand with prices: a battery of 200, a camera of 3000 or 90 a day, three lights of 100 or 10, a
/// plate of 50, and a regulator without any.</summary>
internal static class PricedScenario
{
    /// <summary>The text.</summary>
    /// <param name="costs">The fields of the block; null for no block.</param>
    /// <param name="had">How things are had, after the names in the kit: "camera: rented".</param>
    /// <param name="currency">The currency of the plate.</param>
    public static string Text(string? costs = "", string had = "", string currency = "EUR")
    {
        var text = SmallScenario.Text(
                devices: "{camera: {essential: yes, fed-by: battery}, light: {count: 2, fed-by: regulator}}",
                build: "regulators: {regulator: {fed-by: battery}}")
            .Replace("name: Flat battery", "name: Flat battery\n    buy: 200 EUR\n    rent-per-day: 12 EUR",
                StringComparison.Ordinal)
            .Replace("name: Camera,", "name: Camera, buy: 3000 EUR, rent-per-day: 90 EUR, rent-per-week: 250 EUR,",
                StringComparison.Ordinal)
            .Replace("name: Light,", "name: Light, buy: 100 EUR, rent-per-day: 10 EUR,", StringComparison.Ordinal)
            .Replace("name: Plate,", $"name: Plate, buy: 50 {currency},", StringComparison.Ordinal);
        foreach (var one in had.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var (name, way) = (one.Split(": ")[0], one.Split(": ")[1]);
            text = text.Replace($"{name}: {{part: {name}", $"{name}: {{part: {name}, had: {way}", StringComparison.Ordinal);
        }
        return costs is null ? text : $"{text}\ncosts: {{{costs}}}\n";
    }

    /// <summary>The scenario.</summary>
    public static Scenario Read(string? costs = "", string had = "") => SmallScenario.Read(Text(costs, had));

    /// <summary>What is wrong with a text.</summary>
    public static IReadOnlyList<Diagnostic> Problems(string text)
    {
        using var folder = new TemporaryFolder();
        return ScenarioFile.TryRead(folder.Write("scenario.yaml", text)).Problems;
    }
}
