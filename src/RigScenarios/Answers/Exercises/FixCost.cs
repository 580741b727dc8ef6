using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Costs;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers.Exercises;

/// <summary>Something that a solution has to buy, or to rent where its file says so.</summary>
/// <param name="Words">What it is: "a new Brick 150 Wh", "2 × Brick 98 Wh, rented for 3 days".</param>
/// <param name="Count">How many.</param>
/// <param name="Price">What one costs, bought or rented; null where nobody knows.</param>
public sealed record BoughtThing(string Words, int Count, Money? Price);

/// <summary>What a solution buys: parts that it uses and the kit of the exercise has not, and new batteries for worn ones; at
/// what the costs of a kit count for them.</summary>
internal static class FixCost
{
    // Below what two ages differ by on paper only.
    private const double SameAge = 1e-6;

    /// <summary>What is bought.</summary>
    public static IReadOnlyList<BoughtThing> Of(Exercise exercise, Scenario solution)
    {
        var rig = exercise.Rig.Scenario;
        var (build, made) = (exercise.Rig.TheBuild, solution.Builds[exercise.Rig.Build]);
        var had = rig.Kit.Values.GroupBy(item => item.Part)
            .ToDictionary(items => items.Key, items => items.Sum(item => item.Count));
        var parts = Uses(solution, made).GroupBy(use => solution.Kit[use.Name].Part)
            .Select(uses => (uses.OrderBy(use => IsSamePart(rig, solution, use.Name)).First().Name,
                Missing: uses.Sum(use => use.Count) - had.GetValueOrDefault(uses.Key)))
            .Where(need => need.Missing > 0)
            .Select(need => Bought(solution, need.Name, need.Missing));
        return [.. parts, .. Renewed(rig, build, solution, made)];
    }

    private static BoughtThing Bought(Scenario solution, string name, int count) => solution.PartOf(name) is { } part
        ? Bought(solution, name, $"{(count == 1 ? "a" : $"{count} ×")} {part.Name}", count)
        : new("a part that is not known", count, null);

    private static BoughtThing Bought(Scenario solution, string name, string words, int count)
    {
        var cost = NewThing.Of(solution, name);
        var how = cost.Had != Had.Rented ? "" : $", rented for {cost.RentedDays} {(cost.RentedDays == 1 ? "day" : "days")}";
        return new(words + how, count, cost.Each);
    }

    /// <summary>How many of each thing of the kit are in use.</summary>
    private static IEnumerable<(string Name, int Count)> Uses(Scenario scenario, Build build)
    {
        var rotating = scenario.Batteries.Values.GroupBy(battery => battery.Item)
            .Select(group => (group.Key, group.Count())).ToList();
        var cables = LinkLookup.Fed(build).Where(item => item.Cable is not null).GroupBy(item => item.Cable!)
            .Select(users => (users.Key, users.Sum(item => Count(build, item.Name))));
        return build.Things.Distinct().Where(name => !build.Cables.Contains(name) && scenario.Kit.ContainsKey(name)
                && rotating.TrueForAll(battery => battery.Key != name))
            .Select(name => (name, Count(build, name))).Concat(cables).Concat(rotating);
    }

    private static int Count(Build build, string name) => build.Devices.TryGetValue(name, out var device) ? device.Count : 1;

    /// <summary>Batteries that are younger than they were.</summary>
    private static IEnumerable<BoughtThing> Renewed(Scenario rig, Build build, Scenario solution, Build made)
    {
        if (made.Battery.Item == build.Battery.Item && solution.Batteries.Count == 0
            && IsSamePart(rig, solution, made.Battery.Item)
            && IsYounger(solution.AgeOf(made.Battery), rig.AgeOf(build.Battery)))
            yield return New(solution, made.Battery.Item);
        foreach (var (name, battery) in solution.Batteries)
        {
            // A battery that only now takes turns is the build's own, or one of the kit whose age nobody told.
            var was = rig.Batteries.TryGetValue(name, out var at) && at.Item == battery.Item ? rig.AgeOf(at)
                : battery.Item == build.Battery.Item ? rig.AgeOf(build.Battery) : null;
            if (was is not null && IsSamePart(rig, solution, battery.Item) && IsYounger(solution.AgeOf(battery), was))
                yield return New(solution, battery.Item);
        }
    }

    private static BoughtThing New(Scenario solution, string item) =>
        Bought(solution, item, $"a new {solution.PartOf(item)!.Name}", 1);

    // Another part in its place is counted as one already.
    private static bool IsSamePart(Scenario rig, Scenario solution, string item) =>
        rig.Kit.TryGetValue(item, out var was) && solution.Kit.TryGetValue(item, out var now) && was.Part == now.Part;

    private static bool IsYounger(KnownAge now, KnownAge was) =>
        now.Age.CapacityLeft.DecimalFractions > was.Age.CapacityLeft.DecimalFractions + SameAge
        || now.Age.ResistanceFactor < was.Age.ResistanceFactor - SameAge;
}
