using RigScenarios.Batteries;
using RigScenarios.Days;
using UnitsNet.Units;

namespace RigScenarios.Simulation;

/// <summary>The chargers with their bays and the batteries that wait for one: first come, first served.</summary>
internal sealed class ChargerBays
{
    private readonly List<Station> stations;
    private readonly List<SimulatedBattery> waiting = [];
    private readonly double end;
    private double now;
    private bool powerIsGone;

    /// <param name="plan">The plan.</param>
    /// <param name="air">The air where a charger stands that names no temperature.</param>
    /// <param name="start">Begin, s.</param>
    /// <param name="end">End, s.</param>
    public ChargerBays(DayPlan plan, AirTemperature air, double start, double end)
    {
        stations = [.. plan.Chargers.Values.Where(charger => charger.Bays > 0 && charger.WallLimit is not { Watts: 0 })
            .Select(charger => new Station(
            charger, charger.Ambient is { } own ? AirTemperature.Constant(own.Kelvins) : air))];
        (now, this.end) = (start, end);
    }

    /// <summary>The next time at which something changes; infinite if nothing does.</summary>
    public double NextEvent => Math.Min(
        stations.Where(station => station.InBays.Count > 0 || waiting.Count > 0).Select(station => station.Charger.NextEdge(now))
            .Append(double.PositiveInfinity).Min(),
        stations.SelectMany(station => station.InBays.Select(battery => battery.NextEvent(station.Window, end)))
            .Append(double.PositiveInfinity).Min()) is var next && next <= end
            ? next : double.PositiveInfinity;

    /// <summary>Whether a battery on a bay or before one may yet be charged.</summary>
    public bool MayGiveMore =>
        !powerIsGone && (waiting.Count > 0 && stations.Count > 0 || stations.Exists(station => station.InBays.Count > 0));

    /// <summary>There is no power any more.</summary>
    public void PowerIsGone(double time)
    {
        AdvanceTo(time);
        powerIsGone = true;
        Assign();
    }

    /// <summary>A battery comes and wants to be charged.</summary>
    public void Offer(SimulatedBattery battery, double time)
    {
        AdvanceTo(time);
        battery.AdvanceTo(time);
        if (battery.IsFull || stations.Count == 0)
            return;
        waiting.Add(battery);
        Assign();
    }

    /// <summary>A battery is taken away, wherever it is.</summary>
    public void Take(SimulatedBattery battery, double time)
    {
        AdvanceTo(time);
        waiting.Remove(battery);
        foreach (var station in stations)
            station.InBays.Remove(battery);
        Assign();
    }

    /// <summary>Lets time go on; what happens until then happens in its order.</summary>
    public void AdvanceTo(double time)
    {
        while (NextEvent is var next && next <= time)
        {
            // A time that is no later than now by a rounding must not come again.
            now = Math.Max(next, now);
            Assign();
        }
        now = Math.Max(now, time);
    }

    // Everything that may have changed: full ones leave, free bays are filled, power is divided anew.
    private void Assign()
    {
        foreach (var battery in stations.SelectMany(station => station.InBays))
            battery.AdvanceTo(now);
        foreach (var station in stations)
        {
            foreach (var full in station.InBays.Where(battery => battery.IsFull).ToList())
            {
                station.InBays.Remove(full);
                full.Rest(BatteryPlace.Full, now);
            }
        }

        foreach (var station in stations)
        {
            while (waiting.Count > 0 && station.InBays.Count < station.Charger.Bays && HasPower(station.Charger))
            {
                station.InBays.Add(waiting[0]);
                waiting.RemoveAt(0);
            }
        }

        foreach (var battery in waiting)
            battery.Rest(BatteryPlace.WaitingForBay, now);
        foreach (var station in stations)
            Serve(station);
    }

    private void Serve(Station station)
    {
        var charger = station.Charger;
        var powered = HasPower(charger);
        var fit = station.InBays.Where(battery =>
        {
            battery.AdvanceTo(now);
            return battery.IsWithin(station.Window);
        }).ToList();
        if (charger.Order == BayOrder.InTurn && fit.Count > 1)
            fit.RemoveRange(1, fit.Count - 1);
        foreach (var battery in station.InBays)
        {
            if (!powered)
                battery.Rest(BatteryPlace.WaitingForPower, now, station.Air);
            else if (fit.Contains(battery))
                battery.ChargeWith(OrderFor(station, battery, fit.Count), now);
            else
                battery.Rest(battery.IsWithin(station.Window) ? BatteryPlace.WaitingForBay : BatteryPlace.WaitingForTemperature,
                    now, station.Air);
        }
    }

    private bool HasPower(DayCharger charger) => !powerIsGone && charger.HasPower(now);

    private ChargeOrder OrderFor(Station station, SimulatedBattery battery, int together)
    {
        var charger = station.Charger;
        var amperes = Math.Min(charger.Current.Amperes, battery.Battery.MaximumChargeCurrent?.Amperes ?? double.PositiveInfinity);
        var efficiency = charger.Efficiency.DecimalFractions;
        var setting = new ChargeSetting(UnitsNet.ElectricCurrent.FromAmperes(amperes)) { Termination = charger.Termination };
        var limits = setting.LimitsFor(battery.Pack) with
        {
            Watts = charger.LargestFromWall is { } wall ? (double)wall.As(PowerUnit.Watt) * efficiency / together
                : double.PositiveInfinity,
        };
        return new ChargeOrder(
            limits, station.Window, station.Air, efficiency, Math.Min(charger.NextEdge(now), end), battery.IsReady
                ? 1 : Math.Min(1, battery.ReadyFrom));
    }

    private sealed class Station(DayCharger charger, AirTemperature air)
    {
        public DayCharger Charger { get; } = charger;

        public AirTemperature Air { get; } = air;

        public ChargeWindow Window { get; } = new(charger.Lowest.Kelvins, charger.Highest.Kelvins);

        public List<SimulatedBattery> InBays { get; } = [];
    }
}
