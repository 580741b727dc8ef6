using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>Makes the pack of the discharge model from what a battery's label and data sheet say.</summary>
public static class PackModel
{
    // Heat transfer from the case to still air, convection and radiation together.
    private const double CaseWattsPerSquareMetreKelvin = 10;

    // Mean density of a pack and proportions of its box, for a battery whose size is not known.
    private const double PackKilogramsPerCubicMetre = 1100;

    private static readonly Citation CaseSource = new(
        "", "default heat-transfer coefficients of two public battery simulators", null,
        "10 and 15 W/(m²·K), read in their code; the lower one for a case in still air", Standing.ReadInSource);

    /// <summary>Makes the pack; what the battery's data leave open is assumed and listed.</summary>
    /// <param name="battery">Label and data sheet.</param>
    /// <param name="mass">Mass of the battery; estimated from its energy if null.</param>
    /// <param name="size">Outer size of the battery; estimated from its mass if null.</param>
    /// <param name="age">How far it has aged; as new if null.</param>
    /// <exception cref="ArgumentException">A value lies outside its range, or the chemistry is not known; the message names
    /// it.</exception>
    public static PackAssumptions From(Battery battery, Mass? mass, BoxSize? size, Age? age) =>
        From(battery, mass, size, age?.CapacityLeft, age?.ResistanceFactor);

    /// <summary>Makes the pack of a battery of which part of its age may be known; the rest is assumed and listed.</summary>
    /// <param name="battery">Label and data sheet.</param>
    /// <param name="mass">Mass of the battery; estimated from its energy if null.</param>
    /// <param name="size">Outer size of the battery; estimated from its mass if null.</param>
    /// <param name="capacityLeft">Part of the new capacity that is left, above 0, up to 1.5; as new if null.</param>
    /// <param name="resistanceFactor">Resistance over that of the new battery, above 0; by the rule of <see cref="Wear"/> if
    /// null and the capacity is known.</param>
    /// <exception cref="ArgumentException">A value lies outside its range, or the chemistry is not known; the message names
    /// it.</exception>
    public static PackAssumptions From(
        Battery battery, Mass? mass, BoxSize? size, Ratio? capacityLeft, double? resistanceFactor)
    {
        ArgumentNullException.ThrowIfNull(battery);
        return Of(battery, mass, size, new KnownAge(battery.Chemistry, null, capacityLeft, resistanceFactor));
    }

    /// <summary>Makes the pack of a battery of whose age something may be known; the rest is assumed and listed.</summary>
    /// <param name="battery">Label and data sheet.</param>
    /// <param name="mass">Mass of the battery; estimated from its energy if null.</param>
    /// <param name="size">Outer size of the battery; estimated from its mass if null.</param>
    /// <param name="known">What is known of its age.</param>
    /// <exception cref="ArgumentException">A value lies outside its range, or the chemistry is not known; the message names
    /// it.</exception>
    public static PackAssumptions Of(Battery battery, Mass? mass, BoxSize? size, KnownAge known)
    {
        ArgumentNullException.ThrowIfNull(battery);
        ArgumentNullException.ThrowIfNull(known);
        Require.Positive(battery.Energy.WattHours, "Wh", nameof(battery.Energy));
        Require.Positive(battery.Voltage.Volts, "V", nameof(battery.Voltage));
        var log = new AssumptionLog();

        var chemistry = log.Chemistry(battery.Chemistry);
        var groups = battery.SeriesGroups ?? log.Add(
            "series-groups", "groups in series", Groups(battery.Voltage, chemistry), n => $"{n}",
            $"label voltage over {AssumedText.Volts(chemistry.NominalVoltage.Value)} a group, nearest whole number",
            chemistry.NominalVoltage.Source);
        var capacity = battery.Capacity ?? log.Add(
            "capacity", "capacity", ElectricCharge.FromAmpereHours(battery.Energy.WattHours / battery.Voltage.Volts),
            AssumedText.AmpereHours,
            "label energy over label voltage", new Citation("", "definition of the label's energy", null, "",
                Standing.CommonPractice));
        var cold = ColdSet(battery, chemistry);
        var product = cold.SustainedResistanceOhmAmpereHours;
        var hasFarWell = (battery.NearShare ?? cold.NearShare.Value) < 1;
        var split = cold.ResistanceSplit;
        var sustained = product.Value / capacity.AmpereHours;
        var resistanceWhy = $"{product.Value:G3} Ω·Ah over the capacity, share of {{0:P0}}: {product.Why}; {split.Why}";

        var pack = new Pack
        {
            SeriesGroups = groups,
            Capacity = capacity,
            OpenCircuitVoltage = battery.OpenCircuitVoltage is { } openCircuit
                ? new OpenCircuitVoltage(openCircuit)
                : log.Add("open-circuit-voltage", "open-circuit voltage of a group", chemistry.OpenCircuitVoltage,
                    AssumedText.Range),
            // A table of the file's own ends where its cells are full; nobody says more of them.
            ChargeVoltage = battery.ChargeVoltage / groups ?? (battery.OpenCircuitVoltage is null
                && chemistry.ChargeVoltage is { } full ? log.Add("charge-voltage", "voltage on a charger",
                    groups * full.Value, AssumedText.Volts, full.Why, full.Source) / groups : null),
            Resistance0 = battery.Resistance0 ?? log.Add(
                "resistance-0", "resistance of a group, at once", ElectricResistance.FromOhms(sustained * split.Value.Share0),
                AssumedText.Milliohms,
                string.Format(null, resistanceWhy, split.Value.Share0), product.Source),
            Resistance1 = battery.Resistance1 ?? log.Add(
                "resistance-1", "resistance of a group, within seconds",
                ElectricResistance.FromOhms(sustained * split.Value.Share1), AssumedText.Milliohms,
                string.Format(null, resistanceWhy, split.Value.Share1), product.Source),
            Resistance2 = battery.Resistance2 ?? log.Add(
                "resistance-2", "resistance of a group, within minutes",
                ElectricResistance.FromOhms(sustained * split.Value.Share2), AssumedText.Milliohms,
                string.Format(null, resistanceWhy, split.Value.Share2), product.Source),
            TimeConstant1 = battery.TimeConstant1 ?? log.Add("time-constant-1", "first time constant", split.Value.TimeConstant1,
                AssumedText.Seconds, split.Why, split.Source),
            TimeConstant2 = battery.TimeConstant2 ?? log.Add("time-constant-2", "second time constant", split.Value.TimeConstant2,
                AssumedText.Seconds, split.Why, split.Source),
            LeadResistance = battery.LeadResistance ?? log.Add(
                "lead-resistance", "leads, protection switch and contacts", ElectricResistance.FromMilliohms(20),
                AssumedText.Milliohms,
                "usual for a camera pack with its plate contacts",
                Citation.CommonPractice("20 mΩ for leads, switch and contacts")),
            ActivationEnergy = battery.ActivationEnergy ?? log.Add("activation-energy", "growth of resistance in the cold",
                cold.ActivationEnergy, AssumedText.KilojoulesPerMole),
            ResistanceFloor = battery.ResistanceFloor
                ?? log.Add("resistance-floor", "least resistance factor in the warm", chemistry.ResistanceFloor, x => $"{x:G3}"),
            UsableCapacity = battery.UsableCapacity is { } table
                ? new UsableCapacity(table)
                : log.Add("usable-capacity", "usable capacity in the cold", cold.UsableCapacity, AssumedText.Range),
            NearShare = battery.NearShare ?? log.Add("near-share", "share of the charge that the terminals see", cold.NearShare,
                AssumedText.Number, cold.NearShare.Value < 1 ? new("0.5", "0.6") : null),
            ExchangeTime = battery.ExchangeTime ?? (hasFarWell ? log.Add("exchange-time", "time in which the rest of it follows",
                cold.ExchangeTime, AssumedText.Seconds, new("7.7 s", "10.5 s")) : cold.ExchangeTime.Value),
            ExchangeActivationEnergy = battery.ExchangeActivationEnergy ?? (hasFarWell ? log.Add("exchange-activation-energy",
                "how much slower the rest follows in the cold", cold.ExchangeActivationEnergy, AssumedText.KilojoulesPerMole,
                new("68 kJ/mol", "74 kJ/mol")) : cold.ExchangeActivationEnergy.Value),
            HeatCapacity = battery.HeatCapacity ?? HeatCapacity(battery, mass, chemistry, log),
            HeatConductance = battery.HeatConductance ?? HeatConductance(battery, mass, size, chemistry, log),
            CutoffVoltage = battery.CutoffVoltage ?? log.Add(
                "cutoff-voltage", "cut-off voltage", groups * chemistry.CutoffVoltage.Value, AssumedText.Volts,
                $"{AssumedText.Volts(chemistry.CutoffVoltage.Value)} a group: {chemistry.CutoffVoltage.Why}",
                chemistry.CutoffVoltage.Source),
            MaximumCurrent = battery.MaximumCurrent ?? log.Add(
                "maximum-current", "largest current",
                ElectricCurrent.FromAmperes(chemistry.MaximumRatePerHour.Value * capacity.AmpereHours), AssumedText.Amperes,
                chemistry.MaximumRatePerHour.Why, chemistry.MaximumRatePerHour.Source),
            MaximumTemperature = battery.MaximumTemperature
                ?? log.Add("maximum-temperature", "hottest temperature", chemistry.MaximumTemperature, AssumedText.Celsius),
            Age = log.Age(known, chemistry),
        };
        return new PackAssumptions(pack, log.Values);
    }

    // The values for two wells and those for one must not be mixed: who gives a cold table or resistances gives what the cold
    // does as a whole, unless they say that there are two wells.
    private static CellChemistry ColdSet(Battery battery, CellChemistry chemistry)
    {
        if (battery.NearShare is { } share)
            return share < 1 ? chemistry : chemistry.OneWell;
        var saysExchange = battery.ExchangeTime is not null || battery.ExchangeActivationEnergy is not null;
        var givesCold = battery.UsableCapacity is not null
            || (battery.Resistance0 ?? battery.Resistance1 ?? battery.Resistance2) is not null;
        return givesCold && !saysExchange ? chemistry.OneWell : chemistry;
    }

    private static int Groups(ElectricPotential voltage, CellChemistry chemistry) =>
        Math.Max(1, (int)Math.Round(voltage.Volts / chemistry.NominalVoltage.Value.Volts, MidpointRounding.AwayFromZero));

    private static Mass MassOf(Battery battery, Mass? mass, CellChemistry chemistry)
    {
        if (mass is not { } known)
            return Mass.FromKilograms(battery.Energy.WattHours / chemistry.SpecificEnergy.Value.WattHoursPerKilogram);
        Require.Positive(known.Kilograms, "kg", nameof(mass));
        return known;
    }

    private static Entropy HeatCapacity(Battery battery, Mass? mass, CellChemistry chemistry, AssumptionLog log)
    {
        var weight = MassOf(battery, mass, chemistry);
        var why = $"{chemistry.SpecificHeat.Value.JoulesPerKilogramKelvin:G4} J/(kg·K) × {AssumedText.Kilograms(weight)}" +
            (mass is null ? $" (mass unknown: from {chemistry.SpecificEnergy.Value.WattHoursPerKilogram:G3} Wh/kg, "
                + $"{chemistry.SpecificEnergy.Why})" : "") +
            $"; {chemistry.SpecificHeat.Why}";
        return log.Add(
            "heat-capacity", "heat capacity",
            Entropy.FromJoulesPerKelvin(chemistry.SpecificHeat.Value.JoulesPerKilogramKelvin * weight.Kilograms),
            value => $"{value.JoulesPerKelvin:G4} J/K", why, chemistry.SpecificHeat.Source);
    }

    private static ThermalConductance HeatConductance(Battery battery, Mass? mass, BoxSize? size, CellChemistry chemistry,
        AssumptionLog log)
    {
        double squareMetres;
        string from;
        if (size is not null)
        {
            var (x, y, z) = (size.Length.Meters, size.Width.Meters, size.Height.Meters);
            Require.Positive(x, "m", nameof(size.Length));
            Require.Positive(y, "m", nameof(size.Width));
            Require.Positive(z, "m", nameof(size.Height));
            squareMetres = 2 * ((x * y) + (y * z) + (z * x));
            from = "the surface of its box";
        }
        else
        {
            // A brick of proportions 3:2:1 with edge a has volume 6a³ and surface 22a².
            var edge = Math.Cbrt(MassOf(battery, mass, chemistry).Kilograms / PackKilogramsPerCubicMetre / 6);
            squareMetres = 22 * edge * edge;
            from = $"a surface of {squareMetres * 1e4:G3} cm² (size unknown: a brick of 3:2:1 with "
                + $"{PackKilogramsPerCubicMetre:G4} kg/m³, common practice, no source)";
        }

        return log.Add(
            "heat-conductance", "heat conductance to the air",
            ThermalConductance.FromWattsPerKelvin(CaseWattsPerSquareMetreKelvin * squareMetres),
            value => value.ToString("G3", null), $"{CaseWattsPerSquareMetreKelvin:G3} W/(m²·K) on {from}, in still air; wind "
                + "and a wrapped pack differ", CaseSource);
    }
}
