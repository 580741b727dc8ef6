using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Benchmarks.Cases.Days;

/// <summary>The days with a part of the batteries and bays.</summary>
internal static class KitRun
{
    /// <summary>The plan with some of its batteries, and so many bays of each charger.</summary>
    public static DayPlan PlanOf(DayPlan plan, IReadOnlyList<string> batteries, OrderedMap<int> bays) => plan with
    {
        ChargedElsewhere = plan.DaysBeginAsTheFirst,
        Batteries = new(batteries.Select(name => KeyValuePair.Create(name, plan.Batteries[name]))),
        Chargers = new(plan.Chargers.Select(item => KeyValuePair.Create(item.Key, item.Value with { Bays = bays[item.Key] }))),
    };

    /// <summary>Every way to have so many bays in all.</summary>
    public static IEnumerable<OrderedMap<int>> WaysTo(DayPlan plan, int bays)
    {
        IEnumerable<IEnumerable<KeyValuePair<string, int>>> all = [[]];
        foreach (var (name, charger) in plan.Chargers)
            all = all.SelectMany(_ => Enumerable.Range(0, charger.Bays + 1),
                (before, count) => before.Append(KeyValuePair.Create(name, count))).ToList();
        return all.Select(choice => new OrderedMap<int>(choice)).Where(choice => choice.Values.Sum() == bays);
    }

    /// <summary>When the days break first, from midnight of the first day; null if they complete.</summary>
    public static Duration? BreakOf(PoweredBuild powered, DayPlan plan, CancellationToken cancellation)
    {
        var result = DaySimulation.Run(powered, plan, SimulationOptions.DaysOnly, null, cancellation);
        return result.Completes ? null : result.DownTimes.First(down => !down.IsPlanned).Start;
    }
}
