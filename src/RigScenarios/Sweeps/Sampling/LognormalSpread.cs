using System.Globalization;
using RigScenarios.Numerics;

namespace RigScenarios.Sweeps.Sampling;

/// <summary>As often so many times too large as too small: 68 of 100 values lie between the median over the factor and the median
/// times the factor. Never zero or below.</summary>
public sealed record LognormalSpread : Spread
{
    /// <summary>A spread by numbers in a unit that has a true zero.</summary>
    /// <param name="unit">The unit.</param>
    /// <param name="median">The median, above zero.</param>
    /// <param name="factor">The geometric standard deviation, above 1, at most 100.</param>
    /// <exception cref="ArgumentException">The median is not above zero, or the factor outside its range.</exception>
    public LognormalSpread(ValueUnit unit, double median, double factor)
        : base(unit)
    {
        if (!unit.HasZero)
            throw new UnsoundPlanException($"{unit.Text(median)} takes no factor: write what it may be off by, such as "
                + $"\"{unit.Text(median)} +- {unit.DifferenceText(2)}\".");
        if (!(median > 0) || !double.IsFinite(median))
            throw new UnsoundPlanException($"{unit.Text(median)} takes no factor: it is not above zero.");
        if (!(factor > 1 && factor <= 100))
            throw new UnsoundPlanException($"A factor of {Digits(factor)} is no spread; accepted: above 1, up to 100.");
        (Median, Factor) = (median, factor);
        var most = Math.Pow(factor, MostDeviations);
        ShapeEnds = (TenDigits.Of(median / most), TenDigits.Of(median * most));
    }

    /// <summary>The median, in the unit of the spread.</summary>
    public double Median { get; }

    /// <summary>The geometric standard deviation, above 1.</summary>
    public double Factor { get; }

    private protected override (double Low, double High) ShapeEnds { get; }

    private protected override string ShapeWords => $"{Unit.Text(Median)} +- a factor of {Digits(Factor)}";

    private protected override double ShapeAt(double share, double low, double high)
    {
        var logFactor = Math.Log(Factor);
        return Median * Math.Exp(logFactor * NormalCurve.Within(
            low > 0 ? Math.Log(low / Median) / logFactor : -MostDeviations, Math.Log(high / Median) / logFactor, share));
    }

    private static string Digits(double number) => number.ToString("R", CultureInfo.InvariantCulture);
}
