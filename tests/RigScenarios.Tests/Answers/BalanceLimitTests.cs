using System.Globalization;
using RigScenarios.Answers;
using RigScenarios.Limits;
using UnitsNet;
using UnitsNet.Units;
using static RigScenarios.Tests.Answers.ByHandRig;

namespace RigScenarios.Tests.Answers;

/// <summary>Limits, verdicts and what is said before something comes off, on a rig that was worked out by hand.</summary>
public class BalanceLimitTests
{
    [Fact]
    public void Before_a_battery_that_counterweights_comes_off_the_tilt_lock_is_tightened()
    {
        var balance = ScenarioBalance.Of(Read(Text()), "one");
        Assert.True(balance.LocksBeforeSwap);
        Assert.Equal("Tighten the tilt lock before anything comes off.", BalanceWords.BeforeSwap(balance));
        Assert.Contains(BalanceWords.Cautions(balance),
            caution => caution.StartsWith("Tighten the tilt lock before the weight comes off: level, it then pulls nose down "
                + "with 1.5 N·m; friction at rest holds 0.4 N·m.", StringComparison.Ordinal));
        // Beside the rig it holds no balance, and nothing of it is weighed.
        var beside = ScenarioBalance.Of(Read(Text(more: "beside: [weight]")), "one");
        Assert.False(beside.LocksBeforeSwap);
        Assert.Equal(2.1, beside.Mass.Mass.Kilograms, 9);
        Assert.Null(ScenarioBalance.Of(Read(Text().Replace(", head, legs]", "]", StringComparison.Ordinal)),
            "one").LocksBeforeSwap);
    }

    [Theory]
    [InlineData("0 N·m, 4 N·m", "setting 1 of 0 to 1")]
    [InlineData("1 N·m, 2 N·m, 4 N·m", "setting 2 of 1 to 3")]
    public void A_setting_is_called_as_the_dial_counts(string steps, string words)
    {
        var scenario = Read(Text().Replace("counterbalance-from: 0 N·m, counterbalance-to: 20 N·m",
            $"counterbalance-steps: [{steps}]", StringComparison.Ordinal));
        Assert.Contains(words, BalanceWords.Setting(ScenarioBalance.Of(scenario, "one")), StringComparison.Ordinal);
    }

    [Fact]
    public void Slope_and_gust_are_held_against_the_tripod_together()
    {
        var balance = ScenarioBalance.Of(Read(Text(more: "on-legs: {wind: 12 m/s, slope: 3 °, surroundings: coast}")), "one");
        var (stand, wind) = (balance.WorstTilt!, balance.Wind!);
        double alpha = 3 * Math.PI / 180, e = stand.EdgeDistance.Meters, height = stand.CentreHeight.Meters;
        // Air of 20 °C at sea level: 101 325 Pa/(287.05 J/(kg K) * 293.15 K).
        var air = 101_325 / (287.05 * 293.15);
        var tips =
            Math.Sqrt(
            2 * stand.TotalMass.Kilograms * 9.80665 * ((e * Math.Cos(alpha)) - (height * Math
            .Sin(alpha))) / (air * 1.2 * wind.Area.SquareMeters * wind.Height.Meters * Math.Cos(alpha)));
        var gust = balance.StandLimits.Single(limit => limit.Kind == LimitKind.Gust);
        Assert.Equal(tips, gust.Worst.As(SpeedUnit.MeterPerSecond), 1e-9);
        Assert.Equal(12 * 1.52, gust.Allowed!.As(SpeedUnit.MeterPerSecond), 1e-9);
        Assert.Equal(Verdict.Fails, balance.StandVerdict);
        // With the ballast that it asks for, and no gram less, it stands.
        var more = StandBallast.Of(balance)!.ForGust!.Mass!.Value.Kilograms;
        foreach (var (share, holds) in new[] { (1.0001, true), (0.9999, false) })
        {
            var held = ScenarioBalance.Of(Read(Text(more: $"on-legs: {{wind: 12 m/s, slope: 3 °, surroundings: coast, "
                + $"ballast: {(share * more).ToString("R", CultureInfo.InvariantCulture)} kg}}")), "one");
            Assert.Equal(holds, held.TippingGust!.Value.MetersPerSecond >= 12 * 1.52);
        }
    }

    [Fact]
    public void What_is_lifted_is_the_whole_and_the_lower_of_both_limits_counts()
    {
        var lift = ScenarioBalance.Of(Read(Text()), "one").Lift;
        Assert.Equal(3.1 + 2 + 4, lift.Lifted.Kilograms, 9);
        // By hand: H 35 cm, from 30 cm to 140 cm, D 110 cm, a fair hold: 23 * 25/35 * (1 - 0.003 * 45) * (0.82 + 4.5/110) * 0.95,
        // and 23 * 25/35 * (1 - 0.003 * 65) * (0.82 + 4.5/110).
        double origin = 23 * 25 / 35d * 0.865 * (0.82 + (4.5 / 110)) * 0.95,
        destination = 23 * 25 / 35d * 0.805 * (0.82 + (4.5 / 110));
        Assert.Equal(origin, lift.Origin.RecommendedLimit.Kilograms, 9);
        Assert.Equal(destination, lift.Destination.RecommendedLimit.Kilograms, 9);
        Assert.Equal(9.1 / Math.Min(origin, destination), lift.Index!.Value, 9);
        Assert.Equal(3.1, ScenarioBalance.Of(Read(Text(stance: "hand")), "one").Lift.Lifted.Kilograms, 9);
    }

    [Fact]
    public void Every_limit_is_a_number_with_a_unit_and_a_yardstick_fails_nothing()
    {
        var balance = ScenarioBalance.Of(Read(Text(more: "on-legs: {wanted-lean: 40 °}")), "one");
        var tips = balance.StandLimits.Single(limit => limit.Kind == LimitKind.TipAngle);
        Assert.True(tips is { IsPassed: true, HasForce: false });
        // It was wished for and is not there.
        Assert.Equal(Verdict.Close, balance.StandVerdict);
        Assert.Equal(Verdict.Holds, ScenarioBalance.Of(Read(Text()), "one").StandVerdict);
        var lifted = balance.BalanceLimits.Single(limit => limit.Kind == LimitKind.Lifting);
        Assert.Equal((9.1, "kg"), (Math.Round(lifted.Worst.As(MassUnit.Kilogram), 9),
            Mass.GetAbbreviation((MassUnit)lifted.Worst.Unit)));
        Assert.False(lifted.HasForce);
    }

    [Fact]
    public void A_verdict_that_nobody_can_give_says_what_is_missing()
    {
        var bare = ScenarioBalance.Of(Read(Text().Replace(", head, legs]", "]", StringComparison.Ordinal)), "one");
        Assert.Equal((Verdict.NotKnown, Verdict.NotKnown), (bare.BalanceVerdict, bare.StandVerdict));
        Assert.Contains("no head", bare.BalanceMissing.Single(), StringComparison.Ordinal);
        var hand = ScenarioBalance.Of(Read(Text(stance: "hand")), "one");
        Assert.Contains("greatest-effort", hand.BalanceMissing.Single(), StringComparison.Ordinal);
        var weak = ScenarioBalance.Of(Read(Text(stance: "hand", more: "in-hands: {greatest-effort: 5 N·m}")), "one");
        Assert.Equal(Verdict.Fails, weak.BalanceVerdict);
    }
}
