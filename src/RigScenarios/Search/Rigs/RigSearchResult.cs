using RigScenarios.Answers;
using RigScenarios.Scenarios;
using RigScenarios.Search.Choices;

namespace RigScenarios.Search.Rigs;

/// <summary>What a search for the best rig found: rigs that nobody would swap for another, and what money has to do with
/// it.</summary>
public sealed record RigSearchResult
{
    /// <summary>The question as it was searched.</summary>
    public required RigChoices Model { get; init; }

    /// <summary>The front as it was found, and how much is decided.</summary>
    public required FrontResult Front { get; init; }

    /// <summary>The entries of the front with their answers, in its order.</summary>
    public required IReadOnlyList<RigPick> Picks { get; init; }

    /// <summary>What more money buys, step by step along the front; empty where cost is no wish.</summary>
    public IReadOnlyList<MoreMoney> MoreMoney { get; init; } = [];

    /// <summary>What the next 100 buy beyond the cheapest rig, wish by wish; empty where cost is no wish.</summary>
    public IReadOnlyList<NextHundred> NextHundred { get; init; } = [];

    /// <summary>What each must adds to the least cost; empty where cost is no wish or nothing was found.</summary>
    public IReadOnlyList<MustPrice> MustPrices { get; init; } = [];

    /// <summary>Why nothing was found; null where something was.</summary>
    public RigConflict? Conflict { get; init; }

    /// <summary>In which order to buy; null where that is not asked.</summary>
    public RigUpgradePlan? Upgrades { get; init; }

    /// <summary>Whether somebody ended the search before its time was over and before it was at its end.</summary>
    public bool IsStopped { get; init; }

    /// <summary>Whether there was time for everything that is told beside the front.</summary>
    public bool IsExplained { get; init; } = true;

    /// <summary>How often days were run.</summary>
    public int Runs { get; init; }

    /// <summary>The question.</summary>
    public BestRigQuestion Question => Model.Question;

    /// <summary>The answers of the picks and of the rigs of an order of purchases, for their cautions.</summary>
    public IEnumerable<RigAnswer> Answers => Picks.Select(pick => pick.Answer)
        .Concat((Upgrades?.Years ?? []).Select(year => year.Answer).OfType<RigAnswer>());
}

/// <summary>An entry of the front.</summary>
/// <param name="Choice">Its choice.</param>
/// <param name="JustAsGood">Other choices with exactly the same figures in every wish.</param>
/// <param name="Figures">What the answer says of it.</param>
/// <param name="Answer">The whole answer.</param>
/// <param name="Cost">Its cost; null where a price is not known.</param>
/// <param name="Grams">Mass of the rig in grams, without head and tripod; null where one is not known.</param>
public sealed record RigPick(Choice Choice, IReadOnlyList<Choice> JustAsGood, RigFigures Figures, RigAnswer Answer, decimal? Cost,
    decimal? Grams)
{
    /// <summary>For each place with other candidates the one that comes next, and what it would lose; in the order of the
    /// places.</summary>
    public IReadOnlyList<OtherPart> Others { get; init; } = [];
}

/// <summary>What would stand in a place instead, everything else left as it is.</summary>
/// <param name="Place">The place, from 0.</param>
/// <param name="Candidate">The candidate that comes next; null where none goes together with the rest.</param>
/// <param name="Figures">What the answer says with it; null where none goes together with the rest.</param>
/// <param name="Fails">The musts that it fails with the reasons, none where it holds all.</param>
/// <param name="Differences">For each wish how much greater its figure gets, below 0 where it is better; NaN where one is not
/// known.</param>
/// <param name="Reason">Why none goes together with the rest; empty where one does.</param>
public sealed record OtherPart(int Place, int? Candidate, RigFigures? Figures,
    IReadOnlyList<(RigMust Must, string Why)> Fails, IReadOnlyList<double> Differences, string Reason);

/// <summary>A step of more money along the front.</summary>
/// <param name="Wish">The wish that it serves.</param>
/// <param name="From">The number of the pick before, from 0.</param>
/// <param name="To">The number of the pick that it leads to.</param>
/// <param name="Extra">How much more that costs.</param>
/// <param name="Gain">By how much the wish's figure gets better; above 0.</param>
public sealed record MoreMoney(RigWish Wish, int From, int To, double Extra, double Gain);

/// <summary>What 100 more, in the currency of the prices, buy beyond the cheapest rig.</summary>
/// <param name="Wish">The wish.</param>
/// <param name="To">The number of the pick that is best in it for that money, from 0; null where none is better than the
/// cheapest.</param>
/// <param name="Extra">How much more that costs; 0 where none is better.</param>
/// <param name="Gain">By how much the wish's figure gets better; 0 where none is better.</param>
public sealed record NextHundred(RigWish Wish, int? To, double Extra, double Gain);

/// <summary>What a must adds to the least cost.</summary>
/// <param name="Must">The must.</param>
/// <param name="Extra">How much less the cheapest rig costs without it; null where that is not known.</param>
public sealed record MustPrice(RigMust Must, double? Extra);

/// <summary>Why no rig holds all musts.</summary>
/// <param name="Sets">Sets of musts that do not go together, the smallest first.</param>
/// <param name="IsComplete">Whether all sets of up to three musts were decided.</param>
public sealed record RigConflict(IReadOnlyList<ConflictingMusts> Sets, bool IsComplete);

/// <summary>Musts that do not go together.</summary>
/// <param name="Musts">The musts.</param>
/// <param name="IsMinimal">Whether the others go together without any one of them.</param>
/// <param name="Without">For each of them the least cost of a rig that holds all other musts of the question; null where
/// there is none, or nobody knows.</param>
public sealed record ConflictingMusts(IReadOnlyList<RigMust> Musts, bool IsMinimal, IReadOnlyList<double?> Without)
{
    /// <summary>Where one must alone can't hold: of the rigs that were run the one that comes nearest to it, for the budget the
    /// cheapest. Null where none was run, and for several musts.</summary>
    public RigNearMiss? Nearest { get; init; }
}

/// <summary>A rig that comes nearest to a must that none holds.</summary>
/// <param name="Choice">Its choice.</param>
/// <param name="Why">Why it does not hold it, in a sentence.</param>
public sealed record RigNearMiss(Choice Choice, string Why);
