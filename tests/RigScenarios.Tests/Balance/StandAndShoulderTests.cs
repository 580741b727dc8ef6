using CsCheck;
using RigScenarios.Balance;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Balance;

/// <summary>What is worked out backwards holds forwards.</summary>
public class StandAndShoulderTests
{
    private const int Runs = 200;

    private static readonly ShoulderSupport Support = new(Length.FromMeters(-0.1), Length.FromMeters(0.25));

    [Fact]
    public void The_ballast_gives_the_tip_angle_wanted() =>
        Gen.Select(RandomRigs.Builds, Gen.Double[0.01, 0.4], Gen.Double[0, 0.8]).Holds(
        (build, wanted, at, looked) =>
        {
            var plate = Length.FromMeters(0.05);
            var ballast = StandStability.Of(RandomRigs.Tripod, build.MassProperties, plate)
                .BallastFor(Length.FromMeters(at), Angle.FromRadians(wanted));
            if (ballast.Need != BallastNeed.Needed)
                return;
            looked.One();
            double kilograms = ballast.Mass!.Value.Kilograms, stand = RandomRigs.Tripod.Mass.Kilograms;
            var loaded = RandomRigs.Tripod with
            {
                Mass = Mass.FromKilograms(stand + kilograms),
                CentreHeight =
                    Length.FromMeters(((stand * RandomRigs.Tripod.CentreHeight.Meters) + (kilograms * at)) / (stand + kilograms)),
            };
            Assert.Equal(wanted, StandStability.Of(loaded, build.MassProperties, plate).TipAngle.Radians, 1e-9);
        },
        cases: Runs, atLeast: 80);

    [Fact]
    public void No_pan_is_worse_than_the_worst_and_one_is_as_bad() => RandomRigs.Builds.Holds(
        build =>
        {
            var stand = StandStability.Of(RandomRigs.Tripod, build.MassProperties, Length.Zero);
            var pans = Enumerable.Range(0, 721).Select(i => stand.AtPan(Angle.FromDegrees(i / 2.0)).EdgeDistance.Meters).Min();
            Assert.InRange(pans, stand.EdgeDistance.Meters - 1e-12, stand.EdgeDistance.Meters + 1e-4);
        },
        cases: Runs);

    [Fact]
    public void On_the_slope_of_its_tip_angle_it_tips() => RandomRigs.Builds.Holds(
        (build, looked) =>
        {
            var stand = StandStability.Of(RandomRigs.Tripod, build.MassProperties, build.MassProperties.Centre.X);
            if (stand.TipsOnLevel)
                return;
            looked.One();
            Assert.False(stand.OnSlope(0.999 * stand.TipAngle).Tips);
            Assert.True(stand.OnSlope(1.001 * stand.TipAngle).Tips);
        },
        cases: Runs, atLeast: 150);

    [Fact]
    public void No_tilt_tips_sooner_than_the_worst() => Gen.Select(RandomRigs.Builds, RandomRigs.Heads).Holds(
        (build, head) =>
        {
            var balance = HeadBalance.Of(head, build.MassProperties);
            var worst = StandStability.WorstTilt(RandomRigs.Tripod, balance).TipAngle.Radians;
            foreach (var tilt in Enumerable.Range(0, 101).Select(i => head.TiltUp + ((head.TiltDown - head.TiltUp) * i / 100.0)))
                Assert.True(StandStability.Tilted(RandomRigs.Tripod, balance, tilt).TipAngle.Radians >= worst - 1e-4);
            Assert.Equal(StandStability.Of(RandomRigs.Tripod, build.MassProperties, balance.CameraPlate).TipAngle.Radians,
                StandStability.Tilted(RandomRigs.Tripod, balance, Angle.Zero).TipAngle.Radians, 1e-12);
        },
        cases: 60);

    // The tilt axis as a thing of no weight that carries all others: the places are worked out by another way than the tilt's.
    [Fact]
    public void Tilted_it_tips_like_a_rig_that_was_built_in_that_place() =>
        Gen.Select(RandomRigs.Builds, RandomRigs.Heads, Gen.Double[0, 1]).Holds(
        (build, head, share) =>
        {
            var balance = HeadBalance.Of(head, build.MassProperties);
            var tilt = head.TiltUp + ((head.TiltDown - head.TiltUp) * share);
            var axis = new RigPoint(balance.CameraPlate, Length.Zero, -head.AxisDepth);
            var built = new PlacedBuild(new OrderedMap<PlacedPart>(
            [
                KeyValuePair.Create("axis", new PlacedPart
                {
                    Mass = Mass.FromKilograms(1e-12),
                    Placement = new() { Offset = axis, Orientation = new(Angle.Zero, tilt, Angle.Zero) },
                }),
                .. build.Parts.Select(part => part.Value.Placement.Carrier is not null ? part : KeyValuePair.Create(part.Key,
                    part.Value with
                    {
                        Placement = part.Value.Placement with
                        {
                            Carrier = "axis",
                            Offset = RigPoint.From(part.Value.Placement.Offset.Metres - axis.Metres),
                        },
                    })),
            ]));
            Assert.Equal(
                StandStability.Of(RandomRigs.Tripod, built.MassProperties, balance.CameraPlate).TipAngle.Radians,
                StandStability.Tilted(RandomRigs.Tripod, balance, tilt).TipAngle.Radians, 1e-9);
        },
        cases: 60);

    [Fact]
    public void At_the_edge_it_tips_by_itself()
    {
        var stand = OnTripod(0.2500001, Mass.Zero);

        Assert.True(stand.TipsOnLevel);
        Assert.Null(stand.TippingForce(Length.FromMeters(1)));
        Assert.Null(stand.TippingWind(Sail));
    }

    [Fact]
    public void A_slope_beyond_the_tip_angle_leaves_nothing_for_the_wind() =>
        Assert.Null(OnTripod(0, Mass.Zero).TippingWind(Sail, OnTripod(0, Mass.Zero).TipAngle + Angle.FromDegrees(0.02)));

    // With the ballast that it asks for, a gust just tips the tripod.
    [Theory]
    [InlineData(0)]
    [InlineData(4)]
    public void Ballast_against_a_gust_is_as_much_as_it_takes(double degrees)
    {
        var slope = Angle.FromDegrees(degrees);
        var gust = Speed.FromMetersPerSecond(24);
        var ballast = OnTripod(0, Mass.Zero).BallastAgainst(Length.FromMeters(0.5), Sail, gust, slope).Mass!.Value;
        Assert.Equal(24, OnTripod(0, ballast).TippingWind(Sail, slope)!.Value.MetersPerSecond, 1e-9);
    }

    [Fact]
    public void The_counterweight_frees_the_hands() => RandomRigs.Builds.Holds(
        (build, looked) =>
        {
            var place = Length.FromMeters(-0.3);
            var counterweight = ShoulderBalance.Of(Support, build.MassProperties).CounterweightAt(place);
            if (counterweight.Need != CounterweightNeed.Needed)
                return;
            looked.One();
            var loaded = build.With("counterweight",
                new PlacedPart { Mass = counterweight.Mass!.Value,
                Placement = Placement.At(new RigPoint(place, Length.Zero, Length.Zero)) });
            Assert.Equal(0, ShoulderBalance.Of(Support, loaded.MassProperties).HandLoad.Newtons, 1e-9);
        },
        cases: Runs, atLeast: 120);

    [Fact]
    public void Counterweights_that_help_nothing_say_why()
    {
        ShoulderBalance At(double x) => ShoulderBalance.Of(Support, new PlacedBuild(new OrderedMap<PlacedPart>(
            [new("rig", new PlacedPart { Mass = Mass.FromKilograms(5),
                Placement = Placement.At(RigPoint.FromMetres(x, 0, 0)) })])).MassProperties);

        Assert.Equal(CounterweightNeed.WrongSide, At(0.1).CounterweightAt(Length.FromMeters(0.2)).Need);
        Assert.Equal(CounterweightNeed.NoLever, At(0.1).CounterweightAt(Support.Pad).Need);
        Assert.Equal(CounterweightNeed.NoneNeeded, At(-0.1).CounterweightAt(Length.FromMeters(-0.3)).Need);
    }

    [Fact]
    public void Overlaps_and_places_outside_their_range_are_told()
    {
        PlacedPart Cube(double x) => new()
        {
            Mass = Mass.FromKilograms(1),
            Size = new BoxSize(Length.FromMillimeters(100), Length.FromMillimeters(100), Length.FromMillimeters(100)),
            Placement = Placement.OnRods("rods", Length.FromMillimeters(x),
                new LengthRange(Length.FromMillimeters(-50), Length.FromMillimeters(200))),
        };
        var build = new PlacedBuild(new OrderedMap<PlacedPart>([new("rods", new PlacedPart { Mass = Mass.FromKilograms(0.2) }),
            new("motor", Cube(0)), new("matte box", Cube(90)), new("battery", Cube(-300))]));

        var check = PlacementCheck.Of(build);

        var overlap = Assert.Single(check.Overlaps);
        Assert.Equal(("motor", "matte box"), (overlap.One, overlap.Other));
        Assert.Equal(10, overlap.Depth.Millimeters, 1e-9);
        Assert.Equal("battery", Assert.Single(check.OutsideRange));
        // A cube turned by 45° about the upright reaches 70.7 mm to the side: 120.7 mm away they just touch.
        PlacementCheck Turned(double x) =>
            PlacementCheck.Of(build.With("battery",
            Cube(-x) with { Placement = Placement.OnRods("rods",
            Length.FromMillimeters(-x)) with { Orientation = new(Angle.FromDegrees(45), Angle.Zero, Angle.Zero) } }));
        Assert.Equal(2, Turned(117).Overlaps.Count);
        Assert.Single(Turned(121).Overlaps);
    }

    private static Wind Sail { get; } =
        new(Area.FromSquareMeters(0.06), Length.FromMeters(1.6), 1.28, Density.FromKilogramsPerCubicMeter(1.225));

    /// <summary>12 kg on a tripod with feet at 0.5 m, 1.6 m up and some way off its axis; ballast 0.5 m up.</summary>
    private static StandStability OnTripod(double offset, Mass ballast) => StandStability.Of(
        new Stand { FootRadius = Length.FromMeters(0.5), Mass = ballast, CentreHeight = Length.FromMeters(0.5),
            CameraPlateHeight = Length.FromMeters(1.6) },
        new PlacedBuild(new OrderedMap<PlacedPart>([new("rig", new PlacedPart { Mass = Mass.FromKilograms(12),
            Placement = Placement.At(RigPoint.FromMetres(offset, 0, 0)) })])).MassProperties, Length.Zero);
}
