using RigScenarios.Batteries;
using RigScenarios.Days;

namespace RigScenarios.Simulation;

/// <summary>The small pack that carries the rig through a swap, over all the days; it may be that there is none.</summary>
internal sealed class HotSwapCourse
{
    private readonly HotSwapReserve? reserve;
    private readonly AirTemperature air;
    private readonly ChargeOrder? order;
    private readonly ChargeWindow window;

    public HotSwapCourse(HotSwapReserve? reserve, AirTemperature air, double start, CancellationToken cancellation)
    {
        (this.reserve, this.air) = (reserve, air);
        var setting = new ChargeSetting(UnitsNet.ElectricCurrent.FromAmperes(1));
        window = setting.Window;
        if (reserve is null)
            return;
        Course = new BatteryCourse("hot-swap reserve", reserve.Battery, air, start, cancellation);

        // Constant power until the full voltage is reached, and no more: the current limit lies above what the power gives, and so does the termination.
        var watts = (double)reserve.ChargePower.Watts;
        var amperes = 3 * watts / Course.Pack.CutoffVoltage.Volts;
        order = new ChargeOrder(
            setting.LimitsFor(Course.Pack) with { Amperes = amperes, TerminationAmperes = 2 * amperes, Watts = watts }, window, air, 1, double.PositiveInfinity, 1);
        Course.IsFull = reserve.Battery.Charge.DecimalFractions >= 0.995;
    }

    /// <summary>The pack; null if there is none.</summary>
    public BatteryCourse? Course { get; }

    /// <summary>Whether it can carry the rig now.</summary>
    public bool CanFeed => Course is { IsReady: true };

    /// <summary>Whether it is charged from a time on, while a battery is on the rig.</summary>
    public bool Charges(double time)
    {
        if (Course is null)
            return false;
        Course.AdvanceTo(time);
        if (!Course.IsFull && !Course.IsCharging && Course.IsWithin(window))
            Course.ChargeWith(order!, time);

        // One that is full at once takes nothing.
        if (Course.IsCharging && Course.NextEvent(window, time) <= time)
            Course.AdvanceTo(time);
        if (!Course.IsCharging)
            Course.Rest(Course.IsFull ? BatteryPlace.Full : BatteryPlace.WaitingForTemperature, time, air);
        return Course.IsCharging;
    }

    /// <summary>When its charging ends by itself; infinite if it isn't charged.</summary>
    public double NextEvent(double time) => Course is { IsCharging: true } ? Math.Max(Course.NextEvent(window, time), time) : double.PositiveInfinity;

    /// <summary>The battery leaves the rig.</summary>
    public void StopCharging(double time) => Course?.Rest(BatteryPlace.Resting, time, air);

    /// <summary>It cannot carry the rig any longer, until it is charged again.</summary>
    public void IsOver(double time)
    {
        Course!.ReadyFrom = Math.Min(1, Course.Charge + 0.05);
        Course.Rest(BatteryPlace.Spent, time, air);
    }
}
