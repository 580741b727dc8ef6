using System.Runtime.ExceptionServices;
using RigScenarios.Answers;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Limits;
using RigScenarios.Numerics;
using RigScenarios.Scenarios;
using RigScenarios.Simulation;

namespace RigScenarios.Sweeps;

/// <summary>The days of one scenario of a sweep, as the answer to that scenario would run them: with the batteries that
/// arrive.</summary>
/// <param name="Powered">The build with its parts.</param>
/// <param name="Plan">The plan of the days.</param>
/// <param name="NothingArrives">Whether no battery gets there at all.</param>
internal sealed record SweptDays(PoweredBuild Powered, DayPlan Plan, bool NothingArrives)
{
    /// <summary>The days of a scenario.</summary>
    /// <param name="scenario">The scenario with the sweep's values.</param>
    /// <param name="build">The build's short name.</param>
    /// <param name="days">The days' short names; all of the scenario if empty.</param>
    /// <param name="today">The day on which it is asked; null where nobody says.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">There is no such build or day, or a life does not fit.</exception>
    public static SweptDays Of(Scenario scenario, string build, IReadOnlyList<string> days, DateOnly? today,
        CancellationToken cancellation)
    {
        scenario = scenario.AskedOn(today);
        var before = scenario.Journeys.Values.Any(journey => !journey.AfterDays);
        var arriving = ArrivingBatteries.Of(scenario, build, before ? PlannedJourney.All(scenario, today, cancellation) : []);
        var (powered, plan) = ScenarioPlan.Of(arriving.Scenario, build, days);
        return new(powered, plan, arriving.IsNothingLeft);
    }

    /// <summary>Runs them: ends and reserve only.</summary>
    /// <param name="build">The build's short name, for problems.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ScenarioProblemsException">Something would see more than its greatest voltage, or swaps have no
    /// end.</exception>
    public SimulationResult Run(string build, CancellationToken cancellation) => RigAnswer.Told(build, () =>
        DaySimulation.Run(Powered, Plan, SimulationOptions.EndOnly, null, cancellation));

    /// <summary>The first stop of an essential device that nobody planned; null if the days are lasted.</summary>
    /// <param name="result">How the days went.</param>
    public static DeviceStop? FirstStop(SimulationResult result) => result.FirstToStop?.FirstStop;

    /// <summary>Why the runtime ends, within the days or in the reserve after them; null where the run was given up.</summary>
    /// <param name="result">How the days went.</param>
    public static StopReason? Ends(SimulationResult result) => FirstStop(result)?.Reason ?? result.Reserve.Ends;

    /// <summary>Work on every number below a count, on all cores. The first problem of a scenario is thrown as it was found: it
    /// says what a user needs.</summary>
    /// <param name="count">How many.</param>
    /// <param name="work">The work.</param>
    /// <param name="cancellation">Stops it.</param>
    public static void OnEveryCore(int count, Action<int> work, CancellationToken cancellation)
    {
        try
        {
            Parallel.For(0, count, EveryCore.Until(cancellation), work);
        }
        catch (AggregateException exception)
            when (exception.InnerExceptions.FirstOrDefault(inner => inner is ScenarioProblemsException) is { } problem)
        {
            // The stack of the worker is kept.
            ExceptionDispatchInfo.Throw(problem);
        }
    }
}
