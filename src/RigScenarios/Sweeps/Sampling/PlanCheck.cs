using RigScenarios.Files;
using RigScenarios.Numerics;
using RigScenarios.Scenarios;

namespace RigScenarios.Sweeps.Sampling;

/// <summary>Tries a plan on its scenario before the first run.</summary>
public static class PlanCheck
{
    // More of one field help nobody.
    private const int MostOfOneField = 5;

    /// <summary>Looks at the plan by itself, and then tries every value of every axis, the ends and the middle of every spread,
    /// and the first, the middle and the last values of all axes together with the middle of all spreads.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="scenario">The scenario.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">Something is not accepted; carries what is wrong with each field, up to five
    /// problems of one.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static void Run(SweepPlan plan, Scenario scenario, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(scenario);
        var problems = OfPlan(plan).ToList();
        foreach (var axis in plan.Axes)
            problems.AddRange(OfAxis(scenario, axis, cancellation));
        foreach (var field in plan.Uncertain)
            problems.AddRange(OfSpread(scenario, field));
        // What is wrong by itself is wrong together too.
        if (problems.Count == 0)
            problems.AddRange(Together(scenario, plan));
        if (problems.Count > 0)
            throw new ScenarioProblemsException(problems);
    }

    private static IEnumerable<Diagnostic> OfPlan(SweepPlan plan)
    {
        foreach (var axis in plan.Axes.Where(axis => axis.Values.Count == 0))
            yield return Problem(axis.Path, "This axis has no values.", "one value or more");
        if (plan.Uncertain.Count > 0 && plan.Samples < 1)
            yield return Problem("samples", $"Found {plan.Samples}.", "1 or more, such as 1024");
        if (plan.Method == SamplingMethod.Sobol && plan.Uncertain.Count > SobolSequence.MostDimensions)
        {
            yield return Problem("", $"A Sobol sequence has up to {SobolSequence.MostDimensions} uncertain fields, not "
                + $"{plan.Uncertain.Count}.", "fewer of them, or another way of sampling: random or a Latin hypercube");
        }
        if (TooMany(plan) is { } many)
            yield return many;
        foreach (var problem in CorrelationMatrix.Problems([.. plan.Uncertain.Select(unsure => unsure.Path)], plan.Correlations))
            yield return problem;
        foreach (var problem in OfPaths(plan.Paths))
            yield return problem;
    }

    private static Diagnostic? TooMany(SweepPlan plan)
    {
        var runs = plan.Axes.Aggregate((double)Math.Max(1, plan.SamplesEach), (count, axis) => count * axis.Values.Count);
        return runs <= SweepPlan.MostScenarios ? null : Problem("", string.Create(
            System.Globalization.CultureInfo.InvariantCulture, $"The sweep has {runs:G4} scenarios."),
            $"up to {SweepPlan.MostScenarios}: fewer steps, or uncertain fields with samples instead of axes");
    }

    private static IEnumerable<Diagnostic> OfPaths(IReadOnlyList<string> paths)
    {
        foreach (var twice in paths.GroupBy(path => path).Where(same => same.Skip(1).Any()))
            yield return Problem(twice.Key, "This field is varied twice.", "each field once, as an axis or as uncertain");
        foreach (var (place, inner) in paths.Index())
        {
            if (paths.Skip(place + 1).FirstOrDefault(path => inner.StartsWith(path + ".", StringComparison.Ordinal)) is { } outer)
                yield return Problem(inner, $"The whole of {outer} is set after it, so that it would change nothing.");
        }
    }

    private static IEnumerable<Diagnostic> OfAxis(Scenario scenario, SweepAxis axis, CancellationToken cancellation)
    {
        var told = new HashSet<Diagnostic>();
        foreach (var value in axis.Values)
        {
            cancellation.ThrowIfCancellationRequested();
            if (told.Count >= MostOfOneField)
            {
                yield return Problem(axis.Path, "The values after these were not tried.");
                yield break;
            }
            foreach (var problem in Tried(scenario, [(axis.Path, value)]).Where(told.Add))
                yield return Of(axis.Path, value, problem);
        }
    }

    /// <summary>What follows from a value elsewhere says which one it was.</summary>
    private static Diagnostic Of(string path, string value, Diagnostic problem) =>
        problem.Path == path || problem.Problem.Contains(value, StringComparison.Ordinal) ? problem
            : problem with { Problem = $"With {path}={value}: {problem.Problem}" };

    private static IReadOnlyList<Diagnostic> OfSpread(Scenario scenario, UncertainField field)
    {
        var spread = field.Spread;
        var middle = Tried(scenario, [(field.Path, spread.TextAt(0.5))]);
        if (middle.Count > 0)
            return middle;
        var (low, high) = (spread.TextAt(0), spread.TextAt(1));
        return [.. Tried(scenario, [(field.Path, low)]).Select(problem => problem with { Problem =
                $"\"{spread.Words}\" goes down to {low}: {problem.Problem} \", at least VALUE\" behind it cuts that off." }),
            .. Tried(scenario, [(field.Path, high)]).Select(problem => problem with { Problem =
                $"\"{spread.Words}\" goes up to {high}: {problem.Problem} \", at most VALUE\" behind it cuts that off." })];
    }

    // Ends of several spreads at once are no scenario of the plan, or one of many millions: they are not tried together.
    private static IEnumerable<Diagnostic> Together(Scenario scenario, SweepPlan plan) =>
        new[] { 0, 0.5, 1 }.SelectMany(share => Tried(scenario, [
            .. plan.Axes.Select(axis => (axis.Path, axis.Values[(int)Math.Round(share * (axis.Values.Count - 1))])),
            .. plan.Uncertain.Select(field => (field.Path, field.Spread.TextAt(0.5)))])).Distinct();

    private static IReadOnlyList<Diagnostic> Tried(Scenario scenario, IEnumerable<(string Path, string Text)> changes)
    {
        try
        {
            ScenarioPath.SetAll(scenario, changes);
            return [];
        }
        catch (ScenarioProblemsException exception)
        {
            return exception.Problems;
        }
    }

    private static Diagnostic Problem(string path, string problem, string? accepted = null) =>
        new(Severity.Error, "", TextPlace.None, path, problem, accepted);
}
