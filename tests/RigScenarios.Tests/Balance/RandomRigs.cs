using CsCheck;
using RigScenarios.Balance;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Balance;

/// <summary>Rigs of two to seven parts, each on the rig or on an earlier part, turned any way; heads with steps or a
/// range.</summary>
internal static class RandomRigs
{
    private static readonly Gen<RigPoint> Points = Gen.Select(Gen.Double[-0.3, 0.3], Gen.Double[-0.2, 0.2], Gen.Double[-0.1, 0.4],
        RigPoint.FromMetres);

    private static readonly Gen<Orientation> Turns = Gen.Select(Gen.Double[-3, 3], Gen.Double[-1.5, 1.5], Gen.Double[-3, 3],
        (yaw, pitch, roll) => new Orientation(Angle.FromRadians(yaw), Angle.FromRadians(pitch), Angle.FromRadians(roll)));

    private static readonly Gen<BoxSize> Sizes = Gen.Double[0.01, 0.2].Array[3].Select(edges =>
        new BoxSize(Length.FromMeters(edges[0]), Length.FromMeters(edges[1]), Length.FromMeters(edges[2])));

    private static readonly Gen<(PlacedPart Part, int On)> Parts = Gen.Select(Points, Turns, Sizes, Points, Gen.Double[0.05, 4],
        Gen.Int[0, 100],
        (offset, turn, size, centre, kilograms, on) => (new PlacedPart
        {
            Mass = Mass.FromKilograms(kilograms),
            MassUncertainty = Mass.FromKilograms(0.02 * kilograms),
            CentreUncertainty = RigPoint.FromMillimetres(3, 2, 4),
            Size = size,
            BoxMiddle = centre,
            Placement = new Placement { Offset = offset, Orientation = turn },
        }, on));

    public static Gen<PlacedBuild> Builds { get; } = Parts.Array[2, 7]
        .Select(parts => new PlacedBuild(new OrderedMap<PlacedPart>(parts.Select((one, i) =>
        KeyValuePair.Create($"part {i}",
            one.Part with { Placement = one.Part.Placement with { Carrier = one.On % (i + 1) == i ? null
            : $"part {one.On % (i + 1)}" } })))));

    private static readonly Gen<Counterbalance> Counterbalances = Gen.OneOf(
        Gen.Double[0, 25].Array[1, 9]
            .Select(steps => Counterbalance.OfSteps(steps.Select(step => Torque.FromNewtonMeters(step)))),
        Gen.Select(Gen.Double[0, 5], Gen.Double[0, 30],
            (least, more) => Counterbalance.OfRange(Torque.FromNewtonMeters(least), Torque.FromNewtonMeters(least + more))));

    public static Gen<FluidHead> Heads { get; } = Gen.Select(Gen.Double[-0.15, 0.1], Gen.Double[0.01, 0.15],
        Gen.Double[0.05, 0.2], Counterbalances, Gen.Double[0.2, 6], Gen.Double[-95, 0], Gen.Double[0, 95], Gen.Double[2, 20],
        (rear, travel, depth, counterbalance, drag, up, down, rated) => new FluidHead
        {
            CameraPlateTravel = new LengthRange(Length.FromMeters(rear), Length.FromMeters(rear + travel)),
            AxisDepth = Length.FromMeters(depth),
            Counterbalance = counterbalance,
            Friction = Torque.FromNewtonMeters(drag),
            TiltLock = Torque.FromNewtonMeters(10),
            TiltUp = Angle.FromDegrees(up),
            TiltDown = Angle.FromDegrees(down),
            RatedLoad = Mass.FromKilograms(rated),
        });

    public static Stand Tripod { get; } = new()
    {
        FootRadius = Length.FromMeters(0.5),
        Mass = Mass.FromKilograms(6),
        CentreHeight = Length.FromMeters(0.6),
        CameraPlateHeight = Length.FromMeters(1.4),
    };

    public static void Near(RigPoint expected, RigPoint found, double metres = 1e-12)
    {
        Assert.Equal(expected.X.Meters, found.X.Meters, metres);
        Assert.Equal(expected.Y.Meters, found.Y.Meters, metres);
        Assert.Equal(expected.Z.Meters, found.Z.Meters, metres);
    }

    public static double[] Elements(InertiaTensor tensor) =>
    [
        tensor.XX.KilogramSquareMeters, tensor.YY.KilogramSquareMeters, tensor.ZZ.KilogramSquareMeters,
        tensor.XY.KilogramSquareMeters, tensor.XZ.KilogramSquareMeters, tensor.YZ.KilogramSquareMeters,
    ];

    public static void Near(double[] expected, InertiaTensor found, double tolerance = 1e-11)
    {
        foreach (var (one, other) in expected.Zip(Elements(found)))
            Assert.Equal(one, other, tolerance);
    }
}
