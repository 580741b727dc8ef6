using Quickenshtein;
using UnitsNet;

namespace RigScenarios.Cells;

/// <summary>The cell chemistries that the project knows.</summary>
public static class CellChemistries
{
    private static readonly Sourced<SpecificEntropy> Heat = new(
        SpecificEntropy.FromJoulesPerKilogramKelvin(1000),
        "literature range 800…1100 J/(kg·K) for cells",
        new Citation("H. Steinhardt et al.", "", 2022,
            "J. Power Sources 230829, title only; range from a public summary of published values", Standing.SecondHand));

    private static readonly Sourced<Temperature> Hot = new(
        Temperature.FromDegreesCelsius(60), "usual upper limit of the protection on discharge",
        Citation.CommonPractice("60 °C upper limit on discharge"));

    private static readonly Sourced<double> Rate = new(
        2, "usual limit of a camera pack: twice its capacity in an hour (2C)",
        Citation.CommonPractice("2C limit of a camera pack"));

    private const string NearShareWhy = "set, not fitted (a fit gives 0.57 and nothing better): 0.5 to 0.6";

    private const string ExchangeTimeWhy = "fitted on 23 discharges of one cell, -20…40 °C; alone known to a factor of 2, "
        + "together with its activation energy to 1.17 at -10 °C (406 s) and to 1.04 at -20 °C (1460 s)";

    private const string ExchangeActivationEnergyWhy = "fitted together with the exchange time; known to 10 kJ/mol";

    private const string BorrowedCold = "BORROWED from an NMC cell: no LFP data was found; treat cold LFP results as rough";

    private static readonly Sourced<double> OneWell = new(
        1, "a cold table or resistances of its own say what the cold does as a whole: all of the charge can be had at once, and "
            + "what goes with it are the values fitted so",
        Citation.CommonPractice("one well where the cold was measured without a second"));

    private static readonly Sourced<double> LfpResistance = new(
        Moeller2022.ResistanceOhmAmpereHours, "47.8 mΩ at 25 °C of a 3 Ah cell; whether pulse or sustained is not said",
        Moeller2022.Source);

    private static readonly Sourced<MolarEnergy> LfpActivationEnergy = new(
        Moeller2022.ActivationEnergy, "10…25 °C only; below that extrapolated",
        Moeller2022.Source with { Standing = Standing.Computed });

    /// <summary>Nickel-manganese-cobalt oxide on graphite: what most camera packs hold.</summary>
    public static CellChemistry Nmc { get; } = new()
    {
        Name = "nmc",
        Description = "nickel-manganese-cobalt oxide on graphite, 3.6 V a group",
        NominalVoltage = new(ElectricPotential.FromVolts(3.6), "labels count 3.6 V a group",
            Citation.CommonPractice("3.6 V nominal a group")),
        CutoffVoltage = new(ElectricPotential.FromVolts(2.8), "the measured discharges that the cold values rest on end there",
            Kollmeyer2020.Source),
        OpenCircuitVoltage = new(Chen2020.OpenCircuitVoltage, "electrode functions of a 5 Ah NMC811 cell, window 2.5…4.2 V",
            Chen2020.Source),
        UsableCapacity = new(Kollmeyer2020.UsableCapacity,
            "what a slow discharge gives, fitted on 23 discharges of one 3 Ah cell, -20…40 °C; known to 0.007",
            Kollmeyer2020.Source),
        SustainedResistanceOhmAmpereHours = new(Kollmeyer2020.SustainedResistanceOhmAmpereHours,
            "fitted on 23 discharges of one cell, -20…40 °C; known to 10 %", Kollmeyer2020.Source),
        ResistanceSplit = new(Kollmeyer2020.ResistanceSplit,
            "pulse fit (instant and 20 s); the rest of the sustained value with 600 s, an order of magnitude",
            Kollmeyer2020.Source),
        ActivationEnergy = new(Kollmeyer2020.ActivationEnergy, "sustained resistance, the same fit; known to 2.5 kJ/mol",
            Kollmeyer2020.Source),
        ResistanceFloor = new(Kollmeyer2020.ResistanceFloor, "resistance falls by only 13 % from 25 to 40 °C",
            Kollmeyer2020.Source),
        NearShare = new(Kollmeyer2020.NearShare, NearShareWhy, Kollmeyer2020.Source),
        ExchangeTime = new(Kollmeyer2020.ExchangeTime, ExchangeTimeWhy, Kollmeyer2020.Source),
        ExchangeActivationEnergy = new(Kollmeyer2020.ExchangeActivationEnergy, ExchangeActivationEnergyWhy, Kollmeyer2020.Source),
        ValuesOfOneWell = new(
            OneWell,
            new(Kollmeyer2020.UsableCapacityOfOneWell, "fitted on the C/2 discharges of one 3 Ah cell, -20…25 °C",
                Kollmeyer2020.Source),
            new(Kollmeyer2020.SustainedResistanceOhmAmpereHoursOfOneWell, "0.115 (1C) to 0.128 Ω·Ah (C/2) at 25 °C, one cell",
                Kollmeyer2020.Source),
            new(Kollmeyer2020.ActivationEnergyOfOneWell, "sustained resistance, -20…25 °C: 23.7 to 25.9 kJ/mol",
                Kollmeyer2020.Source)),
        GrowthPerLoss = new(
            1.7, "right at 80 % of the capacity (5 to 95 % of lives: 1.55 to 2.1) and up to 0.06 high before; other cells grow "
                + "faster",
            new Citation("J. Schmalstieg et al.", "A holistic aging model for Li(NiMnCo)O2 based 18650 lithium-ion batteries",
                2014, "J. Power Sources 257, 325-334: its fits of capacity and resistance over 4000 random lives",
                Standing.Computed)),
        SpecificHeat = Heat,
        SpecificEnergy = new(SpecificEnergy.FromWattHoursPerKilogram(140),
            "about 220 Wh/kg for the cells alone, a third of the pack's mass is case and board",
            Citation.CommonPractice("140 Wh/kg for a camera pack")),
        MaximumTemperature = Hot,
        MaximumRatePerHour = Rate,
    };

    /// <summary>Lithium iron phosphate on graphite: heavier, flatter in voltage.</summary>
    public static CellChemistry Lfp { get; } = new()
    {
        Name = "lfp",
        Description = "lithium iron phosphate on graphite, 3.2 V a group",
        NominalVoltage = new(ElectricPotential.FromVolts(3.2), "labels count 3.2 V a group",
            Citation.CommonPractice("3.2 V nominal a group")),
        CutoffVoltage = new(ElectricPotential.FromVolts(2.5), "usual end of discharge of LFP packs; cells allow 2.0 V",
            Citation.CommonPractice("2.5 V end of discharge a group")),
        OpenCircuitVoltage = new(Moeller2022.OpenCircuitVoltage, "measured on a 3 Ah 26650 cell", Moeller2022.Source),
        ChargeVoltage = new(ElectricPotential.FromVolts(3.65),
            "charged to 3.65 V; at rest a full group falls to the 3.53 V of the table and below",
            new Citation("", "Specification of a cylindrical LFP cell 26650 of 3.3 Ah: charge voltage 3.65 V recommended", null,
                "1library.net, lithium ion battery specifications", Standing.ReadInSource)),
        UsableCapacity = new(Kollmeyer2020.UsableCapacity, BorrowedCold, Kollmeyer2020.Source),
        SustainedResistanceOhmAmpereHours = LfpResistance,
        ResistanceSplit = new(Kollmeyer2020.ResistanceSplit, "BORROWED from an NMC cell: no LFP data was found",
            Kollmeyer2020.Source),
        ActivationEnergy = LfpActivationEnergy,
        ResistanceFloor = new(Moeller2022.ResistanceFloor, "38.4 mΩ at 40 °C over 47.8 mΩ at 25 °C",
            Moeller2022.Source with { Standing = Standing.Computed }),
        NearShare = new(Kollmeyer2020.NearShare, $"{BorrowedCold}; there {NearShareWhy}", Kollmeyer2020.Source),
        ExchangeTime = new(Kollmeyer2020.ExchangeTime, $"{BorrowedCold}; there {ExchangeTimeWhy}", Kollmeyer2020.Source),
        ExchangeActivationEnergy = new(Kollmeyer2020.ExchangeActivationEnergy,
            $"{BorrowedCold}; there {ExchangeActivationEnergyWhy}", Kollmeyer2020.Source),
        ValuesOfOneWell = new(
            OneWell, new(Kollmeyer2020.UsableCapacityOfOneWell, BorrowedCold, Kollmeyer2020.Source), LfpResistance,
            LfpActivationEnergy),
        GrowthPerLoss = new(
            1.0, "right at 80 % of the capacity (5 to 95 % of lives: 0.3 to 2.15) and up to 0.06 high before",
            new Citation("M. Naumann et al.", "", 2020, "J. Energy Storage 17 (2018) 153-169 and J. Power Sources 451, 227666: "
                + "their fits of capacity and resistance over 4000 random lives", Standing.Computed)),
        SpecificHeat = Heat,
        SpecificEnergy = new(SpecificEnergy.FromWattHoursPerKilogram(90), "usual for small LFP packs",
            Citation.CommonPractice("90 Wh/kg for an LFP pack")),
        MaximumTemperature = Hot,
        MaximumRatePerHour = Rate,
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<CellChemistry> All { get; } = [Nmc, Lfp];

    /// <summary>Finds a chemistry by its name, in capital letters or small.</summary>
    /// <exception cref="ArgumentException">No chemistry has the name; the message gives the nearest name and all of
    /// them.</exception>
    public static CellChemistry Find(string name) =>
        TryFind(name, out var chemistry) ? chemistry : throw new ArgumentException(
            $"'{name}' is no known cell chemistry; did you mean '{Nearest(name)}'? Accepted: "
                + $"{string.Join(", ", All.Select(one => one.Name))}.", nameof(name));

    /// <summary>Finds a chemistry by its name, in capital letters or small; false if none has it.</summary>
    public static bool TryFind(string? name, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out CellChemistry? chemistry)
    {
        chemistry = All.FirstOrDefault(one => string.Equals(one.Name, name?.Trim(), StringComparison.OrdinalIgnoreCase));
        return chemistry is not null;
    }

    private static string Nearest(string name) =>
        All.MinBy(one => Levenshtein.GetDistance(one.Name, (name ?? "").Trim().ToLowerInvariant()))!.Name;
}
