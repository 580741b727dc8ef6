using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Cells;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Files;

/// <summary>What builds say of what nobody gave: which feeds were proposed, which figures around the build were
/// assumed.</summary>
internal static class BuildAssumptions
{
    /// <summary>The mark of a build whose batteries begin in the state of its own.</summary>
    public const string Batteries = "batteries";

    private const string FedBy = ".fed-by";

    private static readonly string[] Around = ["kit", "chargers", "swaps"];

    /// <summary>The path from the scenario of what a build marks.</summary>
    public static string PathOf(string mark, string build) =>
        Around.Contains(mark.Split('.')[0]) ? mark : $"builds.{build}.{mark}";

    /// <summary>The figures marked as assumed; proposed feeds are told with the wiring.</summary>
    public static IEnumerable<AssumedValue> In(Scenario scenario, Build build)
    {
        var tree = build.Assumed.Count == 0 ? null : ScenarioFormat.Whole.Write(scenario);
        foreach (var mark in build.Assumed)
        {
            if (mark == Batteries)
                yield return Told(mark, "state of the further batteries", "as the one on the rig",
                    "nobody said how each of them begins");
            else if (tree is not null && Words(scenario, mark) is { } name && TextAt(tree, mark) is { } text)
                yield return Told(mark, name, text, "nobody said; what is said replaces it");
        }
    }

    /// <summary>Checks that whatever is marked is there.</summary>
    public static void Check(Scenario scenario, Build build, string at, ReadLog log)
    {
        if (build.Assumed.Count == 0)
            return;
        var tree = ScenarioFormat.Whole.Write(scenario);
        for (var index = 0; index < build.Assumed.Count; index++)
        {
            var mark = build.Assumed[index];
            // A feed that could not be proposed yet is marked too.
            var path = PathOf(mark.EndsWith(FedBy, StringComparison.Ordinal) ? mark[..^FedBy.Length] : mark,
                at["builds.".Length..]);
            if (mark != Batteries && NodeAt(tree, path) is null)
                log.Error($"{at}.assumed.{index + 1}", $"There is no \"{mark}\" that could be assumed.",
                    "a path inside this build, such as \"devices.camera.fed-by\"; one of kit, chargers and swaps, such as "
                        + "\"chargers.charger.ambient\"; or \"batteries\"");
        }
    }

    private static string? Words(Scenario scenario, string mark) => mark.Split('.') switch
    {
        ["swaps", "reserve"] => "charge at which a battery is swapped",
        ["chargers", var name, "current"] => $"{Title(scenario, name)}, current of each bay",
        ["chargers", var name, "ambient"] => $"{Title(scenario, name)}, air around it",
        _ => null,
    };

    private static string Title(Scenario scenario, string charger) =>
        scenario.Chargers.Count == 1 ? "charger" : $"charger \"{charger}\"";

    private static AssumedValue Told(string field, string name, string value, string why) =>
        new(field, name, value, why, Citation.CommonPractice("what is usual where nobody says (docs/own-rig.md)"));

    private static string? TextAt(FileNode tree, string path) => (NodeAt(tree, path) as TextNode)?.Text;

    private static FileNode? NodeAt(FileNode tree, string path) => path.Split('.').Aggregate((FileNode?)tree,
        (node, step) => (node as MapNode)?.Entries.FirstOrDefault(entry => entry.Key == step)?.Value);
}
