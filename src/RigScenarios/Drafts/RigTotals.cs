using RigScenarios.Builds;
using RigScenarios.Costs;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Drafts;

/// <summary>Mass and cost of a rig's things and power cables together.</summary>
/// <param name="Mass">Mass of all whose mass is known or assumed.</param>
/// <param name="WithoutMass">The things, by name, whose mass is not known.</param>
/// <param name="Cost">What the answer counts: all that the build and its days need, batteries in turn and chargers too; null
/// where prices are in several currencies.</param>
public sealed record RigTotals(Mass Mass, IReadOnlyList<string> WithoutMass, KitCost? Cost)
{
    internal static RigTotals Of(Scenario scenario, string buildName)
    {
        var build = scenario.Builds[buildName];
        var all = Counted(build).Select(item => (Part: scenario.PartOf(item.Name), item.Count))
            .Where(item => item.Part is not null).Select(item => (Part: item.Part!, item.Count)).ToList();
        return new RigTotals(
            Mass.FromKilograms(all.Sum(item => (item.Part.Mass?.Kilograms ?? 0) * item.Count)),
            [.. all.Where(item => item.Part.Mass is null).Select(item => item.Part.Name)],
            CostOf(scenario, buildName));
    }

    private static KitCost? CostOf(Scenario scenario, string build)
    {
        try
        {
            // Of the one day that the form shows, as its answer is.
            return KitCost.Of(scenario, build, (scenario.Costs ?? new CostTerms()).ForDays(1));
        }
        catch (ScenarioProblemsException)
        {
            // Told as a problem of the file, at its place.
            return null;
        }
    }

    /// <summary>Each thing with how many there are. A cable that is also named among the carried things is counted
    /// there.</summary>
    private static IEnumerable<(string Name, int Count)> Counted(Build build) =>
        build.Things.Distinct().Select(name => (name, build.Devices.TryGetValue(name, out var device) ? device.Count
            : build.Carries.Contains(name) ? build.Carries.Count(other => other == name)
            : build.Cables.Contains(name) ? LinkLookup.Fed(build).Where(item => item.Cable == name)
                .Sum(item => build.Devices.TryGetValue(item.Name, out var fed) ? fed.Count : 1)
            : 1));
}
