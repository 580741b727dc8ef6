using RigScenarios.Balance;
using RigScenarios.Builds;
using RigScenarios.Files;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Balance;

public class BuildInPlaceTests
{
    private static readonly OrderedMap<Part> Library = new(Repository.PartsFiles.SelectMany(file => PartsFile.Read(file)));

    [Fact]
    public void A_given_place_counts_from_what_carries_a_thing_and_from_the_face_it_is_held_at()
    {
        var rig = Rig(new()
        {
            ["body"] = new PlaceInUse(),
            ["lens"] = new PlaceInUse { On = "body", Forward = Length.FromMillimeters(40), Up = Length.FromMillimeters(50) },
        });
        // Body: 100 x 100 x 100 mm, held at its under side. Lens: 80 mm long, held at its rear.
        Assert.Equal((0, 0, 50), Centre(rig, "body"));
        Assert.Equal((80, 0, 50), Centre(rig, "lens"));
        Assert.Equal(["battery"], rig.PlacesAssumed);
    }

    [Fact]
    public void At_the_end_of_an_arm_distances_count_from_that_end()
    {
        var things = new Dictionary<string, Part>
        {
            ["battery"] = Box(PartKind.Battery, 1000, 0),
            ["arm"] = Box(PartKind.Arm, 100, 200),
            ["monitor"] = Box(PartKind.Monitor, 300, 0),
        };
        var build = new Build { Battery = new() { Item = "battery" }, Carries = ["arm", "monitor"], Places = new([
            new("battery", new PlaceInUse()),
            new("arm", new PlaceInUse { NoseDown = Angle.FromDegrees(-90) }),
            new("monitor", new PlaceInUse { On = "arm", AtEnd = true, Forward = Length.FromMillimeters(10) })]) };
        // Nose up by 90 degrees the arm points upward.
        Assert.Equal((0, 0, 210), Centre(BuildInPlace.Of(build, name => things.GetValueOrDefault(name)), "monitor"));
    }

    [Fact]
    public void Several_of_a_device_weigh_as_many_times()
    {
        var one = Rig([], new DeviceInUse());
        var three = Rig([], new DeviceInUse { Count = 3 });
        Assert.Equal(3 * one.Placed.Parts["body"].Mass.Grams, three.Placed.Parts["body"].Mass.Grams, 6);
    }

    [Fact]
    public void What_is_said_of_mass_and_place_replaces_the_usual_doubt()
    {
        var things = new Dictionary<string, Part> { ["battery"] = Box(PartKind.Battery, 1000,
            0) with { MassWithin = Mass.FromGrams(7), Centre = AxisOffsets.None } };
        var build = new Build { Battery = new() { Item = "battery" },
            Places = new([new("battery", new PlaceInUse { Within = Length.FromMillimeters(2) })]) };
        var rig = BuildInPlace.Of(build, name => things.GetValueOrDefault(name));
        Assert.Equal(7, rig.Placed.MassProperties.MassUncertainty.Grams, 9);
        Assert.Equal(2, rig.Placed.MassProperties.CentreUncertainty.X.Millimeters, 9);
        Assert.Empty(rig.Assumed);
        Assert.Empty(rig.Placed.MassProperties.CentresAssumed);
    }

    [Fact]
    public void The_centre_of_a_part_counts_from_the_middle_of_its_box()
    {
        var things = new Dictionary<string, Part> { ["battery"] = Box(PartKind.Battery, 1000,
            60) with { Centre = new(Length.FromMillimeters(5), Length.FromMillimeters(-2), Length.FromMillimeters(3)) } };
        var build = new Build { Battery = new() { Item = "battery" }, Places = new([new("battery", new PlaceInUse())]) };
        // Held at its front: the middle is 30 mm behind.
        Assert.Equal((-25, -2, 3), Centre(BuildInPlace.Of(build, name => things.GetValueOrDefault(name)), "battery"));
    }

    [Theory]
    [MemberData(nameof(Rigs))]
    public void Usual_places_make_a_rig_of_any_parts(string body, string lens, string battery, string rods)
    {
        var kit = new Dictionary<string, string>
        {
            ["camera"] = body, ["lens"] = lens, ["battery"] = battery, ["rods"] = rods, ["cage"] = "cage-full-baseplate",
            ["plate"] = "plate-guarded", ["monitor"] = "monitor-5in",
            ["arm"] = "arm-short", ["handle"] = "handle-top", ["support"] = "lens-support-15mm", ["focus"] = "lens-motor-light",
            ["pad"] = "shoulder-pad-soft",
        };
        var build = new Build
        {
            Battery = new() { Item = "battery" }, Plate = "plate",
            Devices = new([new("camera", new DeviceInUse()), new("monitor", new DeviceInUse()), new("focus", new DeviceInUse())]),
            Carries = ["cage", "lens", "rods", "arm", "handle", "support", "pad"],
        };
        var rig = BuildInPlace.Of(build, name => kit.TryGetValue(name, out var id) ? Library[id] : null);
        var check = PlacementCheck.Of(rig.Placed);
        Assert.Empty(check.OutsideRange);
        var parts = rig.Placed.MassProperties.Parts;
        Assert.True(parts["lens"].Centre.X > parts["camera"].Centre.X);
        Assert.True(parts["battery"].Centre.X < parts["camera"].Centre.X);
        Assert.True(parts["rods"].Centre.Z < parts["lens"].Centre.Z);
        Assert.True(parts["handle"].Centre.Z > parts["camera"].Centre.Z);
        Assert.True(parts["monitor"].Centre.Z > parts["handle"].MountingPoint.Z);
        // Big solid parts are not put into each other.
        Assert.DoesNotContain(check.Overlaps,
            overlap => new[] { "lens", "battery", "camera", "plate" }.Intersect([overlap.One, overlap.Other]).Count() == 2);
    }

    public static TheoryData<string, string, string, string> Rigs()
    {
        var rigs = new TheoryData<string, string, string, string>();
        foreach (var body in new[] { "compact-body-a", "compact-body-b", "box-body-d", "small-body-e" })
        {
            foreach (var lens in new[] { "stills-prime-24", "stills-long-zoom", "cinema-zoom-long" })
            {
                foreach (var rods in new[] { "rods-150", "rods-400-steel" })
                    rigs.Add(body, lens, "brick-190wh", rods);
            }
        }
        return rigs;
    }

    [Fact]
    public void A_thing_that_slides_can_be_moved_and_all_other_places_stay()
    {
        var rig = Rig([]);
        var moved = BuildInPlace.Of(rig.Moved("battery", Length.FromMillimeters(-200)), Parts);
        Assert.Equal(-200, moved.Placed.Parts["battery"].Placement.Offset.X.Millimeters, 9);
        Assert.Equal(Centre(rig, "lens"), Centre(moved, "lens"));
        Assert.Empty(moved.PlacesAssumed);
        Assert.Throws<ArgumentException>(() => rig.Moved("tripod", Length.Zero));
    }

    private static readonly Dictionary<string, Part> Things = new()
    {
        ["body"] = Box(PartKind.Body, 800, 100),
        ["lens"] = Box(PartKind.Lens, 500, 80),
        ["battery"] = Box(PartKind.Battery, 1000, 60),
    };

    private static Part? Parts(string name) => Things.GetValueOrDefault(name);

    private static BuildInPlace Rig(Dictionary<string, PlaceInUse> places, DeviceInUse? body = null) => BuildInPlace.Of(
        new Build { Battery = new() { Item = "battery" }, Devices = new([new("body", body ?? new DeviceInUse())]),
            Carries = ["lens"], Places = new(places) }, Parts);

    private static Part Box(PartKind kind, double grams, double millimetres) => new()
    {
        Kind = kind,
        Name = kind.ToString(),
        Mass = Mass.FromGrams(grams),
        Size = new(Length.FromMillimeters(millimetres), Length.FromMillimeters(millimetres / 2),
            Length.FromMillimeters(millimetres)),
    };

    private static (double X, double Y, double Z) Centre(BuildInPlace rig, string name)
    {
        var centre = rig.Placed.MassProperties.Parts[name].Centre;
        return (Math.Round(centre.X.Millimeters, 6), Math.Round(centre.Y.Millimeters, 6), Math.Round(centre.Z.Millimeters, 6));
    }
}
