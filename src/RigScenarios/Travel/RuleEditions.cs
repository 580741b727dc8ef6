using System.Globalization;

namespace RigScenarios.Travel;

/// <summary>
/// The editions of the transport rules that are held, side by side, so that a journey's date picks the one in force then. They
/// follow the
/// international rules for air transport; states and airlines may be stricter.
/// </summary>
public static class RuleEditions
{
    /// <summary>The editions, oldest first, without a gap between them.</summary>
    public static IReadOnlyList<TransportRules> All { get; } =
    [
        new("International air rules of 2024", new(2024, 1, 1), new(2024, 12, 31),
            "Power banks count as spare batteries.", PassengerEditions.Of2024, CargoEditions.Of2024, RoadRules.Held),
        new("International air rules of 2025", new(2025, 1, 1), new(2025, 12, 31),
            "Batteries with equipment: at most 30 % charge as cargo is advice.", PassengerEditions.Of2024, CargoEditions.Of2025,
            RoadRules.Held),
        new("International air rules from 1 January 2026", new(2026, 1, 1), new(2026, 3, 26),
            "Batteries packed with equipment fly as cargo with at most 30 % charge.", PassengerEditions.Of2026,
            CargoEditions.Of2026, RoadRules.Held),
        new("International air rules of 2026 with the addendum of 27 March 2026", new(2026, 3, 27), new(2026, 12, 31),
            "Power banks: at most two a person, not charged on board.", PassengerEditions.OfAddendum, CargoEditions.Of2026,
            RoadRules.Held),
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
