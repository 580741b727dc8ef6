using RigScenarios.Builds;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Search.Rigs;

/// <summary>The question of the best rig for a scenario that does not ask it itself.</summary>
public static class UsualBestRig
{
    // What is exchanged first when a rig is built for money; everything else stays as it is.
    private static readonly PartKind[] Exchanged = [PartKind.Battery, PartKind.Monitor, PartKind.Head, PartKind.Tripod];

    /// <summary>
    /// Which battery, monitor, head and tripod of the library for a build, if it shall last its days, hold its limits and balance
    /// (where places are given), within the scenario's budget where it has one. Every wish but the largest margin. Of a build on
    /// a tripod that names no head, or no tripod, nobody can tell whether it balances, or tips over: that is not asked then.
    /// </summary>
    /// <param name="scenario">A scenario that was read or checked.</param>
    /// <param name="build">The build's short name.</param>
    /// <exception cref="ScenarioProblemsException">There is no such build.</exception>
    public static BestRig Of(Scenario scenario, string build)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var chosen = Chosen.From(scenario.Builds, build, "build", "builds");
        bool Has(PartKind kind) => chosen.Things.Any(name => scenario.PartOf(name)?.Kind == kind);
        var (hasHead, hasLegs) = chosen.Stance == Stance.Tripod ? (Has(PartKind.Head), Has(PartKind.Tripod)) : (true, true);
        return new BestRig
        {
            Build = build,
            Slots = new OrderedMap<RigSlot>(Places(scenario, chosen)),
            Musts = new RigMusts
            {
                Lasts = new LastsMust(), Holds = true, StandCounts = hasHead && hasLegs,
                Balances = chosen.Places.Count > 0 && hasHead, CloseWillDo = true, Budget = scenario.Costs?.Budget,
            },
            Wishes = [RigWish.LeastCost, RigWish.LeastMass, RigWish.LongestDay],
        };
    }

    private static IEnumerable<KeyValuePair<string, RigSlot>> Places(Scenario scenario, Build build) =>
        from name in build.Things.Distinct()
        let part = scenario.PartOf(name)
        where part is not null && Exchanged.Contains(part.Kind)
        select KeyValuePair.Create(name, new RigSlot { Kind = part.Kind });
}
