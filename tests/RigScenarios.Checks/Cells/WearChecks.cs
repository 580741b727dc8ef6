using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Checks.Cells;

/// <summary>The rule that stands in for a growth of the resistance that is not given, against lives by a published fit.</summary>
[Source(SourceKind.Paper, "J. Schmalstieg et al., A holistic aging model for Li(NiMnCo)O2 based 18650 lithium-ion batteries, "
    + "J. Power Sources 257 (2014) 325-334; equations as read in public implementations, second-hand")]
public class WearChecks
{
    private const int Lives = 4000;

    // What the equations give, worked out by another program: storage at 4.16 V, 40 °C for 365 days; full cycles at
    // 3.70 V, 300 times.
    [Fact]
    public void The_equations_are_those_of_the_paper()
    {
        var stored = new Life(4.16, 40, 0, 0);
        Assert.Equal((0.865271, 1.233575), (Math.Round(stored.Capacity(365), 6), Math.Round(stored.Resistance(365), 6)));
        // One full cycle a day for 300 days, and a cold so deep that standing does nothing.
        var cycled = new Life(3.70, -270, 4.10, 1);
        Assert.Equal((0.829939, 1.325611), (Math.Round(cycled.Capacity(300), 6), Math.Round(cycled.Resistance(300), 6)));
    }

    // Lives of a camera battery: 5 to 35 °C, charge 0.3 to 1 (3.63 to 4.16 V of the paper's cell), 0.5 to 15 shoots a month,
    // depth 0.2 to 1, up to 20 years.
    [Theory]
    [InlineData(0.80, 0.04)] // the middle is 1.35 to 1.37, by how the lives are drawn
    [InlineData(0.90, 0.07)] // the line lies above the fits before
    [InlineData(0.95, 0.07)]
    public void The_rule_is_the_middle_of_many_lives(double capacityLeft, double tolerance)
    {
        var random = new Random(20140);
        var growths = new List<double>();
        for (var i = 0; i < Lives; i++)
        {
            var volts = 3.627 + (0.535 * random.NextDouble());
            var depth = 0.2 + (0.8 * random.NextDouble());
            var shoots = (0.5 + (14.5 * random.NextDouble())) / 30.4375;
            var life = new Life(volts, 5 + (30 * random.NextDouble()), 4.10 * depth * shoots, depth);
            if (life.DayOf(capacityLeft) is { } day)
                growths.Add(life.Resistance(day));
        }
        Assert.True(growths.Count > Lives / 2, $"{growths.Count} lives come so far");
        growths.Sort();
        var rule = Wear.ResistanceFactor(
            Ratio.FromDecimalFractions(capacityLeft), CellChemistries.Nmc.GrowthPerLoss.Value);
        Assert.Equal(growths[growths.Count / 2], rule, tolerance);
    }

    /// <summary>Storage voltage in V, temperature in °C, charge through a cell of 2.05 Ah in Ah a day, depth of cycles
    /// 0…1.</summary>
    private sealed class Life(double volts, double celsius, double ampereHoursADay, double depth)
    {
        private const double LongestDays = 20 * 365.25;

        public double Capacity(double days) =>
            1 - (((7.543 * volts) - 23.75) * 1e6 * Math.Exp(-6976 / (celsius + 273.15)) * Math.Pow(days, 0.75))
            - (((7.348e-3 * Math.Pow(Mean - 3.667, 2)) + 7.600e-4 + (4.081e-3 * depth)) * Math.Sqrt(ampereHoursADay * days));

        public double Resistance(double days) =>
            1 + (((5.270 * volts) - 16.32) * 1e5 * Math.Exp(-5986 / (celsius + 273.15)) * Math.Pow(days, 0.75))
            + (Math.Max(1.5e-5, (2.153e-4 * Math.Pow(Mean - 3.725, 2)) - 1.521e-5 + (2.798e-4 * depth)) * ampereHoursADay * days);

        public double? DayOf(double capacity)
        {
            if (Capacity(LongestDays) > capacity)
                return null;
            var (low, high) = (0.0, LongestDays);
            for (var i = 0; i < 60; i++)
            {
                var middle = (low + high) / 2;
                (low, high) = Capacity(middle) > capacity ? (middle, high) : (low, middle);
            }
            return low;
        }

        // The mean over a cycle: the cell's own half-charge voltage, near which its curve is flat.
        private static double Mean => 3.70;
    }
}
