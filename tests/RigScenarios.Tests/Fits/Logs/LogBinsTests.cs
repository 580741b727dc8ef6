using RigScenarios.Fits.Logs;
using UnitsNet;

namespace RigScenarios.Tests.Fits.Logs;

public class LogBinsTests
{
    private static readonly ElectricCharge TenAmpereHours = ElectricCharge.FromAmpereHours(10);

    [Fact]
    public void A_bin_has_the_time_means_of_its_rows()
    {
        // Tc = 0.03·10 Ah/(mean A): some 600 s, so that bins have 10 s.
        var rows = LogRows.Of([0, 4, 12, 20, 24, 30], [16, 15, 14, 13, 12, 11], [1, 2, 3, 1, 2, 3]);

        var bins = LogBins.Of(rows, TenAmpereHours);

        Assert.Equal(10, bins.WidthSeconds);
        Assert.Equal(3, bins.Count);
        Close([1.6, 2.8, 1.6], bins.Amperes);
        Close([15.4, 14.2, 12.4], bins.Volts);
    }

    [Fact]
    public void Between_samples_current_and_voltage_are_straight_lines()
    {
        var rows = LogRows.Of([0, 20, 40], [16, 14, 14], [0, 2, 4], samples: true);

        var bins = LogBins.Of(rows, TenAmpereHours);

        Assert.Equal(20, bins.WidthSeconds);
        Close([1, 3], bins.Amperes);
        Close([15, 14], bins.Volts);
    }

    [Fact]
    public void A_gap_drives_the_model_with_the_mean_of_both_sides_and_is_not_compared()
    {
        double[] seconds = [0, 10, 20, 30, 145, 155, 165];
        var rows = LogRows.Of(seconds, [16, 16, 16, 16, 15, 15, 15], [1, 1, 1, 1, 3, 3, 3]);

        var bins = LogBins.Of(rows, TenAmpereHours);

        Assert.Equal(1, rows.Gaps);
        Assert.Equal(16, bins.Count);
        Assert.Equal([.. Enumerable.Range(0, 16).Select(bin => bin is < 3 or >= 15)], bins.Usable.ToArray());
        Close([1, 1, 1, .. Enumerable.Repeat(2.0, 11), 2.5, 3], bins.Amperes);
    }

    [Theory]
    [InlineData(100)]
    [InlineData(1000)]
    [InlineData(100_000)]
    public void A_whole_discharge_has_seventeen_blocks_however_often_it_was_measured(int count)
    {
        var bins = LogBins.Of(Steady(count, 3600, 10), TenAmpereHours);

        // 1 / (2·0.03) and the last, incomplete one.
        Assert.Equal(17, bins.Blocks.Count);
        Assert.Equal(108, bins.CorrelationSeconds, 1e-9);
    }

    [Fact]
    public void Charge_and_time_are_kept_by_binning()
    {
        Drawn.Cases(1, 200, random =>
        {
            var seconds = new double[random.Next(50, 400)];
            var amperes = new double[seconds.Length];
            for (var row = 0; row < seconds.Length; row++)
            {
                seconds[row] = row == 0 ? 0 : seconds[row - 1] + 0.5 + (9 * random.NextDouble());
                amperes[row] = 5 * random.NextDouble();
            }
            var rows = LogRows.Of(seconds, [.. amperes.Select(current => 16 - current)], amperes, random.Next(2) == 0);
            var bins = LogBins.Of(rows, TenAmpereHours);
            var (binned, volts) = (Mean(bins.Amperes), Mean(bins.Volts));

            Assert.Equal(16 - binned, volts, 1e-9);
            var end = bins.Count * bins.WidthSeconds;
            Assert.Equal(Charge(rows, end), binned * end, 1e-6);
        });
    }

    [Fact]
    public void A_log_of_years_is_refused()
    {
        var error = Assert.Throws<ArgumentException>(() =>
            LogBins.Of(LogRows.Of([0, 1, 2, 1e9], [16, 16, 16, 15], [1, 1, 1, 1]), TenAmpereHours));

        Assert.Contains("days", error.Message);
    }

    [Fact]
    public void A_log_without_a_current_is_refused() =>
        Assert.Throws<ArgumentException>(() => LogBins.Of(LogRows.Of([0, 60], [16, 16], [0, 0]), TenAmpereHours));

    private static LogRows Steady(int count, double length, double amperes)
    {
        var seconds = Enumerable.Range(0, count + 1).Select(row => row * length / count).ToArray();
        return LogRows.Of(seconds, [.. seconds.Select(time => 16 - (time / length))], [.. seconds.Select(_ => amperes)]);
    }

    /// <summary>Charge up to a time, by the rows themselves.</summary>
    private static double Charge(LogRows rows, double until)
    {
        var sum = 0.0;
        for (var row = 1; row < rows.Count && rows.Seconds[row - 1] < until; row++)
        {
            var (from, to) = (rows.Seconds[row - 1], Math.Min(rows.Seconds[row], until));
            var (before, after) = (rows.Amperes[row - 1], rows.Amperes[row]);
            var slope = rows.Samples ? (after - before) / (rows.Seconds[row] - from) : 0;
            sum += (to - from) * (before + (slope * (to - from) / 2));
        }
        return sum;
    }

    private static double Mean(ReadOnlySpan<double> values)
    {
        var sum = 0.0;
        foreach (var value in values)
            sum += value;
        return sum / values.Length;
    }

    private static void Close(double[] expected, ReadOnlySpan<double> actual) =>
        Each.Pair(expected, actual.ToArray(), (one, other) => Assert.Equal(one, other, 1e-9));
}
