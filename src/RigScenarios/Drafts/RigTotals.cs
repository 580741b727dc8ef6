using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Drafts;

/// <summary>Mass and price of a rig's things and power cables together.</summary>
/// <param name="Mass">Mass of all whose mass is known or assumed.</param>
/// <param name="WithoutMass">The things, by name, whose mass is not known.</param>
/// <param name="Buy">The price to buy, one amount a currency.</param>
/// <param name="RentPerDay">The price to rent for a day, one amount a currency.</param>
/// <param name="WithoutPrice">The things, by name, that have neither price.</param>
public sealed record RigTotals(Mass Mass,
    IReadOnlyList<string> WithoutMass, IReadOnlyList<Money> Buy, IReadOnlyList<Money> RentPerDay,
    IReadOnlyList<string> WithoutPrice)
{
    internal static RigTotals Of(DraftRig rig)
    {
        var all = Counted(rig).ToList();
        return new RigTotals(
            Mass.FromKilograms(all.Sum(item => (item.Part.Mass?.Kilograms ?? 0) * item.Count)),
            [.. all.Where(item => item.Part.Mass is null).Select(item => item.Part.Name)],
            Sum(all, part => part.Buy),
            Sum(all, part => part.RentPerDay),
            [.. all.Where(item => item.Part.Buy is null && item.Part.RentPerDay is null).Select(item => item.Part.Name)]);
    }

    // A cable that is also named among the carried things is counted there.
    private static IEnumerable<(Part Part, int Count)> Counted(DraftRig rig) =>
        rig.Things.Select(thing => (thing.Part, thing.Thing.Count))
            .Concat(rig.Cables.All.Where(cable => rig.Find(cable.Name) is null)
                .Select(cable => (cable.Part, rig.Cables.CountOf(cable.Name))));

    private static IReadOnlyList<Money> Sum(List<(Part Part, int Count)> all, Func<Part, Money?> price) =>
    [
        .. from item in all
           let money = price(item.Part)
           where money is not null
           group money.Value.Amount * item.Count by money.Value.Currency into amounts
           select new Money(amounts.Sum(), amounts.Key),
    ];
}
