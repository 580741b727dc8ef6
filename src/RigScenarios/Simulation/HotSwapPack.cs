using UnitsNet;
using RigScenarios.Batteries;
using RigScenarios.Days;

namespace RigScenarios.Simulation;

/// <summary>The small pack that carries the rig through a swap, over all the days; it may be that there is none.</summary>
internal sealed class HotSwapPack
{
    private readonly HotSwapReserve? reserve;
    private readonly AirTemperature air;
    private readonly ChargeOrder? order;
    private readonly ChargeWindow window;

    public HotSwapPack(HotSwapReserve? reserve, AirTemperature air, double start, CancellationToken cancellation)
    {
        (this.reserve, this.air) = (reserve, air);
        var setting = new ChargeSetting(ElectricCurrent.FromAmperes(1));
        window = setting.Window;
        if (reserve is null)
            return;
        Pack = new SimulatedBattery("hot-swap reserve", reserve.Battery, air, start, cancellation);

        // Constant power until the full voltage is reached, and no more: the current limit lies above what the power gives, and
        // so does the termination.
        var watts = (double)reserve.ChargePower.Watts;
        var amperes = 3 * watts / Pack.Pack.CutoffVoltage.Volts;
        order = new ChargeOrder(
            setting.LimitsFor(Pack.Pack) with { Amperes = amperes, TerminationAmperes = 2 * amperes, Watts = watts }, window, air,
            1, double.PositiveInfinity, 1);
        Pack.IsFull = reserve.Battery.Charge.DecimalFractions >= 0.995;
    }

    /// <summary>The pack; null if there is none.</summary>
    public SimulatedBattery? Pack { get; }

    /// <summary>Whether it can carry the rig now.</summary>
    public bool CanFeed => Pack is { IsReady: true };

    /// <summary>Whether it is charged from a time on, while a battery is on the rig.</summary>
    public bool ChargesAt(double time)
    {
        if (Pack is null)
            return false;
        Pack.AdvanceTo(time);
        if (!Pack.IsFull && !Pack.IsCharging && Pack.IsWithin(window))
            Pack.ChargeWith(order!, time);

        // One that is full at once takes nothing.
        if (Pack.IsCharging && Pack.NextEvent(window, time) <= time)
            Pack.AdvanceTo(time);
        if (!Pack.IsCharging)
            Pack.Rest(Pack.IsFull ? BatteryPlace.Full : BatteryPlace.WaitingForTemperature, time, air);
        return Pack.IsCharging;
    }

    /// <summary>When its charging ends, or its temperature lets it begin, while a battery is on the rig; infinite if neither
    /// comes before the horizon.</summary>
    public double NextEvent(double time, double horizon) =>
        Pack is { IsFull: false } ? Math.Max(Pack.NextEvent(window, horizon), time) : double.PositiveInfinity;

    /// <summary>It is as it was before the first day.</summary>
    public void BeginAgain(double time)
    {
        if (Pack is null)
            return;
        Pack.BeginAgain(time);
        Pack.IsFull = Pack.Charge >= 0.995;
        Pack.ReadyFrom = 0;
    }

    /// <summary>The battery leaves the rig.</summary>
    public void StopCharging(double time) => Pack?.Rest(BatteryPlace.Resting, time, air);

    /// <summary>It cannot carry the rig any longer, until it is charged again.</summary>
    public void IsOver(double time)
    {
        Pack!.ReadyFrom = Math.Min(1, Pack.Charge + 0.05);
        Pack.Rest(BatteryPlace.TooLow, time, air);
    }
}
