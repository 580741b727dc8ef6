using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>One walk through the days of a plan: what <see cref="DaySimulation"/> carries from moment to moment. Times in seconds from midnight of the first day.</summary>
internal sealed class DayPlanWalk
{
    private readonly DayPlan plan;
    private readonly IProgress<double>? progress;
    private readonly CancellationToken cancellation;
    private readonly DaySchedule schedule;
    private readonly AirTemperature air;
    private readonly List<BatteryCourse> batteries;
    private readonly List<DeviceCourse> devices;
    private readonly BayQueue bays;
    private readonly RigFeed feed;
    private readonly HotSwapCourse reserve;
    private readonly DayPlanAccount account;

    private BatteryCourse? mounted;
    private BatteryCourse? incoming;
    private BatteryCourse? last;
    private double swapEnd;
    private bool wanted;
    private (DownCause Cause, string Because) cause;
    private DayStretch stretch = null!;

    public DayPlanWalk(PoweredBuild powered, DayPlan plan, IProgress<double>? progress, CancellationToken cancellation)
    {
        (this.plan, this.progress, this.cancellation) = (plan, progress, cancellation);
        schedule = new DaySchedule(plan);
        air = AirTemperature.Of(plan, schedule.Days);
        var (start, end) = (schedule.Days[0].Start, schedule.Days[^1].End);
        batteries = [.. plan.Batteries.Select(item => new BatteryCourse(item.Key, item.Value, air, start, cancellation))];
        devices = [.. powered.Devices.Select(item => new DeviceCourse(
            item.Key, item.Value, plan.Internal.TryGetValue(item.Key, out var own) ? new BatteryCourse(item.Key, own, air, start, cancellation) : null,
            start, plan.Swaps.Restart.Seconds))];
        bays = new BayQueue(plan, air, start, end);
        feed = new RigFeed(powered, plan.HotSwap, cancellation);
        var highest = batteries.Max(battery => battery.Pack.SeriesGroups * battery.Pack.OpenCircuitVoltage.Points[^1].Voltage.Volts);
        if (feed.OverVoltages(ElectricPotential.FromVolts(highest)) is { Count: > 0 } wrong)
            throw new WiringException(string.Join(Environment.NewLine, wrong));
        reserve = new HotSwapCourse(plan.HotSwap, air, start, cancellation);
        account = new DayPlanAccount(schedule, batteries, devices);
    }

    public SimulationResult Run()
    {
        var length = schedule.Days.Sum(day => day.End - day.Start);
        var done = 0.0;
        foreach (var battery in batteries)
        {
            battery.IsFull = battery.Charge >= 0.995;
            battery.ReadyFrom = battery.Charge < plan.Swaps.LeastCharge.DecimalFractions ? plan.Swaps.LeastCharge.DecimalFractions : 0;
        }

        for (var i = 0; i < schedule.Days.Count; i++)
        {
            var (_, start, end) = schedule.Days[i];
            BeginDay(i, start);
            foreach (var next in DaySchedule.Stretches(plan.Days[i], i, start))
            {
                stretch = next;
                account.Add(next);
                Walk(first: next.Start == start);
                done += next.End - next.Start;
                progress?.Report(done / length);
            }
            EndDay(i, end);
        }

        return account.Result(feed, reserve.Course);
    }

    private void BeginDay(int day, double time)
    {
        bays.AdvanceTo(time);
        foreach (var battery in batteries)
            battery.AdvanceTo(time);
        account.BeginDay(day);
        (incoming, wanted, swapEnd) = (null, false, double.PositiveInfinity);
        feed.Reset();
        if (Next() is { } first)
            Mount(first, time);
        if (day == 0)
        {
            foreach (var battery in batteries.Where(battery => battery != mounted))
                SetDown(battery, time);
        }
        if (mounted is null)
            NoBattery(time, "no battery is fit for use");
    }

    private void EndDay(int day, double time)
    {
        foreach (var device in devices)
            device.See(time, PowerState.Off, powered: false, cause.Cause, cause.Because);
        reserve.StopCharging(time);
        if (mounted is not null)
            TakeOff(mounted, time, spent: wanted);
        else if (incoming is not null)
            TakeOff(incoming, time, spent: false);
        (mounted, incoming) = (null, null);
        bays.AdvanceTo(time);
        foreach (var battery in batteries)
            battery.AdvanceTo(time);
        account.EndDay(day);
    }

    private void Walk(bool first)
    {
        var time = stretch.Start;
        if (mounted is not null)
        {
            if (wanted && (stretch.BeginsBlock || AllowedNow))
                TrySwap(time);
            else if (plan.Swaps.AtBlockEnds && stretch.BeginsBlock && !first && Next(time) is { } fuller && fuller.Charge >= Charge(mounted, time) + 0.05)
                BeginSwap(fuller, time, forced: false);
        }
        SeeDevices(time);
        while (time < stretch.End)
        {
            cancellation.ThrowIfCancellationRequested();
            var limit = devices.Min(device => (double?)device.RestartEnd(time)) ?? double.PositiveInfinity;
            limit = Math.Min(Math.Min(stretch.End, limit), air.At(time).Until);
            time = mounted is not null ? OnBattery(time, limit) : WithoutBattery(time, limit);
            SeeDevices(time);
        }
    }

    private double OnBattery(double time, double limit)
    {
        // A swap that waits for a battery may begin when one comes from a charger.
        if (wanted && AllowedNow)
            limit = Math.Min(limit, Math.Max(bays.NextEvent, time + 1e-3));
        var charges = reserve.Charges(time);
        limit = Math.Min(limit, reserve.NextEvent(time));
        var (reached, end, because) = feed.Run(mounted!, behindDiode: false, stretch, time, limit, air, wanted ? null : plan.Swaps, charges);
        RunOwn(time, reached);
        switch (end)
        {
            case FeedEnd.Reached:
                if (wanted && AllowedNow)
                    TrySwap(reached);
                break;
            case FeedEnd.Warning:
                wanted = true;
                if (AllowedNow)
                    TrySwap(reached);
                break;
            case FeedEnd.Dropped:
                cause = (DownCause.DropOut, because);
                break;
            default:
                RigStops(reached, because);
                break;
        }
        return reached;
    }

    private double WithoutBattery(double time, double limit)
    {
        limit = Math.Min(limit, incoming is not null ? swapEnd : Math.Max(time, bays.NextEvent));
        if (limit > time && reserve.CanFeed)
        {
            var (reached, end, _) = feed.Run(reserve.Course!, behindDiode: true, stretch, time, limit, air, watch: null, chargesReserve: false);
            RunOwn(time, reached);
            if (end == FeedEnd.Stopped)
                reserve.IsOver(reached);
            if (end != FeedEnd.Reached)
                return reached;
            limit = reached;
        }
        else
        {
            RunOwn(time, limit);
        }

        if (incoming is null)
        {
            bays.AdvanceTo(limit);
            if (Next(limit) is { } come)
                BeginSwap(come, limit, forced: true);
        }
        else if (limit >= swapEnd)
        {
            Mount(incoming, limit);
        }
        return limit;
    }

    private void RunOwn(double from, double to)
    {
        foreach (var device in devices)
            device.RunOwn(from, to, stretch.StateOf(device.Name), air, cancellation);
    }

    private bool AllowedNow => plan.Swaps.Allowed switch
    {
        SwapMoments.AnyTime => true,
        SwapMoments.NotWhileRolling => !stretch.Rolling,
        _ => false,
    };

    private void TrySwap(double time)
    {
        if (Next(time) is { } next)
            BeginSwap(next, time, forced: false);
    }

    private void BeginSwap(BatteryCourse next, double time, bool forced)
    {
        var off = mounted;
        account.Add(new Swap(
            Duration.FromSeconds(time), off?.Name, next.Name, off is null ? null : Ratio.FromDecimalFractions(Charge(off, time)), Ratio.FromDecimalFractions(next.Charge), forced,
            stretch.Day + 1, stretch.Name));
        bays.Take(next, time);
        next.Rest(BatteryPlace.OnRig, time, air);
        (incoming, swapEnd) = (next, time + plan.Swaps.SwapTime.Seconds);
        if (!forced)
            cause = (DownCause.PlannedSwap, "swap of the battery");
        reserve.StopCharging(time);
        mounted = null;
        if (off is not null)
            TakeOff(off, time, spent: wanted || forced);
        wanted = false;
    }

    private void RigStops(double time, string because)
    {
        cause = (DownCause.DropOut, because);
        if (Next(time) is { } next)
        {
            BeginSwap(next, time, forced: true);
            return;
        }
        var off = mounted!;
        mounted = null;
        reserve.StopCharging(time);
        TakeOff(off, time, spent: true);
        NoBattery(time, because);
    }

    private void NoBattery(double time, string because)
    {
        (incoming, swapEnd, wanted) = (null, double.PositiveInfinity, false);
        bays.AdvanceTo(time);
        cause = bays.MayGiveMore ? (DownCause.WaitingForCharge, $"{because}, and no other battery is charged") : (DownCause.NothingLeft, $"{because}, and no other battery is left");
    }

    private void Mount(BatteryCourse battery, double time)
    {
        bays.Take(battery, time);
        battery.Rest(BatteryPlace.OnRig, time, air);
        (mounted, last, incoming, wanted) = (battery, battery, null, false);
        feed.Reset();
    }

    private void TakeOff(BatteryCourse battery, double time, bool spent)
    {
        battery.AdvanceTo(time);
        var least = plan.Swaps.LeastCharge.DecimalFractions;
        battery.ReadyFrom = spent ? Math.Min(1, Math.Max(battery.Charge + 0.1, least)) : battery.Charge < least ? least : 0;
        SetDown(battery, time);
    }

    private void SetDown(BatteryCourse battery, double time)
    {
        battery.Rest(battery.IsFull ? BatteryPlace.Full : battery.IsReady ? BatteryPlace.Resting : BatteryPlace.Spent, time);
        bays.Offer(battery, time);
    }

    private static double Charge(BatteryCourse battery, double time)
    {
        battery.AdvanceTo(time);
        return battery.Charge;
    }

    private BatteryCourse? Next(double time)
    {
        bays.AdvanceTo(time);
        foreach (var battery in batteries.Where(battery => battery != mounted))
            battery.AdvanceTo(time);
        return Next();
    }

    // The battery taken next; null if none is fit for use.
    private BatteryCourse? Next()
    {
        var fit = batteries.Where(battery => battery != mounted && battery.IsReady).ToList();
        var free = fit.Where(battery => battery.Place != BatteryPlace.Charging).ToList();
        if (free.Count == 0 && plan.Swaps.InterruptCharging)
            free = fit;
        if (free.Count == 0)
            return null;
        if (plan.Swaps.Next == NextBattery.FullestFirst)
            return free.MaxBy(battery => battery.Charge);
        var after = last is null ? -1 : batteries.IndexOf(last);
        return free.MinBy(battery => (batteries.IndexOf(battery) - after - 1 + batteries.Count) % batteries.Count);
    }

    private void SeeDevices(double time)
    {
        var live = mounted is not null || reserve.CanFeed;
        foreach (var device in devices)
            device.See(time, stretch.StateOf(device.Name), live && !feed.IsDead(device.Name), cause.Cause, cause.Because);
    }
}
