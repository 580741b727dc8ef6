using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>
/// The acceleration by which mass becomes weight everywhere in this library: the conventional value of the 3rd General Conference
/// on
/// Weights and Measures (1901), 9.80665 m/s². Real gravity differs from it by up to 0.3 % from place to place.
/// </summary>
public static class StandardGravity
{
    /// <summary>9.80665 m/s².</summary>
    internal const double MetresPerSecondSquared = 9.80665;

    /// <summary>9.80665 m/s².</summary>
    public static Acceleration Value { get; } = Acceleration.FromMetersPerSecondSquared(MetresPerSecondSquared);

    /// <summary>The weight of a mass.</summary>
    public static Force Weight(Mass mass) => Force.FromNewtons(mass.Kilograms * MetresPerSecondSquared);
}
