using System.Text.Json.Nodes;
using RigScenarios.Scenarios;
using RigScenarios.Search;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Benchmarks.Cases.Days;

/// <summary>Runs the days of a case with its batteries, and the search for the least kit; fields of day-format.md.</summary>
internal static class DayAnswer
{
    public static JsonObject Of(DayCase one, CancellationToken cancellation = default)
    {
        var (powered, plan) = ScenarioPlan.Of(one.Scenario, one.Scenario.Builds.Keys.First(), []);
        var answer = OfDays(one, cancellation);
        var least = LeastKit.Find(powered, plan, KitWish.None, null, cancellation);
        answer["least_kit"] = new JsonObject
        {
            ["batteries"] = least.Least is { } kit ? new JsonArray([.. kit.Batteries.Select(name => (JsonNode)name)]) : null,
            ["bays"] = least.Least?.BayCount,
            ["tried"] = new JsonArray([.. least.Tried.Select(trial => new JsonObject
            {
                ["batteries"] = new JsonArray([.. trial.Batteries.Select(name => (JsonNode)name)]),
                ["bays"] = trial.BayCount,
                ["completes"] = trial.Survives,
                ["breaks_at_h"] = KitRun.BreakOf(powered, KitRun.PlanOf(plan, trial.Batteries, trial.Bays), cancellation)?.Hours,
            })]),
        };
        return answer;
    }

    /// <summary>Runs the days alone, without the search for the least kit.</summary>
    public static JsonObject OfDays(DayCase one, CancellationToken cancellation = default)
    {
        var (powered, plan) = ScenarioPlan.Of(one.Scenario, one.Scenario.Builds.Keys.First(), []);
        var result = DaySimulation.Run(powered, plan, SimulationOptions.DaysOnly, null, cancellation);
        var downs = result.Devices.Where(item => item.Value.Essential)
            .SelectMany(item => DayFields.Downs(item.Value).Select(down => (Device: item.Key, Down: down))).ToList();
        var answer = DayFields.Common(result, one.Scenario.Days.Keys);
        answer["least_charge_at_swap_percent"] = result.LeastChargeAtSwap?.Percent;
        answer["down_s"] = new JsonObject(downs.GroupBy(item => $"{item.Device}: {item.Down.Cause}").Select(group =>
            KeyValuePair.Create(group.Key, (JsonNode?)group.Sum(item => (item.Down.To - item.Down.From).Seconds))));
        answer["down_times"] = new JsonArray([.. downs.Select(item => new JsonObject
        {
            ["device"] = item.Device, ["from_h"] = item.Down.From.Hours, ["to_h"] = item.Down.To.Hours,
            ["cause"] = item.Down.Cause,
        })]);
        return answer;
    }
}
