namespace RigScenarios.Search.Choices;

/// <summary>Says of a proposed choice what it is, without running it where bounds decide, and what else that decides.</summary>
internal sealed class ChoiceJudge(ChoiceTables tables, RememberedChoices model)
{
    // A cut by another entry may be wider; more than a few are not worth their bounds.
    private const int EntriesTried = 3;

    private readonly CutMaker cuts = new(tables);

    /// <summary>Judges.</summary>
    /// <param name="choice">A choice that compatibility and sums allow.</param>
    /// <param name="front">The front so far.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>The cuts, at least one of which excludes the choice; and its point, if it was run and holds every must.</returns>
    public (IReadOnlyList<ChoiceCut> Cuts, ChoicePoint? Point) Judge(
        Choice choice, IReadOnlyList<ChoicePoint> front, CancellationToken cancellation)
    {
        var byBounds = tables.OtherMusts.Select(must => cuts.NeverHolds(choice, null, must)).OfType<ChoiceCut>().ToList();
        if (byBounds.Count > 0)
            return (byBounds, null);
        long?[] sums = [.. tables.GoalSums.Select(sum => sum.Of(choice))];
        foreach (var entry in front)
        {
            if (Array.TrueForAll(sums, sum => sum is not null) && sums.Zip(entry.Sums).All(pair => pair.First >= pair.Second)
                && cuts.NoBetterThan(choice, null, entry) is { } dominated)
            {
                return ([dominated], null);
            }
        }

        var figures = tables.NeedsRun ? model.Evaluate(choice, cancellation) : null;
        var broken = tables.OtherMusts.Where(must => figures!.Musts[must] is not true).ToList();
        if (broken.Count > 0)
            return ([.. broken.Select(must => cuts.NeverHolds(choice, figures, must)!)], null);
        var point = new ChoicePoint(tables, choice, figures);
        if (!point.IsKnown)
        {
            if (!tables.KnownOnly)
                return ([new ChoiceCut(ChoiceBox.Of(choice), null)], point);
            return ([.. tables.OtherGoals.Where(goal => double.IsNaN(figures!.Goals[goal]))
                .Select(goal => cuts.NotKnown(choice, goal))], null);
        }
        var better = front.Where(entry => entry.IsNoWorseThan(point)).Take(EntriesTried).DefaultIfEmpty(point);
        return ([better.Select(entry => cuts.NoBetterThan(choice, figures, entry)!).MaxBy(cut => cut.Box.Count)!], point);
    }
}
