using RigScenarios.Balance;
using UnitsNet;

namespace RigScenarios.Checks.Balance;

/// <summary>
/// The search for a place, and sums of moments, against exam questions for pilots and mechanics with their printed answers. The
/// unit of length does not matter to them; kilograms and metres stand for what the question has.
/// </summary>
public class WeightShiftChecks
{
    // A total at its centre, a part moved from one station, and the centre wanted; printed: where it must go. Both masses to be
    // moved are printed answers: 300 kg, and 62.5 kg; 227.7 kg is printed before it is rounded to 228.
    [Theory]
    [InlineData(9000, 2.0, 300, 0.8, 2.1, 3.8)]
    [InlineData(7500, 80.5, 62.5, 150, 79.5, 30)]
    [InlineData(6603, 2.8, 227.7, 0, 2.9, 2.9)]
    [Source(SourceKind.Handbook, "Question bank for airline pilots (atplquestions.com), mass and balance, shifted cargo; read")]
    public void Cargo_moved_to_bring_the_centre_to_a_limit(
        double total, double centre, double moved, double from, double wanted, double to)
    {
        var build = Shifted(total, centre, moved, from);

        var answer = PlaceSearch.OffsetFor(build, "0", new(Length.FromMeters(-200), Length.FromMeters(200)),
            Length.FromMeters(wanted));

        Assert.True(answer.Solved);
        Assert.Equal(to, answer.OffsetX.Meters, 1e-3 * Math.Abs(to - from));
    }

    // 4800 lb at 98 in, 90 lb of luggage from 145 to 45 in: 96.13 in.
    [Fact]
    [Source(SourceKind.Regulation,
        "FAA, commercial pilot knowledge-test question on moved luggage; answer read on a page that quotes it")]
    public void Luggage_moved_forward() =>
        Assert.Equal(96.13, Shifted(4800, 98, 90, 145).With("0", PointMasses.At(Mass.FromKilograms(90), Length.FromMeters(45)))
            .MassProperties.Centre.X.Meters, 0.0051);

    // 2222 kg at 6.13 m, ballast of 136 kg, new centre 6.28 m: the ballast lies at 8.73 m.
    [Fact]
    [Source(SourceKind.Handbook, "Question bank for airline pilots (atplquestions.com), mass and balance, added ballast; read")]
    public void Place_of_a_ballast() =>
        Assert.Equal(8.73, PlaceSearch.OffsetFor(PointMasses.Kilograms((136, 0), (2222, 6.13)), "0",
            new(Length.Zero, Length.FromMeters(20)), Length.FromMeters(6.28)).OffsetX.Meters, 0.005);

    // 400 kg added to 2000 kg, 2 m behind its centre: 0.33 m aft.
    [Fact]
    [Source(SourceKind.Handbook, "Question bank for airline pilots (atplquestions.com), mass and balance, added freight; read")]
    public void Freight_added_behind() =>
        Assert.Equal(0.33, PointMasses.Kilograms((2000, 0), (400, 2)).MassProperties.Centre.X.Meters, 0.005);

    // 112 000 kg at 22.62 m, limits 18 and 22 m: 29 344 kg out of the hold at 30 m bring it to their middle, 20 m.
    [Fact]
    [Source(SourceKind.Handbook, "Question bank for airline pilots (atplquestions.com), mass and balance, removed cargo; read")]
    public void Cargo_removed_down_to_the_middle_of_the_limits()
    {
        var build = PointMasses.Kilograms((40_000, 30), (72_000, ((112_000 * 22.62) - (40_000 * 30)) / 72_000));
        var envelope = BalanceEnvelope.Of(build, PointMasses.Limits(0, 20 / 0.0254, 1e9),
            RigVariable.OfMass("1", Mass.FromKilograms(71_000), Mass.FromKilograms(73_000)),
            RigVariable.OfMass("0", Mass.Zero, Mass.FromKilograms(40_000)));

        var edge = envelope.EdgesAt(Mass.FromKilograms(72_000)).Single(one => one.Limit == BalanceEdge.TravelFrontEnd);

        Assert.Equal(29_344, 40_000 - ((Mass)edge.Second).Kilograms, 0.5);
    }

    // 5000 lb at 80.0, aft limit 80.5: before it is rounded down to the choice 35.9, the page prints 35.9712 lb at 150.0.
    [Fact]
    [Source(SourceKind.Regulation, "FAA, knowledge-test question on added weight; answer read on a page that works it")]
    public void Weight_that_may_be_added_behind()
    {
        var envelope = BalanceEnvelope.Of(PointMasses.Pounds((5000, 80), (1, 150)), PointMasses.Limits(70, 80.5, 1e6),
            RigVariable.OfMass("0", Mass.FromPounds(4900), Mass.FromPounds(5100)),
            RigVariable.OfMass("1", Mass.Zero, Mass.FromPounds(500)));

        var edge = envelope.EdgesAt(Mass.FromPounds(5000)).Single(one => one.Limit == BalanceEdge.TravelFrontEnd);

        Assert.Equal(35.9712, ((Mass)edge.Second).Pounds, 5.1e-5);
    }

    // Weighed on jacks: 6488 kg on the nose at 161 in, 17 783 kg on each main wheel at 775 in: 42 054 kg at 680.3 in.
    [Fact]
    [Source(SourceKind.Handbook,
        "Question bank for airline pilots (atplquestions.com), mass and balance, weighing on jacks; read")]
    public void Aircraft_weighed_on_three_jacks()
    {
        var weighed = PointMasses.Kilograms((6488, 161), (17_783, 775), (17_783, 775)).MassProperties;

        Assert.Equal(42_054, weighed.Mass.Kilograms, 1e-6);
        Assert.Equal(680.3, weighed.Centre.X.Meters, 0.05);
    }

    // 285 kg on the nose wheel, 1465 and 1395 kg on the main wheels 92 in behind it: 83.7 in behind the nose wheel.
    [Fact]
    [Source(SourceKind.Handbook,
        "Question bank for airline pilots (atplquestions.com), mass and balance, weighing on wheels; read")]
    public void Aircraft_weighed_on_its_wheels() =>
        Assert.Equal(83.7, PointMasses.Kilograms((285, 0), (1465, 92), (1395, 92)).MassProperties.Centre.X.Meters, 0.05);

    // Empty 1495.0 lb at 101.4 in, pilot and passenger 380 lb at 64.0, 30 gallons of fuel (180 lb) at 96.0: 94.01 in.
    [Fact]
    [Source(SourceKind.Regulation, "FAA, private pilot knowledge test, question 3664; read in a transcription with its answers")]
    public void Centre_of_a_loaded_aircraft() =>
        Assert.Equal(94.01, PointMasses.Pounds((1495, 101.4), (380, 64), (180, 96)).MassProperties.Centre.X.Inches, 0.005);

    // 135 lb at 15 in, 205 lb at 117 in, 85 lb at 195 in: the page works the moment, 42 585 lb.in.
    [Fact]
    [Source(SourceKind.Regulation, "FAA, knowledge-test question on three weights; moment read on a page that works it")]
    public void Moment_of_three_weights()
    {
        var sum = PointMasses.Pounds((135, 15), (205, 117), (85, 195)).MassProperties;

        Assert.Equal(42_585, sum.Mass.Pounds * sum.Centre.X.Inches, 1e-6);
    }

    private static PlacedBuild Shifted(double total, double centre, double moved, double from) =>
        PointMasses.Kilograms((moved, from), (total - moved, ((total * centre) - (moved * from)) / (total - moved)));
}
