using RigScenarios.Scenarios;
using RigScenarios.Search.Choices;
using UnitsNet;

namespace RigScenarios.Search.Rigs;

/// <summary>How a search for the best rig is done.</summary>
/// <param name="TimeLimit">The time for all of it; null for as long as it takes.</param>
public sealed record RigSearchOptions(Duration? TimeLimit = null)
{
    /// <summary>Of so many picks it is told why each of their parts; the others have their figures.</summary>
    public int MostExplained { get; init; } = 12;

    /// <summary>Cancelled when what there is is enough: the search ends and gives what it has found so far.</summary>
    public CancellationToken Enough { get; init; }

    /// <summary>The clock of the time limit.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;
}

/// <summary>
/// The rigs that nobody would swap for another, over all choices that a scenario's question allows, each run through the one
/// answer; and why: what would stand in each place instead, what more money buys, what each must costs, which musts do not go
/// together.
/// </summary>
public static class RigSearch
{
    /// <summary>What of a time limit goes to the front; the rest is for telling why.</summary>
    private const double ShareForFront = 0.65;

    /// <summary>Searches.</summary>
    /// <param name="question">The question.</param>
    /// <param name="options">How; null for without a time limit.</param>
    /// <param name="progress">Told after each round of choices; null for nobody.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <exception cref="ScenarioProblemsException">Prices are in several currencies.</exception>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public static RigSearchResult Find(BestRigQuestion question, RigSearchOptions? options = null,
        IProgress<FrontProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        options ??= new();
        var model = new RigChoices(question);
        var remembered = new RememberedChoices(model);
        using var deadline = new SearchDeadline(options.TimeLimit?.ToTimeSpan(), options.Clock, cancellation, options.Enough);
        var front = FrontSearch.Find(remembered, new FrontOptions
        {
            TimeLimit = options.TimeLimit * ShareForFront, Clock = options.Clock, Enough = options.Enough,
        }, progress, cancellation);
        var explanation = new RigExplanation(model, remembered, options, deadline, cancellation);
        var picks = explanation.Picks(front);
        var result = new RigSearchResult
        {
            Model = model, Front = front, Picks = picks,
            MoreMoney = explanation.MoreMoney(front), NextHundred = explanation.NextHundred(front),
            MustPrices = picks.Count > 0 ? explanation.MustPrices() : [],
            Conflict = picks.Count == 0 && front.IsComplete ? explanation.Conflict() : null,
        };
        if (question.Best.Upgrade is not null)
            result = result with { Upgrades = Upgrades(model, remembered, front, deadline) };
        var isExplained = explanation.IsWhole && result.Upgrades is not { IsLookedFor: false };
        return result with
        {
            IsExplained = isExplained, Runs = model.Runs,
            IsStopped = options.Enough.IsCancellationRequested && !(front.IsComplete && isExplained),
        };
    }

    /// <summary>The order of purchases, if it is found in time: half of one is none.</summary>
    private static RigUpgradePlan Upgrades(RigChoices model, RememberedChoices remembered, FrontResult front,
        SearchDeadline deadline)
    {
        try
        {
            return RigUpgrades.Find(model, remembered, [.. front.Entries.SelectMany(entry => entry.Choices)], deadline.Token);
        }
        catch (OperationCanceledException)
        {
            deadline.ThrowIfStopped();
            return RigUpgrades.Asked(model) with { IsLookedFor = false };
        }
    }
}
