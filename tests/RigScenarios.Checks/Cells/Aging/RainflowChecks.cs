using RigScenarios.Cells.Aging;
using UnitsNet;

namespace RigScenarios.Checks.Cells.Aging;

/// <summary>Rainflow counting against the worked example of its standard: a day whose charge goes up and down like it.</summary>
[Source(SourceKind.Standard, "ASTM E1049-85 (2011), Standard Practices for Cycle Counting in Fatigue Analysis, "
    + "example of figure 6; history and counts as two public pages quote them, second-hand")]
public class RainflowChecks
{
    private static readonly double[] History = [-2, 1, -3, 5, -1, 3, -4, 4, -2];

    [Fact]
    public void The_example_has_the_counts_of_the_standard() => Assert.Equal(
        [(3, 0.5), (4, 1.5), (6, 0.5), (8, 1), (9, 0.5)],
        Count(History).GroupBy(one => one.Range).OrderBy(group => group.Key)
            .Select(group => (group.Key, group.Sum(one => one.Count))));

    // The one whole cycle of the example lies between -1 and 3.
    [Fact]
    public void The_example_has_one_whole_cycle() =>
        Assert.Equal((4, 1), Count(History).Where(one => one.Count == 1).Select(one => (one.Range, one.Mean)).Single());

    [Fact]
    [Guard]
    public void Points_on_the_way_and_level_ones_change_nothing() => Assert.Equal(
        Count(History), Count([-2, -1, 1, 1, -3, 0, 2, 5, 5, -1, 3, -4, 4, 0, -2]));

    // The example's -5 to 5 as a charge of 0 to 1.
    private static IReadOnlyList<(double Range, double Mean, double Count)> Count(double[] history)
    {
        static Ratio Charge(double value) => Ratio.FromDecimalFractions((value + 5) / 10);
        var course = history.Zip(history.Skip(1), (from, to) => new CourseStretch(
            Duration.FromHours(1), Charge(from), Charge(to), Temperature.FromDegreesCelsius(20)));
        return [.. AgedDay.Of([.. course]).Cycles.Select(one => (Math.Round(10 * one.Depth.DecimalFractions, 9),
            Math.Round((10 * one.MeanCharge.DecimalFractions) - 5, 9), one.Count))];
    }
}
