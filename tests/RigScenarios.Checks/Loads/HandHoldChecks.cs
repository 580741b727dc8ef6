using RigScenarios.Balance;
using RigScenarios.Loads;
using UnitsNet;

namespace RigScenarios.Checks.Loads;

/// <summary>A rig in the hand: the moment at the joint of the arm, against what textbooks need to hold it with a
/// muscle.</summary>
public class HandHoldChecks
{
    // 50 lb in the hand, 13.0 in from the joint, the forearm's own weight left out, the muscle 1.5 in from the joint: 433.3 lb.
    [Fact]
    [Source(SourceKind.Handbook,
        "OpenStax, University Physics vol. 1 (sources of June 2026), 12.2, \"Forces in the forearm\"; read in the source")]
    public void Weight_in_the_hand()
    {
        var hold = new HandHold(Length.FromInches(13.0), Length.Zero, Ratio.FromPercent(100), Mass.Zero, Length.Zero);

        var moment = hold.ShoulderMoment(Held(Mass.FromPounds(50), Length.FromInches(13.0)));

        Assert.Equal(433.3, moment.PoundForceInches / 1.5, 0.05);
        Assert.Equal(0, hold.WristMoment(Held(Mass.FromPounds(50), Length.FromInches(13.0))).NewtonMeters, 1e-12);
    }

    // A book of 4.00 kg at 38 cm, the forearm of 2.50 kg at 16 cm, the muscle at 4 cm: 470 N; the book takes g = 9.8 m/s².
    [Fact]
    [Source(SourceKind.Handbook,
        "OpenStax, College Physics (sources of 2026), 9.6, \"Muscles exert bigger forces\"; read in the source")]
    public void Weight_in_the_hand_and_the_arm_s_own()
    {
        var hold = new HandHold(Length.FromCentimeters(38), Length.Zero, Ratio.FromPercent(100), Mass.FromKilograms(2.50),
            Length.FromCentimeters(16));

        var moment = hold.ShoulderMoment(Held(Mass.FromKilograms(4.00), Length.FromCentimeters(38)));

        Assert.Equal(470, moment.NewtonMeters / 0.04 * 9.8 / 9.80665, 0.5);
    }

    private static MassProperties Held(Mass mass, Length at) =>
        new PlacedBuild(new([new("rig", new PlacedPart { Mass = mass,
            Placement = Placement.At(new RigPoint(at, Length.Zero, Length.Zero)) })])).MassProperties;
}
