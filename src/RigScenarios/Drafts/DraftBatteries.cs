using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Drafts;

/// <summary>
/// The batteries, the charger and the swaps of a draft: what of them a form shows is found in a scenario and put back. All
/// batteries are of the kind on the rig; the form shows the
/// first charger. Everything else about them stays as it was.
/// </summary>
public static class DraftBatteries
{
    // The charge at which a battery is swapped unless somebody says otherwise: common practice, no source.
    private static readonly Ratio UsualReserve = Ratio.FromPercent(15);

    private const string ChargerName = "charger";

    /// <summary>The charging current of a bay where nobody gives it: common practice, no source.</summary>
    public static ElectricCurrent UsualCurrent { get; } = ElectricCurrent.FromAmperes(3);

    /// <summary>The draft with what a scenario says of batteries, charger and swaps.</summary>
    internal static RigDraft In(Scenario scenario, Build build, RigDraft draft)
    {
        var count = scenario.Batteries.Values.Count(battery => battery.Item == build.Battery.Item);
        var charger = scenario.Chargers.Values.FirstOrDefault();
        return draft with
        {
            BatteryCount = count > 0 ? count : null,
            ChargerBays = charger is { Bays: > 0 } ? charger.Bays : null,
            ChargerCurrent = charger?.Current,
            PowerHours = charger is { PowerHours: [var only] } ? only : null,
            SwapAt = scenario.Swaps.Reserve,
        };
    }

    /// <summary>The scenario with what a draft says of them.</summary>
    /// <param name="rig">The draft with its parts.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="battery">The name in the kit of the battery on the rig; null while there is none.</param>
    /// <param name="scenario">The scenario with everything else of the draft in it.</param>
    internal static Scenario Apply(DraftRig rig, string build, string? battery, Scenario scenario)
    {
        if (battery is null)
            return scenario;
        var was = rig.BuildBefore is { } old ? In(scenario, old, new RigDraft()) : new RigDraft();
        var now = rig.Draft;
        scenario = WithBatteries(scenario, now.BatteryCount, was.BatteryCount, rig.BuildBefore?.Battery.Item,
            scenario.Builds[build].Battery);
        scenario = WithCharger(scenario, now, was);
        // Who says how many there are for the first time, and not when they are swapped, is taken at what is usual, and the file
        // says so.
        var isNew = now.BatteryCount is not null && was.BatteryCount is null && scenario.Swaps == new SwapPolicy();
        var reserve = now.SwapAt ?? (isNew ? UsualReserve : null);
        return reserve.Equals(scenario.Swaps.Reserve)
            ? scenario : scenario with { Swaps = scenario.Swaps with { Reserve = reserve } };
    }

    private static Scenario WithBatteries(Scenario scenario, int? count, int? before, string? itemBefore, BatteryInUse own)
    {
        if (count == before && (count is null || own.Item == itemBefore))
            return scenario;
        // Others than the kind on the rig keep their places and names.
        var mine = scenario.Batteries.Where(battery => battery.Value.Item == itemBefore || battery.Value.Item == own.Item)
            .ToList();
        var kept = mine.Take(count ?? 0).Select(battery => battery.Key).ToHashSet();
        var batteries = new OrderedMap<BatteryAtStart>(scenario.Batteries.Where(battery => kept.Contains(battery.Key)
            || !mine.Contains(battery))
            .Select(battery => KeyValuePair.Create(battery.Key,
                kept.Contains(battery.Key) ? battery.Value with { Item = own.Item } : battery.Value)));
        // A further one is like the last of them, and the first is like that on the rig.
        var like = mine.Count > 0
            ? mine[^1].Value with { Item = own.Item }
            : new BatteryAtStart { Item = own.Item, Charge = own.Charge, CapacityLeft = own.CapacityLeft,
                ResistanceGrowth = own.ResistanceGrowth, StartTemperature = own.StartTemperature };
        for (var number = 1; batteries.Values.Count(battery => battery.Item == own.Item) < (count ?? 0); number++)
        {
            if (!batteries.ContainsKey($"{own.Item}-{number}"))
                batteries = batteries.With($"{own.Item}-{number}", like);
        }
        scenario = scenario with { Batteries = batteries };
        return scenario.Kit.TryGetValue(own.Item, out var item)
            && (item.Count < count || (count is not null && item.Count == before))
            ? scenario with { Kit = scenario.Kit.With(own.Item, item with { Count = count.Value }) }
            : scenario;
    }

    private static Scenario WithCharger(Scenario scenario, RigDraft now, RigDraft was)
    {
        if (now.ChargerBays == was.ChargerBays && Equals(now.ChargerCurrent, was.ChargerCurrent)
            && now.PowerHours == was.PowerHours)
            return scenario;
        var name = scenario.Chargers.Keys.FirstOrDefault(ChargerName);
        if (now.ChargerBays is not { } bays)
            return was.ChargerBays is null ? scenario : scenario with { Chargers = scenario.Chargers.Without(name) };
        var charger = scenario.Chargers.TryGetValue(name, out var there) ? there : new DayCharger(UsualCurrent);
        charger = charger with { Bays = bays, Current = now.ChargerCurrent ?? UsualCurrent };
        if (now.PowerHours != was.PowerHours)
            charger = charger with { PowerHours = now.PowerHours is { } hours ? [hours] : [] };
        return scenario with { Chargers = scenario.Chargers.With(name, charger) };
    }
}
