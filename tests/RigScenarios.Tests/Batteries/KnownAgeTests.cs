using CsCheck;
using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Cells.Aging;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Batteries;

/// <summary>What is known of a battery's age, in the one place that decides it.</summary>
public class KnownAgeTests
{
    private static readonly LifeInWords ThreeYears = LifeInWords.Usual with
    {
        Bought = new MonthOrDay(2023, 6, 1), Until = new DateOnly(2026, 6, 1),
    };

    private static readonly Gen<LifeInWords> AnyLife = Gen.Select(
        Gen.Int[0, 20], Gen.Double[0, 15], Any(Kept.All), Any(StoragePlace.All),
        Any(Emptied.All), (years, shoots, kept, place, emptied) => new LifeInWords
        {
            Bought = new MonthOrDay(2026 - years, 6, 1), Until = new DateOnly(2026, 6, 2), Kept = kept, Place = place,
            ShootsPerMonth = shoots, Emptied = emptied,
        });

    [Fact]
    public void With_nothing_said_it_is_new_and_says_that_nobody_knows()
    {
        var known = new KnownAge(null, null, null, null);

        Assert.True(known.IsUnknown && known.Ends is null);
        Assert.Equal(Age.New, known.Age);
    }

    // The project's own design page of aging: three years in a room, full, 2 shoots a month, half emptied, 0.894 by nmc, 0.76 to
    // 0.90 over the sets, 1.16 times the resistance.
    [Fact]
    public void A_life_in_words_gives_capacity_resistance_and_the_spread_of_the_fits()
    {
        var known = new KnownAge(null, ThreeYears, null, null);

        Assert.Equal(0.894, known.Age.CapacityLeft.DecimalFractions, 0.0006);
        Assert.Equal(1.16, known.Age.ResistanceFactor, 0.006);
        Assert.Equal(0.761, known.Ends!.Least.CapacityLeft.DecimalFractions, 0.0006);
        Assert.Equal(0.896, known.Ends.Greatest.CapacityLeft.DecimalFractions, 0.0006);
    }

    [Fact]
    public void What_was_measured_wins_over_any_life() => AnyLife.Holds(
        life =>
        {
            var known = new KnownAge("nmc", life, Ratio.FromPercent(91), 1.4);
            Assert.Equal((0.91, 1.4), (known.Age.CapacityLeft.DecimalFractions, known.Age.ResistanceFactor));
            Assert.True(known.IsMeasured && known.IsResistanceMeasured);
            Assert.Equal(0.89, known.Ends!.Least.CapacityLeft.DecimalFractions, 1e-9);
            Assert.Equal(1.4, known.Ends.Least.ResistanceFactor);
        }, 200);

    [Fact]
    public void The_age_lies_between_the_ends_of_its_band() => AnyLife.Holds(
        life =>
        {
            var known = new KnownAge("nmc", life, null, null);
            Assert.InRange(known.Age.CapacityLeft, known.Ends!.Least.CapacityLeft, known.Ends.Greatest.CapacityLeft);
        }, 200);

    [Fact]
    public void A_measured_capacity_alone_gives_the_resistance_by_the_rule_and_says_so()
    {
        var made = PackModel.From(Packs.Label, null, null, Ratio.FromPercent(80), null);

        Assert.Equal(1.34, made.Pack.Age.ResistanceFactor, 1e-9);
        Assert.Contains("capacity lost", Assert.Single(made.Assumed, value => value.Field == "resistance-growth").Why,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_life_is_an_assumption_with_its_source_and_the_ends_of_its_band()
    {
        var scenario = SmallScenario.Read(SmallScenario.Text(
            battery: ", age: {bought: 2023-06-01, until: 2026-06-01}"));
        var (_, plan) = ScenarioPlan.Of(scenario, "one", []);
        var assumed = plan.Batteries["flat"].MakePack().Assumed.Single(value => value.Field == "capacity-left");

        Assert.Equal(("89.4 %", "76.1 %", "89.6 %"), (assumed.Value, assumed.Usual!.Least, assumed.Usual.Most));
        Assert.Contains("Schmalstieg", assumed.Source.Authors, StringComparison.Ordinal);
    }

    [Fact]
    public void Whoever_wears_a_scenario_wears_what_its_life_says()
    {
        var scenario = SmallScenario.Read(SmallScenario.Text(
            battery: ", age: {bought: 2023-06-01, until: 2026-06-01}"));
        var worn = scenario.MoreWorn(Ratio.FromPercent(10)).Builds["one"].Battery;

        Assert.Null(worn.Life);
        Assert.Equal(79.4, worn.CapacityLeft!.Value.Percent, 0.06);
        Assert.True(worn.ResistanceGrowth > 1.2);
    }

    private static Gen<T> Any<T>(IReadOnlyList<T> all) => Gen.Int[0, all.Count - 1].Select(i => all[i]);
}
