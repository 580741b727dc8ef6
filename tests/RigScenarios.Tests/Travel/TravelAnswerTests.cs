using RigScenarios.Travel;
using UnitsNet;
using static RigScenarios.Tests.Travel.TravelCases;

namespace RigScenarios.Tests.Travel;

public sealed class TravelAnswerTests
{
    [Theory]
    [InlineData(98, 20, 20, true)]
    [InlineData(190, 20, 20, false)]
    [InlineData(98, 60, 20, false)]
    [InlineData(98, 20, 60, false)]
    [InlineData(190, 60, 60, false)]
    public void Everything_goes_only_where_nothing_stays_and_nothing_of_the_cargo_is_stopped(double wattHours, double percent,
        double other, bool goes)
    {
        var journey = Flight(1, [Some("one", wattHours, 1) with { Charge = Ratio.FromPercent(percent) },
            Some("other", 98, 1) with { Charge = Ratio.FromPercent(other) }]) with { Legs = [Leg.Flight, Leg.Cargo] };
        Assert.Equal(goes, TravelPlan.For(journey, TestContext.Current.CancellationToken).EverythingGoes);
    }

    [Fact]
    public void Where_nobody_flies_the_share_is_proven_and_everything_goes()
    {
        var answer = TravelPlan.For(Flight(1, [Some("b", 190, 1)]) with { Legs = [Leg.Road] },
            TestContext.Current.CancellationToken);
        Assert.Empty(answer.Lists);
        Assert.Equal((true, true), (answer.ShareProven, answer.EverythingGoes));
    }

    [Theory]
    [InlineData(1, "1 over the number: 2 a person, 2 for one traveller")]
    [InlineData(3, "1 over the number: 2 a person, 6 for 3 travellers")]
    public void What_is_over_a_number_says_how_many_places_there_are(int travellers, string words)
    {
        var left = Assert.Single(TravelPlan.For(Flight(travellers, [Some("b", 150, (2 * travellers) + 1)]),
            TestContext.Current.CancellationToken).Left);
        Assert.Equal((words, "Another traveller, by road, or as air cargo."), (left.Margin, left.Remedy));
        Assert.NotNull(left.AsCargo);
    }

    [Theory]
    [InlineData(98, 21, false)]
    [InlineData(16, 16, true)]
    public void An_airline_may_agree_to_more_spare_batteries_and_devices(double wattHours, int count, bool installed) =>
        Assert.StartsWith("Ask the airline whether it agrees to more", Assert.Single(TravelPlan.For(
            Flight(1, [Some("b", wattHours, count) with { Installed = installed }]),
            TestContext.Current.CancellationToken).Left).Remedy, StringComparison.Ordinal);

    [Fact]
    public void A_battery_too_large_to_fly_has_its_excess_and_its_cargo_and_one_with_open_contacts_has_neither()
    {
        var answer = TravelPlan.For(Flight(1, [Some("large", 190, 1), Some("open", 98, 1) with { ContactsCovered = false },
            Some("line", 160, 1) with { ContactsCovered = false }]), TestContext.Current.CancellationToken);
        Assert.Equal([("large", "30 Wh over 160 Wh", true), ("open", "contacts open", false), ("line", "contacts open", false)],
            answer.Left.Select(left => (left.Battery.Name, left.Margin, left.AsCargo is not null)));
    }

    [Fact]
    public void A_list_has_the_largest_first_and_the_numbers_that_it_touches()
    {
        var all = Assert.Single(TravelPlan.For(Flight(1, [Some("device", 16, 3) with { Installed = true }, Some("large", 150, 1),
            Some("bank", 74, 1) with { PowerBank = true }, Some("small", 98, 4)]), TestContext.Current.CancellationToken).Lists);
        Assert.Equal(["large", "small", "bank", "device"], all.Lines.Select(line => line.Battery.Name));
        Assert.Equal([("spare batteries of any kind", 6, 14), ("spare batteries above 100 Wh", 1, 1), ("power banks", 1, 1),
            ("devices with a battery", 3, 12)], all.Numbers.Select(number => (number.What, number.Used, number.Left)));
        var few = Assert.Single(TravelPlan.For(Flight(1, [Some("small", 98, 4)]), TestContext.Current.CancellationToken).Lists);
        Assert.Equal(["spare batteries of any kind"], few.Numbers.Select(number => number.What));
    }

    [Fact]
    public void One_group_of_none_among_others_is_refused() => Assert.Throws<ArgumentException>(() =>
        TravelPlan.For(Flight(1, [Some("b", 98, 1), Some("none", 98, 0)]), TestContext.Current.CancellationToken));

    [Fact]
    public void A_day_before_the_first_edition_is_told_the_oldest_and_one_after_the_last_the_newest()
    {
        var (before, after) = (RuleEditions.On(new(2023, 12, 31)), RuleEditions.On(new(2027, 1, 1)));
        Assert.Equal((RuleEditions.All[0], RuleEditions.All[^1]), (before.Rules, after.Rules));
        Assert.StartsWith("NO RULES ARE HELD FOR 31 DECEMBER 2023. The oldest edition here begins on 1 January 2024.",
            before.Warning, StringComparison.Ordinal);
        Assert.StartsWith("NO RULES ARE HELD FOR 1 JANUARY 2027. The newest edition here ends on 31 December 2026.",
            after.Warning, StringComparison.Ordinal);
    }

    [Fact]
    public void Travellers_are_the_same_where_their_names_in_order_and_their_being_real_are()
    {
        Travellers One(bool named, params string[] names) => new([.. names], named);
        Assert.Equal(One(true, "A", "B"), One(true, "A", "B"));
        Assert.Equal(One(true, "A", "B").GetHashCode(), One(true, "A", "B").GetHashCode());
        Each.Of((Travellers?[])[One(false, "A", "B"), One(true, "B", "A"), One(true, "A"), One(true, "A", "b"), null],
            other => Assert.False(One(true, "A", "B").Equals(other)), atLeast: 5);
    }

    [Fact]
    public void Travellers_without_names_are_numbered_where_there_are_several()
    {
        Assert.Equal(["Traveller"], Travellers.Of(1).Names);
        Assert.Equal(["Traveller 1", "Traveller 2", "Traveller 3"], Travellers.Of(3).Names);
        Assert.False(Travellers.Of(1).Named || Travellers.Of(3).Named);
    }
}
