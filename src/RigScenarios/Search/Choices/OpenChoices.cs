using System.Numerics;

namespace RigScenarios.Search.Choices;

/// <summary>What a search that was not complete leaves open.</summary>
/// <param name="AtMost">Not more choices than this are undecided.</param>
/// <param name="GoalsAtLeast">For each goal a figure that none of them is under.</param>
internal sealed record OpenChoices(BigInteger AtMost, IReadOnlyList<double> GoalsAtLeast)
{
    private sealed record OpenBox(ChoiceBox Box, BigInteger Count, List<ChoiceCut> Cuts);

    /// <summary>Nothing is open.</summary>
    public static OpenChoices None(IChoiceModel model) =>
        new(0, [.. model.Goals.Select(_ => double.PositiveInfinity)]);

    /// <summary>Splits boxes, the largest first, and leaves out those that a cut, a bound or an entry decides;
    /// what is not decided when the time is over counts as open.</summary>
    public static OpenChoices Of(
        ChoiceTables tables, IEnumerable<ChoiceBox> undecided, IReadOnlyList<ChoicePoint> front,
        IReadOnlyList<ChoiceCut> cuts, SearchDeadline deadline)
    {
        var open = new PriorityQueue<OpenBox, BigInteger>();
        void Take(ChoiceBox box, IEnumerable<ChoiceCut> some)
        {
            if (tables.Narrowed(box) is not { } fit)
                return;
            var near = some.Where(cut => cut.Box.Meets(fit)).ToList();
            if (!tables.IsDecided(fit, front) && !near.Exists(cut => cut.Covers(tables, fit)))
                open.Enqueue(new(fit, fit.Count, near), -fit.Count);
        }
        foreach (var box in undecided)
            Take(box, cuts);
        while (open.Count > 0 && open.Peek().Count > 1 && !deadline.IsOver)
        {
            deadline.ThrowIfStopped();
            var (box, _, near) = open.Dequeue();
            var slot = Enumerable.Range(0, tables.Slots).MaxBy(one => box.Possible(one).Count);
            var half = box.Possible(slot).Count / 2;
            Take(box.With(slot, box.Possible(slot).Take(half)), near);
            Take(box.With(slot, box.Possible(slot).Skip(half)), near);
        }
        var left = open.UnorderedItems.Select(item => item.Element).ToList();
        return new(left.Aggregate(BigInteger.Zero, (sum, box) => sum + box.Count),
            [.. Enumerable.Range(0, tables.Model.Goals.Count).Select(goal =>
                left.Count == 0 ? double.PositiveInfinity : left.Min(box => LeastOf(tables, box.Box, goal)))]);
    }

    private static double LeastOf(ChoiceTables tables, ChoiceBox box, int goal)
    {
        if (Array.IndexOf(tables.SumGoals, goal) is var sum and >= 0)
        {
            return tables.GoalSums[sum].IsKnown(box) ? (double)tables.GoalSums[sum].Figure(tables.GoalSums[sum].LeastOf(box))
                : double.NegativeInfinity;
        }
        return tables.Model.Bounds(box)?.GoalsAtLeast[goal] ?? double.NegativeInfinity;
    }
}
