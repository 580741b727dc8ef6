using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Drafts;

/// <summary>What of a scenario can be counted in an answer: things and hours that are complete.</summary>
internal static class CountedRig
{
    /// <summary>The scenario without what is not complete.</summary>
    /// <param name="whole">All of it.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="leftOut">The things, by their names in the kit, that are not complete.</param>
    public static Scenario Of(Scenario whole, string build, IReadOnlyList<string> leftOut)
    {
        var days = whole.Days;
        var onRig = whole.Builds.Values.SelectMany(one => one.Devices.Keys).Except(leftOut).ToHashSet(StringComparer.Ordinal);
        foreach (var (name, day) in whole.Days)
            days = days.With(name, day with { Blocks = Blocks(whole, day.Blocks, onRig) });
        var gone = leftOut.Where(name => whole.Builds.All(one => one.Key == build || !one.Value.Things.Contains(name)))
            .ToHashSet(StringComparer.Ordinal);
        var kit = gone.Count == 0 ? whole.Kit : new(whole.Kit.Where(item => !gone.Contains(item.Key)));
        return whole with
        {
            Days = days,
            Builds = whole.Builds.With(build, Build(whole, whole.Builds[build], leftOut)),
            Kit = kit,
            // An incomplete part of own figures is no part yet.
            Parts = gone.Count == 0 ? whole.Parts : new(whole.Parts.Where(part => kit.Values.Any(item => item.Part == part.Key)
                || whole.Kit.Values.All(item => item.Part != part.Key))),
            Batteries = gone.Count == 0 ? whole.Batteries
                : new(whole.Batteries.Where(battery => !gone.Contains(battery.Value.Item))),
        };
    }

    private static Build Build(Scenario whole, Build build, IReadOnlyList<string> leftOut)
    {
        bool IsIn(string name) => !leftOut.Contains(name) && whole.PartOf(name) is not null;
        bool IsCable(string? name) => name is null
            || whole.PartOf(name)?.Cable is { Length.Meters: > 0, Gauge: { Awg: not null } or { Area: not null } };
        OrderedMap<T> Fed<T>(OrderedMap<T> things, Func<T, string?> cable, Func<T, T> without)
            where T : notnull =>
            new(things.Where(item => IsIn(item.Key)).Select(item => IsCable(cable(item.Value)) ? item
                : KeyValuePair.Create(item.Key, without(item.Value))));

        if (build.Things.All(IsIn) && build.Cables.All(IsCable))
            return build;
        return build with
        {
            Battery = IsIn(build.Battery.Item) ? build.Battery : build.Battery with { Item = "" },
            Plate = build.Plate is { } plate && IsIn(plate) ? plate : null,
            Devices = Fed(build.Devices, item => item.Cable, item => item with { Cable = null }),
            Regulators = Fed(build.Regulators, item => item.Cable, item => item with { Cable = null }),
            Splitters = Fed(build.Splitters, item => item.Cable, item => item with { Cable = null }),
            Carries = [.. build.Carries.Where(IsIn)],
            Places = new(build.Places.Where(place => IsIn(place.Key) && (place.Value.On is not { } on || IsIn(on)))),
            Assumed = [.. build.Assumed.Where(mark => !mark.Split('.').Any(leftOut.Contains))],
        };
    }

    private static OrderedMap<DayBlock> Blocks(Scenario whole, OrderedMap<DayBlock> blocks, HashSet<string> onRig) =>
        blocks.Values.All(block => block.Length.Seconds > 0 && block.States.Keys.All(onRig.Contains)) ? blocks
            : new(blocks.Where(block => block.Value.Length.Seconds > 0).Select(block => KeyValuePair.Create(block.Key,
                block.Value with { States = new(block.Value.States.Where(state => onRig.Contains(state.Key)
                    || whole.PartOf(state.Key)?.Power is not null)) })));
}
