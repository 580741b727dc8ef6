using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using static RigScenarios.Tests.Answers.ByHandRig;

namespace RigScenarios.Tests.Answers;

public class ScenarioBalanceTests
{
    [Fact]
    public void A_rig_that_was_worked_out_by_hand()
    {
        var balance = ScenarioBalance.Of(Read(Text()), "one");
        // x: body 0, lens 50 + 50 = 100, battery -150 - 30 = -180, rods 0: (1000 * 100 - 1000 * 180) / 3100 = -25.8 mm.
        Assert.Equal(-80_000 / 3100d, balance.Mass.Centre.X.Millimeters, 9);
        Assert.Equal(3.1, balance.Mass.Mass.Kilograms, 9);
        // z: body 50, lens 50, battery 0, rods 0.
        Assert.Equal(100_000 / 3100d, balance.Mass.Centre.Z.Millimeters, 9);
        var head = balance.Best!;
        Assert.Equal(30 - (80_000 / 3100d), head.TravelMargin.Millimeters, 9);
        // A spring without steps takes up all of m g (z + d): nothing is left for the friction.
        Assert.Equal(3.1 * 9.80665 * ((100 / 3100d) + 0.05), head.Counterbalance.NewtonMeters, 9);
        Assert.Equal(0, head.WorstResidual.NewtonMeters, 9);
        Assert.StartsWith("It balances", BalanceWords.Answer(balance), StringComparison.Ordinal);
        // Battery off: m g (x - s) = 2.1 kg * g * (100 / 2.1 + 25.8) mm.
        var off = balance.Cases.Single(happening => happening is { Part: "weight", Title: "off" });
        Assert.Equal(2.1 * 9.80665 * ((0.1 / 2.1) + (0.08 / 3.1)), off.Level.NewtonMeters, 9);
    }

    [Fact]
    public void Zooming_moves_the_centre_of_the_lens_and_a_hand_adds_its_own_moment()
    {
        var balance = ScenarioBalance.Of(Read(Text()), "one");
        var zoomed = balance.Cases.Single(happening => happening.Title.StartsWith("zoomed", StringComparison.Ordinal));
        Assert.Equal(0.02 * 1 * 9.80665, zoomed.Level.NewtonMeters, 9);
        var hand = balance.Cases.Single(happening => happening.Title.Contains("hand", StringComparison.Ordinal));
        Assert.Equal(5 * (0.1 + (0.08 / 3.1)), hand.Level.NewtonMeters, 9);
        Assert.Equal(0.4 - (5 * (0.1 + (0.08 / 3.1))), hand.Margin.NewtonMeters, 9);
    }

    [Fact]
    public void What_to_move_brings_the_centre_where_it_is_wanted()
    {
        var scenario = Read(Text("{on: rods, forward: -190 mm, slides-from: -200 mm, slides-to: -60 mm}"));
        var help = BalanceHelp.Find(ScenarioBalance.Of(scenario, "one")).Single();
        Assert.True(help.Answer.Solved);
        Assert.Contains("forward on rods", help.Words, StringComparison.Ordinal);
        var moved = ScenarioPath.Set(scenario, "builds.one.places.weight.forward", $"{help.Answer.OffsetX.Millimeters:R} mm");
        Assert.Equal(0, ScenarioBalance.Of(moved, "one").Mass.Centre.X.Millimeters, 9);
    }

    [Fact]
    public void A_plate_that_does_not_reach_is_named_with_what_is_missing()
    {
        var balance = ScenarioBalance.Of(Read(Text("{on: rods, forward: 0 mm}")), "one");
        // (100 - 30) * 1000 / 3100 = 22.6 mm: it reaches; with the slide moved back by 60 mm it does not.
        Assert.Empty(balance.Best!.Exceeded);
        Assert.Empty(BalanceHelp.Find(balance));
        var far = ScenarioBalance.Of(Read(Text("{on: rods, forward: 0 mm}")
            .Replace("base-depth: 0 mm", "base-depth: 0 mm, slide-middle: -60 mm", StringComparison.Ordinal)), "one");
        Assert.Contains("53 mm ahead of what the camera plate reaches", BalanceWords.Answer(far), StringComparison.Ordinal);
    }

    [Fact]
    public void As_it_is_set_is_told_beside_what_is_best()
    {
        var balance = ScenarioBalance.Of(Read(Text()
            .Replace("base-depth: 0 mm", "base-depth: 0 mm, plate-at: 10 mm", StringComparison.Ordinal)), "one");
        Assert.Equal(10, balance.AsSet!.CameraPlate.Millimeters, 9);
        Assert.True(balance.AsSet.TiltMargin < balance.Best!.TiltMargin);
        Assert.Null(ScenarioBalance.Of(Read(Text()), "one").AsSet);
    }

    [Fact]
    public void The_stand_counts_head_and_legs_and_its_lowest_tip_angle_is_told()
    {
        var balance = ScenarioBalance.Of(Read(Text()), "one");
        Assert.Equal(6, balance.Supports.Stand!.Mass.Kilograms, 9);
        Assert.Equal(1400, balance.Supports.Stand.CameraPlateHeight.Millimeters, 9);
        // Legs at half of 1300 mm, the head's middle at 1350 mm.
        Assert.Equal(((4 * 650) + (2 * 1350)) / 6d, balance.Supports.Stand.CentreHeight.Millimeters, 9);
        Assert.True(balance.WorstTilt!.TipAngle <= balance.Level!.TipAngle);
        Assert.Contains("tips at a lean", TripodWords.Tipping(balance), StringComparison.Ordinal);
        Assert.Contains(BalanceWords.Cautions(balance),
            caution => caution.Contains("qualified rigger", StringComparison.Ordinal));
    }

    [Fact]
    public void On_the_shoulder_the_hands_carry_what_the_lever_says()
    {
        var balance = ScenarioBalance.Of(Read(Text(more: "on-shoulder: {pad: -125.806452 mm, hands: 174.193548 mm}",
            stance: "shoulder")), "one");
        // The centre is 100 mm ahead of the pad, the hands 300 mm: a third.
        Assert.Equal(3.1 * 9.80665 / 3, balance.Shoulder!.HandLoad.Newtons, 4);
        Assert.Contains("would free the hands", BalanceWords.Answer(balance), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_pad_the_answer_says_what_is_missing()
    {
        var balance = ScenarioBalance.Of(Read(Text(stance: "shoulder")), "one");
        Assert.Contains("no shoulder pad", BalanceWords.Answer(balance), StringComparison.Ordinal);
    }

    [Fact]
    public void Rods_take_each_load_at_its_own_place()
    {
        var balance = ScenarioBalance.Of(Read(Text()), "one");
        // Behind the body's edge at -50 mm: the battery, twice 1 kg, with its centre at -180 mm.
        var rear = balance.Rods.Single();
        Assert.False(rear.InFront);
        Assert.Equal(2 * 9.80665, rear.Load.Newtons, 9);
        Assert.Equal(150, rear.FreeLength.Millimeters, 9);
        var modulus = Math.PI * Math.Pow(0.015, 3) / 32;
        Assert.Equal(2 * 9.80665 * 0.13 / (2 * modulus), rear.Stress.Pascals, 1);
    }

    [Theory]
    [InlineData("{on: rod, forward: -150 mm}", "builds.one.places.weight.on", "rods")]
    [InlineData("{on: rods, at-end: yes}", "builds.one.places.weight.at-end", null)]
    [InlineData("{on: rods, slides-from: -150 mm}", "builds.one.places.weight.slides-to", null)]
    [InlineData("{on: rods, slides-from: 150 mm, slides-to: 20 mm}", "builds.one.places.weight.slides-from", null)]
    [InlineData("{on: weight}", "builds.one.places.weight.on", null)]
    [InlineData("{on: rods}\n      head: {}", "builds.one.places.head", null)]
    public void A_place_that_cannot_be_is_told_with_its_field(string place, string path, string? nearest)
    {
        var (scenario, problems) = ScenarioFile.TryReadText(Text(place), Path.Combine(Repository.Root, "by-hand.yaml"));
        Assert.Null(scenario);
        var problem = Assert.Single(problems, problem => problem.Severity == Severity.Error);
        Assert.Equal(path, problem.Path);
        Assert.Equal(nearest, problem.Nearest);
    }

    [Fact]
    public void A_thing_without_a_place_is_changed_from_its_usual_one()
    {
        var scenario = Read(Text().Replace("      weight: {on: rods, forward: -150 mm, slides-from: -200 mm, slides-to: -60 "
            + "mm}\n", "", StringComparison.Ordinal));
        var usual = ScenarioBalance.Of(scenario, "one");
        Assert.Equal(["weight"], usual.Rig.PlacesAssumed);
        var set = ScenarioBalance.Of(ScenarioPath.Set(scenario, "builds.one.places.weight.forward", "-120 mm"), "one");
        Assert.Empty(set.Rig.PlacesAssumed);
        Assert.Equal(-120, set.Rig.Places["weight"].Forward!.Value.Millimeters, 9);
        Assert.Equal(usual.Rig.Places["weight"].On, set.Rig.Places["weight"].On);
    }

    [Fact]
    public void Every_figure_of_a_demo_build_can_be_said()
    {
        foreach (var file in new[] { "winter-harbour.yaml", "teaching-kit.yaml" })
        {
            var scenario = ScenarioFile.TryRead(Repository.Data("scenarios", file)).Scenario!;
            foreach (var name in scenario.Builds.Keys)
            {
                var balance = ScenarioBalance.Of(scenario, name);
                Assert.Empty(balance.Supports.Missing);
                Assert.Empty(balance.Rig.WithoutMass);
                Each.Of([.. balance.BalanceLimits, .. balance.StandLimits],
                    limit =>
                        Assert.DoesNotContain("NaN", BalanceLimitWords.Worst(limit) + BalanceLimitWords.Left(limit)
                        + BalanceLimitWords.Allowed(limit), StringComparison.Ordinal));
            }
        }
    }
}
