using System.Globalization;
using RigScenarios.Cells.Aging;
using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>
/// Other and more batteries. A battery that is bought is new, and says so in its settings; one that stays keeps its age: a larger
/// one never inherits the age
/// of the one it stands in for.
/// </summary>
internal sealed class BatteryChanges
{
    /// <summary>An inner pocket.</summary>
    private static readonly Temperature Warm = Temperature.FromDegreesCelsius(20);

    private const double SameClassVolts = 0.5;

    private readonly RigAnswer now;
    private readonly Scenario scenario;
    private readonly string item;
    private readonly Part part;
    private readonly bool rotates;

    private BatteryChanges(RigAnswer now)
    {
        this.now = now;
        scenario = now.Scenario;
        item = now.TheBuild.Battery.Item;
        part = now.Powered.Battery;
        rotates = scenario.Batteries.Count > 0;
    }

    public static IEnumerable<RigChange> Of(RigAnswer now)
    {
        var changes = new BatteryChanges(now);
        return changes.rotates ? [.. changes.Conditions(), .. changes.Renewed(), .. changes.OneMore()]
            : [.. changes.OwnConditions(), .. changes.Instead(), .. changes.Second()];
    }

    /// <summary>Batteries of the library that the build's plate takes: the same voltage on the label.</summary>
    private IEnumerable<(string Id, Part Part)> Fitting() => scenario.PartIds.Select(id => (id, scenario.FindPart(id)!))
        .Where(other => other.Item2.Battery is { } battery
            && Math.Abs(battery.Voltage.Volts - part.Battery!.Voltage.Volts) < SameClassVolts
            && battery.Energy.WattHours > 0.2 * part.Battery.Energy.WattHours)
        .OrderBy(other => other.Item2.Battery!.Energy.WattHours);

    /// <summary>Charge and warmth of the build's own battery.</summary>
    private IEnumerable<RigChange> OwnConditions()
    {
        var battery = now.TheBuild.Battery;
        if (battery.Charge is { Percent: < 99 })
            yield return new("Charge the battery fully before the day", [new($"builds.{now.Build}.battery.charge", "100 %")],
                ChangeEffort.Nothing, "charge");
        if ((battery.StartTemperature ?? Coldest()) < Warm - TemperatureDelta.FromKelvins(2))
            yield return new("Keep the battery at 20 °C, in an inner pocket, until it goes on",
                [new($"builds.{now.Build}.battery.start-temperature", "20 °C")], ChangeEffort.Nothing, "warmth");
    }

    /// <summary>Another battery in the place of the build's own.</summary>
    private IEnumerable<RigChange> Instead()
    {
        foreach (var (name, thing) in scenario.Kit.Where(other => other.Key != item
            && Fitting().Any(fit => fit.Id == other.Value.Part)))
        {
            var place = now.TheBuild.Places.TryGetValue(item, out var old) ? old : null;
            var settings = new List<FieldSetting> { new($"builds.{now.Build}.battery",
                Group(("item", name), ("charge", "100 %"))) };
            if (place is not null)
                settings.Add(new($"builds.{now.Build}.places.{name}", PlaceText.Of(place)));
            yield return new($"Take the kit's {LimitSentences.Element(name)} ({scenario.PartOf(name)!.Name}) instead", settings,
                ChangeEffort.FromKit, "battery");
        }
        if (scenario.AgeOf(now.TheBuild.Battery) is { CapacityLeft.Percent: < 98 } or { ResistanceFactor: > 1.05 })
            yield return new($"Take a new {part.Name} in place of the used one", New(), ChangeEffort.Buy,
                "battery") { Price = part.Buy, Renews = item };
        foreach (var (id, other) in Fitting().Where(other => other.Id != scenario.Kit[item].Part
            && scenario.Kit.Values.All(thing => thing.Part != other.Id)))
            yield return new($"Take a new {other.Name} instead of the {part.Name}{Heavier(other)}",
                [new($"kit.{item}.part", id), .. New()], ChangeEffort.Buy, "battery") { Price = other.Buy };
    }

    private string Heavier(Part other) => other.Mass is { } mass && part.Mass is { } mine
        ? mass > mine ? $" ({mass.Grams - mine.Grams:0} g heavier)" : $" ({mine.Grams - mass.Grams:0} g lighter)" : "";

    /// <summary>Every build that takes the item is told that it is new, where it told an age before.</summary>
    private IReadOnlyList<FieldSetting> New() =>
    [
        .. scenario.Builds.Where(build => build.Value.Battery.Item == item).SelectMany(build => New(
            $"builds.{build.Key}.battery", build.Value.Battery.Life,
            build.Value.Battery.CapacityLeft is not null || build.Value.Battery.ResistanceGrowth is not null)),
    ];

    // A life begins on the day for which it is asked; figures that were measured are those of a new one.
    private static IEnumerable<FieldSetting> New(string battery, LifeInWords? life, bool measured)
    {
        if (life is { Until: { } until })
            yield return new($"{battery}.age.bought", until.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        if (life is { SecondHand: true })
            yield return new($"{battery}.age.second-hand", "no");
        if (!measured)
            yield break;
        yield return new($"{battery}.capacity-left", "100 %");
        yield return new($"{battery}.resistance-growth", "1");
    }

    /// <summary>A second battery, or two more, that take turns with the build's own, which keeps its age.</summary>
    private IEnumerable<RigChange> Second()
    {
        var spare = scenario.Kit[item].Count > 1;
        if (spare)
            yield return SecondOf($"the kit's second {part.Name}", item, [], ChangeEffort.FromKit, null);
        foreach (var (name, thing) in scenario.Kit.Where(other => other.Key != item
            && Fitting().Any(fit => fit.Id == other.Value.Part)))
            yield return SecondOf($"the kit's {LimitSentences.Element(name)} ({scenario.PartOf(name)!.Name})", name, [],
                ChangeEffort.FromKit, null);
        foreach (var (id, other) in Fitting().Where(other => scenario.Kit.Where(thing => thing.Key != item || spare)
            .All(thing => thing.Value.Part != other.Id)))
        {
            var name = FreeName(id);
            yield return SecondOf($"a second battery, a new {other.Name}", name, [new($"kit.{name}", Group(("part", id)))],
                ChangeEffort.Buy, other.Buy);
            yield return SecondOf($"two more batteries, each a new {other.Name}", name,
                [new($"kit.{name}", Group(("part", id), ("count", "2")))], ChangeEffort.Buy,
                other.Buy is { } one ? one with { Amount = 2 * one.Amount } : null, count: 2);
        }
    }

    private RigChange SecondOf(
        string what, string name, IEnumerable<FieldSetting> kit, ChangeEffort effort, Money? price, int count = 1)
    {
        var battery = now.TheBuild.Battery;
        var first = Group(
            ("item", item), ("charge", battery.Charge is { } charge ? Text(charge.Percent, "%") : null),
            ("capacity-left", battery.CapacityLeft is { } left ? Text(left.Percent, "%") : null),
            ("resistance-growth", battery.ResistanceGrowth?.ToString(CultureInfo.InvariantCulture)),
            ("age", battery.Life is { } life ? LifeFormat.Text(life) : null),
            ("start-temperature", battery.StartTemperature is { } start ? Text(start.DegreesCelsius, "°C") : null));
        var cold = Coldest() < Warm - TemperatureDelta.FromKelvins(5);
        var second = Group(("item", name), ("rests-at", cold ? "20 °C" : null), ("start-temperature", cold ? "20 °C" : null));
        var settings = new List<FieldSetting>(kit) { new("batteries.first", first), new("batteries.second", second) };
        if (count > 1)
            settings.Add(new("batteries.third", second));
        var swap = scenario.Swaps is { Reserve: null, WarningVoltage: null, AtBlockEnds: false };
        if (swap)
            settings.Add(new("swaps.reserve", "15 %"));
        return new($"Carry {what}{(cold ? ", warm in an inner pocket" : "")}{(swap ? ", and swap at 15 %" : "")}", settings,
            effort, "second battery") { Price = price };
    }

    /// <summary>Charge and warmth of the batteries that take turns.</summary>
    private IEnumerable<RigChange> Conditions()
    {
        var low = scenario.Batteries.Where(battery => battery.Value.Charge is { Percent: < 99 })
            .Select(battery => battery.Key).ToList();
        if (low.Count > 0)
            yield return new("Charge all batteries fully before the first day",
                [.. low.Select(name => new FieldSetting($"batteries.{name}.charge", "100 %"))], ChangeEffort.Nothing, "charge");
        var cold = scenario.Batteries.Where(battery => (battery.Value.RestsAt
            ?? Coldest()) < Warm - TemperatureDelta.FromKelvins(2)).Select(battery => battery.Key).ToList();
        if (cold.Count > 0)
            yield return new("Keep the spare batteries at 20 °C, in a heated bag or an inner pocket",
                [.. cold.Select(name => new FieldSetting($"batteries.{name}.rests-at", "20 °C"))],
                ChangeEffort.Nothing, "warmth");
    }

    /// <summary>A new battery for each worn one of those that take turns.</summary>
    private IEnumerable<RigChange> Renewed()
    {
        foreach (var (name, battery) in scenario.Batteries.Where(battery => scenario.AgeOf(battery.Value)
            is { CapacityLeft.Percent: < 90 } or { ResistanceFactor: > 1.2 }))
        {
            var worn = scenario.PartOf(battery.Item)!;
            yield return new($"Take a new {worn.Name} in place of \"{name}\"",
                [.. New($"batteries.{name}", battery.Life,
                    battery.CapacityLeft is not null || battery.ResistanceGrowth is not null)],
                ChangeEffort.Buy, $"battery {name}") { Price = worn.Buy, Renews = battery.Item };
        }
    }

    /// <summary>One more battery in turn, kept as the others are.</summary>
    private IEnumerable<RigChange> OneMore()
    {
        var like = scenario.Batteries.Values.First();
        foreach (var (name, thing) in scenario.Kit.Where(other => Fitting().Any(fit => fit.Id == other.Value.Part)
            && scenario.Batteries.Values.Count(battery => battery.Item == other.Key) < other.Value.Count))
            yield return More($"the kit's {LimitSentences.Element(name)} ({scenario.PartOf(name)!.Name})", name, like, [],
                ChangeEffort.FromKit, null);
        foreach (var (id, other) in Fitting())
        {
            var name = FreeName(id);
            yield return More($"a new {other.Name}", name, like, [new($"kit.{name}", Group(("part", id)))],
                ChangeEffort.Buy, other.Buy);
        }
    }

    private RigChange More(string what, string name, BatteryAtStart like, IEnumerable<FieldSetting> kit, ChangeEffort effort,
        Money? price) =>
        new($"Carry one more battery, {what}",
            [.. kit, new($"batteries.{FreeBattery(name)}", Group(
                ("item", name), ("rests-at", like.RestsAt is { } rests ? Text(rests.DegreesCelsius, "°C") : null),
                ("heat-factor", like.HeatFactor != 1 ? like.HeatFactor.ToString(CultureInfo.InvariantCulture) : null),
                ("start-temperature", like.StartTemperature is { } start ? Text(start.DegreesCelsius, "°C") : null)))], effort,
                "one more battery") { Price = price };

    private string FreeName(string id) => Enumerable.Range(1, 100).Select(number => number == 1 ? id : $"{id}-{number}")
        .First(name => !scenario.Kit.ContainsKey(name));

    private string FreeBattery(string name) => Enumerable.Range(1, 100).Select(number => number == 1 ? name : $"{name}-{number}")
        .First(free => !scenario.Batteries.ContainsKey(free));

    /// <summary>The coldest air of the days.</summary>
    private Temperature Coldest() =>
        now.Plan.Days.SelectMany(day => day.AmbientPoints.Select(point => point.Temperature).DefaultIfEmpty(day.Ambient ?? Warm))
        .Min();

    internal static string Group(params IEnumerable<(string Key, string? Value)> fields) =>
        $"{{{string.Join(", ", fields.Where(field => field.Value is not null).Select(field => $"{field.Key}: {field.Value}"))}}}";

    internal static string Text(double value, string unit) => string.Create(CultureInfo.InvariantCulture, $"{value:R} {unit}");
}
