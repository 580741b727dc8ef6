using RigScenarios.Answers;
using RigScenarios.Days;
using UnitsNet;

namespace RigScenarios.Tests.Simulation;

/// <summary>What people are told of a plan.</summary>
public sealed class DayWordsTests
{
    [Fact]
    public void The_answer_says_whether_where_and_why()
    {
        var good = Plans.Plan(3, 6);
        Assert.Matches("^The day completes with 3 batteries: 2 swaps, the emptiest battery coming off with [0-9]+ %\\. What is left at the end lasts ", DayPlanWords.Answer(good.Run(), good));
        var bad = Plans.Plan(2, 6, days: 2);
        Assert.Matches("^The 2 days cannot be completed with 2 batteries: day 1, 1[0-9]:[0-9]{2}, in (take [0-9]+ of )?\"afternoon\", compact body A stops \\(drop-out of camera\\)", DayPlanWords.Answer(bad.Run(), bad));
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
}
