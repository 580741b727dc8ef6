using RigScenarios.Charts.Lines;
using RigScenarios.Sweeps;
using UnitsNet.Units;

namespace RigScenarios.Charts.Sweeps;

/// <summary>A build's sweep with the name of its load mix, as one curve of a chart.</summary>
/// <param name="Name">The load mix in plain words ("with a monitor").</param>
/// <param name="Table">A sweep over the battery's energy alone.</param>
public sealed record LoadMixSweep(string Name, SweepTable Table);

/// <summary>How long each load mix runs on batteries of different sizes.</summary>
public static class RuntimeOverCapacity
{
    /// <summary>The figure: a curve for each load mix, and the planned length as a line across.</summary>
    /// <param name="mixes">At least one; all over the same day.</param>
    /// <param name="title">What the chart answers.</param>
    /// <exception cref="ArgumentException">There is no mix, or a sweep has more than one axis.</exception>
    public static Figure Of(IReadOnlyList<LoadMixSweep> mixes, string title)
    {
        ArgumentNullException.ThrowIfNull(mixes);
        if (mixes.Count == 0)
            throw new ArgumentException("There is no load mix to draw.", nameof(mixes));
        var rows = mixes.SelectMany(mix => mix.Table.Rows).ToList();
        var runtime = ChartAxis.Of("runtime", DurationUnit.Hour) with { FromZero = true };
        var axes = mixes.Select(mix => SweepChartAxis.Of(SweepCaption.OnlyAxis(mix.Table, nameof(RuntimeOverCapacity)))).ToList();
        var planned = SweepCaption.Planned(rows);
        return new LineChart
        {
            Slug = "runtime-over-capacity",
            Title = title,
            Caption = SweepCaption.Join(
                "A steep piece of a curve is a battery that just carries over a break, in which next to nothing is drawn.",
                SweepCaption.OfRuntime(rows),
                "Only the battery's energy was changed: its mass and size stay those of the present part, and so do its "
                    + "voltage and its greatest current."),
            Cautions = SweepCaption.Cautions(rows),
            X = axes[0].Axis,
            Panels =
            [
                new ChartPanel(runtime, [.. mixes.Select((mix, i) =>
                    new ChartLine(mix.Name, axes[i].Values,
                        [.. mix.Table.Rows.Select(row => runtime.Value(row.Result.Runtime))]))])
                {
                    Limits = planned is { } day ? [new LimitLine($"planned day: {TradeUnits.Text(day)}", runtime.Value(day))]
                        : [],
                },
            ],
        }.ToFigure();
    }
}
