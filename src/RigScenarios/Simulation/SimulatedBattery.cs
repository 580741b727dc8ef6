using RigScenarios.Batteries;
using RigScenarios.Days;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>
/// One battery over all the days, in plain numbers: what happens with it is worked out when somebody asks.
/// </summary>
internal sealed class SimulatedBattery
{
    // A pack that left its window of temperature is charged again when it is this far inside, K.
    private const double Hysteresis = 2;

    // A temperature that enters the window is met to a rounding, K.
    private const double Rounding = 1e-6;

    // Enough to see how a charge flattens towards its end.
    private const int PointsOfCharge = 16;

    private readonly List<BatterySpan> spans = [];
    private readonly ChargeRecord charges = new();
    private readonly CancellationToken cancellation;
    private readonly AirTemperature restAmbient;
    private ChargeOrder? order;
    private (double Time, ChargeResult Run)? prediction;
    private AirTemperature ambient;
    private double conductanceFactor;
    private PackState state;
    private double spanStart;
    private PackState spanState;
    private ChargeWindow? leftWindow;
    private readonly TimeOnRig onRig = new();

    public SimulatedBattery(string name, KitBattery battery, AirTemperature open, double start, CancellationToken cancellation)
    {
        Name = name;
        Battery = battery;
        this.cancellation = cancellation;
        var made = battery.MakePack();
        (Pack, Assumed) = (made.Pack, made.Assumed);
        Parameters = new PackParameters(Pack);
        restAmbient = battery.Rests.Temperature is { } place ? AirTemperature.Constant(place.Kelvins) : open;
        ambient = restAmbient;
        conductanceFactor = battery.Rests.ConductanceFactor;
        Since = spanStart = start;
        state = spanState = AtFirst(start);
        Place = BatteryPlace.Resting;
        Coldest = state.Kelvin;
        charges.Mark(start, state.Charge);
    }

    public string Name { get; }

    public KitBattery Battery { get; }

    public Pack Pack { get; }

    public IReadOnlyList<AssumedValue> Assumed { get; }

    public PackParameters Parameters { get; }

    public BatteryPlace Place { get; private set; }

    /// <summary>The time to which the state belongs, s.</summary>
    public double Since { get; private set; }

    /// <summary>0 or more: where it ends empty is found to a rounding, which may lie below.</summary>
    public double Charge => Math.Max(0, state.Charge);

    public double Kelvin => state.Kelvin;

    /// <summary>The charge that it must have gained to be used again; 0 for one that can be used.</summary>
    public double ReadyFrom { get; set; }

    /// <summary>Whether it needs no charging.</summary>
    public bool IsFull { get; set; }

    /// <summary>Whether it left the window of temperature while it was charged, and waits to be well inside.</summary>
    private bool LeftWindow => leftWindow is not null;

    public double Coldest { get; private set; }

    public BatteryLedger Ledger { get; } = new();

    public IReadOnlyList<BatterySpan> Spans => spans;

    /// <summary>The charge over time, a point wherever something happens.</summary>
    public IReadOnlyList<ChargePoint> Charges => charges.Points;

    public bool IsCharging => order is not null;

    public bool IsReady => Charge >= ReadyFrom;

    public DischargeStart StartState => DischargeStart.Of(state);

    /// <summary>Goes to rest in its own place, or where the air and the factor are given.</summary>
    public void Rest(BatteryPlace place, double time, AirTemperature? air = null, double factor = 1)
    {
        AdvanceTo(time);
        (ambient, conductanceFactor) = air is null ? (restAmbient, Battery.Rests.ConductanceFactor) : (air, factor);
        order = null;
        prediction = null;
        if (place is not (BatteryPlace.WaitingForPower or BatteryPlace.WaitingForTemperature))
            leftWindow = null;
        Enter(place, time);
    }

    /// <summary>Is as it was before the first day, in the place where it rests.</summary>
    public void BeginAgain(double time)
    {
        Rest(BatteryPlace.Resting, time);
        state = AtFirst(time);
        charges.Mark(time, state.Charge);
        Coldest = Math.Min(Coldest, state.Kelvin);
    }

    /// <summary>Is charged from now on.</summary>
    public void ChargeWith(ChargeOrder charge, double time)
    {
        if (order == charge)
            return;
        AdvanceTo(time);
        (order, ambient, conductanceFactor) = (charge, charge.Air, 1);
        prediction = null;
        leftWindow = null;
        Enter(BatteryPlace.Charging, time);
    }

    /// <summary>How far off the prediction of how long it feeds the rig may be; null if it never fed it.</summary>
    public ExpectedError? ExpectedError =>
        onRig.ErrorOf(Ledger.ChargeOut / Parameters.ChargePerUnit, !Parameters.HasFarWell) is { } model
        ? FittedError.Of(model, Battery.RuntimeKnownTo, Battery.FittedFrom) : null;

    /// <summary>Takes over what a run on the rig did with it until a time.</summary>
    public void Ran(DischargeResult run, double until)
    {
        onRig.Add(until - Since, state.Kelvin, run.EndTemperature.Kelvins);
        Since = until;
        Take(run.FinalState);
        charges.Mark(until, state.Charge);
        Ledger.AddDischarge(run.Energies);
        Coldest = Math.Min(Coldest, state.Kelvin);
        IsFull = false;
    }

    /// <summary>Works out the state at a time.</summary>
    public void AdvanceTo(double time)
    {
        // A charge that is over at once takes no time.
        while (Since < time || (order is not null && prediction is { } known && known.Time <= Since))
        {
            if (order is null)
                RestTo(Math.Min(time, ambient.At(Since).Until));
            else
                ChargeTo(time);
        }
        Coldest = Math.Min(Coldest, state.Kelvin);
    }

    /// <summary>
    /// The next time at which something may change by itself while it is charged or waits; infinite if not before the horizon.
    /// </summary>
    public double NextEvent(ChargeWindow window, double horizon)
    {
        if (order is not null)
            return Since < order.Until ? Predicted().Time : double.PositiveInfinity;
        if (Place != BatteryPlace.WaitingForTemperature && !(LeftWindow && Place == BatteryPlace.WaitingForPower))
            return double.PositiveInfinity;
        var inside = LeftWindow ? new ChargeWindow(window.LowestKelvin + Hysteresis, window.HighestKelvin - Hysteresis) : window;
        var (time, at) = (Since, state);
        while (time < horizon)
        {
            var (kelvin, slope, until) = ambient.At(time);
            var length = Math.Min(until, horizon) - time;
            var wait = PackRest.TimeUntilWithin(Parameters, at.Kelvin, kelvin, slope, conductanceFactor, inside.LowestKelvin,
                inside.HighestKelvin, length);
            if (double.IsFinite(wait))
                return time + wait;
            at = PackRest.After(Parameters, at, kelvin, slope, conductanceFactor, length);
            time += length;
        }
        return double.PositiveInfinity;
    }

    /// <summary>Whether its temperature allows charging now.</summary>
    public bool IsWithin(ChargeWindow window) => IsInside(window, LeftWindow ? Hysteresis : 0);

    private bool IsInside(ChargeWindow window, double by) =>
        state.Kelvin >= window.LowestKelvin + by - Rounding && state.Kelvin <= window.HighestKelvin - by + Rounding;

    /// <summary>Closes the last span.</summary>
    public void Close(double time)
    {
        AdvanceTo(time);
        AddSpan(time);
    }

    /// <summary>Begins a span in another place; the state must be that of the time.</summary>
    public void Enter(BatteryPlace place, double time)
    {
        if (place == Place)
            return;
        AddSpan(time);
        (Place, spanStart, spanState) = (place, time, state);
    }

    private void AddSpan(double time)
    {
        if (time <= spanStart)
            return;
        spans.Add(new BatterySpan(
            Place, Duration.FromSeconds(spanStart), Duration.FromSeconds(time),
            Ratio.FromDecimalFractions(Math.Max(0, spanState.Charge)), Ratio.FromDecimalFractions(Charge),
            Temperature.FromKelvins(spanState.Kelvin), Temperature.FromKelvins(state.Kelvin)));
    }

    private void RestTo(double time)
    {
        var (kelvin, slope, _) = ambient.At(Since);
        var before = state.Charge;
        state = PackRest.After(Parameters, state, kelvin, slope, conductanceFactor, time - Since);
        Ledger.SelfDischarge += before - state.Charge;
        if (leftWindow is { } left && IsInside(left, Hysteresis))
            leftWindow = null;
        Since = time;
        charges.Mark(time, state.Charge);
    }

    private void ChargeTo(double time)
    {
        if (Since >= order!.Until)
        {
            order = null;
            return;
        }
        var (end, run) = Predicted();
        prediction = null;
        if (end > time)
        {
            // It was worked out to its end; only a part of that is over.
            TakeCharge(ChargeFrom(Since, time), time);
            return;
        }
        TakeCharge(run, end);
        if (run.End == ChargeEnd.TimeLimit)
            return;
        leftWindow = run.End is ChargeEnd.TooCold or ChargeEnd.TooWarm ? order.Window : null;
        if (run.End == ChargeEnd.Full)
        {
            IsFull = order.UpTo == 1 || state.Charge < order.UpTo - 1e-9;
            ReadyFrom = 0;
        }
        order = null;
    }

    // The charge from the present state to its end, to the end of the piece of the ambient or until the power goes.
    private (double Time, ChargeResult Run) Predicted()
    {
        if (prediction is { } known)
            return known;
        var until = Math.Min(order!.Until, ambient.At(Since).Until);
        var run = ChargeFrom(Since, until);
        var made = (run.End == ChargeEnd.TimeLimit ? until : Since + run.EndTime.Seconds, run);
        prediction = made;
        return made;
    }

    private ChargeResult ChargeFrom(double from, double until)
    {
        var (kelvin, slope, _) = ambient.At(from);
        return ChargeRun.Run(
            Parameters, kelvin, slope, StartState, order!.Limits, order.Window with
            {
                LowestKelvin = order.Window.LowestKelvin - (2 * Rounding),
                HighestKelvin = order.Window.HighestKelvin + (2 * Rounding), UpTo = order.UpTo,
            }, Math.Min(until - from, 30 * 86400.0), PointsOfCharge, cancellation);
    }

    private void TakeCharge(ChargeResult run, double until)
    {
        foreach (var point in run.Series)
            charges.Mark(Math.Min(Since + point.Time.Seconds, until), point.StateOfCharge.DecimalFractions);
        Since = until;
        Take(run.FinalState);
        charges.Mark(until, state.Charge);
        Ledger.AddCharge(run, order!.WallEfficiency);
    }

    private PackState AtFirst(double time) => Battery.Begins is { } begins
        ? begins.State(restAmbient.At(time).Kelvin)
        : new(Battery.Charge.DecimalFractions, 0, 0, Battery.StartTemperature?.Kelvins ?? restAmbient.At(time).Kelvin);

    private void Take(DischargeStart end) => state = end.State(state.Kelvin);
}
