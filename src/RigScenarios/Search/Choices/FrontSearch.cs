namespace RigScenarios.Search.Choices;

/// <summary>
/// The exact front of a model's goals over its feasible choices. An integer solver proposes choices that compatibility, sums
/// and the cuts so far allow; the model's bounds or, where they don't decide, the model itself says what each is; and what is
/// proven of one choice is cut off for all others that the proof holds for. When nothing is left to propose, every choice is
/// decided.
/// </summary>
public static class FrontSearch
{
    // What of the time limit is kept for telling what is still open.
    private const double ShareForOpen = 0.06;

    /// <summary>Searches. A complete front is the same whatever the order of slots and candidates and however many processors
    /// work on it; one that ended at its time limit may differ from run to run.</summary>
    /// <param name="model">The model. Give a <see cref="RememberedChoices"/> to share what it finds with other searches.</param>
    /// <param name="options">How; null for without a time limit.</param>
    /// <param name="progress">Told after each round of proposals; null for nobody.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <exception cref="ArgumentException">The model contradicts itself, its sums have too many digits, or an option is not
    /// accepted.</exception>
    /// <exception cref="FileNotFoundException">The solver's native library for this machine is not there.</exception>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public static FrontResult Find(
        IChoiceModel model, FrontOptions? options = null, IProgress<FrontProgress>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(model);
        options ??= new FrontOptions();
        FrontOptions.Check(options);
        cancellation.ThrowIfCancellationRequested();
        var remembered = model as RememberedChoices ?? new RememberedChoices(model);
        var before = remembered.Evaluated;
        var tables = new ChoiceTables(remembered, options.KnownOnly);
        if (tables.HasEmptySlot)
            return new([], true, 0, 0, [.. model.Goals.Select(_ => double.PositiveInfinity)], 0, 0);
        SolverLibrary.Require();
        var all = options.TimeLimit?.ToTimeSpan();
        using var searching = new SearchDeadline(all * (1 - ShareForOpen), options.Clock, cancellation, options.Enough);
        using var ending = new SearchDeadline(all, options.Clock, cancellation, options.Enough);
        var work = new FrontWork(tables, remembered, options.AtOnce);
        var isComplete = false;
        while (!isComplete && !searching.IsOver)
        {
            isComplete = work.Round(searching);
            progress?.Report(new FrontProgress(work.Proposed, remembered.Evaluated - before, work.Front.Count));
        }
        var open = isComplete ? OpenChoices.None(model) : OpenChoices.Of(tables, work.Open, work.Front, work.Cuts, ending);
        var entries = new FrontEntries(tables, remembered, options.MostEquals);
        var listed = entries.Of(work, isComplete, searching);
        return new(listed, isComplete, tables.AllFitting().Count, open.AtMost, open.GoalsAtLeast,
            remembered.Evaluated - before, work.Proposed);
    }
}
