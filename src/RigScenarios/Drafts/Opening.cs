using RigScenarios.Builds;
using RigScenarios.Files;
using RigScenarios.Files.Editing;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>The way back from a whole scenario to what somebody gave of it: by what is marked.</summary>
internal static class Opening
{
    private static readonly string[] StatesOfBattery =
        ["charge", "capacity-left", "resistance-growth", "age", "start-temperature"];

    /// <summary>What is given of a scenario.</summary>
    /// <param name="scenario">A whole scenario.</param>
    /// <param name="frame">What stands around it.</param>
    public static MapNode Of(Scenario scenario, RigFrame frame)
    {
        var tree = (MapNode)ScenarioFormat.Whole.Write(scenario);
        var build = scenario.Builds[frame.Build];
        foreach (var (id, part) in scenario.Parts)
        {
            if (id.StartsWith(OwnPart.IdStart, StringComparison.Ordinal))
            {
                tree = GivenTree.With(tree, $"parts.{id}", OwnPart.Given(part));
                // In a row it is one field of a form.
                if (part.Size is { } size)
                    tree = GivenTree.With(tree, $"parts.{id}.size", SizeFormat.Text(size));
            }
            else if (IsCopy(scenario, frame, id))
                tree = GivenTree.Without(tree, $"parts.{id}");
        }
        foreach (var (group, name) in Open(build))
            tree = GivenTree.With(tree, frame.InBuild($"{group}.{name}.fed-by"), build.StandardFeed);
        // A form shows what a file may leave out.
        foreach (var (name, _) in scenario.Chargers.Where(charger => charger.Value.Bays == 1))
            tree = GivenTree.With(tree, $"chargers.{name}.bays", "1");
        foreach (var name in scenario.Journeys.Keys)
            tree = AsAsked(AsAsked(tree, $"journeys.{name}.by", "flight"), $"journeys.{name}.travellers", "1");
        foreach (var mark in build.Assumed.Where(mark => mark != BuildAssumptions.Batteries))
            tree = GivenTree.Without(tree, BuildAssumptions.PathOf(mark, frame.Build));
        if (build.Assumed.Count == 0)
            return tree;
        tree = GivenTree.Without(tree, frame.InBuild("assumed"));
        if (!build.Assumed.Contains(BuildAssumptions.Batteries))
            return tree;
        foreach (var (name, _) in scenario.Batteries.Where(battery => battery.Value.Item == build.Battery.Item))
        {
            foreach (var state in StatesOfBattery)
            {
                if (GivenTree.Find(tree, $"batteries.{name}.{state}") is { } own
                    && GivenTree.Find(tree, frame.InBuild($"battery.{state}")) is { } other && TreeDifference.Same(own, other))
                    tree = GivenTree.Without(tree, $"batteries.{name}.{state}");
            }
        }
        return GivenTree.With(tree, frame.InBuild("assumed"),
            new ListNode([new TextNode(BuildAssumptions.Batteries, TextPlace.None)], TextPlace.None));
    }

    private static MapNode AsAsked(MapNode tree, string path, string standard) =>
        GivenTree.Find(tree, path) is null ? GivenTree.With(tree, path, standard) : tree;

    /// <summary>A listed part that was copied so that the file needs no other: it comes back when the scenario is
    /// completed.</summary>
    private static bool IsCopy(Scenario scenario, RigFrame frame, string id) =>
        frame.Library.TryGetValue(id, out var listed) && !scenario.Library.ContainsKey(id)
            && scenario.Kit.Values.Any(item => item.Part == id)
            && TreeDifference.Same(PartFormat.Whole.Write(listed), PartFormat.Whole.Write(scenario.Parts[id]));

    /// <summary>What names no feed hangs on the standard one.</summary>
    private static IEnumerable<(string Group, string Name)> Open(Build build) =>
        build.Devices.Where(item => item.Value.FedBy is null).Select(item => ("devices", item.Key))
            .Concat(build.Splitters.Where(item => item.Value.FedBy is null).Select(item => ("splitters", item.Key)))
            .Concat(build.Regulators.Where(item => item.Value.FedBy is null).Select(item => ("regulators", item.Key)))
            .Where(item => !build.Assumed.Contains($"{item.Item1}.{item.Key}")
                && !build.Assumed.Contains($"{item.Item1}.{item.Key}.fed-by"));
}
