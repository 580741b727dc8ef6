using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Files;

/// <summary>How outlets, cables, splitters and the draw of devices stand in a parts file.</summary>
internal static class WiringFormat
{
    public static readonly QuantityFormat<ElectricResistance> Resistances = new(ElectricResistance.FromMilliohms(0),
        ElectricResistance.FromOhms(5), "8 mΩ");

    public static readonly QuantityFormat<Length> CableLengths = new(Length.FromMillimeters(10),
        Length.FromMeters(100), "600 mm");

    private static readonly QuantityFormat<Ratio> PerKelvin = new(Ratio.FromPercent(0), Ratio.FromPercent(2), "0.2 %");

    private static readonly QuantityFormat<Duration> Moments = new(Duration.FromMilliseconds(0.1),
        Duration.FromSeconds(60), "80 ms");

    private static readonly Format<StartUpDraw> StartUp = new RecordFormat<StartUpDraw>(
        () => new StartUpDraw(Power.Zero, Duration.Zero), "What it draws for a moment when it is switched on.",
        Fields<StartUpDraw>.Required("power", ElectricalRanges.Watts, start => start.Power,
            (start, value) => start with { Power = value }, "The most that it draws then."),
        Fields<StartUpDraw>.Required("time", Moments, start => start.Time,
            (start, value) => start with { Time = value }, "How long."));

    private static readonly Format<FuseData> Fuse = new RecordFormat<FuseData>(
        () => new FuseData(ElectricCurrent.Zero), "A fuse.",
        Fields<FuseData>.Required("rating", ElectricalRanges.Amperes, fuse => fuse.Rating,
            (fuse, value) => fuse with { Rating = value },
            "The rated current printed on it; of a resettable one its hold current."),
        Fields<FuseData>.Optional("kind", new ChoiceFormat<FuseKind>(), fuse => fuse.Kind,
            (fuse, value) => fuse with { Kind = value },
            "Whether it melts, or is a polymer limiter that comes back when it has cooled; one that melts if left out."),
        Fields<FuseData>.Optional("steady-share", ElectricalRanges.Shares, fuse => fuse.SteadyShare,
            (fuse, value) => fuse with { SteadyShare = value },
            "The part of its rating that it is meant to carry for hours; 75 % if left out, 100 % of a resettable one."),
        Fields<FuseData>.Optional("less-per-kelvin", PerKelvin, fuse => fuse.LessPerKelvin,
            (fuse, value) => fuse with { LessPerKelvin = value },
            "How much of its rating each kelvin above 25 °C takes; 0.5 % if left out, of a resettable one 1 % above 20 °C."));

    private static readonly Format<OutletData> Outlet = new RecordFormat<OutletData>(
        () => new OutletData(), "An outlet.",
        Fields<OutletData>.Optional("maximum-current", ElectricalRanges.Amperes, outlet => outlet.MaximumCurrent,
            (outlet, value) => outlet with { MaximumCurrent = value }, "The greatest current out of it."),
        Fields<OutletData>.OptionalGroup("fuse", Fuse, outlet => outlet.Fuse,
            (outlet, value) => outlet with { Fuse = value }, "Its fuse."),
        Fields<OutletData>.Optional("voltage", ElectricalRanges.Volts, outlet => outlet.Voltage,
            (outlet, value) => outlet with { Voltage = value },
            "The voltage that it holds; left out where the battery's own voltage passes through."),
        Fields<OutletData>.Optional("efficiency", ElectricalRanges.Shares, outlet => outlet.Efficiency,
            (outlet, value) => outlet with { Efficiency = value },
            "Power out over power in, where it holds a voltage; 90 % if left out."),
        Fields<OutletData>.Optional("input-minimum", ElectricalRanges.Volts, outlet => outlet.InputMinimum,
            (outlet, value) => outlet with { InputMinimum = value }, "Below it an outlet that holds a voltage stops."),
        Fields<OutletData>.Optional("contact-resistance", Resistances, outlet => outlet.ContactResistance,
            (outlet, value) => outlet with { ContactResistance = value }, "Resistance of a socket's contacts, there and back."),
        Fields<OutletData>.WithDefault("sockets", new CountFormat(1, 20), 1, outlet => outlet.Sockets,
            (outlet, value) => outlet with { Sockets = value }, "How many plugs fit in; they share its limit."));

    public static readonly Format<PlateData> Plate = new RecordFormat<PlateData>(
        () => new PlateData(), "A battery plate.",
        Fields<PlateData>.Optional("own-draw", ElectricalRanges.Watts, plate => plate.OwnDraw,
            (plate, value) => plate with { OwnDraw = value }, "What the plate draws itself."),
        Fields<PlateData>.Optional("switch-off-voltage", ElectricalRanges.Volts, plate => plate.SwitchOffVoltage,
            (plate, value) => plate with { SwitchOffVoltage = value }, "Below it the plate switches everything off."),
        Fields<PlateData>.Optional("maximum-current", ElectricalRanges.Amperes, plate => plate.MaximumCurrent,
            (plate, value) => plate with { MaximumCurrent = value }, "The greatest current through the plate."),
        Fields<PlateData>.Optional("contact-resistance", Resistances, plate => plate.ContactResistance,
            (plate, value) => plate with { ContactResistance = value },
            "Resistance of the contacts between battery and plate, there and back."),
        Fields<PlateData>.OptionalGroup("fuse", Fuse, plate => plate.Fuse, (plate, value) => plate with { Fuse = value },
            "The plate's main fuse."),
        Fields<PlateData>.WithDefault("outlets", new MapFormat<OutletData>(Outlet, "outlet"), OrderedMap<OutletData>.Empty,
            plate => plate.Outlets, (plate, value) => plate with { Outlets = value }, "Its outlets, by names of your own."));

    public static readonly Format<SplitterData> Splitter = new RecordFormat<SplitterData>(
        () => new SplitterData(), "A box with several outlets.",
        Fields<SplitterData>.Optional("own-draw", ElectricalRanges.Watts, splitter => splitter.OwnDraw,
            (splitter, value) => splitter with { OwnDraw = value }, "What it draws itself."),
        Fields<SplitterData>.Optional("maximum-current", ElectricalRanges.Amperes, splitter => splitter.MaximumCurrent,
            (splitter, value) => splitter with { MaximumCurrent = value }, "The greatest current into it."),
        Fields<SplitterData>.OptionalGroup("fuse", Fuse, splitter => splitter.Fuse,
            (splitter, value) => splitter with { Fuse = value }, "The fuse at its inlet."),
        Fields<SplitterData>.Required("outlets", new MapFormat<OutletData>(Outlet, "outlet"), splitter => splitter.Outlets,
            (splitter, value) => splitter with { Outlets = value }, "Its outlets, by names of your own."));

    public static readonly Format<CableData> Cable = new RecordFormat<CableData>(
        () => new CableData(default, Length.Zero), "A power cable of two equal conductors.",
        Fields<CableData>.Required("gauge", new GaugeFormat(), cable => cable.Gauge,
            (cable, value) => cable with { Gauge = value }, "The gauge of each conductor."),
        Fields<CableData>.Required("length", CableLengths, cable => cable.Length, (cable, value) => cable with { Length = value },
            "From plug to plug, one way."),
        Fields<CableData>.Optional("connector-resistance", Resistances, cable => cable.ConnectorResistance,
            (cable, value) => cable with { ConnectorResistance = value },
            "Resistance of the connector at each end, both contacts together; 10 mΩ if left out."),
        Fields<CableData>.Optional("rated-current", ElectricalRanges.Amperes, cable => cable.RatedCurrent,
            (cable, value) => cable with { RatedCurrent = value }, "The greatest current that its maker allows."),
        Fields<CableData>.OptionalGroup("fuse", Fuse, cable => cable.Fuse, (cable, value) => cable with { Fuse = value },
            "A fuse in the cable."));

    /// <summary>How the draw of a device behaves: what stands beside the draws of its states.</summary>
    public static readonly Field<PowerDraw>[] DrawFields =
    [
        Fields<PowerDraw>.Optional("load", new ChoiceFormat<LoadKind>(), draw => draw.Load,
            (draw, value) => draw with { Load = value },
            "What stays the same when its voltage falls; power if left out. For current and resistance the draws hold at the "
                + "voltage of its feed."),
        Fields<PowerDraw>.Optional("duty", ElectricalRanges.Shares, draw => draw.Duty,
            (draw, value) => draw with { Duty = value },
            "The part of a working time in which a motor draws what stands at \"record\"; standby the rest."),
        Fields<PowerDraw>.Optional("peak", ElectricalRanges.Watts, draw => draw.Peak, (draw, value) => draw with { Peak = value },
            "The most that it draws for moments of its work."),
        Fields<PowerDraw>.OptionalGroup("start-up", StartUp, draw => draw.StartUp, (draw, value) => draw with { StartUp = value },
            "What it draws for a moment when it is switched on."),
    ];
}
