using RigScenarios.Days;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Tests.Simulation;

/// <summary>The reserve, and how days begin that nobody plans a charge for. (With figures by hand:
/// <see cref="EnergyByHandTests"/>.)</summary>
public sealed class ReserveTests
{
    [Fact]
    public void Planned_swaps_go_on_in_it_and_a_forced_one_ends_it()
    {
        var planned = Plans.Plan(3, 2).Run();
        var forced = (Plans.Plan(3, 2) with { Swaps = new SwapPolicy() }).Run();

        Assert.True(planned.Completes && forced.Completes, planned.Story());
        Assert.Equal("drop-out of camera", forced.Reserve.Ends!.ToString());
        Assert.True(forced.Reserve.Energy < Energy.FromWattHours(98));
        Assert.True(planned.Reserve.Energy > Energy.FromWattHours(2 * 98 * 0.8));
        Assert.True(planned.Reserve.Time > forced.Reserve.Time);
        Assert.Equal(planned.Reserve.Time.Seconds,
            planned.Runtime.Seconds - (planned.Days[0].End - planned.Days[0].Start).Seconds, 1e-6);
    }

    [Fact]
    public void Nothing_is_charged_in_it()
    {
        var day = Plans.Takes(2) with { Blocks =
            new([new("early", new DayBlock { Length = Duration.FromHours(1), Others = Builds.PowerState.Record })]) };
        var plan = Plans.Plan(2, 2) with { Days = [day], Chargers = Plans.One(Plans.TwoBays) };
        var result = plan.Run();

        Assert.True(result.Reserve.Energy < result.EnergyLeft);
        Assert.False(result.Reserve.IsLowerBound);
        Assert.Equal(result.Batteries.Values.Sum(battery => battery.FromWall.WattHours), result.FromWall.WattHours, 1e-9);
    }

    [Fact]
    public void The_air_stays_as_it_was_at_the_end()
    {
        Reserve With(double evening) => (Plans.Plan(1, 1) with
        {
            Swaps = new SwapPolicy(),
            Days = [Plans.Takes(1) with { AmbientPoints = [new(new TimeOnly(9, 29), Plans.Celsius(20)),
                new(new TimeOnly(9, 30), Plans.Celsius(evening))] }],
        }).Run().Reserve;

        // The day is the same to its last minute; only what follows is colder.
        Assert.True(With(-20).Time < 0.95 * With(20).Time);
    }

    [Fact]
    public void Every_day_begins_as_the_first_where_there_is_no_charger()
    {
        var plan = Plans.Plan(3, 6, days: 2) with
        {
            HotSwap = new HotSwapReserve(new KitBattery(Plans.Small), Plans.Watts(10), Plans.Volts(0.35),
                ElectricResistance.FromMilliohms(30)),
            Internal = new([new("monitor", new KitBattery(Plans.Brick(20)))]),
        };
        var result = plan.Run();

        Assert.True(result.Completes, result.Story());
        Assert.Equal(result.Days[0].ChargeAtStart, result.Days[1].ChargeAtStart);
        Each.Of(result.Days[0].ChargeAtStart.Values, charge => Assert.Equal(100, charge.Percent, 1e-9));
        Assert.Equal(result.Days[0].FromPacks.WattHours, result.Days[1].FromPacks.WattHours, 1e-6);
        var swaps = result.Swaps.ToLookup(swap => swap.Day);
        Assert.NotEmpty(swaps[1]);
        Assert.Equal(swaps[1].Select(swap => (swap.Off, swap.On)), swaps[2].Select(swap => (swap.Off, swap.On)));
        Each.Of(swaps[1].Zip(swaps[2]), pair => Assert.Equal(pair.First.Time.Hours + 24, pair.Second.Time.Hours, 1e-6));
        Assert.Equal(100, result.HotSwap!.Spans.First(span => span.Start.Hours >= 32 - 1e-9).ChargeAtStart.Percent, 1e-6);
    }

    [Fact]
    public void What_is_not_charged_elsewhere_goes_on_as_it_stands()
    {
        var result = (Plans.Plan(5, 6, days: 2) with { ChargedElsewhere = false }).Run();
        Assert.True(result.Days[1].ChargeAtStart.Values.Sum(charge => charge.Percent) < 400);
        Each.Of(
            result.Days[0].ChargeAtEnd, item =>
                Assert.InRange((item.Value - result.Days[1].ChargeAtStart[item.Key]).Percent, 0, 0.2));
    }
}
