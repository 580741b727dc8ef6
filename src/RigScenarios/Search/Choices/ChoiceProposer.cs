using Google.OrTools.Sat;

namespace RigScenarios.Search.Choices;

/// <summary>The integer model: one candidate a slot, what fits what, sums and their limits, and the cuts so far. It proposes
/// choices that none of these excludes, or proves that there is none.</summary>
internal sealed class ChoiceProposer
{
    private readonly ChoiceTables tables;
    private readonly CpModel model = new();
    private readonly BoolVar?[][] taken;
    private readonly IntVar[] sums;
    private readonly Dictionary<(int Sum, long Under), ILiteral> under = [];
    private int cutsKnown;

    public ChoiceProposer(ChoiceTables tables)
    {
        this.tables = tables;
        taken = [.. tables.Model.Slots.Select((slot, s) => slot.Candidates
            .Select((_, c) => tables.Fits(s, c) ? model.NewBoolVar("") : null).ToArray())];
        foreach (var slot in taken)
            model.AddExactlyOne(slot.OfType<BoolVar>());
        for (var a = 0; a < taken.Length; a++)
        {
            for (var b = a + 1; b < taken.Length; b++)
                AddPairs(a, b);
        }
        foreach (var (sum, atMost) in tables.MustSums)
            model.Add(Total(sum) <= atMost - sum.Rest);
        sums = [.. tables.GoalSums.Select(sum =>
        {
            var variable = model.NewIntVar(0, tables.RangeOf(sum), "");
            model.Add(Total(sum) == variable + (tables.LeastOf(sum) - sum.Rest));
            return variable;
        })];
    }

    /// <summary>Whether it is proven that nothing is left.</summary>
    public bool IsEmpty { get; private set; }

    /// <summary>Fixes the sums, for a search for equals.</summary>
    public void FixSums(IReadOnlyList<long> wanted)
    {
        for (var i = 0; i < sums.Length; i++)
        {
            model.Add(sums[i] == wanted[i] - tables.LeastOf(tables.GoalSums[i]));
            // An unknown part counts as zero in the sum's variable, but its choice equals nothing.
            foreach (var candidate in UnknownIn(tables.GoalSums[i]))
                model.AddBoolOr([candidate.Not()]);
        }
    }

    /// <summary>Takes over the cuts that it does not know yet.</summary>
    public void Learn(IReadOnlyList<ChoiceCut> cuts)
    {
        for (; cutsKnown < cuts.Count; cutsKnown++)
            Add(cuts[cutsKnown]);
    }

    /// <summary>Proposes a choice.</summary>
    /// <param name="objective">What to minimise; null for any choice.</param>
    /// <param name="deadline">When it has to end.</param>
    /// <returns>The choice; null if there is none (<see cref="IsEmpty"/>) or the time is over.</returns>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public Choice? Propose((long[] Sums, long[][]? Candidates)? objective, SearchDeadline deadline)
    {
        model.Model.Objective = null;
        // The best choice in this direction is worth some work and no more: any good one serves.
        if (objective is { } wanted && Solve(Objective(wanted), deadline, "max_deterministic_time:1,") is { } best)
            return best;
        if (IsEmpty || deadline.IsOver)
            return null;
        model.Model.Objective = null;
        return Solve(null, deadline, "");
    }

    private Choice? Solve(LinearExpr? objective, SearchDeadline deadline, string bound)
    {
        if (objective is not null)
            model.Minimize(objective);
        var seconds = deadline.Left?.TotalSeconds;
        if (seconds <= 0)
            return null;
        // One worker and one seed: the same question has the same answer. These models are small: to simplify them first takes
        // longer than it saves.
        using var solver = new CpSolver
        {
            StringParameters = $"{bound}{SolverLibrary.LeavesSignals},num_workers:1,random_seed:1,cp_model_presolve:false"
                + (seconds is { } time ? FormattableString.Invariant($",max_time_in_seconds:{time:0.000}") : ""),
        };
        CpSolverStatus status;
        var isSolving = new Lock();
        var isDone = false;
        // Asked again and again, because a stop that comes before the solver has begun is not heard.
        using (new Timer(_ => StopIfWanted(), null, 20, 20))
        {
            status = solver.Solve(model);
            lock (isSolving)
                isDone = true;
        }
        deadline.ThrowIfStopped();
        IsEmpty = status == CpSolverStatus.Infeasible;
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? new Choice(taken.Select(slot => Array.FindIndex(slot, one => one is not null && solver.BooleanValue(one)))) : null;

        void StopIfWanted()
        {
            lock (isSolving)
            {
                if (!isDone && deadline.Token.IsCancellationRequested)
                    solver.StopSearch();
            }
        }
    }

    private void AddPairs(int a, int b)
    {
        for (var i = 0; i < taken[a].Length; i++)
        {
            for (var j = 0; j < taken[b].Length; j++)
            {
                if (taken[a][i] is { } one && taken[b][j] is { } other && !tables.FitTogether(a, i, b, j))
                    model.AddBoolOr([one.Not(), other.Not()]);
            }
        }
    }

    private void Add(ChoiceCut cut)
    {
        var ways = new List<ILiteral>();
        for (var slot = 0; slot < taken.Length; slot++)
        {
            var possible = cut.Box.Possible(slot);
            ways.AddRange(taken[slot].Where((one, c) => one is not null && !possible.Contains(c)).OfType<ILiteral>());
        }
        for (var i = 0; i < (cut.NotUnder?.Length ?? 0); i++)
        {
            if (Under(i, cut.NotUnder![i]) is { } literal)
                ways.Add(literal);
            ways.AddRange(UnknownIn(tables.GoalSums[i]));
        }
        model.AddBoolOr(ways);
    }

    /// <summary>A literal that is true only where the sum is under a figure; null if it never is.</summary>
    private ILiteral? Under(int sum, long figure)
    {
        var relative = figure - tables.LeastOf(tables.GoalSums[sum]);
        if (relative <= 0)
            return null;
        if (under.TryGetValue((sum, relative), out var literal))
            return literal;
        literal = model.NewBoolVar("");
        model.Add(sums[sum] <= relative - 1).OnlyEnforceIf(literal);
        under.Add((sum, relative), literal);
        return literal;
    }

    private IEnumerable<BoolVar> UnknownIn(ScaledSum sum) =>
        taken.SelectMany((slot, s) => slot.Where((one, c) => one is not null && !sum.IsKnown(s, c)).OfType<BoolVar>());

    private LinearExpr Total(ScaledSum sum) => LinearExpr.WeightedSum(taken.SelectMany(slot => slot.OfType<BoolVar>()),
        taken.SelectMany((slot, s) => slot.Select((one, c) => (one, c)).Where(item => item.one is not null)
            .Select(item => sum.Weight(s, item.c))));

    private LinearExpr Objective((long[] Sums, long[][]? Candidates) weights)
    {
        var sum = LinearExpr.WeightedSum(sums, weights.Sums);
        if (weights.Candidates is not { } candidates)
            return sum;
        return sum + LinearExpr.WeightedSum(taken.SelectMany(slot => slot.OfType<BoolVar>()),
            taken.SelectMany((slot, s) => slot.Select((one, c) => (one, c)).Where(item => item.one is not null)
                .Select(item => candidates[s][item.c])));
    }
}
