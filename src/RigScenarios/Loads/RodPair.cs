using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Loads;

/// <summary>
/// Two equal rods held in one rigid clamp, each taking half of the load: a cantilever, <c>P a² (3L - a)/(12 E I)</c> at the ends,
/// <c>P a²/(4 E I)</c> slope at
/// the load, <c>P a/(2 Z)</c> stress (I, Z of one rod; beam tables, for instance <i>StrengthBook</i>, app. B.2). Give in the
/// clamp and shear are left out;
/// in real rigs the clamp often gives more than the rods.
/// </summary>
/// <param name="Section">The section of one rod.</param>
/// <param name="Material">What the rods are made of.</param>
/// <param name="FreeLength">L: from the clamp to the ends; above 0.</param>
public sealed record RodPair(RodSection Section, RodMaterial Material, Length FreeLength)
{
    /// <summary>The rods under a load.</summary>
    /// <param name="load">P, on both rods together.</param>
    /// <param name="at">a: from the clamp; 0 up to the free length.</param>
    /// <exception cref="ArgumentOutOfRangeException">The place is not on the rods.</exception>
    public RodBending Under(Force load, Length at)
    {
        Require.Positive(FreeLength.Meters, "m", nameof(FreeLength));
        Require.Within(at.Meters, 0, FreeLength.Meters, "m", nameof(at));
        double p = load.Newtons, a = at.Meters,
        stiffness = Material.ElasticModulus.Pascals * Section.SecondMoment.MetersToTheFourth;
        return new(
            Length.FromMeters(p * a * a * ((3 * FreeLength.Meters) - a) / (12 * stiffness)),
            Angle.FromRadians(p * a * a / (4 * stiffness)),
            Pressure.FromPascals(p * a / (2 * Section.Modulus.CubicMeters)),
            Material.YieldStrength is { } yield
                ? yield - Pressure.FromPascals(Math.Abs(p) * a / (2 * Section.Modulus.CubicMeters)) : null);
    }
}

/// <summary>How rods bend.</summary>
/// <param name="EndDeflection">How far their ends go down.</param>
/// <param name="Slope">Their slope at the load.</param>
/// <param name="Stress">The bending stress at the clamp.</param>
/// <param name="StressMargin">Yield strength less the stress; null where the material has no such figure.</param>
public sealed record RodBending(Length EndDeflection, Angle Slope, Pressure Stress, Pressure? StressMargin);
