using RigScenarios.Days;
using RigScenarios.Limits;
using RigScenarios.Parts;
using RigScenarios.Simulation.Events;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>
/// The one loop under everything: between two events nothing changes but the batteries, so the rig is run from one to the next, or to what happens on the
/// way. Times in seconds from midnight of the first day.
/// </summary>
internal sealed class EventLoop
{
    private readonly CancellationToken cancellation;
    private readonly DayEvent[] events;
    private readonly Dictionary<(DayBlock Block, bool InReset, bool ReserveCharges), OrderedMap<string>> states = [];
    private readonly List<Swap> swaps = [];
    private OrderedMap<string>? statesBefore;
    private bool hadSource;
    private HashSet<string> starting = [];

    /// <param name="rig">The rig.</param>
    /// <param name="plan">The days.</param>
    /// <param name="schedule">The days on one line of time.</param>
    /// <param name="cancellation">Stops the run.</param>
    public EventLoop(SimulatedRig rig, DayPlan plan, DaySchedule schedule, CancellationToken cancellation)
    {
        (Rig, Plan, this.cancellation) = (rig, plan, cancellation);
        Air = AirTemperature.Of(plan, schedule.Days);
        var (start, end) = (schedule.Days[0].Start, schedule.Days[^1].End);
        Batteries = [.. plan.Batteries.Select(item => new SimulatedBattery(item.Key, item.Value, Air, start, cancellation))];
        Devices = [.. rig.Devices.Select(device => new SimulatedDevice(
            device, plan.Internal.TryGetValue(device.Name, out var own) ? new SimulatedBattery(device.Name, own, Air, start, cancellation) : null,
            start, plan.Swaps.Restart.Seconds))];
        Bays = new ChargerBays(plan, Air, start, end);
        Supply = new RigSupply(rig, plan.HotSwap, cancellation);
        Reserve = new HotSwapPack(plan.HotSwap, Air, start, cancellation);
        ChargesByNight = plan.Chargers.Values.Any(charger => charger.Bays > 0);

        // Of what comes at the same moment: power and air, the block, a swap's end, a charge's end.
        events = [new PowerOrChargeChanges(this), new AirTurns(this), new StretchBegins(this), new SwapEnds(this), new DeviceHasStarted(this), new ReserveChanges(this)];
        foreach (var battery in Batteries)
            Ready(battery);
    }

    public SimulatedRig Rig { get; }

    public DayPlan Plan { get; }

    public AirTemperature Air { get; }

    public IReadOnlyList<SimulatedBattery> Batteries { get; }

    public IReadOnlyList<SimulatedDevice> Devices { get; }

    public ChargerBays Bays { get; }

    public RigSupply Supply { get; }

    public HotSwapPack Reserve { get; }

    /// <summary>Whether there is any charger with a bay; without one every day begins as the first.</summary>
    public bool ChargesByNight { get; }

    /// <summary>The battery on the rig; null while there is none.</summary>
    public SimulatedBattery? Mounted { get; private set; }

    /// <summary>The battery that is being put on; null for none.</summary>
    public SimulatedBattery? Incoming { get; private set; }

    /// <summary>When the swap that is under way ends; infinite without one.</summary>
    public double SwapEnd { get; private set; } = double.PositiveInfinity;

    /// <summary>Whether another battery is wanted.</summary>
    public bool SwapWished { get; set; }

    /// <summary>The stretch that holds.</summary>
    public DayStretch Stretch { get; private set; } = null!;

    /// <summary>Its number, from 0 over all days.</summary>
    public int StretchNumber { get; private set; } = -1;

    /// <summary>The stretches to come; null after the last one of the day.</summary>
    public IEnumerator<DayStretch>? Coming { get; private set; }

    /// <summary>The swaps, in order.</summary>
    public IReadOnlyList<Swap> Swaps => swaps;

    /// <summary>Why the rig stood still for the last time.</summary>
    public StopReason Reason { get; private set; } = new(StopKind.PlannedSwap);

    /// <summary>What is waited for, while no battery is on the rig and none is coming.</summary>
    public StopKind? Awaits { get; private set; }

    /// <summary>The moment at which the rig stopped for the first time; null if it never did.</summary>
    public RigStop? FirstStop { get; private set; }

    /// <summary>Told of each stretch as it begins; null for nobody.</summary>
    public Action<DayStretch>? OnStretch { get; init; }

    /// <summary>Whether a swap may begin now.</summary>
    public bool MaySwapNow => Plan.Swaps.Allowed switch
    {
        SwapMoments.AnyTime => true,
        SwapMoments.NotWhileRolling => !Stretch.Rolling,
        _ => false,
    };

    /// <summary>Runs through stretches one after the other, until they end or somebody has seen enough.</summary>
    /// <param name="stretches">The stretches, without gaps.</param>
    /// <param name="first">Whether they begin a day.</param>
    /// <param name="enough">Asked after everything that happens; null for never.</param>
    /// <returns>The time reached, s.</returns>
    public double Run(IEnumerable<DayStretch> stretches, bool first = true, Func<bool>? enough = null)
    {
        using var coming = stretches.GetEnumerator();
        if (!coming.MoveNext())
            return double.NaN;
        Coming = coming;
        var now = coming.Current.Start;
        StretchBegins.At(this, now, first);
        SeeDevices(now);
        Span<double> next = stackalloc double[events.Length];
        while (Coming is not null && enough?.Invoke() != true)
        {
            cancellation.ThrowIfCancellationRequested();
            var until = double.PositiveInfinity;
            var charges = Mounted is not null && Reserve.ChargesAt(now);
            for (var i = 0; i < events.Length; i++)
                until = Math.Min(until, next[i] = Math.Max(now, events[i].Next(now)));
            var reached = RunRig(now, until, charges, out var happened);
            now = reached;
            if (!happened)
            {
                for (var i = 0; i < events.Length && Coming is not null; i++)
                {
                    if (next[i] <= now)
                        events[i].Happen(now);
                }
            }

            if (Coming is not null)
                SeeDevices(now);
        }

        return now;
    }

    /// <summary>A day begins: everything is switched on, and the battery that comes next is put on without loss of time.</summary>
    /// <param name="day">Its number, from 0.</param>
    /// <param name="time">The time, s.</param>
    /// <param name="before">Called when every battery has come to that time, before one is put on.</param>
    public void BeginDay(int day, double time, Action before)
    {
        if (day > 0 && !ChargesByNight)
            BeginAgain(time);
        Settle(time);
        before();
        (Incoming, SwapWished, SwapEnd, statesBefore, hadSource) = (null, false, double.PositiveInfinity, null, false);
        Supply.Reset();
        if (NextBattery() is { } first)
            Mount(first, time);
        if (day == 0 || !ChargesByNight)
        {
            foreach (var battery in Batteries.Where(battery => battery != Mounted))
                SetDown(battery, time);
        }

        if (Mounted is null)
            NoBattery(time, null);
    }

    /// <summary>A day is over: everything is switched off, and what is on the rig comes off.</summary>
    public void EndDay(double time)
    {
        foreach (var device in Devices)
            device.See(time, wanted: false, powered: true, Reason, null);
        Reserve.StopCharging(time);
        if (Mounted is not null)
            TakeOff(Mounted, time, wished: SwapWished);
        else if (Incoming is not null)
            TakeOff(Incoming, time, wished: false);
        (Mounted, Incoming) = (null, null);
    }

    /// <summary>Brings every battery to a time.</summary>
    public void Settle(double time)
    {
        Bays.AdvanceTo(time);
        foreach (var battery in Batteries)
            battery.AdvanceTo(time);
    }

    /// <summary>The next stretch begins.</summary>
    public void Take(DayStretch stretch)
    {
        Stretch = stretch;
        StretchNumber++;
        OnStretch?.Invoke(stretch);
    }

    /// <summary>No stretch comes any more.</summary>
    public void Finish() => Coming = null;

    /// <summary>A swap begins, if a battery is fit for it.</summary>
    public void TrySwap(double time, bool forced = false)
    {
        if (NextBattery(time) is { } next)
            BeginSwap(next, time, forced);
    }

    /// <summary>A swap begins.</summary>
    public void BeginSwap(SimulatedBattery next, double time, bool forced)
    {
        var off = Mounted;
        off?.AdvanceTo(time);
        swaps.Add(new Swap(
            Duration.FromSeconds(time), off?.Name, next.Name, off is null ? null : Ratio.FromDecimalFractions(off.Charge),
            Ratio.FromDecimalFractions(next.Charge), forced, Stretch.Day + 1, Stretch.Name));
        Bays.Take(next, time);
        next.Rest(BatteryPlace.OnRig, time, Air);
        (Incoming, SwapEnd) = (next, time + Plan.Swaps.SwapTime.Seconds);
        if (!forced)
            Reason = new StopReason(StopKind.PlannedSwap);
        Reserve.StopCharging(time);
        Mounted = null;
        if (off is not null)
            TakeOff(off, time, wished: SwapWished || forced);
        SwapWished = false;
    }

    /// <summary>A battery is on the rig: what had dropped out is switched on again.</summary>
    public void Mount(SimulatedBattery battery, double time)
    {
        Bays.Take(battery, time);
        battery.Rest(BatteryPlace.OnRig, time, Air);
        (Mounted, LastMounted, Incoming, SwapWished, SwapEnd, Awaits) = (battery, battery, null, false, double.PositiveInfinity, null);
        Supply.Reset();
    }

    /// <summary>The last essential device, or the battery, has stopped.</summary>
    private void RigStops(SupplyRun run)
    {
        var (time, reason) = (run.Time, run.Reason!);
        Reason = reason;
        Mounted!.AdvanceTo(time);
        FirstStop ??= new RigStop(Duration.FromSeconds(time), reason, run.RightAfterChange, Ratio.FromDecimalFractions(Mounted.Charge), Temperature.FromKelvins(Mounted.Kelvin), run.Voltage);
        if (NextBattery(time) is { } next)
        {
            BeginSwap(next, time, forced: true);
            return;
        }

        var off = Mounted;
        Mounted = null;
        Reserve.StopCharging(time);
        TakeOff(off, time, wished: true);
        NoBattery(time, reason);
    }

    /// <summary>The battery taken next; null if none is fit for use.</summary>
    public SimulatedBattery? NextBattery(double time)
    {
        Bays.AdvanceTo(time);
        foreach (var battery in Batteries.Where(battery => battery != Mounted))
            battery.AdvanceTo(time);
        return NextBattery();
    }

    private SimulatedBattery? LastMounted { get; set; }

    private double RunRig(double from, double to, bool reserveCharges, out bool happened)
    {
        happened = false;
        var live = Mounted ?? (Reserve.CanFeed ? Reserve.Pack : null);
        var now = StatesIn(Stretch, reserveCharges);
        if (to <= from)
            return from;
        if (live is null)
        {
            RunOwn(from, to);
            return to;
        }

        Supply.Keeper?.Set(now, StretchNumber, StartingIn(now));
        var run = Supply.Run(live, Mounted is null, now, from, to, Air, Mounted is null || SwapWished ? null : Plan.Swaps);
        RunOwn(from, run.Time);
        if (run.End == SupplyEnd.Reached)
            return to;
        happened = true;
        switch (run.End)
        {
            case SupplyEnd.SwapWished:
                SwapWished = true;
                if (MaySwapNow)
                    TrySwap(run.Time);
                break;
            case SupplyEnd.Stopped when Mounted is null:
                Reserve.IsOver(run.Time);
                break;
            case SupplyEnd.Stopped:
                RigStops(run);
                break;
        }

        return run.Time;
    }

    private void RunOwn(double from, double to)
    {
        foreach (var device in Devices)
        {
            var state = Stretch.StateOf(device.Device.Name);
            device.RunOwn(from, to, Rig.OwnWatts(device.Device, state), Air, cancellation);
        }
    }

    // What begins to draw together: at the begin of a stretch what was off before, after a swap what had lost power.
    private string[] StartingIn(OrderedMap<string> now)
    {
        var keeper = Supply.Keeper!;
        var began = starting;
        starting = [];
        (statesBefore, hadSource) = (now, true);
        return began.Count == 0 ? [] : [.. began.Where(device => keeper.Has(device, Wiring.BuildWiring.StartUp))];
    }

    private void SeeDevices(double time)
    {
        var live = Mounted is not null || Reserve.CanFeed;
        var now = StatesIn(Stretch, reserveCharges: false);
        foreach (var device in Devices)
        {
            var wanted = Rig.Wants(device.Device, now);
            var dead = Supply.ReasonOf(device.Device);
            var powered = live && dead is null;
            var drewBefore = hadSource && statesBefore is { } before && Rig.Wants(device.Device, before) && !device.LostPower;
            if (wanted && powered && !drewBefore)
                starting.Add(device.Device.Name);
            device.See(time, wanted, powered, dead ?? Reason, live ? null : Awaits);
        }
    }

    private OrderedMap<string> StatesIn(DayStretch stretch, bool reserveCharges)
    {
        var key = (stretch.Block, stretch.InReset, reserveCharges);
        if (!states.TryGetValue(key, out var known))
            states.Add(key, known = Rig.StatesIn(stretch, reserveCharges));
        return known;
    }

    private void BeginAgain(double time)
    {
        foreach (var battery in Batteries)
        {
            battery.BeginAgain(time);
            Ready(battery);
        }

        Reserve.BeginAgain(time);
        foreach (var device in Devices)
            device.BeginAgain(time);
        LastMounted = null;
    }

    private void Ready(SimulatedBattery battery)
    {
        battery.IsFull = battery.Charge >= 0.995;
        var least = Plan.Swaps.LeastCharge.DecimalFractions;
        battery.ReadyFrom = Plan.TakesAnyCharge || battery.Charge >= least ? 0 : least;
    }

    private void NoBattery(double time, StopReason? reason)
    {
        (Incoming, SwapEnd, SwapWished) = (null, double.PositiveInfinity, false);
        Bays.AdvanceTo(time);
        Awaits = Bays.MayGiveMore ? StopKind.WaitingForCharge : StopKind.NothingLeft;
        Reason = reason ?? new StopReason(Awaits.Value);
    }

    private void TakeOff(SimulatedBattery battery, double time, bool wished)
    {
        battery.AdvanceTo(time);
        var least = Plan.Swaps.LeastCharge.DecimalFractions;
        battery.ReadyFrom = wished ? Math.Min(1, Math.Max(battery.Charge + 0.1, least)) : battery.Charge < least ? least : 0;
        SetDown(battery, time);
    }

    private void SetDown(SimulatedBattery battery, double time)
    {
        battery.Rest(battery.IsFull ? BatteryPlace.Full : battery.IsReady ? BatteryPlace.Resting : BatteryPlace.TooLow, time);
        Bays.Offer(battery, time);
    }

    private SimulatedBattery? NextBattery()
    {
        var fit = Batteries.Where(battery => battery != Mounted && battery.IsReady).ToList();
        var free = fit.Where(battery => battery.Place != BatteryPlace.Charging).ToList();
        if (free.Count == 0 && Plan.Swaps.InterruptCharging)
            free = fit;
        if (free.Count == 0)
            return null;
        if (Plan.Swaps.Next == Days.NextBattery.FullestFirst)
            return free.MaxBy(battery => battery.Charge);
        var after = LastMounted is null ? -1 : Batteries.Index().First(item => item.Item == LastMounted).Index;
        return free.MinBy(battery => (Batteries.Index().First(item => item.Item == battery).Index - after - 1 + Batteries.Count) % Batteries.Count);
    }
}
