namespace RigScenarios.Search.Choices;

/// <summary>
/// Where to look first. The solver minimises sums only; a goal that is no sum is stood in for by one: what each candidate alone
/// makes of the goal's bound. That decides nothing, it only brings good choices early.
/// </summary>
internal sealed class GoalGuide
{
    // Objectives stay far under the solver's own bound, and one goal's part far over the rounding of another's.
    private const double Scale = 1L << 30;

    private readonly ChoiceTables tables;
    private readonly List<double[][]> standIns = [];

    /// <summary>For each goal that guides the share of its whole range that a candidate makes.</summary>
    private readonly double[][][] shares;

    public GoalGuide(ChoiceTables tables)
    {
        this.tables = tables;
        AddStandIns();
        shares = [.. tables.GoalSums.Select(sum => tables.Model.Slots.Select((slot, s) => slot.Candidates.Select((_, c) =>
            (double)sum.Weight(s, c) / Math.Max(1, tables.RangeOf(sum))).ToArray()).ToArray()), .. standIns];
    }

    private void AddStandIns()
    {
        if (tables.OtherGoals.Length == 0)
            return;
        var all = tables.AllFitting();
        if (tables.Model.Bounds(all) is not { } least)
            return;
        var alone = Enumerable.Range(0, tables.Slots).Select(slot => tables.Model.Slots[slot].Candidates
            .Select((_, c) => tables.Fits(slot, c) ? tables.Model.Bounds(all.With(slot, [c])) : null).ToArray()).ToArray();
        foreach (var goal in tables.OtherGoals)
        {
            double Rise(ChoiceBounds? bounds) =>
                (bounds?.GoalsAtLeast[goal] - least.GoalsAtLeast[goal]) is { } rise and > 0 and < double.PositiveInfinity
                    ? rise : 0;
            double[][] rises = [.. alone.Select(slot => slot.Select(Rise).ToArray())];
            var most = rises.Sum(slot => slot.Max());
            if (most > 0)
                standIns.Add([.. rises.Select(slot => slot.Select(rise => rise / most).ToArray())]);
        }
    }

    /// <summary>How many figures an objective weighs.</summary>
    public int Count => tables.GoalSums.Length + standIns.Count;

    /// <summary>The objective of so many-th proposal: each goal by itself first (the others break ties), then all alike, then
    /// ever other mixtures, spread evenly. Weights of sums for their variables, and of candidates.</summary>
    public (long[] Sums, long[][]? Candidates) Objective(int number)
    {
        var weights = Enumerable.Range(0, Count).Select(goal => number < Count ? (goal == number ? 1 : 0.001)
            : number == Count ? 1 : 0.01 + Spread(number - Count, goal)).ToArray();
        var sums = tables.GoalSums.Select((sum, i) =>
            Math.Max(1, (long)(weights[i] * Scale / Math.Max(1, tables.RangeOf(sum))))).ToArray();
        if (standIns.Count == 0)
            return (sums, null);
        var candidates = tables.Model.Slots.Select((slot, s) => slot.Candidates.Select((_, c) => (long)(Scale
            * standIns.Select((standIn, i) => weights[sums.Length + i] * standIn[s][c]).Sum())).ToArray()).ToArray();
        return (sums, candidates);
    }

    /// <summary>The slot with several candidates in which they differ most, all goals together; null if there is none.</summary>
    public int? WidestSlot(ChoiceBox box)
    {
        int? widest = null;
        var most = -1.0;
        for (var slot = 0; slot < box.Slots; slot++)
        {
            if (box.IsDecided(slot))
                continue;
            var width = 0.0;
            for (var goal = 0; goal < Count; goal++)
            {
                var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
                foreach (var candidate in (int[])box.Possible(slot))
                    (low, high) = (Math.Min(low, shares[goal][slot][candidate]), Math.Max(high, shares[goal][slot][candidate]));
                width += high - low;
            }
            if (width > most)
                (widest, most) = (slot, width);
        }
        return widest;
    }

    /// <summary>How good a candidate is for all goals together; less is better.</summary>
    public double Promise(int slot, int candidate) => shares.Sum(goal => goal[slot][candidate]);

    // The fractional parts of multiples of numbers that no fraction comes near to are spread evenly.
    private static double Spread(int number, int goal)
    {
        var golden = (Math.Sqrt(5) - 1) / 2;
        var value = number * Math.Pow(golden, goal + 1);
        return value - Math.Floor(value);
    }
}
