using RigScenarios.Limits;

namespace RigScenarios.Answers;

/// <summary>The questions of an answer, in the order in which they are told. A new one is a line here, its rule in
/// <see cref="QuestionRules"/>, and a line of words.</summary>
public enum QuestionKind
{
    /// <summary>Do all essential devices run to the end of the plan?</summary>
    Power,

    /// <summary>Is any limit between battery and devices passed?</summary>
    Wiring,

    /// <summary>Does it balance: head, shoulder or hand?</summary>
    Balance,

    /// <summary>Does it stand and hold: tipping, wind, ratings, joints?</summary>
    Stand,

    /// <summary>Do the batteries get there? Only where a journey is planned.</summary>
    Travel,

    /// <summary>What does it cost? Only where the scenario says something of money.</summary>
    Cost,
}

/// <summary>One question with its verdict.</summary>
/// <param name="Kind">Which question.</param>
/// <param name="Verdict">Its verdict.</param>
/// <param name="Limits">All limits that it rests on, the least left first; empty for power, which rests on the reserve, for
/// travel and for cost.</param>
public sealed record AnswerQuestion(QuestionKind Kind, Verdict Verdict, IReadOnlyList<Limit> Limits)
{
    /// <summary>The limit of force with the least left that counts for the verdict; null where there is none.</summary>
    public Limit? Least { get; init; }

    /// <summary>What nobody gave, in sentences; it makes the verdict "not known" only where nothing else can be said.</summary>
    public IReadOnlyList<string> Missing { get; init; } = [];

    /// <summary>The fields that would give some of it, by their paths in the file.</summary>
    public IReadOnlyList<string> MissingPaths { get; init; } = [];

    /// <summary>
    /// How far it is from holding, 0 where it holds: hours of the day that are not reached for power, shares past their limits
    /// added up for limits,
    /// batteries that stay behind for travel, the share of the budget by which it is passed for cost. Good for comparing two
    /// answers of one build, and for nothing else.
    /// </summary>
    internal double Shortfall { get; init; }
}
