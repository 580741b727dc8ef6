using RigScenarios.Loads;
using UnitsNet;

namespace RigScenarios.Checks.Loads;

/// <summary>Threads against fastener tables, and a couple against a textbook.</summary>
public class ScrewChecks
{
    // Stress areas 0.0318 and 0.0775 in² in four fastener tables (among them an extract of SAE J429); read. Pitches exact.
    [Fact]
    public void Stress_areas_and_pitches()
    {
        Assert.Equal(0.0318, ScrewThread.Quarter20.StressArea.SquareInches, 0.002 * 0.0318);
        Assert.Equal(0.0775, ScrewThread.ThreeEighths16.StressArea.SquareInches, 0.002 * 0.0775);
        Assert.Equal(1.270, ScrewThread.Quarter20.Pitch.Millimeters, 1e-9);
        Assert.Equal(1.5875, ScrewThread.ThreeEighths16.Pitch.Millimeters, 1e-9);
    }

    // Table of engineersedge.com, 13355 (read): clamp at 75 % of proof for grades 2, 5, 8 and the torque for it; proof is 55, 85,
    // 120 ksi on the stress area.
    [Theory]
    [InlineData(55, 1313, 66)]
    [InlineData(85, 2029, 101)]
    [InlineData(120, 2864, 143)]
    public void Clamping_force_and_torque_of_a_quarter_inch_screw(double ksi, double poundsForce, double inchPounds)
    {
        var area = ScrewThread.Quarter20.StressArea.SquareInches;

        Assert.Equal(poundsForce, 0.75 * 1000 * ksi * area, 0.002 * poundsForce);
        Assert.Equal(inchPounds, ScrewThread.Quarter20.TighteningTorque(Force.FromPoundsForce(poundsForce)).PoundForceInches,
            0.51);
        Assert.Equal(poundsForce, ScrewThread.Quarter20.ClampingForce(Torque.FromPoundForceInches(inchPounds)).PoundsForce,
            0.008 * poundsForce);
    }

    // T = K d F by hand: 1.0 N·m on a 1/4-20: 787 N at K 0.20, 1050 at 0.15, 525 at 0.30; 3.0 N·m on a 3/8-16: 1575 N. Computed.
    [Theory]
    [InlineData(0.20, 787)]
    [InlineData(0.15, 1050)]
    [InlineData(0.30, 525)]
    public void Finger_tight(double friction, double newtons) =>
        Assert.Equal(newtons, ScrewThread.Quarter20.ClampingForce(Torque.FromNewtonMeters(1), friction).Newtons, 0.51);

    [Fact]
    public void Three_eighths() =>
        Assert.Equal(1575, ScrewThread.ThreeEighths16.ClampingForce(Torque.FromNewtonMeters(3)).Newtons, 0.51);

    // OpenStax, University Physics vol. 1, 12.2, "Forces on door hinges" (read): 400 N, centre 0.5 m out, hinges 2.00 m apart:
    // 100 N along the couple.
    [Fact]
    public void Couple_of_two_hinges()
    {
        var load = ScrewThread.Quarter20.Under(Torque.FromNewtonMeters(400 * 0.5), Length.FromMeters(2), Force.FromNewtons(150));

        Assert.Equal(100, load.Tension.Newtons, 1e-12);
        Assert.Equal(50, load.LiftMargin.Newtons, 1e-12);
    }
}
