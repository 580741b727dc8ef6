using RigScenarios.Charts.Lines;
using RigScenarios.Charts.Placement;

namespace RigScenarios.Charts.Fits;

/// <summary>What a fit says of one value, or of two together: how likely each share is, before and after.</summary>
public static class FitPosterior
{
    private const int BeforeLook = 1;
    private const int AfterLook = 0;
    private const int Points = 121;

    // A circle of this radius holds 95 % of a standard normal in two dimensions: 1 - exp(-r²/2) = 0.95.
    private static readonly double Radius95 = Math.Sqrt(-2 * Math.Log(0.05));

    /// <summary>The figure of one value: two curves, and its 95 % interval shaded.</summary>
    /// <param name="value">The value.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="caption">What to see and what was assumed.</param>
    /// <param name="cautions">Cautions that belong to the result.</param>
    public static Figure Of(FittedValue value, string title, string caption = "", IReadOnlyList<string>? cautions = null)
    {
        ArgumentNullException.ThrowIfNull(value);
        var (low, high) = value.Percent;
        return new LineChart
        {
            Slug = $"fit-{Figure.SlugOf(value.Name)}",
            Title = title,
            Caption = $"{caption} Shaded: 95 % of what is likely now, {Rounding.Text(low, 3)} to {Rounding.Text(high, 3)} %."
                .TrimStart(),
            Cautions = cautions ?? [],
            X = new ChartAxis($"{value.Name}, share {value.Of}", "%"),
            Panels =
            [
                new ChartPanel(new ChartAxis("chance in each step of 1 %", "%") { FromZero = true },
                [
                    Curve("now", value.Log, value.Deviation, AfterLook),
                    Curve("before", value.PriorLog, value.PriorDeviation, BeforeLook),
                ]),
            ],
            Blocks = [new ChartBlock("", low, high) { IsEmphasised = true }],
        }.ToFigure();
    }

    /// <summary>The figure of two values together: the areas that hold 95 % of what is likely, before and after. A long and
    /// narrow one says that only the two together are known.</summary>
    /// <param name="x">The value to the right.</param>
    /// <param name="y">The value upwards.</param>
    /// <param name="correlation">Of their logarithms after the fit, above -1 and below 1; before, they are independent.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="caption">What to see and what was assumed.</param>
    /// <param name="cautions">Cautions that belong to the result.</param>
    /// <exception cref="ArgumentOutOfRangeException">The correlation is not between -1 and 1.</exception>
    public static Figure Joint(FittedValue x, FittedValue y, double correlation, string title, string caption = "",
        IReadOnlyList<string>? cautions = null)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        ArgumentOutOfRangeException.ThrowIfLessThan(correlation, -1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(correlation, 1);
        var best = new ChartLine("found", [100 * Math.Exp(x.Log)], [100 * Math.Exp(y.Log)])
        {
            Kind = LineKind.Points, Look = AfterLook, IsNamedInLegend = true,
        };
        var now = Ellipse("95 %, now", x.Log, x.Deviation, y.Log, y.Deviation, correlation, AfterLook);
        var before = Ellipse("95 %, before", x.PriorLog, x.PriorDeviation, y.PriorLog, y.PriorDeviation, 0, BeforeLook);
        var axis = new ChartAxis($"{x.Name}, share {x.Of}", "%");
        var range = AxisRange.For(axis, now.X.Concat(before.X), pad: true);
        return new LineChart
        {
            Slug = $"fit-{Figure.SlugOf(x.Name)}-{Figure.SlugOf(y.Name)}",
            Title = title,
            Caption = caption,
            Cautions = cautions ?? [],
            AlternativeText = $"Areas that hold 95 % of what is likely of {x.Name} ({x.Of}, %) and {y.Name} ({y.Of}, %). Found: "
                + $"{Rounding.Text(100 * Math.Exp(x.Log), 3)} and {Rounding.Text(100 * Math.Exp(y.Log), 3)} %, correlation "
                + $"{Rounding.Text(correlation, 2)}.",
            X = axis with { From = range.From, To = range.To },
            Panels = [new ChartPanel(new ChartAxis($"{y.Name}, share {y.Of}", "%"), [now, before, best])],
        }.ToFigure();
    }

    /// <summary>Normal in the logarithm; a step of 1 % is so narrow that its chance is the density times its width.</summary>
    private static ChartLine Curve(string name, double log, double deviation, int look)
    {
        var steps = Enumerable.Range(0, Points).Select(i => -3.2 + 6.4 * i / (Points - 1)).ToList();
        var shares = steps.ConvertAll(step => Math.Exp(log + step * deviation));
        // Chance in per cent of a step of 0.01, at a share s: 100·0.01·density(ln s)/s.
        var chances = steps.Zip(shares, (step, share) =>
            Math.Exp(-step * step / 2) / (Math.Sqrt(2 * Math.PI) * deviation * share)).ToList();
        return new ChartLine(name, [.. shares.Select(share => 100 * share)], chances) { Look = look, IsNamedInLegend = true };
    }

    private static ChartLine Ellipse(string name, double logX, double deviationX, double logY, double deviationY,
        double correlation, int look)
    {
        var other = Math.Sqrt(1 - correlation * correlation);
        var angles = Enumerable.Range(0, Points).Select(i => 2 * Math.PI * i / (Points - 1)).ToList();
        return new ChartLine(name,
            [.. angles.Select(angle => 100 * Math.Exp(logX + Radius95 * deviationX * Math.Cos(angle)))],
            [.. angles.Select(angle => 100 * Math.Exp(logY + Radius95 * deviationY
                * (correlation * Math.Cos(angle) + other * Math.Sin(angle))))])
        {
            Look = look,
            IsNamedInLegend = true,
        };
    }
}
