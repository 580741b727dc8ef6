namespace RigScenarios.Search.Choices;

/// <summary>A figure that is a sum over the slots: one part of it for each candidate, and what the rest of the build adds. Sums
/// are added exactly.</summary>
/// <param name="Weights">For each slot, in the model's order, and each of its candidates: what it adds. Null where nobody knows:
/// then the sum of a choice with this candidate is unknown, not zero.</param>
/// <param name="Rest">What is there whatever is chosen.</param>
public sealed record ChoiceSum(IReadOnlyList<IReadOnlyList<decimal?>> Weights, decimal Rest = 0)
{
    /// <summary>The sum of a choice; null where one of its candidates is not known.</summary>
    /// <param name="choice">The choice.</param>
    public decimal? Of(Choice choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        decimal? sum = Rest;
        for (var slot = 0; slot < Weights.Count; slot++)
            sum += Weights[slot][choice[slot]];
        return sum;
    }
}
