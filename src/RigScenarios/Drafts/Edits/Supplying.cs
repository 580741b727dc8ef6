using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts.Edits;

/// <summary>Says how many batteries there are, and the charger.</summary>
public static class Supplying
{
    /// <summary>The rig with so many batteries of the kind on it. Those that are there keep what is said of them; further ones
    /// begin in the state of the one on the rig.</summary>
    /// <param name="given">The rig.</param>
    /// <param name="count">How many, 1 to 20; null for nothing said, so that the answer is for the one on the rig.</param>
    /// <exception cref="ScenarioProblemsException">There is no battery on the rig, or the number is out of range.</exception>
    public static EditedRig Batteries(GivenRig given, int? count)
    {
        ArgumentNullException.ThrowIfNull(given);
        var (scenario, build) = (given.Scenario, given.Build);
        var item = build.Battery.Item;
        if (item.Length == 0)
            throw Refused.Because("count", "There is no battery on the rig yet.", "a battery chosen first");
        if (count is < 1 or > 20)
            throw Refused.Because("count", $"Found {count}.", "a whole number, 1 to 20, such as \"3\"");
        var mine = scenario.Batteries.Where(battery => battery.Value.Item == item).Select(battery => battery.Key).ToList();
        var batteries = mine.Skip(count ?? 0).Aggregate(scenario.Batteries, (all, name) => all.Without(name));
        var isNew = mine.Count == 0 && count is not null;
        // A further one is like the last of them, and the first is like that on the rig.
        var like = mine.Count > 0 ? scenario.Batteries[mine[^1]] : new BatteryAtStart { Item = item };
        for (var number = 1; batteries.Values.Count(battery => battery.Item == item) < (count ?? 0); number++)
        {
            if (!batteries.ContainsKey($"{item}-{number}"))
                batteries = batteries.With($"{item}-{number}", like);
        }
        var kit = scenario.Kit.TryGetValue(item, out var owned) && count is { } number2
            && (owned.Count < number2 || owned.Count == mine.Count) ? scenario.Kit.With(item, owned with { Count = number2 })
            : count is null && owned is not null && owned.Count == mine.Count && !KitNames.IsElsewhere(given, item)
                ? scenario.Kit.With(item, owned with { Count = 1 }) : scenario.Kit;
        var marks = isNew && !build.Assumed.Contains(BuildAssumptions.Batteries) ? [.. build.Assumed, BuildAssumptions.Batteries]
            : count is null ? [.. build.Assumed.Where(mark => mark != BuildAssumptions.Batteries)] : build.Assumed;
        return new EditedRig(given.With(scenario with
        {
            Batteries = batteries,
            Kit = kit,
            Builds = scenario.Builds.With(given.Frame.Build, build with { Assumed = marks }),
        }), item);
    }

    /// <summary>The rig with a charger of so many bays. What else is said of it stays.</summary>
    /// <param name="given">The rig.</param>
    /// <param name="bays">How many batteries it takes at once, as people write it; nothing takes it away.</param>
    public static EditedRig Charger(GivenRig given, string? bays)
    {
        ArgumentNullException.ThrowIfNull(given);
        var name = given.Scenario.Chargers.Keys.FirstOrDefault() ?? RigFields.NewCharger;
        return new EditedRig(string.IsNullOrWhiteSpace(bays) ? given.With($"chargers.{name}", null)
            : given.With($"chargers.{name}.bays", bays));
    }

    /// <summary>The rig with a journey that its batteries make.</summary>
    /// <param name="given">The rig.</param>
    /// <param name="by">How they travel, as people write it: flight, cargo, road; nothing for no journey.</param>
    /// <param name="travellers">How many people carry them, as people write it.</param>
    public static EditedRig Journey(GivenRig given, string? by, string? travellers)
    {
        ArgumentNullException.ThrowIfNull(given);
        var at = $"journeys.{given.Scenario.Journeys.Keys.FirstOrDefault() ?? RigFields.NewJourney}";
        if (string.IsNullOrWhiteSpace(by))
            return new EditedRig(given.With(at, null));
        return new EditedRig(given.With($"{at}.by", by).With($"{at}.travellers", travellers));
    }
}
