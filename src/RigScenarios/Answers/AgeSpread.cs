using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Cells;
using RigScenarios.Days;
using RigScenarios.Simulation;

namespace RigScenarios.Answers;

/// <summary>
/// The days at both ends of what the batteries' ages may be: run, not guessed. Every battery whose life is told is at the same
/// end at once, for what makes one published fit kinder than another is common to them.
/// </summary>
/// <param name="Least">The days with the least capacity left of the published fits.</param>
/// <param name="Greatest">The days with the most.</param>
/// <param name="LeastReserve">The reserve of the tightest day with the least.</param>
/// <param name="GreatestReserve">The reserve of the tightest day with the most.</param>
public sealed record AgeSpread(SimulationResult Least, SimulationResult Greatest, Reserve LeastReserve, Reserve GreatestReserve)
{
    /// <summary>Runs both ends; null where no battery's life is told.</summary>
    /// <param name="powered">The build.</param>
    /// <param name="plan">The plan.</param>
    internal static AgeSpread? Of(PoweredBuild powered, DayPlan plan)
    {
        var ends = plan.Batteries.Values.Select(battery => battery.Life is null ? null : battery.KnownAge.Ends).ToList();
        // One that is new today has no band yet.
        if (ends.TrueForAll(end => end is null || end.Least == end.Greatest))
            return null;
        var (least, leastReserve) = Run(powered, plan, ends, end => end.Least);
        var (greatest, greatestReserve) = Run(powered, plan, ends, end => end.Greatest);
        return new AgeSpread(least, greatest, leastReserve, greatestReserve);
    }

    private static (SimulationResult Result, Reserve Tightest) Run(PoweredBuild powered, DayPlan plan,
        List<AgeEnds?> ends, Func<AgeEnds, Age> of)
    {
        var aged = plan with
        {
            Batteries = new(plan.Batteries.Select((battery, i) => KeyValuePair.Create(battery.Key,
                ends[i] is { } end ? battery.Value.At(of(end)) : battery.Value))),
        };
        var result = DaySimulation.Run(powered, aged, SimulationOptions.EndOnly);
        return (result, TightestDay.Of(powered, aged, result, CancellationToken.None).Reserve);
    }
}
