using RigScenarios.Answers;
using RigScenarios.Travel;

namespace RigScenarios.Checks.Travel;

/// <summary>
/// Power banks. International Civil Aviation Organization, Technical Instructions (Doc 9284) 2025-2026, Addendum 1, in force from
/// 27 March 2026, as the UK Civil Aviation
/// Authority's page on changes to the carriage of lithium batteries and power banks and dgonline.training print it (both read):
/// at most two a person, in the cabin, protected against
/// short circuit, not recharged on board. Whether they count among the 20 spare batteries the texts leave open; one authority's
/// page counts them so, and the stricter reading is held. Before: a spare battery (49 CFR 175.10(a)(18)(iv), 2018, p. 832,
/// read).
/// </summary>
[Source(SourceKind.Regulation, "International Civil Aviation Organization, Technical Instructions (Doc 9284) 2025-2026, "
    + "Addendum 1, from 27 March 2026; second-hand, read on the UK Civil Aviation Authority's page and at dgonline.training")]
public class PowerBankChecks
{
    private static PackedBattery Banks(int count, double wattHours = 74) =>
        Batteries.Spare(wattHours, count) with { PowerBank = true };

    [Fact]
    public void Three_small_ones_fly_on_26_March_2026_and_two_on_27_March()
    {
        Assert.Empty(Batteries.Fly(Batteries.BeforeAddendum, 1, Banks(3)).Left);
        var after = Batteries.Fly(Batteries.Addendum, 1, Banks(3));
        Assert.Equal(1, Assert.Single(after.Left).Count);
        Assert.StartsWith("1 over the number: 2 a person", after.Left[0].Margin, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_power_banks_need_two_of_the_twenty_places_before_and_after_the_addendum()
    {
        foreach (var date in (DateOnly[])[Batteries.BeforeAddendum, Batteries.Addendum])
        {
            Assert.Equal(2, Batteries.Fly(date, 1, Batteries.Spare(98, 20), Banks(2)).Left.Sum(left => left.Count));
            Assert.Empty(Batteries.Fly(date, 1, Batteries.Spare(98, 18), Banks(2)).Left);
        }
    }

    [Fact]
    public void One_with_bare_contacts_stays() =>
        Assert.Single(Batteries.Fly(Batteries.Addendum, 1, Banks(1) with { ContactsCovered = false }).Left);

    [Fact]
    public void Not_charging_on_board_is_said_from_the_addendum_on()
    {
        static bool Said(DateOnly date) => TravelWords.Cautions(Batteries.Fly(date, 1, Banks(1)))
            .Any(caution => caution.Contains("not charged on board", StringComparison.Ordinal));
        Assert.True(Said(Batteries.Addendum));
        Assert.False(Said(Batteries.BeforeAddendum));
    }

    // The watt-hour limits of spare batteries hold for power banks too: the airlines of one European group ask for approval above
    // 100 Wh and take none above 160 Wh.
    [Source(SourceKind.TradePractice, "Rules of one European airline group from 15 January 2026; second-hand, read in news "
        + "reports (the-independent.com, 20 January 2026; aerotelegraph.com)")]
    [Theory]
    [InlineData(100, false, false)]
    [InlineData(101, true, false)]
    [InlineData(161, false, true)]
    public void Watt_hours(double wattHours, bool approval, bool stopped)
    {
        var check = FlightCheck.Of(Banks(1, wattHours), Batteries.Rules2026.Passengers);
        Assert.Equal((approval, stopped), (check.NeedsApproval, check.StoppedBy is not null));
    }
}
