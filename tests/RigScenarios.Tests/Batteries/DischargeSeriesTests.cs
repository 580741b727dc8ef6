using RigScenarios.Batteries;
using UnitsNet;

namespace RigScenarios.Tests.Batteries;

/// <summary>What is kept of a run.</summary>
public class DischargeSeriesTests
{
    [Fact]
    public void Each_step_of_the_demand_has_two_points()
    {
        var result = Packs.Default.Run(20, Packs.Takes);

        var pairs = result.Series.Zip(result.Series.Skip(1))
            .Where(pair => pair.First.Time.Seconds == pair.Second.Time.Seconds).ToList();
        Assert.Equal(result.SegmentsFinished, pairs.Count(pair => pair.First.Voltage.Volts != pair.Second.Voltage.Volts));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(40)]
    [InlineData(300)]
    public void Bound_is_kept_with_the_ends_and_the_lowest_voltage_in_sight(int points)
    {
        var demand = new Demand([Packs.Watts(5, 3), Packs.Watts(5, 40)]);

        var full = Packs.Default.Run(20, demand, options: new DischargeOptions { SeriesPoints = 100_000 });
        var few = Packs.Default.Run(20, demand, options: new DischargeOptions { SeriesPoints = points });

        Assert.InRange(few.Series.Count, 2, points);
        Assert.Equal(full.Series[0], few.Series[0]);
        Assert.Equal(full.Series[^1], few.Series[^1]);
        Assert.Equal(full.EndTime, few.EndTime);
        if (points >= 40)
            Assert.Equal(full.Series.Min(point => point.Voltage.Volts), few.Series.Min(point => point.Voltage.Volts), 1e-12);
    }

    [Fact]
    public void No_points_are_kept_if_none_are_asked_for()
    {
        Assert.Empty(Packs.Default.Run(20, Packs.Takes, options: new DischargeOptions { SeriesPoints = 0 }).Series);
    }

    [Fact]
    public void Points_agree_with_the_demand()
    {
        Each.Of(
            Packs.Default.Run(20, Packs.Takes).Series,
            point =>
                Assert.Contains(Math.Round((double)point.Power.As(UnitsNet.Units.PowerUnit.Watt), 6), new[] { 22.0, 60, 5, 45 }));
    }
}
