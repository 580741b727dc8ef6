using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Drafts;

/// <summary>Mass and price of a rig's things together.</summary>
/// <param name="Mass">Mass of all things whose mass is known or assumed.</param>
/// <param name="WithoutMass">The things, by name, whose mass is not known.</param>
/// <param name="Buy">The price to buy, one amount a currency.</param>
/// <param name="RentPerDay">The price to rent for a day, one amount a currency.</param>
/// <param name="WithoutPrice">The things, by name, that have neither price.</param>
public sealed record RigTotals(Mass Mass, IReadOnlyList<string> WithoutMass, IReadOnlyList<Money> Buy, IReadOnlyList<Money> RentPerDay, IReadOnlyList<string> WithoutPrice)
{
    internal static RigTotals Of(DraftRig rig) => new(
        Mass.FromKilograms(rig.Things.Sum(thing => (thing.Part.Mass?.Kilograms ?? 0) * thing.Thing.Count)),
        [.. rig.Things.Where(thing => thing.Part.Mass is null).Select(thing => thing.Part.Name)],
        Sum(rig, part => part.Buy),
        Sum(rig, part => part.RentPerDay),
        [.. rig.Things.Where(thing => thing.Part.Buy is null && thing.Part.RentPerDay is null).Select(thing => thing.Part.Name)]);

    private static IReadOnlyList<Money> Sum(DraftRig rig, Func<Part, Money?> price) =>
    [
        .. from thing in rig.Things
           let money = price(thing.Part)
           where money is not null
           group money.Value.Amount * thing.Thing.Count by money.Value.Currency into amounts
           select new Money(amounts.Sum(), amounts.Key),
    ];
}
