using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Days;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>One device over all the days: whether it runs, on what, and why not.</summary>
internal sealed class DeviceCourse(string name, PoweredDevice device, BatteryCourse? own, double start, double restart)
{
    private readonly List<DeviceSpan> spans = [];
    private DeviceActivity activity = DeviceActivity.Off;
    private (DownCause Cause, string Because)? down;
    private double since = start;
    private double restartUntil = double.NegativeInfinity;
    private bool hadPower = true;
    private bool ownIsOver;

    public string Name { get; } = name;

    public PoweredDevice Device { get; } = device;

    public IReadOnlyList<DeviceSpan> Spans => spans;

    /// <summary>When it will have started again, if it is doing that at a time; else infinite.</summary>
    public double RestartEnd(double time) => activity == DeviceActivity.Down && hadPower && restartUntil > time ? restartUntil : double.PositiveInfinity;

    /// <summary>Whether it runs on the battery inside it.</summary>
    public bool OnOwn => activity == DeviceActivity.OnOwnBattery;

    /// <summary>Whether it is asked for and can't run.</summary>
    public bool IsDown => activity == DeviceActivity.Down;

    /// <summary>Sees what holds from a time on.</summary>
    /// <param name="time">The time, s.</param>
    /// <param name="state">What is asked of it.</param>
    /// <param name="powered">Whether its inlet is live.</param>
    /// <param name="cause">Why not, if it isn't.</param>
    /// <param name="because">The same with names.</param>
    public void See(double time, PowerState state, bool powered, DownCause cause, string because)
    {
        if (state == PowerState.Off)
        {
            hadPower = true;
            restartUntil = double.NegativeInfinity;
            Set(time, DeviceActivity.Off, null);
        }
        else if (powered)
        {
            if (!hadPower)
                restartUntil = time + restart;
            hadPower = true;
            if (time < restartUntil - 1e-9)
                Set(time, DeviceActivity.Down, down ?? (cause, because));
            else
                Set(time, DeviceActivity.Up, null);
        }
        else if (own is not null && !ownIsOver)
        {
            hadPower = true;
            Set(time, DeviceActivity.OnOwnBattery, null);
        }
        else
        {
            // What stopped it stays its cause, also if a planned swap follows.
            var stays = activity == DeviceActivity.Down && !hadPower && cause == DownCause.PlannedSwap ? down : null;
            hadPower = false;
            Set(time, DeviceActivity.Down, stays ?? (cause, because));
        }
    }

    /// <summary>Lets its own battery run from one time to another, if it runs on it.</summary>
    public void RunOwn(double from, double to, PowerState state, AirTemperature air, CancellationToken cancellation)
    {
        if (own is null || activity != DeviceActivity.OnOwnBattery)
            return;
        own.AdvanceTo(from);
        own.Enter(BatteryPlace.OnRig, from);
        var time = from;
        while (time < to && !ownIsOver)
        {
            var (kelvin, slope, until) = air.At(time);
            var end = Math.Min(to, until);
            var run = new DischargeRun(
                own.Parameters, Temperature.FromKelvins(kelvin), own.StartState,
                new DemandCursor([new TerminalDraw((double)Device.DrawIn(state).Watts, 0, 0)], [end - time], 0),
                new DischargeOptions { TimeLimit = Duration.FromSeconds(end - time), SeriesPoints = 0 }, witness: null, slope).Run(cancellation);
            var over = run.Cause != EndCause.TimeLimit;
            time = over ? time + run.EndTime.Seconds : end;
            own.Ran(run, time);
            if (over)
            {
                ownIsOver = true;
                own.Rest(BatteryPlace.Spent, time, air);
                hadPower = false;
                Set(time, DeviceActivity.Down, (DownCause.DropOut, $"the battery inside {Name}: {run.Cause.InWords()}"));
            }
        }
        if (!ownIsOver)
            own.Rest(BatteryPlace.Resting, to, air);
    }

    public void Close(double time) => AddSpan(time);

    private void Set(double time, DeviceActivity next, (DownCause Cause, string Because)? why)
    {
        if (next == activity && why == down)
            return;
        AddSpan(time);
        (activity, down, since) = (next, why, time);
    }

    private void AddSpan(double time)
    {
        if (time > since)
            spans.Add(new DeviceSpan(activity, Duration.FromSeconds(since), Duration.FromSeconds(time), down?.Cause, down?.Because));
    }
}
