using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Travel;
using UnitsNet;

namespace RigScenarios.Scenarios;

/// <summary>Everything one question is about: the kit, the builds made of it, the days, the conditions.</summary>
public sealed record Scenario
{
    /// <summary>Its name for people.</summary>
    public string Title { get; init; } = "";

    /// <summary>A remark; demo scenarios say here that they are invented.</summary>
    public string? Note { get; init; }

    /// <summary>Parts files, or folders of them, beside the scenario file.</summary>
    public IReadOnlyList<string> PartsFrom { get; init; } = [];

    /// <summary>Parts that the scenario file itself describes. They go before those of the parts files.</summary>
    public OrderedMap<Part> Parts { get; init; } = OrderedMap<Part>.Empty;

    /// <summary>The parts of the parts files. Not written with the scenario.</summary>
    public OrderedMap<Part> Library { get; init; } = OrderedMap<Part>.Empty;

    /// <summary>What holds for all days.</summary>
    public Conditions Conditions { get; init; } = new();

    /// <summary>What is owned or rented, by names of its own.</summary>
    public OrderedMap<KitItem> Kit { get; init; } = OrderedMap<KitItem>.Empty;

    /// <summary>The builds.</summary>
    public OrderedMap<Build> Builds { get; init; } = OrderedMap<Build>.Empty;

    /// <summary>The days.</summary>
    public OrderedMap<ShootingDay> Days { get; init; } = OrderedMap<ShootingDay>.Empty;

    /// <summary>The journeys that the batteries make.</summary>
    public OrderedMap<JourneyPlan> Journeys { get; init; } = OrderedMap<JourneyPlan>.Empty;

    /// <summary>The batteries that are swapped through the days; empty if each build runs on its own battery alone.</summary>
    public OrderedMap<BatteryAtStart> Batteries { get; init; } = OrderedMap<BatteryAtStart>.Empty;

    /// <summary>The chargers.</summary>
    public OrderedMap<DayCharger> Chargers { get; init; } = OrderedMap<DayCharger>.Empty;

    /// <summary>When and how batteries are swapped.</summary>
    public SwapPolicy Swaps { get; init; } = new();

    /// <summary>The small pack that carries the rig through a swap; null if the plate has none.</summary>
    public HotSwapInUse? HotSwap { get; init; }

    /// <summary>Batteries inside devices, by the devices' names in the kit: each carries its device while its inlet is
    /// dead.</summary>
    public OrderedMap<BatteryAtStart> InternalBatteries { get; init; } = OrderedMap<BatteryAtStart>.Empty;

    /// <summary>The question of which parts to take; null where the scenario asks none.</summary>
    public BestRig? BestRig { get; init; }

    /// <summary>What is said of money; null where nothing is, and nobody asks what it costs.</summary>
    public CostTerms? Costs { get; init; }

    /// <summary>The part of that id: the scenario's own if it has one, else the library's; null if there is none.</summary>
    public Part? FindPart(string id) => Parts.TryGetValue(id, out var own) ? own : Library.TryGetValue(id, out var shared)
        ? shared : null;

    /// <summary>The part behind a name in the kit; null if there is none.</summary>
    public Part? PartOf(string kitName) => Kit.TryGetValue(kitName, out var item) ? FindPart(item.Part) : null;

    /// <summary>
    /// The scenario on its own: it describes the parts of its kit itself, and those that its question of the best rig may take,
    /// and names no parts files, so that its file can go anywhere.
    /// </summary>
    public Scenario SelfContained()
    {
        var wanted = BestRig?.Slots.Values.SelectMany(slot => slot.Parts.Concat(
            Library.Where(part => part.Value.Kind == slot.Kind).Select(part => part.Key))) ?? [];
        var used = Kit.Values.Select(item => item.Part).Concat(wanted).Distinct()
            .Where(id => !Parts.ContainsKey(id) && Library.ContainsKey(id));
        return this with { PartsFrom = [], Library = OrderedMap<Part>.Empty,
            Parts = new OrderedMap<Part>(Parts.Concat(used.Select(id => KeyValuePair.Create(id, Library[id])))) };
    }

    /// <summary>The ids of all parts.</summary>
    public IEnumerable<string> PartIds => Parts.Keys.Concat(Library.Keys).Distinct();

    /// <summary>The coldest air of all days, in which the wind pushes hardest; null where no day and nothing else gives a
    /// temperature.</summary>
    public Temperature? ColdestAir
    {
        get
        {
            var all = Days.Values.SelectMany(day => day.AmbientPoints.Count > 0
                ? day.AmbientPoints.Select(point => (Temperature?)point.Temperature) : [day.Ambient ?? Conditions.Ambient])
                .Where(air => air is not null).ToList();
            return all.Count > 0 ? all.MinBy(air => air!.Value.Kelvins) : Conditions.Ambient;
        }
    }

    /// <summary>
    /// The scenario on warmer or colder days: the air of the days moved by the same difference, a course by each of its points.
    /// The night between two days, and the places where batteries rest and chargers stand, keep the temperatures that they have.
    /// </summary>
    /// <param name="by">How much warmer; below 0 for colder.</param>
    /// <param name="days">The days that are moved; all of them, and what holds for all days, if none is named.</param>
    /// <exception cref="ScenarioProblemsException">The scenario has no such day.</exception>
    public Scenario Warmer(TemperatureDelta by, params IReadOnlyList<string> days)
    {
        ArgumentNullException.ThrowIfNull(days);
        if (by.Kelvins == 0)
            return this;
        if (days.Count > 0)
            return days.Distinct().Aggregate(this, (all, name) => all with { Days = all.Days.With(
                name, Chosen.From(all.Days, name, "day", "days").Warmer(by, Conditions.Ambient)) });
        return this with
        {
            Conditions = Conditions with { Ambient = Conditions.Ambient is { } air ? WarmerAir.Of(air, by) : null },
            Days = new OrderedMap<ShootingDay>(Days.Select(day => KeyValuePair.Create(day.Key, day.Value.Warmer(by)))),
        };
    }

    /// <summary>The names in the kit of the batteries that a journey takes: those that it names, else all.</summary>
    /// <param name="journey">The journey.</param>
    public IEnumerable<string> BatteriesOn(JourneyPlan journey)
    {
        ArgumentNullException.ThrowIfNull(journey);
        return journey.Batteries.Count > 0 ? journey.Batteries : Kit.Keys.Where(name => PartOf(name)?.Battery is not null);
    }

    /// <summary>The air temperature on a day, at its first point where it has points.</summary>
    /// <exception cref="InvalidOperationException">Neither the day nor the scenario gives one.</exception>
    public Temperature AmbientOn(ShootingDay day) =>
        (day.AmbientPoints.Count > 0 ? day.AmbientPoints[0].Temperature : day.Ambient ?? Conditions.Ambient)
        ?? throw new InvalidOperationException("Neither the day nor the scenario gives an ambient temperature.");
}

/// <summary>What holds for all days of a scenario.</summary>
/// <param name="Ambient">Temperature of the air around the rig, for days that give none.</param>
/// <param name="Night">Temperature of the air between two days, where batteries and chargers are; null for 20 °C.</param>
/// <param name="Altitude">Height above sea level; null for none given, which is taken as 0 m.</param>
public sealed record Conditions(Temperature? Ambient = null, Temperature? Night = null, Length? Altitude = null);

/// <summary>One thing of the kit.</summary>
/// <param name="Part">The id of the part that it is.</param>
/// <param name="Count">How many there are.</param>
public sealed record KitItem(string Part = "", int Count = 1)
{
    /// <summary>How it is had; null to take what <see cref="CostTerms.OthersAre"/> says.</summary>
    public Had? Had { get; init; }
}
