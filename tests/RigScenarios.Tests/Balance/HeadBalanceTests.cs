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
    public void No_tilt_is_worse_than_the_worst() => Gen.Select(RandomRigs.Builds, RandomRigs.Heads).Holds(
        (build, head) =>
        {
            var balance = HeadBalance.Of(head, build.MassProperties);
            foreach (var tilt in Enumerable.Range(0, 201).Select(i => head.TiltUp + ((head.TiltDown - head.TiltUp) * i / 200.0)))
                Assert.True(Math.Abs(balance.Residual(tilt).NewtonMeters) <= balance.WorstResidual.NewtonMeters + 1e-10);
            Assert.Equal(balance.WorstResidual.NewtonMeters, Math.Abs(balance.Residual(balance.WorstTilt).NewtonMeters), 1e-10);
        },
        cases: Runs);

    [Fact]
    public void No_other_step_leaves_less() => Gen.Select(RandomRigs.Builds, RandomRigs.Heads).Holds(
        (build, head) =>
        {
            var balance = HeadBalance.Of(head, build.MassProperties);
            var others = head.Counterbalance.Steps.Count > 0
                ? head.Counterbalance.Steps
                : [.. Enumerable.Range(0, 50).Select(i => head.Counterbalance.Least
                    + ((head.Counterbalance.Greatest - head.Counterbalance.Least) * i / 49.0))];
            Each.Of(others, k => Assert.True(
                HeadBalance.At(head, build.MassProperties, balance.CameraPlate,
                    k).WorstResidual.NewtonMeters >= balance.WorstResidual.NewtonMeters - 1e-10));
        },
        cases: Runs);

    [Fact]
    public void Taking_a_part_off_changes_the_moment_by_its_share() => Gen.Select(RandomRigs.Builds, RandomRigs.Heads).Holds(
        (build, head, looked) =>
        {
            var part = build.Parts.Keys.Last();
            if (build.WithAllOn(part).Count == build.Parts.Count)
                return;
            looked.One();
            var balance = HeadBalance.Of(head, build.MassProperties);
            var off = PartOff.Of(build, balance, part);
            var share = off.Off.Sum(one => build.MassProperties.ForeAftShare(one, balance.CameraPlate).NewtonMeters);
            Assert.Equal(balance.MomentAtZero.NewtonMeters - share, off.AsItWas.MomentAtZero.NewtonMeters, 1e-9);
            Assert.Equal(off.FrictionMargin.NewtonMeters, off.AsItWas.TiltMargin.NewtonMeters, 1e-12);
        },
        cases: Runs, atLeast: 150);

    [Fact]
    public void A_place_that_is_found_puts_the_centre_where_it_is_wanted() =>
        Gen.Select(RandomRigs.Builds, Gen.Double[-0.1, 0.1]).Holds(
        (build, wanted) =>
        {
            var part = build.Parts.Keys.Last();
            var place = PlaceSearch.OffsetFor(build, part, new LengthRange(Length.FromMeters(-1), Length.FromMeters(1)),
                Length.FromMeters(wanted));
            var placement = build.Parts[part].Placement;
            var moved = build.With(part,
                build.Parts[part] with { Placement = placement with { Offset = placement.Offset with { X = place.OffsetX } } });
            Assert.Equal(place.CentreX.Meters, moved.MassProperties.Centre.X.Meters, 1e-10);
            Assert.Equal(wanted, (place.CentreX + place.Missing).Meters, 1e-10);
        },
        cases: Runs);

    [Fact]
    public void The_shared_plate_is_no_worse_than_any_other() =>
        Gen.Select(RandomRigs.Builds, RandomRigs.Builds, RandomRigs.Heads).Holds(
        (one, other, head) =>
        {
            var shared = CameraPlateSearch.For(head, new OrderedMap<PlacedBuild>([new("one", one), new("other", other)]));
            Assert.True(head.CameraPlateTravel.Holds(shared.CameraPlate));
            foreach (var plate in Enumerable.Range(0, 31)
                .Select(i => head.CameraPlateTravel.Least
                + ((head.CameraPlateTravel.Greatest - head.CameraPlateTravel.Least) * i / 30.0)))
            {
                var left = new[] { one, other }.Min(build => Steps(head, build)
                    .Max(k => HeadBalance.At(head, build.MassProperties, plate, k).TiltMargin.NewtonMeters));
                Assert.True(shared.TiltMargin.NewtonMeters >= left - (1e-3 * Math.Abs(left)) - 0.02,
                    $"{shared.TiltMargin} for {left} at {plate}");
            }
        },
        cases: 50);

    [Fact]
    public void A_part_that_is_free_serves_several_builds_no_worse_than_where_it_is() =>
        Gen.Select(RandomRigs.Builds, RandomRigs.Heads, Gen.Double[0, 0.2]).Holds(
        (build, head, stretch) =>
        {
            var part = build.Parts.Keys.Last();
            var builds = new OrderedMap<PlacedBuild>([new("a", build),
                new("b", build.With(part, build.Parts[part] with { Mass = build.Parts[part].Mass * 2 }))]);
            var now = build.Parts[part].Placement.Offset.X;
            var fixedThere = CameraPlateSearch.WithFree(head, builds, part, new LengthRange(now, now));
            Assert.Equal(CameraPlateSearch.For(head, builds).TiltMargin.NewtonMeters,
                fixedThere.Shared.TiltMargin.NewtonMeters, 1e-12);
            var free = CameraPlateSearch.WithFree(head, builds, part, new LengthRange(now, now + Length.FromMeters(stretch)));
            Assert.True(free.Shared.TiltMargin.NewtonMeters >= fixedThere.Shared.TiltMargin.NewtonMeters - 1e-12);
            Assert.InRange(free.Offset.Meters, now.Meters - 1e-12, now.Meters + stretch + 1e-12);
        },
        cases: 20);

    [Fact]
    public void What_it_does_when_it_is_let_go_follows_from_the_speed_at_which_drag_takes_up_the_rest()
    {
        var seen = Enum.GetValues<LetGo>().ToDictionary(what => what, _ => new LookedAt());
        Gen.Select(RandomRigs.Builds, RandomRigs.Heads, Gen.Double[0, 200]).Holds(
        (build, some, drag) =>
        {
            var head = some with { Drag = Torque.FromNewtonMeters(drag) };
            var balance = HeadBalance.Of(head, build.MassProperties);
            // At a steady speed the drag takes up what friction does not, in proportion to the speed.
            var left = Math.Max(0, balance.WorstResidual.NewtonMeters - head.Friction.NewtonMeters);
            var speed = left == 0 ? 0 : drag == 0 ? double.PositiveInfinity : 10 * left / drag;
            Assert.Equal(speed == 0 ? LetGo.Stays : speed <= 2 * (1 + 1e-12) ? LetGo.Creeps : LetGo.Falls, balance.WhenLetGo);
            if (balance.CreepSpeed is { } creep)
                Assert.Equal(speed, creep.DegreesPerSecond, 1e-9 * (1 + speed));
            Assert.Equal(balance.WhenLetGo != LetGo.Falls, balance.CreepMargin.NewtonMeters >= 0);
            Assert.Equal(balance.WhenLetGo == LetGo.Stays, balance.TiltMargin.NewtonMeters >= 0);
            seen[balance.WhenLetGo].One();
        },
        cases: 2 * Runs);
        Each.Of(seen, what => what.Value.AtLeast(50), atLeast: 3);
    }

    [Fact]
    public void Drag_that_nobody_knows_slows_nothing()
    {
        var head = Head with { Friction = Torque.FromNewtonMeters(0.1) };
        var rig = Rig.MassProperties;
        var pulled = HeadBalance.At(head, rig, rig.Centre.X - Length.FromMillimeters(5),
            HeadBalance.Of(head, rig).Counterbalance);
        // 4 kg g 5 mm = 0.196 N·m at tilt 0.
        Assert.Equal((LetGo.Falls, null), (pulled.WhenLetGo, pulled.CreepSpeed));
        var slow = HeadBalance.At(head with { Drag = Torque.FromNewtonMeters(2) }, rig, pulled.CameraPlate,
            pulled.Counterbalance);
        Assert.Equal(LetGo.Creeps, slow.WhenLetGo);
        Assert.Equal(10 * ((4 * 9.80665 * 0.005) - 0.1) / 2, slow.CreepSpeed!.Value.DegreesPerSecond, 1e-9);
    }

    private static PlacedBuild Rig { get; } = new(new OrderedMap<PlacedPart>(
    [
        new("body",
            new PlacedPart { Mass = Mass.FromKilograms(3), Placement = Placement.At(RigPoint.FromMetres(0.05, 0, 0.05)) }),
        new("battery",
            new PlacedPart { Mass = Mass.FromKilograms(1), Placement = Placement.At(RigPoint.FromMetres(-0.15, 0, 0.05)) }),
    ]));

    private static FluidHead Head { get; } = new()
    {
        CameraPlateTravel = new LengthRange(Length.FromMillimeters(-50), Length.FromMillimeters(50)),
        AxisDepth = Length.FromMillimeters(100),
        Counterbalance = Counterbalance.OfRange(Torque.Zero, Torque.FromNewtonMeters(10)),
        Friction = Torque.FromNewtonMeters(0.5),
        TiltLock = Torque.FromNewtonMeters(8),
        TiltUp = Angle.FromDegrees(-60),
        TiltDown = Angle.FromDegrees(60),
    };

    [Fact]
    public void Battery_off_is_held_against_friction_and_lock()
    {
        var off = PartOff.Of(Rig, HeadBalance.Of(Head, Rig.MassProperties), "battery");

        Assert.Equal(1.5 * 9.80665 / 10, off.AsItWas.MomentAtZero.NewtonMeters, 1e-12);
        Assert.Equal(0.5 - (1.5 * 9.80665 / 10), off.FrictionMarginAtZero.NewtonMeters, 1e-12);
        Assert.Equal(8 - (1.5 * 9.80665 / 10), off.LockMarginAtZero!.Value.NewtonMeters, 1e-12);
        Assert.Null(off.AsItWas.LoadMargin);
    }

    private static IReadOnlyList<Torque> Steps(FluidHead head, PlacedBuild build) => head.Counterbalance.Steps.Count > 0
        ? head.Counterbalance.Steps
        : [HeadBalance.Of(head, build.MassProperties).Counterbalance];
}
