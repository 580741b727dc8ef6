using RigScenarios.Answers;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Tests.Answers;

/// <summary>How far the time of a cold rig hangs on the heat that its battery keeps.</summary>
public class WarmthDoubtTests
{
    // A light battery in the wind: it is soon as warm as its heat conductance lets it.
    private const string Light = ", heat-capacity: 200 J/K, heat-conductance: 3 W/K";

    [Fact]
    public void In_deep_cold_under_a_heavy_load_it_decides_and_is_told()
    {
        var answer = ColdScenario.Of(-20, 90, 4, Light);
        var warmth = answer.Warmth!;

        Assert.True(warmth.Cooled < Duration.Zero && warmth.Kept > Duration.Zero && warmth.Decides);
        Assert.Contains(AnswerCautions.Of(answer), caution => caution.StartsWith("The battery keeps itself warm",
            StringComparison.Ordinal));
    }

    // What it says is what the same rig does with another heat conductance in its file.
    [Theory]
    [InlineData(1.3)]
    [InlineData(0.7)]
    public void The_change_is_that_of_the_same_rig_with_another_conductance(double factor)
    {
        var answer = ColdScenario.Of(-20, 90, 4, Light);
        var other = ColdScenario.Of(-20, 90, 4, Light.Replace(
            " 3 W", FormattableString.Invariant($" {factor * 3:0.###} W"), StringComparison.Ordinal));
        var change = factor > 1 ? answer.Warmth!.Cooled : answer.Warmth!.Kept!.Value;

        Assert.Equal((other.Reserve.Time - answer.Reserve.Time).Seconds, change.Seconds, 0.01);
    }

    [Fact]
    public void Where_the_battery_is_warm_nothing_is_run() => Assert.Null(ColdScenario.Of(20, 100, 4).Warmth);

    [Fact]
    public void A_light_load_in_the_cold_does_not_hang_on_it()
    {
        var answer = ColdScenario.Of(-10, 10, 20);

        Assert.False(answer.Warmth!.Decides);
        Assert.DoesNotContain(AnswerCautions.Of(answer), caution => caution.StartsWith("The battery keeps itself warm",
            StringComparison.Ordinal));
    }

    // A day that holds by more than the error of the model alone.
    [Fact]
    public void What_the_heat_may_change_goes_into_the_stated_error()
    {
        var runs = ColdScenario.Of(-20, 90, 0.01, Light);
        var model = runs.Simulation.ExpectedError.Share!.Value.DecimalFractions;
        var time = runs.Simulation.Runtime.Hours;
        var day = time * (1 - model - 0.01);
        var answer = ColdScenario.Of(-20, 90, Math.Round(day, 3), Light);

        Assert.True(answer.Simulation.Completes && answer.Reserve.Time.Hours > model * time);
        Assert.Equal(Verdict.Close, answer.Of(QuestionKind.Power)!.Verdict);
    }
}
