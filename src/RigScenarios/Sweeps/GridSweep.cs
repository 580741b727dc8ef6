using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Sweeps;

/// <summary>Runs a scenario once for every combination of values on one or two axes.</summary>
public static class GridSweep
{
    /// <summary>More combinations than this are refused.</summary>
    public const int MostRuns = 40_000;

    /// <summary>Runs the sweep. The same axes give the same table, however many processors work on it.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="build">The build to run.</param>
    /// <param name="days">The days to run it through, one after the other; all of the scenario if empty.</param>
    /// <param name="axes">One or two axes.</param>
    /// <param name="progress">Told the share done, 0 to 1, about a hundred times.</param>
    /// <param name="cancellation">Stops the sweep.</param>
    /// <exception cref="ArgumentException">No axis, more than two, or too many combinations.</exception>
    /// <exception cref="ScenarioProblemsException">A value on an axis is not accepted; carries every refused value. Nothing was
    /// run.</exception>
    /// <exception cref="OperationCanceledException">The sweep was stopped.</exception>
    public static SweepTable Run(
        Scenario scenario, string build,
        IReadOnlyList<string> days, IReadOnlyList<SweepAxis> axes, IProgress<double>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(days);
        ArgumentNullException.ThrowIfNull(axes);
        if (axes.Count is < 1 or > 2)
            throw new ArgumentException($"A sweep takes one axis or two, not {axes.Count}.", nameof(axes));
        if (axes.Aggregate(1L, (runs, axis) => runs * axis.Values.Count) is var count && count > MostRuns)
            throw new ArgumentException($"The sweep has {count} combinations; accepted: up to {MostRuns}. Take fewer steps.",
                nameof(axes));
        RefuseWrongValues(scenario, axes, cancellation);
        var combinations = axes.Count == 1
            ? axes[0].Values.Select(value => new[] { value }).ToArray()
            : [.. axes[0].Values.SelectMany(first => axes[1].Values.Select(second => new[] { first, second }))];
        var rows = new SweepRow[combinations.Length];
        var done = 0;
        var told = Math.Max(1, combinations.Length / 100);
        SweptDays.OnEveryCore(combinations.Length, index =>
        {
            var values = combinations[index];
            var changed = ScenarioPath.SetAll(scenario, axes.Select((axis, number) => (axis.Path, values[number])));
            var swept = SweptDays.Of(changed, build, days, null, cancellation);
            rows[index] = new SweepRow(values, swept.Run(build, cancellation)) { NothingArrives = swept.NothingArrives };
            if (Interlocked.Increment(ref done) is var now && (now % told == 0 || now == combinations.Length))
                progress?.Report((double)now / combinations.Length);
        }, cancellation);
        return new SweepTable(axes, build, days.Count > 0 ? days : [.. scenario.Days.Keys], rows);
    }

    /// <summary>The same for one day.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="build">The build to run.</param>
    /// <param name="day">The day to run it through.</param>
    /// <param name="axes">One or two axes.</param>
    /// <param name="progress">Told the share done, 0 to 1, about a hundred times.</param>
    /// <param name="cancellation">Stops the sweep.</param>
    /// <exception cref="ArgumentException">No axis, more than two, or too many combinations.</exception>
    /// <exception cref="ScenarioProblemsException">A value on an axis is not accepted; carries every refused value.</exception>
    /// <exception cref="OperationCanceledException">The sweep was stopped.</exception>
    public static SweepTable Run(
        Scenario scenario, string build, string day, IReadOnlyList<SweepAxis> axes, IProgress<double>? progress = null,
        CancellationToken cancellation = default) =>
        Run(scenario, build, [day], axes, progress, cancellation);

    private static void RefuseWrongValues(Scenario scenario, IReadOnlyList<SweepAxis> axes,
        CancellationToken cancellation)
    {
        var problems = new List<Diagnostic>();
        foreach (var axis in axes)
        {
            foreach (var value in axis.Values)
            {
                cancellation.ThrowIfCancellationRequested();
                try
                {
                    ScenarioPath.Set(scenario, axis.Path, value);
                }
                catch (ScenarioProblemsException exception)
                {
                    problems.AddRange(exception.Problems);
                    if (problems.Count > 5)
                        throw new ScenarioProblemsException(problems);
                }
            }
        }
        if (problems.Count > 0)
            throw new ScenarioProblemsException(problems);
    }
}
