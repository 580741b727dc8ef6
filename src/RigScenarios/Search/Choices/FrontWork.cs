using System.Runtime.ExceptionServices;
using RigScenarios.Numerics;

namespace RigScenarios.Search.Choices;

/// <summary>The search as it goes: the front so far, the cuts so far, and rounds of proposals and of splitting, side by
/// side.</summary>
internal sealed class FrontWork
{
    // So many boxes are looked at in a round at least, and exactly so many where there is one core to work on.
    private const int BoxesARound = 200;

    // Of more choices than this nothing is split where no choice has to be run.
    private const int MostSplitOfSums = 100_000;

    private readonly ChoiceJudge judge;
    private readonly GoalGuide guide;
    private readonly ChoiceProposer[] proposers;
    private readonly BoxSplitter splitter;
    private readonly bool isAlone;
    private readonly bool isSplitting;
    private readonly Lock entering = new();
    private readonly Dictionary<Choice, ChoicePoint> unknown = [];
    private readonly List<ChoiceCut> cuts = [];
    private readonly List<ChoicePoint> equals = [];
    private volatile ChoicePoint[] front = [];
    private int proposed;
    private int round;

    public FrontWork(ChoiceTables tables, RememberedChoices model, int atOnce)
    {
        judge = new(tables, model);
        guide = new(tables);
        splitter = new(tables, model, guide);
        isAlone = atOnce == 1;
        // Where all is told as sums the solver sees as much as the splitting, and more of it at once.
        isSplitting = tables.NeedsRun || tables.AllFitting().Count <= MostSplitOfSums;
        // With one direction to look in all would propose the same.
        var solvers = guide.Count <= 1 ? 1 : isSplitting ? Math.Max(1, atOnce - 1) : atOnce;
        proposers = [.. Enumerable.Range(0, solvers).Select(_ => new ChoiceProposer(tables))];
    }

    /// <summary>How many choices were looked at.</summary>
    public int Proposed => proposed;

    /// <summary>The entries that are wholly known, one for each set of goals.</summary>
    public IReadOnlyList<ChoicePoint> Front => front;

    /// <summary>The entries with a goal that is not known.</summary>
    public IEnumerable<ChoicePoint> Unknown => unknown.Values;

    /// <summary>Other choices with the goals of an entry, as far as they were come upon.</summary>
    public IReadOnlyList<ChoicePoint> Equal => equals;

    public IReadOnlyList<ChoiceCut> Cuts => cuts;

    /// <summary>What splitting has not decided.</summary>
    public IEnumerable<ChoiceBox> Open => splitter.Open;

    /// <summary>Each proposer proposes one choice, which is judged; meanwhile boxes are split.</summary>
    /// <returns>Whether nothing is left.</returns>
    public bool Round(SearchDeadline deadline)
    {
        var outcomes = new IReadOnlyList<ChoiceCut>?[proposers.Length];
        var busy = proposers.Length;
        // Splitting goes depth first and is worth little before the front has some good entries.
        var splits = isSplitting && round >= guide.Count + 1;
        void Work(int i)
        {
            if (i == proposers.Length)
            {
                for (var boxes = 0; !splitter.IsEmpty && !deadline.IsOver
                    && (boxes < BoxesARound || (!isAlone && Volatile.Read(ref busy) > 0)); boxes++)
                {
                    Split(deadline.Token);
                }
                return;
            }
            try
            {
                outcomes[i] = Propose(i, deadline);
            }
            finally
            {
                Interlocked.Decrement(ref busy);
            }
        }
        Together(proposers.Length + (splits ? 1 : 0), Work, deadline);
        round++;
        foreach (var found in outcomes.OfType<IReadOnlyList<ChoiceCut>>())
            cuts.AddRange(found);
        return splitter.IsEmpty || Array.Exists(proposers, proposer => proposer.IsEmpty);
    }

    private IReadOnlyList<ChoiceCut>? Propose(int proposer, SearchDeadline deadline)
    {
        proposers[proposer].Learn(cuts);
        var objective = guide.Count > 0 ? guide.Objective((round * proposers.Length) + proposer) : ((long[], long[][]?)?)null;
        if (proposers[proposer].Propose(objective, deadline) is not { } choice)
            return null;
        var (found, point) = judge.Judge(choice, front, deadline.Token);
        Interlocked.Increment(ref proposed);
        if (point is not null)
            Enter(point);
        return found;
    }

    private void Split(CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        var (choice, point) = splitter.Next(front, cancellation);
        if (choice is not null)
            Interlocked.Increment(ref proposed);
        if (point is not null)
            Enter(point);
    }

    private void Together(int count, Action<int> work, SearchDeadline deadline)
    {
        try
        {
            if (isAlone || count == 1)
            {
                for (var i = 0; i < count; i++)
                    work(i);
            }
            else
            {
                Parallel.For(0, count, EveryCore.Until(deadline.Token), work);
            }
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
                ExceptionDispatchInfo.Throw(fault);
        }
    }

    private void Enter(ChoicePoint point)
    {
        lock (entering)
        {
            if (!point.IsKnown)
            {
                unknown[point.Choice] = point;
            }
            else if (Array.Find(front, entry => entry.IsNoWorseThan(point)) is { } better)
            {
                if (point.IsNoWorseThan(better))
                    equals.Add(point);
            }
            else
            {
                front = [.. front.Where(entry => !point.IsNoWorseThan(entry)), point];
            }
        }
    }
}
