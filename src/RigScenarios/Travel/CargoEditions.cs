using UnitsNet;

namespace RigScenarios.Travel;

/// <summary>What holds for air cargo, edition by edition.</summary>
internal static class CargoEditions
{
    private static readonly Ratio Third = Ratio.FromPercent(30);

    /// <summary>2024.</summary>
    public static readonly CargoRules Of2024 = new()
    {
        Loose = new(965, new(Third, "Loose batteries: at most 30 % of rated capacity.", RuleSources.LooseCargo), null, true,
            new("cargo aircraft only; refused as cargo on passenger aircraft",
                "A fire of loose batteries in a passenger aircraft's hold.", RuleSources.LooseCargo),
            new("at most 10 kg of batteries a package (section IB, batteries up to 100 Wh)", "Small batteries, section IB.",
                RuleSources.Instruction965),
            new(new("IA", null, Mass.FromKilograms(35)), "Section IA: 35 kg a package on cargo aircraft, none on passenger "
                + "aircraft.", RuleSources.Memory("packing instruction 965, section IA"))),
        PackedWithEquipment = new(966, null, null, false,
            new("passenger and cargo aircraft", "Within the limits of the packing instruction.", RuleSources.Package966),
            new("what the equipment needs and two spare sets; at most 5 kg of batteries a package (section II, batteries up "
                + "to 100 Wh)", "Small batteries, section II.", RuleSources.Package966),
            new(new("I", Mass.FromKilograms(5), Mass.FromKilograms(35)), "Section I: what the equipment needs and two spare "
                + "sets; 5 kg of batteries a package on passenger aircraft, 35 kg on cargo aircraft.", RuleSources.Section966)),
        InEquipment = new(967, null, null, false,
            new("passenger and cargo aircraft", "Within the limits of the packing instruction.", RuleSources.Section967), null,
            new(new("I", Mass.FromKilograms(5), Mass.FromKilograms(35)), "Section I: 5 kg of batteries a package on passenger "
                + "aircraft, 35 kg on cargo aircraft.", RuleSources.Section967)),
        SmallBattery = new(Energy.FromWattHours(100),
            "Small, with fewer duties: up to 100 Wh a battery and 20 Wh a cell, with the watt-hours marked on the case. "
                + "Larger ones are fully regulated goods of class 9.", RuleSources.SmallBattery),
        Duties =
        [
            new("A shipper trained in dangerous goods packs, marks and declares. Ask the freight company first; many take no "
                + "lithium batteries.", "Cargo is not done at the counter.", RuleSources.Memory("training of shippers")),
            new("The test summary of UN 38.3 must be at hand; the maker gives it.", "In force since 1 January 2020.",
                RuleSources.TestSummary),
            new("Each battery is protected against short circuit, in an inner package that encloses it, in a strong outer one.",
                "A short circuit starts a fire.", RuleSources.Instruction965),
        ],
    };

    /// <summary>2025: the limit on charge with equipment is advice, and announced.</summary>
    public static readonly CargoRules Of2025 = Of2024 with
    {
        PackedWithEquipment = Of2024.PackedWithEquipment with
        {
            Charge = new(Third, "Batteries packed with equipment: at most 30 % of rated capacity is advice in 2025, and a duty "
                + "from 1 January 2026.", RuleSources.Advice2025),
        },
        InEquipment = Of2024.InEquipment with { Charge = new(Third, InEquipmentAdvice, RuleSources.Advice2025) },
    };

    /// <summary>From 1 January 2026: with equipment it is a duty, in equipment still advice.</summary>
    public static readonly CargoRules Of2026 = Of2025 with
    {
        PackedWithEquipment = Of2024.PackedWithEquipment with
        {
            Charge = new(Third, "Batteries packed with equipment: at most 30 % of rated capacity, since 1 January 2026.",
                RuleSources.Instruction966),
            ChargeFrom = new(Energy.FromWattHours(2.7), "Only batteries above 2.7 Wh.", RuleSources.Instruction966),
            ChargeBinds = true,
        },
        InEquipment = Of2024.InEquipment with { Charge = new(Third, InEquipmentAdvice, RuleSources.Instruction967) },
    };

    private const string InEquipmentAdvice =
        "Batteries in equipment: at most 30 % of rated capacity, or 25 % on the display, is advice and no duty.";
}
