using RigScenarios.Answers.TakeAlong;
using RigScenarios.Builds;

namespace RigScenarios.Answers.Exercises;

/// <summary>How a rig is set, as its file says, and what lies in the bag: without it nobody could find on paper what is wrong.
/// What the file leaves open is not told.</summary>
internal static class RigSettings
{
    public static IEnumerable<SheetSection> Of(RigAnswer rig)
    {
        List<string[]> rows = [.. Batteries(rig), .. Head(rig.TheBuild), .. Legs(rig)];
        if (rows.Count > 0)
            yield return new("How it is set", SheetForm.Table, rows) { Columns = ["What", "Set to"] };
        var used = rig.TheBuild.Things.ToHashSet(StringComparer.Ordinal);
        List<string[]> bag = [.. rig.Scenario.Kit.Keys.Where(name => !used.Contains(name)
                && rig.Scenario.Batteries.Values.All(battery => battery.Item != name))
            .Select(name => new[] { SheetWords.Thing(name), rig.Scenario.PartOf(name)!.Name })];
        if (bag.Count > 0)
            yield return new("In the kit, not in use", SheetForm.Table, bag) { Columns = ["Thing", "Part"] };
    }

    private static IEnumerable<string[]> Batteries(RigAnswer rig)
    {
        foreach (var (name, battery) in rig.Plan.Batteries)
        {
            var thing = SheetWords.Thing(name);
            if (battery.KnownAge.ResistanceFactor is { } growth)
                yield return [$"{thing}: resistance, times that of a new one", $"{growth:0.0#}"];
        }
        if (rig.TheBuild.Battery.StartTemperature is { } start && rig.Scenario.Batteries.Count == 0)
            yield return [$"{SheetWords.Thing(rig.TheBuild.Battery.Item)}: temperature at the start",
                $"{start.DegreesCelsius:0.#} °C"];
    }

    private static IEnumerable<string[]> Head(Build build)
    {
        if (build.OnHead?.PlateAt is { } plate)
            yield return ["camera plate on the head", $"{plate.Millimeters:0} mm"];
        if (build.OnHead?.CounterbalanceAt is { } counterbalance)
            yield return ["counterbalance", $"{counterbalance.NewtonMeters:0.0} N·m"];
    }

    private static IEnumerable<string[]> Legs(RigAnswer rig)
    {
        if (rig is not { TheBuild.Stance: Stance.Tripod, Balance.Supports: { Stand: { } stand, LegsName: { } name } })
            yield break;
        var (on, legs) = (rig.TheBuild.OnLegs, rig.Scenario.PartOf(name)?.Legs);
        yield return ["height of the head's seat", $"{(on?.Height ?? legs?.Height ?? stand.CameraPlateHeight).Meters:0.00} m"];
        yield return ["from the middle to a foot", $"{(on?.FootRadius ?? stand.FootRadius).Millimeters:0} mm"];
        if (on?.Wind is { } wind)
            yield return ["mean wind that is expected", $"{wind.MetersPerSecond:0.#} m/s"];
        if (on?.Slope is { } slope)
            yield return ["slope of the ground", $"{slope.Degrees:0.#}°"];
    }
}
