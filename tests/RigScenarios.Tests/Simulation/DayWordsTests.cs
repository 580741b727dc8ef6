using RigScenarios.Answers;
using RigScenarios.Days;
using UnitsNet;

namespace RigScenarios.Tests.Simulation;

/// <summary>What people are told of a plan.</summary>
public sealed class DayWordsTests
{
    [Fact]
    public void The_first_break_says_when_where_and_why()
    {
        var good = Plans.Plan(3, 6);
        Assert.Empty(DayPlanWords.FirstBreak(good.Run(), good));
        var bad = Plans.Plan(2, 6, days: 2);
        Assert.Matches(
            "^day 1, 1[0-9]:[0-9]{2}, in (take [0-9]+ of )?\"afternoon\", compact body A stops: too little voltage at the "
                + "camera$",
            DayPlanWords.FirstBreak(bad.Run(), bad));
    }

    [Fact]
    public void Charging_has_its_cautions()
    {
        var cautions = AnswerCautions.Charging(Plans.Plan(2,
            4) with { Chargers = Plans.One(new DayCharger(ElectricCurrent.FromAmperes(8))) });
        Assert.Contains(cautions, line => line.Contains("unattended", StringComparison.Ordinal));
        Assert.Contains(cautions, line => line.Contains("b1 would be charged in little more than an hour",
            StringComparison.Ordinal));
        Assert.Empty(AnswerCautions.Charging(Plans.Plan(2, 4)));
    }

    [Theory]
    [InlineData(8.25, 1, "08:15")]
    [InlineData(33.5, 2, "day 2, 09:30")]
    public void Times_are_told_by_the_clock(double hours, int days, string clock) =>
        Assert.Equal(clock, DayPlanWords.Clock(Duration.FromHours(hours), days));
}
