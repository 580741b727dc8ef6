using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers;

/// <summary>How far a search for working sets goes.</summary>
/// <param name="MostRuns">The number of sets that are run at most.</param>
/// <param name="MostSets">The number of sets that are kept.</param>
/// <param name="MostChanges">The size of the largest sets, 1 to 3.</param>
public sealed record WouldWorkOptions(int MostRuns = 400, int MostSets = 4, int MostChanges = 3);

/// <summary>
/// Looks for what would make a build work: one change, else two, else three, each set run through the whole answer, so that a
/// change that cures one question and
/// breaks another is never offered. Nothing is promised that was not run.
/// </summary>
public sealed class WouldWork
{
    private readonly RigAnswer now;
    private readonly WouldWorkOptions options;
    private readonly IProgress<double>? progress;
    private readonly CancellationToken cancellation;
    private readonly Dictionary<QuestionKind, Verdict> demanded;
    private readonly List<QuestionKind> open;
    private int run;
    private bool exhausted = true;

    private WouldWork(RigAnswer now, WouldWorkOptions options, IProgress<double>? progress, CancellationToken cancellation)
    {
        (this.now, this.options, this.progress, this.cancellation) = (now, options, progress, cancellation);
        open = [.. now.Questions.Where(question => question.Verdict is Verdict.Fails or Verdict.Close)
            .Select(question => question.Kind)];
        demanded = now.Questions.ToDictionary(question => question.Kind,
            question => question.Verdict == Verdict.NotKnown ? Verdict.NotKnown : Verdict.Holds);
    }

    /// <summary>Searches.</summary>
    /// <param name="now">The answer as it is.</param>
    /// <param name="options">How far to go; null for the usual.</param>
    /// <param name="progress">Told of the part that is done, 0…1; null for nobody.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static WorkingSets Find(RigAnswer now, WouldWorkOptions? options = null, IProgress<double>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(now);
        return new WouldWork(now, options ?? new(), progress, cancellation).Search();
    }

    private WorkingSets Search()
    {
        if (open.Count == 0)
            return new WorkingSets { Run = 0, Tried = [], Exhausted = true, Asked = false };
        var changes = CandidateChanges.Of(now);
        var singles = new List<WorkingSet>();
        foreach (var change in changes)
        {
            if (Try([change]) is { } one)
                singles.Add(one);
        }
        // What is close today and no single change moves (an airline's approval) is not asked to get better.
        foreach (var kind in open.Where(kind => now.Of(kind)!.Verdict == Verdict.Close
            && singles.TrueForAll(one => one.Then.Of(kind) is { Verdict: not Verdict.Holds })).ToList())
            demanded[kind] = Verdict.Close;
        open.RemoveAll(kind => now.Of(kind)!.Verdict <= demanded[kind]);
        var tried = new List<WorkingSet>(singles);
        var close = new List<WorkingSet>();
        var helping = singles.Where(one => open.Exists(kind => Remains(one, kind) < 1)).ToList();
        for (var size = 1; size <= options.MostChanges && open.Count > 0; size++)
        {
            var level = size == 1 ? singles : [];
            if (size > 1)
            {
                foreach (var combined in Combinations(helping, size))
                {
                    if (run >= options.MostRuns)
                    {
                        exhausted = false;
                        break;
                    }
                    if (Try(combined) is not { } set)
                        continue;
                    level.Add(set);
                    if (level.Where(Holds).DistinctBy(Decides).Count() >= options.MostSets)
                        break;
                }
                tried.AddRange(level);
            }
            var holding = level.Where(Holds).ToList();
            if (holding.Count > 0)
                return Found(holding, Verdict.Holds, changes);
            if (close.Count == 0)
                close.AddRange(level.Where(IsClose));
        }
        if (close.Count > 0)
            return Found(close, Verdict.Close, changes);
        return new WorkingSets
        {
            Run = run, Tried = [.. changes.Select(change => change.Words)], Exhausted = exhausted,
            Nearest = tried.Where(set => Worse(set) is false
                && Left(set) < open.Sum(kind => now.Of(kind)!.Verdict == Verdict.Fails ? 1 : 0.1)).OrderBy(Left)
                .ThenBy(set => set.Changes.Count).ThenBy(set => set.Effort).FirstOrDefault(),
        };
    }

    private WorkingSets Found(List<WorkingSet> sets, Verdict reach, IReadOnlyList<RigChange> changes) => new()
    {
        Sets =
        [
            .. sets.OrderBy(set => set.CostInOrder)
                .ThenBy(set => set.IsProvided && set.Effort < ChangeEffort.GivesUp ? ChangeEffort.FromKit : set.Effort)
                .ThenBy(set => set.IsProvided).ThenBy(set => set.Changes.Count(change => change.Effort == set.Effort))
                    .ThenByDescending(set => set.Then.Tightest.Reserve.Time.Hours)
                // Of sets that decide the same things, such as the size of a second battery, the one that asks least is told.
                .DistinctBy(Decides)
                .Take(options.MostSets),
        ],
        Reach = reach, Run = run, Tried = [.. changes.Select(change => change.Words)], Exhausted = exhausted,
    };

    /// <summary>
    /// Sets of a size, those first that would hold if what the single changes bring added up; each change helps some question,
    /// and together they touch every open one.
    /// </summary>
    private IEnumerable<IReadOnlyList<RigChange>> Combinations(List<WorkingSet> helping, int size) =>
        Choose(helping, size, 0).Where(set => set.Select(one => one.Changes[0].Slot).Distinct().Count() == size
            && open.TrueForAll(kind => set.Exists(one => Remains(one, kind) < 1)))
            .Select(set => (Set: set, Expected: open.Sum(kind => Math.Max(0, 1 - set.Sum(one => 1 - Remains(one, kind))))))
            .Where(item => IsHopeful(item.Expected))
            .OrderBy(item => item.Expected > 0.02 ? item.Expected : 0).ThenBy(item => item.Set.Count(one => one.IsProvided))
                .ThenBy(item => item.Set.Max(one => one.Effort)).ThenBy(item => item.Set.Sum(one => one.Changes[0].PriceInOrder))
            .Select(item => (IReadOnlyList<RigChange>)[.. item.Set.Select(one => one.Changes[0])]);

    /// <summary>Whether what single changes bring adds up to most of the way; the rest is not run, and the answer says that not
    /// everything was.</summary>
    private bool IsHopeful(double expected)
    {
        const double mostLeft = 0.6;
        exhausted &= expected <= mostLeft;
        return expected <= mostLeft;
    }

    private static IEnumerable<List<WorkingSet>> Choose(List<WorkingSet> from, int size, int start)
    {
        if (size == 0)
        {
            yield return [];
            yield break;
        }
        for (var i = start; i <= from.Count - size; i++)
        {
            foreach (var rest in Choose(from, size - 1, i + 1))
                yield return [from[i], .. rest];
        }
    }

    private WorkingSet? Try(IReadOnlyList<RigChange> changes)
    {
        cancellation.ThrowIfCancellationRequested();
        run++;
        progress?.Report(Math.Min(1, (double)run / options.MostRuns));
        var ordered = changes.OrderBy(change => change.Effort).ToList();
        try
        {
            var changed = ScenarioPath.SetAll(now.Scenario,
                ordered.SelectMany(change => change.Settings).Select(setting => (setting.Path, setting.Value)));
            var asked = now.Options with { SeriesPoints = 0, FollowsUp = false };
            var then = RigAnswer.Of(changed, now.Build, now.Days, asked, now, null, cancellation);
            return new WorkingSet(ordered, then) { CostsMore = More(then) };
        }
        catch (Exception exception) when (exception is ScenarioProblemsException or ArgumentException
            or InvalidOperationException)
        {
            // A change that makes no sound scenario (a plug that does not fit, a voltage too high) is none.
            return null;
        }
    }

    /// <summary>What is to be paid more than now. Where a thing without a price comes in or goes out nobody can say.</summary>
    private Money? More(RigAnswer then) => then.Cost is { } after && now.Cost is { } before
        && (after.Currency ?? before.Currency) is { } currency
        && after.NotPriced.Select(line => line.Name).SequenceEqual(before.NotPriced.Select(line => line.Name))
        ? new Money(after.Total - before.Total, currency) : null;

    /// <summary>What a set decides, whichever way.</summary>
    private static string Decides(WorkingSet set) =>
        string.Join('|', set.Changes.Select(change => change.Slot).Order(StringComparer.Ordinal));

    private bool Holds(WorkingSet set) =>
        set.Then.Questions.All(question => question.Verdict <= demanded.GetValueOrDefault(question.Kind, Verdict.Holds));

    private bool IsClose(WorkingSet set) => !Worse(set) && set.Then.Verdict != Verdict.Fails
        && set.Then.Questions.All(question => question.Verdict <= Verdict.Close || demanded[question.Kind] == question.Verdict)
        && now.Verdict == Verdict.Fails;

    /// <summary>Whether a question that is not open is worse than it was.</summary>
    private bool Worse(WorkingSet set) => set.Then.Questions.Any(question => !open.Contains(question.Kind)
        && question.Verdict > (now.Of(question.Kind)?.Verdict ?? Verdict.Holds));

    /// <summary>What a set leaves of the way to go in one question: 0 where it holds, 1 where nothing is gained, above where it
    /// is further off.</summary>
    private double Remains(WorkingSet set, QuestionKind kind)
    {
        var then = set.Then.Of(kind);
        var before = now.Of(kind)!;
        if (then is null || then.Verdict <= demanded[kind])
            return 0;
        if (then.Verdict < before.Verdict)
            return 0.05;
        if (kind == QuestionKind.Power && before.Verdict == Verdict.Close)
            return set.Then.Tightest.Reserve.Time > now.Tightest.Reserve.Time + UnitsNet.Duration.FromMinutes(1) ? 0.5 : 1;
        var part = before.Shortfall > 0 ? then.Shortfall / before.Shortfall : 1;
        return part < 0.99 ? part : Math.Max(1, part);
    }

    /// <summary>How much of the whole way a set leaves: what fails counts for more than what is close.</summary>
    private double Left(WorkingSet set) =>
        open.Sum(kind => (now.Of(kind)!.Verdict == Verdict.Fails ? 1 : 0.1) * Remains(set, kind));
}
