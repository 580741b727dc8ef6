using RigScenarios.Charts.Lines;

namespace RigScenarios.Charts.Fits;

/// <summary>A power log as it is compared: a row for each stretch of it.</summary>
/// <param name="Name">Which log it is.</param>
/// <param name="Hours">Middle of each stretch, hours from the log's start, rising.</param>
/// <param name="Measured">Mean voltage, V; not-a-number where there was none.</param>
/// <param name="Predicted">Voltage that the model gives with the measured current, V.</param>
/// <param name="IsCompared">Whether the stretch is compared; false in a gap of the log.</param>
public sealed record ComparedLog(string Name, IReadOnlyList<double> Hours, IReadOnlyList<double> Measured,
    IReadOnlyList<double> Predicted, IReadOnlyList<bool> IsCompared)
{
    /// <summary>Mean current, A, positive on discharge; empty where it is not to be shown.</summary>
    public IReadOnlyList<double> Amperes { get; init; } = [];

    /// <summary>Lower edge of what is predicted, V; empty for no band.</summary>
    public IReadOnlyList<double> Lowest { get; init; } = [];

    /// <summary>Upper edge of what is predicted, V; empty for no band.</summary>
    public IReadOnlyList<double> Highest { get; init; } = [];
}

/// <summary>A log's voltage with the predicted one over it, and by how much they differ.</summary>
public static class LogOverPrediction
{
    private const int MeasuredLook = 0;
    private const int PredictedLook = 1;
    private const int CurrentLook = 2;

    /// <summary>The figure: voltages above, their difference below, and the current where it is given. What was not compared is
    /// shaded.</summary>
    /// <param name="slug">Short name of the figure.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="log">At least one stretch.</param>
    /// <param name="caption">What to see and what was assumed.</param>
    /// <param name="cautions">Cautions that belong to the result.</param>
    /// <exception cref="ArgumentException">The columns of the log differ in length, or it is empty.</exception>
    public static Figure Of(string slug, string title, ComparedLog log, string caption = "",
        IReadOnlyList<string>? cautions = null)
    {
        ArgumentNullException.ThrowIfNull(log);
        var rows = log.Hours.Count;
        int[] others = [log.Measured.Count, log.Predicted.Count, log.IsCompared.Count];
        int[] perhaps = [log.Amperes.Count, log.Lowest.Count, log.Highest.Count];
        if (rows == 0 || others.Any(count => count != rows) || perhaps.Any(count => count != 0 && count != rows))
            throw new ArgumentException($"The log \"{log.Name}\" has {rows} times, and {string.Join(", ", others)} voltages "
                + "measured, predicted, and marks of what is compared; it needs as many of each, at least one.", nameof(log));
        var gaps = Gaps(log).ToList();
        return new LineChart
        {
            Slug = slug,
            Title = title,
            Caption = gaps.Count == 0 ? caption : $"{caption} Shaded: not compared.".TrimStart(),
            Cautions = cautions ?? [],
            X = new ChartAxis("time from the log's start", "h"),
            Panels = [.. Panels(log)],
            Blocks = gaps,
        }.ToFigure();
    }

    private static IEnumerable<ChartPanel> Panels(ComparedLog log)
    {
        yield return new ChartPanel(new ChartAxis("battery voltage", "V"),
        [
            new ChartLine("measured", log.Hours, log.Measured) { Look = MeasuredLook },
            new ChartLine("predicted", log.Hours, log.Predicted)
            {
                Look = PredictedLook,
                Lower = log.Lowest.Count > 0 ? log.Lowest : null,
                Upper = log.Highest.Count > 0 ? log.Highest : null,
            },
        ]);
        // Where nothing is compared a difference would look like one.
        var differences = log.Hours.Select((_, i) => log.IsCompared[i] ? 1000 * (log.Measured[i] - log.Predicted[i])
            : double.NaN).ToList();
        yield return new ChartPanel(new ChartAxis("measured less predicted", "mV"),
            [new ChartLine("difference", log.Hours, differences) { Look = MeasuredLook }])
        {
            Limits = [new LimitLine("as predicted", 0)],
        };
        if (log.Amperes.Count > 0)
            yield return new ChartPanel(new ChartAxis("current", "A") { FromZero = true },
                [new ChartLine("current", log.Hours, log.Amperes) { Look = CurrentLook }]);
    }

    /// <summary>From the last compared stretch before to the first one after: between two middles lies half of each.</summary>
    private static IEnumerable<ChartBlock> Gaps(ComparedLog log)
    {
        for (var i = 0; i < log.Hours.Count; i++)
        {
            if (log.IsCompared[i])
                continue;
            var first = i;
            while (i + 1 < log.Hours.Count && !log.IsCompared[i + 1])
                i++;
            var from = first == 0 ? log.Hours[0] : (log.Hours[first - 1] + log.Hours[first]) / 2;
            var to = i == log.Hours.Count - 1 ? log.Hours[i] : (log.Hours[i] + log.Hours[i + 1]) / 2;
            yield return new ChartBlock("", from, to) { IsEmphasised = true };
        }
    }
}
