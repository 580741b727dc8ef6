using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Sweeps.Evaluation;

/// <summary>
/// The scenarios of a sweep, made by setting the values of a point. Whether fields fit together takes far longer to check than to
/// set them, so that it is tried before the first run: each value alone, all of them at their ends, and points spread over the
/// plan. Where all of that is accepted the points between are not checked again; where an end is refused, every point is.
/// </summary>
internal sealed class SweptScenarios
{
    // Enough to see a combination that is refused before hours of runs, few enough not to be noticed.
    private const int PointsTried = 24;

    private readonly IReadOnlyList<string> paths;
    private readonly bool isKnownSound;

    /// <param name="question">The question.</param>
    /// <param name="cancellation">Stops the trials.</param>
    /// <exception cref="ScenarioProblemsException">A value or a combination of the plan is refused.</exception>
    public SweptScenarios(SweepQuestion question, CancellationToken cancellation)
    {
        (Question, paths) = (question, question.Plan.Paths);
        PlanCheck.Run(question.Plan, question.Scenario, cancellation);
        foreach (var point in Spread())
        {
            cancellation.ThrowIfCancellationRequested();
            _ = Of(point);
        }
        isKnownSound = EndsFit(question.Plan);
    }

    /// <summary>The question.</summary>
    public SweepQuestion Question { get; }

    /// <summary>The scenario of a point.</summary>
    /// <param name="point">The point.</param>
    /// <exception cref="ScenarioProblemsException">Its values are refused; says of which scenario they are.</exception>
    public Scenario Of(SweepPoint point)
    {
        try
        {
            return ScenarioPath.SetAll(Question.Scenario, Changes(point.Values), isKnownSound);
        }
        catch (ScenarioProblemsException problems)
        {
            throw Told(problems, point);
        }
    }

    /// <summary>The scenario with some fields set and all others as they are.</summary>
    /// <param name="changes">The fields, by their numbers among the plan's paths, and their values.</param>
    /// <exception cref="ScenarioProblemsException">A value is refused.</exception>
    public Scenario With(IEnumerable<(int Field, string Value)> changes) =>
        ScenarioPath.SetAll(Question.Scenario, changes.Select(change => (paths[change.Field], change.Value)), isKnownSound: true);

    /// <summary>The days of a scenario of the sweep.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">A life or the order of the days does not fit.</exception>
    public SweptDays DaysOf(Scenario scenario, CancellationToken cancellation) =>
        SweptDays.Of(scenario, Question.Build, Question.Days, Question.Today, cancellation);

    /// <summary>Points spread over the plan, the first and the last among them.</summary>
    public IEnumerable<SweepPoint> Spread()
    {
        var (count, points) = (Question.Plan.Count, Math.Min(PointsTried, Question.Plan.Count));
        for (var i = 0; i < points; i++)
            yield return Question.Plan.At((long)((decimal)i * (count - 1) / Math.Max(1, points - 1)));
    }

    /// <summary>The problems of a scenario of the sweep, with its number and values.</summary>
    /// <param name="problems">The problems.</param>
    /// <param name="point">Its point.</param>
    public ScenarioProblemsException Told(ScenarioProblemsException problems, SweepPoint point)
    {
        var values = string.Join(", ", paths.Zip(point.Values, (path, value) => $"{path}={value}"));
        return new([.. problems.Problems.Select(problem => problem with
        {
            Problem = $"{problem.Problem} (scenario {point.Number + 1} of the sweep: {values})",
        })]);
    }

    private IEnumerable<(string Path, string Text)> Changes(IEnumerable<string> values) => paths.Zip(values);

    // The ends of all fields together, low and high: points that may not be of the plan, so that a refusal is no error yet.
    private bool EndsFit(SweepPlan plan)
    {
        foreach (var (first, share) in new[] { (true, 0.0), (true, 1.0), (false, 0.0), (false, 1.0) })
        {
            var ends = plan.Axes.Select(axis => first ? axis.Values[0] : axis.Values[^1])
                .Concat(plan.Uncertain.Select(field => field.Spread.TextAt(share)));
            try
            {
                ScenarioPath.SetAll(Question.Scenario, Changes(ends));
            }
            catch (ScenarioProblemsException)
            {
                return false;
            }
        }
        return true;
    }
}
