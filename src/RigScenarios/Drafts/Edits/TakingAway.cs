using RigScenarios.Scenarios;

namespace RigScenarios.Drafts.Edits;

/// <summary>Takes a thing off the rig.</summary>
public static class TakingAway
{
    /// <summary>The rig without a thing. It leaves the kit if no other build and no other day speaks of it.</summary>
    /// <param name="given">The rig.</param>
    /// <param name="thing">The thing's name in the kit.</param>
    /// <exception cref="ScenarioProblemsException">There is no such thing on the rig.</exception>
    public static EditedRig From(GivenRig given, string thing)
    {
        var there = Find(given, thing);
        var cables = given.Build.Cables.ToList();
        var build = Placing.Without(given.Build, thing);
        var scenario = given.Scenario with { Builds = given.Scenario.Builds.With(given.Frame.Build, build) };
        if (there.Group == ThingGroup.Battery)
            scenario = WithoutBatteries(scenario, thing);
        foreach (var name in cables.Except(build.Cables).Append(thing))
            scenario = KitNames.Dropped(scenario, name);
        return new EditedRig(given.With(KitNames.WithoutStates(scenario, given.Frame, thing)));
    }

    internal static RigThing Find(GivenRig given, string thing)
    {
        ArgumentNullException.ThrowIfNull(given);
        var names = RigThings.Of(given).Select(there => there.Name).ToList();
        return RigThings.Find(given, thing) ?? throw Refused.Because("thing", $"There is no \"{thing}\" on the rig.",
            names.Count == 0 ? null : string.Join(", ", names), NearestName.To(thing, names));
    }

    /// <summary>The batteries of its kind go with it, unless another build runs on them.</summary>
    private static Scenario WithoutBatteries(Scenario scenario, string item) =>
        scenario.Builds.Values.Any(build => build.Battery.Item == item) ? scenario
            : scenario with { Batteries = new(scenario.Batteries.Where(battery => battery.Value.Item != item)) };
}
