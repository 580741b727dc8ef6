using RigScenarios.Parts;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Answers.Years;

/// <summary>How the planned days go with batteries of a certain age.</summary>
/// <param name="Completes">Whether every essential device runs whenever it is wanted.</param>
/// <param name="Runtime">From the first block to the first stop that nobody planned, through the reserve where there is
/// none.</param>
/// <param name="Reserve">What is left after wrap, of the tightest day; below zero where it does not last.</param>
/// <param name="IsLowerBound">Whether runtime and reserve were given up on while everything still ran.</param>
/// <param name="Delivered">Energy that each battery delivered over all the days.</param>
public sealed record DayFigures(
    bool Completes, Duration Runtime, Duration Reserve, bool IsLowerBound, OrderedMap<Energy> Delivered)
{
    /// <summary>A plan that could not be run to its end, because its batteries hold next to nothing.</summary>
    internal static DayFigures NothingLeft { get; } =
        new(false, Duration.Zero, Duration.Zero, false, OrderedMap<Energy>.Empty);

    /// <summary>The figures of a run.</summary>
    /// <param name="result">The run.</param>
    /// <param name="tightest">The least reserve of its days.</param>
    internal static DayFigures Of(SimulationResult result, Reserve tightest) => new(
        result.Completes, result.Runtime, tightest.Time, tightest.IsLowerBound,
        new(result.Batteries.Select(battery => KeyValuePair.Create(battery.Key, battery.Value.Delivered))));

    /// <summary>Whether the days are lasted with a reserve that is wished.</summary>
    /// <param name="wish">The reserve; null for none.</param>
    public bool Lasts(Duration? wish) => Completes && !(Reserve < wish);
}
