using RigScenarios.Charts.Lines;
using RigScenarios.Sweeps;
using UnitsNet.Units;

namespace RigScenarios.Charts.Sweeps;

/// <summary>Any sweep as a picture: over temperature with its own chart, over one other field as a curve of the runtime, over two
/// as a map.</summary>
public static class SweepChart
{
    /// <summary>The figure.</summary>
    /// <param name="table">A sweep with one or two axes.</param>
    /// <param name="title">What the chart answers; null says which runtime it is.</param>
    public static Figure Of(SweepTable table, string? title = null)
    {
        ArgumentNullException.ThrowIfNull(table);
        title ??= $"Runtime of {table.Build} on {string.Join(", ", table.Days)}";
        if (table.Axes.Count == 2 && table.Axes.All(axis => axis.Values.Count > 1))
            return SweepHeatMap.Of(table, title);
        if (table.Axes.Count == 2)
            return OverOneField(table, SweepChartAxis.Of(table.Axes.MaxBy(axis => axis.Values.Count)!), title);
        var x = SweepChartAxis.Of(table.Axes[0]);
        return x.Axis.QuantityUnit is TemperatureUnit ? OverAmbient.Of(table, title) : OverOneField(table, x, title);
    }

    private static Figure OverOneField(SweepTable table, SweepChartAxis x, string title)
    {
        var runtime = ChartAxis.Of("runtime", DurationUnit.Hour) with { FromZero = true };
        return new LineChart
        {
            Slug = "runtime-over-field",
            Title = title,
            Caption = SweepCaption.Join([SweepCaption.OfRuntime(table.Rows), .. table.Notices]),
            Cautions = SweepCaption.Cautions(table.Rows),
            X = x.Axis,
            Panels =
            [
                new ChartPanel(runtime,
                    [new ChartLine("runtime", x.Values,
                    [.. table.Rows.Select(row => runtime.Value(row.Result.Runtime))]) { Kind = LineKind.CurveWithPoints }])
                {
                    Limits = SweepCaption.Planned(table.Rows) is { } planned
                        ? [new LimitLine($"planned day: {TradeUnits.Text(planned)}", runtime.Value(planned))] : [],
                },
            ],
        }.ToFigure();
    }
}
