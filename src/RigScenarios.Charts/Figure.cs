using Plotly.NET;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts;

/// <summary>
/// A finished chart with all that a reader needs beside it: title, caption, cautions, a description for those who cannot see
/// it, and its numbers as a table. Immutable; made by a chart's <c>ToFigure()</c> and shown on a page or in a notebook.
/// </summary>
public sealed record Figure
{
    /// <summary>Short name in lower case with hyphens, the same for the same chart at every run ("voltage-over-day").</summary>
    public required string Slug
    {
        get;
        init => field = IsSlug(value)
            ? value
            : throw new ArgumentException(
                $"\"{value}\" is no short name for a figure; use lower-case letters, digits and hyphens, such as "
                    + "\"voltage-over-day\".", nameof(value));
    }

    /// <summary>What the chart answers, as a line above it.</summary>
    public required string Title { get; init; }

    /// <summary>One or two sentences below the chart: what to see, what was assumed.</summary>
    public string Caption { get; init; } = "";

    /// <summary>Cautions that belong to the result, each a sentence of its own below the caption.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>The chart in words, for screen readers and for text-only output.</summary>
    public required string AlternativeText { get; init; }

    /// <summary>
    /// The chart as plotly.js takes it: an object with <c>data</c>, <c>layout</c>, <c>config</c>, and <c>narrow</c>, the members
    /// of the layout that differ on a phone.
    /// </summary>
    public required string Specification { get; init; }

    /// <summary>The chart's numbers.</summary>
    public required ChartTable Data { get; init; }

    /// <summary>Height of the chart in pixels.</summary>
    public int Height { get; init; } = ChartStyle.Height;

    /// <summary>
    /// The open door for a chart that none of the building blocks draws: any chart of Plotly.NET, in the house style as far as
    /// its own layout does not say otherwise.
    /// </summary>
    /// <param name="slug">Short name, see <see cref="Slug"/>.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="alternativeText">The chart in words.</param>
    /// <param name="chart">The chart, best made with <c>UseDefaults: false</c>.</param>
    /// <param name="data">The numbers that it shows.</param>
    /// <exception cref="ArgumentException">It has a trace that the pages' script does not draw:
    /// <see cref="DrawnTraces.Kinds"/>.</exception>
    public static Figure FromChart(string slug, string title, string alternativeText, GenericChart chart,
        ChartTable data)
    {
        var (traces, layout) = OtherChart.Read(chart);
        // It would draw nothing, and say so only in the browser.
        if (traces.Select(trace => trace.Kind).FirstOrDefault(kind => !DrawnTraces.Kinds.Contains(kind)) is { } other)
            throw new ArgumentException($"A page does not draw \"{other}\". It draws "
                + $"{string.Join(", ", DrawnTraces.Kinds.Order(StringComparer.Ordinal))}.", nameof(chart));
        return new()
        {
            Slug = slug,
            Title = title,
            AlternativeText = alternativeText,
            Specification = new PlotlySpecification(traces).With(layout).ToJson(),
            Data = data,
        };
    }

    /// <summary>A name as part of a slug: what is neither letter nor digit becomes a hyphen.</summary>
    internal static string SlugOf(string name) =>
        new([.. name.ToLowerInvariant().Select(letter => char.IsAsciiLetterOrDigit(letter) ? letter : '-')]);

    internal static bool IsSlug(string text) =>
        text.Length > 0 && text.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-');
}
