using RigScenarios.Batteries;
using RigScenarios.Days;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>One device over all the days: whether it runs, on what, and why not.</summary>
internal sealed class SimulatedDevice(RigDevice device, SimulatedBattery? own, double start, double restart)
{
    private readonly List<DeviceSpan> spans = [];
    private DeviceActivity activity = DeviceActivity.Off;
    private (StopReason Reason, StopKind? Awaits)? stop;
    private double since = start;
    private double restartUntil = double.NegativeInfinity;
    private bool hadPower = true;
    private bool ownIsOver;

    public RigDevice Device { get; } = device;

    public IReadOnlyList<DeviceSpan> Spans => spans;

    /// <summary>Whether it has lost power since it last ran, so that it starts up when power comes.</summary>
    public bool LostPower => !hadPower;

    /// <summary>Whether it is wanted and stands still for another reason than a planned swap.</summary>
    public bool IsStopped => activity == DeviceActivity.Down && stop is { Reason.Kind: not StopKind.PlannedSwap };

    /// <summary>Why it does not run; null while it does, or is not wanted.</summary>
    public StopReason? Reason => activity == DeviceActivity.Down ? stop?.Reason : null;

    /// <summary>When it will have started again, if it is doing that at a time; else infinite.</summary>
    public double RestartEnd(double time) =>
        activity == DeviceActivity.Down && hadPower && restartUntil > time ? restartUntil : double.PositiveInfinity;

    /// <summary>Sees what holds from a time on.</summary>
    /// <param name="time">The time, s.</param>
    /// <param name="wanted">Whether its state draws anything.</param>
    /// <param name="powered">Whether its inlet is live.</param>
    /// <param name="reason">Why not, if it isn't.</param>
    /// <param name="awaits">What is waited for, if no battery is on the rig.</param>
    public void See(double time, bool wanted, bool powered, StopReason reason, StopKind? awaits)
    {
        if (!wanted)
        {
            // One that is off when its power goes need not start again; why it stopped before is kept as long as it has no power.
            (hadPower, restartUntil) = (true, double.NegativeInfinity);
            Set(time, DeviceActivity.Off);
            if (powered)
                stop = null;
        }
        else if (powered)
        {
            if (!hadPower)
                restartUntil = time + restart;
            hadPower = true;
            if (time >= restartUntil - 1e-9)
                Run(time, DeviceActivity.Up);
        }
        else if (own is not null && !ownIsOver)
        {
            hadPower = true;
            Run(time, DeviceActivity.OnOwnBattery);
        }
        else
        {
            var kept = stop is { } before && (!hadPower || activity == DeviceActivity.Off) ? before.Reason : reason;
            var next = (kept, awaits ?? (hadPower ? null : stop?.Awaits));
            hadPower = false;
            Set(time, DeviceActivity.Down, next);
        }
    }

    /// <summary>Lets its own battery run from one time to another, if it runs on it.</summary>
    public void RunOwn(double from, double to, double watts, AirTemperature air, CancellationToken cancellation)
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
                new DemandCursor([new TerminalDraw(watts, 0, 0)], [end - time], 0),
                new DischargeOptions { TimeLimit = Duration.FromSeconds(end - time), SeriesPoints = 0 }, observer: null,
                slope).Run(cancellation);
            var over = run.Cause != EndCause.TimeLimit;
            time = over ? time + run.EndTime.Seconds : end;
            own.Ran(run, time);
            if (over)
            {
                ownIsOver = true;
                own.Rest(BatteryPlace.TooLow, time, air);
                hadPower = false;
                Set(time, DeviceActivity.Down, (run.Cause.AsStop(Device.Name), null));
            }
        }

        if (!ownIsOver)
            own.Rest(BatteryPlace.Resting, to, air);
    }

    /// <summary>Its own battery is as it was before the first day.</summary>
    public void BeginAgain(double time)
    {
        if (own is null)
            return;
        own.BeginAgain(time);
        ownIsOver = false;
    }

    /// <summary>Closes the last span.</summary>
    public void Close(double time)
    {
        AddSpan(time);
        since = time;
    }

    private void Run(double time, DeviceActivity what)
    {
        Set(time, what);
        stop = null;
    }

    private void Set(double time, DeviceActivity next, (StopReason Reason, StopKind? Awaits)? why = null)
    {
        if (next == activity && (why is null || why == stop))
            return;
        AddSpan(time);
        (activity, since) = (next, time);
        if (why is not null)
            stop = why;
    }

    private void AddSpan(double time)
    {
        if (time <= since)
            return;
        var down = activity == DeviceActivity.Down ? stop : null;
        spans.Add(new DeviceSpan(activity, Duration.FromSeconds(since), Duration.FromSeconds(time), down?.Reason, down?.Awaits));
    }
}
