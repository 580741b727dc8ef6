using RigScenarios.Answers;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Sweeps.Evaluation;

/// <summary>The way through a sweep that simulates, or answers, scenario by scenario.</summary>
internal sealed class ScenarioByScenario : SweepEvaluation
{
    private readonly SweptScenarios scenarios;
    private readonly IReadOnlyList<ColumnReading> columns;
    private readonly ColumnNeeds needs;
    private readonly RigAnswer? known;

    /// <param name="scenarios">The scenarios.</param>
    /// <param name="columns">What is read of each.</param>
    /// <param name="reason">Why no quicker way can be gone; of no effect where no day is run.</param>
    /// <param name="cancellation">Stops it.</param>
    public ScenarioByScenario(SweptScenarios scenarios, IReadOnlyList<ColumnReading> columns, string reason,
        CancellationToken cancellation)
    {
        (this.scenarios, this.columns) = (scenarios, columns);
        needs = columns.Aggregate(ColumnNeeds.None, (all, column) => all | column.Needs);
        var whole = needs.HasFlag(ColumnNeeds.Answer);
        Way = needs == ColumnNeeds.AtRest ? new(SweepWayKind.AtRest, "Nothing is asked of the days, so that none is run.")
            : new(whole ? SweepWayKind.Answer : SweepWayKind.Simulation, reason);
        if (whole)
            known = Known(scenarios.Question, cancellation);
    }

    /// <inheritdoc/>
    public override SweepWay Way { get; }

    // A chunk of whole answers takes about a third of a second a core.
    /// <inheritdoc/>
    public override int ChunkLength => Math.Max(1, Environment.ProcessorCount) * (Way.Kind == SweepWayKind.Answer ? 64 : 256);

    /// <inheritdoc/>
    public override SweepRecord[] Run(int count, Func<int, SweepPoint> pointOf, CancellationToken cancellation)
    {
        var records = new SweepRecord[count];
        SweptDays.OnEveryCore(count, i => records[i] = One(pointOf(i), cancellation), cancellation);
        return records;
    }

    /// <summary>One point.</summary>
    /// <param name="point">The point.</param>
    /// <param name="cancellation">Stops it.</param>
    public SweepRecord One(SweepPoint point, CancellationToken cancellation)
    {
        var scenario = scenarios.Of(point);
        try
        {
            var outcome = new ScenarioOutcome(scenarios.Question, scenario, needs, known, cancellation);
            return new(point.Number, point.Values, [.. columns.Select(column => column.Read(outcome))]);
        }
        catch (ScenarioProblemsException problems)
        {
            throw scenarios.Told(problems, point);
        }
        catch (Exception exception) when (exception is ArgumentException or InvalidOperationException)
        {
            // Values that were not held against each other, because all that were tried did fit.
            scenarios.Check(point);
            throw;
        }
    }

    // The scenario as it is may be one that can't be run, where the sweep sets what is wrong with it.
    private static RigAnswer? Known(SweepQuestion question, CancellationToken cancellation)
    {
        try
        {
            return RigAnswer.Of(question.Scenario, question.Build, question.DayNames, ScenarioOutcome.Options(question),
                null, cancellation);
        }
        catch (ScenarioProblemsException)
        {
            return null;
        }
    }
}
