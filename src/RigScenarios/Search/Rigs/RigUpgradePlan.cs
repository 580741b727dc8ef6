using RigScenarios.Answers;
using RigScenarios.Scenarios;
using RigScenarios.Search.Choices;

namespace RigScenarios.Search.Rigs;

/// <summary>A purchase or a sale.</summary>
/// <param name="Thing">What is bought or sold.</param>
/// <param name="Amount">What is paid or brought, in the currency of the prices.</param>
public sealed record RigTrade(RigThing Thing, decimal Amount);

/// <summary>A year of an order of purchases.</summary>
/// <param name="Year">The year, from 1.</param>
/// <param name="Bought">What is bought.</param>
/// <param name="Sold">What is sold.</param>
/// <param name="MoneyLeft">What is left then, to be carried on.</param>
/// <param name="Choice">The best choice of what is there then; null where none holds every must but the budget.</param>
/// <param name="Figures">What the one answer says of it; null where there is none.</param>
/// <param name="Answer">The whole answer, for its cautions; null where there is none.</param>
/// <param name="EmptyPlaces">The slots, by their names, for which nothing is there.</param>
public sealed record RigUpgradeYear(int Year, IReadOnlyList<RigTrade> Bought, IReadOnlyList<RigTrade> Sold, decimal MoneyLeft,
    Choice? Choice, RigFigures? Figures, RigAnswer? Answer, IReadOnlyList<string> EmptyPlaces);

/// <summary>In which order to buy over some years.</summary>
public sealed record RigUpgradePlan
{
    /// <summary>The money and the years.</summary>
    public required UpgradeTerms Terms { get; init; }

    /// <summary>The wish that it serves: the first that is not the cost.</summary>
    public required RigWish Wish { get; init; }

    /// <summary>The years in their order; none where no year's kit holds every must but the budget, or nobody had the time to
    /// look.</summary>
    public IReadOnlyList<RigUpgradeYear> Years { get; init; } = [];

    /// <summary>The first year, from 1, with a kit that holds every must but the budget; from then on every year has one. Null
    /// where none does.</summary>
    public int? FirstFeasible { get; init; }

    /// <summary>Whether no other order is better: whatever the money could buy was looked at.</summary>
    public bool IsExact { get; init; }

    /// <summary>Whether there was time to look for it.</summary>
    public bool IsLookedFor { get; init; } = true;

    /// <summary>Things that could be bought, and how many of them the orders that were tried are made of. The others are proven
    /// to gain nothing where the plan is exact.</summary>
    public int Buyable { get; init; }

    /// <summary>See <see cref="Buyable"/>.</summary>
    public int Tried { get; init; }

    /// <summary>Things of the build outside the slots that are bought or rented, by their names in the kit: the money of the
    /// years does not pay for them.</summary>
    public IReadOnlyList<string> NotPaid { get; init; } = [];
}
