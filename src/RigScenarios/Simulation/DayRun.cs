using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Cells;
using RigScenarios.Days;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>How much a day's run keeps.</summary>
/// <param name="SeriesPoints">The number of moments that the series of the planned day keeps, about; 0 for none.</param>
/// <param name="MostDays">A build that survives so many days in a row is not run further.</param>
public sealed record DayRunOptions(int SeriesPoints = 1200, int MostDays = 10)
{
    /// <summary>End results only: for sweeps.</summary>
    public static DayRunOptions EndOnly { get; } = new(SeriesPoints: 0);
}

/// <summary>
/// A build meets a day: block by block the devices take their states, the pack answers with its voltage, and whatever runs
/// short of voltage drops out for good, until no essential device is left, or the pack itself ends.
/// </summary>
public static class DayRun
{
    /// <summary>Runs a build through a day on one battery.</summary>
    /// <param name="powered">The build.</param>
    /// <param name="day">The day, with at least one block.</param>
    /// <param name="ambient">Temperature of the air.</param>
    /// <param name="options">What is kept.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <exception cref="ArgumentException">The day has no block, or a draw is not known.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static DayResult Run(PoweredBuild powered, ShootingDay day, Temperature ambient, DayRunOptions? options = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(powered);
        ArgumentNullException.ThrowIfNull(day);
        if (day.Blocks.Count == 0)
            throw new ArgumentException("The day has no block.", nameof(day));
        var battery = powered.Build.Battery;
        var age = battery.CapacityLeft is null && battery.ResistanceGrowth is null
            ? null
            : new Age(battery.CapacityLeft ?? Ratio.FromPercent(100), battery.ResistanceGrowth ?? 1);
        var pack = PackModel.From(powered.Battery.Battery!, powered.Battery.Mass, powered.Battery.Size, age);
        return new DayWalk(powered, day, ambient, pack, options ?? new DayRunOptions(), cancellation).Result();
    }
}
