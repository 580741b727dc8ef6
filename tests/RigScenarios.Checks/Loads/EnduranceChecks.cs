using RigScenarios.Loads;
using UnitsNet;

namespace RigScenarios.Checks.Loads;

/// <summary>Holding times against published points.</summary>
public class EnduranceChecks
{
    private const string Avin =
        "L. A. Frey Law, K. G. Avin, \"Endurance time is joint-specific\", Ergonomics 53(1) (2010) 109-129, "
        + "table 2; ";

    [Fact]
    [Source(SourceKind.Paper, Avin + "points printed in other documents that use it; second-hand")]
    public void Points_of_the_joint_specific_fits()
    {
        Assert.Equal(530.6, Seconds(EnduranceFit.General, 20), 0.05);
        Assert.Equal(86.5, Seconds(EnduranceFit.General, 50), 0.05);
        Assert.Equal(955.7, Seconds(EnduranceFit.Ankle, 20), 0.05);
        Assert.Equal(144.7, Seconds(EnduranceFit.Ankle, 50), 0.05);
        Assert.Equal(399.4, Seconds(EnduranceFit.Knee, 20), 0.05);
        Assert.Equal(71.3, Seconds(EnduranceFit.Knee, 50), 0.05);
        Assert.Equal(52.8, Seconds(EnduranceFit.Shoulder, 50), 0.05);
    }

    [Fact]
    [Source(SourceKind.Paper, Avin + "points worked by hand from its coefficients; second-hand")]
    public void Further_points_of_the_same_table()
    {
        Assert.Equal(630.3, Seconds(EnduranceFit.Elbow, 20), 0.05);
        Assert.Equal(447.7, Seconds(EnduranceFit.Grip, 20), 0.05);
        Assert.Equal(876.0, Seconds(EnduranceFit.Trunk, 20), 0.05);
        Assert.Equal(282.6, Seconds(EnduranceFit.Shoulder, 20), 0.05);
    }

    // T = 40.609 exp(-0.097 p) min; points worked by hand.
    [Theory]
    [Source(SourceKind.Paper, "S. E. Mathiassen, E. Åhsberg, Int. J. Ind. Ergonomics 24(3) (1999) 315-329, abstract; read")]
    [InlineData(10, 15.39)]
    [InlineData(15, 9.48)]
    [InlineData(20, 5.84)]
    public void Arm_held_forward(double percent, double minutes) =>
        Assert.Equal(minutes, Seconds(EnduranceFit.ArmHeldForward, percent) / 60, 0.01);

    // The prediction interval is 29 to 47 % either side: the wide end.
    [Fact]
    [Source(SourceKind.Paper, "L. A. Frey Law, J. M. Looft, J. Heitsman, J. Biomech. 45 (2012) 1803; second-hand")]
    public void The_range_is_the_wide_end_of_the_published_interval()
    {
        var time = EnduranceFit.Shoulder.At(Ratio.FromPercent(50));

        Assert.Equal(0.53, time.Low!.Value / time.Typical, 1e-12);
        Assert.Equal(1.47, time.High!.Value / time.Typical, 1e-12);
        Assert.False(time.OutsideData);
    }

    // The study found no load, down to 5 %, that is held for ever: no fit may say so.
    [Fact]
    [Source(SourceKind.Paper, "NIOSHTIC-2 20037558, holding times of twelve shoulders, abstract; read")]
    public void Nothing_is_held_for_ever()
    {
        var time = EnduranceFit.Shoulder.At(Ratio.FromPercent(1));

        Assert.True(time.OutsideData);
        Assert.Equal(Seconds(EnduranceFit.Shoulder, 10), time.Typical.Seconds);
    }

    private static double Seconds(EnduranceFit fit, double percent) => fit.At(Ratio.FromPercent(percent)).Typical.Seconds;
}
