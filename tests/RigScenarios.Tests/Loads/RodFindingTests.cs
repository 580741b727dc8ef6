using RigScenarios.Balance;
using RigScenarios.Builds;
using RigScenarios.Loads;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Loads;

/// <summary>
/// Rods of 500 mm (15 mm, bore 12 mm, aluminium) 40 mm ahead on a body of 160 mm, worked by hand: the front end is free for
/// 210 mm, the rear one for 130 mm. What lies over the body bends neither end; what is said to sit past an end acts at it.
/// </summary>
public class RodFindingTests
{
    private const double Bending = 68.9e9 * Math.PI / 64 * ((0.015 * 0.015 * 0.015 * 0.015) - (0.012 * 0.012 * 0.012 * 0.012));

    private static readonly BuildInPlace Rig = Of(
        ("body", Body(PartKind.Body, 1) with { Size = Box(160, 100) }, null, 0),
        ("rods", Body(PartKind.Rods, 0) with
        {
            Size = Box(500, 60),
            Rods = new(Length.FromMillimeters(15), Length.FromMillimeters(12), RodMaterialKind.Aluminium),
        }, "body", 40),
        ("near", Body(PartKind.FollowFocus, 1), "rods", 100),
        ("on near", Body(PartKind.FollowFocus, 0.2), "near", 0),
        ("past the end", Body(PartKind.FollowFocus, 0.5), "rods", 300),
        ("over the body", Body(PartKind.FollowFocus, 2), "rods", 20),
        ("behind", Body(PartKind.FollowFocus, 0.8), "rods", -200));

    [Fact]
    public void Each_end_has_its_own_free_length_and_its_own_load()
    {
        var ends = RodFinding.All(Rig, 1.5);

        Assert.Equal([true, false], ends.Select(end => end.InFront));
        Assert.Equal([210.0, 130.0], ends.Select(end => Math.Round(end.FreeLength.Millimeters, 9)));
        Assert.Equal(1.5 * 9.80665 * (1 + 0.2 + 0.5), ends[0].Load.Newtons, 1e-9);
        Assert.Equal(1.5 * 9.80665 * 0.8, ends[1].Load.Newtons, 1e-9);
    }

    [Fact]
    public void The_bends_of_single_loads_add_up()
    {
        (double Newtons, double Metres)[] front = [(9.80665 * 1.2, 0.06), (9.80665 * 0.5, 0.21)];

        var end = RodFinding.All(Rig, 1)[0];

        // Two rods share each load. Cantilever: F·a²·(3L - a)/(6EI) at the end, F·a²/(2EI) there and on, F·a·r/I at the clamp.
        Assert.Equal(front.Sum(load => load.Newtons / 2 * load.Metres * load.Metres * ((3 * 0.21) - load.Metres) / (6 * Bending)),
            end.EndDeflection.Meters, 1e-12);
        Assert.Equal(front.Sum(load => load.Newtons / 2 * load.Metres * load.Metres / (2 * Bending)), end.Slope.Radians, 1e-12);
        var stress = front.Sum(load => load.Newtons / 2 * load.Metres * 0.0075 * 68.9e9 / Bending);
        Assert.Equal(stress, end.Stress.Pascals, 1e-9 * stress);
        Assert.Equal(end.Material.YieldStrength!.Value.Pascals - stress, end.StressMargin!.Value.Pascals, 1e-9 * stress);
    }

    [Fact]
    public void Rods_that_carry_nothing_or_end_under_their_body_say_nothing()
    {
        var rods = Rig.Things["rods"];
        var stubs = rods with { Size = Box(150, 60) };

        Assert.Empty(RodFinding.All(Of(("body", Rig.Things["body"], null, 0), ("rods", rods, "body", 0))));
        Assert.Empty(RodFinding.All(Of(("body", Rig.Things["body"], null, 0), ("rods", stubs, "body", 0),
            ("load", Rig.Things["near"], "rods", 100))));
    }

    private static BoxSize Box(double length, double height) => new(Length.FromMillimeters(length),
        Length.FromMillimeters(height), Length.FromMillimeters(height));

    private static Part Body(PartKind kind, double kilograms) =>
        new() { Kind = kind, Mass = Mass.FromKilograms(kilograms), HeldAt = MountingFace.Middle };

    private static BuildInPlace Of(params (string Name, Part Part, string? On, double Millimetres)[] things) => BuildInPlace.Of(
        new Build
        {
            Carries = [.. things.Select(thing => thing.Name)],
            Places = new(things.Select(thing => KeyValuePair.Create(thing.Name,
                new PlaceInUse { On = thing.On, Forward = Length.FromMillimeters(thing.Millimetres) }))),
        },
        name => things.FirstOrDefault(thing => thing.Name == name).Part);
}
