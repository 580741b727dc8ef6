using CsCheck;
using RigScenarios.Balance;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Balance;

/// <summary>What must not change the answer doesn't, whatever the rig.</summary>
public class MassPropertyTests
{
    private const int Runs = 200;

    [Fact]
    public void Moving_the_origin_moves_the_centre_and_nothing_else() => RandomRigs.Builds.Holds(
        build =>
        {
            var way = RigPoint.FromMetres(0.31, -0.17, 0.05);
            var moved = Changed(build, part => part.Placement.Carrier is null
                ? part with { Placement = part.Placement with { Offset = Sum(part.Placement.Offset, way) } } : part);

            RandomRigs.Near(Sum(build.MassProperties.Centre, way), moved.MassProperties.Centre);
            RandomRigs.Near(RandomRigs.Elements(build.MassProperties.Inertia), moved.MassProperties.Inertia);
            RandomRigs.Near(build.MassProperties.CentreUncertainty, moved.MassProperties.CentreUncertainty);
        },
        cases: Runs);

    [Fact]
    public void Mirroring_left_and_right_turns_only_what_is_sideways() => RandomRigs.Builds.Holds(
        build =>
        {
            var mirrored = Changed(build, part => part with
            {
                BoxMiddle = Mirrored(part.BoxMiddle),
                Placement = part.Placement with
                {
                    Offset = Mirrored(part.Placement.Offset),
                    Orientation = new Orientation(-part.Placement.Orientation.Yaw, part.Placement.Orientation.Pitch,
                        -part.Placement.Orientation.Roll),
                },
            });
            var (one, other) = (build.MassProperties, mirrored.MassProperties);

            RandomRigs.Near(Mirrored(one.Centre), other.Centre);
            var e = RandomRigs.Elements(one.Inertia);
            RandomRigs.Near([e[0], e[1], e[2], -e[3], e[4], -e[5]], other.Inertia);
            var plate = Length.FromMeters(0.02);
            Assert.Equal(StandStability.Of(RandomRigs.Tripod, one, plate).EdgeDistance.Meters,
                StandStability.Of(RandomRigs.Tripod, other, plate).EdgeDistance.Meters, 1e-12);
        },
        cases: Runs);

    [Fact]
    public void Splitting_a_part_in_two_changes_nothing() => RandomRigs.Builds.Holds(
        build =>
        {
            var (name, part) = build.Parts.First();
            var size = part.Size;
            PlacedPart Half(int side) => part with
            {
                Mass = part.Mass / 2,
                Size = size with { Length = size.Length / 2 },
                BoxMiddle = Sum(part.BoxMiddle, new RigPoint(side * size.Length / 4, Length.Zero, Length.Zero)),
            };
            var split = build.With(name, Half(-1)).With("other half", Half(1));

            Assert.Equal(build.MassProperties.Mass.Kilograms, split.MassProperties.Mass.Kilograms, 1e-12);
            RandomRigs.Near(build.MassProperties.Centre, split.MassProperties.Centre);
            RandomRigs.Near(RandomRigs.Elements(build.MassProperties.Inertia), split.MassProperties.Inertia);
        },
        cases: Runs);

    [Fact]
    public void The_order_of_the_parts_does_not_matter() => RandomRigs.Builds.Holds(
        build =>
        {
            var turned = new PlacedBuild(new OrderedMap<PlacedPart>(build.Parts.Reverse()));

            RandomRigs.Near(build.MassProperties.Centre, turned.MassProperties.Centre);
            RandomRigs.Near(RandomRigs.Elements(build.MassProperties.Inertia), turned.MassProperties.Inertia);
            Assert.Equal(build.Parts.Keys.Reverse(), turned.MassProperties.Parts.Keys);
        },
        cases: Runs);

    // Eight points of mass at ±1/√12 of the edges have the same moments up to the second as the box: another way to the same
    // tensor.
    [Fact]
    public void The_tensor_is_that_of_eight_points_in_each_box() => RandomRigs.Builds.Holds(
        build =>
        {
            double[] signs = [-1, 1];
            var points = build.Parts.Values.SelectMany((part, i) => signs.SelectMany(a => signs.SelectMany(b => signs.Select(c =>
            {
                var at = Sum(part.BoxMiddle, new RigPoint(a * part.Size.Length / Math.Sqrt(12),
                    b * part.Size.Width / Math.Sqrt(12), c * part.Size.Height / Math.Sqrt(12)));
                return KeyValuePair.Create($"{i} {a} {b} {c}", new PlacedPart
                {
                    Mass = part.Mass / 8,
                    BoxMiddle = at,
                    Placement = new Placement { Carrier = build.Parts.Keys.ElementAt(i) },
                });
            }))));
            var hollow = build.Parts.Select(part => KeyValuePair.Create(part.Key, part.Value with { Mass = Mass.Zero }));
            var cloud = new PlacedBuild(new OrderedMap<PlacedPart>(hollow.Concat(points))).MassProperties;

            RandomRigs.Near(build.MassProperties.Centre, cloud.Centre);
            RandomRigs.Near(RandomRigs.Elements(build.MassProperties.Inertia), cloud.Inertia);
        },
        cases: Runs);

    [Fact]
    public void Uncertainty_is_the_root_sum_of_squares_of_what_each_input_changes() => RandomRigs.Builds.Holds(
        build =>
        {
            const double step = 1e-4;
            double sum = 0;
            foreach (var (name, part) in build.Parts)
            {
                double At(double factor) => build.With(name,
                    part with { Mass = part.Mass + (factor * part.MassUncertainty) }).MassProperties.Centre.X.Meters;
                sum += Math.Pow((At(step) - At(-step)) / (2 * step), 2);
                sum += Math.Pow(part.CentreUncertainty.X.Meters * (part.Mass / build.MassProperties.Mass), 2);
            }

            Assert.Equal(Math.Sqrt(sum), build.MassProperties.CentreUncertainty.X.Meters, 1e-8);
        },
        cases: Runs);

    [Fact]
    public void Shares_of_the_moment_about_the_centre_cancel() => RandomRigs.Builds.Holds(
        build =>
        {
            var shares = build.MassProperties.ForeAftShares(build.MassProperties.Centre.X);
            Assert.Equal(0, shares.Sum(share => share.Value.NewtonMeters), 1e-10);
            Assert.Equal(shares.OrderByDescending(share => Math.Abs(share.Value.NewtonMeters)), shares);
        },
        cases: Runs);

    [Fact]
    public void Moving_a_part_moves_what_hangs_on_it()
    {
        var build = new PlacedBuild(new OrderedMap<PlacedPart>(
        [
            new("arm",
                new PlacedPart { Mass = Mass.FromKilograms(1),
                Placement = Placement.At(RigPoint.Origin) with { Orientation = new(Angle.FromDegrees(90), Angle.Zero,
                Angle.Zero) } }),
            new("monitor", new PlacedPart { Mass = Mass.FromKilograms(1),
                Placement = Placement.AtEndOf("arm", Length.FromMillimeters(200)) }),
        ]));

        // The arm points to the left.
        RandomRigs.Near(RigPoint.FromMillimetres(0, 100, 0), build.MassProperties.Centre);
        Assert.Equal(["arm", "monitor"], build.MassProperties.CentresAssumed);
    }

    [Fact]
    public void All_that_is_wrong_with_a_tree_is_said_at_once()
    {
        PlacedPart On(string? carrier) => new() { Mass = Mass.FromKilograms(1), Placement = new Placement { Carrier = carrier } };

        var error = Assert.Throws<ArgumentException>(() =>
            new PlacedBuild(new OrderedMap<PlacedPart>([new("a", On("b")), new("b", On("a")), new("c", On("cage")),
            new("body", On(null))])));

        Assert.Contains("\"a\" hangs on itself", error.Message, StringComparison.Ordinal);
        Assert.Contains("\"c\" sits on \"cage\", which is not in the build", error.Message, StringComparison.Ordinal);
    }

    private static PlacedBuild Changed(PlacedBuild build, Func<PlacedPart, PlacedPart> change) =>
        new(new OrderedMap<PlacedPart>(build.Parts.Select(part => KeyValuePair.Create(part.Key, change(part.Value)))));

    private static RigPoint Sum(RigPoint a, RigPoint b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    private static RigPoint Mirrored(RigPoint a) => a with { Y = -a.Y };
}
