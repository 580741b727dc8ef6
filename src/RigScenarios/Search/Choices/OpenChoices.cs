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

    /// <summary>Splits all choices into boxes, the largest first, and leaves out those that a cut, a bound or an entry decides;
    /// what is not decided when the time is over counts as open.</summary>
    public static OpenChoices Of(
        ChoiceTables tables, IReadOnlyList<ChoicePoint> front, IReadOnlyList<ChoiceCut> cuts, SearchDeadline deadline)
    {
        var open = new PriorityQueue<OpenBox, BigInteger>();
        void Take(ChoiceBox box, IEnumerable<ChoiceCut> some)
        {
            if (Fitting(tables, box) is not { } fit)
                return;
            var near = some.Where(cut => cut.Box.Meets(fit)).ToList();
            if (!IsDecided(tables, fit, front, near))
                open.Enqueue(new(fit, fit.Count, near), -fit.Count);
        }
        Take(tables.AllFitting(), cuts);
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

    // Candidates that fit no candidate of another slot are left out; null where a slot has none left.
    private static ChoiceBox? Fitting(ChoiceTables tables, ChoiceBox box)
    {
        for (var slot = 0; slot < tables.Slots; slot++)
        {
            var fitting = box.Possible(slot).Where(one => Enumerable.Range(0, tables.Slots).All(other => other == slot
                || box.Possible(other).Any(two => slot < other ? tables.FitTogether(slot, one, other, two)
                    : tables.FitTogether(other, two, slot, one)))).ToList();
            if (fitting.Count == 0)
                return null;
            if (fitting.Count < box.Possible(slot).Count)
                box = box.With(slot, fitting);
        }
        return box;
    }

    private static bool IsDecided(
        ChoiceTables tables, ChoiceBox box, IReadOnlyList<ChoicePoint> front, List<ChoiceCut> cuts)
    {
        if (Array.Exists(tables.MustSums, must => must.Sum.LeastOf(box) > must.AtMost)
            || cuts.Exists(cut => cut.Covers(tables, box)))
        {
            return true;
        }
        if (tables.Model.Bounds(box) is not { } bounds)
            return false;
        if (Array.Exists(tables.OtherMusts, must => !bounds.MustsMayHold[must]))
            return true;
        if (!Array.TrueForAll(tables.GoalSums, sum => sum.IsKnown(box)))
            return false;
        long[] sums = [.. tables.GoalSums.Select(sum => sum.LeastOf(box))];
        return front.Any(entry => entry.Sums.Zip(sums).All(pair => pair.First <= pair.Second)
            && tables.OtherGoals.Zip(entry.Others).All(pair => pair.Second <= bounds.GoalsAtLeast[pair.First]));
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
