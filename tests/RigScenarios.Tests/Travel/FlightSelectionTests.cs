using RigScenarios.Travel;
using static RigScenarios.Tests.Travel.TightLimits;
using static RigScenarios.Tests.Travel.TravelCases;

namespace RigScenarios.Tests.Travel;

public sealed class FlightSelectionTests
{
    [Fact]
    public void Most_watt_hours_fly_then_most_batteries_then_fewest_approvals_of_all_choices()
    {
        Drawn.Cases(firstSeed: 900, cases: 300, atLeast: 150, (random, looked) =>
        {
            var (rules, people) = (DrawnRules(random), random.Next(1, 3));
            var groups = DrawnGroups(random, rules, people == 1 ? 9 : 7);
            var chosen = FlightSelection.Choose(groups, rules, people);
            Each.Pair(groups, chosen, (group, count) => Assert.InRange(count, 0, group.Battery.Count));
            var best = (0.0, 0, 0);
            EveryDeal(groups, [.. groups.Select(group => group.Battery.Count)], rules, people, mayStay: true, persons =>
            {
                var score = Score(groups, [.. groups.Select((_, at) => persons.Sum(person => person[at]))]);
                best = score.CompareTo(best) > 0 ? score : best;
            });
            Assert.Equal(best, Score(groups, chosen));
            if (chosen.Sum() > 0 && chosen.Sum() < groups.Sum(group => group.Battery.Count))
                looked.One();
        });
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Each_limit_on_number_holds_for_every_traveller(int travellers)
    {
        var rules = Rules(devices: 3, spares: 7, large: 2, banks: 1);
        var groups = Groups(rules, Some("device", 16, 30) with { Installed = true }, Some("large", 150, 30),
            Some("bank", 80, 30) with { PowerBank = true }, Some("small", 50, 30));
        Assert.Equal([3 * travellers, 2 * travellers, travellers, 4 * travellers],
            FlightSelection.Choose(groups, rules, travellers));
    }

    // 120 Wh in one large power bank, or 110 + 10 in two batteries: the same watt-hours, so the two.
    [Fact]
    public void Of_two_choices_with_the_same_watt_hours_the_one_with_more_batteries_flies()
    {
        var rules = Rules(devices: 1, spares: 9, large: 1, banks: 1);
        var groups = Groups(rules, Some("large bank", 120, 1) with { PowerBank = true }, Some("large", 110, 1),
            Some("small bank", 10, 1) with { PowerBank = true });
        Assert.Equal([0, 1, 1], FlightSelection.Choose(groups, rules, 1));
    }

    [Theory]
    [InlineData(BaggageKind.LargeSpare, 1, 1, 0, 1, "large")]
    [InlineData(BaggageKind.LargeSpare, 2, 0, 0, 1, "large")]
    [InlineData(BaggageKind.LargeSpare, 1, 0, 0, 1, "all")]
    [InlineData(BaggageKind.LargeSpare, 2, 0, 0, 2, "all")]
    [InlineData(BaggageKind.LargeSpare, 3, 1, 0, 2, "large")]
    [InlineData(BaggageKind.LargePowerBank, 1, 1, 0, 1, "large")]
    [InlineData(BaggageKind.LargePowerBank, 0, 1, 1, 1, "banks")]
    [InlineData(BaggageKind.LargePowerBank, 0, 1, 1, 2, "all")]
    [InlineData(BaggageKind.SmallPowerBank, 0, 0, 2, 1, "banks")]
    [InlineData(BaggageKind.SmallPowerBank, 2, 0, 1, 1, "all")]
    [InlineData(BaggageKind.SmallPowerBank, 0, 1, 3, 2, "banks")]
    [InlineData(BaggageKind.SmallSpare, 2, 2, 2, 1, "all")]
    [InlineData(BaggageKind.Installed, 2, 2, 2, 1, "devices")]
    public void What_stays_is_told_the_limit_that_is_full(BaggageKind kind, int large, int largeBanks, int smallBanks,
        int travellers, string full)
    {
        var rules = RuleEditions.All[^1].Passengers;
        var limits = new Dictionary<string, object>
        {
            ["all"] = rules.Spares, ["large"] = rules.LargeSpares, ["banks"] = rules.PowerBanks!, ["devices"] = rules.Devices,
        };
        Assert.Equal(limits[full], FlightSelection.LimitOf(kind, flying => flying switch
        {
            BaggageKind.LargeSpare => large,
            BaggageKind.LargePowerBank => largeBanks,
            BaggageKind.SmallPowerBank => smallBanks,
            _ => 0,
        }, rules, travellers));
    }

    private static (double WattHours, int Count, int FewApprovals) Score(
        List<(PackedBattery Battery, FlightCheck Check)> groups, int[] counts) =>
        (Math.Round(Load(groups, counts), 6), counts.Sum(),
            -counts.Where((_, at) => groups[at].Battery.Rated.Energy.WattHours > 100).Sum());
}
