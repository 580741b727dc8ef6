using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>Why a run of the rig on one source stopped.</summary>
internal enum FeedEnd
{
    /// <summary>The time is over.</summary>
    Reached,

    /// <summary>The condition of the swap holds.</summary>
    Warning,

    /// <summary>Something dropped out, and the rig goes on.</summary>
    Dropped,

    /// <summary>The last essential device stopped, or the source ended.</summary>
    Stopped,
}

/// <summary>The wiring of the rig with what has stopped in it, and a source that feeds it.</summary>
internal sealed class RigFeed
{
    private const string ReserveName = "hot-swap reserve";

    private readonly PoweredBuild powered;
    private readonly WiringNetwork network;
    private readonly HotSwapReserve? reserve;
    private readonly CancellationToken cancellation;
    private readonly LargestLoads loads;
    private readonly HashSet<int> stopped = [];
    private readonly Dictionary<(DayBlock Block, bool InReset, bool ReserveCharges), WiringDraw> draws = [];
    private readonly bool[] dead;

    public RigFeed(PoweredBuild powered, HotSwapReserve? reserve, CancellationToken cancellation)
    {
        (this.powered, this.reserve, this.cancellation) = (powered, reserve, cancellation);
        network = BuildWiring.Of(powered);
        if (reserve is not null)
        {
            network = new WiringNetwork([.. network.Elements, new Device(ReserveName, null, new(
                [new(BuildWiring.On, DeviceDraw.OfPower(Power.FromWatts((double)reserve.ChargePower.Watts / HotSwapReserve.ChargeEfficiency.DecimalFractions)))]))]);
        }
        loads = new LargestLoads(powered);
        dead = new bool[network.Count];
    }

    /// <summary>Over-voltages at a voltage of the pack without load.</summary>
    public IReadOnlyList<OverVoltage> OverVoltages(ElectricPotential highest) => network.OverVoltages(highest);

    /// <summary>The limits with what is left to each.</summary>
    public IReadOnlyList<LimitMargin> Margins(Pack pack) => loads.Margins(pack);

    /// <summary>Whether a device, or something above it, has stopped.</summary>
    public bool IsDead(string device) => dead[network.NumberOf(device)];

    /// <summary>All that had stopped is switched on again: another source stands at the root.</summary>
    public void Reset()
    {
        if (stopped.Count == 0)
            return;
        stopped.Clear();
        draws.Clear();
        Array.Clear(dead);
    }

    /// <summary>Runs the rig on a source until a time or until something happens.</summary>
    /// <param name="source">The source.</param>
    /// <param name="behindDiode">Whether it stands behind the diode of the reserve.</param>
    /// <param name="stretch">What is asked of the devices.</param>
    /// <param name="from">Begin, s.</param>
    /// <param name="to">End, s; within one piece of the air's course.</param>
    /// <param name="air">Temperature of the air.</param>
    /// <param name="watch">The conditions of a swap that are watched; null for none.</param>
    /// <param name="chargesReserve">Whether the reserve is charged meanwhile.</param>
    /// <returns>The time reached, why, and in words.</returns>
    public (double Time, FeedEnd End, string Because) Run(
        BatteryCourse source, bool behindDiode, DayStretch stretch, double from, double to, AirTemperature air, SwapPolicy? watch, bool chargesReserve)
    {
        var draw = DrawIn(stretch, chargesReserve);
        var formula = behindDiode ? null : draw.AtTerminals();
        if (formula is { Draw: { Power: 0, Current: 0, Conductance: 0 } })
        {
            source.Rest(BatteryPlace.OnRig, from, air);
            source.AdvanceTo(to);
            return (to, FeedEnd.Reached, "");
        }

        source.AdvanceTo(from);
        var warning = watch?.WarningVoltage?.Volts;
        double? watched = formula is { } known ? Math.Max(known.Watched ?? 0, warning ?? 0) : null;
        var (kelvin, slope, _) = air.At(from);
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
                SeriesPoints = 0,
            },
            witness: null,
            slope).Run(cancellation);
        var time = run.Cause == EndCause.TimeLimit ? to : Math.Min(to, from + run.EndTime.Seconds);
        source.Ran(run, time);
        if (!behindDiode)
            loads.See(network, draw, run);
        switch (run.Cause)
        {
            case EndCause.TimeLimit:
                return (time, FeedEnd.Reached, "");
            case EndCause.WatchedCharge:
                return (time, FeedEnd.Warning, "");
            case EndCause.WatchedVoltage:
                var volts = run.EndVoltage!.Value.Volts;
                var bus = behindDiode ? volts - reserve!.ForwardDrop.Volts - (reserve.Resistance.Ohms * run.EndCurrent!.Value.Amperes) : volts;
                if (warning is { } low && volts <= low * (1 + 1e-9) && draw.LeastMargin(bus) > 0)
                    return (time, FeedEnd.Warning, "");
                return (time, Drop(draw.Shortest(bus), out var because), because);
            default:
                return (time, FeedEnd.Stopped, run.Cause.InWords());
        }
    }

    private SolvedDraw Solved(WiringDraw draw, bool behindDiode, double? warning)
    {
        if (behindDiode)
            return new DiodeDraw(draw, reserve!.ForwardDrop.Volts, reserve.Resistance.Ohms);
        return warning is { } volts ? new WarnedDraw(draw, volts) : draw;
    }

    private FeedEnd Drop(int element, out string because)
    {
        stopped.Add(element);
        draws.Clear();
        for (var i = 0; i < network.Count; i++)
            dead[i] = stopped.Contains(i) || (network.ParentOf(i) >= 0 && dead[network.ParentOf(i)]);
        because = $"drop-out of {network[element].Name}";
        var essential = powered.Devices.Where(item => item.Value.Essential).ToList();
        return essential.Count > 0 && essential.TrueForAll(item => IsDead(item.Key)) ? FeedEnd.Stopped : FeedEnd.Dropped;
    }

    private WiringDraw DrawIn(DayStretch stretch, bool chargesReserve)
    {
        var key = (stretch.Block, stretch.InReset, chargesReserve);
        if (!draws.TryGetValue(key, out var draw))
        {
            var open = new bool[network.Count];
            foreach (var element in stopped)
                open[element] = true;
            var states = BuildWiring.States(powered, stretch.StateOf);
            if (chargesReserve)
                states = states.With(ReserveName, BuildWiring.On);
            draws.Add(key, draw = new WiringDraw(network, network.StateOf(states), open));
        }
        return draw;
    }
}
