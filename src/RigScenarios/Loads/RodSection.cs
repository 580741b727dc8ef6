using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Loads;

/// <summary>The section of a round rod or tube: <c>I = π (D⁴ - d⁴)/64</c>, <c>Z = 2 I/D</c>.</summary>
public sealed record RodSection
{
    /// <param name="outer">D; above 0.</param>
    /// <param name="bore">d; 0 or more, below D; 0 is a solid rod.</param>
    /// <exception cref="ArgumentOutOfRangeException">A diameter is outside of that.</exception>
    public RodSection(Length outer, Length bore = default)
    {
        Require.Positive(outer.Meters, "m", nameof(outer));
        Require.NotNegative(bore.Meters, "m", nameof(bore));
        Require.Positive((outer - bore).Meters, "m", "outer - bore");
        (Outer, Bore) = (outer, bore);
    }

    /// <summary>Outer diameter.</summary>
    public Length Outer { get; }

    /// <summary>Inner diameter; 0 for a solid rod.</summary>
    public Length Bore { get; }

    /// <summary>Area of the section.</summary>
    public Area Area => Area.FromSquareMeters(Math.PI / 4 * (Math.Pow(Outer.Meters, 2) - Math.Pow(Bore.Meters, 2)));

    /// <summary>Second moment of area.</summary>
    public AreaMomentOfInertia SecondMoment =>
        AreaMomentOfInertia.FromMetersToTheFourth(Math.PI / 64 * (Math.Pow(Outer.Meters, 4) - Math.Pow(Bore.Meters, 4)));

    /// <summary>Section modulus.</summary>
    public Volume Modulus => Volume.FromCubicMeters(2 * SecondMoment.MetersToTheFourth / Outer.Meters);
}
