using RigScenarios.Search.Choices;

namespace RigScenarios.Checks.Search.Fronts;

/// <summary>A problem of the literature as slots with candidates: weights of each candidate in each goal, some pairs apart, and
/// limits of sums. Goals named in <paramref name="hidden"/> are not told as sums: the search has to run choices for them, with
/// the sum of the best candidates as bound.</summary>
internal sealed class PublishedModel(
    IReadOnlyList<ChoiceSlot> slots, IReadOnlyList<ChoiceSum> goals, IReadOnlyList<ChoiceMust> musts,
    Func<int, int, int, int, bool>? fits = null, params int[] hidden) : IChoiceModel
{
    public IReadOnlyList<ChoiceSlot> Slots { get; } = slots;

    public IReadOnlyList<ChoiceGoal> Goals { get; } =
        [.. goals.Select((sum, i) => new ChoiceGoal($"goal {i + 1}") { Sum = hidden.Contains(i) ? null : sum })];

    public IReadOnlyList<ChoiceMust> Musts { get; } = musts;

    public bool IsCompatible(int slotA, int candidateA, int slotB, int candidateB) =>
        fits?.Invoke(slotA, candidateA, slotB, candidateB) ?? true;

    public ChoiceBounds? Bounds(ChoiceBox box) => new(
        [.. goals.Select(sum => (double)(sum.Rest
            + sum.Weights.Select((slot, s) => box.Possible(s).Min(c => slot[c]!.Value)).Sum()))],
        [.. Musts.Select(_ => true)]);

    public ChoiceFigures Evaluate(Choice choice, CancellationToken cancellation) =>
        new([.. goals.Select(sum => (double)sum.Of(choice)!.Value)], [.. Musts.Select(_ => (bool?)null)]);

    /// <summary>A knapsack: each thing stays out or comes in; what it is worth shall be large, so it is counted with its sign
    /// turned.</summary>
    public static PublishedModel Knapsack(int capacity, int[] weights, int[][] worths, params int[] hidden)
    {
        ChoiceSum Sum(int[] figures, int sign) =>
            new([.. figures.Select(figure => (IReadOnlyList<decimal?>)[0, sign * figure])]);
        return new([.. weights.Select((_, i) => new ChoiceSlot($"thing {i + 1}", ["out", "in"]))],
            [.. worths.Select(worth => Sum(worth, -1))], [new("carries") { Sum = Sum(weights, 1), AtMost = capacity }],
            null, hidden);
    }

    /// <summary>An assignment: each row gets a column, no two the same.</summary>
    public static PublishedModel Assignment(int[][][] costs, params int[] hidden)
    {
        var size = costs[0].Length;
        return new([.. Enumerable.Range(1, size).Select(row => new ChoiceSlot($"row {row}",
                [.. Enumerable.Range(1, size).Select(column => $"column {column}")]))],
            [.. costs.Select(goal => new ChoiceSum([.. goal.Select(row =>
                (IReadOnlyList<decimal?>)[.. row.Select(cost => (decimal?)cost)])]))], [],
            (_, one, _, other) => one != other, hidden);
    }
}
