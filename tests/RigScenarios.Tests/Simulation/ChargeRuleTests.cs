using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Limits;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Tests.Simulation;

/// <summary>When a battery is charged: the window of temperature with its edges, the wall, and the small pack in the
/// plate.</summary>
public sealed class ChargeRuleTests
{
    private const double Zero = 273.15;

    private static readonly ChargeWindow Window = new(Zero + 10, Zero + 45);

    [Theory]
    [InlineData(10, true)]
    [InlineData(9.99, false)]
    public void At_the_very_edge_of_the_window_it_is_charged(double celsius, bool charged)
    {
        var day = Plans.Takes(1) with { Ambient = Plans.Celsius(celsius),
            Blocks = new([new("wait", new DayBlock { Length = Duration.FromHours(3) })]) };
        var result = (Plans.Plan(0, 1) with
        {
            Days = [day],
            Batteries = Plans.Kit(new KitBattery(Plans.Brick98),
                new KitBattery(Plans.Brick98) { Charge = Ratio.FromPercent(30) }),
            Chargers = Plans.One(Plans.TwoBays),
        }).Run();

        var spans = result.Batteries["b2"].Spans;
        Assert.Equal(charged ? BatteryPlace.Charging : BatteryPlace.WaitingForTemperature, spans[0].Place);
        Assert.Equal(charged, result.FromWall.WattHours > 10);
    }

    [Fact]
    public void A_battery_that_left_the_window_must_come_two_kelvin_inside_unless_it_leaves_the_bay()
    {
        var kit = new KitBattery(Plans.Brick98) { Charge = Ratio.FromPercent(50), StartTemperature = Plans.Celsius(10.5) };
        var cold = AirTemperature.Constant(Zero - 25);
        var battery = new SimulatedBattery("b", kit, cold, 0, TestContext.Current.CancellationToken);
        var limits = new ChargeSetting(ElectricCurrent.FromAmperes(0.2)).LimitsFor(battery.Pack);
        battery.ChargeWith(new ChargeOrder(limits, Window, cold, 0.9, 1e7, 1), 0);
        battery.AdvanceTo(3600);
        Assert.False(battery.IsCharging);
        Assert.False(battery.IsWithin(Window));

        // 11 °C is inside of the window, and not far enough.
        var air = AirTemperature.Constant(Zero + 11);
        battery.Rest(BatteryPlace.WaitingForTemperature, 3600, air);
        battery.AdvanceTo(200_000);
        Assert.Equal(11, battery.Kelvin - Zero, 0.01);
        Assert.False(battery.IsWithin(Window));

        battery.Rest(BatteryPlace.OnRig, 200_000, air);
        Assert.True(battery.IsWithin(Window));
    }

    [Fact]
    public void A_battery_two_kelvin_inside_is_charged_again()
    {
        var kit = new KitBattery(Plans.Brick98) { Charge = Ratio.FromPercent(50), StartTemperature = Plans.Celsius(10.5) };
        var cold = AirTemperature.Constant(Zero - 25);
        var battery = new SimulatedBattery("b", kit, cold, 0, TestContext.Current.CancellationToken);
        var limits = new ChargeSetting(ElectricCurrent.FromAmperes(0.2)).LimitsFor(battery.Pack);
        battery.ChargeWith(new ChargeOrder(limits, Window, cold, 0.9, 1e7, 1), 0);
        battery.AdvanceTo(3600);
        battery.Rest(BatteryPlace.WaitingForTemperature, 3600, AirTemperature.Constant(Zero + 20));

        var inside = battery.NextEvent(Window, 1e6);
        battery.AdvanceTo(inside);

        Assert.Equal(12, battery.Kelvin - Zero, 1e-4);
        Assert.True(battery.IsWithin(Window));
    }

    [Fact]
    public void A_wall_that_gives_nothing_charges_nothing_and_nobody_waits_for_it()
    {
        var result = (Plans.Plan(2, 8) with { Chargers = Plans.One(Plans.TwoBays with { WallLimit = Power.Zero }) }).Run();
        Assert.Equal(0, result.FromWall.WattHours);
        Assert.False(result.Completes);
        Assert.DoesNotContain(result.Batteries.Values.SelectMany(battery => battery.Spans),
            span => span.Place == BatteryPlace.Charging);
        Assert.Equal(StopKind.NothingLeft, result.DownTimes.First(down => !down.IsPlanned).Awaits);
    }

    [Fact]
    public void A_cold_hot_swap_reserve_begins_to_charge_when_it_is_warm_enough()
    {
        var small = new KitBattery(Plans.Small) { Charge = Ratio.FromPercent(50), StartTemperature = Plans.Celsius(0) };
        var day = Plans.Takes(1) with
        {
            Ambient = Plans.Celsius(25),
            Blocks = new([new("all", new DayBlock { Length = Duration.FromHours(3), Others = PowerState.Standby })]),
        };
        var result = (Plans.Plan(1, 3) with
        {
            Days = [day], HotSwap = new HotSwapReserve(small, Plans.Watts(10), Plans.Volts(0.35),
                ElectricResistance.FromMilliohms(30)),
        }).Run();

        var spans = result.HotSwap!.Spans;
        Assert.Equal([BatteryPlace.WaitingForTemperature, BatteryPlace.Charging, BatteryPlace.Full],
            spans.Select(span => span.Place).Take(3));
        Assert.Equal(10, spans[0].TemperatureAtEnd.DegreesCelsius, 1e-3);

        // In the middle of the block, and full after 7.5 Wh and a little at 10 W.
        Assert.InRange((spans[0].End - spans[0].Start).Minutes, 1, 150);
        Assert.InRange((spans[1].End - spans[1].Start).Minutes, 40, 60);
    }
}
