namespace RigScenarios.Search.Choices;

/// <summary>
/// Goes through all choices box by box, depth first, the most promising first: a box that bounds or the front decide is left out,
/// any other is split by the slot that matters most, and single choices are run. Where bounds are good and running is cheap, that
/// decides more in the same time than the solver's proposals; where sums make it hard, the solver does.
/// </summary>
internal sealed class BoxSplitter
{
    private readonly ChoiceTables tables;
    private readonly RememberedChoices model;
    private readonly GoalGuide guide;
    private readonly Stack<ChoiceBox> open = new();

    public BoxSplitter(ChoiceTables tables, RememberedChoices model, GoalGuide guide)
    {
        (this.tables, this.model, this.guide) = (tables, model, guide);
        if (tables.Narrowed(tables.AllFitting()) is { } all)
            open.Push(all);
    }

    /// <summary>The boxes that are not decided.</summary>
    public IEnumerable<ChoiceBox> Open => open;

    /// <summary>Whether every choice is decided.</summary>
    public bool IsEmpty => open.Count == 0;

    /// <summary>Decides or splits the next box.</summary>
    /// <param name="front">The front so far.</param>
    /// <param name="cancellation">Stops the work; the box stays open.</param>
    /// <returns>The choice that was run, if one was, and its point if it holds every must.</returns>
    public (Choice? Choice, ChoicePoint? Point) Next(IReadOnlyList<ChoicePoint> front, CancellationToken cancellation)
    {
        var box = open.Peek();
        if (tables.IsDecided(box, front))
        {
            open.Pop();
            return (null, null);
        }
        if (guide.WidestSlot(box) is { } slot)
        {
            open.Pop();
            // The last one pushed is looked at first.
            foreach (var candidate in box.Possible(slot).OrderByDescending(candidate => guide.Promise(slot, candidate)).ToList())
            {
                if (tables.Narrowed(box.With(slot, [candidate])) is { } part)
                    open.Push(part);
            }
            return (null, null);
        }
        var choice = new Choice(Enumerable.Range(0, box.Slots).Select(one => box.Possible(one)[0]));
        var point = Point(choice, cancellation);
        open.Pop();
        return (choice, point);
    }

    private ChoicePoint? Point(Choice choice, CancellationToken cancellation)
    {
        if (!tables.Allows(choice))
            return null;
        var figures = tables.NeedsRun ? model.Evaluate(choice, cancellation) : null;
        if (Array.Exists(tables.OtherMusts, must => figures!.Musts[must] is not true))
            return null;
        var point = new ChoicePoint(tables, choice, figures);
        return point.IsKnown || !tables.KnownOnly ? point : null;
    }
}
