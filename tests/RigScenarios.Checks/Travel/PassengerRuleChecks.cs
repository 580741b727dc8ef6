using RigScenarios.Answers;
using RigScenarios.Travel;

namespace RigScenarios.Checks.Travel;

/// <summary>The passenger rules, case by case. The source stands above each case.</summary>
public class PassengerRuleChecks
{
    // Federal Aviation Administration, "Airline passengers and batteries" (read): up to 100 Wh without approval; 101 to 160 Wh
    // with the airline's approval; over 160 Wh forbidden.
    // The same limits hold for installed batteries (same page).
    [Theory]
    [InlineData(99, false, false, 1)]
    [InlineData(100, false, false, 0)]
    [InlineData(100.08, true, false, 59.92)]
    [InlineData(101, true, false, 59)]
    [InlineData(160, true, false, 0)]
    [InlineData(160.5, false, true, -0.5)]
    [InlineData(161, false, true, -1)]
    public void The_lines_at_100_and_160_watt_hours(double wattHours, bool approval, bool stopped, double margin)
    {
        foreach (var edition in RuleEditions.All)
        {
            foreach (var installed in (bool[])[false, true])
            {
                var check = FlightCheck.Of(Batteries.Spare(wattHours) with { Installed = installed }, edition.Passengers);
                Assert.Equal((approval, stopped), (check.NeedsApproval, check.StoppedBy is not null));
                Assert.Equal(margin, check.Margin.WattHours, 1e-9);
            }
        }
    }

    // Same page, and its copy of 2 January 2017 (read): up to two spare batteries of 101 to 160 Wh a person.
    [Theory]
    [InlineData(1, 2, 2)]
    [InlineData(1, 3, 2)]
    [InlineData(2, 3, 3)]
    [InlineData(2, 5, 4)]
    public void Two_large_spares_a_person(int travellers, int packed, int fly)
    {
        var answer = Batteries.Fly(Batteries.Addendum, travellers, Batteries.Spare(150, packed));
        Assert.Equal(fly, answer.Lists.Sum(list => list.Lines.Sum(line => line.Count)));
        Assert.Equal(packed - fly, answer.Left.Sum(left => left.Count));
        Assert.Equal(fly, answer.Approvals.Sum(item => item.Line.Count));
        Assert.All(answer.Lists, list => Assert.InRange(list.Lines.Sum(line => line.Count), 1, 2));
    }

    // International Air Transport Association, Dangerous Goods Regulations 2.3 (second-hand: two pages that quote it; news report
    // of 12 March 2026): up to 20 spare batteries a person.
    [Theory]
    [InlineData(20, 0)]
    [InlineData(21, 1)]
    public void Twenty_small_spares_a_person(int packed, int stay)
    {
        var answer = Batteries.Fly(Batteries.January2026, 1, Batteries.Spare(98, packed));
        Assert.Equal(stay, answer.Left.Sum(left => left.Count));
        Assert.All(answer.Left, left => Assert.Contains("Ask the airline", left.Remedy, StringComparison.Ordinal));
    }

    // "Lithium Batteries 2024" (handbook), p. 35 (read): up to 15 devices a person.
    [Theory]
    [InlineData(15, 0)]
    [InlineData(16, 1)]
    public void Fifteen_devices_a_person(int packed, int stay) =>
        Assert.Equal(stay, Batteries.Fly(Batteries.January2026, 1,
            Batteries.Spare(16, packed) with { Installed = true }).Left.Sum(left => left.Count));

    // 49 CFR 175.10(a), edition of 1 October 2018, p. 832 (read): each spare battery protected against short circuit by
    // packaging, tape, or a bag or pouch of its own.
    [Fact]
    public void A_spare_battery_with_bare_contacts_stays_and_one_in_its_device_does_not()
    {
        var spare = Batteries.Fly(Batteries.Addendum, 1, Batteries.Spare(98) with { ContactsCovered = false });
        Assert.Equal("contacts open", Assert.Single(spare.Left).Margin);
        Assert.Empty(spare.Lists);
        Assert.Empty(Batteries.Fly(Batteries.Addendum, 1,
            Batteries.Spare(98) with { ContactsCovered = false, Installed = true }).Left);
    }

    // Federal Aviation Administration, pages on spare batteries (read): spare ones in the cabin only.
    [Fact]
    public void Spare_batteries_go_in_the_cabin_bag() =>
        Assert.StartsWith("cabin bag",
            TravelWords.Place(Batteries.Fly(Batteries.Addendum, 1, Batteries.Spare(98)).Lists[0].Lines[0]),
            StringComparison.Ordinal);
}
