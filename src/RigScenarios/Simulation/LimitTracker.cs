using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using RigScenarios.Batteries;
using RigScenarios.Limits;
using RigScenarios.Numerics;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>
/// Holds every moment of a run against every limit of wiring and battery, and keeps the worst: where the least share of the
/// allowed value is left. Looks at
/// eight moments at once.
/// </summary>
internal sealed class LimitTracker
{
    // A later moment counts only if it leaves less by more than this share: no time is told from rounding.
    private const double Flat = 1e-9;

    private readonly List<Check> checks = [];
    private readonly WorstValue?[,] worst;
    private readonly Check cutOff;
    private readonly Check batteryCurrent;
    private readonly Check batteryTemperature;

    public LimitTracker(WiringNetwork network)
    {
        for (var i = 0; i < network.Count; i++)
        {
            var element = network[i];
            if (element.Name == SimulatedRig.ReserveCharger)
                continue;
            var regulator = element as Regulator;
            if (element.MaximumCurrent is { } most)
                Add(i, element.CurrentKind, element.CurrentKind == LimitKind.RatedCurrent ? Quantity.SteadyCurrent
                    : Quantity.Current, most.Amperes, LimitBasis.PartsFile);
            if (regulator?.MaximumOutput is { } output)
                Add(i, element.CurrentKind, Quantity.Output, output.Amperes, LimitBasis.PartsFile);
            if (element.Fuse is { } fuse)
            {
                checks.Add(new Check(checks.Count, i, element.Name, LimitKind.Fuse,
                    regulator is null ? Quantity.SteadyCurrent : Quantity.SteadyOutput, 0, FuseBasis(fuse))
                {
                    FuseAmperes = air => fuse.SteadyAt(Temperature.FromKelvins(air)).Amperes,
                });
            }

            if (network.ThresholdOf(i) is { } threshold)
                Add(i, KindOf(element), Quantity.Inlet, threshold, LimitBasis.PartsFile);
        }

        cutOff = new Check(checks.Count, -1, Battery, LimitKind.CutOff, Quantity.Inlet, 0, LimitBasis.PartsFile);
        batteryCurrent = new Check(checks.Count + 1, -1, Battery, LimitKind.Current, Quantity.Current, 0, LimitBasis.PartsFile);
        batteryTemperature = new Check(checks.Count + 2, -1, Battery, LimitKind.Temperature, Quantity.Inlet, 0,
            LimitBasis.PartsFile);
        worst = new WorstValue?[checks.Count + 3, 3];

        void Add(int number, LimitKind kind, Quantity quantity, double allowed, LimitBasis basis) =>
            checks.Add(new Check(checks.Count, number, network[number].Name, kind, quantity, allowed, basis));
    }

    /// <summary>Number of the stretch that is looked at.</summary>
    public int Stretch { get; set; }

    /// <summary>The name under which limits of the battery on the rig stand.</summary>
    public const string Battery = "battery";

    /// <summary>What of an element a limit is held against.</summary>
    private enum Quantity
    {
        Inlet,
        Current,
        SteadyCurrent,
        Output,
        SteadyOutput,
    }

    /// <summary>Holds the figures of the last look at a draw against the limits of the wiring.</summary>
    /// <param name="draw">The draw, solved.</param>
    /// <param name="lanes">The moments, times from midnight of the first day.</param>
    /// <param name="kind">How long the load stands.</param>
    /// <param name="situation">The devices that draw for a moment; empty for none.</param>
    public void SeeWiring(WiringDraw draw, in ObservedLanes lanes, LoadCase kind, Func<string> situation)
    {
        foreach (var check in checks)
        {
            var value = check.Quantity switch
            {
                Quantity.Inlet when draw.IsLookedAt(check.Element) => draw.Inlet(check.Element),
                Quantity.Current => draw.Current(check.Element),
                Quantity.SteadyCurrent when kind == LoadCase.Steady => draw.Current(check.Element),
                Quantity.Output => draw.Output(check.Element),
                Quantity.SteadyOutput when kind == LoadCase.Steady => draw.Output(check.Element),
                _ => Vector512.Create(double.NaN),
            };
            if (!double.IsNaN(value[0]) && draw.IsLive(check.Element))
                See(check, value, check.AllowedAt(lanes.Air), lanes, kind, situation);
        }
    }

    /// <summary>Holds the battery's own figures against its limits.</summary>
    public void SeeBattery(SimulatedBattery battery, in ObservedLanes lanes, LoadCase kind, Func<string> situation)
    {
        var pack = battery.Parameters;
        See(cutOff, lanes.Volts, Vector512.Create(pack.CutoffVoltage), lanes, kind, situation, battery);
        See(batteryCurrent, lanes.Amperes, Vector512.Create(pack.MaximumCurrent), lanes, kind, situation, battery);
        if (kind == LoadCase.Steady)
        {
            var zero = Vector512.Create(273.15);
            See(batteryTemperature, lanes.Kelvin - zero, Vector512.Create(pack.MaximumTemperature) - zero, lanes, kind,
                situation, battery);
        }
    }

    /// <summary>Holds one element that is short of voltage right after a change against its own limit.</summary>
    public void SeeShort(WiringDraw draw, int element, in ObservedLanes lanes)
    {
        foreach (var check in checks.Where(check => check.Element == element && check.Quantity == Quantity.Inlet))
            See(check, draw.Inlet(element), check.AllowedAt(lanes.Air), lanes, LoadCase.Steady, static () => "");
    }

    /// <summary>Tells that nothing can deliver what is asked for a moment: the battery's voltage collapses.</summary>
    public void SeeCollapse(SimulatedBattery battery, in ObservedLanes lanes, LoadCase kind, Func<string> situation) =>
        See(cutOff, Vector512<double>.Zero, Vector512.Create(battery.Parameters.CutoffVoltage), lanes, kind, situation, battery);

    /// <summary>All limits that were looked at, the one with the least left first.</summary>
    /// <param name="momentOf">Day and block of a time, s from midnight of the first day, in the stretch of a number.</param>
    public IReadOnlyList<Limit> Limits(Func<double, int, LimitMoment> momentOf)
    {
        var limits = new List<Limit>();
        foreach (var check in checks.Append(cutOff).Append(batteryCurrent).Append(batteryTemperature))
        {
            foreach (var kind in Enum.GetValues<LoadCase>())
            {
                if (worst[check.Number, (int)kind] is { } found)
                {
                    limits.Add(new Limit(check.Name, check.Kind, QuantityOf(check, found.Value), QuantityOf(check, found.Allowed),
                        found.Battery is { } battery ? BasisOf(check, battery) : check.Basis)
                    {
                        Case = kind, At = momentOf(found.Seconds, found.Stretch), Situation = found.Situation,
                    });
                }
            }
        }

        return Limit.LeastLeftFirst(limits);
    }

    private static LimitKind KindOf(WiringElement element) => element switch
    {
        LowVoltageSwitch => LimitKind.SwitchOff,
        Regulator => LimitKind.Input,
        _ => LimitKind.LowestVoltage,
    };

    private static LimitBasis FuseBasis(Parts.FuseData fuse) => fuse switch
    {
        { SteadyShare: { } share } => new(LimitForce.Rating, $"{share.Percent:0} % of its rating, less when warm"),
        { Kind: Parts.FuseKind.Resettable } => new(LimitForce.Default, "its hold current, less when warm"),
        _ => new(LimitForce.Default, "75 % of its rating, a usual rule, less when warm"),
    };

    private static LimitBasis BasisOf(Check check, SimulatedBattery battery)
    {
        var data = battery.Battery?.Part.Battery;
        var given = check.Kind switch
        {
            LimitKind.Current => data?.MaximumCurrent is not null,
            LimitKind.Temperature => data?.MaximumTemperature is not null,
            _ => data?.CutoffVoltage is not null,
        };
        return given ? new LimitBasis(LimitForce.Rating, "battery label")
            : new LimitBasis(LimitForce.Default, "assumed: the label gives none");
    }

    private static IQuantity QuantityOf(Check check, double value) => check.Kind switch
    {
        LimitKind.Temperature => Temperature.FromDegreesCelsius(value),
        _ when check.Quantity == Quantity.Inlet => ElectricPotential.FromVolts(value),
        _ => ElectricCurrent.FromAmperes(value),
    };

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void See(
        Check check,
        Vector512<double> value, Vector512<double> allowed, in ObservedLanes lanes, LoadCase kind, Func<string> situation,
        SimulatedBattery? battery = null)
    {
        var over = check.Kind.Side() == LimitSide.StaysOver;
        var left = over ? (value / allowed) - Vector512<double>.One : Vector512<double>.One - (value / allowed);
        var least = Collocation.Least(left);
        ref var known = ref worst[check.Number, (int)kind];
        if (known is not null && least >= known.Share - (Flat * Math.Max(1, Math.Abs(known.Share))))
            return;
        var lane = 0;
        while (left[lane] != least && lane < 7)
            lane++;
        var found = Refined(lane, left, value, allowed, lanes.Seconds);
        known = new WorstValue(found.Left, found.Value, found.Allowed, found.Seconds, situation(), battery, Stretch);
    }

    // Inside a step the worst lies between its moments: at the turning point of the parabola through three of them.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static (double Left, double Value, double Allowed, double Seconds) Refined(
        int lane, Vector512<double> left, Vector512<double> value, Vector512<double> allowed, Vector512<double> seconds)
    {
        var order = Collocation.LanesInOrder;
        var place = Array.IndexOf(order, lane);
        var plain = (left[lane], value[lane], allowed[lane], seconds[lane]);
        if (place is 0 or 7)
            return plain;
        var (before, after) = (order[place - 1], order[place + 1]);
        double back = seconds[before] - seconds[lane], on = seconds[after] - seconds[lane];
        if (!(back < 0 && on > 0))
            return plain;
        double down = (left[before] - left[lane]) / back, up = (left[after] - left[lane]) / on;
        var bend = (up - down) / (on - back);
        var slope = up - (bend * on);
        var at = -slope / (2 * bend);
        if (!(bend > 0 && at > back && at < on))
            return plain;
        return (left[lane] + (at * (slope + (bend * at))), Through(value), Through(allowed), seconds[lane] + at);

        double Through(Vector512<double> of)
        {
            double low = (of[before] - of[lane]) / back, high = (of[after] - of[lane]) / on;
            var curve = (high - low) / (on - back);
            return of[lane] + (at * (high - (curve * on) + (curve * at)));
        }
    }

    private sealed record Check(int Number, int Element, string Name, LimitKind Kind, Quantity Quantity, double Allowed,
        LimitBasis Basis)
    {
        /// <summary>What a fuse carries in air of a temperature in K, A; null for what does not depend on the air.</summary>
        public Func<double, double>? FuseAmperes { get; init; }

        public Vector512<double> AllowedAt(Vector512<double> air)
        {
            if (FuseAmperes is null)
                return Vector512.Create(Allowed);
            Span<double> lanes = stackalloc double[8];
            // Mostly the air stays as it is.
            for (var i = 0; i < 8; i++)
                lanes[i] = i > 0 && air[i] == air[i - 1] ? lanes[i - 1] : FuseAmperes(air[i]);
            return Vector512.Create<double>(lanes);
        }
    }

    private sealed record WorstValue(double Share, double Value, double Allowed, double Seconds, string Situation,
        SimulatedBattery? Battery, int Stretch);
}
