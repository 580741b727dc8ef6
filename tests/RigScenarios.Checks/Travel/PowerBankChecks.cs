using RigScenarios.Answers;
using RigScenarios.Travel;

namespace RigScenarios.Checks.Travel;

/// <summary>
/// Power banks. International Civil Aviation Organization, Technical Instructions (Doc 9284) 2025-2026, Addendum 1, in force from
/// 27 March 2026, as the UK Civil Aviation
/// Authority's page on changes to the carriage of lithium batteries and power banks and dgonline.training print it (both read):
/// at most two a person, in the cabin, protected against
/// short circuit, not recharged on board; counted apart from spare batteries. Before: a spare battery (49 CFR 175.10(a)(18)(iv),
/// 2018, p. 832, read).
/// </summary>
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
    public void They_are_counted_apart_from_spare_batteries_after_the_addendum_and_among_them_before()
    {
        Assert.Empty(Batteries.Fly(Batteries.Addendum, 1, Batteries.Spare(98, 20), Banks(2)).Left);
        Assert.Equal(2, Batteries.Fly(Batteries.BeforeAddendum, 1, Batteries.Spare(98, 20),
            Banks(2)).Left.Sum(left => left.Count));
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

    // From memory: the watt-hour limits of spare batteries hold for power banks too; carriers print 100 Wh and 160 Wh for them.
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
