using System.Globalization;
using RigScenarios.Charts.Distributions;
using RigScenarios.Charts.Lines;
using RigScenarios.Charts.Rows;
using RigScenarios.Sweeps.Sensitivity;

namespace RigScenarios.Charts.Sweeps;

/// <summary>Which uncertainty matters, as pictures of the answer to that.</summary>
public static class MattersFigures
{
    /// <summary>What each uncertain thing alone does to the figure.</summary>
    /// <param name="tornado">One thing at a time; its middle is known.</param>
    /// <param name="axis">The axis, where it is more than the figure's own words and unit: clock times.</param>
    /// <param name="title">What the chart answers.</param>
    /// <exception cref="ArgumentException">The middle is not known, or there is no bar.</exception>
    public static Figure Of(Tornado tornado, ChartAxis? axis = null, string title = "What does each of them do alone?")
    {
        ArgumentNullException.ThrowIfNull(tornado);
        if (!double.IsFinite(tornado.Middle) || tornado.Bars.Count == 0)
            throw new ArgumentException("There is nothing to draw: the figure in the middle of everything is not known, or "
                + "nothing is uncertain.", nameof(tornado));
        axis ??= new ChartAxis(tornado.Figure, tornado.Unit);
        return new TornadoChart
        {
            Slug = "one-at-a-time",
            Title = title,
            Caption = "One at a time: each goes from a low value, below which "
                + $"{Tenth(tornado.LowShare)} lie, to a high one, above which {Tenth(1 - tornado.HighShare)} lie; all others "
                + "stay in their middle.",
            Value = axis,
            Middle = tornado.Middle,
            MiddleName = "all in the middle",
            Bars = [.. tornado.Bars.Select(bar =>
                new TornadoRow($"{bar.Name}, {Short(bar.LowText)} to {Short(bar.HighText)}", bar.AtLow, bar.AtHigh))],
        }.ToFigure();
    }

    /// <summary>Where the spread of the figure comes from; null where nothing varies.</summary>
    /// <param name="indices">The indices.</param>
    /// <param name="of">What the figure is, within a sentence ("the end of the day").</param>
    /// <param name="title">What the chart answers.</param>
    public static Figure? Of(SobolIndices indices, string of, string title = "Where does the spread come from?")
    {
        ArgumentNullException.ThrowIfNull(indices);
        return !(indices.Variance > 0) || indices.Things.Count == 0 ? null : new SharesOfSpreadChart
        {
            Slug = "where-from",
            Title = title,
            Caption = "Alone: what would go, on average, if that alone were known. Together with the others: what would be left "
                + "if everything else were known. Each bar holds its share with a chance of "
                + $"{Rounding.Text(indices.Level.Percent, 3)} % (bootstrap, {indices.Runs} days run)."
                + (indices.RowsUnknown > 0
                    ? $" {indices.RowsUnknown} of {indices.Rows} rows are left out: a figure of theirs is not known." : ""),
            Of = of,
            Shares = [.. indices.Things.Select(thing => new ShareOfSpread(thing.Name, Percent(thing.FirstOrder),
                Percent(thing.Total)))],
        }.ToFigure();
    }

    /// <summary>Of ten such days, how many still run at each time; null where the figure is known in fewer than two of
    /// them.</summary>
    /// <param name="sample">The figure in each of the days; those that are not a number are told and not drawn.</param>
    /// <param name="axis">Its axis.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="marks">What is marked, such as the planned end.</param>
    /// <param name="caption">What to see, and what was assumed.</param>
    public static Figure? Of(IReadOnlyList<double> sample, ChartAxis axis, string title, IReadOnlyList<ChartMark>? marks = null,
        string caption = "")
    {
        ArgumentNullException.ThrowIfNull(sample);
        ArgumentNullException.ThrowIfNull(axis);
        var known = sample.Where(value => !double.IsNaN(value)).ToList();
        var unknown = sample.Count - known.Count;
        return known.Count < 2 || !known.Exists(double.IsFinite) ? null : new LastingDays
        {
            Slug = "days-still-running",
            Title = title,
            Caption = $"{caption}{(unknown > 0 ? $" Of {unknown} more nobody can say." : "")}".Trim(),
            Time = axis,
            Ends = known,
            Marks = marks ?? [],
        }.ToFigure();
    }

    /// <summary>How the figure spreads along the axis of a sweep.</summary>
    /// <param name="bands">The quantiles, along an axis of numbers or quantities, with an uneven number of shares that lie evenly
    /// around the middle: 0.1, 0.5, 0.9.</param>
    /// <param name="axis">The axis of the figure, where it is more than its own words and unit.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="limits">What the figure is held against.</param>
    /// <exception cref="ArgumentException">There is no axis, or the shares do not lie so.</exception>
    public static Figure Of(QuantileBands bands, ChartAxis? axis = null, string title = "How far does it spread?",
        IReadOnlyList<LimitLine>? limits = null)
    {
        ArgumentNullException.ThrowIfNull(bands);
        var shares = bands.Shares;
        var half = shares.Count / 2;
        if (bands.Path.Length == 0 || shares.Count % 2 == 0 || shares.Count < 3
            || Enumerable.Range(0, half + 1).Any(at => Math.Abs(shares[at] + shares[^(at + 1)] - 1) > 1e-9))
            throw new ArgumentException("Bands are drawn along an axis, with shares that lie evenly around the middle, such as "
                + $"0.1, 0.5, 0.9; found {string.Join(", ", shares)}.", nameof(bands));
        var x = SweptValues.Of(bands.Path, [.. bands.Places.Select(place => place.At)]);
        var order = Enumerable.Range(0, bands.Places.Count).OrderBy(at => x.Values[at]).ToList();
        var unknown = bands.Places.Sum(place => place.Unknown);
        return new SpreadOverAxis
        {
            Slug = "spread-over-axis",
            Title = title,
            Caption = $"Of {bands.Places.Max(place => place.Known + place.Unknown)} days at each place."
                + (unknown > 0 ? $" Of {unknown} nobody can say: they are in no band." : ""),
            X = x.Axis,
            Y = axis ?? new ChartAxis(bands.Figure, bands.Unit),
            Places = [.. order.Select(at => x.Values[at])],
            Middle = At(half),
            Bands = [.. Enumerable.Range(0, half).Select(at => new SpreadBand(
                $"{Rounding.Text(10 * (shares[^(at + 1)] - shares[at]), 2)} of 10 days", At(at), At(shares.Count - 1 - at)))],
            Limits = limits ?? [],
        }.ToFigure();

        List<double> At(int share) => order.ConvertAll(at =>
            bands.Places[at].Values.Count == 0 ? double.NaN : bands.Places[at].Values[share]);
    }

    private static EstimatedShare Percent(IndexEstimate index) => new(100 * index.Value, 100 * index.Low, 100 * index.High);

    // A value that was drawn has as many digits as the file needs; people read three.
    private static string Short(string text)
    {
        var space = text.IndexOf(' ', StringComparison.Ordinal);
        return double.TryParse(space < 0 ? text : text[..space], NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? Rounding.Text(number, 3) + (space < 0 ? "" : text[space..]) : text;
    }

    private static string Tenth(double share) => $"{Rounding.Text(100 * share, 3)} of 100";
}
