using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Days;

/// <summary>A small pack behind a diode that carries the rig while the battery is swapped; it is charged from the
/// battery.</summary>
/// <param name="Battery">The pack; of about the battery's voltage.</param>
/// <param name="ChargePower">Power with which it is charged while a battery is on the rig; above 0.</param>
/// <param name="ForwardDrop">Voltage over the diode.</param>
/// <param name="Resistance">Resistance of the diode and its leads.</param>
public sealed record HotSwapReserve(KitBattery Battery, Power ChargePower, ElectricPotential ForwardDrop,
    ElectricResistance Resistance)
{
    /// <summary>Power into the small pack over power out of the battery for it: common practice, no source.</summary>
    public static Ratio ChargeEfficiency { get; } = Ratio.FromPercent(90);
}

/// <summary>Days in a row with their batteries, chargers and swaps.</summary>
public sealed record DayPlan
{
    /// <summary>The days, one after the other, each beginning 24 hours after the midnight of the one before; a day that names no
    /// start begins at 8 o'clock.</summary>
    public IReadOnlyList<ShootingDay> Days { get; init; } = [];

    /// <summary>Temperature of the air on days that name none.</summary>
    public Temperature Ambient { get; init; } = Temperature.FromDegreesCelsius(20);

    /// <summary>Temperature of the air between the days, where batteries and chargers are.</summary>
    public Temperature NightTemperature { get; init; } = Temperature.FromDegreesCelsius(20);

    /// <summary>The batteries by name, in the order in which they are listed.</summary>
    public OrderedMap<KitBattery> Batteries { get; init; } = OrderedMap<KitBattery>.Empty;

    /// <summary>Whether a battery is put on whatever its charge: where the build's own is the only one, and nobody plans a
    /// swap.</summary>
    public bool TakesAnyCharge { get; init; }

    /// <summary>The chargers by name.</summary>
    public OrderedMap<DayCharger> Chargers { get; init; } = OrderedMap<DayCharger>.Empty;

    /// <summary>
    /// Whether every day begins as the first, because batteries are charged overnight by something that the plan does not name;
    /// null: if no charger has a bay.
    /// </summary>
    public bool? ChargedElsewhere { get; init; }

    /// <summary>Whether every day begins as the first.</summary>
    public bool DaysBeginAsTheFirst => ChargedElsewhere ?? !Chargers.Values.Any(charger => charger.Bays > 0);

    /// <summary>When and how batteries are swapped.</summary>
    public SwapPolicy Swaps { get; init; } = new();

    /// <summary>What carries the rig through a swap; null for nothing.</summary>
    public HotSwapReserve? HotSwap { get; init; }

    /// <summary>Batteries inside devices, by the device's name in the kit: the device runs on its own one where its inlet is
    /// dead. They are not charged.</summary>
    public OrderedMap<KitBattery> Internal { get; init; } = OrderedMap<KitBattery>.Empty;

    /// <summary>The plan's stretches of work: blocks, and in blocks that repeat takes the takes and resets, one after the other
    /// over all days.</summary>
    /// <exception cref="ArgumentException">There is no day, a day has no block, or it lasts into the next one.</exception>
    public IReadOnlyList<PlannedStretch> Stretches()
    {
        var schedule = new DaySchedule(this);
        return [.. Days.SelectMany((day, i) => DaySchedule.Stretches(day, i, schedule.Days[i].Start))
            .Select(stretch => new PlannedStretch(
            stretch.Day + 1, stretch.Name, Duration.FromSeconds(stretch.Start), Duration.FromSeconds(stretch.End),
            stretch.Rolling))];
    }
}

/// <summary>A stretch of work as it is planned; times from midnight of the first day.</summary>
/// <param name="Day">Number of the day, from 1.</param>
/// <param name="Block">Short name of the block.</param>
/// <param name="Start">Begin.</param>
/// <param name="End">End.</param>
/// <param name="Rolling">Whether the camera rolls.</param>
public sealed record PlannedStretch(int Day, string Block, Duration Start, Duration End, bool Rolling);
