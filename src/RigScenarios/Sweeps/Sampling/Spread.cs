using UnitsNet;

namespace RigScenarios.Sweeps.Sampling;

/// <summary>
/// What a figure may be, and how likely each value is: <see cref="UniformSpread"/>, <see cref="NormalSpread"/>,
/// <see cref="TriangularSpread"/>, <see cref="LognormalSpread"/>. Every spread has ends that no value lies beyond, so that all of
/// it can be tried on a scenario before the first run.
/// </summary>
public abstract record Spread
{
    /// <summary>A normal or lognormal spread without bounds of its own ends at so many standard deviations: 6 values in 10
    /// million would lie beyond.</summary>
    public const double MostDeviations = 5;

    private protected Spread(ValueUnit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        Unit = unit;
    }

    /// <summary>What the numbers of this spread are in, and how they stand in a file.</summary>
    public ValueUnit Unit { get; }

    /// <summary>The bound below that was asked for, in <see cref="Unit"/>; null if none was.</summary>
    public double? AtLeast { get; private init; }

    /// <summary>The bound above that was asked for, in <see cref="Unit"/>; null if none was.</summary>
    public double? AtMost { get; private init; }

    /// <summary>The least value, in <see cref="Unit"/>.</summary>
    public double Lowest => Math.Max(AtLeast ?? double.NegativeInfinity, ShapeEnds.Low);

    /// <summary>The greatest value, in <see cref="Unit"/>.</summary>
    public double Highest => Math.Min(AtMost ?? double.PositiveInfinity, ShapeEnds.High);

    /// <summary>The spread in the words that <see cref="UncertainField.Parse"/> reads, such as <c>190 Wh +- 8 Wh, at least
    /// 170 Wh</c>.</summary>
    public string Words => ShapeWords + (AtLeast, AtMost) switch
    {
        ({ } low, { } high) => $", within {Unit.Text(low)}..{Unit.Text(high)}",
        ({ } low, null) => $", at least {Unit.Text(low)}",
        (null, { } high) => $", at most {Unit.Text(high)}",
        _ => "",
    };

    /// <summary>Where the spread without bounds ends.</summary>
    private protected abstract (double Low, double High) ShapeEnds { get; }

    /// <summary>The spread without its bounds, in words.</summary>
    private protected abstract string ShapeWords { get; }

    /// <summary>Every value from one to another is as likely as any other.</summary>
    /// <param name="low">The least value; its unit is that of the values.</param>
    /// <param name="high">The greatest value.</param>
    /// <exception cref="ArgumentException">The least is not below the greatest, or they are of different quantities.</exception>
    public static UniformSpread Uniform(IQuantity low, IQuantity high) =>
        new(UnitOf(low), Number(low), Number(high, low));

    /// <summary>As <see cref="Uniform(IQuantity, IQuantity)"/>, for a plain number.</summary>
    /// <param name="low">The least value.</param>
    /// <param name="high">The greatest value.</param>
    /// <exception cref="ArgumentException">The least is not below the greatest.</exception>
    public static UniformSpread Uniform(double low, double high) => new(ValueUnit.Plain, low, high);

    /// <summary>The values of a measurement that is off as often this way as that: 68 of 100 lie within one standard deviation,
    /// 95 within two.</summary>
    /// <param name="middle">The middle; its unit is that of the values.</param>
    /// <param name="deviation">The standard deviation, above zero; of a temperature a <see cref="TemperatureDelta"/>.</param>
    /// <exception cref="ArgumentException">The deviation is not above zero, or of another quantity.</exception>
    public static NormalSpread Normal(IQuantity middle, IQuantity deviation) =>
        new(UnitOf(middle), Number(middle), Difference(deviation, middle));

    /// <summary>As <see cref="Normal(IQuantity, IQuantity)"/>, for a plain number.</summary>
    /// <param name="middle">The middle.</param>
    /// <param name="deviation">The standard deviation, above zero.</param>
    /// <exception cref="ArgumentException">The deviation is not above zero.</exception>
    public static NormalSpread Normal(double middle, double deviation) => new(ValueUnit.Plain, middle, deviation);

    /// <summary>Between two ends, most likely at a third value, falling off evenly to both ends.</summary>
    /// <param name="low">The least value; its unit is that of the values.</param>
    /// <param name="likely">The most likely value, from the least to the greatest.</param>
    /// <param name="high">The greatest value.</param>
    /// <exception cref="ArgumentException">The three don't stand in this order, or are of different quantities.</exception>
    public static TriangularSpread Triangular(IQuantity low, IQuantity likely, IQuantity high) =>
        new(UnitOf(low), Number(low), Number(likely, low), Number(high, low));

    /// <summary>As <see cref="Triangular(IQuantity, IQuantity, IQuantity)"/>, for a plain number.</summary>
    /// <param name="low">The least value.</param>
    /// <param name="likely">The most likely value.</param>
    /// <param name="high">The greatest value.</param>
    /// <exception cref="ArgumentException">The three don't stand in this order.</exception>
    public static TriangularSpread Triangular(double low, double likely, double high) =>
        new(ValueUnit.Plain, low, likely, high);

    /// <summary>As often so many times too large as too small: half lie above the median, 68 of 100 between the median over the
    /// factor and the median times the factor. Never zero or below.</summary>
    /// <param name="median">The median, above zero; its unit is that of the values. No temperature.</param>
    /// <param name="factor">The geometric standard deviation, above 1.</param>
    /// <exception cref="ArgumentException">The median is not above zero, the factor not above 1, or it is a
    /// temperature.</exception>
    public static LognormalSpread Lognormal(IQuantity median, double factor) => new(UnitOf(median), Number(median), factor);

    /// <summary>As <see cref="Lognormal(IQuantity, double)"/>, for a plain number.</summary>
    /// <param name="median">The median, above zero.</param>
    /// <param name="factor">The geometric standard deviation, above 1.</param>
    /// <exception cref="ArgumentException">The median is not above zero, or the factor not above 1.</exception>
    public static LognormalSpread Lognormal(double median, double factor) => new(ValueUnit.Plain, median, factor);

    /// <summary>The same spread without what lies beyond bounds: what is left is as likely as before, relative to each
    /// other.</summary>
    /// <param name="low">The bound below; null for none.</param>
    /// <param name="high">The bound above; null for none.</param>
    /// <exception cref="ArgumentException">Nothing is left between them, or they are no values of this spread's
    /// quantity.</exception>
    public Spread Within(IQuantity? low, IQuantity? high) =>
        Within(low is null ? null : InUnit(low), high is null ? null : InUnit(high));

    /// <summary>As <see cref="Within(IQuantity, IQuantity)"/>, by numbers in <see cref="Unit"/>.</summary>
    /// <param name="low">The bound below; null for none.</param>
    /// <param name="high">The bound above; null for none.</param>
    /// <exception cref="ArgumentException">Nothing is left between them.</exception>
    public Spread Within(double? low, double? high)
    {
        var cut = this with { AtLeast = low, AtMost = high };
        return cut.Lowest < cut.Highest ? cut : throw new UnsoundPlanException(
            $"Of \"{ShapeWords}\" nothing is left {cut.Words[(ShapeWords.Length + 2)..]}: its values go from "
            + $"{Unit.Text(ShapeEnds.Low)} to {Unit.Text(ShapeEnds.High)}.");
    }

    /// <summary>The value that a share of all values lies below: 0.5 gives the median.</summary>
    /// <param name="share">The share, 0 to 1: the ends are the least and the greatest value.</param>
    /// <returns>The value in <see cref="Unit"/>, to ten digits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0…1.</exception>
    public double NumberAt(double share)
    {
        if (share is not (>= 0 and <= 1))
            throw new ArgumentOutOfRangeException(nameof(share), share, "accepted: 0 to 1.");
        var (low, high) = (Lowest, Highest);
        // The ends are as they were written.
        return share == 0 ? low : share == 1 ? high : TenDigits.Between(ShapeAt(share, low, high), low, high);
    }

    /// <summary>As <see cref="NumberAt"/>, as the scenario file would say it.</summary>
    /// <param name="share">The share, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside 0…1.</exception>
    public string TextAt(double share) => Unit.Text(NumberAt(share));

    /// <summary>The words of the spread.</summary>
    public sealed override string ToString() => Words;

    /// <summary>The value that a share of what lies between two ends lies below.</summary>
    private protected abstract double ShapeAt(double share, double low, double high);

    private static ValueUnit UnitOf(IQuantity value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return ValueUnit.Of(value.Unit);
    }

    private static double Number(IQuantity value, IQuantity? like = null)
    {
        ArgumentNullException.ThrowIfNull(value);
        return like is null ? (double)value.Value : value.GetType() == like.GetType() ? (double)value.As(like.Unit)
            : throw new ArgumentException($"{value} and {like} are not two values of the same quantity.", nameof(value));
    }

    private static double Difference(IQuantity value, IQuantity like) => (value, like) switch
    {
        (TemperatureDelta delta, Temperature) => delta.Kelvins / TemperatureSteps.Kelvins(like.Unit),
        (_, Temperature) => throw new ArgumentException($"{value} is no difference of temperatures.", nameof(value)),
        _ => Number(value, like),
    };

    private double InUnit(IQuantity value) => Unit.NumberOf(value)
        ?? throw new ArgumentException($"{value} is no value of \"{ShapeWords}\".", nameof(value));
}
