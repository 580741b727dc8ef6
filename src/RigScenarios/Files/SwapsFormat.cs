using System.Globalization;
using System.Text.Json.Nodes;
using RigScenarios.Days;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Files;

/// <summary>How batteries that are swapped, chargers and swaps stand in a scenario's file.</summary>
internal static class SwapsFormat
{
    /// <summary>Hours of every day.</summary>
    public static readonly PlainFormat<ClockRange> Hours = new HoursFormat();

    private static readonly QuantityFormat<ElectricApparentPower> VoltAmperes = new(
        ElectricApparentPower.FromVoltamperes(1), ElectricApparentPower.FromVoltamperes(20_000), "600 VA");

    private static readonly DurationFormat Short = new(Duration.FromSeconds(0), Duration.FromHours(2), "60 s");

    // Nobody swaps sooner, and what hardly differs from a full battery would be swapped again and again.
    private static readonly QuantityFormat<Ratio> Reserves = new(Ratio.FromPercent(0), Ratio.FromPercent(95), "15 %");

    private static readonly DurationFormat TakeLength = new(Duration.FromSeconds(1), Duration.FromHours(12), "4 min");

    private static readonly Format<BatteryAtStart> Battery = new RecordFormat<BatteryAtStart>(
        () => new BatteryAtStart(), "One battery and the state it is in at the start.",
        Fields<BatteryAtStart>.Required("item", ScenarioFormat.KitName, battery => battery.Item,
            (battery, value) => battery with { Item = value }, "Its name in the kit."),
        Fields<BatteryAtStart>.Optional("charge", PartFormat.Shares, battery => battery.Charge,
            (battery, value) => battery with { Charge = value }, "Charge at the start; full if left out."),
        Fields<BatteryAtStart>.Optional("capacity-left", ElectricalRanges.CapacityLeft, battery => battery.CapacityLeft,
            (battery, value) => battery with { CapacityLeft = value }, "Share of the capacity that aging has left."),
        Fields<BatteryAtStart>.Optional("resistance-growth", ElectricalRanges.ResistanceGrowth,
            battery => battery.ResistanceGrowth,
            (battery, value) => battery with { ResistanceGrowth = value },
            "Resistance as a multiple of a new battery's; where it is left out it goes with the capacity left."),
        Fields<BatteryAtStart>.OptionalGroup("age", LifeFormat.Whole, battery => battery.Life,
            (battery, value) => battery with { Life = value },
            "How old it is, in words; what was measured beside it goes before it."),
        Fields<BatteryAtStart>.Optional("start-temperature", ScenarioFormat.Air, battery => battery.StartTemperature,
            (battery, value) => battery with { StartTemperature = value },
            "The battery's own temperature at the start; that of its place if left out."),
        Fields<BatteryAtStart>.Optional("runtime-known-to", FittedFormat.KnownTo, battery => battery.RuntimeKnownTo,
            (battery, value) => battery with { RuntimeKnownTo = value }, FittedFormat.KnownToAbout),
        Fields<BatteryAtStart>.OptionalGroup("fitted-from", FittedFormat.From, battery => battery.FittedFrom,
            (battery, value) => battery with { FittedFrom = value }, FittedFormat.FromAbout),
        Fields<BatteryAtStart>.Optional("rests-at", ScenarioFormat.Air, battery => battery.RestsAt,
            (battery, value) => battery with { RestsAt = value },
            "Temperature of the pocket or box where it rests; the air if left out."),
        Fields<BatteryAtStart>.WithDefault("heat-factor", new NumberFormat(0, 100), 1.0, battery => battery.HeatFactor,
            (battery, value) => battery with { HeatFactor = value },
            "How many times the heat conductance in still air holds where it rests; 1 if left out."),
        Fields<BatteryAtStart>.Optional("maximum-charge-current", PartFormat.Amperes, battery => battery.MaximumChargeCurrent,
            (battery, value) => battery with { MaximumChargeCurrent = value }, "Largest charging current by the maker."));

    private static readonly Format<DayCharger> Charger = new RecordFormat<DayCharger>(
        () => new DayCharger(ElectricCurrent.FromAmperes(1)), "A charger with its bays and the power it has.",
        Fields<DayCharger>.WithDefault("bays", new CountFormat(0, 16), 1, charger => charger.Bays,
            (charger, value) => charger with { Bays = value }, "How many batteries it takes; 1 if left out."),
        Fields<DayCharger>.Required("current", PartFormat.Amperes, charger => charger.Current,
            (charger, value) => charger with { Current = value }, "Charging current of each bay."),
        Fields<DayCharger>.Optional("termination", PartFormat.Amperes, charger => charger.Termination,
            (charger, value) => charger with { Termination = value },
            "Current at which a battery counts as full; a twentieth of its capacity in an hour if left out."),
        new Field<DayCharger, BayOrder>("order", new ChoiceFormat<BayOrder>(), charger => charger.Order != BayOrder.Shared,
            charger => charger.Order, (charger, value) =>
            charger with { Order = value }, false, "How it serves its bays; shared if left out."),
        new Field<DayCharger, Power>("wall-limit", PartFormat.Watts, charger => charger.WallLimit is not null,
            charger => charger.WallLimit.GetValueOrDefault(), (charger, value) => charger with { WallLimit = value }, false,
            "Largest power from the wall, generator or vehicle; no limit if left out, nothing is charged with 0 W."),
        Fields<DayCharger>.Optional("supply-rating", VoltAmperes, charger => charger.SupplyRating,
            (charger, value) => charger with { SupplyRating = value },
            "What the outlet, generator or inverter is rated for in volt-amperes; the watts that a charger gets are fewer."),
        Fields<DayCharger>.Optional("power-factor", PartFormat.Shares, charger => charger.PowerFactor,
            (charger, value) => charger with { PowerFactor = value },
            $"Watts over volt-amperes that the charger draws; {DayCharger.UsualPowerFactor.Percent:0} % if left out."),
        Fields<DayCharger>.OptionalGroup("stands", PartFormat.Title, charger => charger.Stands,
            (charger, value) => charger with { Stands = value }, "Where it stands, for people."),
        Fields<DayCharger>.Optional("power-from", new ChoiceFormat<PowerSource>(), charger => charger.PowerFrom,
            (charger, value) => charger with { PowerFrom = value },
            "What it has its power from; an answer with a generator has its cautions."),
        new Field<DayCharger, Ratio>("efficiency", PartFormat.Shares, charger => charger.Efficiency.Percent != 88,
            charger => charger.Efficiency, (charger, value) =>
            charger with { Efficiency = value }, false, "Power into the battery over power from the wall; 88 % if left out."),
        new Field<DayCharger, IReadOnlyList<ClockRange>>("power-hours", new OneOrMoreFormat<ClockRange>(Hours, 20),
            charger => charger.PowerHours.Count > 0, charger => charger.PowerHours, (charger, value) =>
            charger with { PowerHours = value }, false,
            "The hours of every day in which it has power; at all hours if left out."),
        Fields<DayCharger>.Optional("ambient", ScenarioFormat.Air, charger => charger.Ambient,
            (charger, value) => charger with { Ambient = value },
            "Temperature of the air around it; that of the moment if left out."),
        new Field<DayCharger, Temperature>("lowest", ScenarioFormat.Air, charger => charger.Lowest.DegreesCelsius != 10,
            charger => charger.Lowest, (charger, value) =>
            charger with { Lowest = value }, false, "Below this temperature of the battery it waits; 10 °C if left out."),
        new Field<DayCharger, Temperature>("highest", ScenarioFormat.Air, charger => charger.Highest.DegreesCelsius != 45,
            charger => charger.Highest, (charger, value) =>
            charger with { Highest = value }, false, "Above this temperature of the battery it waits; 45 °C if left out."));

    private static readonly Format<SwapPolicy> Swaps = new RecordFormat<SwapPolicy>(
        () => new SwapPolicy(), "When and how batteries are swapped.",
        Fields<SwapPolicy>.Optional("warning-voltage", PartFormat.Volts, swaps => swaps.WarningVoltage,
            (swaps, value) => swaps with { WarningVoltage = value }, "Swap when the battery's voltage has fallen to this."),
        Fields<SwapPolicy>.Optional("reserve", Reserves, swaps => swaps.Reserve,
            (swaps, value) => swaps with { Reserve = value }, "Swap when the battery's charge has fallen to this."),
        Fields<SwapPolicy>.WithDefault("at-block-ends", new YesNoFormat(), false, swaps => swaps.AtBlockEnds,
            (swaps, value) => swaps with { AtBlockEnds = value },
            "Swap at the end of each block, where a fuller battery waits. No if left out."),
        new Field<SwapPolicy, SwapMoments>("allowed", new ChoiceFormat<SwapMoments>(),
            swaps => swaps.Allowed != SwapMoments.NotWhileRolling, swaps => swaps.Allowed, (swaps, value) =>
            swaps with { Allowed = value }, false, "When a swap is allowed; not while rolling if left out."),
        new Field<SwapPolicy, Duration>("swap-time", Short, swaps => swaps.SwapTime.Seconds != 60, swaps => swaps.SwapTime,
            (swaps, value) => swaps with { SwapTime = value }, false, "Time without battery; one minute if left out."),
        new Field<SwapPolicy, Duration>("restart", Short, swaps => swaps.Restart.Seconds != 30, swaps => swaps.Restart,
            (swaps, value) => swaps with { Restart = value }, false,
            "Time that a device which lost power needs to start again; half a minute if left out."),
        new Field<SwapPolicy, NextBattery>("next", new ChoiceFormat<NextBattery>(),
            swaps => swaps.Next != NextBattery.FullestFirst, swaps => swaps.Next, (swaps, value) =>
            swaps with { Next = value }, false, "Which battery is taken next; the fullest if left out."),
        new Field<SwapPolicy, Ratio>("least-charge", PartFormat.Shares, swaps => swaps.LeastCharge.Percent != 20,
            swaps => swaps.LeastCharge, (swaps, value) => swaps with { LeastCharge = value }, false,
            "Least charge with which a battery is put on the rig; 20 % if left out."),
        Fields<SwapPolicy>.WithDefault("interrupt-charging", new YesNoFormat(), true, swaps => swaps.InterruptCharging,
            (swaps, value) => swaps with { InterruptCharging = value },
            "Whether a battery is taken off a charger before it is full, if no other is left. Yes if left out."));

    private static readonly Format<HotSwapInUse> HotSwap = new RecordFormat<HotSwapInUse>(
        () => new HotSwapInUse(), "A small pack in the battery plate that carries the rig while the battery is swapped.",
        Fields<HotSwapInUse>.Required("pack", Battery, reserve => reserve.Pack, (reserve, value) => reserve with { Pack = value },
            "The pack and the state it is in."),
        Fields<HotSwapInUse>.Optional("charge-power", ElectricalRanges.Watts, reserve => reserve.ChargePower,
            (reserve, value) => reserve with { ChargePower = value },
            "Power with which it is charged from the battery on the rig; 10 W if left out."),
        Fields<HotSwapInUse>.Optional("forward-drop",
            new QuantityFormat<ElectricPotential>(ElectricPotential.FromVolts(0), ElectricPotential.FromVolts(2), "0.4 V"),
            reserve => reserve.ForwardDrop, (reserve, value) =>
            reserve with { ForwardDrop = value }, "Voltage over its diode; 0.4 V if left out."));

    private static readonly Format<TakeCycle> Cycle = new RecordFormat<TakeCycle>(
        () => new TakeCycle(Duration.FromMinutes(1), Duration.FromMinutes(1)),
        "Takes with resets between them, repeated through the block.",
        Fields<TakeCycle>.Required("take", TakeLength, cycle => cycle.Take, (cycle, value) => cycle with { Take = value },
            "Length of a take."),
        Fields<TakeCycle>.Required("reset", TakeLength, cycle => cycle.Reset, (cycle, value) => cycle with { Reset = value },
            "Length of the reset after it."),
        Fields<TakeCycle>.WithDefault("reset-states",
            new MapFormat<Builds.PowerState>(new ChoiceFormat<Builds.PowerState>(), "device"),
            OrderedMap<Builds.PowerState>.Empty, cycle => cycle.ResetStates, (cycle, value) =>
            cycle with { ResetStates = value }, "The state of devices in a reset; those that record stand by if left out."));

    private static readonly Format<AmbientPoint> Point = new RecordFormat<AmbientPoint>(
        () => new AmbientPoint(default, Temperature.FromDegreesCelsius(20)), "Temperature of the air at a time of the day.",
        Fields<AmbientPoint>.Required("time", new ClockFormat(), point => point.Time,
            (point, value) => point with { Time = value }, "The time."),
        Fields<AmbientPoint>.Required("temperature", ScenarioFormat.Air, point => point.Temperature,
            (point, value) => point with { Temperature = value }, "The temperature."));

    /// <summary>Whether a block rolls, and its takes.</summary>
    public static readonly Field<DayBlock>[] OfBlock =
    [
        Fields<DayBlock>.WithDefault("rolling", new YesNoFormat(), false, block => block.Rolling,
            (block, value) => block with { Rolling = value },
            "Whether the camera rolls through all of it, so that nobody may swap. No if left out."),
        Fields<DayBlock>.OptionalGroup("cycle", Cycle, block => block.Cycle, (block, value) => block with { Cycle = value },
            "Takes and resets that repeat in it; only takes roll."),
    ];

    /// <summary>The air through a day.</summary>
    public static readonly Field<ShootingDay> OfDay = new Field<ShootingDay, IReadOnlyList<AmbientPoint>>(
        "ambient-points", new ListFormat<AmbientPoint>(Point, 50), day => day.AmbientPoints.Count > 0, day =>
            day.AmbientPoints, (day, value) => day with { AmbientPoints = value }, false,
            "Temperature of the air at times of the day, in order, linear between them; a time that is not later than the one "
                + "before lies on the next day. They go before \"ambient\".");

    /// <summary>The groups of a scenario.</summary>
    public static readonly Field<Scenario>[] OfScenario =
    [
        Fields<Scenario>.WithDefault("batteries", new MapFormat<BatteryAtStart>(Battery, "battery", 200),
            OrderedMap<BatteryAtStart>.Empty, scenario => scenario.Batteries, (scenario, value) =>
            scenario with { Batteries = value }, "The batteries that are swapped through the days, by names of their own."),
        Fields<Scenario>.WithDefault("chargers", new MapFormat<DayCharger>(Charger, "charger", 20), OrderedMap<DayCharger>.Empty,
            scenario => scenario.Chargers, (scenario, value) =>
            scenario with { Chargers = value }, "The chargers, by names of their own."),
        Fields<Scenario>.WithDefault("swaps", Swaps, new SwapPolicy(), scenario => scenario.Swaps,
            (scenario, value) => scenario with { Swaps = value }, "When and how batteries are swapped."),
        Fields<Scenario>.OptionalGroup("hot-swap", HotSwap, scenario => scenario.HotSwap,
            (scenario, value) => scenario with { HotSwap = value },
            "The small pack in the plate that carries the rig through a swap."),
        Fields<Scenario>.WithDefault("internal-batteries", new MapFormat<BatteryAtStart>(Battery, "device"),
            OrderedMap<BatteryAtStart>.Empty, scenario => scenario.InternalBatteries, (scenario, value) =>
            scenario with { InternalBatteries = value },
            "Batteries inside devices, by the devices' names in the kit; each carries its device while its inlet is dead."),
    ];

    /// <summary>Hours of every day, such as "19:00-07:00".</summary>
    private sealed class HoursFormat : PlainFormat<ClockRange>
    {
        public override string Accepted =>
            "two different times of day with a hyphen between them in quotes, such as \"19:00-07:00\"";

        public override JsonObject Schema() =>
            new() { ["type"] = "string", ["pattern"] = "^([01]?[0-9]|2[0-3]):[0-5][0-9]-([01]?[0-9]|2[0-3]):[0-5][0-9]$" };

        protected override bool TryParse(string text, [System.Diagnostics.CodeAnalysis.MaybeNullWhen(false)] out ClockRange value)
        {
            value = null;
            string[] formats = ["H:mm", "HH:mm"];
            if (WrittenDigits.Plain(text).Split('-') is not [var from, var to]
                || !TimeOnly.TryParseExact(from, formats, CultureInfo.InvariantCulture, DateTimeStyles.None, out var begin)
                || !TimeOnly.TryParseExact(to, formats, CultureInfo.InvariantCulture, DateTimeStyles.None, out var end)
                || begin == end)
                return false;
            value = new ClockRange(begin, end);
            return true;
        }

        protected override string Text(ClockRange value) =>
            string.Create(CultureInfo.InvariantCulture, $"{value.From:HH:mm}-{value.To:HH:mm}");
    }
}
