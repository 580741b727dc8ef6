using CsCheck;
using RigScenarios.Balance;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Balance;

/// <summary>The head's answer holds against looking at every tilt and every step.</summary>
public class HeadBalanceTests
{
    private const int Runs = 200;

    [Fact]
    public void No_tilt_is_worse_than_the_worst() => Gen.Select(RandomRigs.Builds, RandomRigs.Heads).Sample(
        (build, head) =>
        {
            var balance = HeadBalance.Of(head, build.MassProperties);
            foreach (var tilt in Enumerable.Range(0, 201).Select(i => head.TiltUp + ((head.TiltDown - head.TiltUp) * i / 200.0)))
                Assert.True(Math.Abs(balance.Residual(tilt).NewtonMeters) <= balance.WorstResidual.NewtonMeters + 1e-10);
            Assert.Equal(balance.WorstResidual.NewtonMeters, Math.Abs(balance.Residual(balance.WorstTilt).NewtonMeters), 1e-10);
        },
        iter: Runs);

    [Fact]
    public void No_other_step_leaves_less() => Gen.Select(RandomRigs.Builds, RandomRigs.Heads).Sample(
        (build, head) =>
        {
            var balance = HeadBalance.Of(head, build.MassProperties);
            var others = head.Counterbalance.Steps.Count > 0
                ? head.Counterbalance.Steps
                : [.. Enumerable.Range(0, 50).Select(i => head.Counterbalance.Least + ((head.Counterbalance.Greatest - head.Counterbalance.Least) * i / 49.0))];
            Assert.All(others, k => Assert.True(
                HeadBalance.At(head, build.MassProperties, balance.Plate, k).WorstResidual.NewtonMeters >= balance.WorstResidual.NewtonMeters - 1e-10));
        },
        iter: Runs);

    [Fact]
    public void Taking_a_part_off_changes_the_moment_by_its_share() => Gen.Select(RandomRigs.Builds, RandomRigs.Heads).Sample(
        (build, head) =>
        {
            var part = build.Parts.Keys.Last();
            if (build.WithAllOn(part).Count == build.Parts.Count)
                return;
            var balance = HeadBalance.Of(head, build.MassProperties);
            var off = PartOff.Of(build, balance, part);
            var share = off.Off.Sum(one => build.MassProperties.ForeAftShare(one, balance.Plate).NewtonMeters);
            Assert.Equal(balance.MomentAtZero.NewtonMeters - share, off.AsItWas.MomentAtZero.NewtonMeters, 1e-9);
            Assert.Equal(off.DragMargin.NewtonMeters < 0, off.Caution is not null);
        },
        iter: Runs);

    [Fact]
    public void A_place_that_is_found_puts_the_centre_where_it_is_wanted() => Gen.Select(RandomRigs.Builds, Gen.Double[-0.1, 0.1]).Sample(
        (build, wanted) =>
        {
            var part = build.Parts.Keys.Last();
            var place = PlaceSearch.OffsetFor(build, part, new LengthRange(Length.FromMeters(-1), Length.FromMeters(1)), Length.FromMeters(wanted));
            var placement = build.Parts[part].Placement;
            var moved = build.With(part, build.Parts[part] with { Placement = placement with { Offset = placement.Offset with { X = place.OffsetX } } });
            Assert.Equal(place.CentreX.Meters, moved.MassProperties.Centre.X.Meters, 1e-10);
            Assert.Equal(wanted, (place.CentreX + place.Missing).Meters, 1e-10);
        },
        iter: Runs);

    [Fact]
    public void The_shared_plate_is_no_worse_than_any_other() => Gen.Select(RandomRigs.Builds, RandomRigs.Builds, RandomRigs.Heads).Sample(
        (one, other, head) =>
        {
            var shared = PlateSearch.For(head, new OrderedMap<PlacedBuild>([new("one", one), new("other", other)]));
            Assert.True(head.PlateTravel.Holds(shared.Plate));
            foreach (var plate in Enumerable.Range(0, 31).Select(i => head.PlateTravel.Least + ((head.PlateTravel.Greatest - head.PlateTravel.Least) * i / 30.0)))
            {
                var left = new[] { one, other }.Min(build => Steps(head, build).Max(k => HeadBalance.At(head, build.MassProperties, plate, k).TiltMargin.NewtonMeters));
                Assert.True(shared.TiltMargin.NewtonMeters >= left - (1e-3 * Math.Abs(left)) - 0.02, $"{shared.TiltMargin} for {left} at {plate}");
            }
        },
        iter: 50);

    [Fact]
    public void A_part_that_is_free_serves_several_builds_no_worse_than_where_it_is() => Gen.Select(RandomRigs.Builds, RandomRigs.Heads, Gen.Double[0, 0.2]).Sample(
        (build, head, stretch) =>
        {
            var part = build.Parts.Keys.Last();
            var builds = new OrderedMap<PlacedBuild>([new("a", build), new("b", build.With(part, build.Parts[part] with { Mass = build.Parts[part].Mass * 2 }))]);
            var now = build.Parts[part].Placement.Offset.X;
            var fixedThere = PlateSearch.WithFree(head, builds, part, new LengthRange(now, now));
            Assert.Equal(PlateSearch.For(head, builds).TiltMargin.NewtonMeters, fixedThere.Shared.TiltMargin.NewtonMeters, 1e-12);
            var free = PlateSearch.WithFree(head, builds, part, new LengthRange(now, now + Length.FromMeters(stretch)));
            Assert.True(free.Shared.TiltMargin.NewtonMeters >= fixedThere.Shared.TiltMargin.NewtonMeters - 1e-12);
            Assert.InRange(free.Offset.Meters, now.Meters - 1e-12, now.Meters + stretch + 1e-12);
        },
        iter: 20);

    [Fact]
    public void Battery_off_is_said_with_what_the_lock_holds()
    {
        var body = new PlacedPart { Mass = Mass.FromKilograms(3), Placement = Placement.At(RigPoint.FromMetres(0.05, 0, 0.05)) };
        var battery = new PlacedPart { Mass = Mass.FromKilograms(1), Placement = Placement.At(RigPoint.FromMetres(-0.15, 0, 0.05)) };
        var build = new PlacedBuild(new OrderedMap<PlacedPart>([new("body", body), new("battery", battery)]));
        var head = new FluidHead
        {
            PlateTravel = new LengthRange(Length.FromMillimeters(-50), Length.FromMillimeters(50)),
            AxisDepth = Length.FromMillimeters(100),
            Counterbalance = Counterbalance.OfRange(Torque.Zero, Torque.FromNewtonMeters(10)),
            Drag = Torque.FromNewtonMeters(0.5),
            TiltLock = Torque.FromNewtonMeters(8),
            TiltUp = Angle.FromDegrees(-60),
            TiltDown = Angle.FromDegrees(60),
        };

        var off = PartOff.Of(build, HeadBalance.Of(head, build.MassProperties), "battery");

        Assert.Equal(1.5 * 9.80665 / 10, off.AsItWas.MomentAtZero.NewtonMeters, 1e-12);
        Assert.Equal("Tighten the tilt lock before you take the battery off: level, it then pulls nose down with 1.5 N·m; the drag holds 0.5 N·m. Keep a hand on the rig all the same.", off.Caution);
        Assert.Null(off.AsItWas.LoadMargin);
    }

    private static IReadOnlyList<Torque> Steps(FluidHead head, PlacedBuild build) => head.Counterbalance.Steps.Count > 0
        ? head.Counterbalance.Steps
        : [HeadBalance.Of(head, build.MassProperties).Counterbalance];
}
