using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Cells;

/// <summary>
/// The part of the capacity that can be used at a cell temperature (kappa of the discharge model): linear between the points of a
/// table, flat outside. Immutable; safe to share between threads.
/// </summary>
public sealed class UsableCapacity
{
    private readonly double[] kelvins;
    private readonly double[] fractions;

    /// <param name="points">At least one point, temperatures rising, fractions above 0 and up to 2.</param>
    /// <exception cref="ArgumentException">The table breaks one of these rules; the message says which and where.</exception>
    public UsableCapacity(IEnumerable<UsableCapacityPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        Points = [.. points];
        kelvins = [.. Points.Select(point => point.Temperature.Kelvins)];
        fractions = [.. Points.Select(point => point.Fraction.DecimalFractions)];
        if (kelvins.Length == 0)
            throw new ArgumentException("The usable-capacity table is empty; accepted: one point or more.", nameof(points));
        for (var i = 0; i < kelvins.Length; i++)
        {
            if (!(kelvins[i] > 0) || !double.IsFinite(kelvins[i]) || (i > 0 && !(kelvins[i] > kelvins[i - 1])))
                throw new ArgumentException(
                    $"Point {i + 1} of the usable-capacity table has {kelvins[i]:G6} K; accepted: rising temperatures above 0 K.",
                    nameof(points));
            if (!(fractions[i] > 0 && fractions[i] <= 2))
                throw new ArgumentException(
                    $"Point {i + 1} of the usable-capacity table has the fraction {fractions[i]:G6}; accepted: above 0, up to 2.",
                    nameof(points));
        }
    }

    /// <summary>All of the capacity at any temperature.</summary>
    public static UsableCapacity Full { get; } = FromTable([298.15], [1.0]);

    /// <summary>The points of the table, from cold to warm.</summary>
    public IReadOnlyList<UsableCapacityPoint> Points { get; }

    /// <summary>Temperatures of the table, K.</summary>
    internal ReadOnlySpan<double> Kelvins => kelvins;

    /// <summary>Fractions of the table.</summary>
    internal ReadOnlySpan<double> Fractions => fractions;

    /// <summary>A table from plain numbers: kelvins and fractions.</summary>
    /// <exception cref="ArgumentException">As for the constructor.</exception>
    public static UsableCapacity FromTable(IReadOnlyList<double> kelvins, IReadOnlyList<double> fractions)
    {
        ArgumentNullException.ThrowIfNull(kelvins);
        ArgumentNullException.ThrowIfNull(fractions);
        if (kelvins.Count != fractions.Count)
            throw new ArgumentException(
                $"The usable-capacity table has {kelvins.Count} temperatures and {fractions.Count} fractions; accepted: as "
                    + "many of each.", nameof(fractions));
        return new UsableCapacity(kelvins.Zip(fractions,
            (t, f) => new UsableCapacityPoint(Temperature.FromKelvins(t), Ratio.FromDecimalFractions(f))));
    }

    /// <summary>The usable part at a cell temperature.</summary>
    public Ratio At(Temperature temperature) => Ratio.FromDecimalFractions(At(temperature.Kelvins));

    /// <summary>The usable part at a cell temperature in K.</summary>
    internal double At(double kelvin)
    {
        if (kelvin <= kelvins[0])
            return fractions[0];
        for (var i = 1; i < kelvins.Length; i++)
        {
            if (kelvin < kelvins[i])
                return fractions[i - 1]
                    + ((fractions[i] - fractions[i - 1]) * (kelvin - kelvins[i - 1]) / (kelvins[i] - kelvins[i - 1]));
        }

        return fractions[^1];
    }
}
