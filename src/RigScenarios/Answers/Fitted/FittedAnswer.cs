using RigScenarios.Fits;
using RigScenarios.Fits.Notes;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Answers.Fitted;

/// <summary>What notes and logs say of a battery, and what that means for the planned days. Words for it are made by
/// <see cref="FitSentences"/>.</summary>
public sealed record FittedAnswer
{
    /// <summary>The notes, made ready to be fitted.</summary>
    public required NotedProblem Input { get; init; }

    /// <summary>What the fit found.</summary>
    public required FitResult Result { get; init; }

    /// <summary>The scenario with the fitted values in the fields of its battery.</summary>
    public required Scenario Fitted { get; init; }

    /// <summary>One standard deviation of the runtime that the fit leaves, as a share: of the battery, and of what no two days
    /// have
    /// in common. The model's own error is not in it.</summary>
    public required Ratio KnownTo { get; init; }

    /// <summary>The planned days, in their order.</summary>
    public required IReadOnlyList<DayForecast> Days { get; init; }

    /// <summary>The day for which the next test is chosen: the one that ends nearest to its wrap.</summary>
    public required DayForecast Nearest { get; init; }

    /// <summary>What each test would leave of that day's uncertainty.</summary>
    public required NextTest Next { get; init; }

    /// <summary>Fits the battery and asks for the days.</summary>
    /// <param name="noted">The notes, read and checked.</param>
    /// <param name="days">The days' short names; all of the scenario if empty.</param>
    /// <param name="today">The day for journeys without a date.</param>
    /// <param name="progress">Told how far it is, 0…1; null for nobody.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">A log can't be used, there is no such day, or the notes say nothing that can
    /// be
    /// fitted.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static FittedAnswer Of(NotedBattery noted, IReadOnlyList<string> days, DateOnly? today = null,
        IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(noted);
        ArgumentNullException.ThrowIfNull(days);
        var input = NotedProblem.Of(noted, cancellation: cancellation);
        var result = BatteryFit.Find(input.Problem, progress, cancellation);
        IReadOnlyList<string> names = days.Count > 0 ? days : [.. noted.Scenario.Days.Keys];
        var runs = names.Select(name => NoteRun.OfDay(noted, noted.Planned, noted.Scenario.Days[name])).ToList();
        var forecasts = runs.Select(run => result.Forecast(run, cancellation)).ToList();
        var known = Ratio.FromDecimalFractions(runs.Zip(forecasts).Max(day => Math.Sqrt(
            (day.Second.BatteryDeviation * day.Second.BatteryDeviation) + Spread.UseVariance(day.First))));
        var fitted = FittedScenario.Of(noted, result, known);
        var options = AnswerOptions.EndOnly with { Today = today, EverythingArrives = true };
        List<DayForecast> all = [.. names.Zip(forecasts, (name, forecast) => new DayForecast(name,
            RigAnswer.Of(fitted, noted.Planned, [name], options, cancellation: cancellation), forecast))];
        var nearest = all.MinBy(day => Math.Abs(day.Answer.Tightest.Reserve.Time.Seconds))!;
        return new FittedAnswer
        {
            Input = input, Result = result, Fitted = fitted, KnownTo = known, Days = all, Nearest = nearest,
            Next = result.NextTest(runs[all.IndexOf(nearest)], Candidates.For(input, runs[all.IndexOf(nearest)]), cancellation),
        };
    }
}
