using Plotly.NET;
using RigScenarios.Charts;
using RigScenarios.Charts.Bars;
using RigScenarios.Charts.HeatMaps;
using RigScenarios.Charts.Lines;
using RigScenarios.Charts.Pages;
using Figure = RigScenarios.Charts.Figure;

namespace RigScenarios.Notebooks.Tests.Charts;

/// <summary>Charts that are hard to lay out: many lines that end together, short time blocks with long names, long names of bars.
/// All values are invented.</summary>
internal static class ChartGallery
{
    public const int Count = 6;

    public static ChartPage Page() => new ChartPage { Title = "Charts that are hard to lay out" }
        .With(Discharges()).With(Crowd()).With(Day()).With(ColdAndLoad()).With(Joints()).With(Spans());

    /// <summary>What must never come out: two texts at one place, drawn through the open door for charts of one's own.</summary>
    public static Figure TwoTextsAtOnePlace()
    {
        var layout = new Layout();
        layout.SetProperty("annotations",
            new[] { "first", "second" }.Select(text => new { text, x = 1, y = 1, showarrow = false }).ToArray());
        var trace = new Trace("scatter");
        trace.SetProperty("x", new[] { 0, 2 });
        trace.SetProperty("y", new[] { 0, 2 });
        var chart = GenericChart.setLayout(layout, GenericChart.ofTraceObject(false, trace));
        return Figure.FromChart("overlap", "Two texts", "Two texts at one place.", chart, ChartTable.Of("x").With(1));
    }

    private static Figure Discharges() => Voltage("discharges", [
        Discharge("98 Wh at −8 °C", 2.1, 16.2) with { EndCause = "voltage cut-off" },
        Discharge("150 Wh at −8 °C", 3.4, 16.3) with { EndCause = "plate limit" },
        Discharge("230 Wh", 5, 16.4), Discharge("2 × 98 Wh", 5, 16)]);

    private static Figure Crowd() => Voltage(
        "crowd",
        [.. Enumerable.Range(0, 9)
        .Select(i => Discharge($"battery number {i}", 2 + i * 0.02, 16 + i * 0.01) with { EndCause = "voltage cut-off" })]);

    private static Figure Voltage(string slug, IReadOnlyList<ChartLine> lines) => new LineChart
    {
        Slug = slug, Title = "Battery voltage", X = new ChartAxis("time since start", "h"),
        Panels = [new ChartPanel(new ChartAxis("battery voltage", "V"),
            lines) { Limits = [new LimitLine("camera cut-off 12.5 V", 12.5)] }],
    }.ToFigure();

    private static Figure Day()
    {
        double[] starts = [6, 7.25, 10, 10.5, 11.25, 15, 16];
        return new LineChart
        {
            Slug = "day", Title = "The day, hour by hour", X = ChartAxis.ClockTime(),
            Blocks =
            [
                new("rig and test", 6, 7.25), new("scene 12, exterior", 7.25, 10), new("company move", 10, 10.5),
                new("lunch", 10.5, 11.25),
                new("scene 14, interior", 11.25, 15), new("pick-ups", 15, 16),
            ],
            Panels =
            [
                new ChartPanel(new ChartAxis("battery voltage", "V"),
                    [new ChartLine("pack", [6, 11, 16], [16.5, 15, 12.9]) { EndCause = "empty" }]),
                new ChartPanel(new ChartAxis("power", "W"),
                [
                    new ChartLine("camera", starts, [20, 42, 42, 10, 42, 30, 30]) { Kind = LineKind.Steps },
                    new ChartLine("monitor", starts, [12, 12, 12, 0, 12, 12, 12]) { Kind = LineKind.Steps },
                ]),
                new ChartPanel(new ChartAxis("air temperature", "°C"),
                    [new ChartLine("air", [6, 9, 12, 16], [-8, -4, 1, -2]) { Kind = LineKind.CurveWithPoints,
                        Lower = [-10, -6, -1, -4], Upper = [-6, -2, 3, 0] }]),
            ],
        }.ToFigure();
    }

    private static Figure ColdAndLoad()
    {
        double[] cold = [-20, -15, -10, -5, 0, 5, 10, 15, 20];
        double[] loads = [30, 40, 50, 60, 70, 80];
        return new HeatMapChart
        {
            Slug = "cold-and-load", Title = "Runtime over cold and load", X = new ChartAxis("air temperature", "°C"),
            Y = new ChartAxis("load", "W"),
            Value = new ChartAxis("runtime", "h"), Columns = cold, Rows = loads,
            Cells = [.. loads.Select(watts => cold.Select(celsius => 98 * (1 + celsius * 0.012) / watts).ToList())],
            Threshold = new HeatMapThreshold("until lunch: 2 h", 2),
        }.ToFigure();
    }

    private static Figure Joints() => new BarChart
    {
        Slug = "joints", Title = "What each joint carries", Value = new ChartAxis("moment", "N·m"),
        Bars =
        [
            new("top handle screws", 2.1), new("base plate to shoulder pad, with the long lens", 6.4) { IsEmphasised = true },
            new("monitor arm", 0.8),
        ],
        Limits = [new("rated 5 N·m", 5), new("arm 4.8 N·m", 4.8)],
    }.ToFigure();

    private static Figure Spans() => new BarChart
    {
        Slug = "spans", Title = "What matters most", Value = new ChartAxis("runtime", "h"),
        Bars = [new("cold −20 to 10 °C", 4.2, 2.1), new("age 0 to 500 cycles", 3.9, 2.9), new("monitor brightness", 3.6, 3.2)],
    }.ToFigure();

    private static ChartLine Discharge(string name, double end, double start)
    {
        var x = Enumerable.Range(0, 61).Select(i => i * end / 60).ToList();
        return new ChartLine(name, x, [.. x.Select(t => start - 1.2 * t / end - 2.5 * Math.Pow(t / end, 8))]);
    }
}
