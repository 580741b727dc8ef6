using System.Globalization;
using UnitsNet;

namespace RigScenarios.Travel;

/// <summary>
/// The editions of the transport rules that are held, side by side, so that a journey's date picks the one in force then. They
/// follow the
/// international rules for air transport; states and airlines may be stricter.
/// </summary>
public static class RuleEditions
{
    private static readonly PassengerRules Passengers2024 = new()
    {
        WithoutApproval = new(Energy.FromWattHours(100), "No approval is needed up to and including 100 Wh.",
            RuleSources.PassengerPage),
        WithApproval = new(Energy.FromWattHours(160),
            "Above 100 Wh, up to and including 160 Wh, the airline must approve. Above 160 Wh no battery travels as baggage, "
                + "spare or installed.", RuleSources.PassengerPage),
        SmallSpares = new(20, "Up to 20 spare batteries a person, unless the airline agrees to more. The United States set no "
            + "number for personal use.", RuleSources.SpareCount),
        LargeSpares = new(2, "Up to two spare batteries above 100 Wh a person, with the airline's approval.",
            RuleSources.PassengerPage),
        Devices = new(15, "Up to 15 devices with a battery a person, unless the airline agrees to more. Phone, laptop and "
            + "camera count too.", RuleSources.Handbook),
        Contacts = new("The contacts of each spare battery are covered: original packaging, tape, or a bag or pouch for each.",
            "A short circuit starts a fire.", RuleSources.PassengerCode),
        SparesPlace = new("Spare batteries travel in the cabin only.", "A fire in the cabin is seen.", RuleSources.PassengerPage),
        DevicesPlace = new("A battery in its device travels best in the cabin; in the hold the device is fully off and "
            + "protected from being switched on.", "A fire in the cabin is seen.", RuleSources.PassengerPage),
        Conduct =
        [
            new("If your cabin bag is taken from you at the gate, take the spare batteries out and keep them with you.",
                "They would end up in the hold.", RuleSources.PassengerPage),
            new("Damaged, swollen or recalled batteries stay at home.", "They may burn without a cause from outside.",
                RuleSources.Damaged),
            new("For personal use only: batteries for sale, or a hire company's shipment, are cargo and not baggage.",
                "The exception is for passengers and crew.", RuleSources.PassengerPage),
            new("Each battery is of a type that passed the tests of UN 38.3. Its maker tells you.",
                "A condition for all of the above.", RuleSources.PassengerCode),
            new("A battery whose main purpose is to power other devices counts as a spare one.", "Power banks.",
                RuleSources.PassengerCode),
        ],
    };

    private static readonly CargoRules Cargo2024 = new()
    {
        Loose = new(965,
            new(Ratio.FromPercent(30), "Loose batteries: at most 30 % of rated capacity.", RuleSources.LooseCargo), null, true,
            new("cargo aircraft only; refused as cargo on passenger aircraft",
                "A fire of loose batteries in a passenger aircraft's hold.", RuleSources.LooseCargo),
            new("at most 10 kg of batteries a package (section IB, batteries up to 100 Wh)", "Small batteries, section IB.",
                RuleSources.Instruction965)),
        PackedWithEquipment = new(966, null, null, false,
            new("passenger and cargo aircraft", "Within the limits of the packing instruction.", RuleSources.Package966),
            new("what the equipment needs and two spare sets; at most 5 kg of batteries a package (section II, batteries up "
                + "to 100 Wh)", "Small batteries, section II.", RuleSources.Package966)),
        InEquipment = new(967, null, null, false,
            new("passenger and cargo aircraft", "Within the limits of the packing instruction.",
                RuleSources.Memory("packing instruction 967"))),
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

    private static readonly PassengerRules Passengers2026 = Passengers2024 with
    {
        SmallSpares = Passengers2024.SmallSpares with { Source = RuleSources.Edition67 },
        LargeSpares = Passengers2024.LargeSpares with { Source = RuleSources.Edition67 },
    };

    private static readonly CargoRules Cargo2026 = Cargo2024 with
    {
        PackedWithEquipment = Cargo2024.PackedWithEquipment with
        {
            Charge = new(Ratio.FromPercent(30),
                "Batteries packed with equipment: at most 30 % of rated capacity, since 1 January 2026.",
                RuleSources.Instruction966),
            ChargeFrom = new(Energy.FromWattHours(2.7), "Only batteries above 2.7 Wh.", RuleSources.Instruction966),
            ChargeBinds = true,
        },
        InEquipment = Cargo2024.InEquipment with
        {
            Charge = new(Ratio.FromPercent(30),
                "Batteries in equipment: at most 30 % of rated capacity, or 25 % on the display, is advice and no duty.",
                RuleSources.Instruction967),
        },
    };

    private static readonly PassengerRules PassengersAddendum = Passengers2026 with
    {
        PowerBanks = new(2, "Up to two power banks a person, counted apart from spare batteries. Limits in Wh as for spare "
            + "batteries (that part from memory); one above 100 Wh is counted here among both.", RuleSources.Addendum),
        Conduct =
        [
            .. Passengers2026.Conduct.SkipLast(1),
            new("Power banks: cabin only, contacts covered, not charged on board, and better not used to charge anything there.",
                "Fires in the cabin.", RuleSources.Addendum),
            new("A brick with power outlets may be taken for a power bank by some airlines. Ask yours.",
                "No text that was read decides it.", RuleSources.Memory("how airlines see bricks with outlets")),
        ],
    };

    /// <summary>The editions, oldest first, without a gap between them.</summary>
    public static IReadOnlyList<TransportRules> All { get; } =
    [
        new("International air rules of 2024 and 2025", new(2024, 1, 1), new(2025, 12, 31),
            "Power banks count as spare batteries.", Passengers2024, Cargo2024),
        new("International air rules from 1 January 2026", new(2026, 1, 1), new(2026, 3, 26),
            "Batteries packed with equipment fly as cargo with at most 30 % charge.", Passengers2026, Cargo2026),
        new("International air rules of 2026 with the addendum of 27 March 2026", new(2026, 3, 27), new(2026, 12, 31),
            "Power banks: at most two a person, not charged on board.", PassengersAddendum, Cargo2026),
    ];

    /// <summary>The edition for a day; for a day outside of all editions the nearest one, with a warning.</summary>
    public static RulesInForce On(DateOnly date)
    {
        if (All.FirstOrDefault(edition => edition.From <= date && date <= edition.Until) is { } found)
            return new RulesInForce(found, null);
        return date < All[0].From
            ? new RulesInForce(All[0],
                $"NO RULES ARE HELD FOR {Day(date).ToUpperInvariant()}. The oldest edition here begins on {Day(All[0].From)}. "
                    + "What follows uses that one and may be wrong for this date.")
            : new RulesInForce(All[^1],
                $"NO RULES ARE HELD FOR {Day(date).ToUpperInvariant()}. The newest edition here ends on {Day(All[^1].Until)}. "
                    + "What follows uses that one: the rules have probably changed since. Get the new ones from the airline.");
    }

    /// <summary>A day in words: "3 December 2026".</summary>
    internal static string Day(DateOnly date) => date.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
}
