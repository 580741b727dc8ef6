using RigScenarios.Limits;
using RigScenarios.Parts;

namespace RigScenarios.Answers;

/// <summary>Changes that were run together through the whole answer.</summary>
/// <param name="Changes">The changes, the least effort first.</param>
/// <param name="Then">The answer with them.</param>
public sealed record WorkingSet(IReadOnlyList<RigChange> Changes, RigAnswer Then)
{
    /// <summary>All settings, in the order in which they are applied.</summary>
    public IReadOnlyList<FieldSetting> Settings => [.. Changes.SelectMany(change => change.Settings)];

    /// <summary>The greatest effort of its changes.</summary>
    public ChangeEffort Effort => Changes.Max(change => change.Effort);

    /// <summary>Whether something must be so besides that no model knows.</summary>
    public bool IsProvided => Changes.Any(change => change.Provided is not null);

    /// <summary>What has to be paid more than without it, below 0 for less; null where the scenario says nothing of money, or
    /// something that is to be paid for has no price.</summary>
    public Money? CostsMore { get; init; }

    /// <summary>What it is ranked by: what is to be paid more, else what is bought.</summary>
    internal decimal CostInOrder => CostsMore?.Amount ?? Changes.Sum(change => change.PriceInOrder);

    /// <summary>What its changes cost to buy together; null where none is known, or they are in several currencies.</summary>
    public Money? Price
    {
        get
        {
            var prices = Changes.Select(change => change.Price).OfType<Money>().ToList();
            return prices.Count > 0 && prices.Select(price => price.Currency).Distinct().Count() == 1
                ? new Money(prices.Sum(price => price.Amount), prices[0].Currency) : null;
        }
    }
}

/// <summary>What would make a build work: sets of changes after which every question holds.</summary>
public sealed record WorkingSets
{
    /// <summary>The sets, all of the smallest size at which any was found, the cheapest first, and of those that cost the same
    /// the least effort.</summary>
    public IReadOnlyList<WorkingSet> Sets { get; init; } = [];

    /// <summary>The verdict that the sets reach: <see cref="Verdict.Holds"/>, or <see cref="Verdict.Close"/> where nothing better
    /// was found.</summary>
    public Verdict Reach { get; init; }

    /// <summary>How many sets were run.</summary>
    public required int Run { get; init; }

    /// <summary>Single changes that were tried, each in words.</summary>
    public required IReadOnlyList<string> Tried { get; init; }

    /// <summary>Whether everything up to three changes was run, and not only the most promising.</summary>
    public required bool Exhausted { get; init; }

    /// <summary>Where no set was found: the one that comes nearest; null where nothing helps at all.</summary>
    public WorkingSet? Nearest { get; init; }

    /// <summary>Whether something was looked for at all: nothing is where everything holds.</summary>
    public bool Asked { get; init; } = true;
}
