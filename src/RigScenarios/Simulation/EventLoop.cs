using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>
/// The one loop under everything: between two events nothing changes but the batteries, so the rig is run from one to the next,
/// or to what happens on the
/// way. Times in seconds from midnight of the first day.
/// </summary>
internal sealed class EventLoop
{
    private readonly CancellationToken cancellation;
    private readonly DayEvent[] events;

    // By the block itself, not by what is in it: to compare all its fields at every take would take longer than the take's run.
    private readonly Dictionary<DayBlock, OrderedMap<string>?[]> states = new(ReferenceEqualityComparer.Instance);
    private OrderedMap<string>? statesBefore;
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
        Supply = new RigSupply(rig, plan.HotSwap, cancellation);

        // What had dropped out is switched on again when another battery is on the rig.
        Swaps = new BatterySwaps(plan, Air, start, end, cancellation) { OnMounted = Supply.Reset };
        Devices = [.. rig.Devices.Select(device => new SimulatedDevice(
            device, plan.Internal.TryGetValue(device.Name, out var own)
                ? new SimulatedBattery(device.Name, own, Air, start, cancellation) : null,
            start, plan.Swaps.Restart.Seconds))];

        // Of what comes at the same moment: power and air, the block, a swap's end, a charge's end.
        events =
        [
            new PowerOrChargeChanges(this), new AirTurns(this), new StretchBegins(this), new SwapEnds(this),
            new DeviceHasStarted(this), new ReserveChanges(this),
        ];
    }

    public SimulatedRig Rig { get; }

    public DayPlan Plan { get; }

    public AirTemperature Air { get; }

    public BatterySwaps Swaps { get; }

    public IReadOnlyList<SimulatedDevice> Devices { get; }

    public RigSupply Supply { get; }

    /// <summary>The stretch that holds.</summary>
    public DayStretch Stretch { get; private set; } = null!;

    /// <summary>Its number, from 0 over all days.</summary>
    public int StretchNumber { get; private set; } = -1;

    /// <summary>The stretches to come; null after the last one of the day.</summary>
    public IEnumerator<DayStretch>? Coming { get; private set; }

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
            var charges = Swaps.Mounted is not null && Swaps.Reserve.ChargesAt(now);
            var until = double.PositiveInfinity;
            for (var i = 0; i < events.Length; i++)
                until = Math.Min(until, next[i] = Math.Max(now, events[i].Next(now)));
            now = RunRig(now, until, charges, out var happened);
            for (var i = 0; i < events.Length && Coming is not null && !happened; i++)
            {
                if (next[i] <= now)
                    events[i].Happen(now);
            }

            if (Coming is not null)
                SeeDevices(now);
        }

        return now;
    }

    /// <summary>A day begins: everything is switched on.</summary>
    /// <param name="day">Its number, from 0.</param>
    /// <param name="time">The time, s.</param>
    /// <param name="before">Called when every battery has come to that time, before one is put on.</param>
    public void BeginDay(int day, double time, Action before)
    {
        var isFirst = day == 0 || Plan.DaysBeginAsTheFirst;
        if (day > 0 && isFirst)
        {
            Swaps.BeginAgain(time);
            foreach (var device in Devices)
                device.BeginAgain(time);
        }

        Swaps.Settle(time);
        before();
        statesBefore = null;
        Supply.Reset();
        Swaps.BeginDay(time, isFirst);
    }

    /// <summary>A day is over: everything is switched off.</summary>
    public void EndDay(double time)
    {
        foreach (var device in Devices)
            device.See(time, wanted: false, powered: true, Swaps.Reason, null);
        Swaps.EndDay(time);
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

    private double RunRig(double from, double to, bool reserveCharges, out bool happened)
    {
        happened = false;
        if (to <= from)
            return from;
        var onReserve = Swaps.Mounted is null;
        if ((Swaps.Mounted ?? (Swaps.Reserve.CanFeed ? Swaps.Reserve.Pack : null)) is not { } source)
        {
            RunOwn(from, to);
            return to;
        }

        var now = StatesIn(Stretch, reserveCharges);
        Supply.Keeper?.Set(now, StretchNumber, StartingIn());
        statesBefore = now;
        var run = Supply.Run(source, onReserve, now, from, to, Air, onReserve || Swaps.IsWished ? null : Plan.Swaps);
        RunOwn(from, run.Time);
        happened = run.End != SupplyEnd.Reached;
        switch (run.End)
        {
            case SupplyEnd.Reached:
                return to;
            case SupplyEnd.SwapWished:
                Swaps.IsWished = true;
                if (MaySwapNow)
                    Swaps.Try(Stretch, run.Time);
                break;
            case SupplyEnd.Stopped when onReserve:
                Swaps.Reserve.IsOver(run.Time);
                break;
            case SupplyEnd.Stopped:
                source.AdvanceTo(run.Time);
                FirstStop ??= new RigStop(
                    Duration.FromSeconds(run.Time), run.Reason!, run.RightAfterChange, Ratio.FromDecimalFractions(source.Charge),
                    Temperature.FromKelvins(source.Kelvin), run.Voltage)
                {
                    Battery = source.Name, State = source.StartState,
                };
                Swaps.AfterStop(run.Reason!, Stretch, run.Time);
                break;
        }

        return run.Time;
    }

    private void RunOwn(double from, double to)
    {
        foreach (var device in Devices)
            device.RunOwn(from, to, Rig.OwnWatts(device.Device, Stretch.StateOf(device.Device.Name)), Air, cancellation);
    }

    private string[] StartingIn()
    {
        var began = starting;
        starting = [];
        return began.Count == 0 ? [] : [.. began.Where(device => Supply.Keeper!.Has(device, BuildWiring.StartUp))];
    }

    // What begins to draw: at the begin of a stretch what was off before, after a swap what had lost power.
    private void SeeDevices(double time)
    {
        var live = Swaps.Mounted is not null || Swaps.Reserve.CanFeed;
        var now = StatesIn(Stretch, reserveCharges: false);
        foreach (var device in Devices)
        {
            var wanted = Rig.Wants(device.Device, now);
            var dead = Supply.ReasonOf(device.Device);
            var powered = live && dead is null;
            var drewBefore = statesBefore is { } before && Rig.Wants(device.Device, before) && !device.LostPower;
            if (wanted && powered && !drewBefore)
                starting.Add(device.Device.Name);
            device.See(time, wanted, powered, dead ?? Swaps.Reason, live ? null : Swaps.Awaits);
        }
    }

    private OrderedMap<string> StatesIn(DayStretch stretch, bool reserveCharges)
    {
        if (!states.TryGetValue(stretch.Block, out var known))
            states.Add(stretch.Block, known = new OrderedMap<string>?[4]);
        return known[(stretch.InReset ? 1 : 0) + (reserveCharges ? 2 : 0)] ??= Rig.StatesIn(stretch, reserveCharges);
    }
}
