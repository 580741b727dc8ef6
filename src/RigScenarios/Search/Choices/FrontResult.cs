using System.Numerics;

namespace RigScenarios.Search.Choices;

/// <summary>Choices that nobody would swap for another: nothing feasible is as good in every goal and better in one.</summary>
/// <param name="Goals">The goals in the model's order; NaN where one is not known.</param>
/// <param name="Choices">The choice; and, after it, others with exactly the same goals. Sorted.</param>
/// <param name="HasAllEquals">Whether every other choice with the same goals is listed.</param>
public sealed record FrontEntry(IReadOnlyList<double> Goals, IReadOnlyList<Choice> Choices, bool HasAllEquals)
{
    /// <summary>The first of the choices.</summary>
    public Choice Choice => Choices[0];

    /// <summary>Whether every goal is known. A choice with a goal that is not known is on the front because nobody can say that
    /// another one is better, and it pushes no other off it.</summary>
    public bool IsKnown => !Goals.Any(double.IsNaN);
}

/// <summary>What a search for the front found.</summary>
/// <param name="Entries">The front, sorted by its goals in their order, what is not wholly known last; of a search that was
/// not complete the front so far.</param>
/// <param name="IsComplete">Whether every choice is decided: it is on the front, equal to an entry, dominated by one, or not
/// feasible.</param>
/// <param name="Choices">How many choices there are of candidates that each fit the build.</param>
/// <param name="UndecidedAtMost">Not more choices than this are undecided; zero when the search is complete. Choices whose
/// candidates don't fit each other may still be counted.</param>
/// <param name="OpenAtLeast">For each goal a figure that no undecided choice is under; positive infinity when the search is
/// complete, minus infinity where there is no bound.</param>
/// <param name="Evaluated">How many choices were run.</param>
/// <param name="Proposed">How many choices were looked at, run or not.</param>
public sealed record FrontResult(
    IReadOnlyList<FrontEntry> Entries, bool IsComplete, BigInteger Choices, BigInteger UndecidedAtMost,
    IReadOnlyList<double> OpenAtLeast, int Evaluated, int Proposed);

/// <summary>How far a search for the front is.</summary>
/// <param name="Proposed">How many choices were looked at, run or not.</param>
/// <param name="Evaluated">How many choices were run.</param>
/// <param name="Entries">How many entries the front has so far.</param>
public sealed record FrontProgress(int Proposed, int Evaluated, int Entries);
