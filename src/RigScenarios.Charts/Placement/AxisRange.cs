namespace RigScenarios.Charts.Placement;

/// <summary>The range that an axis shows. On a logarithmic axis the ends are powers of ten, as plotly.js wants them.</summary>
internal sealed record AxisRange(double From, double To, bool IsLogarithmic)
{
    private static readonly double[] NiceFactors = [1, 2, 5, 10];

    private const double Air = 0.12;

    /// <summary>The range for these values: with some air where <paramref name="pad"/> is set, and never of zero
    /// length.</summary>
    /// <param name="axis">What the author fixed goes before what the data say.</param>
    /// <param name="values">All values to be shown; those that are no finite number are passed over.</param>
    /// <param name="pad">Whether to go on to the next round number at both ends.</param>
    public static AxisRange For(ChartAxis axis, IEnumerable<double> values, bool pad)
    {
        var logarithmic = axis.Scale == AxisScale.Logarithmic;
        var (low, high) = axis.FromZero && !logarithmic ? (0, 0) : (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var value in values)
        {
            if (double.IsFinite(value) && (!logarithmic || value > 0))
            {
                var place = logarithmic ? Math.Log10(value) : value;
                (low, high) = (Math.Min(low, place), Math.Max(high, place));
            }
        }

        if (low > high)
            (low, high) = (0, 1);
        if (high - low < 1e-9 * Math.Max(1, Math.Abs(high)))
            (low, high) = (low - (pad ? 0.5 : 0), high + (pad ? 0.5 : 1));
        if (pad && !logarithmic)
        {
            var step = NiceStep((high - low) / 6);
            // A value that lies on a round number gets air too, so that its line and label stand off the plot's edge; but an
            // axis of values from zero up does not go below zero.
            var floor = Math.Floor(low / step - Air) * step;
            (low, high) = (low >= 0 ? Math.Max(0, floor) : floor, high == 0 ? 0 : Math.Ceiling(high / step + Air) * step);
        }

        var from = axis.From is { } f ? (logarithmic ? Math.Log10(f) : f) : low;
        var to = axis.To is { } t ? (logarithmic ? Math.Log10(t) : t) : high;
        return new AxisRange(Rounding.Significant(from, 9), Rounding.Significant(to, 9), logarithmic);
    }

    public double Fraction(double value) => ((IsLogarithmic ? Math.Log10(value) : value) - From) / (To - From);

    /// <summary>The value at a fraction of the range, as plotly.js takes positions: the exponent on a logarithmic axis.</summary>
    public double AtFraction(double fraction) => From + fraction * (To - From);

    /// <summary>A step of 1, 2 or 5 times a power of ten, at least as large as asked.</summary>
    public static double NiceStep(double atLeast)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(atLeast)));
        return NiceFactors.Select(factor => factor * power).First(step => step >= atLeast * (1 - 1e-9));
    }
}
