using RigScenarios.Days;
using RigScenarios.Search;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Tests.Simulation;

/// <summary>The least kit against a plain search over everything.</summary>
public sealed class LeastKitTests
{
    [Fact]
    public void Of_equal_batteries_every_smaller_number_fails()
    {
        var plan = Plans.Plan(5, 6);
        var found = LeastKit.Find(Plans.Rig, plan, KitWish.None, null, TestContext.Current.CancellationToken);
        Assert.Equal(["b1", "b2", "b3"], found.Least!.Batteries);
        Assert.Equal([1, 2, 3], found.Tried.Select(trial => trial.Batteries.Count));
        Each.Of(found.Tried.SkipLast(1), trial => Assert.NotEqual("", trial.Where));
        Assert.True(found.Result!.Completes);
    }

    [Theory]
    [InlineData(5.0)]
    [InlineData(7.0)]
    [InlineData(8.5)]
    public void With_unequal_batteries_and_bays_it_is_what_trying_everything_finds(double hours)
    {
        var plan = Plans.Plan(0, hours) with
        {
            Batteries = Plans.Kit(
                new KitBattery(Plans.Brick98) { CapacityLeft = Ratio.FromPercent(80), ResistanceGrowth = 1.4 },
                new KitBattery(Plans.Brick98),
                new KitBattery(Plans.Brick(150)), new KitBattery(Plans.Brick98) { Charge = Ratio.FromPercent(60) }),
            Chargers = Plans.One(Plans.TwoBays),
        };
        var found = LeastKit.Find(Plans.Rig, plan, KitWish.None, null, TestContext.Current.CancellationToken);

        var best = (Batteries: int.MaxValue, Bays: int.MaxValue);
        var names = plan.Batteries.Keys.ToList();
        for (var bits = 1; bits < 16; bits++)
        {
            for (var bays = 0; bays <= 2; bays++)
            {
                var chosen = names.Where((_, i) => (bits >> i & 1) == 1).ToList();
                var kit = plan with
                {
                    Batteries = new(chosen.Select(name => KeyValuePair.Create(name, plan.Batteries[name]))),
                    Chargers = Plans.One(Plans.TwoBays with { Bays = bays }),
                };
                if (kit.Run().Completes && (chosen.Count, bays).CompareTo((best.Batteries, best.Bays)) < 0)
                    best = (chosen.Count, bays);
            }
        }
        Assert.Equal(best, (found.Least!.Batteries.Count, found.Least.BayCount));
    }

    [Fact]
    public void What_a_bound_skips_does_fail()
    {
        var plan = Plans.Plan(4, 9);
        var found = LeastKit.Find(Plans.Rig, plan, KitWish.None, null, TestContext.Current.CancellationToken);
        var skipped = found.Tried.Where(trial => !trial.Simulated).ToList();
        Assert.NotEmpty(skipped);
        Each.Of(skipped,
            trial =>
            Assert.False(
            (plan with { Batteries = new(trial.Batteries.Select(name => KeyValuePair.Create(name, plan.Batteries[name]))) })
            .Run().Completes));
    }

    [Fact]
    public void A_wished_reserve_takes_more()
    {
        var plan = Plans.Plan(5, 6);
        var wished = LeastKit.Find(Plans.Rig, plan,
            new KitWish(TimeLeft: (plan with { Batteries = Plans.Plan(3, 6).Batteries }).Run().Reserve.Time
            + Duration.FromMinutes(10)), null, TestContext.Current.CancellationToken);
        Assert.Equal(4, wished.Least!.Batteries.Count);
        Assert.Contains(wished.Tried, trial => trial.Where.Contains("what is left at the end", StringComparison.Ordinal));
        var impossible = LeastKit.Find(Plans.Rig, plan, new KitWish(LeastAtSwap: Ratio.FromPercent(95)), null,
            TestContext.Current.CancellationToken);
        Assert.Null(impossible.Least);
    }

    [Fact]
    public void On_several_days_charged_elsewhere_the_bound_refutes_no_kit_that_completes()
    {
        // Three batteries last a day, and each day begins as the first; for two days from one charge they are too few.
        var plan = Plans.Plan(5, 6, days: 2);
        var found = LeastKit.Find(Plans.Rig, plan, KitWish.None, null, TestContext.Current.CancellationToken);
        Assert.Equal(["b1", "b2", "b3"], found.Least!.Batteries);
        var once = LeastKit.Find(Plans.Rig, plan with { ChargedElsewhere = false }, KitWish.None, null,
            TestContext.Current.CancellationToken);
        Assert.True(once.Least!.Batteries.Count > 3);
    }

    [Fact]
    public void A_kit_without_bays_is_not_charged_elsewhere_because_of_that()
    {
        var night = new ClockRange(new TimeOnly(19, 0), new TimeOnly(7, 0));
        var plan = Plans.Plan(3, 6, days: 2) with { Chargers = Plans.One(Plans.TwoBays with { PowerHours = [night] }) };
        var found = LeastKit.Find(Plans.Rig, plan, KitWish.None, null, TestContext.Current.CancellationToken);
        Assert.True(found.Least!.BayCount > 0);
        Assert.Contains(found.Tried, trial => trial.Batteries.Count == 3 && trial is { BayCount: 0, Survives: false });
    }
}
