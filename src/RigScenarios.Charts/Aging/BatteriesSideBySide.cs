using RigScenarios.Batteries;
using RigScenarios.Charts.Lines;
using UnitsNet.Units;

namespace RigScenarios.Charts.Aging;

/// <summary>One battery of several, emptied under the load that all of them get.</summary>
/// <param name="Name">Which ("new", "after three years", "mine").</param>
/// <param name="Discharge">How it went, with its series.</param>
public sealed record EmptiedBattery(string Name, DischargeResult Discharge);

/// <summary>Several batteries under one load: voltage over time, and where and why each ends.</summary>
public static class BatteriesSideBySide
{
    /// <summary>The figure.</summary>
    /// <param name="batteries">At least one, each with a name of its own.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="caption">What to see and what was assumed: the load and the air at least.</param>
    /// <param name="cautions">Cautions that belong to the result.</param>
    /// <exception cref="ArgumentException">There is none, or one was emptied without keeping its series.</exception>
    public static Figure Of(IReadOnlyList<EmptiedBattery> batteries, string title, string caption,
        IReadOnlyList<string>? cautions = null)
    {
        ArgumentNullException.ThrowIfNull(batteries);
        if (batteries.Count == 0 || batteries.Any(battery => battery.Discharge.Series.Count == 0))
            throw new ArgumentException("Each battery needs the points of its discharge: give DischargeOptions whose "
                + "SeriesPoints is greater than 0.", nameof(batteries));
        var (time, voltage) = (ChartAxis.Of("time under load", DurationUnit.Hour),
            ChartAxis.Of("battery voltage", ElectricPotentialUnit.Volt));
        // One cause for all is said once.
        var causes = batteries.Select(battery => battery.Discharge.Cause).Distinct().ToList();
        return new LineChart
        {
            Slug = "batteries-side-by-side",
            Title = title,
            Caption = causes.Count > 1 ? caption : $"{caption} What ends each: {causes[0].InWords()}.".TrimStart(),
            Cautions = cautions ?? [],
            X = time,
            Panels =
            [
                new ChartPanel(voltage,
                [
                    .. batteries.Select(battery => ChartLine.Of(battery.Name, time, voltage,
                        battery.Discharge.Series.Select(point => (point.Time, point.Voltage))) with
                    {
                        EndCause = TradeUnits.Text(battery.Discharge.EndTime)
                            + (causes.Count > 1 ? $", {battery.Discharge.Cause.InWords()}" : ""),
                    }),
                ]),
            ],
        }.ToFigure();
    }
}
