using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Cells;
using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using RigScenarios.Tests.Batteries;
using UnitsNet;

namespace RigScenarios.Tests.Cells;

/// <summary>Capacity and resistance of a worn battery move together, by one rule in one place.</summary>
public sealed class WearTests
{
    [Theory]
    [InlineData(null, 1.34)] // 1 + 1.7 * 0.2: the factor of NMC, which an unknown battery is taken for
    [InlineData("lfp", 1.2)] // 1 + 1.0 * 0.2
    public void A_growth_that_is_not_given_goes_with_the_capacity_and_is_told(string? chemistry, double expected)
    {
        var made = PackModel.From(Packs.Label with { Chemistry = chemistry }, null, null, Percent(80), null);
        Assert.Equal(expected, made.Pack.Age.ResistanceFactor, 1e-9);
        var told = Assert.Single(made.Assumed, value => value.Field == "resistance-growth");
        Assert.Equal((expected.ToString(System.Globalization.CultureInfo.InvariantCulture), new UsualRange("1", "2")),
            (told.Value, told.Usual));
        Assert.DoesNotContain(made.Assumed, value => value.Field == "capacity-left");
    }

    [Fact]
    public void A_growth_alone_leaves_the_capacity_as_new_and_says_so()
    {
        var made = PackModel.From(Packs.Label, null, null, null, 1.5);
        Assert.Equal((1.0, 1.5), (made.Pack.Age.CapacityLeft.DecimalFractions, made.Pack.Age.ResistanceFactor));
        Assert.Equal("100 %", Assert.Single(made.Assumed, value => value.Field == "capacity-left").Value);
    }

    [Fact]
    public void Given_both_nothing_is_assumed_of_the_age() =>
        Assert.DoesNotContain(PackModel.From(Packs.Label, null, null, Percent(80), 1).Assumed,
            value => value.Field is "capacity-left" or "resistance-growth");

    [Fact]
    public void A_battery_of_a_day_follows_the_rule() =>
        Assert.Equal(1.34, new KitBattery(new Part { Name = "battery", Battery = Packs.Label }) { CapacityLeft = Percent(80) }
            .MakePack().Pack.Age.ResistanceFactor, 1e-9);

    [Theory]
    [InlineData(1.3, 88, 76, 1.6)] // twice the loss, twice the growth
    [InlineData(1.3, 88, 100, 1)] // nothing lost, nothing grown
    [InlineData(1.1, 99, 89, 1.27)] // hardly a loss: 1.1 and 1.7 times a tenth
    [InlineData(1, 100, 80, 1.34)]
    public void A_known_growth_keeps_its_ratio_to_the_loss(double growth, double from, double to, double expected) =>
        Assert.Equal(expected, Wear.Further(growth, Percent(from), Percent(to), 1.7), 1e-9);

    [Fact]
    public void A_scenario_wears_all_its_batteries()
    {
        var scenario = SmallScenario.Read(SmallScenario.Text(battery: ", capacity-left: 88 %, resistance-growth: 1.3")) with
        {
            Batteries = new([new("first", new BatteryAtStart { Item = "flat" })]),
        };
        Assert.Same(scenario, scenario.MoreWorn(Percent(0)));
        var worn = scenario.MoreWorn(Percent(12));
        BatteryInUse own = worn.Builds["one"].Battery;
        Assert.Equal((76, 1.6), (own.CapacityLeft!.Value.Percent, own.ResistanceGrowth));
        Assert.Equal((88, (double?)null), (worn.Batteries["first"].CapacityLeft!.Value.Percent,
            worn.Batteries["first"].ResistanceGrowth));
        Assert.Equal(20, scenario.MoreWorn(Percent(90)).Batteries["first"].CapacityLeft!.Value.Percent);
        Assert.Equal(100, scenario.MoreWorn(Percent(-40)).Builds["one"].Battery.CapacityLeft!.Value.Percent);
    }

    private static Ratio Percent(double value) => Ratio.FromPercent(value);
}
