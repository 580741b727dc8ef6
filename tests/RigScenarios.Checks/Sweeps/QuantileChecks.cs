using RigScenarios.Sweeps.Sensitivity;

namespace RigScenarios.Checks.Sweeps;

/// <summary>Quantiles of small samples against another library's.</summary>
public class QuantileChecks
{
    private static readonly double[] Eleven = [3.1, 4.7, 1.2, 9.9, 5.5, 2.6, 6.4, 3.3, 8.8, 7.0, 0.4];

    [Fact]
    [Source(SourceKind.ReferenceLibrary, "statistics.quantiles of Python 3.11.7, method \"inclusive\", of the same sample; run: "
        + "tenths of eleven numbers 1.2, 2.6, 3.1, 3.3, 4.7, 5.5, 6.4, 7.0, 8.8; eighths of the first ten 2.6625, 3.15, 3.825, "
        + "5.1, 6.0625, 6.85, 8.575")]
    public void Tenths_and_eighths()
    {
        Same([1.2, 2.6, 3.1, 3.3, 4.7, 5.5, 6.4, 7.0, 8.8], Eleven, 10);
        Same([2.6625, 3.15, 3.825, 5.1, 6.0625, 6.85, 8.575], [.. Eleven.Take(10)], 8);
    }

    private static void Same(double[] expected, double[] sample, int parts)
    {
        var found = BandAt.Of("", sample, [.. Enumerable.Range(1, parts - 1).Select(part => (double)part / parts)]);
        Assert.Equal((sample.Length, 0), (found.Known, found.Unknown));
        Each.Pair(expected, found.Values, (one, other) => Assert.Equal(one, other, 1e-12), parts - 1);
    }
}
