using RigScenarios.Loads;
using RigScenarios.Parts;
using UnitsNet;
using static RigScenarios.Checks.Loads.BuildsOfBodies;

namespace RigScenarios.Checks.Loads;

/// <summary>
/// What the joints of a whole build carry, against worked examples of textbooks, at rest (a handling factor of 1); figures only.
/// </summary>
public class JointFindingChecks
{
    private const string University = "OpenStax, University Physics vol. 1 (sources of June 2026), ";

    private const string College = "OpenStax, College Physics (sources of 2026), ";

    // A strut of 4.0 m and 600 N with a sign of 400 N at its tip, held by a cable from the tip to a point of the wall 3.0 m above
    // the hinge: 1167 N in the cable, 980 N at the hinge, 18° up. The cable's lever about the hinge is 4.0 · 3/5 = 2.4 m.
    [Fact]
    [Source(SourceKind.Handbook, University + "12.2, check your understanding, strut with a sign; read in the source")]
    public void Strut_with_a_sign()
    {
        var rig = Of(
            ("strut", Body(PartKind.Arm, Weighing(600), Length.FromMeters(2.0)), null, Length.Zero),
            ("sign", Body(PartKind.Monitor, Weighing(400), Length.Zero), "strut", Length.FromMeters(4.0)));

        var hinge = JointFinding.All(rig, 1).Single(joint => joint.Load.Part == "strut");

        var cable = ScrewThread.ThreeEighths16.Under(hinge.Load.Moment, Length.FromMeters(2.4), Force.Zero).Tension.Newtons;
        Assert.Equal(1167, cable, 0.5);
        var (along, up) = (cable * 4 / 5, hinge.Load.Force.Newtons - (cable * 3 / 5));
        Assert.Equal(980, Math.Sqrt((along * along) + (up * up)), 0.5);
        Assert.Equal(18, Math.Atan2(up, along) * 180 / Math.PI, 0.5);
        Assert.Equal(["strut", "sign"], hinge.Load.Carried);
    }

    // A door of 400 N, 1.00 m wide, on two hinges 2.00 m apart: each carries 200 N up and 100 N along the couple.
    [Fact]
    [Source(SourceKind.Handbook, University + "12.2, \"Forces on door hinges\"; read in the source")]
    public void Door_on_two_hinges()
    {
        var door = Assert.Single(JointFinding.All(Of(
            ("door", Body(PartKind.Cage, Weighing(400), Length.FromMeters(0.5)), null, Length.Zero)), 1));

        Assert.Equal(200, door.Load.Force.Newtons / 2, 1e-9);
        // The screw that a cage stands on tips it over 20 mm; the hinges are 2.00 m apart.
        Assert.Equal(100, door.Screw!.Tension.Newtons * (JointFinding.PlateEdge / Length.FromMeters(2)), 1e-9);
    }

    // A force square to a lever: 40 N and 20 N at 0.800 m, 55.0 N at 0.850 m: 32, 16 and 46.8 N·m.
    [Theory]
    [InlineData(40, 0.800, 32, 1e-9)]
    [InlineData(20, 0.800, 16, 1e-9)]
    [InlineData(55.0, 0.850, 46.8, 0.051)]
    [Source(SourceKind.Handbook, College + "9.2, text and problem 1; read in the source")]
    public void Torque_of_a_force(double newtons, double metres, double moment, double within)
    {
        var rig = Of(
            ("door", Body(PartKind.Cage, Mass.Zero, Length.Zero), null, Length.Zero),
            ("push", Body(PartKind.Monitor, Weighing(newtons), Length.Zero), "door", Length.FromMeters(metres)));

        Assert.Equal(moment, JointFinding.All(rig, 1).Single(joint => joint.Load.Part == "door").Load.Moment.NewtonMeters,
            within);
    }

    // 17.5 N at 0.600 m are held by 23.3 N at 0.450 m; 1250 N at 1.8 cm by 50 N at 45 cm.
    [Theory]
    [InlineData(17.5, 0.600, 0.450, 23.3, 0.05)]
    [InlineData(1250, 0.018, 0.45, 50, 1e-9)]
    [Source(SourceKind.Handbook,
        College + "9.2, problem of two children at a door, and 9.5, problem of a nail puller; read in the source")]
    public void Force_that_holds_a_force(double newtons, double at, double other, double expected, double within)
    {
        var lens = Assert.Single(LensMountFinding.All(Lens(Weighing(newtons), at, other), 1));

        Assert.Equal(expected, lens.SupportForce!.Value.Newtons, within);
    }

    // A forearm as a lens with a support: 50 lb in the hand, 13.0 in from the elbow, the muscle at 1.5 in: 433.3 lb, and the
    // elbow, the lens mount, is pressed down by 383.3 lb.
    [Fact]
    [Source(SourceKind.Handbook, University + "12.2, \"Forces in the forearm\"; read in the source")]
    public void Support_under_a_lens_carries_more_than_the_lens()
    {
        var lens = Assert.Single(LensMountFinding.All(
            Lens(Mass.FromPounds(50), Length.FromInches(13.0).Meters, Length.FromInches(1.5).Meters), 1));

        Assert.Equal("support", lens.Support);
        Assert.Equal(433.3, lens.SupportForce!.Value.PoundsForce, 0.05);
        Assert.Equal(383.3, (lens.SupportForce.Value - lens.Weight).PoundsForce, 0.05);
        Assert.Equal(13.0, lens.CentreAhead.Inches, 1e-9);
        Assert.Equal(50 * 13.0, lens.MomentUnsupported.PoundForceInches, 1e-6);
    }

    // 2.50 kg of forearm at 16 cm with a book of 4.00 kg at 38 cm, the muscle at 4 cm: 470 N, and 407 N at the elbow; the book
    // takes g = 9.8 m/s².
    [Fact]
    [Source(SourceKind.Handbook, College + "9.6, \"Muscles exert bigger forces\"; read in the source")]
    public void Support_under_a_lens_with_something_on_it()
    {
        var rig = Of(
            ("body", Body(PartKind.Body, Mass.FromKilograms(1), Length.Zero), null, Length.Zero),
            ("lens", Body(PartKind.Lens, Mass.FromKilograms(2.50), Length.FromCentimeters(16)), "body", Length.Zero),
            ("book", Body(PartKind.Motor, Mass.FromKilograms(4.00), Length.Zero), "lens", Length.FromCentimeters(38)),
            ("support", Body(PartKind.Support, Mass.Zero, Length.Zero), "body", Length.FromCentimeters(4)));

        var lens = Assert.Single(LensMountFinding.All(rig, 1));

        Assert.Equal(470, lens.SupportForce!.Value.Newtons * 9.8 / 9.80665, 0.5);
        Assert.Equal(407, (lens.SupportForce.Value - lens.Weight).Newtons * 9.8 / 9.80665, 0.5);
    }

    // What an aircraft may carry is its greatest weight less its own: a margin of 64 lb; none; 20 lb too much; 45 lb of baggage.
    [Theory]
    [InlineData(2100, 1169, 17 + 170 + 340 + 240 + 100, 64)]
    [InlineData(2100, 1169, 17 + 170 + 170 + 340 + 234, 0)]
    [InlineData(2950, 2015, 340 + 295 + 264 + 56, -20)]
    [InlineData(2950, 2015, 387 + 293 + 210, 45)]
    [Source(SourceKind.Regulation,
        "FAA, AC 43.13-1B CHG 1 (2001), figs 10-11 and 10-13 (read in a copy); knowledge test, questions 3665 "
        + "and 3666 (answers read in a transcription; weights of their fig. 33 from memory)")]
    public void Rated_load_of_what_carries_others(double greatest, double own, double carried, double margin)
    {
        var aircraft = Assert.Single(CarrierFinding.All(Of(
            ("aircraft", Body(PartKind.Cage, Mass.FromPounds(own), Length.Zero, Mass.FromPounds(greatest - own)),
                null, Length.Zero),
            ("load", Body(PartKind.Body, Mass.FromPounds(carried), Length.Zero), "aircraft", Length.Zero))));

        Assert.Equal(carried, aircraft.Carried.Pounds, 1e-9);
        Assert.Equal(margin, aircraft.Margin.Pounds, 1e-9);
    }

    private static RigScenarios.Balance.BuildInPlace Lens(Mass mass, double centreAhead, double supportAhead) => Of(
        ("body", Body(PartKind.Body, Mass.FromKilograms(1), Length.Zero), null, Length.Zero),
        ("lens", Body(PartKind.Lens, mass, Length.FromMeters(centreAhead)), "body", Length.Zero),
        ("support", Body(PartKind.Support, Mass.Zero, Length.Zero), "body", Length.FromMeters(supportAhead)));
}
