namespace RigScenarios.Sweeps.Sampling;

/// <summary>Every value from one to another is as likely as any other; of whole numbers each one.</summary>
public sealed record UniformSpread : Spread
{
    /// <summary>A spread by numbers in a unit.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="low">The least value.</param>
    /// <param name="high">The greatest value.</param>
    /// <exception cref="ArgumentException">The least is not below the greatest.</exception>
    public UniformSpread(ValueUnit unit, double low, double high)
        : base(unit)
    {
        if (!(low < high) || !double.IsFinite(high - low))
            throw new UnsoundPlanException($"{unit.Text(low)} is not below {unit.Text(high)}: nothing lies between.");
        (Low, High) = (low, high);
    }

    /// <summary>The least value without bounds, in the unit of the spread.</summary>
    public double Low { get; }

    /// <summary>The greatest value without bounds, in the unit of the spread.</summary>
    public double High { get; }

    private protected override (double Low, double High) ShapeEnds => (Low, High);

    private protected override string ShapeWords => $"between {Unit.Text(Low)} and {Unit.Text(High)}";

    // Rounding evenly spread numbers would give whole ones at the ends half their share.
    private protected override double ShapeAt(double share, double low, double high) =>
        Unit.IsWhole ? Math.Floor(low + (share * (high - low + 1))) : low + (share * (high - low));
}
