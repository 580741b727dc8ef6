using RigScenarios.Days;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>Which battery is on the rig, which is coming, and which is taken next. Times in seconds from midnight of the first
/// day.</summary>
internal sealed class BatterySwaps
{
    /// <summary>The greatest number of swaps in a plan. Nobody makes that many; batteries that last for seconds, or are no better
    /// than what comes off, would be swapped without end.</summary>
    public const int Most = 1000;

    private readonly DayPlan plan;
    private readonly AirTemperature air;
    private readonly List<Swap> done = [];
    private SimulatedBattery? lastMounted;

    public BatterySwaps(DayPlan plan, AirTemperature air, double start, double end, CancellationToken cancellation)
    {
        (this.plan, this.air) = (plan, air);
        Batteries = [.. plan.Batteries.Select(item => new SimulatedBattery(item.Key, item.Value, air, start, cancellation))];
        Bays = new ChargerBays(plan, air, start, end);
        Reserve = new HotSwapPack(plan.HotSwap, air, start, cancellation);
        foreach (var battery in Batteries)
            SetReady(battery);
    }

    public IReadOnlyList<SimulatedBattery> Batteries { get; }

    public ChargerBays Bays { get; }

    /// <summary>The small pack that carries the rig through a swap.</summary>
    public HotSwapPack Reserve { get; }

    /// <summary>The battery on the rig; null while there is none.</summary>
    public SimulatedBattery? Mounted { get; private set; }

    /// <summary>The battery that is being put on; null for none.</summary>
    public SimulatedBattery? Incoming { get; private set; }

    /// <summary>When the swap that is under way ends; infinite without one.</summary>
    public double SwapEnd { get; private set; } = double.PositiveInfinity;

    /// <summary>Whether another battery is wanted.</summary>
    public bool IsWished { get; set; }

    /// <summary>Why the rig stood still for the last time.</summary>
    public StopReason Reason { get; private set; } = new(StopKind.PlannedSwap);

    /// <summary>What is waited for, while no battery is on the rig and none is coming.</summary>
    public StopKind? Awaits { get; private set; }

    /// <summary>The swaps, in order.</summary>
    public IReadOnlyList<Swap> Done => done;

    /// <summary>Called when a battery has been put on.</summary>
    public Action? OnMounted { get; init; }

    /// <summary>A day begins: the battery that comes next is put on without loss of time.</summary>
    /// <param name="time">The time, s.</param>
    /// <param name="isFirst">Whether nothing has happened before; then the others are set down where they rest, or offered to a
    /// charger.</param>
    public void BeginDay(double time, bool isFirst)
    {
        (Incoming, IsWished, SwapEnd) = (null, false, double.PositiveInfinity);
        if (Next() is { } first)
            Mount(first, time);
        if (isFirst)
        {
            foreach (var battery in Batteries.Where(battery => battery != Mounted))
                SetDown(battery, time);
        }

        if (Mounted is null)
            Wait(time, null);
    }

    /// <summary>A day is over: what is on the rig comes off.</summary>
    public void EndDay(double time)
    {
        Reserve.StopCharging(time);
        if (Mounted is not null)
            TakeOff(Mounted, time, wished: IsWished);
        else if (Incoming is not null)
            TakeOff(Incoming, time, wished: false);
        (Mounted, Incoming) = (null, null);
    }

    /// <summary>Every battery is as it was before the first day.</summary>
    public void BeginAgain(double time)
    {
        foreach (var battery in Batteries)
        {
            battery.BeginAgain(time);
            SetReady(battery);
        }

        Reserve.BeginAgain(time);
        lastMounted = null;
    }

    /// <summary>Brings every battery to a time.</summary>
    public void Settle(double time)
    {
        Bays.AdvanceTo(time);
        foreach (var battery in Batteries)
            battery.AdvanceTo(time);
    }

    /// <summary>A swap begins, if a battery is fit for it.</summary>
    public void Try(DayStretch stretch, double time, bool forced = false)
    {
        if (Next(time) is { } next)
            Begin(next, stretch, time, forced);
    }

    /// <summary>A swap begins.</summary>
    public void Begin(SimulatedBattery next, DayStretch stretch, double time, bool forced)
    {
        if (done.Count >= Most)
        {
            throw new PlanBoundException(
                $"More than {Most:N0} swaps would be needed, the last of them in \"{stretch.Name}\" on day {stretch.Day + 1}.");
        }

        var off = Mounted;
        off?.AdvanceTo(time);
        done.Add(new Swap(
            Duration.FromSeconds(time), off?.Name, next.Name, off is null ? null : Ratio.FromDecimalFractions(off.Charge),
            Ratio.FromDecimalFractions(next.Charge), forced, stretch.Day + 1, stretch.Name));
        Bays.Take(next, time);
        next.Rest(BatteryPlace.OnRig, time, air);
        (Incoming, SwapEnd) = (next, time + plan.Swaps.SwapTime.Seconds);
        if (!forced)
            Reason = new StopReason(StopKind.PlannedSwap);
        Reserve.StopCharging(time);
        Mounted = null;
        if (off is not null)
            TakeOff(off, time, wished: IsWished || forced);
        IsWished = false;
    }

    /// <summary>The swap that is under way is done.</summary>
    public void Finish(double time)
    {
        if (Incoming is { } incoming && SwapEnd <= time)
            Mount(incoming, time);
    }

    /// <summary>The rig has stopped: another battery goes on if one is fit, else it is waited for.</summary>
    public void AfterStop(StopReason reason, DayStretch stretch, double time)
    {
        Reason = reason;
        if (Next(time) is { } next)
        {
            Begin(next, stretch, time, forced: true);
            return;
        }

        var off = Mounted!;
        Mounted = null;
        Reserve.StopCharging(time);
        TakeOff(off, time, wished: true);
        Wait(time, reason);
    }

    /// <summary>The battery taken next; null if none is fit for use.</summary>
    public SimulatedBattery? Next(double time)
    {
        Bays.AdvanceTo(time);
        foreach (var battery in Batteries.Where(battery => battery != Mounted))
            battery.AdvanceTo(time);
        return Next();
    }

    private SimulatedBattery? Next()
    {
        var fit = Batteries.Where(battery => battery != Mounted && battery.IsReady).ToList();
        var free = fit.Where(battery => battery.Place != BatteryPlace.Charging).ToList();
        if (free.Count == 0 && plan.Swaps.InterruptCharging)
            free = fit;
        if (free.Count == 0)
            return null;
        if (plan.Swaps.Next == NextBattery.FullestFirst)
            return free.MaxBy(battery => battery.Charge);
        var after = lastMounted is null ? -1 : PlaceOf(lastMounted);
        return free.MinBy(battery => (PlaceOf(battery) - after - 1 + Batteries.Count) % Batteries.Count);
    }

    private int PlaceOf(SimulatedBattery battery) => Batteries.Index().First(item => item.Item == battery).Index;

    private void Mount(SimulatedBattery battery, double time)
    {
        Bays.Take(battery, time);
        battery.Rest(BatteryPlace.OnRig, time, air);
        (Mounted, lastMounted, Incoming, IsWished, SwapEnd, Awaits) = (battery, battery, null, false,
            double.PositiveInfinity, null);
        OnMounted?.Invoke();
    }

    private void Wait(double time, StopReason? reason)
    {
        (Incoming, SwapEnd, IsWished) = (null, double.PositiveInfinity, false);
        Bays.AdvanceTo(time);
        Awaits = Bays.MayGiveMore ? StopKind.WaitingForCharge : StopKind.NothingLeft;
        Reason = reason ?? new StopReason(Awaits.Value);
    }

    private void TakeOff(SimulatedBattery battery, double time, bool wished)
    {
        battery.AdvanceTo(time);
        var least = plan.Swaps.LeastCharge.DecimalFractions;
        battery.ReadyFrom = wished ? Math.Min(1, Math.Max(battery.Charge + 0.1, least)) : battery.Charge < least ? least : 0;
        SetDown(battery, time);
    }

    private void SetDown(SimulatedBattery battery, double time)
    {
        battery.Rest(battery.IsFull ? BatteryPlace.Full : battery.IsReady ? BatteryPlace.Resting : BatteryPlace.TooLow, time);
        Bays.Offer(battery, time);
    }

    private void SetReady(SimulatedBattery battery)
    {
        battery.IsFull = battery.Charge >= 0.995;
        var least = plan.Swaps.LeastCharge.DecimalFractions;
        battery.ReadyFrom = plan.TakesAnyCharge || battery.Charge >= least ? 0 : least;
    }
}
