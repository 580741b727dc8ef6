using RigScenarios.Builds;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Answers.TakeAlong;

/// <summary>One thing of a build in the order in which it is put together.</summary>
/// <param name="Name">Its name in the kit.</param>
/// <param name="Part">What it is.</param>
/// <param name="Count">How many of them.</param>
/// <param name="Place">Where it sits; null for what has no place on the rig: tripod and head, cables, what is beside it.</param>
/// <param name="On">What carries it, in words; empty for a cable.</param>
/// <param name="IsUsual">Whether its place is only the usual one of its kind.</param>
internal sealed record AssemblyStep(string Name, Part Part, int Count, PlaceInUse? Place, string On, bool IsUsual)
{
    /// <summary>The mass of all of them; null where nobody gave it.</summary>
    public Mass? Mass => Part.Mass * Count;

    /// <summary>Everything of a build: first what stands on the ground, then the rig from the tripod socket outward, each thing
    /// after what carries it, then cables and what is beside the rig.</summary>
    /// <param name="answer">The answer.</param>
    public static IReadOnlyList<AssemblyStep> Of(RigAnswer answer)
    {
        var build = answer.TheBuild;
        var beside = build.OffRig.ToHashSet(StringComparer.Ordinal);
        var places = answer.Balance?.Rig.Places ?? OrderedMap<PlaceInUse>.Empty;
        var usual = (answer.Balance?.Rig.PlacesAssumed ?? []).ToHashSet(StringComparer.Ordinal);
        var things = build.Things.Distinct().Where(name => answer.Scenario.PartOf(name) is not null).ToList();
        AssemblyStep Step(string name, PlaceInUse? place, string on) => new(name, answer.Scenario.PartOf(name)!,
            build.Devices.TryGetValue(name, out var device) ? device.Count : 1, place, on, place is not null
                && usual.Contains(name));
        IEnumerable<AssemblyStep> OnIt(string? carrier) => places
            .Where(place => place.Value.On == carrier && answer.Scenario.PartOf(place.Key)?.Kind != PartKind.Cable)
            .SelectMany(place => OnIt(place.Key).Prepend(Step(place.Key, place.Value, PlaceSections.On(place.Value))));
        List<AssemblyStep> steps = [.. Below(answer, things).Select(item => Step(item.Name, null, item.On)), .. OnIt(null)];
        var told = steps.Select(step => step.Name).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. steps, .. things.Where(name => !told.Contains(name)).OrderBy(beside.Contains)
                .Select(name => Step(name, null, beside.Contains(name) ? "beside the rig" : "")),
        ];
    }

    private static IEnumerable<(string Name, string On)> Below(RigAnswer answer, List<string> things)
    {
        var legs = things.FirstOrDefault(name => answer.Scenario.PartOf(name)!.Kind == PartKind.Tripod);
        if (legs is not null)
            yield return (legs, "the ground");
        if (things.FirstOrDefault(name => answer.Scenario.PartOf(name)!.Kind == PartKind.Head) is { } head)
            yield return (head, legs is null ? "" : SheetWords.Thing(legs));
    }
}
