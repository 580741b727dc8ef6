using RigScenarios.Travel;
using static RigScenarios.Tests.Travel.TightLimits;
using static RigScenarios.Tests.Travel.TravelCases;

namespace RigScenarios.Tests.Travel;

public sealed class EvenShareTests
{
    [Fact]
    public void The_largest_load_is_the_least_of_all_shares_within_every_limit_and_no_battery_is_lost()
    {
        Drawn.Cases(firstSeed: 300, cases: 300, atLeast: 150, (random, looked) =>
        {
            var (rules, people) = (DrawnRules(random), random.Next(2, 4));
            var groups = DrawnGroups(random, rules, people == 2 ? 9 : 7);
            var flying = FlightSelection.Choose(groups, rules, people);
            var (counts, proven) = Share(groups, flying, rules, people);
            Assert.True(proven);
            Each.Of(counts, person => Assert.True(Within(groups, person, rules), "A person carries more than a limit."));
            Assert.Equal(flying, groups.Select((_, at) => counts.Sum(person => person[at])));
            var least = double.PositiveInfinity;
            EveryDeal(groups, flying, rules, people, mayStay: false,
                persons => least = Math.Min(least, persons.Max(person => Load(groups, person))));
            Assert.Equal(least, counts.Max(person => Load(groups, person)), 1e-6);
            Each.Step(counts, (one, next) => Assert.True(Load(groups, one) >= Load(groups, next) - 1e-9));
            if (flying.Sum() >= people && flying.Sum() < groups.Sum(group => group.Battery.Count))
                looked.One();
        });
    }

    // One who carries a battery of 160 Wh would by load alone get fewer of the others; the limit of the other person is full.
    [Theory]
    [InlineData("devices", 15)]
    [InlineData("spares", 20)]
    [InlineData("large", 2)]
    [InlineData("banks", 2)]
    public void Each_limit_is_filled_to_the_last_place_on_every_person_and_one_above_stays(string what, int limit)
    {
        var heavy = Some("heavy", 160, 1) with { Installed = what != "devices" };
        var others = Some("others", what == "large" ? 101 : 10, (2 * limit) + 1) with
        {
            Installed = what == "devices", PowerBank = what == "banks",
        };
        var answer = TravelPlan.For(Flight(2, [heavy, others]), TestContext.Current.CancellationToken);
        Each.Of(answer.Lists, list => Assert.Equal(limit,
            list.Lines.Where(line => line.Battery.Name == "others").Sum(line => line.Count)), atLeast: 2);
        Assert.Equal(("others", 1), (Assert.Single(answer.Left).Battery.Name, answer.Left[0].Count));
    }

    [Fact]
    public void Full_limits_are_kept_although_the_loads_become_less_even()
    {
        var rules = Rules(devices: 2, spares: 9, large: 1, banks: 1);
        var groups = Groups(rules, Some("device", 10, 4) with { Installed = true }, Some("large", 150, 1), Some("bank", 10, 2)
            with { PowerBank = true });
        Assert.Equal((int[][])[[2, 1, 1], [2, 0, 1]], Share(groups, [4, 1, 2], rules, 2).Counts);
    }

    // 3 + 3 and 2 + 2 + 2 are even; largest first gives 3 + 2 + 2 and 3 + 2. In thousandths of a watt-hour, the finest step.
    [Fact]
    public void One_thousandth_of_a_watt_hour_is_still_made_even()
    {
        var rules = RuleEditions.All[^1].Passengers;
        var groups = Groups(rules, Some("three", 0.003, 2), Some("two", 0.002, 3));
        Assert.Equal((int[][])[[0, 3], [2, 0]], [.. Share(groups, [2, 3], rules, 2).Counts.OrderBy(person => person[0])]);
    }

    // 3·30 + 60 = 30 + 2·60: the only even share.
    [Fact]
    public void Of_two_who_carry_the_same_the_one_with_more_of_the_first_battery_comes_first()
    {
        var rules = RuleEditions.All[^1].Passengers;
        Assert.Equal((int[][])[[3, 1], [1, 2]],
            Share(Groups(rules, Some("a", 30, 4), Some("b", 60, 3)), [4, 3], rules, 2).Counts);
    }

    // So many people that the search has no more steps left when its first share is complete: what is proven rests on the bound,
    // the larger of the largest battery and the mean load.
    [Theory]
    [InlineData(1000, 0, 180, true)]
    [InlineData(450, 0, 90, true)]
    [InlineData(1, 449, 90, true)]
    [InlineData(250, 500, 90, true)]
    [InlineData(600, 0, 180, false)]
    public void In_a_very_large_crew_a_share_is_called_best_only_where_it_meets_the_bound(int large, int small, double largest,
        bool proven)
    {
        var rules = RuleEditions.All[^1].Passengers;
        var groups = Groups(rules, Some("large", 90, large), Some("small", 45, small));
        var share = Share(groups, [large, small], rules, 500);
        Assert.Equal((largest, proven), (share.Counts.Max(person => Load(groups, person)), share.Proven));
        Assert.Equal((large, small), (share.Counts.Sum(person => person[0]), share.Counts.Sum(person => person[1])));
    }

    [Fact]
    public void In_a_very_large_crew_large_power_banks_find_a_place_beside_large_spares_and_small_power_banks()
    {
        var rules = Rules(devices: 1, spares: 2, large: 1, banks: 1);
        var groups = Groups(rules, Some("large", 150, 250), Some("small bank", 80, 250) with { PowerBank = true },
            Some("large bank", 120, 250) with { PowerBank = true });
        var counts = Share(groups, FlightSelection.Choose(groups, rules, 500), rules, 500).Counts;
        Assert.Equal([250, 250, 250], groups.Select((_, at) => counts.Sum(person => person[at])));
        Each.Of(counts, person => Assert.True(Within(groups, person, rules)), atLeast: 500);
    }

    private static (int[][] Counts, bool Proven) Share(List<(PackedBattery Battery, FlightCheck Check)> groups,
        int[] flying, PassengerRules rules, int people) =>
        EvenShare.Of(groups, flying, rules, people, TestContext.Current.CancellationToken);
}
