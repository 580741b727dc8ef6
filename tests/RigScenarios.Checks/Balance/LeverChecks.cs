using RigScenarios.Balance;
using UnitsNet;

namespace RigScenarios.Checks.Balance;

/// <summary>
/// Things on two supports, as a rig on shoulder and hands: worked examples of OpenStax, <i>College Physics</i>, chapter 9, and
/// <i>University Physics</i>, vol. 1, chapter 12; figures only. Those books take g = 9.8 m/s².
/// </summary>
public class LeverChecks
{
    private const string College = "OpenStax, College Physics (sources of 2026), ";

    private const string University = "OpenStax, University Physics vol. 1 (sources of June 2026), ";

    private const double ToTheBooks = 9.8 / 9.80665;

    // Two supports, the load, what the second carries and what the first carries, N. A forearm, the elbow first: 2.50 kg at
    // 16 cm and a book of 4.00 kg at 38 cm on a muscle at 4 cm: 470 N up, 407 N down at the elbow. A pole of 5.00 kg, its centre
    // 0.600 m from the left hand, hands 0.900 m apart: 32.7 and 16.3 N. A wheelbarrow, 45.0 kg at 7.5 cm, hands at 1.02 m: 32.4
    // and 409 N.
    [Theory]
    [InlineData(0.04, 2.50, 0.16, 4.00, 0.38, 470, -407, 0.5)]
    [InlineData(0.900, 5.00, 0.600, 0, 0, 32.7, 16.3, 0.05)]
    [InlineData(1.02, 45.0, 0.075, 0, 0, 32.4, 409, 0.5)]
    [Source(SourceKind.Handbook, College + "9.6 \"Muscles exert bigger forces\", 9.4 pole held near its centre, 9.5 wheelbarrow; "
        + "read in the source")]
    public void Worked_levers(
        double second, double mass, double at, double other, double otherAt, double carried, double rest, double within)
    {
        var lever = On(0, second, (mass, at), (other, otherAt));

        Assert.Equal(carried, lever.HandLoad.Newtons * ToTheBooks, within);
        Assert.Equal(rest, lever.PadLoad.Newtons * ToTheBooks, within);
    }

    // 50 lb in the hand, 13.0 in from the elbow, the muscle at 1.5 in: 433.3 lb and, downwards, 383.3 lb.
    [Fact]
    [Source(SourceKind.Handbook, University + "12.2, \"Forces in the forearm\"; read in the source")]
    public void Weight_held_in_the_hand()
    {
        var elbow = ShoulderBalance.Of(new ShoulderSupport(Length.Zero, Length.FromInches(1.5)),
            PointMasses.Pounds((50, 13.0)).MassProperties);

        Assert.Equal(433.3, elbow.HandLoad.PoundsForce, 0.05);
        Assert.Equal(-383.3, elbow.PadLoad.PoundsForce, 0.05);
    }

    // 26.0 kg at 1.60 m on one side, 32.0 kg on the other, without and with a seesaw of 12.0 kg 0.160 m to the lighter side:
    // 1.30 m and 568 N; 1.36 m and 686 N. The search puts the heavier child where both balance.
    [Theory]
    [InlineData(0, 1.30, 568)]
    [InlineData(12.0, 1.36, 686)]
    [Source(SourceKind.Handbook,
        College + "9.2, \"She saw torques on a seesaw\" (printed in part in its problem; 568 N and 1.30 m from "
        + "memory) and problem 5 (read in the source)")]
    public void Two_children_on_a_seesaw(double seesaw, double metres, double newtons)
    {
        var children = PointMasses.Kilograms((32.0, 1), (26.0, -1.60), (seesaw, -0.160));

        var place = PlaceSearch.OffsetFor(children, "0", new(Length.Zero, Length.FromMeters(3)), Length.Zero);

        Assert.Equal(metres, place.OffsetX.Meters, 0.005);
        Assert.Equal(newtons, children.MassProperties.Mass.Kilograms * 9.8, 0.5);
    }

    // A horse and rider of 500 kg lean against a wall: the feet 0.35 m beside the centre's plumb line, the wall's force 1.2 m up:
    // 1.43e3 N. It is the force that tips a stand whose edge is that far away.
    [Fact]
    [Source(SourceKind.Handbook,
        College + "9.3, problem of a horse against a wall; read in the source, its figure by the text that "
        + "describes it")]
    public void Horse_against_a_wall()
    {
        var horse = StandStability.Of(
            new Stand { FootRadius = Length.FromMeters(0.7), Mass = Mass.Zero, CentreHeight = Length.Zero,
                CameraPlateHeight = Length.FromMeters(1.4) },
            PointMasses.Kilograms((500, 0)).MassProperties, Length.Zero);

        Assert.Equal(0.35, horse.EdgeDistance.Meters, 1e-12);
        Assert.Equal(1430, horse.TippingForce(Length.FromMeters(1.2))!.Value.Newtons * ToTheBooks, 5.0);
    }

    // A ladder of 5.0 m and 400.0 N leans at 53° against a smooth wall: 150.7 N at the wall, a friction of 0.377 at the floor. As
    // a rig it stands upright over the tilt axis, its centre 2.5 m up, and is tilted by 90° - 53°; the wall holds at 5.0 m.
    [Fact]
    [Source(SourceKind.Handbook, University + "12.2, \"A ladder resting against a wall\"; read in the source")]
    public void Ladder_against_a_wall()
    {
        var weight = Mass.FromKilograms(400.0 / 9.80665);
        var ladder = new PlacedBuild(new([new("ladder",
            new PlacedPart { Mass = weight, Placement = Placement.At(RigPoint.FromMetres(0, 0, 2.5)) })])).MassProperties;
        var upright = HeadBalance.At(PointMasses.Limits(-1, 1, 1000), ladder, Length.Zero, Torque.Zero);

        var moment = upright.Residual(Angle.FromDegrees(90 - 53));

        var wall = moment.NewtonMeters / (5.0 * Math.Sin(53 * Math.PI / 180));
        Assert.Equal(150.7, wall, 0.05);
        Assert.Equal(0.377, wall / 400.0, 0.0005);
        // With a counterbalance of its weight times its height it would stay at that tilt by itself.
        Assert.Equal(400.0 * 2.5, upright.CounterbalanceWanted.NewtonMeters, 1e-9);
        Assert.Equal(0, HeadBalance.At(PointMasses.Limits(-1, 1, 1000), ladder, Length.Zero, upright.CounterbalanceWanted)
            .Residual(Angle.FromDegrees(37)).NewtonMeters, 1e-9);
    }

    private static ShoulderBalance On(double first, double second, params (double, double)[] points) =>
        ShoulderBalance.Of(new ShoulderSupport(Length.FromMeters(first), Length.FromMeters(second)),
            PointMasses.Kilograms(points).MassProperties);
}
