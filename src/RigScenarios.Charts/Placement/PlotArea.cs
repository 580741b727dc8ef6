using System.Runtime.CompilerServices;

namespace RigScenarios.Charts.Placement;

/// <summary>A rectangle in pixels, y downwards, origin in the plot's upper left corner.</summary>
internal sealed record Box(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Far below what is seen, far above a rounding, in pixels. Where edges meet, a rounding must not choose the place
    /// of a label: it is another one on another machine or in a browser.</summary>
    public const double Touch = 1e-6;

    public bool Overlaps(Box other) => Left < other.Right - Touch && other.Left < Right - Touch
        && Top < other.Bottom - Touch && other.Top < Bottom - Touch;

    public bool Contains(Box other) => other.Left >= Left && other.Right <= Right && other.Top >= Top && other.Bottom <= Bottom;

    /// <summary>Whether the straight line between two points touches the rectangle (clipping after Liang and Barsky,
    /// 1984).</summary>
    public bool IsCrossed((double X, double Y) a, (double X, double Y) b)
    {
        var (from, to) = (0.0, 1.0);
        var (dx, dy) = (b.X - a.X, b.Y - a.Y);
        return Clips(-dx, a.X - Left, ref from, ref to) && Clips(dx, Right - a.X, ref from, ref to)
            && Clips(-dy, a.Y - Top, ref from, ref to) && Clips(dy, Bottom - a.Y, ref from, ref to);
    }

    // Asked many thousand times for one drawing: no array, nothing to collect.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static bool Clips(double p, double q, ref double from, ref double to)
    {
        if (p == 0)
            return q >= 0;
        var t = q / p;
        if (p < 0)
            from = Math.Max(from, t);
        else
            to = Math.Min(to, t);
        return from <= to;
    }
}

/// <summary>Where a value lies in a plot, in pixels; needed to see beforehand whether texts would overlap.</summary>
/// <param name="Width">Width of the plot between its axes, in pixels.</param>
/// <param name="Height">Height of the plot, in pixels.</param>
/// <param name="X">Range of the horizontal axis.</param>
/// <param name="Y">Range of the vertical axis.</param>
internal sealed record PlotArea(double Width, double Height, AxisRange X, AxisRange Y)
{
    public (double X, double Y) Pixel(double x, double y) => (X.Fraction(x) * Width, (1 - Y.Fraction(y)) * Height);

    /// <summary>The x value, in the numbers of the layout, of a pixel.</summary>
    public double XAt(double pixel) => X.AtFraction(pixel / Width);

    /// <summary>The y value, in the numbers of the layout, of a pixel.</summary>
    public double YAt(double pixel) => Y.AtFraction(1 - pixel / Height);
}
