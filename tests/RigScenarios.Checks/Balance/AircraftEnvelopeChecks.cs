using RigScenarios.Balance;
using UnitsNet;

namespace RigScenarios.Checks.Balance;

/// <summary>
/// The envelope of centre and weight against those of aircraft. A head has one travel for every weight, so that only envelopes,
/// or parts of them, whose limits do not move with the weight can be drawn with it.
/// </summary>
public class AircraftEnvelopeChecks
{
    // Limits 78 to 86 in, greatest weight 3400 lb; and 8.5 to 21.9 in, 2100 lb; and the part up to 2780 lb of one whose forward
    // limit begins to move there, 80.7 to 94.6 in.
    [Theory]
    [InlineData(78, 86, 3400)]
    [InlineData(8.5, 21.9, 2100)]
    [InlineData(80.7, 94.6, 2780)]
    [Source(SourceKind.Regulation,
        "FAA, Pilot's Handbook of Aeronautical Knowledge (FAA-H-8083-25), \"computational method\", limits; "
        + "AC 43.13-1B (2001), figs 10-10 and 10-11, limits; Aviation Maintenance Technician Handbook - General, chapter 4, "
        + "fig. 4-19; read in copies")]
    public void The_outline_has_the_corners_of_the_printed_limits(double forward, double aft, double pounds)
    {
        var outline = Assert.Single(Envelope(forward, aft, pounds).Contours(61, 61)).Points;

        // Up to the greatest weight the outline ends with the range asked for; the upper corners are the handbook's.
        var x = outline.Select(point => ((Length)point.First).Inches).ToList();
        var weights = outline.Select(point => ((Mass)point.Second).Pounds).ToList();
        Assert.Equal((forward, aft), (x.Min(), x.Max()), Inches);
        Assert.Equal(pounds, weights.Max(), 1e-6);
        Assert.Contains(outline, point => At(point, forward, pounds));
        Assert.Contains(outline, point => At(point, aft, pounds));
    }

    // The three loadings of the circular and the one of the handbook, as printed; the handbook's says "within limits", and so do
    // the circular's, whose third has the greatest weight itself.
    [Theory]
    [InlineData(78, 86, 3400, 84.8, 3320)]
    [InlineData(8.5, 21.9, 2100, 11.2, 1439)]
    [InlineData(8.5, 21.9, 2100, 21.33, 2036)]
    [InlineData(8.5, 21.9, 2100, 18.32, 2100)]
    [Source(SourceKind.Regulation,
        "FAA, Pilot's Handbook of Aeronautical Knowledge, \"computational method\"; AC 43.13-1B (2001), figs 10-10, 10-11 and "
            + "10-13; read in copies")]
    public void Printed_loadings_are_within_the_limits(double forward, double aft, double greatest, double inches,
        double pounds) =>
        Assert.True(Envelope(forward, aft, greatest).At(Length.FromInches(inches), Mass.FromPounds(pounds)).Inside);

    // The same with one figure moved past its limit.
    [Theory]
    [Guard]
    [InlineData(78, 86, 3400, 84.8, 3420)]
    [InlineData(8.5, 21.9, 2100, 22.0, 2036)]
    [InlineData(8.5, 21.9, 2100, 8.4, 1439)]
    public void Loadings_past_a_limit_are_out_of_them(double forward, double aft, double greatest, double inches,
        double pounds) =>
        Assert.False(Envelope(forward, aft, greatest).At(Length.FromInches(inches), Mass.FromPounds(pounds)).Inside);

    // The handbook's aircraft with fuel and baggage, 2630 lb and 210 180 lb.in, and people in front (85 in) and behind (121 in).
    // At most 3400 lb: f + r = 770. Not behind 86 in: 35 r - f = 16 000. Both meet at f = 304 1/6 and r = 465 5/6 lb; without
    // anyone in front r = 457 1/7 lb. The forward limit is nowhere in the way.
    [Fact]
    [Source(SourceKind.ClosedForm, "Two straight lines, worked by hand from the limits and arms of the FAA's Pilot's Handbook of "
        + "Aeronautical Knowledge, \"computational method\" (limits read in a copy, arms from memory)")]
    public void People_in_front_and_behind_have_a_polygon()
    {
        var aircraft = PointMasses.Pounds((2100, 78.3), (450, 75), (80, 150), (1, 85), (1, 121));
        var envelope = BalanceEnvelope.Of(aircraft, PointMasses.Limits(78, 86, 3400),
            RigVariable.OfMass("3", Mass.Zero, Mass.FromPounds(1000)), RigVariable.OfMass("4", Mass.Zero, Mass.FromPounds(800)));

        var outline = Assert.Single(envelope.Contours(81, 81)).Points;

        bool Has(double front, double rear) => outline.Any(point => Math.Abs(((Mass)point.First).Pounds - front) < 1e-3
            && Math.Abs(((Mass)point.Second).Pounds - rear) < 1e-3);
        Assert.True(Has(0, 0) && Has(770, 0) && Has(304 + (1.0 / 6), 465 + (5.0 / 6)) && Has(0, 457 + (1.0 / 7)));
        Each.Of(outline, point =>
        {
            double front = ((Mass)point.First).Pounds, rear = ((Mass)point.Second).Pounds;
            double[] left = [front, rear, 770 - front - rear, 16_000 + front - (35 * rear)];
            Assert.Equal(0, left.Min(), 1e-3);
        });
    }

    private static BalanceEnvelope Envelope(double forward, double aft, double pounds) => BalanceEnvelope.OfCentreAndMass(
        PointMasses.Limits(forward, aft, pounds), Length.Zero, new(Length.FromInches(forward - 5), Length.FromInches(aft + 5)),
        Mass.FromPounds(pounds / 2), Mass.FromPounds(1.1 * pounds));

    private static bool At(EnvelopePoint point, double inches, double pounds) =>
        Math.Abs(((Length)point.First).Inches - inches) < 1e-6 && Math.Abs(((Mass)point.Second).Pounds - pounds) < 1e-4;

    private static bool Inches((double, double) one, (double, double) other) =>
        Math.Abs(one.Item1 - other.Item1) < 1e-6 && Math.Abs(one.Item2 - other.Item2) < 1e-6;
}
