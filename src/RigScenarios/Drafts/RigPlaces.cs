using RigScenarios.Answers;
using RigScenarios.Balance;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>What of a rig can be moved along its mounts.</summary>
internal static class RigPlaces
{
    /// <summary>What of a build can be moved; nothing where nothing of it has a mass yet.</summary>
    public static IReadOnlyList<MoveablePart> Moveable(Scenario scenario, string build) =>
        InPlace(scenario, build) is { } rig ? MovedPlaces.Of(rig) : [];

    /// <summary>The thing that the battery moves with, itself or what carries it; null where it can't be moved.</summary>
    public static string? BatterySlide(Scenario scenario, string build)
    {
        if (InPlace(scenario, build) is not { } rig)
            return null;
        var slides = rig.Moveable.Select(part => part.Key).ToHashSet(StringComparer.Ordinal);
        string? name = rig.Build.Battery.Item;
        for (var steps = 0; name is not null && !slides.Contains(name) && steps <= rig.Places.Count; steps++)
            name = rig.Places.TryGetValue(name, out var place) ? place.On : null;
        return name is not null && slides.Contains(name) ? name : null;
    }

    /// <summary>The build with everything in its place; null where that can't be had yet.</summary>
    public static BuildInPlace? InPlace(Scenario scenario, string build)
    {
        try
        {
            return scenario.Builds.TryGetValue(build, out var chosen) ? ScenarioBalance.InPlace(chosen, build, scenario) : null;
        }
        catch (ScenarioProblemsException)
        {
            // What is wrong with the places is told by the check of the scenario.
            return null;
        }
    }
}
