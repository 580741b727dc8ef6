using RigScenarios.Batteries;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Answers.Classes;

/// <summary>What of the batteries may be changed: charge, age, warmth, what the label says.</summary>
internal static class BatteryControls
{
    private const string Group = "Batteries";

    public static IEnumerable<ClassControl> Of(RigAnswer answer)
    {
        var scenario = answer.Scenario;
        if (scenario.Batteries.Count == 0)
        {
            var own = answer.TheBuild.Battery;
            return Of(answer, $"builds.{answer.Build}.battery", own.Item, own.Item,
                (own.Charge, own.CapacityLeft, own.ResistanceGrowth, own.StartTemperature), scenario.AgeOf(own));
        }
        return scenario.Batteries.Where(battery => answer.Plan.Batteries.ContainsKey(battery.Key))
            .SelectMany(battery => Of(answer, $"batteries.{battery.Key}", battery.Key, battery.Value.Item,
                (battery.Value.Charge, battery.Value.CapacityLeft, battery.Value.ResistanceGrowth,
                    battery.Value.StartTemperature), scenario.AgeOf(battery.Value)));
    }

    private static IEnumerable<ClassControl> Of(RigAnswer answer, string path, string name, string item,
        (Ratio? Charge, Ratio? Left, double? Growth, Temperature? Start) said, KnownAge age)
    {
        var (scenario, thing) = (answer.Scenario, LimitSentences.Element(name));
        var left = age.CapacityLeft?.Percent ?? 100;
        yield return ClassControls.Figure($"{path}.charge", Group, $"{thing}: charged to", "%",
            said.Charge?.Percent ?? 100, 20, 100, said.Charge is not null);
        yield return ClassControls.Figure($"{path}.capacity-left", Group, $"{thing}: capacity left", "%", left, 40, 100,
            said.Left is not null);
        yield return ClassControls.Figure($"{path}.resistance-growth", Group, $"{thing}: resistance, times that of a new one", "",
            age.ResistanceFactor ?? 1, 1, 4, said.Growth is not null);
        if (scenario.ColdestAir is not null)
            yield return ClassControls.Figure($"{path}.start-temperature", Group, $"{thing}: temperature at the start", "°C",
                (said.Start ?? scenario.AmbientOn(answer.Plan.Days[0])).DegreesCelsius, -20, 25, said.Start is not null);
        if (scenario.Kit.TryGetValue(item, out var kit) && scenario.FindPart(kit.Part) is { Battery.Energy.WattHours: > 0 } part)
        {
            var energy = part.Battery.Energy.WattHours;
            yield return ClassControls.Figure($"parts.{kit.Part}.battery.energy", Group, $"{part.Name}: energy on its label",
                "Wh", energy, Math.Round(energy / 3), Math.Round(energy * 2));
        }
    }
}
