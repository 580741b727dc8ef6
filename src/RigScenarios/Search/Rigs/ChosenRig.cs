using RigScenarios.Scenarios;

namespace RigScenarios.Search.Rigs;

/// <summary>A scenario with other parts in some places of one of its builds: what a choice says, as a file would.</summary>
internal static class ChosenRig
{
    /// <summary>The scenario with a candidate in a place.</summary>
    /// <param name="scenario">The scenario, also one that was changed in other places already.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="place">The place.</param>
    /// <param name="candidate">One of its candidates.</param>
    public static Scenario With(Scenario scenario, string build, RigPlace place, RigCandidate candidate) =>
        candidate.IsNow ? scenario
        : candidate.Item is not { } item ? Without(scenario, build, place.Replaces)
        : New(scenario with { Kit = scenario.Kit.With(place.Replaces, item) }, place.Replaces);

    /// <summary>A battery that is not the one of before has not its age: it counts as one of which nobody told any.</summary>
    private static Scenario New(Scenario scenario, string item) => scenario with
    {
        Builds = new(scenario.Builds.Select(build => KeyValuePair.Create(build.Key, build.Value.Battery.Item != item ? build.Value
            : build.Value with
            {
                Battery = build.Value.Battery with
                {
                    CapacityLeft = null, ResistanceGrowth = null, Life = null, RuntimeKnownTo = null, FittedFrom = null,
                },
            }))),
        Batteries = new(scenario.Batteries.Select(battery => KeyValuePair.Create(battery.Key, battery.Value.Item != item
            ? battery.Value : battery.Value with
            {
                CapacityLeft = null, ResistanceGrowth = null, Life = null, RuntimeKnownTo = null, FittedFrom = null,
            }))),
    };

    /// <summary>It stays in the kit, where the states of blocks may still name it, and leaves the build.</summary>
    private static Scenario Without(Scenario scenario, string name, string thing)
    {
        var build = scenario.Builds[name];
        return scenario with
        {
            Builds = scenario.Builds.With(name, build with
            {
                Devices = build.Devices.Without(thing), Regulators = build.Regulators.Without(thing),
                Splitters = build.Splitters.Without(thing), Places = build.Places.Without(thing),
                Carries = [.. build.Carries.Where(other => other != thing)],
                Beside = [.. build.Beside.Where(other => other != thing)],
                Assumed = [.. build.Assumed.Where(path => !path.Split('.').Contains(thing))],
            }),
            InternalBatteries = scenario.InternalBatteries.Without(thing),
        };
    }
}
