using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>
/// Mass, centre of mass and inertia of a build, with their uncertainties: <c>m = Σ m_i</c>, <c>r = Σ m_i r_i / m</c>, boxes and
/// the
/// parallel-axis theorem for the tensor; to first order <c>u(x)² = Σ [ (x_i - x)²/m² u(m_i)² + (m_i/m)² u(x_i)² ]</c>, the parts
/// taken as independent.
/// </summary>
public sealed record MassProperties
{
    /// <summary>The whole mass.</summary>
    public required Mass Mass { get; init; }

    /// <summary>The centre of mass in the rig frame.</summary>
    public required RigPoint Centre { get; init; }

    /// <summary>The tensor of inertia about the centre of mass, along the rig's axes.</summary>
    public required InertiaTensor Inertia { get; init; }

    /// <summary>Half-width of the uncertainty of the mass, of the same coverage as those of the parts.</summary>
    public required Mass MassUncertainty { get; init; }

    /// <summary>Half-widths of the uncertainty of the centre along the rig's axes.</summary>
    public required RigPoint CentreUncertainty { get; init; }

    /// <summary>Each part where it sits, by name, in the order of the build.</summary>
    public required OrderedMap<PartInPlace> Parts { get; init; }

    /// <summary>The parts whose centre nobody gave: the middle of the box was used.</summary>
    public required IReadOnlyList<string> CentresAssumed { get; init; }

    /// <summary>Mass, centre and inertia of a build.</summary>
    public static MassProperties Of(PlacedBuild build)
    {
        ArgumentNullException.ThrowIfNull(build);
        var kernel = new PlacementKernel(build);
        var total = kernel.Total();
        var inertia = default(InertiaSum);
        double massVariance = 0, x = 0, y = 0, z = 0;
        var parts = new PartInPlace[kernel.Names.Count];
        for (var i = 0; i < parts.Length; i++)
        {
            var part = build.Parts[kernel.Names[i]];
            double kilograms = kernel.Kilograms(i), uncertain = part.MassUncertainty.Kilograms;
            var centre = kernel.Centre(i);
            var away = centre - total.Centre;
            inertia.AddBox(kilograms, kernel.Axes(i), part.Size.Length.Meters, part.Size.Width.Meters, part.Size.Height.Meters);
            inertia.AddPoint(kilograms, away);
            massVariance += uncertain * uncertain;
            var own = part.CentreUncertainty.Metres;
            x += Square(away.X * uncertain) + Square(kilograms * own.X);
            y += Square(away.Y * uncertain) + Square(kilograms * own.Y);
            z += Square(away.Z * uncertain) + Square(kilograms * own.Z);
            parts[kernel.Order[i]] = new(part.Mass, RigPoint.From(kernel.Point(i)), RigPoint.From(centre), kernel.Axes(i),
                kernel.Point(i) + (kernel.Axes(i) * part.BoxMiddle.Metres));
        }

        return new()
        {
            Mass = Mass.FromKilograms(total.Kilograms),
            Centre = RigPoint.From(total.Centre),
            Inertia = inertia.ToTensor(),
            MassUncertainty = Mass.FromKilograms(Math.Sqrt(massVariance)),
            CentreUncertainty = RigPoint.FromMetres(Math.Sqrt(x) / total.Kilograms, Math.Sqrt(y) / total.Kilograms,
                Math.Sqrt(z) / total.Kilograms),
            Parts = new(build.Parts.Keys.Zip(parts, KeyValuePair.Create)),
            CentresAssumed = [.. build.Parts.Where(part => part.Value.MassCentre is null).Select(part => part.Key)],
        };
    }

    /// <summary>What a part adds to the nose-down moment about a point: <c>m_i (x_i - x_0) g</c>.</summary>
    /// <param name="part">Its name.</param>
    /// <param name="about">x of the point, such as the plate position.</param>
    /// <exception cref="KeyNotFoundException">There is no such part.</exception>
    public Torque ForeAftShare(string part, Length about) =>
        Torque.FromNewtonMeters(
            Parts[part].Mass.Kilograms * (Parts[part].Centre.X - about).Meters * StandardGravity.MetresPerSecondSquared);

    /// <summary>All shares of the nose-down moment about a point, the largest in size first: what to move first.</summary>
    /// <param name="about">x of the point.</param>
    public IReadOnlyList<KeyValuePair<string, Torque>> ForeAftShares(Length about) =>
        [.. Parts.Keys.Select(name => KeyValuePair.Create(name, ForeAftShare(name, about)))
            .OrderByDescending(share => Math.Abs(share.Value.NewtonMeters))];

    /// <summary>The tensor of inertia about another point of the rig frame (parallel-axis theorem).</summary>
    public InertiaTensor InertiaAbout(RigPoint point) => Inertia.About(Mass, RigPoint.From(point.Metres - Centre.Metres));

    internal PointMass Point => new(Mass.Kilograms, Centre.Metres);

    private static double Square(double value) => value * value;
}

/// <summary>A part where it sits in the rig frame.</summary>
public sealed record PartInPlace
{
    internal PartInPlace(Mass mass, RigPoint mountingPoint, RigPoint centre, RotationMatrix axes, Vector boxMiddle) =>
        (Mass, MountingPoint, Centre, Axes, BoxMiddle) = (mass, mountingPoint, centre, axes, boxMiddle);

    /// <summary>Its mass.</summary>
    public Mass Mass { get; }

    /// <summary>Its mounting point.</summary>
    public RigPoint MountingPoint { get; }

    /// <summary>Its centre of mass.</summary>
    public RigPoint Centre { get; }

    /// <summary>A point that is given from the mounting point along the part's own axes, in the rig frame: where a corner of its
    /// box or a hole of a cage is.</summary>
    /// <param name="own">From the mounting point, along the part's axes.</param>
    public RigPoint InRig(RigPoint own) => RigPoint.From(MountingPoint.Metres + (Axes * own.Metres));

    internal RotationMatrix Axes { get; }

    /// <summary>Middle of its box, m.</summary>
    internal Vector BoxMiddle { get; }
}
