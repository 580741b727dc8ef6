using RigScenarios.Charts.Days;
using RigScenarios.Charts.Lines;
using RigScenarios.Sweeps;
using UnitsNet.Units;

namespace RigScenarios.Charts.Sweeps;

/// <summary>What the cold leaves of a battery under a light, a usual and a heavy load.</summary>
public static class ColdLoadChart
{
    /// <summary>The figure: the part of the charge that comes out, over the air's temperature, a line for each load.</summary>
    /// <param name="loads">At least one; all over the same temperatures.</param>
    /// <param name="title">What the chart answers.</param>
    /// <exception cref="ArgumentException">There is no load.</exception>
    public static Figure Of(IReadOnlyList<ColdLoad> loads, string title)
    {
        ArgumentNullException.ThrowIfNull(loads);
        if (loads.Count == 0)
            throw new ArgumentException("There is no load to draw.", nameof(loads));
        var (air, given) = (ChartAxis.Of("air", TemperatureUnit.DegreeCelsius),
            ChartAxis.Of("charge that comes out", RatioUnit.Percent));
        return new LineChart
        {
            Slug = "cold-loads",
            Title = title,
            Caption = "The battery alone, full and as cold as the air, under a steady load until it stops; no cable and no "
                + "device stops it before. A heavy load warms the battery, and wind takes that away: three times the heat of "
                + "still air (common practice, no source). What stays inside comes back with rest or warmth.",
            Cautions = [DayCautions.Prediction(loads.SelectMany(load => load.Points).Select(point => point.Error)),
                DayCautions.MakersTemperatures],
            X = air,
            Panels = [new ChartPanel(given, [.. loads.Select(load => Line(load, air, given))])],
        }.ToFigure();
    }

    private static ChartLine Line(ColdLoad load, ChartAxis air, ChartAxis given) => ChartLine.Of(
        $"{load.Name}, {TradeUnits.Text(load.Power)}", air, given, load.Points.Select(point => (point.Air, point.Given)));
}
