using RigScenarios.Batteries;
using RigScenarios.Days;
using RigScenarios.Limits;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>Why a run of the rig on one source ended.</summary>
internal enum SupplyEnd
{
    /// <summary>The time is over.</summary>
    Reached,

    /// <summary>The condition of a swap holds.</summary>
    SwapWished,

    /// <summary>Something dropped out, and the rig goes on.</summary>
    DroppedOut,

    /// <summary>The last essential device stopped, or the source ended.</summary>
    Stopped,
}

/// <summary>How a run of the rig on one source ended.</summary>
/// <param name="Time">s from midnight of the first day.</param>
/// <param name="End">Why it ended.</param>
/// <param name="Reason">What stopped; null if nothing did.</param>
/// <param name="RightAfterChange">Whether that held right after a change.</param>
/// <param name="Voltage">Terminal voltage then; null where nothing could be delivered.</param>
internal sealed record SupplyRun(double Time, SupplyEnd End, StopReason? Reason = null, bool RightAfterChange = false,
    ElectricPotential? Voltage = null);

/// <summary>The rig's wiring with what has dropped out of it, run on the source that feeds it.</summary>
internal sealed class RigSupply
{
    private readonly SimulatedRig rig;
    private readonly HotSwapReserve? reserve;
    private readonly CancellationToken cancellation;
    private readonly bool[] stopped;
    private readonly StopReason?[] dead;
    private readonly Dictionary<(OrderedMap<string> States, string[]? Momentary), WiringDraw> draws = [];
    private readonly List<DropOut> dropOuts = [];

    public RigSupply(SimulatedRig rig, HotSwapReserve? reserve, CancellationToken cancellation)
    {
        (this.rig, this.reserve, this.cancellation) = (rig, reserve, cancellation);
        stopped = new bool[rig.Network.Count];
        dead = new StopReason?[rig.Network.Count];
    }

    /// <summary>What dropped out by itself, in order.</summary>
    public IReadOnlyList<DropOut> DropOuts => dropOuts;

    /// <summary>Told of every moment; null for nobody.</summary>
    public MomentKeeper? Keeper { get; set; }

    /// <summary>The reason why a device, or something above it, has stopped; null while it may run.</summary>
    public StopReason? ReasonOf(RigDevice device) => dead[device.Number];

    /// <summary>All that had stopped is switched on again: another source stands at the root, or another day begins.</summary>
    public void Reset()
    {
        Array.Clear(stopped);
        Array.Clear(dead);
        draws.Clear();
    }

    /// <summary>Runs the rig on a source until a time or until something happens.</summary>
    /// <param name="source">The source.</param>
    /// <param name="behindDiode">Whether it stands behind the diode of the reserve.</param>
    /// <param name="states">The state of each device.</param>
    /// <param name="from">Begin, s.</param>
    /// <param name="to">End, s; within one piece of the air.</param>
    /// <param name="air">The air.</param>
    /// <param name="watch">The conditions of a swap that are watched; null for none.</param>
    public SupplyRun Run(SimulatedBattery source, bool behindDiode, OrderedMap<string> states, double from, double to,
        AirTemperature air, SwapPolicy? watch)
    {
        source.AdvanceTo(from);
        var draw = DrawIn(states);
        var formula = behindDiode ? null : draw.AtTerminals();
        var warning = watch?.WarningVoltage?.Volts;
        double? watched = formula is { } known ? Math.Max(known.Watched ?? 0, warning ?? 0) : null;
        var (kelvin, slope, _) = air.At(from);
        var observer = Keeper?.Observe(source, behindDiode ? reserve : null, draw, from, kelvin, slope);
        var run = new DischargeRun(
            source.Parameters,
            Temperature.FromKelvins(kelvin),
            source.StartState,
            new DemandCursor([formula?.Draw ?? new TerminalDraw(0, 0, 0, Solved(draw, behindDiode, warning))], [to - from], 0),
            new DischargeOptions
            {
                TimeLimit = Duration.FromSeconds(to - from),
                WatchedVoltage = watched > 0 ? ElectricPotential.FromVolts(watched.Value) : null,
                WatchedCharge = watch?.Reserve,
                SeriesPoints = Keeper?.PointsFor(to - from) ?? 0,
            },
            observer,
            slope).Run(cancellation);
        var time = run.Cause == EndCause.TimeLimit ? to : Math.Min(to, from + run.EndTime.Seconds);
        source.Ran(run, time);
        Keeper?.Ran(run);
        return run.Cause switch
        {
            EndCause.TimeLimit => new SupplyRun(time, SupplyEnd.Reached),
            EndCause.WatchedCharge => new SupplyRun(time, SupplyEnd.SwapWished),
            EndCause.WatchedVoltage => ShortOfVoltage(draw, run, time, kelvin + (slope * (time - from)), behindDiode, warning),
            _ => Ended(run, time),
        };
    }

    /// <summary>The draw in states, with what has stopped.</summary>
    /// <param name="states">The state of each device.</param>
    /// <param name="momentary">The devices that draw for a moment what they draw in <paramref name="moment"/>; null for
    /// none.</param>
    /// <param name="moment">Their state in that moment.</param>
    public WiringDraw DrawIn(OrderedMap<string> states, string[]? momentary = null, string moment = "")
    {
        if (!draws.TryGetValue((states, momentary), out var draw))
        {
            var all = momentary is null ? states : new OrderedMap<string>(
                states.Select(item => Array.IndexOf(momentary, item.Key) >= 0 ? KeyValuePair.Create(item.Key, moment) : item));
            draws.Add((states, momentary), draw = new WiringDraw(rig.Network, rig.Network.StateOf(all), stopped));
        }

        return draw;
    }

    private SupplyRun ShortOfVoltage(WiringDraw draw, DischargeResult run, double time, double airKelvin, bool behindDiode,
        double? warning)
    {
        var volts = run.EndVoltage!.Value.Volts;
        var bus = behindDiode ? volts - reserve!.ForwardDrop.Volts - (reserve.Resistance.Ohms * run.EndCurrent!.Value.Amperes)
            : volts;
        if (warning is { } low && volts <= low * (1 + 1e-9) && draw.LeastMargin(bus, airKelvin) > 0)
            return new SupplyRun(time, SupplyEnd.SwapWished);
        var element = draw.Shortest(bus, airKelvin);
        if (run.AtStep)
            Keeper?.Short(draw, element, time, airKelvin);
        return Drop(element, time, run.AtStep) with { Voltage = run.EndVoltage };
    }

    private SupplyRun Ended(DischargeResult run, double time)
    {
        if (run is { AtStep: true, EndVoltage: { } volts, EndCurrent: { } amperes })
            Keeper?.EndedAtOnce(volts.Volts, amperes.Amperes, run.EndTemperature.Kelvins, time);
        return new SupplyRun(time, SupplyEnd.Stopped, run.Cause.AsStop(), run.AtStep, run.EndVoltage);
    }

    private SupplyRun Drop(int element, double time, bool rightAfterChange)
    {
        stopped[element] = true;
        draws.Clear();
        var reason = new StopReason(StopKind.ShortOfVoltage, rig.Network[element].Name);
        dropOuts.Add(new DropOut(reason.Element!, Duration.FromSeconds(time), rightAfterChange));
        for (var i = 0; i < rig.Network.Count; i++)
        {
            if (stopped[i] || (rig.Network.ParentOf(i) >= 0 && dead[rig.Network.ParentOf(i)] is not null))
                dead[i] ??= reason;
        }

        var essential = rig.Devices.Where(device => device.Essential).ToList();
        var over = essential.Count > 0 && essential.TrueForAll(device => dead[device.Number] is not null);
        return new SupplyRun(time, over ? SupplyEnd.Stopped : SupplyEnd.DroppedOut, reason, rightAfterChange);
    }

    private SolvedDraw Solved(WiringDraw draw, bool behindDiode, double? warning)
    {
        if (behindDiode)
            return new DiodeDraw(draw, reserve!.ForwardDrop.Volts, reserve.Resistance.Ohms);
        return warning is { } volts ? new WarnedDraw(draw, volts) : draw;
    }
}
