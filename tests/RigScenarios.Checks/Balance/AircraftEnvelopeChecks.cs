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
    [InlineData(78, 86, 3400, 84.8, 3320, true)]
    [InlineData(8.5, 21.9, 2100, 11.2, 1439, true)]
    [InlineData(8.5, 21.9, 2100, 21.33, 2036, true)]
    [InlineData(8.5, 21.9, 2100, 18.32, 2100, true)]
    [InlineData(78, 86, 3400, 84.8, 3420, false)]
    [InlineData(8.5, 21.9, 2100, 22.0, 2036, false)]
    [Source(SourceKind.Regulation,
        "FAA, Pilot's Handbook of Aeronautical Knowledge, \"computational method\"; AC 43.13-1B (2001), figs "
        + "10-10, 10-11 and 10-13; read in copies; the two that lie outside are the same with one figure moved past its limit")]
    public void Printed_loadings_are_within_or_out_of_the_limits(
        double forward, double aft, double greatest, double inches, double pounds, bool within) =>
        Assert.Equal(within, Envelope(forward, aft, greatest).At(Length.FromInches(inches), Mass.FromPounds(pounds)).Inside);

    private static BalanceEnvelope Envelope(double forward, double aft, double pounds) => BalanceEnvelope.OfCentreAndMass(
        PointMasses.Limits(forward, aft, pounds), Length.Zero, new(Length.FromInches(forward - 5), Length.FromInches(aft + 5)),
        Mass.FromPounds(pounds / 2), Mass.FromPounds(1.1 * pounds));

    private static bool At(EnvelopePoint point, double inches, double pounds) =>
        Math.Abs(((Length)point.First).Inches - inches) < 1e-6 && Math.Abs(((Mass)point.Second).Pounds - pounds) < 1e-4;

    private static bool Inches((double, double) one, (double, double) other) =>
        Math.Abs(one.Item1 - other.Item1) < 1e-6 && Math.Abs(one.Item2 - other.Item2) < 1e-6;
}
