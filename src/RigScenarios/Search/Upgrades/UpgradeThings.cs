using System.Numerics;

namespace RigScenarios.Search.Upgrades;

/// <summary>Prices asked once and checked; kits as bits.</summary>
internal sealed class UpgradeThings
{
    private readonly decimal?[][] prices;
    private readonly decimal?[][] resales;

    /// <summary>For each year and thing what all things after it could bring at most if they were sold.</summary>
    private readonly decimal[][] stillSold;

    public UpgradeThings(IUpgradeModel model, int years)
    {
        Count = model.Things.Count;
        if (Count is < 1 or > UpgradeSearch.MostThings)
        {
            throw new ArgumentException($"There are {Count} things; accepted: 1 to {UpgradeSearch.MostThings}.", nameof(model));
        }
        Owned = model.Owned.Aggregate(0UL, (kit, thing) => kit | (1UL << thing));
        prices = [.. Enumerable.Range(0, years).Select(year => Enumerable.Range(0, Count)
            .Select(thing => Checked(model.Price(thing, year), model, thing)).ToArray())];
        resales = [.. Enumerable.Range(0, years).Select(year => Enumerable.Range(0, Count)
            .Select(thing => Checked(model.Resale(thing, year), model, thing)).ToArray())];
        stillSold = [.. resales.Select(year => Enumerable.Range(0, Count).Select(thing =>
            year.Skip(thing + 1).Sum(one => one ?? 0)).ToArray())];
    }

    public int Count { get; }

    /// <summary>What is owned at the start.</summary>
    public ulong Owned { get; }

    /// <summary>What selling all things after this one would bring.</summary>
    public decimal MostStillSold(int thing, int year) => stillSold[year][thing];

    /// <summary>The path with a thing bought that it lacks or sold that it has; null where that can't be.</summary>
    public UpgradePath? Changed(UpgradePath path, int thing, int year)
    {
        var bit = 1UL << thing;
        var money = (path.Kit & bit) == 0 ? -prices[year][thing] : resales[year][thing];
        return money is { } change
            ? path with { Kit = path.Kit ^ bit, Money = path.Money + change, Changes = path.Changes + 1 } : null;
    }

    /// <summary>The years of a path.</summary>
    public static IReadOnlyList<UpgradeYear> Told(UpgradePath path, IReadOnlyDictionary<ulong, UpgradeState> states)
    {
        var ends = new List<UpgradePath>();
        for (var at = path; at.Before is not null; at = at.Before)
            ends.Insert(0, at);
        return [.. ends.Select((end, year) => new UpgradeYear(year, In(end.Kit & ~end.Before!.Kit), In(end.Before.Kit & ~end.Kit),
            In(end.Kit), end.Money, states[end.Kit]))];
    }

    /// <summary>The things of a kit, rising.</summary>
    public static IReadOnlyList<int> In(ulong kit)
    {
        var things = new List<int>(BitOperations.PopCount(kit));
        for (var rest = kit; rest != 0; rest &= rest - 1)
            things.Add(BitOperations.TrailingZeroCount(rest));
        return things;
    }

    private static decimal? Checked(decimal? money, IUpgradeModel model, int thing) => money is not < 0 ? money
        : throw new ArgumentException($"The price of \"{model.Things[thing]}\" is {money}; accepted: zero or more.",
            nameof(model));
}
