using RigScenarios.Loads;
using UnitsNet;

namespace RigScenarios.Checks.Loads;

/// <summary>
/// The revised lifting equation: Waters, Putz-Anderson, Garg, <i>Applications Manual for the Revised NIOSH Lifting Equation</i>,
/// NIOSH 94-110 (1994). Its inch form is
/// its metric one with 2.5 cm for an inch and 51 lb for 23 kg, not an exact conversion: the examples in inches are checked that
/// way. It rounds
/// multipliers to two places: so does the check, and without rounding the answer is the same to 2 %.
/// </summary>
public class LiftingChecks
{
    /// <summary>The manual's load constants: 51 lb in one form, 23 kg in the other.</summary>
    private const double PoundsToKilogram = 51.0 / 23;

    // Example 4, "package inspection", fig. 14 (second-hand): origin H 10 in, V 22, D 37, FM .88, fair: 34.9 lb; destination H
    // 20, V 59: 15.2 lb.
    [Theory]
    [InlineData(10, 22, 34.9)]
    [InlineData(20, 59, 15.2)]
    public void Package_inspection(double h, double v, double pounds) =>
        AssertPrinted(pounds, Inches(h, v, 37) with { LiftsPerMinute = Frequency.FromCyclesPerMinute(3),
            Grip = LiftingGrip.Fair });

    // Example 2, "supply rolls", pp. 37-41 (from memory; the arithmetic closes): 35 lb, origin H 15, V 27: 28.0 lb; destination H
    // 20, V 10: 18.1 lb; poor grip.
    [Theory]
    [InlineData(15, 27, 28.0, 1.3)]
    [InlineData(20, 10, 18.1, 1.9)]
    public void Supply_rolls(double h, double v, double pounds, double index)
    {
        var lift = Inches(h, v, 17) with { Grip = LiftingGrip.Poor };

        AssertPrinted(pounds, lift);
        Assert.Equal(index, lift.Index(Mass.FromKilograms(35 / PoundsToKilogram)), 0.051);
    }

    // Canadian Centre for Occupational Health and Safety, "NIOSH lifting equation", frequency factor page (read): 23 x 1.00 x
    // 0.93 x 1.00 x 0.71 x 0.13 x 1.00 = 1.97 kg.
    [Fact]
    public void Frequent_lift_to_the_side()
    {
        var lift = new Lifting
        {
            Horizontal = Length.FromCentimeters(25),
            Vertical = Length.FromCentimeters(75 + (0.07 / 0.003)),
            Distance = Length.FromCentimeters(25),
            Asymmetry = Angle.FromDegrees(90),
            LiftsPerMinute = Frequency.FromCyclesPerMinute(10),
            Duration = LiftingDuration.UpToEightHours,
        };

        Assert.Equal(0.93, lift.VerticalMultiplier, 1e-9);
        Assert.Equal(0.71, lift.AsymmetryMultiplier, 0.005);
        Assert.Equal(0.13, lift.FrequencyMultiplier, 1e-12);
        Assert.Equal(1.97, lift.RecommendedLimit.Kilograms, 0.011);
    }

    // Limits of the multipliers, manual pp. 12-29 (second-hand).
    [Fact]
    public void Limits()
    {
        var lift = Inches(10, 30, 10);
        Assert.Equal(1, (lift with { Horizontal = Length.FromCentimeters(20) }).HorizontalMultiplier);
        Assert.Equal(0, (lift with { Horizontal = Length.FromCentimeters(63.1) }).HorizontalMultiplier);
        Assert.Equal(0, (lift with { Vertical = Length.FromCentimeters(175.1) }).VerticalMultiplier);
        Assert.Equal(1, (lift with { Distance = Length.FromCentimeters(10) }).DistanceMultiplier);
        Assert.Equal(0, (lift with { Asymmetry = Angle.FromDegrees(135.1) }).AsymmetryMultiplier);
        Assert.Equal(1, (lift with { LiftsPerMinute = Frequency.Zero }).FrequencyMultiplier);
        Assert.Equal(0, (lift with { LiftsPerMinute = Frequency.FromCyclesPerMinute(15.1) }).FrequencyMultiplier);
        Assert.Equal(double.PositiveInfinity, (lift with { Vertical = Length.FromCentimeters(180) })
            .Index(Mass.FromKilograms(1)));
    }

    // Table 5 (second-hand), some of its places: hands below 75 cm and from there up.
    [Theory]
    [InlineData(12, LiftingDuration.UpToOneHour, .37, .37)]
    [InlineData(13, LiftingDuration.UpToOneHour, 0, .34)]
    [InlineData(10, LiftingDuration.UpToTwoHours, .26, .26)]
    [InlineData(11, LiftingDuration.UpToTwoHours, 0, .23)]
    [InlineData(13, LiftingDuration.UpToTwoHours, 0, 0)]
    [InlineData(8, LiftingDuration.UpToEightHours, .18, .18)]
    [InlineData(9, LiftingDuration.UpToEightHours, 0, .15)]
    [InlineData(4, LiftingDuration.UpToEightHours, .45, .45)]
    public void Frequency_table(double perMinute, LiftingDuration duration, double low, double raised)
    {
        var lift = Inches(10, 20, 10) with { LiftsPerMinute = Frequency.FromCyclesPerMinute(perMinute), Duration = duration };

        Assert.Equal(low, lift.FrequencyMultiplier, 1e-9);
        Assert.Equal(raised, (lift with { Vertical = Length.FromCentimeters(75) }).FrequencyMultiplier, 1e-9);
    }

    private static void AssertPrinted(double pounds, Lifting lift)
    {
        double[] multipliers =
            [lift.HorizontalMultiplier, lift.VerticalMultiplier, lift.DistanceMultiplier, lift.AsymmetryMultiplier,
                lift.FrequencyMultiplier, lift.GripMultiplier];
        Assert.Equal(pounds,
            multipliers.Aggregate(51.0, (limit, one) => limit * Math.Round(one, 2, MidpointRounding.AwayFromZero)), 0.05);
        Assert.Equal(pounds, lift.RecommendedLimit.Kilograms * PoundsToKilogram, 0.02 * pounds);
    }

    private static Lifting Inches(double h, double v, double d) =>
        new() { Horizontal = Length.FromCentimeters(2.5 * h), Vertical = Length.FromCentimeters(2.5 * v),
            Distance = Length.FromCentimeters(2.5 * d) };
}
