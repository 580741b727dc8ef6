using RigScenarios.Files;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>What an answer rests on: a field that nobody gave, and what the answer would be with another value of it.</summary>
/// <param name="Path">The field, by its path in the file.</param>
/// <param name="Text">In a sentence.</param>
public sealed record AnswerRest(string Path, string Text);

/// <summary>
/// Finds the assumptions that move the answer most by trying: each is varied either way, and the whole answer is asked again.
/// How far they are varied: <c>docs/own-rig.md</c>, "What the answer rests on".
/// </summary>
public static class LeadingAssumptions
{
    /// <summary>How many are told.</summary>
    public const int Told = 3;

    /// <summary>What the answer rests on: those that move it most, at most <see cref="Told"/>.</summary>
    /// <param name="effects">What <see cref="Find"/> found.</param>
    public static IReadOnlyList<AnswerRest> RestsOn(IEnumerable<AssumptionEffect> effects) =>
        [.. effects.Take(Told).Select(effect => new AnswerRest(effect.Path, effect.Words))];

    /// <summary>Those that change a verdict, and then those that move the reserve by a minute or more, the one that moves it most
    /// first.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="mostRuns">The number of runs at most.</param>
    /// <param name="progress">Told of the part that is done, 0…1; null for nobody.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static IReadOnlyList<AssumptionEffect> Find(RigAnswer answer, int mostRuns = 80, IProgress<double>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var effects = new List<AssumptionEffect>();
        var trials = AssumptionTrials.Of(answer).Take(mostRuns / 2).ToList();
        for (var i = 0; i < trials.Count; i++)
        {
            progress?.Report((double)i / trials.Count);
            cancellation.ThrowIfCancellationRequested();
            if (Effect(answer, trials[i], cancellation) is { } effect && (effect.ChangesVerdict || effect.Moves.Minutes >= 1))
                effects.Add(effect);
        }
        return [.. effects.OrderByDescending(effect => effect.ChangesVerdict)
            .ThenByDescending(effect => effect.Moves.Seconds)];
    }

    private static AssumptionEffect? Effect(RigAnswer answer, AssumptionTrial trial, CancellationToken cancellation)
    {
        var low = With(answer, trial, trial.Usual.Least, cancellation);
        var high = With(answer, trial, trial.Usual.Most, cancellation);
        if ((low ?? high) is null)
            return null;
        var (less, more) = (Moves(answer, low), Moves(answer, high));
        var (lowTurns, highTurns) = (Turns(answer, low), Turns(answer, high));
        var isLow = low is not null
            && (high is null || (lowTurns == highTurns ? Math.Abs(less.Seconds) >= Math.Abs(more.Seconds) : lowTurns));
        return new AssumptionEffect(trial.Value, trial.Path, less, more, trial.Usual.Least, trial.Usual.Most)
        {
            Tried = isLow ? trial.Usual.Least : trial.Usual.Most,
            Outcome = AssumptionEffect.OutcomeOf(answer, (isLow ? low : high)!),
            ChangesVerdict = isLow ? lowTurns : highTurns,
        };
    }

    private static Duration Moves(RigAnswer before, RigAnswer? after) => after is null
        ? Duration.Zero : after.Tightest.Reserve.Time - before.Tightest.Reserve.Time;

    private static bool Turns(RigAnswer before, RigAnswer? after) => after is not null
        && !after.Questions.Select(question => question.Verdict).SequenceEqual(
            before.Questions.Select(question => question.Verdict));

    private static RigAnswer? With(RigAnswer answer, AssumptionTrial trial, string text, CancellationToken cancellation)
    {
        if (text == trial.Value.Value)
            return null;
        try
        {
            var changed = ScenarioPath.Set(answer.Scenario, trial.Path, text);
            if (trial.Beside is { } beside)
                changed = ScenarioPath.Set(changed, beside.Path, beside.Text);
            var options = answer.Options with { SeriesPoints = 0, FollowsUp = false };
            return trial.OnlyAtRest ? answer.Moved(changed)
                : RigAnswer.Of(changed, answer.Build, answer.Days, options, answer, null, cancellation);
        }
        catch (Exception exception) when (exception is ScenarioProblemsException or ArgumentException
            or InvalidOperationException)
        {
            // Outside of what the field takes: this side is not tried.
            return null;
        }
    }
}
