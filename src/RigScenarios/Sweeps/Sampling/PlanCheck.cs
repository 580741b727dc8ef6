using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Sweeps.Sampling;

/// <summary>Tries a plan on its scenario before the first run.</summary>
public static class PlanCheck
{
    /// <summary>Tries every value of every axis, and the ends and the middle of every spread.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="scenario">The scenario.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">Something is not accepted; carries everything that is wrong.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static void Run(SweepPlan plan, Scenario scenario, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(scenario);
        var problems = new List<Diagnostic>();
        var tried = plan.Axes.SelectMany(axis => axis.Values.Select(value => (axis.Path, value)))
            .Concat(plan.Uncertain.SelectMany(field =>
                new[] { 0, 0.5, 1 }.Select(share => (field.Path, field.Spread.TextAt(share)))));
        foreach (var (path, value) in tried)
        {
            cancellation.ThrowIfCancellationRequested();
            try
            {
                ScenarioPath.Set(scenario, path, value);
            }
            catch (ScenarioProblemsException exception)
            {
                problems.AddRange(exception.Problems);
            }
        }
        if (problems.Count > 0)
            throw new ScenarioProblemsException(problems);
    }
}
