using CsCheck;
using RigScenarios.Balance;
using UnitsNet;

namespace RigScenarios.Tests.Balance;

/// <summary>The envelope's outlines lie where a direct solve puts the edges.</summary>
public class EnvelopeTests
{
    private static readonly Gen<BalanceEnvelope> Envelopes = Gen.Select(RandomRigs.Builds, RandomRigs.Heads, Gen.Bool,
        (build, head, mass) => BalanceEnvelope.Of(
        build, head,
        RigVariable.Offset(build.Parts.Keys.First(), PlacementField.OffsetX,
            new LengthRange(Length.FromMeters(-0.3), Length.FromMeters(0.3))),
        mass
            ? RigVariable.OfMass(build.Parts.Keys.Last(), Mass.Zero, Mass.FromKilograms(5))
            : RigVariable.Offset(build.Parts.Keys.Last(), PlacementField.OffsetZ,
                new LengthRange(Length.FromMeters(-0.1), Length.FromMeters(0.4)))));

    [Fact]
    public void On_each_point_of_an_outline_its_limit_is_reached_and_no_other_is_broken() => Envelopes.Holds(
        (envelope, looked) =>
        {
            foreach (var point in envelope.Contours(25, 25).SelectMany(contour => contour.Points))
            {
                var margins = envelope.At(point.First, point.Second);
                Assert.True(Least(margins) >= -1e-8);
                if (point.Limit is { } limit)
                {
                    Assert.Equal(0, Of(margins, limit), 1e-8);
                    looked.One();
                }
            }
        },
        cases: 100, atLeast: 1000);

    [Fact]
    public void Outlines_cross_a_line_of_the_grid_where_the_direct_solve_says() => Envelopes.Holds(
        (envelope, looked) =>
        {
            var first = Length.FromMeters(-0.3 + (0.6 * 10 / 24));
            var edges = envelope.EdgesAt(first).Where(edge => edge.Limiting).ToList();
            foreach (var point in envelope.Contours(25, 25).SelectMany(contour => contour.Points))
            {
                if (point.Limit is not { } limit || Math.Abs(((Length)point.First - first).Meters) >= 1e-9)
                    continue;
                looked.One();
                Assert.True(edges.Exists(edge => edge.Limit == limit
                        && Math.Abs(Plain(edge.Second) - Plain(point.Second)) < 1e-4),
                        $"{limit} at {Plain(point.Second):R}, edges "
                            + string.Join("; ", envelope.EdgesAt(first)
                                .Select(edge => $"{edge.Limit} {Plain(edge.Second):R} {edge.Limiting}")));
            }
        },
        cases: 300, atLeast: 15);

    [Fact]
    public void Between_the_edges_of_a_line_inside_stays_inside() => Envelopes.Holds(
        (envelope, looked) =>
        {
            var first = Length.FromMeters(0.04);
            double low = Plain(envelope.Second.Least), high = Plain(envelope.Second.Greatest);
            double[] cuts = [low, .. envelope.EdgesAt(first).Where(edge => edge.Limiting).Select(edge => Plain(edge.Second)),
                high];
            foreach (var (from, to) in cuts.Zip(cuts.Skip(1)).Where(pair => pair.Second - pair.First > 1e-6))
            {
                var inside = Enumerable.Range(1, 19)
                    .Select(i => envelope.At(first, Quantity(envelope, from + ((to - from) * i / 20.0))).Inside).Distinct();
                Assert.Single(inside);
                if (cuts.Length > 2)
                    looked.One();
            }
        },
        cases: 300, atLeast: 60);

    // In the classic picture the travel's ends are upright lines and the rated load a level one.
    [Fact]
    public void The_classic_picture_is_a_box_where_the_counterbalance_fits_any_mass()
    {
        var head = new FluidHead
        {
            CameraPlateTravel = new LengthRange(Length.FromMillimeters(-40), Length.FromMillimeters(60)),
            AxisDepth = Length.FromMillimeters(100),
            Counterbalance = Counterbalance.OfRange(Torque.Zero, Torque.FromNewtonMeters(100)),
            Friction = Torque.FromNewtonMeters(1),
            TiltUp = Angle.FromDegrees(-60),
            TiltDown = Angle.FromDegrees(60),
            RatedLoad = Mass.FromKilograms(8),
        };
        var envelope = BalanceEnvelope.OfCentreAndMass(head, Length.FromMillimeters(50),
            new LengthRange(Length.FromMillimeters(-100), Length.FromMillimeters(100)), Mass.FromKilograms(1),
            Mass.FromKilograms(12));

        var outline = Assert.Single(envelope.Contours(40, 40)).Points;

        Assert.Equal(-40, outline.Min(point => ((Length)point.First).Millimeters), 1e-6);
        Assert.Equal(60, outline.Max(point => ((Length)point.First).Millimeters), 1e-6);
        Assert.Equal(8, outline.Max(point => ((Mass)point.Second).Kilograms), 1e-6);
        Assert.Equal([null, BalanceEdge.TravelFrontEnd, BalanceEdge.TravelRearEnd, BalanceEdge.Load],
            outline.Select(point => point.Limit).Distinct().Order());
        // Both upper corners are there.
        Assert.Contains(outline, point => Math.Abs(((Length)point.First).Millimeters - 60) < 1e-6
            && Math.Abs(((Mass)point.Second).Kilograms - 8) < 1e-6);
        Assert.Contains(outline, point => Math.Abs(((Length)point.First).Millimeters + 40) < 1e-6
            && Math.Abs(((Mass)point.Second).Kilograms - 8) < 1e-6);
    }

    [Fact]
    public void A_value_of_the_wrong_kind_is_refused()
    {
        var envelope = Envelopes.Single();

        var error = Assert.Throws<ArgumentException>(() => envelope.EdgesAt(Mass.FromKilograms(1)));

        Assert.Contains("OffsetX is 1 kg; accepted: a value in m.", error.Message, StringComparison.Ordinal);
    }

    private static double Least(EnvelopeMargins margins) =>
        Enum.GetValues<BalanceEdge>().Min(limit => Of(margins, limit));

    [Fact]
    public void Where_it_stays_lies_within_where_it_stays_or_creeps() =>
        Gen.Select(RandomRigs.Builds, RandomRigs.Heads, Gen.Double[0.1, 3], Gen.Double[0.2, 2]).Holds(
        (build, head, drag, share, looked) =>
        {
            var part = build.Parts.Keys.Last();
            var offset = build.Parts[part].Placement.Offset.X;
            var mass = Mass.FromKilograms(Math.Max(0.05, build.Parts[part].Mass.Kilograms));
            var envelope = BalanceEnvelope.Of(build, head with { Drag = Torque.FromNewtonMeters(drag) },
                RigVariable.Offset(part, PlacementField.OffsetX,
                    new LengthRange(offset - Length.FromMillimeters(100), offset + Length.FromMillimeters(100))),
                    RigVariable.OfMass(part, mass * 0.1, mass * 3));
            EnvelopeMargins stays = envelope.At(offset, mass * share), creeps = envelope.WithCreep().At(offset, mass * share);
            // 2 °/s of the 10 °/s that drag is given for.
            Assert.Equal(0.2 * drag, (creeps.Tilt - stays.Tilt).NewtonMeters, 1e-9);
            if (!stays.Inside)
                return;
            Assert.True(creeps.Inside);
            looked.One();
        },
        cases: 1000, atLeast: 40);

    private static double Of(EnvelopeMargins margins, BalanceEdge limit) => limit switch
    {
        BalanceEdge.TravelFrontEnd => margins.TravelFront.Meters,
        BalanceEdge.TravelRearEnd => margins.TravelRear.Meters,
        BalanceEdge.Tilt => margins.Tilt.NewtonMeters,
        _ => margins.Load!.Value.Kilograms,
    };

    private static double Plain(IQuantity quantity) => quantity is Mass mass ? mass.Kilograms : ((Length)quantity).Meters;

    private static IQuantity Quantity(BalanceEnvelope envelope, double plain) =>
        envelope.Second.Field == PlacementField.Mass ? Mass.FromKilograms(plain) : Length.FromMeters(plain);
}
