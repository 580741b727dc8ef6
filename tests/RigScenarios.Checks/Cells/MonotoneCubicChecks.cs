using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Checks.Cells;

/// <summary>
/// The monotone cubic against published values. The curve is looked at through the open-circuit voltage, whose table runs from
/// 0 to 1 and lies above 0: abscissae are mapped to 0…1 and 1 is added to ordinates; neither changes the cubic.
/// </summary>
public class MonotoneCubicChecks
{
    // The data set RPN 14 of F. N. Fritsch and R. E. Carlson, "Monotone piecewise cubic interpolation", SIAM J. Numer. Anal. 17
    // (1980) 238-246, in the five digits of the example of NAG routine E01BEF, which is derived from Fritsch's PCHIM.
    private static readonly double[] X = [7.99, 8.09, 8.19, 8.70, 9.20, 10.00, 12.00, 15.00, 20.00];
    private static readonly double[] Y = [0, 0.27643e-4, 0.43750e-1, 0.16918, 0.46943, 0.94374, 0.99864, 0.99992, 0.99999];

    [Theory]
    [Source(SourceKind.ReferenceLibrary,
        "NAG C Library Manual, example results of e01bec; read in the test of SciPy that quotes them "
        + "(test_polyint.py, test_nag); second-hand")]
    [InlineData(7.9900, 0.0000)]
    [InlineData(9.1910, 0.4640)]
    [InlineData(10.3920, 0.9645)]
    [InlineData(11.5930, 0.9965)]
    [InlineData(12.7940, 0.9992)]
    [InlineData(13.9950, 0.9998)]
    [InlineData(15.1960, 0.9999)]
    [InlineData(16.3970, 1.0000)]
    [InlineData(20.0000, 1.0000)]
    public void Meets_the_published_values_of_the_slatec_slopes(double x, double expected)
    {
        Assert.Equal(expected, At(X, Y, x), 5e-5);
    }

    // The end slopes are not zero where the data don't say so; that of three points by hand:
    // h = 0.1, 0.15; secants 2206.5, 3333.33: ((2·0.1 + 0.15)·2206.5 - 0.1·3333.33)/0.25 = 1755.7667.
    [Fact]
    [Source(SourceKind.ReferenceLibrary, "SciPy, test_polyint.py, test_endslopes; read in the source")]
    public void End_slope_is_the_one_sided_three_point_formula()
    {
        double[] x = [0.0, 0.1, 0.25, 0.35];
        double[] y = [279.35, 500, 1000, 2500];

        const double step = 1e-7;
        Assert.Equal(1755.7667, (At(x, y, step) - 279.35) / step, 0.01);
    }

    // By hand, at the middle point of (0, 0), (1, 1), (3, 2): w1 = 2·2 + 1 = 5, w2 = 2 + 2·1 = 4, slope (5 + 4)/(5/1 + 4/0.5) =
    // 9/13. Half way in the second interval, Hermite: (1 + 2)/2 + 2·(9/13 - d)/8; end slope ((2·2 + 1)·0.5 - 2·1)/3 = 1/6.
    [Fact]
    [Source(SourceKind.ClosedForm,
        "F. N. Fritsch and J. Butland, weighted harmonic mean of the secants, 1984; worked by hand, formula from memory")]
    public void Inner_slope_is_the_weighted_harmonic_mean()
    {
        Assert.Equal(1.5 + (2 * ((9.0 / 13) - (1.0 / 6)) / 8), At([0, 1, 3], [0, 1, 2], 2), 1e-12);
    }

    [Fact]
    [Source(SourceKind.ClosedForm, "F. N. Fritsch and R. E. Carlson, 1980: no slope at a turning point; from memory")]
    public void Is_flat_at_a_turning_point_and_where_the_table_is()
    {
        double[] x = [0, 1, 2, 3, 4];
        double[] y = [0, 2, 2, 1, 3];

        Assert.Equal(2, At(x, y, 1.5), 1e-14);
        Assert.Equal(1, At(x, y, 3), 1e-14);
        Assert.True(At(x, y, 2.999) > 1 && At(x, y, 3.001) > 1);
    }

    private static double At(double[] x, double[] y, double where)
    {
        var width = x[^1] - x[0];
        var curve = OpenCircuitVoltage.FromTable([.. x.Select(one => one == x[^1] ? 1 : (one - x[0]) / width)],
            [.. y.Select(one => one + 1)]);
        return curve.At(Ratio.FromDecimalFractions(Math.Min(1, (where - x[0]) / width))).Volts - 1;
    }
}
