using RigScenarios.Charts.Days;
using RigScenarios.Charts.Lines;
using RigScenarios.Sweeps;
using UnitsNet.Units;

namespace RigScenarios.Charts.Sweeps;

/// <summary>What the air's temperature does to runtime and delivered energy.</summary>
public static class OverAmbient
{
    /// <summary>The figure: runtime with the band of its expected error above, energy delivered below.</summary>
    /// <param name="table">A sweep over the air's temperature alone, rising.</param>
    /// <param name="title">What the chart answers.</param>
    /// <exception cref="ArgumentException">The sweep has more than one axis, or its axis is no temperature.</exception>
    public static Figure Of(SweepTable table, string title)
    {
        ArgumentNullException.ThrowIfNull(table);
        var axis = SweepChartAxis.Of(SweepCaption.OnlyAxis(table, nameof(OverAmbient)));
        if (axis.Axis.QuantityUnit is not TemperatureUnit)
            throw new ArgumentException(
                $"The axis {table.Axes[0].Path} is no temperature; this chart is drawn over the air's temperature.",
                nameof(table));
        return new LineChart
        {
            Slug = "over-ambient",
            Title = title,
            Caption = SweepCaption.Join(
                "The band around the runtime is what is claimed for it there, never less than measured discharges differed; "
                    + "where none was measured there is no band.",
                SweepCaption.OfRuntime(table.Rows),
                "Delivered energy is that within the plan."),
            Cautions = [.. SweepCaption.Cautions(table.Rows).Where(caution => caution != DayCautions.MakersTemperatures),
                DayCautions.MakersTemperatures],
            X = axis.Axis,
            Panels = [Runtime(table, axis), Delivered(table, axis)],
        }.ToFigure();
    }

    private static ChartPanel Runtime(SweepTable table, SweepChartAxis x)
    {
        var axis = ChartAxis.Of("runtime", DurationUnit.Hour) with { FromZero = true };
        var runtimes = table.Rows.Select(row => axis.Value(row.Result.Runtime)).ToList();
        var shares = table.Rows.Select(row => row.Result.ExpectedError.Share?.DecimalFractions ?? double.NaN).ToList();
        var line = new ChartLine("runtime", x.Values, runtimes)
        {
            Kind = LineKind.CurveWithPoints,
            Lower = [.. runtimes.Zip(shares, (hours, share) => hours * (1 - share))],
            Upper = [.. runtimes.Zip(shares, (hours, share) => hours * (1 + share))],
        };
        return new ChartPanel(axis, [line])
        {
            Limits = SweepCaption.Planned(table.Rows) is { } planned
                ? [new LimitLine($"planned day: {TradeUnits.Text(planned)}", axis.Value(planned))] : [],
        };
    }

    private static ChartPanel Delivered(SweepTable table, SweepChartAxis x)
    {
        var axis = ChartAxis.Of("energy delivered", EnergyUnit.WattHour) with { FromZero = true };
        return new ChartPanel(axis,
            [new ChartLine("energy", x.Values, [.. table.Rows.Select(row => axis.Value(row.Result.FromPacks))])
        {
            Kind = LineKind.CurveWithPoints,
            Look = 1,
        }]);
    }
}
