using RigScenarios.Balance;
using RigScenarios.Builds;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Balance;

/// <summary>What happens to a balanced rig, on one whose moments can be worked out on paper.</summary>
public class HeadCaseTests
{
    private const double Gravity = 9.80665;

    // Each thing is a cube, its centre in its middle. Body (800 g) around x = 0, lens (500 g, 80 mm) with its middle at 90 mm,
    // battery (1 kg) with its middle at -110 mm, monitor (300 g) at the end of an arm of no weight, 200 mm ahead of x = 0.
    private static readonly Dictionary<string, Part> Things = new()
    {
        ["body"] = Box(PartKind.Body, 800, 100),
        ["lens"] = Box(PartKind.Lens, 500, 80) with { CentreMoves = Length.FromMillimeters(30) },
        ["battery"] = Box(PartKind.Battery, 1000, 60) with { HeldAt = MountingFace.Middle },
        ["arm"] = Box(PartKind.Arm, 1e-9, 200),
        ["monitor"] = Box(PartKind.Monitor, 300, 20) with { HeldAt = MountingFace.Middle },
    };

    private static readonly BuildInPlace Rig = BuildInPlace.Of(
        new Build
        {
            Battery = new() { Item = "battery" },
            Devices = new([new("body", new DeviceInUse()), new("monitor", new DeviceInUse())]),
            Carries = ["lens", "arm"],
            Places = new(
            [
                new("body", new PlaceInUse()),
                new("lens", new PlaceInUse
                {
                    On = "body",
                    Forward = Length.FromMillimeters(50),
                    Up = Length.FromMillimeters(50),
                }),
                new("battery", new PlaceInUse { Forward = Length.FromMillimeters(-110), Up = Length.FromMillimeters(50) }),
                new("arm", new PlaceInUse { Up = Length.FromMillimeters(100) }),
                new("monitor", new PlaceInUse { On = "arm", AtEnd = true }),
            ]),
        },
        name => Things.GetValueOrDefault(name));

    // Over the camera's own tripod socket, no counterbalance.
    private const double Level = Gravity * ((0.5 * 0.09) - (1 * 0.11) + (0.3 * 0.2));

    [Fact]
    public void Without_the_battery_the_nose_falls_and_the_lock_must_be_tight()
    {
        var off = Case("battery", friction: 0.5);
        Assert.True(off.IsOff);
        Assert.Equal(Gravity * ((0.5 * 0.09) + (0.3 * 0.2)), off.Level.NewtonMeters, 1e-6);
        Assert.True(off.Margin < Torque.Zero);
        Assert.True(off.NeedsLock);
        Assert.False(Case("battery", friction: 5).NeedsLock);
    }

    [Fact]
    public void What_stays_on_needs_no_lock()
    {
        var zoomed = Case("lens", friction: 0.01, off: false);
        Assert.True(zoomed.Margin < Torque.Zero);
        Assert.False(zoomed.NeedsLock);
    }

    [Fact]
    public void A_zoom_moves_the_weight_of_the_lens_forward() =>
        Assert.Equal(Level + (Gravity * 0.5 * 0.03), Case("lens", friction: 1, off: false).Level.NewtonMeters, 1e-6);

    [Fact]
    public void A_monitor_that_is_swung_to_the_left_rolls_the_rig_to_the_left()
    {
        var swung = Case("arm", friction: 1);
        Assert.Equal(Gravity * 0.3 * 0.2, swung.Roll.NewtonMeters, 1e-6);
        Assert.Equal(Level - (Gravity * 0.3 * 0.2), swung.Level.NewtonMeters, 1e-6);
    }

    [Fact]
    public void A_hand_on_the_focus_pushes_the_nose_down()
    {
        var hand = HeadCase.Of(Rig, Balance(1)).Single(one => one.Hand.NewtonMeters != 0);
        Assert.Equal(HeadInUse.UsualFocusHand.Newtons * 0.09, hand.Hand.NewtonMeters, 1e-9);
        Assert.Equal(Level + hand.Hand.NewtonMeters, hand.Level.NewtonMeters, 1e-6);
        Assert.Equal(Math.Abs(hand.Level.NewtonMeters), hand.Worst.NewtonMeters, 1e-12);
    }

    private static HeadCase Case(string part, double friction, bool off = true) =>
        HeadCase.Of(Rig, Balance(friction)).First(one => one.Part == part && one.Hand.NewtonMeters == 0
            && (part == "arm" || one.IsOff == off));

    private static HeadBalance Balance(double friction)
    {
        var head = new FluidHead
        {
            CameraPlateTravel = new LengthRange(Length.FromMillimeters(-50), Length.FromMillimeters(50)),
            AxisDepth = Length.FromMillimeters(80),
            Counterbalance = Counterbalance.OfSteps([Torque.Zero]),
            Friction = Torque.FromNewtonMeters(friction),
            TiltLock = Torque.FromNewtonMeters(10),
            TiltUp = Angle.FromDegrees(-30),
            TiltDown = Angle.FromDegrees(30),
            RatedLoad = Mass.FromKilograms(10),
        };
        return HeadBalance.At(head, Rig.Placed.MassProperties, Length.Zero, Torque.Zero);
    }

    private static Part Box(PartKind kind, double grams, double millimetres)
    {
        var edge = Length.FromMillimeters(millimetres);
        return new() { Kind = kind, Name = kind.ToString(), Mass = Mass.FromGrams(grams), Size = new(edge, edge, edge) };
    }
}
