using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Files;

/// <summary>How a battery's label and data sheet stand in a parts file. Only energy and voltage must be given.</summary>
internal static class BatteryFormat
{
    public static readonly QuantityFormat<Energy> LabelEnergy = new(Energy.FromWattHours(0.1),
        Energy.FromWattHours(5000), "150 Wh");

    private static readonly QuantityFormat<ElectricResistance> Ohms = new(ElectricResistance.FromMilliohms(0),
        ElectricResistance.FromMilliohms(10_000), "8 mΩ");

    private static readonly DurationFormat Seconds = new(Duration.FromSeconds(0.01), Duration.FromSeconds(100_000), "20 s");

    private static readonly QuantityFormat<Temperature> Celsius = new(Temperature.FromDegreesCelsius(-60),
        Temperature.FromDegreesCelsius(120), "60 °C");

    private static readonly Format<OpenCircuitPoint> OpenCircuitPoint = new RecordFormat<OpenCircuitPoint>(
        () => new OpenCircuitPoint(default, default), "Open-circuit voltage of one cell group at a charge.",
        Fields<OpenCircuitPoint>.Required("charge",
            new QuantityFormat<Ratio>(Ratio.FromPercent(0), Ratio.FromPercent(100), "50 %"), point =>
            point.StateOfCharge, (point, value) => point with { StateOfCharge = value }, "State of charge."),
        Fields<OpenCircuitPoint>.Required("voltage", PartFormat.Volts, point => point.Voltage,
            (point, value) => point with { Voltage = value }, "Voltage of one group at rest."));

    private static readonly Format<UsableCapacityPoint> UsableCapacityPoint = new RecordFormat<UsableCapacityPoint>(
        () => new UsableCapacityPoint(default, default), "Usable share of the capacity at a cell temperature.",
        Fields<UsableCapacityPoint>.Required("temperature", Celsius, point => point.Temperature,
            (point, value) => point with { Temperature = value }, "Cell temperature."),
        Fields<UsableCapacityPoint>.Required("usable", PartFormat.Shares, point => point.Fraction,
            (point, value) => point with { Fraction = value }, "Usable share."));

    /// <summary>A battery.</summary>
    public static readonly RecordFormat<Battery> Whole = new(
        () => new Battery { Energy = default, Voltage = default },
        "What a battery's label says; below voltage, what only a data sheet or a measurement says.",
        Fields<Battery>.Required("energy", LabelEnergy, battery => battery.Energy,
            (battery, value) => battery with { Energy = value }, "Energy on the label."),
        Fields<Battery>.Required("voltage", PartFormat.Volts, battery => battery.Voltage,
            (battery, value) => battery with { Voltage = value }, "Nominal voltage on the label."),
        Fields<Battery>.Optional("maximum-current", PartFormat.Amperes, battery => battery.MaximumCurrent,
            (battery, value) => battery with { MaximumCurrent = value }, "The greatest discharge current."),
        Fields<Battery>.OptionalGroup("chemistry", new ChemistryFormat(), battery => battery.Chemistry,
            (battery, value) => battery with { Chemistry = value }, "Cell chemistry."),
        Fields<Battery>.Optional("series-groups", new CountFormat(1, 30), battery => battery.SeriesGroups,
            (battery, value) => battery with { SeriesGroups = value }, "Cell groups in series."),
        Fields<Battery>.Optional("capacity", new QuantityFormat<ElectricCharge>(ElectricCharge.FromAmpereHours(0.01),
            ElectricCharge.FromAmpereHours(500), "10 Ah"), battery => battery.Capacity, (battery, value) =>
            battery with { Capacity = value }, "Capacity when new, at 25 °C."),
        Fields<Battery>.Optional("cutoff-voltage", PartFormat.Volts, battery => battery.CutoffVoltage,
            (battery, value) => battery with { CutoffVoltage = value }, "Voltage at which the pack's protection switches off."),
        Fields<Battery>.Optional("maximum-temperature", Celsius, battery => battery.MaximumTemperature,
            (battery, value) => battery with { MaximumTemperature = value }, "Temperature at which the pack switches off."),
        Fields<Battery>.Optional("resistance-0", Ohms, battery => battery.Resistance0,
            (battery, value) => battery with { Resistance0 = value }, "Immediate resistance of one group at 25 °C, new."),
        Fields<Battery>.Optional("resistance-1", Ohms, battery => battery.Resistance1,
            (battery, value) => battery with { Resistance1 = value }, "Resistance of the faster RC pair of one group."),
        Fields<Battery>.Optional("time-constant-1", Seconds, battery => battery.TimeConstant1,
            (battery, value) => battery with { TimeConstant1 = value }, "Its time constant."),
        Fields<Battery>.Optional("resistance-2", Ohms, battery => battery.Resistance2,
            (battery, value) => battery with { Resistance2 = value }, "Resistance of the slower RC pair of one group."),
        Fields<Battery>.Optional("time-constant-2", Seconds, battery => battery.TimeConstant2,
            (battery, value) => battery with { TimeConstant2 = value }, "Its time constant."),
        Fields<Battery>.Optional("lead-resistance", Ohms, battery => battery.LeadResistance,
            (battery, value) => battery with { LeadResistance = value }, "Leads, protection switch and contacts of the pack."),
        Fields<Battery>.Optional("activation-energy",
            new QuantityFormat<MolarEnergy>(MolarEnergy.FromKilojoulesPerMole(0), MolarEnergy.FromKilojoulesPerMole(100),
            "25 kJ/mol"), battery => battery.ActivationEnergy, (battery, value) =>
            battery with { ActivationEnergy = value }, "Activation energy of the resistances."),
        Fields<Battery>.Optional("resistance-floor", new NumberFormat(0, 1), battery => battery.ResistanceFloor,
            (battery, value) => battery with { ResistanceFloor = value }, "Least resistance factor in the warm."),
        Fields<Battery>.Optional("heat-capacity",
            new QuantityFormat<Entropy>(Entropy.FromJoulesPerKelvin(1), Entropy.FromJoulesPerKelvin(100_000), "900 J/K"),
            battery => battery.HeatCapacity, (battery, value) =>
            battery with { HeatCapacity = value }, "Heat capacity of the pack."),
        Fields<Battery>.Optional("heat-conductance", new HeatConductanceFormat(), battery => battery.HeatConductance,
            (battery, value) => battery with { HeatConductance = value }, "Heat conductance from pack to air."),
        Fields<Battery>.OptionalGroup("usable-capacity", new ListFormat<UsableCapacityPoint>(UsableCapacityPoint, 100),
            battery => battery.UsableCapacity, (battery, value) =>
            battery with { UsableCapacity = value }, "Usable share of the capacity by cell temperature."),
        Fields<Battery>.Optional("near-share", new NumberFormat(0.05, 1), battery => battery.NearShare,
            (battery, value) => battery with { NearShare = value },
            "Share of the charge that the terminals see; the rest follows, slowly in the cold. 1 with a cold table or "
                + "resistances of one's own."),
        Fields<Battery>.Optional("exchange-time", Seconds, battery => battery.ExchangeTime,
            (battery, value) => battery with { ExchangeTime = value }, "Time constant at 25 °C with which the rest follows."),
        Fields<Battery>.Optional("exchange-activation-energy",
            new QuantityFormat<MolarEnergy>(MolarEnergy.FromKilojoulesPerMole(0), MolarEnergy.FromKilojoulesPerMole(150),
            "71 kJ/mol"), battery => battery.ExchangeActivationEnergy, (battery, value) =>
            battery with { ExchangeActivationEnergy = value }, "Activation energy of that: how much slower in the cold."),
        Fields<Battery>.Optional("charge-voltage", PartFormat.Volts, battery => battery.ChargeVoltage,
            (battery, value) => battery with { ChargeVoltage = value },
            "Voltage of the pack to which its charger charges it; that of the full cells if left out."),
        Fields<Battery>.OptionalGroup("open-circuit-voltage", new ListFormat<OpenCircuitPoint>(OpenCircuitPoint, 500),
            battery => battery.OpenCircuitVoltage, (battery, value) =>
            battery with { OpenCircuitVoltage = value }, "Open-circuit voltage of one group by charge."));

    private sealed class HeatConductanceFormat : PlainFormat<ThermalConductance>
    {
        public override string Accepted => "0.001 W/K to 1000 W/K, such as \"0.4 W/K\"";

        public override JsonObject Schema() =>
            new() { ["type"] = "string", ["pattern"] = @"^\s*\d+(\.\d*)?([eE][+-]?\d+)?\s*W/K\s*$" };

        public override IEnumerable<(string Path, string Text)> NumericFields(ThermalConductance value, string path) =>
            [(path, Text(value))];

        protected override bool TryParse(string text, out ThermalConductance value) =>
            ThermalConductance.TryParse(WrittenDigits.Plain(text), out value) && value.WattsPerKelvin is >= 0.001 and <= 1000;

        protected override string Text(ThermalConductance value) => value.ToString("R", null);
    }

    private sealed class ChemistryFormat : PlainFormat<string>
    {
        public override string Accepted => string.Join(", ", Words);

        protected override IEnumerable<string> Words => ["nmc", "lfp"];

        public override JsonObject Schema() => new() { ["enum"] = new JsonArray("nmc", "lfp") };

        protected override bool TryParse(string text, [MaybeNullWhen(false)] out string value)
        {
            value = text;
            return Words.Contains(text);
        }

        protected override string Text(string value) => value;
    }
}
