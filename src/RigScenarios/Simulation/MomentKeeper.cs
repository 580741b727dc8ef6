using System.Runtime.Intrinsics;
using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Limits;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>Keeps what a run shows of its moments: the worst against each limit, the largest load of each element, and a series
/// of points.</summary>
internal sealed class MomentKeeper(SimulatedRig rig, RigSupply supply, bool keepsLimits, int seriesPoints, double workSeconds)
{
    private readonly SimulatedRig rig = rig;
    private readonly RigSupply supply = supply;
    private readonly LimitTracker? limits = keepsLimits ? new LimitTracker(rig.Network) : null;
    private readonly LoadTracker? loads = keepsLimits ? new LoadTracker(rig.Network) : null;
    private readonly List<SeriesPoint> series = [];
    private readonly Dictionary<OrderedMap<string>, string[]> peaks = [];
    private Observer? observer;
    private OrderedMap<string> states = OrderedMap<string>.Empty;
    private string[] starting = [];
    private int stretch = -1;
    private bool changed;

    /// <summary>The worst that stood against each limit; null if they are not kept.</summary>
    public LimitTracker? Limits => limits;

    /// <summary>The largest loads of each element; null if they are not kept.</summary>
    public LoadTracker? Loads => loads;

    /// <summary>The points, in order.</summary>
    public IReadOnlyList<SeriesPoint> Series => series;

    /// <summary>Tells what holds in the next run.</summary>
    /// <param name="now">The state of each device.</param>
    /// <param name="number">The number of the stretch.</param>
    /// <param name="starts">The devices that begin to draw together; empty for none.</param>
    public void Set(OrderedMap<string> now, int number, string[] starts)
    {
        (states, stretch, starting, changed) = (now, number, starts,
            starts.Length > 0 || number != stretch || !now.Equals(states));
        if (limits is not null)
            limits.Stretch = number;
    }

    /// <summary>What is told of a run's moments.</summary>
    public RunObserver? Observe(SimulatedBattery source, HotSwapReserve? diode, WiringDraw draw, double from, double airKelvin,
        double airSlope) =>
        observer = limits is null && seriesPoints == 0
            ? null : new Observer(this, source, diode, draw, from, airKelvin, airSlope);

    /// <summary>How many points of a run of a length are kept.</summary>
    public int PointsFor(double seconds) => seriesPoints == 0 ? 0 : Math.Max(4, (int)(seriesPoints * seconds / workSeconds));

    /// <summary>Takes over the points of a run.</summary>
    public void Ran(DischargeResult run) => observer?.Take(run);

    /// <summary>An element is short of voltage right after a change.</summary>
    public void Short(WiringDraw draw, int element, double time, double airKelvin) =>
        limits?.SeeShort(draw, element, Lanes(time, 0, 0, 0, airKelvin));

    /// <summary>The battery ends right after a change.</summary>
    public void EndedAtOnce(double volts, double amperes, double kelvin, double time)
    {
        if (observer is not null)
            observer.See(Lanes(time, volts, amperes, kelvin, observer.AirAt(time)));
    }

    private static ObservedLanes Lanes(double time, double volts, double amperes, double kelvin, double air) => new(
        Vector512.Create(time), Vector512.Create(volts), Vector512.Create(amperes), Vector512.Create(kelvin),
        Vector512.Create(air));

    private sealed class Observer(
        MomentKeeper keeper, SimulatedBattery source, HotSwapReserve? diode, WiringDraw draw, double from, double airKelvin,
        double airSlope) : RunObserver
    {
        public double AirAt(double time) => airKelvin + (airSlope * (time - from));

        public override void AfterChange(double seconds, in CircuitPoint point, in PackState state, double air)
        {
            var lanes = Lanes(from + seconds, point.Voltage, point.Current, state.Kelvin, air);
            See(lanes);
            if (keeper.starting.Length > 0)
                ForAMoment(lanes, LoadCase.StartUp, BuildWiring.StartUp, keeper.starting);
        }

        public override void Step(in ObservedLanes lanes) => See(lanes with { Seconds = lanes.Seconds + Vector512.Create(from) });

        public void See(in ObservedLanes lanes)
        {
            if (keeper.limits is null)
                return;
            var bus = diode is null
                ? lanes.Volts : lanes.Volts - Vector512.Create(diode.ForwardDrop.Volts) - (lanes.Amperes * diode.Resistance.Ohms);
            draw.Look(bus, lanes.Air);
            keeper.limits.SeeWiring(draw, lanes, LoadCase.Steady, static () => "");
            keeper.loads!.See(draw, lanes);
            if (diode is null)
                keeper.limits.SeeBattery(source, lanes, LoadCase.Steady, static () => "");
            ForAMoment(lanes, LoadCase.Peak, BuildWiring.Peak, keeper.PeakDevices(draw));
        }

        public void Take(DischargeResult run)
        {
            foreach (var (index, point) in run.Series.Index())
            {
                var time = point.Time.Seconds;
                var bus = diode is null ? point.Voltage.Volts
                    : point.Voltage.Volts - diode.ForwardDrop.Volts - (diode.Resistance.Ohms * point.Current.Amperes);
                var kelvin = AirAt(from + time);
                var figures = draw.At(bus, kelvin);
                keeper.series.Add(new SeriesPoint(
                    Duration.FromSeconds(from + time), keeper.stretch, index == 0 && keeper.changed, source.Name, point.Voltage,
                    point.Current, point.Power,
                    point.StateOfCharge, point.Temperature)
                {
                    Network = keeper.Network, Figures = figures, Terminals = bus, AirKelvin = kelvin,
                });
            }
        }

        // The battery answers with its resistance of that moment alone: it is too short for anything else to move.
        private void ForAMoment(in ObservedLanes lanes, LoadCase kind, string state, string[] devices)
        {
            if (devices.Length == 0 || keeper.limits is null)
                return;
            var moment = keeper.supply.DrawIn(keeper.states, devices, state);
            var resistance = ResistanceAt(lanes.Kelvin);
            SolvedDraw asked = diode is null ? moment : new DiodeDraw(moment, diode.ForwardDrop.Volts, diode.Resistance.Ohms);
            var point = default(CircuitLanes);
            asked.Solve(lanes.Volts + (resistance * lanes.Amperes), resistance, lanes.Air, ref point);
            string Situation() => string.Join(", ", devices);
            if (Vector512.LessThanAny(point.PowerMargin, Vector512<double>.Zero))
            {
                keeper.limits.SeeCollapse(source, lanes, kind, Situation);
                return;
            }

            var volts = diode is null ? point.Voltage
                : point.Voltage - Vector512.Create(diode.ForwardDrop.Volts) - (point.Current * diode.Resistance.Ohms);
            moment.Look(volts, lanes.Air);
            keeper.limits.SeeWiring(moment, lanes, kind, Situation);
            if (diode is null)
                keeper.limits.SeeBattery(source, lanes with { Volts = point.Voltage, Amperes = point.Current }, kind, Situation);
        }

        private Vector512<double> ResistanceAt(Vector512<double> kelvin)
        {
            var pack = source.Parameters;
            Span<double> factor = stackalloc double[8];
            for (var i = 0; i < 8; i++)
                factor[i] = pack.ResistanceFactorAt(kelvin[i]);
            return (Vector512.Create<double>(factor) * (pack.Groups * pack.Resistance0)) + Vector512.Create(pack.LeadResistance);
        }
    }

    private WiringNetwork Network => rig.Network;

    /// <summary>Whether a device has a state.</summary>
    public bool Has(string device, string state) =>
        rig.Network[rig.Network.NumberOf(device)] is Device known && known.States.ContainsKey(state);

    // All that are in record and have a peak; one that has stopped has none.
    private string[] PeakDevices(WiringDraw draw)
    {
        if (!peaks.TryGetValue(states, out var devices))
        {
            peaks.Add(states, devices = [.. rig.Devices.Where(device => states.TryGetValue(device.Name, out var state)
                && state == BuildWiring.Word(PowerState.Record)
                    && Has(device.Name, BuildWiring.Peak)).Select(device => device.Name)]);
        }

        if (Array.TrueForAll(devices, device => draw.IsLive(rig.Network.NumberOf(device))))
            return devices;
        return peaks[states] = [.. devices.Where(device => draw.IsLive(rig.Network.NumberOf(device)))];
    }
}
