using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Simulation;

namespace RigScenarios.Answers;

/// <summary>The day with the least reserve.</summary>
internal static class TightestDay
{
    /// <summary>
    /// The day with the least reserve, counted from 1, with it: where every day begins as the first each has its own, and an
    /// earlier one may be tighter than the last.
    /// </summary>
    /// <param name="powered">The build.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="simulation">How its days went.</param>
    /// <param name="cancellation">Stops it.</param>
    public static (int Day, Reserve Reserve) Of(
        PoweredBuild powered, DayPlan plan, SimulationResult simulation, CancellationToken cancellation)
    {
        var tightest = (Day: plan.Days.Count, simulation.Reserve);
        if (!plan.DaysBeginAsTheFirst || !simulation.Completes)
            return tightest;
        for (var day = 1; day < plan.Days.Count; day++)
        {
            var alone = plan with { Days = [plan.Days[day - 1]] };
            var reserve = DaySimulation.Run(powered, alone, SimulationOptions.EndOnly, null, cancellation).Reserve;
            if (reserve.Time < tightest.Reserve.Time)
                tightest = (day, reserve);
        }
        return tightest;
    }
}
