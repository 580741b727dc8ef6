namespace RigScenarios.Search.Choices;

/// <summary>The best choice for one goal under some musts.</summary>
/// <param name="Entry">The choice and its goal, the only one of its figures; null if none was found.</param>
/// <param name="IsProven">Whether nothing is better; without an entry: whether nothing is feasible.</param>
/// <param name="AtLeast">No choice is under this figure: the entry's own where it is proven; positive infinity where nothing is
/// feasible, minus infinity where there is no bound.</param>
public sealed record OneChoiceResult(FrontEntry? Entry, bool IsProven, double AtLeast);

/// <summary>What a wish costs.</summary>
/// <param name="Without">The least without the wish.</param>
/// <param name="With">The least with it.</param>
public sealed record WishCost(OneChoiceResult Without, OneChoiceResult With)
{
    /// <summary>How much more it is with the wish; null where one of both is not found and proven.</summary>
    public double? Extra => Without is { IsProven: true, Entry: { } less } && With is { IsProven: true, Entry: { } more }
        ? more.Goals[0] - less.Goals[0] : null;
}

/// <summary>Searches for one choice: the one with the least of one goal, whatever the others are, or any that is
/// feasible.</summary>
public static class OneChoice
{
    /// <summary>The feasible choice with the least of a goal. Choices for which the goal is not known are left out.</summary>
    /// <param name="model">The model; give a <see cref="RememberedChoices"/> to share what it finds with other searches.</param>
    /// <param name="goal">The goal, by its place in the model.</param>
    /// <param name="musts">The musts that count, by their places; null for all.</param>
    /// <param name="options">How; of these the time limit, the clock and how many at once.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <exception cref="ArgumentException">As for <see cref="FrontSearch.Find"/>.</exception>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public static OneChoiceResult Least(
        IChoiceModel model, int goal, IReadOnlyList<int>? musts = null, FrontOptions? options = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(model);
        var found = Find(model, [goal], musts, options, cancellation);
        var entry = found.Entries.Count > 0 ? found.Entries[0] : null;
        var least = Math.Min(entry?.Goals[0] ?? double.PositiveInfinity, found.OpenAtLeast[0]);
        return new(entry, found.IsComplete, least);
    }

    /// <summary>A choice that holds some musts, if there is one.</summary>
    /// <param name="model">The model; give a <see cref="RememberedChoices"/> to share what it finds with other searches.</param>
    /// <param name="musts">The musts that count, by their places; null for all.</param>
    /// <param name="options">How; of these the time limit, the clock and how many at once.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>The choice; null if none was found. And whether it is known if there is one.</returns>
    /// <exception cref="ArgumentException">As for <see cref="FrontSearch.Find"/>.</exception>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public static (Choice? Choice, bool IsProven) Any(
        IChoiceModel model, IReadOnlyList<int>? musts = null, FrontOptions? options = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(model);
        var found = Find(model, [], musts, options, cancellation);
        return found.Entries.Count > 0 ? (found.Entries[0].Choice, true) : (null, found.IsComplete);
    }

    /// <summary>What a wish costs: the least of a goal with it as a must, beside the least without.</summary>
    /// <param name="model">The model.</param>
    /// <param name="goal">The goal, usually money, by its place in the model.</param>
    /// <param name="wish">The must that is the wish, by its place.</param>
    /// <param name="options">How; the time limit is for both searches together.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <exception cref="ArgumentException">As for <see cref="FrontSearch.Find"/>.</exception>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public static WishCost WhatItCosts(
        IChoiceModel model, int goal, int wish, FrontOptions? options = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(model);
        var remembered = model as RememberedChoices ?? new RememberedChoices(model);
        var half = (options ?? new()) with { TimeLimit = options?.TimeLimit / 2 };
        int[] others = [.. Enumerable.Range(0, model.Musts.Count).Where(must => must != wish)];
        return new(Least(remembered, goal, others, half, cancellation), Least(remembered, goal, null, half, cancellation));
    }

    private static FrontResult Find(
        IChoiceModel model, int[] goals, IReadOnlyList<int>? musts, FrontOptions? options, CancellationToken cancellation) =>
        FrontSearch.Find(new PartOfModel(model, goals, musts ?? [.. Enumerable.Range(0, model.Musts.Count)]),
            (options ?? new()) with { KnownOnly = true, MostEquals = 1 }, null, cancellation);
}
