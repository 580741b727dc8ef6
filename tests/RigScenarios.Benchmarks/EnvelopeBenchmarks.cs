using BenchmarkDotNet.Attributes;
using RigScenarios.Balance;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Benchmarks;

/// <summary>A balance envelope of 200 x 200 points of a rig of fourteen parts on a head with twelve steps: asked for in under 100
/// ms.</summary>
public class EnvelopeBenchmarks
{
    private readonly BalanceEnvelope envelope = Envelope();

    [Benchmark]
    public int Contours() => envelope.Contours(200, 200).Count;

    [Benchmark]
    public int EdgesOnOneLine() => envelope.EdgesAt(Length.FromMillimeters(-150)).Count;

    private static BalanceEnvelope Envelope()
    {
        // A chain of accessories: moving the first of them moves all behind it, the costliest case.
        var parts = Enumerable.Range(0, 14).Select(i => KeyValuePair.Create($"part {i}", new PlacedPart
        {
            Mass = Mass.FromKilograms(0.3 + (0.05 * i)),
            Size = new BoxSize(Length.FromMillimeters(60), Length.FromMillimeters(60), Length.FromMillimeters(60)),
            Placement = new Placement
            {
                Carrier = i == 0 ? null : $"part {i - 1}",
                Offset = RigPoint.FromMillimetres(i % 2 == 0 ? -40 : 45, 5, 10),
                Orientation = new Orientation(Angle.FromDegrees(4 * i), Angle.FromDegrees(2), Angle.FromDegrees(i)),
            },
        }));
        var head = new FluidHead
        {
            CameraPlateTravel = new LengthRange(Length.FromMillimeters(-60), Length.FromMillimeters(60)),
            AxisDepth = Length.FromMillimeters(110),
            Counterbalance = Counterbalance.OfSteps(Enumerable.Range(0, 12).Select(i => Torque.FromNewtonMeters(1.5 * i))),
            Friction = Torque.FromNewtonMeters(0.8),
            TiltUp = Angle.FromDegrees(-60),
            TiltDown = Angle.FromDegrees(60),
            RatedLoad = Mass.FromKilograms(12),
        };
        return BalanceEnvelope.Of(new PlacedBuild(new OrderedMap<PlacedPart>(parts)), head,
            RigVariable.Offset("part 1", PlacementField.OffsetX,
                new LengthRange(Length.FromMillimeters(-300), Length.FromMillimeters(300))),
            RigVariable.Offset("part 2", PlacementField.OffsetZ,
                new LengthRange(Length.FromMillimeters(-100), Length.FromMillimeters(300))));
    }
}
