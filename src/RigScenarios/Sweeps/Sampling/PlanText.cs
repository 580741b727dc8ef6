using RigScenarios.Scenarios;

namespace RigScenarios.Sweeps.Sampling;

/// <summary>Reads a plan from the short forms of the command line.</summary>
public static class PlanText
{
    /// <summary>Reads the axes, the uncertain fields and what goes together. <see cref="PlanCheck"/> tries the values.</summary>
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
            Axes = All(axes, text => SweepAxis.Parse(scenario, text)),
            Uncertain = All(uncertain, text => UncertainField.Parse(scenario, text)),
            Correlations = All(together, Correlation.Parse),
        };
        return problems.Count == 0 ? plan : throw new ScenarioProblemsException(problems);

        List<T> All<T>(IReadOnlyList<string> texts, Func<string, T> read)
        {
            var values = new List<T>();
            foreach (var text in texts)
            {
                try
                {
                    values.Add(read(text));
                }
                catch (ScenarioProblemsException exception)
                {
                    problems.AddRange(exception.Problems);
                }
            }
            return values;
        }
    }
}
