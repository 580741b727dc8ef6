using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>
/// A tensor of inertia along the rig's axes. The off-diagonal elements are those of the tensor, <c>I_xy = -Σ m x y</c>, not the
/// products of inertia of
/// the opposite sign.
/// </summary>
/// <param name="XX">About x: Σ m (y² + z²).</param>
/// <param name="YY">About y: tilting.</param>
/// <param name="ZZ">About z: panning.</param>
/// <param name="XY">-Σ m x y.</param>
/// <param name="XZ">-Σ m x z.</param>
/// <param name="YZ">-Σ m y z.</param>
public sealed record InertiaTensor(
    MassMomentOfInertia XX, MassMomentOfInertia YY, MassMomentOfInertia ZZ, MassMomentOfInertia XY, MassMomentOfInertia XZ,
    MassMomentOfInertia YZ)
{
    /// <summary>
    /// The tensor about another point, given that this one is about the centre of mass: the parallel-axis theorem, <c>I_xx + m
    /// (dy² + dz²)</c>,
    /// <c>I_xy - m dx dy</c> and so on.
    /// </summary>
    /// <param name="mass">The mass that the tensor belongs to.</param>
    /// <param name="away">From the centre of mass to the other point (or back: the sign doesn't matter).</param>
    public InertiaTensor About(Mass mass, RigPoint away)
    {
        var sum = new InertiaSum();
        sum.Add(this);
        sum.AddPoint(mass.Kilograms, away.Metres);
        return sum.ToTensor();
    }
}

/// <summary>Adds up tensors in kg·m².</summary>
internal struct InertiaSum
{
    private double xx, yy, zz, xy, xz, yz;

    public void Add(InertiaTensor tensor)
    {
        xx += tensor.XX.KilogramSquareMeters;
        yy += tensor.YY.KilogramSquareMeters;
        zz += tensor.ZZ.KilogramSquareMeters;
        xy += tensor.XY.KilogramSquareMeters;
        xz += tensor.XZ.KilogramSquareMeters;
        yz += tensor.YZ.KilogramSquareMeters;
    }

    /// <summary>A point of mass, kg, at a distance, m.</summary>
    public void AddPoint(double kilograms, Vector d)
    {
        xx += kilograms * ((d.Y * d.Y) + (d.Z * d.Z));
        yy += kilograms * ((d.X * d.X) + (d.Z * d.Z));
        zz += kilograms * ((d.X * d.X) + (d.Y * d.Y));
        xy -= kilograms * d.X * d.Y;
        xz -= kilograms * d.X * d.Z;
        yz -= kilograms * d.Y * d.Z;
    }

    /// <summary>A turned box about its own middle: R·diag(b²+c², a²+c², a²+b²)·Rᵀ·m/12.</summary>
    public void AddBox(double kilograms, RotationMatrix r, double a, double b, double c)
    {
        double ix = kilograms / 12 * ((b * b) + (c * c)), iy = kilograms / 12 * ((a * a) + (c * c)),
        iz = kilograms / 12 * ((a * a) + (b * b));
        xx += (ix * r.X.X * r.X.X) + (iy * r.Y.X * r.Y.X) + (iz * r.Z.X * r.Z.X);
        yy += (ix * r.X.Y * r.X.Y) + (iy * r.Y.Y * r.Y.Y) + (iz * r.Z.Y * r.Z.Y);
        zz += (ix * r.X.Z * r.X.Z) + (iy * r.Y.Z * r.Y.Z) + (iz * r.Z.Z * r.Z.Z);
        xy += (ix * r.X.X * r.X.Y) + (iy * r.Y.X * r.Y.Y) + (iz * r.Z.X * r.Z.Y);
        xz += (ix * r.X.X * r.X.Z) + (iy * r.Y.X * r.Y.Z) + (iz * r.Z.X * r.Z.Z);
        yz += (ix * r.X.Y * r.X.Z) + (iy * r.Y.Y * r.Y.Z) + (iz * r.Z.Y * r.Z.Z);
    }

    public readonly InertiaTensor ToTensor() => new(
        MassMomentOfInertia.FromKilogramSquareMeters(xx), MassMomentOfInertia.FromKilogramSquareMeters(yy),
        MassMomentOfInertia.FromKilogramSquareMeters(zz),
        MassMomentOfInertia.FromKilogramSquareMeters(xy), MassMomentOfInertia.FromKilogramSquareMeters(xz),
        MassMomentOfInertia.FromKilogramSquareMeters(yz));
}
