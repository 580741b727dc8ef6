using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Files;

/// <summary>How a scenario stands in a file.</summary>
internal static class ScenarioFormat
{
    public static readonly QuantityFormat<Temperature> Air = new(WarmerAir.Coldest, WarmerAir.Warmest, "-8 °C");

    private static readonly QuantityFormat<Length> Altitudes = new(Length.FromMeters(-430), Length.FromMeters(6000), "1800 m");

    private static readonly DurationFormat BlockLength = new(Duration.FromMinutes(0.1), Duration.FromHours(48), "45 min");

    public static readonly TextFormat KitName = new(60);

    private static readonly Format<Conditions> Conditions = new RecordFormat<Conditions>(
        () => new Conditions(), "What holds for all days.",
        Fields<Conditions>.Optional("ambient", Air, conditions => conditions.Ambient,
            (conditions, value) => conditions with { Ambient = value },
            "Temperature of the air around the rig, for days that give none."),
        Fields<Conditions>.Optional("night", Air, conditions => conditions.Night,
            (conditions, value) => conditions with { Night = value },
            "Temperature of the air between two days, where batteries and chargers are; 20 °C if left out."),
        Fields<Conditions>.Optional("altitude", Altitudes, conditions => conditions.Altitude,
            (conditions, value) => conditions with { Altitude = value },
            "Height above sea level, for the density of the air in the wind; 0 m if left out."));

    private static readonly Format<KitItem> Kit = new RecordFormat<KitItem>(
        () => new KitItem(), "One thing of the kit.",
        Fields<KitItem>.Required("part", KitName, item => item.Part, (item, value) => item with { Part = value },
            "The id of a part."),
        Fields<KitItem>.WithDefault("count", new CountFormat(1, 100), 1, item => item.Count,
            (item, value) => item with { Count = value }, "How many there are."),
        Fields<KitItem>.Optional("had", new ChoiceFormat<Had>(), item => item.Had, (item, value) => item with { Had = value },
            "Whether it is owned, bought or rented; what costs.others-are says if left out."));

    private static readonly Format<BatteryInUse> Battery = new RecordFormat<BatteryInUse>(
        () => new BatteryInUse(), "The battery and the state it is in.",
        Fields<BatteryInUse>.Required("item", KitName, battery => battery.Item, (battery, value) => battery with { Item = value },
            "Its name in the kit."),
        Fields<BatteryInUse>.Optional("charge", PartFormat.Shares, battery => battery.Charge,
            (battery, value) => battery with { Charge = value }, "Charge at the start; full if left out."),
        Fields<BatteryInUse>.Optional("capacity-left", ElectricalRanges.CapacityLeft, battery => battery.CapacityLeft,
            (battery, value) => battery with { CapacityLeft = value }, "Share of the capacity that aging has left."),
        Fields<BatteryInUse>.Optional("resistance-growth", ElectricalRanges.ResistanceGrowth, battery => battery.ResistanceGrowth,
            (battery, value) => battery with { ResistanceGrowth = value },
            "Resistance as a multiple of a new battery's; where it is left out it goes with the capacity left."),
        Fields<BatteryInUse>.OptionalGroup("age", LifeFormat.Whole, battery => battery.Life,
            (battery, value) => battery with { Life = value },
            "How old it is, in words; what was measured beside it goes before it."),
        Fields<BatteryInUse>.Optional("start-temperature", Air, battery => battery.StartTemperature,
            (battery, value) => battery with { StartTemperature = value },
            "The battery's own temperature at the start; that of the air if left out."),
        Fields<BatteryInUse>.Optional("load-scale", FittedFormat.LoadScale, battery => battery.LoadScale,
            (battery, value) => battery with { LoadScale = value }, FittedFormat.LoadScaleAbout),
        Fields<BatteryInUse>.Optional("runtime-known-to", FittedFormat.KnownTo, battery => battery.RuntimeKnownTo,
            (battery, value) => battery with { RuntimeKnownTo = value }, FittedFormat.KnownToAbout),
        Fields<BatteryInUse>.OptionalGroup("fitted-from", FittedFormat.From, battery => battery.FittedFrom,
            (battery, value) => battery with { FittedFrom = value }, FittedFormat.FromAbout));

    private static readonly Format<DeviceInUse> Device = new RecordFormat<DeviceInUse>(
        () => new DeviceInUse(), "A device of the build.",
        Fields<DeviceInUse>.OptionalGroup("fed-by", FeedFormat.Feed, device => device.FedBy,
            (device, value) => device with { FedBy = value }, "What feeds it: battery, the plate, a splitter or a regulator."),
        Fields<DeviceInUse>.OptionalGroup("outlet", KitName, device => device.Outlet,
            (device, value) => device with { Outlet = value }, "The outlet of that, by its name on the part."),
        Fields<DeviceInUse>.OptionalGroup("cable", KitName, device => device.Cable,
            (device, value) => device with { Cable = value }, "The power cable in front of it, by its name in the kit."),
        Fields<DeviceInUse>.WithDefault("essential", new YesNoFormat(), false, device => device.Essential,
            (device, value) => device with { Essential = value }, "Whether the build is of no use without it."),
        Fields<DeviceInUse>.WithDefault("count", new CountFormat(1, 20), 1, device => device.Count,
            (device, value) => device with { Count = value }, "How many of them there are."),
        Fields<DeviceInUse>.OptionalGroup("power", PartFormat.Draw, device => device.Power,
            (device, value) => device with { Power = value }, "What it draws in this build, where that differs from the part."));

    private static readonly Format<Build> Build = new RecordFormat<Build>(
        () => new Build(), "One way to put the kit together.",
        Fields<Build>.OptionalGroup("title", PartFormat.Title, build => build.Title,
            (build, value) => build with { Title = value }, "Its name for people."),
        Fields<Build>.Required("stance", new ChoiceFormat<Stance>(), build => build.Stance,
            (build, value) => build with { Stance = value }, "How it is carried."),
        Fields<Build>.Required("battery", Battery, build => build.Battery, (build, value) => build with { Battery = value },
            "The battery that powers it."),
        Fields<Build>.OptionalGroup("plate", KitName, build => build.Plate, (build, value) => build with { Plate = value },
            "The plate between battery and outlets, by its name in the kit."),
        Fields<Build>.WithDefault("regulators", new MapFormat<RegulatorInUse>(FeedFormat.RegulatorInUse, "regulator"),
            OrderedMap<RegulatorInUse>.Empty, build => build.Regulators, (build, value) =>
            build with { Regulators = value }, "Regulators, by their names in the kit."),
        Fields<Build>.WithDefault("splitters", new MapFormat<SplitterInUse>(FeedFormat.SplitterInUse, "splitter"),
            OrderedMap<SplitterInUse>.Empty, build => build.Splitters, (build, value) =>
            build with { Splitters = value }, "Splitters, by their names in the kit."),
        Fields<Build>.Required("devices", new MapFormat<DeviceInUse>(Device, "device"), build => build.Devices,
            (build, value) => build with { Devices = value }, "Devices that draw power, by their names in the kit."),
        new Field<Build, IReadOnlyList<string>>("carries", new ListFormat<string>(KitName, 200), build => build.Carries.Count > 0,
            build => build.Carries, (build, value) =>
            build with { Carries = value }, false, "Everything else on the rig, by names in the kit."),
        new Field<Build, IReadOnlyList<string>>("beside", new ListFormat<string>(KitName, 60), build => build.Beside.Count > 0,
            build => build.Beside, (build, value) =>
            build with { Beside = value }, false,
            "Those of its things that are not on the rig and weigh nothing on it, by their names in the kit: a battery on a "
                + "dolly's deck or in a bag."),
        Fields<Build>.WithDefault("places", new MapFormat<PlaceInUse>(PlaceFormat.Place, "place"), OrderedMap<PlaceInUse>.Empty,
            build => build.Places, (build, value) =>
            build with { Places = value },
            "Where things sit, by their names in the kit; what isn't named gets the usual place of its kind, and the answer "
                + "says so."),
        Fields<Build>.OptionalGroup("on-head", PlaceFormat.OnHead, build => build.OnHead,
            (build, value) => build with { OnHead = value }, "How it sits on its head."),
        Fields<Build>.OptionalGroup("on-legs", PlaceFormat.OnLegs, build => build.OnLegs,
            (build, value) => build with { OnLegs = value }, "How its legs stand."),
        Fields<Build>.OptionalGroup("on-shoulder", PlaceFormat.OnShoulder, build => build.OnShoulder,
            (build, value) => build with { OnShoulder = value }, "How it rests on the shoulder."),
        Fields<Build>.OptionalGroup("in-hands", PlaceFormat.InHands, build => build.InHands,
            (build, value) => build with { InHands = value }, "How it is held in the hands."),
        new Field<Build, IReadOnlyList<string>>("assumed", new ListFormat<string>(new TextFormat(200), 200),
            build => build.Assumed.Count > 0, build => build.Assumed, (build, value) =>
            build with { Assumed = value }, false,
            "What nobody said and was proposed or assumed, as paths inside the build (devices.camera.fed-by, or all of "
                + "regulators.dummy-12v) or of kit, chargers and swaps (chargers.charger.ambient); \"batteries\" where all of "
                + "its kind begin in the state of its own."));

    public static readonly Format<DayBlock> Block = new RecordFormat<DayBlock>(
        () => new DayBlock(), "A stretch of the day in which every device keeps one state.",
        [        Fields<DayBlock>.OptionalGroup("title", PartFormat.Title, block => block.Title,
            (block, value) => block with { Title = value }, "Its name for people."),
        Fields<DayBlock>.Required("length", BlockLength, block => block.Length, (block, value) => block with { Length = value },
            "How long it takes."),
        Fields<DayBlock>.WithDefault("states", new MapFormat<PowerState>(new ChoiceFormat<PowerState>(), "device"),
            OrderedMap<PowerState>.Empty, block => block.States, (block, value) =>
            block with { States = value }, "The state of each device, by its name in the kit."),
        Fields<DayBlock>.Optional("others", new ChoiceFormat<PowerState>(), block => block.Others,
            (block, value) => block with { Others = value }, "The state of devices that are not named; off if left out."),
            .. SwapsFormat.OfBlock]);

    private static readonly Format<ShootingDay> Day = new RecordFormat<ShootingDay>(
        () => new ShootingDay(), "A day of work.",
        Fields<ShootingDay>.OptionalGroup("title", PartFormat.Title, day => day.Title, (day, value) => day with { Title = value },
            "Its name for people."),
        Fields<ShootingDay>.Optional("starts", new ClockFormat(), day => day.Starts, (day, value) => day with { Starts = value },
            "When the first block begins."),
        Fields<ShootingDay>.Optional("ambient", Air, day => day.Ambient, (day, value) => day with { Ambient = value },
            "Temperature of the air on this day."),
        Fields<ShootingDay>.Required("blocks", new MapFormat<DayBlock>(Block, "block"), day => day.Blocks,
            (day, value) => day with { Blocks = value }, "The blocks, in order."),
        SwapsFormat.OfDay);

    /// <summary>A scenario, without the first line that names the format.</summary>
    public static readonly RecordFormat<Scenario> Whole = new(
        () => new Scenario(), "A RigScenarios scenario: the kit, the builds made of it, the days, the conditions.",
        [        Fields<Scenario>.Required("title", PartFormat.Title, scenario => scenario.Title,
            (scenario, value) => scenario with { Title = value }, "Its name for people."),
        Fields<Scenario>.OptionalGroup("note", PartFormat.Remark, scenario => scenario.Note,
            (scenario, value) => scenario with { Note = value }, "A remark."),
        new Field<Scenario, IReadOnlyList<string>>("parts-from", new ListFormat<string>(new TextFormat(500), 50),
            scenario => scenario.PartsFrom.Count > 0, scenario => scenario.PartsFrom, (scenario, value) =>
            scenario with { PartsFrom = value }, false, "Parts files, or folders of them, as paths from this file."),
        Fields<Scenario>.WithDefault("parts", PartFormat.Parts, OrderedMap<Part>.Empty, scenario => scenario.Parts,
            (scenario, value) => scenario with { Parts = value },
            "Parts that this scenario describes itself; they go before those of the parts files."),
        Fields<Scenario>.WithDefault("conditions", Conditions, new Conditions(), scenario => scenario.Conditions,
            (scenario, value) => scenario with { Conditions = value }, "What holds for all days."),
        Fields<Scenario>.Required("kit", new MapFormat<KitItem>(Kit, "thing of the kit"), scenario => scenario.Kit,
            (scenario, value) => scenario with { Kit = value }, "What is owned or rented."),
        Fields<Scenario>.Required("builds", new MapFormat<Build>(Build, "build", 100), scenario => scenario.Builds,
            (scenario, value) => scenario with { Builds = value }, "The builds."),
        Fields<Scenario>.Required("days", new MapFormat<ShootingDay>(Day, "day", 100), scenario => scenario.Days,
            (scenario, value) => scenario with { Days = value }, "The days."),
        JourneyFormat.Field, CostFormat.Field, BestRigFormat.Field,
            .. SwapsFormat.OfScenario]);
}
