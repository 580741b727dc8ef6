using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>How much a simulation keeps, and how far it goes.</summary>
/// <param name="SeriesPoints">The number of points that are kept over all days, about; 0 for none.</param>
/// <param name="KeepsLimits">Whether the worst against each limit is kept.</param>
/// <param name="FindsReserve">Whether it goes on after the last block until the reserve is used up.</param>
public sealed record SimulationOptions(int SeriesPoints = 1200, bool KeepsLimits = true, bool FindsReserve = true)
{
    /// <summary>Ends and reserve only: for sweeps.</summary>
    public static SimulationOptions EndOnly { get; } = new(SeriesPoints: 0, KeepsLimits: false);

    /// <summary>Ends only: for searches that ask whether the days are lasted.</summary>
    public static SimulationOptions DaysOnly { get; } = new(SeriesPoints: 0, KeepsLimits: false, FindsReserve: false);
}

/// <summary>
/// Days in a row with one battery or several: one is on the rig, the others rest or are charged, and swaps follow a policy. All
/// is continuous in time; what
/// happens is found where it happens. Model and limits: docs/days.md, docs/wiring.md.
/// </summary>
public static class DaySimulation
{
    /// <summary>Runs a build through the days of a plan. The plan's batteries stand in for the build's own.</summary>
    /// <param name="powered">The build.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="options">What is kept; the defaults if null.</param>
    /// <param name="progress">Told of the part that is done, 0…1; null for nobody.</param>
    /// <param name="cancellation">Stops the run.</param>
    /// <exception cref="ArgumentException">The plan has no day or no battery, a day is empty or lasts into the next, or an
    /// internal battery's device is not there.</exception>
    /// <exception cref="InvalidOperationException">What a device draws in a state that is asked of it is not known.</exception>
    /// <exception cref="WiringException">With a full battery and no load something would see more than its maximum
    /// voltage.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static SimulationResult Run(
        PoweredBuild powered, DayPlan plan, SimulationOptions? options = null, IProgress<double>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(powered);
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Batteries.Count == 0)
            throw new ArgumentException("The plan has no battery; accepted: one or more.", nameof(plan));
        foreach (var device in plan.Internal.Keys)
        {
            if (!powered.Devices.ContainsKey(device))
            {
                throw new ArgumentException(
                    $"The internal battery of \"{device}\" belongs to no device of the build; its devices: "
                        + $"{string.Join(", ", powered.Devices.Keys)}.", nameof(plan));
            }
        }

        return RunRig(SimulatedRig.Of(powered, plan.HotSwap), plan, options ?? new SimulationOptions(), progress, cancellation);
    }

    /// <summary>Runs a rig through the days.</summary>
    internal static SimulationResult RunRig(
        SimulatedRig rig, DayPlan plan, SimulationOptions options, IProgress<double>? progress, CancellationToken cancellation)
    {
        var schedule = new DaySchedule(plan);
        var length = schedule.Days.Sum(day => day.End - day.Start);
        SimulationAccount? account = null;
        var done = 0.0;
        var loop = new EventLoop(rig, plan, schedule, cancellation)
        {
            OnStretch = stretch =>
            {
                account?.Add(stretch);
                done += stretch.End - stretch.Start;
                progress?.Report(Math.Min(1, done / length));
            },
        };
        var highest = loop.Swaps.Batteries.Max(battery =>
            battery.Pack.SeriesGroups * battery.Pack.OpenCircuitVoltage.Points[^1].Voltage.Volts);
        if (rig.Network.OverVoltages(ElectricPotential.FromVolts(highest)) is { Count: > 0 } wrong)
            throw new WiringException(string.Join(Environment.NewLine, wrong));
        account = new SimulationAccount(loop, schedule, cancellation);
        if (options.KeepsLimits || options.SeriesPoints > 0)
            loop.Supply.Keeper = new MomentKeeper(rig, loop.Supply, options.KeepsLimits, options.SeriesPoints, length);
        for (var i = 0; i < schedule.Days.Count; i++)
        {
            loop.BeginDay(i, schedule.Days[i].Start, account.BeginDay);
            loop.Run(DaySchedule.Stretches(plan.Days[i], i, schedule.Days[i].Start));
            if (i + 1 < schedule.Days.Count)
                loop.EndDay(schedule.Days[i].End);
            loop.Swaps.Settle(schedule.Days[i].End);
            account.EndDay();
        }

        var result = account.Result(BlockDemands.Of(rig, plan, schedule, cancellation));
        loop.Supply.Keeper = null;
        return options.FindsReserve ? ReserveRun.Add(result, loop, plan, schedule, account) : result;
    }
}
