using RigScenarios.Charts.HeatMaps;
using RigScenarios.Sweeps.Evaluation;

namespace RigScenarios.Charts.Sweeps;

/// <summary>In how many of ten such days something holds, over two fields that a sweep varied.</summary>
public static class ChanceContours
{
    private const double Days = 10;

    /// <summary>The figure: the sweep's first axis to the right, its second upwards.</summary>
    /// <param name="question">What was asked, with two axes of at least two values each.</param>
    /// <param name="records">All of its records, in their order.</param>
    /// <param name="holds">Which of its columns of yes and no.</param>
    /// <param name="title">What the chart answers.</param>
    /// <param name="wanted">Where a thick line is drawn, in days of 10; null draws none.</param>
    /// <param name="counted">What is counted, in words ("days of 10 that last"); null makes that from the column.</param>
    /// <param name="upwards">The second axis as people read it, with a number for each of its values; null reads the
    /// values.</param>
    /// <exception cref="ArgumentException">The plan has not two axes of numbers or quantities, records are missing, or the
    /// question has no such column.</exception>
    public static Figure Of(SweepQuestion question, IReadOnlyList<SweepRecord> records, string holds, string title,
        double? wanted = 9, string? counted = null, SweepChartAxis? upwards = null)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(records);
        if (question.Plan.Axes.Count != 2 || question.Plan.Axes.Any(axis => axis.Values.Count < 2))
            throw new ArgumentException("Lines over two fields take a sweep with two axes of two values or more.",
                nameof(question));
        if (records.Count != question.Plan.Count)
            throw new ArgumentException($"{records.Count} records of {question.Plan.Count}: all are needed.", nameof(records));
        var (x, y) = (SweepChartAxis.Of(question.Plan.Axes[0]), upwards ?? SweepChartAxis.Of(question.Plan.Axes[1]));
        if (y.Values.Count != question.Plan.Axes[1].Values.Count)
            throw new ArgumentException($"{y.Values.Count} numbers for {question.Plan.Axes[1].Values.Count} values.",
                nameof(upwards));
        var place = SweepLines.Place(question, holds, ColumnKind.YesNo);
        var each = question.Plan.SamplesEach;
        var unknown = records.Count(one => one.Cells[place].YesNo is null);
        var (columns, rows) = (Order(x.Values), Order(y.Values));
        return ContourChart.Of(new HeatMapChart
        {
            Slug = "chance-lines",
            Title = title,
            Caption = $"Of {each} days at each of {x.Values.Count * y.Values.Count} places."
                + (unknown > 0 ? $" Of {unknown} nobody can say: they count neither way." : ""),
            X = x.Axis,
            Y = y.Axis,
            Value = new ChartAxis(counted ?? $"of {Days} days, {holds.Replace('_', ' ')}"),
            Columns = [.. columns.Select(at => x.Values[at])],
            Rows = [.. rows.Select(at => y.Values[at])],
            Cells = [.. rows.Select(row => columns.ConvertAll(column => Share(column * y.Values.Count + row)))],
            BlankMeans = "nobody can say of any of the days there",
            Threshold = wanted is { } days ? new HeatMapThreshold($"{Rounding.Text(days)} of {Days} days", days) : null,
        });

        double Share(int combination)
        {
            var (yes, known) = (0, 0);
            for (var i = combination * each; i < (combination + 1) * each; i++)
            {
                known += records[i].Cells[place].YesNo is null ? 0 : 1;
                yes += records[i].Cells[place].YesNo == true ? 1 : 0;
            }

            return known > 0 ? Days * yes / known : double.NaN;
        }
    }

    // A list of values need not rise; a map does.
    private static List<int> Order(IReadOnlyList<double> values) =>
        [.. Enumerable.Range(0, values.Count).OrderBy(place => values[place])];
}
