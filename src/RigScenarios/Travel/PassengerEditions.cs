using UnitsNet;

namespace RigScenarios.Travel;

/// <summary>What passengers and crew may carry, edition by edition.</summary>
internal static class PassengerEditions
{
    /// <summary>2024 and 2025.</summary>
    public static readonly PassengerRules Of2024 = new()
    {
        WithoutApproval = new(Energy.FromWattHours(100), "No approval is needed up to and including 100 Wh.",
            RuleSources.PassengerPage),
        WithApproval = new(Energy.FromWattHours(160),
            "Above 100 Wh, up to and including 160 Wh, the airline must approve. Above 160 Wh no battery travels as baggage, "
                + "spare or installed.", RuleSources.PassengerPage),
        Spares = new(20, "Up to 20 spare batteries a person of any kind together, unless the airline agrees to more: lithium "
            + "ones of every size, power banks, AA and other dry cells, NiMH cells. The United States set no number for "
                + "personal use.", RuleSources.AnyKind),
        LargeSpares = new(2, "Up to two of the spare batteries above 100 Wh a person, with the airline's approval.",
            RuleSources.PassengerPage),
        Devices = new(15, "Up to 15 devices with a battery a person, unless the airline agrees to more. Phone, laptop and "
            + "camera count too.", RuleSources.Handbook),
        Contacts = new("The contacts of each spare battery are covered: original packaging, tape, or a bag or pouch for each.",
            "A short circuit starts a fire.", RuleSources.PassengerCode),
        SparesPlace = new("Spare batteries travel in the cabin only.", "A fire in the cabin is seen.", RuleSources.PassengerPage),
        DevicesPlace = new("in its device, best in the cabin; in the hold only fully off (not in standby), protected from being "
            + "switched on and from damage", "A fire in the cabin is seen.", RuleSources.DevicesInHold),
        Outlets = new("A battery with power outlets may count as a power bank. One large airline writes (translated): \"whatever "
            + "its name, if its main function is to give portable power, it will be subject to these rules\", which are one a "
                + "person, up to 100 Wh. Ask yours, with the battery's data sheet.",
            "What mainly powers other devices is a spare battery everywhere; what is a power bank, airlines say.",
            RuleSources.MainFunction),
        Conduct =
        [
            new("If your cabin bag is taken from you at the gate, take the spare batteries out and keep them with you.",
                "They would end up in the hold.", RuleSources.PassengerPage),
            new("Damaged, swollen or recalled batteries stay at home.", "They may burn without a cause from outside.",
                RuleSources.Damaged),
            new("A crew's work with its own devices counts as personal use in the United States (letter 23-0051); elsewhere ask. "
                + "Batteries for sale, or a hire company's shipment, are cargo and not baggage.",
                "The exception is for passengers and crew; the letter is about timekeepers at sporting events.",
                RuleSources.PersonalUse),
            new("Each battery is of a type that passed the tests of UN 38.3. Its maker tells you.",
                "A condition for all of the above.", RuleSources.PassengerCode),
            new("A battery whose main purpose is to power other devices counts as a spare one.", "Power banks.",
                RuleSources.MainPurpose),
        ],
    };

    /// <summary>From 1 January 2026.</summary>
    public static readonly PassengerRules Of2026 = Of2024 with
    {
        LargeSpares = Of2024.LargeSpares with { Source = RuleSources.Edition67 },
    };

    /// <summary>From 27 March 2026.</summary>
    public static readonly PassengerRules OfAddendum = Of2026 with
    {
        PowerBanks = new(2, "Up to two power banks a person. Limits in Wh as for spare batteries (that part from memory). Here "
            + "they count among the 20 spare ones, as one authority's page has it, and one above 100 Wh among the large ones.",
            RuleSources.Addendum),
        Conduct =
        [
            .. Of2026.Conduct.SkipLast(1),
            new("Power banks: cabin only, contacts covered, not charged on board, and better not used to charge anything there.",
                "Fires in the cabin.", RuleSources.Addendum),
            new("Several airlines and states are stricter with power banks: within reach and not in the overhead locker, not "
                + "used at all, fewer a person. Flights inside China take only those with a readable CCC mark.",
                "Fires in the cabin; the mark since 28 June 2025.", RuleSources.StricterStates),
        ],
    };
}
