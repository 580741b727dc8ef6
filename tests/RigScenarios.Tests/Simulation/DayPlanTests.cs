using RigScenarios.Days;
using RigScenarios.Limits;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Tests.Simulation;

/// <summary>What happens on a day with several batteries.</summary>
public sealed class DayPlanTests
{
    [Fact]
    public void Three_batteries_carry_a_day_with_planned_swaps()
    {
        var result = Plans.Plan(3, 6).Run();
        Assert.True(result.Completes, result.Story());
        Assert.Equal(2, result.Swaps.Count);
        Each.Of(result.Swaps, swap => Assert.False(swap.Forced));
        Each.Of(result.DownTimes, down => Assert.Equal((StopKind.PlannedSwap, true, false),
            (down.Reason.Kind, down.IsPlanned, down.InTake)));

        // A minute for the swap and half a minute for the restart.
        Each.Of(result.DownTimes, down => Assert.Equal(90, (down.End - down.Start).Seconds, 1e-6));
        Assert.Equal(result.Swaps.Min(swap => swap.ChargeOff), result.LeastChargeAtSwap);
    }

    [Fact]
    public void One_battery_too_few_is_told_as_nothing_left()
    {
        var result = Plans.Plan(2, 6).Run();
        Assert.False(result.Completes);
        var first = result.DownTimes.First(down => !down.IsPlanned);
        Assert.Equal(("camera", StopKind.NothingLeft, "afternoon"), (first.Device, first.Awaits!.Value, first.Block));
        Assert.Equal("drop-out of camera", first.Reason.ToString());
    }

    [Fact]
    public void Without_a_condition_the_rig_stops_in_a_take_and_the_swap_is_forced()
    {
        var result = (Plans.Plan(3, 6) with { Swaps = new SwapPolicy() }).Run();
        Assert.False(result.Completes);
        Each.Of(result.Swaps, swap => Assert.True(swap.Forced));
        Assert.Contains(result.DownTimes, down => down is { Reason.Kind: StopKind.ShortOfVoltage, Awaits: null, InTake: true });
    }

    [Fact]
    public void A_swap_waits_for_the_reset_or_for_the_end_of_the_block()
    {
        var plan = Plans.Plan(3, 6) with { Swaps = new SwapPolicy { Reserve = Ratio.FromPercent(25) } };
        var any = (plan with { Swaps = plan.Swaps with { Allowed = SwapMoments.AnyTime } }).Run();
        var reset = plan.Run();
        // Early enough that what is left lasts to the end of the block.
        var between = (Plans.Plan(3, 3) with { Swaps = new SwapPolicy { Reserve = Ratio.FromPercent(80),
            Allowed = SwapMoments.BetweenBlocks } }).Run();

        // Wished for where the terminals see a quarter; a little more is in the battery.
        Assert.InRange(any.Swaps[0].ChargeOff!.Value.DecimalFractions, 0.25, 0.255);
        // Takes begin every ten minutes from 8 o'clock, or half an hour later after the meal, and last four.
        Each.Of(reset.Swaps, swap => Assert.True(swap.Time.Minutes % 10 >= 4 - 1e-6, $"{swap.Time.Minutes}"));
        Assert.True(reset.Swaps[0].Time >= any.Swaps[0].Time);
        Each.Of(between.Swaps.Where(swap => !swap.Forced), swap => Assert.Contains(swap.Block, new[] { "meal", "afternoon" }));
    }

    [Fact]
    public void A_charger_saves_a_battery()
    {
        var without = Plans.Plan(2, 8).Run();
        var with = (Plans.Plan(2, 8) with { Chargers = Plans.One(Plans.TwoBays) }).Run();
        Assert.False(without.Completes);
        Assert.True(with.Completes, with.Story());
        Assert.True(with.FromWall > Energy.FromWattHours(60));
        Assert.Contains(with.Batteries.Values, battery => battery.Spans.Any(span => span.Place == BatteryPlace.Charging));
        Assert.Contains(with.Batteries.Values, battery => battery.Spans.Any(span => span.Place == BatteryPlace.Full));
    }

    [Fact]
    public void In_the_cold_a_battery_waits_for_its_temperature_and_is_charged_where_it_is_warm()
    {
        var cold = Plans.Plan(2, 8) with { Ambient = Plans.Celsius(2),
            Chargers = Plans.One(Plans.TwoBays with { Ambient = Plans.Celsius(5) }) };
        var result = cold.Run();
        Each.Of(result.Batteries.Values.SelectMany(battery => battery.Spans),
            span => Assert.False(span.Place == BatteryPlace.Charging && span.TemperatureAtStart < Plans.Celsius(9.9)));
        Assert.Contains(result.Batteries.Values.SelectMany(battery => battery.Spans),
            span => span.Place == BatteryPlace.WaitingForTemperature);

        var warm = (cold with { Chargers = Plans.One(Plans.TwoBays with { Ambient = Plans.Celsius(21) }) }).Run();
        var waited = warm.Batteries.Values.SelectMany(battery => battery.Spans)
            .First(span => span.Place == BatteryPlace.WaitingForTemperature);

        // What the cold held back of its charge evens out while it waits, and warms it a little.
        Assert.InRange(waited.TemperatureAtEnd.DegreesCelsius, 10 - 1e-3, 10.01);
        Assert.Contains(warm.Batteries.Values.SelectMany(battery => battery.Spans), span => span.Place == BatteryPlace.Charging);
    }

    [Fact]
    public void Power_hours_hold_to_the_second()
    {
        var lunch = new ClockRange(new TimeOnly(11, 0), new TimeOnly(11, 30));
        var result = (Plans.Plan(2, 6) with { Chargers = Plans.One(Plans.TwoBays with { PowerHours = [lunch] }) }).Run();
        var charging = result.Batteries.Values.SelectMany(battery => battery.Spans)
            .Where(span => span.Place == BatteryPlace.Charging).ToList();
        Assert.Equal((11.0, 11.5), (charging.Min(span => span.Start.Hours), charging.Max(span => span.End.Hours)));
        Assert.Contains(result.Batteries.Values.SelectMany(battery => battery.Spans),
            span => span.Place == BatteryPlace.WaitingForPower);
    }

    [Fact]
    public void The_night_fills_what_the_day_took_and_the_second_day_starts_with_it()
    {
        var night = new ClockRange(new TimeOnly(19, 0), new TimeOnly(7, 0));
        var charged = (Plans.Plan(3, 6, days: 2) with { Chargers = Plans.One(Plans.TwoBays with { PowerHours = [night] }) })
            .Run();
        Assert.True(charged.Completes, charged.Story());
        Each.Of(charged.Days[1].ChargeAtStart.Values, charge => Assert.True(charge.Percent > 97));
        Assert.False((Plans.Plan(3, 6, days: 2) with { ChargedElsewhere = false }).Run().Completes);
        Assert.Equal(charged.FromWall.WattHours, charged.Days.Sum(day => day.FromWall.WattHours), 1e-6);
    }

    [Fact]
    public void Bays_in_turn_and_a_wall_limit_take_longer()
    {
        SimulationResult With(DayCharger charger) => (Plans.Plan(3, 0.5) with
        {
            Batteries = Plans.Kit(new KitBattery(Plans.Brick98), Low, Low),
            Days = [Plans.Takes(12) with { Blocks = new([new("wait", new DayBlock { Length = Duration.FromHours(12) })]) }],
            Chargers = Plans.One(charger),
        }).Run();
        double FullAt(SimulationResult result, string name) =>
            result.Batteries[name].Spans.First(span => span.Place == BatteryPlace.Full).Start.Hours;

        var shared = With(Plans.TwoBays);
        var inTurn = With(Plans.TwoBays with { Order = BayOrder.InTurn });
        var limited = With(Plans.TwoBays with { WallLimit = Plans.Watts(60) });
        Assert.Equal(FullAt(shared, "b2"), FullAt(shared, "b3"), 1e-6);
        Assert.Equal(FullAt(shared, "b2"), FullAt(inTurn, "b2"), 1e-6);
        Assert.True(FullAt(inTurn, "b3") > FullAt(inTurn, "b2") + 1);
        Assert.True(FullAt(limited, "b3") > FullAt(shared, "b3") + 0.5);
        Each.Of(limited.Batteries.Values.SelectMany(battery => battery.Spans)
            .Where(span => span.Place == BatteryPlace.Charging), span =>
            Assert.True((span.ChargeAtEnd - span.ChargeAtStart).DecimalFractions * 98 / (span.End - span.Start).Hours < 30,
                "more than half of the wall's 60 W"));
    }

    [Fact]
    public void A_hot_swap_reserve_and_a_battery_inside_keep_devices_running_through_a_swap()
    {
        var plan = Plans.Plan(3, 6);
        var hot = (plan with { HotSwap = new HotSwapReserve(new KitBattery(Plans.Small), Plans.Watts(10), Plans.Volts(0.35),
            ElectricResistance.FromMilliohms(30)) }).Run();
        Assert.True(hot.Completes, hot.Story());
        Assert.Empty(hot.DownTimes);
        Assert.True(hot.HotSwap!.Delivered > Energy.FromWattHours(0.5));

        // Not all of that: it is charged until the full voltage is reached, and no more.
        Assert.InRange(hot.HotSwap.Charged.WattHours, 0.3, hot.HotSwap.Delivered.WattHours);

        var own = (plan with { Internal = new([new("monitor", new KitBattery(Plans.Brick(20)))]) }).Run();
        Assert.DoesNotContain(own.Devices["monitor"].Spans, span => span.Activity == DeviceActivity.Down);
        Assert.Equal(own.Swaps.Count, own.Devices["monitor"].Spans.Count(span => span.Activity == DeviceActivity.OnOwnBattery));
    }

    [Fact]
    public void The_fullest_goes_first_or_the_list_is_kept()
    {
        var batteries = Plans.Kit(new KitBattery(Plans.Brick98) { Charge = Ratio.FromPercent(80) },
            new KitBattery(Plans.Brick98) { Charge = Ratio.FromPercent(70) }, new KitBattery(Plans.Brick98));
        var plan = Plans.Plan(3, 5) with { Batteries = batteries };
        Assert.Equal("b3", plan.Run().Swaps[0].Off);
        var listed = (plan with { Swaps = plan.Swaps with { Next = NextBattery.AsListed } }).Run();
        Assert.Equal(("b1", "b2"), (listed.Swaps[0].Off, listed.Swaps[0].On));
    }

    [Fact]
    public void A_battery_in_a_warm_pocket_lasts_longer_in_the_frost()
    {
        var day = Plans.Takes(5);
        var plan = Plans.Plan(2, 5) with { Ambient = Plans.Celsius(-25), Days = [day] };
        var pocket =
            plan with { Batteries = new(plan.Batteries.Select(item => KeyValuePair.Create(item.Key,
            item.Value with { Rests = new RestingPlace(Plans.Celsius(25), 0.6) }))) };
        double Up(SimulationResult result) => result.Devices["camera"].Spans.Where(span => span.Activity == DeviceActivity.Up)
            .Sum(span => (span.End - span.Start).Minutes);
        Assert.True(Up(pocket.Run()) > Up(plan.Run()) + 10);
    }

    [Fact]
    public void Air_that_warms_through_the_day_lies_between_cold_and_warm()
    {
        double Left(ShootingDay day) => (Plans.Plan(1, 1.5) with { Days = [day] })
            .Run().Batteries["b1"].ChargeLeft.DecimalFractions;
        var cold = Left(Plans.Takes(1.5) with { Ambient = Plans.Celsius(-5) });
        var warm = Left(Plans.Takes(1.5) with { Ambient = Plans.Celsius(20) });
        var rising = Left(Plans.Takes(1.5) with { AmbientPoints = [new(new TimeOnly(8, 0), Plans.Celsius(-5)),
            new(new TimeOnly(10, 0), Plans.Celsius(20))] });
        Assert.InRange(rising, cold + 0.005, warm - 0.005);
    }

    [Fact]
    public void Bad_plans_are_refused_in_words()
    {
        Assert.Contains("no day", Assert.Throws<ArgumentException>(() => (Plans.Plan(1, 4) with { Days = [] }).Run()).Message,
            StringComparison.Ordinal);
        Assert.Contains("no battery", Assert.Throws<ArgumentException>(() => (Plans.Plan(1, 4) with { Batteries = Plans.Kit() })
            .Run()).Message, StringComparison.Ordinal);
        Assert.Contains("belongs to no device",
            Assert.Throws<ArgumentException>(() =>
            (Plans.Plan(1, 4) with { Internal = new([new("moniter", new KitBattery(Plans.Brick98))]) }).Run()).Message,
            StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => (Plans.Plan(1, 30, days: 2)).Run());
    }

    [Fact]
    public void It_can_be_cancelled()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        Assert.Throws<OperationCanceledException>(() => DaySimulation.Run(Plans.Rig, Plans.Plan(3, 6), null, null, source.Token));
    }

    private static KitBattery Low => new(Plans.Brick98) { Charge = Ratio.FromPercent(10) };
}
