namespace RigScenarios.Sweeps.Sampling;

/// <summary>Between two ends, most likely at a third value, falling off evenly to both ends.</summary>
public sealed record TriangularSpread : Spread
{
    /// <summary>A spread by numbers in a unit.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="low">The least value.</param>
    /// <param name="likely">The most likely value, from the least to the greatest.</param>
    /// <param name="high">The greatest value.</param>
    /// <exception cref="ArgumentException">The three don't stand in this order, or nothing lies between the ends.</exception>
    public TriangularSpread(ValueUnit unit, double low, double likely, double high)
        : base(unit)
    {
        if (!(low < high) || !double.IsFinite(high - low))
            throw new UnsoundPlanException($"{unit.Text(low)} is not below {unit.Text(high)}: nothing lies between.");
        if (!(likely >= low && likely <= high))
            throw new UnsoundPlanException($"{unit.Text(likely)} can't be the most likely: it is not between {unit.Text(low)} "
                + $"and {unit.Text(high)}.");
        (Low, Likely, High) = (low, likely, high);
    }

    /// <summary>The least value without bounds, in the unit of the spread.</summary>
    public double Low { get; }

    /// <summary>The most likely value, in the unit of the spread.</summary>
    public double Likely { get; }

    /// <summary>The greatest value without bounds, in the unit of the spread.</summary>
    public double High { get; }

    private protected override (double Low, double High) ShapeEnds => (Low, High);

    private protected override string ShapeWords =>
        $"between {Unit.Text(Low)} and {Unit.Text(High)}, most likely {Unit.Text(Likely)}";

    private protected override double ShapeAt(double share, double low, double high)
    {
        var (from, to) = (Below(low), Below(high));
        var below = from + (share * (to - from));
        var whole = High - Low;
        return below <= (Likely - Low) / whole
            ? Low + Math.Sqrt(below * whole * (Likely - Low))
            : High - Math.Sqrt((1 - below) * whole * (High - Likely));
    }

    /// <summary>The share of all values, without bounds, that lie below one: the area of a triangle.</summary>
    private double Below(double value)
    {
        var whole = High - Low;
        return value <= Low ? 0 : value >= High ? 1
            : value <= Likely ? (value - Low) * (value - Low) / (whole * (Likely - Low))
            : 1 - ((High - value) * (High - value) / (whole * (High - Likely)));
    }
}
