using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Files;

/// <summary>How a part stands in a file.</summary>
internal static class PartFormat
{
    /// <summary>Ranges that any part of a camera rig keeps to; wide enough for the odd one, narrow enough to catch a slip of
    /// units.</summary>
    public static readonly QuantityFormat<Power> Watts = ElectricalRanges.Watts;

    public static readonly QuantityFormat<ElectricPotential> Volts = ElectricalRanges.Volts;

    public static readonly QuantityFormat<ElectricCurrent> Amperes = ElectricalRanges.Amperes;

    public static readonly QuantityFormat<Mass> Masses = new(Mass.FromGrams(0.1), Mass.FromGrams(100_000), "655 g");

    private static readonly QuantityFormat<Mass> MassesFromZero = new(Mass.FromGrams(0), Mass.FromGrams(100_000), "10 g");

    public static readonly QuantityFormat<Length> Lengths = new(Length.FromMillimeters(0.1),
        Length.FromMillimeters(3000), "128 mm");

    public static readonly QuantityFormat<Ratio> Shares = ElectricalRanges.Shares;

    public static readonly TextFormat Title = new(200);

    public static readonly TextFormat Remark = new(4000, hasLines: true);

    public static readonly Format<PowerDraw> Draw = new RecordFormat<PowerDraw>(
        () => new PowerDraw(), "What the device draws at its own inlet in each state.",
        Fields<PowerDraw>.Optional("off", Watts, draw => draw.Off, (draw, value) => draw with { Off = value },
            "Draw when switched off; 0 W if left out."),
        Fields<PowerDraw>.Optional("standby", Watts, draw => draw.Standby, (draw, value) => draw with { Standby = value },
            "Draw when on, not recording."),
        Fields<PowerDraw>.Optional("record", Watts, draw => draw.Record, (draw, value) => draw with { Record = value },
            "Draw when recording or working."),
        WiringFormat.DrawFields[0], WiringFormat.DrawFields[1], WiringFormat.DrawFields[2], WiringFormat.DrawFields[3]);

    private static readonly Format<VoltageWindow> Voltage = new RecordFormat<VoltageWindow>(
        () => new VoltageWindow(), "The voltage that the device accepts at its own inlet.",
        Fields<VoltageWindow>.Optional("minimum", Volts, window => window.Minimum,
            (window, value) => window with { Minimum = value }, "Below it the device stops."),
        Fields<VoltageWindow>.Optional("maximum", Volts, window => window.Maximum,
            (window, value) => window with { Maximum = value }, "Above it the device may be destroyed."));

    private static readonly Format<RegulatorData> Regulator = new RecordFormat<RegulatorData>(
        () => new RegulatorData(), "A regulator, also one in a dummy battery.",
        Fields<RegulatorData>.Required("input-minimum", Volts, data => data.InputMinimum,
            (data, value) => data with { InputMinimum = value }, "Below it the regulator stops."),
        Fields<RegulatorData>.Required("input-maximum", Volts, data => data.InputMaximum,
            (data, value) => data with { InputMaximum = value }, "Above it the regulator may be destroyed."),
        Fields<RegulatorData>.Required("output-voltage", Volts, data => data.OutputVoltage,
            (data, value) => data with { OutputVoltage = value }, "What it gives."),
        new Field<RegulatorData, Ratio>("efficiency", Shares, data => data.Efficiency.DecimalFractions > 0,
            data => data.Efficiency, (data, value) =>
            data with { Efficiency = value }, false, "Power out over power in; may be left out where losses are given."),
        Fields<RegulatorData>.Optional("own-draw", Watts, data => data.OwnDraw, (data, value) => data with { OwnDraw = value },
            "What it draws itself, also with nothing behind it: its quiescent draw."),
        Fields<RegulatorData>.Optional("loss-per-ampere",
            new QuantityFormat<ElectricPotential>(ElectricPotential.FromVolts(0), ElectricPotential.FromVolts(5), "0.21 V"),
            data => data.LossPerAmpere, (data, value) =>
            data with { LossPerAmpere = value }, "Watts lost for each ampere that it gives, W/A = V."),
        Fields<RegulatorData>.Optional("loss-per-ampere-squared", WiringFormat.Resistances, data => data.LossPerAmpereSquared,
            (data, value) => data with { LossPerAmpereSquared = value },
            "Watts lost for each square ampere that it gives, W/A² = Ω."),
        Fields<RegulatorData>.Optional("maximum-current", Amperes, data => data.MaximumCurrent,
            (data, value) => data with { MaximumCurrent = value }, "The greatest current that it gives."));

    private static readonly Format<ChargerData> Charger = new RecordFormat<ChargerData>(
        () => new ChargerData(), "A charger.",
        Fields<ChargerData>.WithDefault("bays", new CountFormat(1, 16), 1, data => data.Bays,
            (data, value) => data with { Bays = value }, "How many batteries it charges."),
        Fields<ChargerData>.Optional("current", Amperes, data => data.Current, (data, value) => data with { Current = value },
            "Charging current of each bay."));

    private static readonly Format<LabelData> Label = new RecordFormat<LabelData>(
        () => new LabelData(), "What stands on a device's label, where other figures were made of it.",
        Fields<LabelData>.Optional("voltage", Volts, label => label.Voltage, (label, value) => label with { Voltage = value },
            "The one voltage on it."),
        Fields<LabelData>.Optional("current", Amperes, label => label.Current, (label, value) => label with { Current = value },
            "The current on it."));

    /// <summary>A part.</summary>
    public static readonly RecordFormat<Part> Whole = new(
        () => new Part(), "A part that can be bought or rented.",
        Fields<Part>.Required("kind", new ChoiceFormat<PartKind>(), part => part.Kind,
            (part, value) => part with { Kind = value }, "What the part is."),
        Fields<Part>.Required("name", Title, part => part.Name, (part, value) => part with { Name = value },
            "Its name for people."),
        Fields<Part>.OptionalGroup("note", Remark, part => part.Note, (part, value) => part with { Note = value }, "A remark."),
        Fields<Part>.Optional("mass", Masses, part => part.Mass, (part, value) => part with { Mass = value }, "Mass."),
        Fields<Part>.Optional("mass-within", MassesFromZero, part => part.MassWithin,
            (part, value) => part with { MassWithin = value }, "How far the true mass may be from it, either way."),
        Fields<Part>.OptionalGroup("size", new SizeFormat(), part => part.Size,
            (part, value) => part with { Size = value }, "Outer size."),
        Fields<Part>.OptionalGroup("centre", SupportFormat.Offsets, part => part.Centre,
            (part, value) => part with { Centre = value },
            "Its centre of gravity, from the middle of its box; the middle itself if left out."),
        Fields<Part>.Optional("centre-moves", Lengths, part => part.CentreMoves,
            (part, value) => part with { CentreMoves = value },
            "How far the centre of gravity of a lens moves forward when it is zoomed or focused."),
        Fields<Part>.Optional("held-at", new ChoiceFormat<MountingFace>(), part => part.HeldAt,
            (part, value) => part with { HeldAt = value },
            "Where on its box it is held; what is usual for its kind if left out."),
        new Field<Part, IReadOnlyList<string>>("needs", new ListFormat<string>(Title, 20), part => part.Needs.Count > 0,
            part => part.Needs, (part, value) => part with { Needs = [.. value] }, false,
            "Interfaces that what holds it must give, in free words such as [75 mm bowl]; they must be spelled alike."),
        new Field<Part, IReadOnlyList<string>>("gives", new ListFormat<string>(Title, 20), part => part.Gives.Count > 0,
            part => part.Gives, (part, value) => part with { Gives = [.. value] }, false,
            "Interfaces that it gives to what sits on it, in the same words; nothing is ruled out where it is left out."),
        Fields<Part>.OptionalGroup("focal-length", Title, part => part.FocalLength,
            (part, value) => part with { FocalLength = value }, "Focal length of a lens, for people."),
        Fields<Part>.Optional("buy", new MoneyFormat(), part => part.Buy, (part, value) => part with { Buy = value },
            "Price to buy."),
        Fields<Part>.Optional("rent-per-day", new MoneyFormat(), part => part.RentPerDay,
            (part, value) => part with { RentPerDay = value }, "Price to rent for a day."),
        Fields<Part>.Optional("rent-per-week", new MoneyFormat(), part => part.RentPerWeek,
            (part, value) => part with { RentPerWeek = value }, "Price to rent for a week; 3 days' rent if left out."),
        Fields<Part>.Optional("rent-per-month", new MoneyFormat(), part => part.RentPerMonth,
            (part, value) => part with { RentPerMonth = value }, "Price to rent for a month; 10 days' rent if left out."),
        Fields<Part>.Optional("resale", new MoneyFormat(), part => part.Resale, (part, value) => part with { Resale = value },
            "What it brings when it is sold at the end of the years of \"costs\"; worked out from the price if left out."),
        Fields<Part>.OptionalGroup("label", Label, part => part.Label, (part, value) => part with { Label = value },
            "Volts and amperes on a device's label; figures made of them stand in \"assumed\"."),
        Fields<Part>.OptionalGroup("power", Draw, part => part.Power, (part, value) => part with { Power = value },
            "What it draws in each state."),
        Fields<Part>.OptionalGroup("voltage", Voltage, part => part.Voltage, (part, value) => part with { Voltage = value },
            "The voltage that it accepts."),
        Fields<Part>.Optional("maximum-current", Amperes, part => part.MaximumCurrent,
            (part, value) => part with { MaximumCurrent = value }, "The greatest current that it takes."),
        Fields<Part>.Optional("rated-load", Masses, part => part.RatedLoad, (part, value) => part with { RatedLoad = value },
            "The mass that it is rated to carry."),
        Fields<Part>.OptionalGroup("battery", BatteryFormat.Whole, part => part.Battery,
            (part, value) => part with { Battery = value }, "What a battery's label and data sheet say."),
        Fields<Part>.OptionalGroup("plate", WiringFormat.Plate, part => part.Plate, (part, value) => part with { Plate = value },
            "A battery plate."),
        Fields<Part>.OptionalGroup("regulator", Regulator, part => part.Regulator,
            (part, value) => part with { Regulator = value }, "A regulator."),
        Fields<Part>.OptionalGroup("charger", Charger, part => part.Charger,
            (part, value) => part with { Charger = value }, "A charger."),
        Fields<Part>.OptionalGroup("cable", WiringFormat.Cable, part => part.Cable, (part, value) => part with { Cable = value },
            "A power cable."),
        Fields<Part>.OptionalGroup("splitter", WiringFormat.Splitter, part => part.Splitter,
            (part, value) => part with { Splitter = value }, "A box with several outlets."),
        Fields<Part>.OptionalGroup("head", SupportFormat.Head, part => part.Head, (part, value) => part with { Head = value },
            "A tripod head."),
        Fields<Part>.OptionalGroup("legs", SupportFormat.Legs, part => part.Legs, (part, value) => part with { Legs = value },
            "A tripod's legs."),
        Fields<Part>.OptionalGroup("rods", SupportFormat.Rods, part => part.Rods, (part, value) => part with { Rods = value },
            "A pair of rods."),
        Fields<Part>.OptionalGroup("arm", SupportFormat.Arm, part => part.Arm,
            (part, value) => part with { Arm = value }, "An arm."),
        new Field<Part, IReadOnlyList<string>>("assumed", new ListFormat<string>(new TextFormat(60), 60),
            part => part.Assumed.Count > 0, part => part.Assumed, (part, value) =>
            part with { Assumed = value }, false,
            "Fields of this part whose figure was assumed and not read on a label, such as [mass, power.standby]. A result "
                + "lists those that entered it."));

    /// <summary>Parts by their ids.</summary>
    public static readonly MapFormat<Part> Parts = new(Whole, "part", 10_000);
}
