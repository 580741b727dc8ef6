using RigScenarios.Numerics;

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
        var all = options.TimeLimit?.ToTimeSpan();
        using var searching = new SearchDeadline(all * (1 - ShareForOpen), options.Clock, cancellation);
        using var ending = new SearchDeadline(all, options.Clock, cancellation);
        var work = new FrontWork(tables, remembered, options.AtOnce);
        var isComplete = false;
        while (!isComplete && !searching.IsOver)
        {
            isComplete = work.Round(searching);
            progress?.Report(new FrontProgress(work.Proposed, remembered.Evaluated - before, work.Front.Count));
        }
        var open = isComplete ? OpenChoices.None(model) : OpenChoices.Of(tables, work.Front, work.Cuts, ending);
        var entries = new FrontEntries(tables, remembered, options.MostEquals);
        var listed = entries.Of(work, isComplete, searching);
        return new(listed, isComplete, tables.AllFitting().Count, open.AtMost, open.GoalsAtLeast,
            remembered.Evaluated - before, work.Proposed);
    }
}

/// <summary>The search as it goes: the front so far, the cuts so far, and rounds of proposals.</summary>
internal sealed class FrontWork
{
    private readonly ChoiceJudge judge;
    private readonly GoalGuide guide;
    private readonly ChoiceProposer[] proposers;
    private readonly List<ChoicePoint> front = [];
    private readonly List<ChoicePoint> unknown = [];
    private readonly List<ChoiceCut> cuts = [];
    private readonly List<ChoicePoint> equals = [];
    private int round;

    public FrontWork(ChoiceTables tables, RememberedChoices model, int atOnce)
    {
        judge = new(tables, model);
        guide = new(tables);
        // With one direction to look in all would propose the same.
        proposers = [.. Enumerable.Range(0, guide.Count <= 1 ? 1 : atOnce).Select(_ => new ChoiceProposer(tables))];
    }

    public int Proposed { get; private set; }

    /// <summary>The entries that are wholly known, one for each set of goals.</summary>
    public IReadOnlyList<ChoicePoint> Front => front;

    /// <summary>The entries with a goal that is not known.</summary>
    public IReadOnlyList<ChoicePoint> Unknown => unknown;

    /// <summary>Other choices with the goals of an entry, as far as they were come upon.</summary>
    public IReadOnlyList<ChoicePoint> Equal => equals;

    public IReadOnlyList<ChoiceCut> Cuts => cuts;

    /// <summary>Each proposer proposes one choice, which is judged against the front before the round; then all are entered in
    /// order, so that a round has one outcome however its parts are timed.</summary>
    /// <returns>Whether nothing is left.</returns>
    public bool Round(SearchDeadline deadline)
    {
        var outcomes = new (Choice Choice, IReadOnlyList<ChoiceCut> Cuts, ChoicePoint? Point)?[proposers.Length];
        var known = front.ToArray();
        void Work(int i)
        {
            proposers[i].Learn(cuts);
            var objective = guide.Count > 0 ? guide.Objective((round * proposers.Length) + i) : ((long[], long[][]?)?)null;
            if (proposers[i].Propose(objective, deadline) is not { } choice)
                return;
            var (found, point) = judge.Judge(choice, known, deadline.Token);
            outcomes[i] = (choice, found, point);
        }
        try
        {
            if (proposers.Length == 1)
                Work(0);
            else
                Parallel.For(0, proposers.Length, EveryCore.Until(deadline.Token), Work);
        }
        catch (OperationCanceledException)
        {
            // The time limit is the end of the search and no fault; what was judged in time counts.
            deadline.ThrowIfStopped();
        }
        catch (AggregateException several)
        {
            deadline.ThrowIfStopped();
            if (several.InnerExceptions.FirstOrDefault(inner => inner is not OperationCanceledException) is { } fault)
                System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(fault);
        }
        round++;
        if (proposers.Any(proposer => proposer.IsEmpty))
            return true;
        foreach (var (choice, found, point) in outcomes.OfType<(Choice, IReadOnlyList<ChoiceCut>, ChoicePoint?)>()
            .DistinctBy(outcome => outcome.Item1))
        {
            Proposed++;
            cuts.AddRange(found);
            if (point is not null)
                Enter(point);
        }
        return false;
    }

    private void Enter(ChoicePoint point)
    {
        if (!point.IsKnown)
        {
            unknown.Add(point);
        }
        else if (front.Find(entry => entry.IsNoWorseThan(point)) is { } better)
        {
            if (point.IsNoWorseThan(better))
                equals.Add(point);
        }
        else
        {
            front.RemoveAll(point.IsNoWorseThan);
            front.Add(point);
        }
    }
}
