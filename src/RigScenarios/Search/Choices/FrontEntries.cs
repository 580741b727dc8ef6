namespace RigScenarios.Search.Choices;

/// <summary>Makes entries of what a search found, and looks for the choices that equal each of them.</summary>
internal sealed class FrontEntries(ChoiceTables tables, RememberedChoices model, int most)
{
    private readonly CutMaker cuts = new(tables);

    /// <summary>The entries, sorted.</summary>
    public IReadOnlyList<FrontEntry> Of(FrontWork work, bool isComplete, SearchDeadline deadline)
    {
        var known = work.Front.Select(point =>
        {
            var (choices, hasAll) = isComplete && most > 1 && !deadline.IsOver ? Equals(point, work.Cuts, deadline)
                : ([point.Choice], false);
            // What the search came upon counts too where there was no time to look for all.
            choices = [.. choices.Concat(work.Equal.Where(other => other.IsNoWorseThan(point) && point.IsNoWorseThan(other))
                .Select(other => other.Choice)).Distinct().Order().Take(most)];
            return new FrontEntry(point.Goals(tables), choices, hasAll);
        });
        var unknown = work.Unknown.Select(point => new FrontEntry(point.Goals(tables), [point.Choice], true));
        return [.. known.Order(Comparer<FrontEntry>.Create(Compare)), .. unknown.Order(Comparer<FrontEntry>.Create(Compare))];
    }

    private (List<Choice> Choices, bool HasAll) Equals(ChoicePoint entry, IReadOnlyList<ChoiceCut> known, SearchDeadline deadline)
    {
        var found = new List<Choice>();
        var proposer = new ChoiceProposer(tables);
        proposer.FixSums([.. entry.Sums.Select(sum => sum!.Value)]);
        // A cut by sums takes equals along; one without is about choices that are infeasible or not known.
        var own = known.Where(cut => cut.NotUnder is null).ToList();
        try
        {
            while (true)
            {
                proposer.Learn(own);
                if (proposer.Propose(null, deadline) is not { } choice)
                    return (AtLeast(entry, found), proposer.IsEmpty);
                if (Differs(choice, entry, deadline) is { } cut)
                {
                    own.Add(cut);
                    continue;
                }
                if (found.Count == most)
                    return (found, false);
                found.Add(choice);
                own.Add(new ChoiceCut(ChoiceBox.Of(choice), null));
            }
        }
        catch (OperationCanceledException)
        {
            deadline.ThrowIfStopped();
            return (AtLeast(entry, found), false);
        }
    }

    // The proposer may be stopped before it has come to the entry's own choice.
    private static List<Choice> AtLeast(ChoicePoint entry, List<Choice> found) => found.Count > 0 ? found : [entry.Choice];

    /// <summary>A cut if a choice with the entry's sums has other goals or is not feasible; null if it equals the
    /// entry.</summary>
    private ChoiceCut? Differs(Choice choice, ChoicePoint entry, SearchDeadline deadline)
    {
        if (choice == entry.Choice || tables.OtherGoals.Length + tables.OtherMusts.Length == 0)
            return null;
        ChoiceCut? CutBy(ChoiceFigures? figures) => tables.OtherMusts
            .Select(must => cuts.NeverHolds(choice, figures, must)).OfType<ChoiceCut>().FirstOrDefault()
            ?? cuts.WorseThan(choice, figures, entry);
        if (CutBy(null) is { } byBounds)
            return byBounds;
        var figures = model.Evaluate(choice, deadline.Token);
        if (CutBy(figures) is { } run)
            return run;
        return new ChoicePoint(tables, choice, figures).IsKnown ? null : new ChoiceCut(ChoiceBox.Of(choice), null);
    }

    private static int Compare(FrontEntry one, FrontEntry other)
    {
        for (var i = 0; i < one.Goals.Count; i++)
        {
            if (one.Goals[i].CompareTo(other.Goals[i]) is var order && order != 0)
                return order;
        }
        return one.Choice.CompareTo(other.Choice);
    }
}
