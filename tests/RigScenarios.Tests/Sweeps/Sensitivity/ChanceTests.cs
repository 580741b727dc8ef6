using RigScenarios.Sweeps.Sensitivity;
using UnitsNet;

namespace RigScenarios.Tests.Sweeps.Sensitivity;

public class ChanceTests
{
    [Fact]
    public void A_share_has_its_standard_error()
    {
        var chance = new Chance(90, 10);

        Assert.Equal(90, chance.Share!.Value.Percent, 1e-9);
        Assert.Equal(3, chance.StandardError!.Value.Percent, 1e-9);
    }

    [Fact]
    public void Runs_in_which_nobody_can_say_count_neither_way()
    {
        var chance = Chance.Reaching([1, 2, 3, double.NaN, -1], 2);

        Assert.Equal(new Chance(2, 2, 1), chance);
        Assert.Equal(50, chance.Share!.Value.Percent, 1e-9);
        Assert.Equal(4, chance.Known);
    }

    [Fact]
    public void What_no_run_knows_has_no_share()
    {
        var chance = new Chance(0, 0, 12);

        Assert.Null(chance.Share);
        Assert.Null(chance.StandardError);
        Assert.Null(chance.Interval());
    }

    [Fact]
    public void Runs_that_all_agree_leave_an_interval()
    {
        var interval = new Chance(100, 0).Interval()!.Value;

        Assert.Equal(1, interval.High.DecimalFractions);
        Assert.InRange(interval.Low.DecimalFractions, 0.95, 0.97);
        Assert.Equal(0, new Chance(100, 0).StandardError!.Value.DecimalFractions);
    }

    [Fact]
    public void A_level_outside_of_0_to_100_percent_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Chance(1, 1).Interval(Ratio.FromPercent(100)));
}
