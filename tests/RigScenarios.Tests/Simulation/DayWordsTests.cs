using RigScenarios.Answers;
using RigScenarios.Days;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Tests.Simulation;

/// <summary>What people are told of a plan, and a day on one battery with takes and changing air.</summary>
public sealed class DayWordsTests
{
    [Fact]
    public void The_answer_says_whether_where_and_why()
    {
        var good = Plans.Plan(3, 6);
        Assert.Matches("^The day completes with 3 batteries: 2 swaps, the emptiest battery coming off with [0-9]+ %\\. What is left at the end would last about ", DayPlanWords.Answer(good.Run(), good));
        var bad = Plans.Plan(2, 6, days: 2);
        Assert.Matches("^The 2 days cannot be completed with 2 batteries: day 1, 1[0-9]:[0-9]{2}, in (take [0-9]+ of )?\"afternoon\", compact body A stops \\(drop-out of camera, and no other battery is left\\)", DayPlanWords.Answer(bad.Run(), bad));
    }

    [Fact]
    public void Charging_has_its_cautions()
    {
        var plan = Plans.Plan(2, 4) with { Chargers = Plans.One(new DayCharger(ElectricCurrent.FromAmperes(8))) };
        var cautions = DayPlanWords.Cautions(plan.Run(), plan);
        Assert.Contains(cautions, line => line.Contains("unattended", StringComparison.Ordinal));
        Assert.Contains(cautions, line => line.Contains("b1 would be charged in little more than an hour", StringComparison.Ordinal));
        Assert.DoesNotContain(DayPlanWords.Cautions(Plans.Plan(2, 4).Run(), Plans.Plan(2, 4)), line => line.Contains("unattended", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(8.25, 1, "08:15")]
    [InlineData(33.5, 2, "day 2, 09:30")]
    public void Times_are_told_by_the_clock(double hours, int days, string clock) => Assert.Equal(clock, DayPlanWords.Clock(Duration.FromHours(hours), days));

    [Fact]
    public void A_day_on_one_battery_agrees_with_a_plan_of_one_battery()
    {
        var day = Plans.Takes(1.5) with { AmbientPoints = [new(new TimeOnly(8, 20), Plans.Celsius(-5)), new(new TimeOnly(9, 40), Plans.Celsius(14))] };
        var single = DayRun.Run(Plans.Rig, day, Plans.Celsius(20), DayRunOptions.EndOnly, TestContext.Current.CancellationToken);
        var plan = (Plans.Plan(1, 1.5) with { Days = [day], Swaps = new SwapPolicy() }).Run();
        Assert.Equal(single.ChargeLeft.DecimalFractions, plan.Batteries["b1"].ChargeLeft.DecimalFractions, 1e-4);
        Assert.Equal(single.Delivered.WattHours, plan.FromPacks.WattHours, 1e-3);
    }
}
