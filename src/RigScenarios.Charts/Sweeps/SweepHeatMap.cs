using RigScenarios.Charts.HeatMaps;
using RigScenarios.Sweeps;
using UnitsNet.Units;

namespace RigScenarios.Charts.Sweeps;

/// <summary>The runtime over two fields of a scenario as a map, with a line along which the planned day is just
/// reached.</summary>
public static class SweepHeatMap
{
    /// <summary>The figure: the sweep's first axis to the right, its second upwards.</summary>
    /// <param name="table">A sweep with two axes of at least two values each.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="present">
    /// The present value on each axis, in the order of the axes and as the scenario file says it ("-8 °C", "190 Wh"), to be
    /// ringed; null marks none. It stands out best where it is one of the sweep's values.
    /// </param>
    /// <exception cref="ArgumentException">The sweep does not have two axes, or a present value is not of its axis's
    /// kind.</exception>
    public static Figure Of(SweepTable table, string title, (string First, string Second)? present = null)
    {
        ArgumentNullException.ThrowIfNull(table);
        if (table.Axes.Count != 2)
            throw new ArgumentException($"The map takes a sweep with two axes; this one has {table.Axes.Count}.", nameof(table));
        var (x, y) = (SweepChartAxis.Of(table.Axes[0]), SweepChartAxis.Of(table.Axes[1]));
        var runtime = ChartAxis.Of("runtime", DurationUnit.Hour);
        var figure = new HeatMapChart
        {
            Slug = "runtime-map",
            Title = title,
            Caption = SweepCaption.Join(
                present is { } now ? $"The ring marks the present values: {Signed(now.First)} and {Signed(now.Second)}." : "",
                SweepCaption.OfRuntime(table.Rows)),
            Cautions = SweepCaption.Cautions(table.Rows),
            X = x.Axis,
            Y = y.Axis,
            Value = runtime,
            Columns = [.. x.Values.Distinct().Order()],
            Rows = [.. y.Values.Distinct().Order()],
            Cells = Cells(table, x, y, runtime),
            Threshold = SweepCaption.Planned(table.Rows) is { } planned
                ? new HeatMapThreshold($"lasts the day: {TradeUnits.Text(planned)}", runtime.Value(planned))
                : null,
        }.ToFigure();
        return present is { } values ? PresentValueMark.On(figure, x.Read(values.First), y.Read(values.Second)) : figure;
    }

    private static List<IReadOnlyList<double>> Cells(SweepTable table, SweepChartAxis x, SweepChartAxis y, ChartAxis runtime)
    {
        // The last axis runs fastest in the table; in the map each row is one value of it.
        var cells = new Dictionary<(double X, double Y), double>();
        for (var i = 0; i < table.Rows.Count; i++)
            cells[(x.Values[i / y.Values.Count], y.Values[i % y.Values.Count])] = runtime.Value(table.Rows[i].Result.Runtime);
        return [.. y.Values.Distinct().Order()
            .Select(row => (IReadOnlyList<double>)[.. x.Values.Distinct().Order().Select(column => cells[(column, row)])])];
    }

    private static string Signed(string text) => text.Replace("-", Rounding.Minus, StringComparison.Ordinal);
}
