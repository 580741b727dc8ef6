using RigScenarios.Answers;
using RigScenarios.Costs;
using RigScenarios.Scenarios;

namespace RigScenarios.Sweeps.Evaluation;

/// <summary>What one scenario of a sweep gives: each model is asked when a column wants it, and once. Where the whole answer is
/// wanted everything is read from it.</summary>
internal sealed class ScenarioOutcome
{
    private readonly SweepQuestion question;
    private readonly Scenario scenario;
    private readonly CancellationToken cancellation;
    private readonly Lazy<DayFigures> days;
    private readonly Lazy<BuildBalance?> balance;
    private readonly Lazy<KitCost?> cost;
    private readonly Lazy<IReadOnlyList<PlannedJourney>> journeys;

    /// <param name="question">The question of the sweep.</param>
    /// <param name="scenario">The scenario with the values of one point.</param>
    /// <param name="needs">What the columns want.</param>
    /// <param name="known">The answer to the scenario without these values, of which is taken what they have no part in; null
    /// where there is none.</param>
    /// <param name="cancellation">Stops it.</param>
    public ScenarioOutcome(SweepQuestion question, Scenario scenario, ColumnNeeds needs, RigAnswer? known,
        CancellationToken cancellation)
    {
        (this.question, this.scenario, this.cancellation) = (question, scenario, cancellation);
        if (needs.HasFlag(ColumnNeeds.Answer))
            Answer = RigAnswer.Of(scenario, question.Build, question.DayNames, Options(question), known, null, cancellation);
        var answer = Answer;
        days = new(() => answer is null ? Simulated()
            : answer.NothingArrives ? DayFigures.NothingArrives : DayFigures.Of(answer.Simulation));
        balance = new(() => answer is null ? RigAnswer.BalanceOf(scenario, question.Build) : answer.Balance);
        cost = new(() => answer?.Cost ?? CostQuestion.AnyOf(scenario, question.Build, question.DayNames.Count));
        journeys = new(() => answer?.Journeys ?? PlannedJourney.All(scenario, question.Today, cancellation));
    }

    /// <summary>What the whole answer is asked with: the figures alone, without what people would ask next.</summary>
    /// <param name="question">The question of the sweep.</param>
    public static AnswerOptions Options(SweepQuestion question) =>
        AnswerOptions.EndOnly with { Today = question.Today, FollowsUp = false };

    /// <summary>The whole answer; null where no column wants it.</summary>
    public RigAnswer? Answer { get; }

    /// <summary>The days.</summary>
    public DayFigures Days => days.Value;

    /// <summary>The rig at rest; null where nothing of it has a mass.</summary>
    public BuildBalance? Balance => balance.Value;

    /// <summary>What it costs; null where its prices are in several currencies.</summary>
    public KitCost? Cost => cost.Value;

    /// <summary>The journeys that are planned.</summary>
    public IReadOnlyList<PlannedJourney> Journeys => journeys.Value;

    private DayFigures Simulated()
    {
        var swept = SweptDays.Of(scenario, question.Build, question.Days, question.Today, cancellation);
        return swept.NothingArrives ? DayFigures.NothingArrives : DayFigures.Of(swept.Run(question.Build, cancellation));
    }
}
