using RigScenarios.Answers;
using RigScenarios.Balance;
using RigScenarios.Charts.Lines;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Charts.Balance;

/// <summary>How near tipping a rig on its tripod is, over wind and slope: below the line it stands, above it tips.</summary>
public static class TippingWindChart
{
    private const int Points = 60;
    private const int PointLook = 3;
    private const int WantedLook = 2;

    /// <summary>The figure; null without a tripod whose figures are known.</summary>
    /// <param name="balance">The build at rest.</param>
    /// <param name="title">What the chart answers; null for a plain title.</param>
    public static Figure? Of(BuildBalance balance, string? title = null)
    {
        ArgumentNullException.ThrowIfNull(balance);
        if (balance.Stand is not { TipsOnLevel: false } stand || balance.Wind is null)
            return null;
        var legs = balance.Rig.Build.OnLegs;
        var x = ChartAxis.Of("slope of the ground, or lean of the tripod", AngleUnit.Degree) with { FromZero = true };
        var height = legs?.WindHeight is { } at ? $"at {at.Meters:0.#} m" : "at the rig";
        var y = ChartAxis.Of($"mean wind {height}", SpeedUnit.MeterPerSecond) with { FromZero = true };
        var (slope, wind) = (balance.Slope.Degrees, legs?.Wind?.MetersPerSecond ?? 0);
        var lines = new List<ChartLine>
        {
            Curve(balance, stand, balance.WorstTilt is null ? "tips over" : $"tips, head tilted {stand.Tilt.Degrees:0}°") with
            {
                Look = 0,
            },
        };
        if (balance.WorstTilt is not null && balance.Level is { TipsOnLevel: false } level)
            lines.Add(Curve(balance, level, "tips, head level") with { Look = 1, Lower = null, Upper = null });
        var top = 1.1 * Math.Max(wind, lines.Max(line => (line.Upper ?? line.Y).Max()));
        if (legs?.WantedLean is { } wanted)
            lines.Add(new("wanted lean", [wanted.Degrees, wanted.Degrees], [0, top]) { Look = WantedLook });
        lines.Add(new("as it is", [slope], [wind]) { Kind = LineKind.Points, Look = PointLook });
        return new LineChart
        {
            Slug = $"tipping-{Figure.SlugOf(balance.Name)}",
            Title = title ?? "In how much wind, on which slope does it tip over?",
            Caption = Caption(balance, stand, slope, wind),
            Cautions = [Caution, BalanceCautions.Arithmetic],
            X = x with { From = 0, To = Math.Ceiling(1.1 * Math.Max(slope, lines.Max(line => line.X.Max()))) },
            Panels = [new ChartPanel(y with { From = 0, To = top }, lines)],
        }.ToFigure();
    }

    private const string Caution =
        "Hard ground, tripod locked, nothing moves: a knock, a cable or soft ground takes from what is shown. Weigh it down "
            + "low, and "
        + "don't leave it alone.";

    /// <summary>From level ground to the slope at which it tips without wind, with more points where the line falls
    /// fast.</summary>
    private static ChartLine Curve(BuildBalance balance, StandStability stand, string name)
    {
        var tips = stand.TipAngle.Degrees;
        var slopes = Enumerable.Range(0, Points + 1).Select(i => (double)i / Points)
            .Select(part => tips * (1 - ((1 - part) * (1 - part)))).ToList();
        var means = slopes.ConvertAll(slope =>
            balance.TippingMean(stand, Angle.FromDegrees(slope))?.MetersPerSecond ?? 0);
        var within = StandLimits.GustWithin.DecimalFractions;
        return new ChartLine(name, slopes, means)
        {
            Lower = [.. means.Select(mean => mean * (1 - within))], Upper = [.. means.Select(mean => mean * (1 + within))],
        };
    }

    private static string Caption(BuildBalance balance, StandStability stand, double slope, double wind)
    {
        var here = $"As it is: {(slope > 0 ? $"a slope of {slope:0.#}°" : "level ground")}"
            + (wind > 0 ? $" and a mean wind of {wind:0.#} m/s" : ", no wind given");
        var tips = balance.TippingMean(stand, balance.Slope) is { } mean ? $"there {mean.MetersPerSecond:0.0} m/s tip it"
            : "there it tips without any wind";
        return $"{here}; {tips}. Below the line it stands, above it tips, blown and leaning to its weakest side; gusts above "
            + "the mean are "
            + $"in the line. Without wind it tips at {stand.TipAngle.Degrees:0.0}°. The pale band: the wind is known to "
            + $"{StandLimits.GustWithin.Percent:0} %.";
    }
}
