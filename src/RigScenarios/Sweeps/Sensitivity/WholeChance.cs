using RigScenarios.Answers;
using RigScenarios.Limits;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>How the whole answer comes out in many runs.</summary>
/// <param name="Verdicts">In how many runs each verdict.</param>
/// <param name="Failing">In how many runs each question fails.</param>
/// <param name="Gains">What to measure for it, that which spares most wrong guesses first; only acts that spare some.</param>
public sealed record WholeChance(IReadOnlyDictionary<Verdict, int> Verdicts, IReadOnlyDictionary<QuestionKind, int> Failing,
    IReadOnlyList<WholeGain> Gains)
{
    /// <summary>How likely the answer holds by more than its stated errors.</summary>
    public Chance Holds => new(Count(Verdict.Holds), Count(Verdict.Close) + Count(Verdict.Fails), Count(Verdict.NotKnown));

    /// <summary>How likely nothing fails: where figures are drawn at random their errors are in the draws, so that "close" counts
    /// as held.</summary>
    public Chance NothingFails => new(Count(Verdict.Holds) + Count(Verdict.Close), Count(Verdict.Fails), Count(Verdict.NotKnown));

    private int Count(Verdict verdict) => Verdicts.TryGetValue(verdict, out var count) ? count : 0;
}
