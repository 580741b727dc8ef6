using RigScenarios.Balance;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Balance;

/// <summary>From tripod to shoulder, by hand.</summary>
public class StanceChangeTests
{
    private static readonly PlacedBuild Tripod = Build(("body", null, 0), ("rods", "body", 0), ("battery plate", "rods", -150),
        ("battery", "battery plate", -20), ("matte box", "rods", 200), ("filter", "matte box", 10));

    private static readonly PlacedBuild Shoulder = Build(("body", null, 0), ("rods", "body", 0), ("battery plate", "rods", -250),
        ("battery", "battery plate", -20), ("pad", "rods", -100));

    [Fact]
    public void What_comes_off_goes_on_and_moves()
    {
        var change = StanceChange.Between(Tripod, Shoulder);

        Assert.Equal(["matte box", "filter"], change.Off);
        Assert.Equal(["pad"], change.On);
        var moved = Assert.Single(change.Moved);
        Assert.Equal("battery plate", moved.Key);
        Assert.Equal(-100, moved.Value.X.Millimeters, 1e-9);
    }

    [Fact]
    public void What_rides_along_is_no_step_of_its_own()
    {
        var change = StanceChange.Between(Tripod, Shoulder);

        Assert.Equal(3, change.Steps);
        Assert.Equal(20 + 30 + 45,
            change.Time(new StepTimes(Duration.FromSeconds(20), Duration.FromSeconds(30), Duration.FromSeconds(45))).Seconds,
            1e-9);
    }

    [Fact]
    public void There_and_back_is_the_reverse_and_no_change_is_none()
    {
        var (there, back) = (StanceChange.Between(Tripod, Shoulder), StanceChange.Between(Shoulder, Tripod));

        Assert.Equal(there.Off, back.On);
        Assert.Equal(there.Steps, back.Steps);
        Assert.Equal(0, StanceChange.Between(Tripod, Tripod).Steps);
        var head = new FluidHead
        {
            CameraPlateTravel = new LengthRange(Length.FromMeters(-1), Length.FromMeters(1)),
            AxisDepth = Length.FromMillimeters(100),
            Counterbalance = Counterbalance.OfSteps([Torque.Zero]),
            Friction = Torque.FromNewtonMeters(1),
            TiltUp = Angle.FromDegrees(-30),
            TiltDown = Angle.FromDegrees(30),
        };
        Assert.Equal((Shoulder.MassProperties.Centre.X - Tripod.MassProperties.Centre.X).Meters,
            there.CameraPlateShift(head).Meters, 1e-12);
    }

    private static PlacedBuild Build(params (string Name, string? On, double Millimetres)[] parts) =>
        new(new OrderedMap<PlacedPart>(parts.Select(part => KeyValuePair.Create(part.Name, new PlacedPart
        {
            Mass = Mass.FromKilograms(0.5),
            Placement = new Placement { Carrier = part.On, Offset = RigPoint.FromMillimetres(part.Millimetres, 0, 0) },
        }))));
}
