using System.Runtime.InteropServices;

namespace RigScenarios.Numerics;

/// <summary>
/// Monotone piecewise cubic Hermite interpolation (PCHIP): no overshoot between the points of a table.
/// </summary>
/// <remarks>
/// Slopes: inside, the weighted harmonic mean of the two secants, zero where they differ in sign; at the ends, the one-sided
/// three-point
/// formula, limited to keep the shape. They are those of SciPy's PchipInterpolator, of MATLAB's pchip and of SLATEC's PCHIM, not
/// those of the two-pass projection in F. N. Fritsch and R. E. Carlson, "Monotone piecewise cubic interpolation",
/// SIAM J. Numer. Anal. 17 (1980) 238-246. Harmonic mean: F. N. Fritsch and J. Butland, "A method for constructing local monotone
/// piecewise cubic interpolants", SIAM J. Sci. Stat. Comput. 5 (1984) 300-304.
/// Plain doubles: this is a numeric kernel; an open-circuit voltage is the door with units.
/// </remarks>
internal sealed class MonotoneCubic
{
    private readonly double[] knots;
    private readonly Piece[] pieces;
    private readonly double[] jumps;

    /// <param name="x">At least two rising abscissae.</param>
    /// <param name="y">As many ordinates.</param>
    public MonotoneCubic(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        if (x.Length < 2 || x.Length != y.Length)
            throw new ArgumentException($"A table needs two points or more and as many values; found {x.Length} and {y.Length}.",
                nameof(x));
        knots = x.ToArray();
        for (var i = 1; i < knots.Length; i++)
        {
            if (!(knots[i] > knots[i - 1]))
                throw new ArgumentException($"The points must rise; found {knots[i]:G9} after {knots[i - 1]:G9}.", nameof(x));
        }

        var slopes = Slopes(knots, y);
        pieces = new Piece[knots.Length - 1];
        for (var i = 0; i < pieces.Length; i++)
            pieces[i] = Piece.Hermite(knots[i], knots[i + 1], y[i], y[i + 1], slopes[i], slopes[i + 1]);
        jumps = new double[pieces.Length];
        for (var i = 1; i < pieces.Length; i++)
        {
            var (below, above) = (pieces[i - 1], pieces[i]);
            jumps[i] = Math.Cbrt(Math.Abs((2 * above.C2) - (2 * below.C2) - (6 * below.C3 * (below.End - below.Start))));
        }
    }

    /// <summary>The cubics, one for each interval of the table.</summary>
    public ReadOnlySpan<Piece> Pieces => pieces;

    /// <summary>The cube root of the jump of the second derivative where each piece starts, without its sign; 0 for the
    /// first.</summary>
    public ReadOnlySpan<double> CurvatureJumpRoots => jumps;

    /// <summary>The interval that holds x; outside the table, the one at its end.</summary>
    public int IndexOf(double x)
    {
        int low = 0, high = knots.Length - 1;
        while (high - low > 1)
        {
            var middle = (low + high) >> 1;
            if (x >= knots[middle])
                low = middle;
            else
                high = middle;
        }

        return low;
    }

    /// <summary>The interpolant; outside the table, the end piece goes on.</summary>
    public double At(double x) => pieces[IndexOf(x)].At(x);

    /// <summary>The first derivative of the interpolant.</summary>
    public double SlopeAt(double x) => pieces[IndexOf(x)].SlopeAt(x);

    private static double[] Slopes(double[] x, ReadOnlySpan<double> y)
    {
        var n = x.Length;
        var width = new double[n - 1];
        var secant = new double[n - 1];
        for (var i = 0; i < n - 1; i++)
        {
            width[i] = x[i + 1] - x[i];
            secant[i] = (y[i + 1] - y[i]) / width[i];
        }

        var slopes = new double[n];
        if (n == 2)
        {
            slopes[0] = slopes[1] = secant[0];
            return slopes;
        }

        for (var i = 1; i < n - 1; i++)
        {
            if (secant[i - 1] * secant[i] <= 0)
                continue;
            var w1 = (2 * width[i]) + width[i - 1];
            var w2 = width[i] + (2 * width[i - 1]);
            slopes[i] = (w1 + w2) / ((w1 / secant[i - 1]) + (w2 / secant[i]));
        }

        slopes[0] = EndSlope(width[0], width[1], secant[0], secant[1]);
        slopes[n - 1] = EndSlope(width[n - 2], width[n - 3], secant[n - 2], secant[n - 3]);
        return slopes;
    }

    private static double EndSlope(double width, double nextWidth, double secant, double nextSecant)
    {
        var slope = ((((2 * width) + nextWidth) * secant) - (width * nextSecant)) / (width + nextWidth);
        if (Math.Sign(slope) != Math.Sign(secant))
            return 0;
        return Math.Sign(secant) != Math.Sign(nextSecant) && Math.Abs(slope) > 3 * Math.Abs(secant) ? 3 * secant : slope;
    }

    /// <summary>One cubic, c0 + c1·s + c2·s² + c3·s³ with s = x - Start.</summary>
    [StructLayout(LayoutKind.Auto)]
    public readonly record struct Piece(double Start, double End, double C0, double C1, double C2, double C3)
    {
        /// <summary>The cubic with the given end values and end slopes.</summary>
        public static Piece Hermite(double start, double end, double y0, double y1, double slope0, double slope1)
        {
            var width = end - start;
            var secant = (y1 - y0) / width;
            return new Piece(start, end, y0, slope0, ((3 * secant) - (2 * slope0) - slope1) / width,
                (slope0 + slope1 - (2 * secant)) / (width * width));
        }

        /// <summary>The value, also outside the piece.</summary>
        public double At(double x)
        {
            var s = x - Start;
            return C0 + (s * (C1 + (s * (C2 + (s * C3)))));
        }

        /// <summary>The first derivative.</summary>
        public double SlopeAt(double x)
        {
            var s = x - Start;
            return C1 + (s * ((2 * C2) + (3 * s * C3)));
        }
    }
}
