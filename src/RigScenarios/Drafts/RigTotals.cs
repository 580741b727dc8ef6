using RigScenarios.Builds;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
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
    internal static RigTotals Of(Scenario scenario, Build build)
    {
        var all = Counted(build).Select(item => (Part: scenario.PartOf(item.Name), item.Count))
            .Where(item => item.Part is not null).Select(item => (Part: item.Part!, item.Count)).ToList();
        return new RigTotals(
            Mass.FromKilograms(all.Sum(item => (item.Part.Mass?.Kilograms ?? 0) * item.Count)),
            [.. all.Where(item => item.Part.Mass is null).Select(item => item.Part.Name)],
            Sum(all, part => part.Buy),
            Sum(all, part => part.RentPerDay),
            [.. all.Where(item => item.Part.Buy is null && item.Part.RentPerDay is null).Select(item => item.Part.Name)]);
    }

    /// <summary>Each thing with how many there are. A cable that is also named among the carried things is counted
    /// there.</summary>
    private static IEnumerable<(string Name, int Count)> Counted(Build build) =>
        build.Things.Distinct().Select(name => (name, build.Devices.TryGetValue(name, out var device) ? device.Count
            : build.Carries.Contains(name) ? build.Carries.Count(other => other == name)
            : build.Cables.Contains(name) ? LinkLookup.Fed(build).Where(item => item.Cable == name)
                .Sum(item => build.Devices.TryGetValue(item.Name, out var fed) ? fed.Count : 1)
            : 1));

    private static IReadOnlyList<Money> Sum(List<(Part Part, int Count)> all, Func<Part, Money?> price) =>
    [
        .. from item in all
           let money = price(item.Part)
           where money is not null
           group money.Value.Amount * item.Count by money.Value.Currency into amounts
           select new Money(amounts.Sum(), amounts.Key),
    ];
}
