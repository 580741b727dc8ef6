using RigScenarios.Answers;
using RigScenarios.Limits;
using RigScenarios.Loads;
using UnitsNet;

namespace RigScenarios.Checks.Loads;

/// <summary>Threads against fastener tables, and a couple against a textbook.</summary>
public class ScrewChecks
{
    private const string Sae =
        "SAE J429, loads and stress areas of hexagon screws (an extract at everettwa.gov, record 454746; three "
        + "other fastener tables print the same areas); read";

    // 0.0318 and 0.0775 in²; pitches exact.
    [Fact]
    [Source(SourceKind.Standard, Sae)]
    public void Stress_areas_and_pitches()
    {
        Assert.Equal(0.0318, ScrewThread.Quarter20.StressArea.SquareInches, 0.002 * 0.0318);
        Assert.Equal(0.0775, ScrewThread.ThreeEighths16.StressArea.SquareInches, 0.002 * 0.0775);
        Assert.Equal(1.270, ScrewThread.Quarter20.Pitch.Millimeters, 1e-9);
        Assert.Equal(1.5875, ScrewThread.ThreeEighths16.Pitch.Millimeters, 1e-9);
    }

    // Clamping force at 75 % of proof for grades 2, 5 and 8 (55, 85 and 120 ksi), lbf, and the torque for it, in·lbf for the
    // quarter inch and ft·lbf for the three eighths, dry (K 0.20) and lubricated (0.15).
    [Theory]
    [InlineData("1/4-20", 55, 1313, 66, 49)]
    [InlineData("1/4-20", 85, 2029, 101, 76)]
    [InlineData("1/4-20", 120, 2864, 143, 107)]
    [InlineData("3/8-16", 55, 3196, 20, 15)]
    [InlineData("3/8-16", 85, 4940, 31, 23)]
    [InlineData("3/8-16", 120, 6974, 44, 33)]
    [Source(SourceKind.Handbook, "Engineers Edge, bolt torque table 13355; read")]
    public void Clamping_force_and_torque(string name, double ksi, double poundsForce, double dry, double lubricated)
    {
        var screw = Named(name);
        var force = Force.FromPoundsForce(poundsForce);
        double Printed(Torque torque) => name == "1/4-20" ? torque.PoundForceInches : torque.PoundForceFeet;

        Assert.Equal(0.75 * ksi, StressUnder(screw, poundsForce), 0.0015 * ksi);
        Assert.Equal(dry, Printed(screw.TighteningTorque(force)), 0.51);
        Assert.Equal(lubricated, Printed(screw.TighteningTorque(force, 0.15)), 0.51);
        var tightened = name == "1/4-20" ? Torque.FromPoundForceInches(dry) : Torque.FromPoundForceFeet(dry);
        Assert.Equal(poundsForce, screw.ClampingForce(tightened).PoundsForce, 0.51 / dry * poundsForce);
    }

    // Proof and tensile loads of grades 2, 5 and 8, lbf, are rounded to 50; they are 55, 85 and 120 ksi, and 74, 120 and 150 ksi,
    // on the stress area.
    [Theory]
    [InlineData("1/4-20", 1750, 55)]
    [InlineData("1/4-20", 2700, 85)]
    [InlineData("1/4-20", 3800, 120)]
    [InlineData("1/4-20", 2350, 74)]
    [InlineData("1/4-20", 4750, 150)]
    [InlineData("3/8-16", 4250, 55)]
    [InlineData("3/8-16", 6600, 85)]
    [InlineData("3/8-16", 9300, 120)]
    [InlineData("3/8-16", 5750, 74)]
    [InlineData("3/8-16", 11_600, 150)]
    [Source(SourceKind.Standard, Sae)]
    public void Stress_under_the_loads_of_the_standard(string name, double poundsForce, double ksi)
    {
        var screw = Named(name);

        Assert.Equal(ksi, StressUnder(screw, poundsForce), 26 / screw.StressArea.SquareInches / 1000);
    }

    // Screws of 60 ksi: three quarters of the breaking load (1908 and 4650 lbf) and of the proof load (1049 and 2558 lbf) as
    // torques, in·lbf, dry and lubricated.
    [Theory]
    [InlineData("1/4-20", 1908, 0.20, 71.6)]
    [InlineData("1/4-20", 1049, 0.20, 39.4)]
    [InlineData("1/4-20", 1908, 0.15, 53.7)]
    [InlineData("1/4-20", 1049, 0.15, 29.5)]
    [InlineData("3/8-16", 4650, 0.20, 261.6)]
    [InlineData("3/8-16", 2558, 0.20, 143.9)]
    [InlineData("3/8-16", 4650, 0.15, 196.2)]
    [InlineData("3/8-16", 2558, 0.15, 107.9)]
    [Source(SourceKind.DataSheet, "A fastener maker's table of material strength, 60 000 psi (mwcomponents.com); read")]
    public void Torques_of_a_maker_s_table(string name, double poundsForce, double friction, double inchPounds) =>
        Assert.Equal(inchPounds,
            Named(name).TighteningTorque(Force.FromPoundsForce(0.75 * poundsForce), friction).PoundForceInches, 0.07);

    // 1.0 N·m on a 1/4-20: 787 N at K 0.20, 1050 at 0.15, 525 at 0.30; 3.0 N·m on a 3/8-16: 1575 N.
    [Theory]
    [Source(SourceKind.ClosedForm, "T = K d F, worked by hand")]
    [InlineData(0.20, 787)]
    [InlineData(0.15, 1050)]
    [InlineData(0.30, 525)]
    public void Finger_tight(double friction, double newtons) =>
        Assert.Equal(newtons, ScrewThread.Quarter20.ClampingForce(Torque.FromNewtonMeters(1), friction).Newtons, 0.51);

    [Fact]
    [Source(SourceKind.ClosedForm, "T = K d F, worked by hand")]
    public void Three_eighths() =>
        Assert.Equal(1575, ScrewThread.ThreeEighths16.ClampingForce(Torque.FromNewtonMeters(3)).Newtons, 0.51);

    // 400 N, centre 0.5 m out, hinges 2.00 m apart: 100 N along the couple.
    [Fact]
    [Source(SourceKind.Handbook,
        "OpenStax, University Physics vol. 1 (2016), 12.2, \"Forces on door hinges\"; read in the source")]
    public void Couple_of_two_hinges()
    {
        var load = ScrewThread.Quarter20.Under(Torque.FromNewtonMeters(400 * 0.5), Length.FromMeters(2), Force.FromNewtons(150));

        Assert.Equal(100, load.Tension.Newtons, 1e-12);
        Assert.Equal(50, load.LiftMargin.Newtons, 1e-12);
    }

    // "Accuracy of bolt preload application methods": by feel ± 35 %. NASA's table has the same for unlubricated bolts whose
    // torque is measured.
    [Source(SourceKind.Handbook, "Machinery's Handbook, accuracy of bolt preload application methods: by feel ± 35 %; "
        + "second-hand, read at docsbay.net")]
    [Theory]
    [InlineData(0.64, false)]
    [InlineData(0.66, true)]
    public void A_pull_that_a_screw_tightened_by_feel_may_not_clamp_is_close(double share, bool close)
    {
        foreach (var screw in (ScrewThread[])[ScrewThread.Quarter20, ScrewThread.ThreeEighths16])
        {
            var clamping = screw.ClampingForce(JointFinding.HandTightened);
            var lever = JointFinding.PlateEdge;
            var load = screw.Under(Torque.FromNewtonMeters(share * clamping.Newtons * lever.Meters), lever, clamping);
            Assert.Equal(close, StatedErrors.IsClose(new Limit("plate", LimitKind.Clamping, load.Tension,
                load.Tension + load.LiftMargin, LimitBasis.PartsFile)));
        }
    }

    private static ScrewThread Named(string name) =>
        new[] { ScrewThread.Quarter20, ScrewThread.ThreeEighths16 }.Single(screw => screw.Name == name);

    /// <summary>ksi in a screw that is tightened to a force and carries nothing.</summary>
    private static double StressUnder(ScrewThread screw, double poundsForce) =>
        screw.Under(Torque.Zero, Length.FromInches(1), Force.FromPoundsForce(poundsForce)).Stress.PoundsForcePerSquareInch / 1000;
}
