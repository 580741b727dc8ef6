using UnitsNet;

namespace RigScenarios.Search.Choices;

/// <summary>Musts that can't hold together.</summary>
/// <param name="Musts">The musts, by their places in the model, rising; none where candidates that fit each other can't even be
/// found.</param>
/// <param name="IsMinimal">Whether it is proven that without any one of them the others can hold together.</param>
public sealed record Conflict(IReadOnlyList<int> Musts, bool IsMinimal);

/// <summary>Why nothing is feasible.</summary>
/// <param name="Feasible">A choice that holds all musts, if one was found: then there is no conflict.</param>
/// <param name="Sets">The sets of musts that can't hold together, the smallest first.</param>
/// <param name="IsComplete">Whether every set of up to <see cref="Conflicts.MostTogether"/> musts is decided.</param>
public sealed record ConflictResult(Choice? Feasible, IReadOnlyList<Conflict> Sets, bool IsComplete);

/// <summary>
/// Which musts can't hold together where no choice is feasible. One minimal set is found by leaving out one must after the other
/// as long as the rest still can't hold; then all sets of up to three are tried, the smallest first.
/// </summary>
public static class Conflicts
{
    /// <summary>Sets of up to so many musts are all tried.</summary>
    public const int MostTogether = 3;

    /// <summary>The most musts of a model.</summary>
    public const int MostMusts = 60;

    /// <summary>Searches.</summary>
    /// <param name="model">The model; give a <see cref="RememberedChoices"/> to share what it finds with other searches.</param>
    /// <param name="options">How; the time limit is for all of it.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <exception cref="ArgumentException">As for <see cref="FrontSearch.Find"/>, or more than <see cref="MostMusts"/>
    /// musts.</exception>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public static ConflictResult Find(
        IChoiceModel model, FrontOptions? options = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(model);
        if (model.Musts.Count > MostMusts)
        {
            throw new ArgumentException($"There are {model.Musts.Count} musts; accepted: up to {MostMusts}.", nameof(model));
        }
        options ??= new();
        FrontOptions.Check(options);
        using var deadline = new SearchDeadline(options.TimeLimit?.ToTimeSpan(), options.Clock, cancellation, options.Enough);
        var trial = new MustTrial(model, options, deadline, cancellation);
        int[] all = [.. Enumerable.Range(0, model.Musts.Count)];
        if (trial.Holds(all) is not { } holds)
            return new(null, [], false);
        if (holds)
            return new(trial.Witness(all), [], true);
        var sets = new List<Conflict> { ByLeavingOut(all, trial) };
        var isComplete = true;
        for (var size = 0; size <= Math.Min(MostTogether, all.Length); size++)
        {
            foreach (var set in Combinations(all, size))
            {
                // What has a conflict in it is one, and not minimal.
                if (sets.Exists(known => known.Musts.All(set.Contains)))
                    continue;
                if (trial.Holds(set) is not { } together)
                    isComplete = false;
                else if (!together)
                    sets.Add(new(set, isComplete));
            }
        }
        return new(null, [.. sets.OrderBy(set => set.Musts.Count).ThenBy(set => string.Join(' ', set.Musts.Select(must =>
            $"{must:00}")), StringComparer.Ordinal)], isComplete);
    }

    private static Conflict ByLeavingOut(int[] all, MustTrial trial)
    {
        var set = all.ToList();
        var isMinimal = true;
        foreach (var must in all)
        {
            var holds = trial.Holds([.. set.Where(other => other != must)]);
            if (holds is false)
                set.Remove(must);
            isMinimal &= holds is not null;
        }
        return new(set, isMinimal);
    }

    private static IEnumerable<int[]> Combinations(int[] from, int size) => size == 0 ? [[]]
        : from.Index().SelectMany(first => Combinations(from[(first.Index + 1)..], size - 1)
            .Select(rest => (int[])[first.Item, .. rest]));

    /// <summary>Whether some musts can hold together. What holds more than was asked for is remembered, so that few sets need a
    /// search.</summary>
    private sealed class MustTrial(
        IChoiceModel model, FrontOptions options, SearchDeadline deadline, CancellationToken cancellation)
    {
        private readonly RememberedChoices remembered = model as RememberedChoices ?? new RememberedChoices(model);
        private readonly List<(Choice Choice, HashSet<int> Musts)> witnesses = [];

        /// <summary>Whether they can; null if there was no time to find out.</summary>
        public bool? Holds(int[] musts)
        {
            if (Witness(musts) is not null)
                return true;
            cancellation.ThrowIfCancellationRequested();
            if (deadline.Left is { } none && none <= TimeSpan.Zero)
                return null;
            var left = deadline.Left is { } time ? Duration.FromSeconds(Math.Max(0.001, time.TotalSeconds)) : (Duration?)null;
            var (choice, isProven) = OneChoice.Any(remembered, musts, options with { TimeLimit = left }, cancellation);
            if (choice is not null)
                witnesses.Add((choice, [.. musts, .. AlsoHeld(choice)]));
            return choice is not null ? true : isProven ? false : null;
        }

        /// <summary>A choice known to hold them.</summary>
        public Choice? Witness(int[] musts) => witnesses.Find(one => one.Musts.IsSupersetOf(musts)).Choice;

        private IEnumerable<int> AlsoHeld(Choice choice)
        {
            var figures = remembered.Recall(choice);
            return Enumerable.Range(0, model.Musts.Count).Where(must => model.Musts[must] is { Sum: { } sum } limited
                ? sum.Of(choice) <= limited.AtMost : figures?.Musts[must] is true);
        }
    }
}
