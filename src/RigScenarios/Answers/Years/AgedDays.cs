using System.Collections.Concurrent;
using System.Globalization;
using RigScenarios.Builds;
using RigScenarios.Cells;
using RigScenarios.Days;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Answers.Years;

/// <summary>Runs the planned days with batteries of given ages; what was run once is known from then on.</summary>
/// <param name="powered">The build.</param>
/// <param name="plan">The plan.</param>
/// <param name="cold">Air of the cold days; null for none.</param>
/// <param name="cancellation">Stops the runs.</param>
internal sealed class AgedDays(PoweredBuild powered, DayPlan plan, Temperature? cold, CancellationToken cancellation)
{
    private readonly ConcurrentDictionary<string, Lazy<DayFigures>> known = new(StringComparer.Ordinal);

    private readonly DayPlan coldPlan = cold is not { } air ? plan : plan with
    {
        Days = [.. plan.Days.Select(day => day with { Ambient = air, AmbientPoints = [] })],
    };

    private int runs;

    /// <summary>How many runs were made.</summary>
    public int Runs => runs;

    /// <summary>The days with the batteries at these ages.</summary>
    /// <param name="ages">An age for each battery of the plan, in its order.</param>
    /// <param name="inTheCold">Whether all of them are cold.</param>
    public DayFigures At(IReadOnlyList<Age> ages, bool inTheCold = false)
    {
        var key = string.Create(CultureInfo.InvariantCulture, $"{inTheCold} ") + string.Join(' ', ages.Select(age =>
            string.Create(CultureInfo.InvariantCulture, $"{age.CapacityLeft.DecimalFractions:F6}/{age.ResistanceFactor:F6}")));
        return known.GetOrAdd(key, _ => new Lazy<DayFigures>(() => Run(ages, inTheCold ? coldPlan : plan))).Value;
    }

    private DayFigures Run(IReadOnlyList<Age> ages, DayPlan days)
    {
        Interlocked.Increment(ref runs);
        var aged = days with
        {
            Batteries = new(days.Batteries.Select((battery, i) => KeyValuePair.Create(battery.Key, battery.Value.At(ages[i])))),
        };
        try
        {
            var result = DaySimulation.Run(powered, aged, SimulationOptions.EndOnly, null, cancellation);
            return DayFigures.Of(result, TightestDay.Of(powered, aged, result, cancellation).Reserve);
        }
        catch (PlanBoundException)
        {
            // A thousand swaps are not enough: batteries as weak as that last no day.
            return DayFigures.NothingLeft;
        }
    }
}
