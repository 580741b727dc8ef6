using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Answers.Exercises;

/// <summary>What the models say of a solution: any way that works is right, not only that of the key.</summary>
public sealed record ExerciseCheck
{
    /// <summary>The exercise.</summary>
    public required Exercise Exercise { get; init; }

    /// <summary>The answer for the solution; null where it no longer has the build or the days.</summary>
    public required RigAnswer? Answer { get; init; }

    /// <summary>Changes that a solution may not make.</summary>
    public required IReadOnlyList<RefusedChange> Refused { get; init; }

    /// <summary>What it buys.</summary>
    public required IReadOnlyList<BoughtThing> Bought { get; init; }

    /// <summary>The questions that are still worse than on the sound rig.</summary>
    public required IReadOnlyList<AnswerQuestion> Open { get; init; }

    /// <summary>How many of the planted causes are still there and in the way: with its own repair the rig fails less. 0 where
    /// nothing is open.</summary>
    public required int CausesLeft { get; init; }

    /// <summary>What is known of the cost; null where nothing is bought or nothing has a price.</summary>
    public Money? Cost
    {
        get
        {
            var prices = Bought.Where(thing => thing.Price is not null)
                .Select(thing => thing.Price!.Value with { Amount = thing.Price.Value.Amount * thing.Count }).ToList();
            return prices.Count > 0 && prices.Select(price => price.Currency).Distinct().Count() == 1
                ? new Money(prices.Sum(price => price.Amount), prices[0].Currency) : null;
        }
    }

    /// <summary>Whether something is bought whose price nobody knows, or prices are in several currencies: then nobody can say
    /// whether the budget holds.</summary>
    public bool IsCostUnknown => Bought.Any(thing => thing.Price is null) || (Bought.Count > 0 && Cost is null)
        || (Cost is { } cost && Exercise.Budget is { } budget && cost.Currency != budget.Currency);

    /// <summary>Whether it stays within the budget; null where nobody can say.</summary>
    public bool? IsWithinBudget => IsCostUnknown ? null : (Cost?.Amount ?? 0) <= (Exercise.Budget?.Amount ?? 0);

    /// <summary>Whether it works, within the budget, with what is given left as it is.</summary>
    public bool IsSolved => Answer is not null && Open.Count == 0 && Refused.Count == 0 && IsWithinBudget == true;

    /// <summary>Checks a solution: the whole answer is run for it.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="solution">The student's rig with the student's changes; read or checked.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">Something would see more than its greatest voltage, or no battery fits:
    /// nothing is run then.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ExerciseCheck Of(Exercise exercise, Scenario solution, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(solution);
        var refused = FixRules.Broken(exercise, solution);
        if (!solution.Builds.ContainsKey(exercise.Rig.Build) || exercise.Rig.Days.Any(day => !solution.Days.ContainsKey(day)))
            return new() { Exercise = exercise, Answer = null, Refused = refused, Bought = [], Open = [], CausesLeft = 0 };
        var answer = Run(exercise, solution, cancellation);
        var open = exercise.Open(answer);
        return new()
        {
            Exercise = exercise, Answer = answer, Refused = refused, Bought = FixCost.Of(exercise, solution), Open = open,
            CausesLeft = open.Count == 0 ? 0 : exercise.Causes.Count(cause => IsLeft(exercise, answer, cause, cancellation)),
        };
    }

    private static RigAnswer Run(Exercise exercise, Scenario solution, CancellationToken cancellation) =>
        RigAnswer.Of(solution, exercise.Rig.Build, exercise.Rig.Days, exercise.Rig.Options, cancellation: cancellation);

    private static bool IsLeft(Exercise exercise, RigAnswer answer, PlantedCause cause, CancellationToken cancellation)
    {
        try
        {
            var repaired = ScenarioPath.SetAll(answer.Scenario,
                cause.Repair.Settings.Select(setting => (setting.Path, setting.Value)));
            return ExerciseDraw.FailsLess(Run(exercise, repaired, cancellation), answer);
        }
        catch (Exception exception) when (exception is ScenarioProblemsException or ArgumentException
            or InvalidOperationException)
        {
            // The solution has gone another way, on which the key's repair has no place.
            return false;
        }
    }
}
