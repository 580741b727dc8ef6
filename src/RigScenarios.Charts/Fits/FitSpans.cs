using RigScenarios.Charts.Bars;

namespace RigScenarios.Charts.Fits;

/// <summary>What a fit knows of each thing, before and after, as spans below each other.</summary>
public static class FitSpans
{
    /// <summary>The figure: for each value two bars over the 95 % intervals, the second one emphasised.</summary>
    /// <param name="values">At least one.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="caption">What to see and what was assumed.</param>
    /// <param name="cautions">Cautions that belong to the result.</param>
    /// <exception cref="InvalidOperationException">There is no value, or two have the same name.</exception>
    public static Figure Of(IReadOnlyList<FittedValue> values, string title, string caption = "",
        IReadOnlyList<string>? cautions = null)
    {
        ArgumentNullException.ThrowIfNull(values);
        return new BarChart
        {
            Slug = "fit-spans",
            Title = title,
            Caption = caption.Length > 0 ? caption : "Each bar holds 95 % of what is likely; plain: before, hatched: with your "
                + "notes and logs. 100 % is what label or data sheet say.",
            Cautions = cautions ?? [],
            Value = new ChartAxis("share of label or data sheet", "%"),
            Bars = [.. values.SelectMany(Bars)],
            Limits = [new BarLimit("as the label says", 100)],
        }.ToFigure();
    }

    private static IEnumerable<ChartBar> Bars(FittedValue value)
    {
        yield return Bar($"{value.Name}, before", Math.Exp(value.PriorLog), value.PriorPercent);
        yield return Bar($"{value.Name}, now", Math.Exp(value.Log), value.Percent) with { IsEmphasised = true };
    }

    private static ChartBar Bar(string name, double share, (double Low, double High) span) => new(name, span.High, span.Low)
    {
        Note = $"{Rounding.Text(100 * share, 3)} % ({Rounding.Text(span.Low, 3)} to {Rounding.Text(span.High, 3)})",
    };
}
