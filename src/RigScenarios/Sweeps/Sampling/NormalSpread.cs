using RigScenarios.Numerics;

namespace RigScenarios.Sweeps.Sampling;

/// <summary>The values of a measurement that is off as often this way as that: 68 of 100 lie within one standard
/// deviation.</summary>
public sealed record NormalSpread : Spread
{
    /// <summary>A spread by numbers in a unit.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="middle">The middle.</param>
    /// <param name="deviation">The standard deviation, above zero.</param>
    /// <exception cref="ArgumentException">The deviation is not above zero.</exception>
    public NormalSpread(ValueUnit unit, double middle, double deviation)
        : base(unit)
    {
        if (!double.IsFinite(middle) || !(deviation > 0) || !double.IsFinite(deviation))
            throw new UnsoundPlanException($"\"{unit.Text(middle)} +- {unit.DifferenceText(deviation)}\" is no spread: what "
                + "stands behind +- is above zero.");
        (Middle, Deviation) = (middle, deviation);
        var most = MostDeviations * deviation;
        ShapeEnds = (TenDigits.Of(middle - most), TenDigits.Of(middle + most));
        if (!(ShapeEnds.Low < ShapeEnds.High))
            throw new UnsoundPlanException($"\"{ShapeWords}\" is no spread: all of it is the same number to ten digits.");
    }

    /// <summary>The middle, in the unit of the spread.</summary>
    public double Middle { get; }

    /// <summary>The standard deviation, in steps of the unit.</summary>
    public double Deviation { get; }

    private protected override (double Low, double High) ShapeEnds { get; }

    private protected override string ShapeWords => $"{Unit.Text(Middle)} +- {Unit.DifferenceText(Deviation)}";

    private protected override double ShapeAt(double share, double low, double high) => Middle
        + (Deviation * NormalCurve.Within((low - Middle) / Deviation, (high - Middle) / Deviation, share));
}
