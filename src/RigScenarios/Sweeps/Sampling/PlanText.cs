using RigScenarios.Scenarios;

namespace RigScenarios.Sweeps.Sampling;

/// <summary>Reads a plan from the short forms of the command line.</summary>
public static class PlanText
{
    /// <summary>Reads the axes, the uncertain fields and what goes together. <see cref="PlanCheck"/> tries the values; where
    /// something can't be read, those of the rest are tried here, so that all problems are told at once.</summary>
    /// <param name="scenario">The scenario that has the fields.</param>
    /// <param name="axes">As <see cref="SweepAxis.Parse"/> reads them.</param>
    /// <param name="uncertain">As <see cref="UncertainField.Parse"/> reads them.</param>
    /// <param name="together">As <see cref="Correlation.Parse"/> reads them.</param>
    /// <returns>A plan with one sample and the standard method and seed; <c>with</c> gives it others.</returns>
    /// <exception cref="ScenarioProblemsException">A text can't be read; carries the problems of all of them.</exception>
    public static SweepPlan Read(
        Scenario scenario, IReadOnlyList<string> axes, IReadOnlyList<string> uncertain, IReadOnlyList<string> together)
    {
        ArgumentNullException.ThrowIfNull(axes);
        ArgumentNullException.ThrowIfNull(uncertain);
        ArgumentNullException.ThrowIfNull(together);
        var problems = new List<Diagnostic>();
        var plan = new SweepPlan
        {
            Axes = All(axes, text => SweepAxis.Parse(scenario, text), problems),
            Uncertain = All(uncertain, text => UncertainField.Parse(scenario, text), problems),
            Correlations = All(together, Correlation.Parse, problems),
        };
        if (problems.Count == 0)
            return plan;
        // What goes together is looked at when all fields are there.
        if (Problems(() => PlanCheck.Run(plan with { Correlations = [] }, scenario)) is { } more)
            problems.AddRange(more);
        throw new ScenarioProblemsException(problems);
    }

    private static List<T> All<T>(IReadOnlyList<string> texts, Func<string, T> read, List<Diagnostic> problems)
    {
        var values = new List<T>();
        foreach (var text in texts)
        {
            if (Problems(() => values.Add(read(text))) is { } some)
                problems.AddRange(some);
        }
        return values;
    }

    private static IReadOnlyList<Diagnostic>? Problems(Action work)
    {
        try
        {
            work();
            return null;
        }
        catch (ScenarioProblemsException exception)
        {
            return exception.Problems;
        }
    }
}
