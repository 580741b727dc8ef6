using RigScenarios.Answers;
using RigScenarios.Sweeps.Evaluation;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>
/// Asks a figure of a build's days. Where every day begins with charged batteries each day is run by itself and the tightest one
/// counts, for the reserve of the last one says nothing of the others.
/// </summary>
internal sealed class DayRuns
{
    /// <summary>Whether the days last.</summary>
    public const string LastsColumn = "lasts";

    /// <summary>The moment at which the run ends.</summary>
    public const string EndsColumn = "ends_at_h";

    private readonly List<SweepQuestion> parts;

    /// <param name="question">The question.</param>
    /// <param name="asGiven">The answer with every figure as it stands.</param>
    /// <param name="figure">The figure.</param>
    /// <param name="uncertain">What of it is uncertain.</param>
    public DayRuns(SensitivityQuestion question, RigAnswer asGiven, SweepColumn figure, UsualUncertainty uncertain)
    {
        IsOfDays = SweepColumns.Usual.Any(column => column.Name == figure.Name);
        DayByDay = figure.Name == SensitivityQuestion.UsualFigure && asGiven.EachDayBeginsAnew;
        string[] names = IsOfDays ? [figure.Name, LastsColumn, EndsColumn] : [figure.Name];
        var whole = new SweepQuestion(question.Scenario, question.Build, asGiven.Days,
            new() { Uncertain = uncertain.Fields, Correlations = uncertain.Correlations, Seed = question.Options.Seed },
            SweepColumns.Choose(question.Scenario, names)) { Today = question.Today };
        parts = DayByDay ? [.. asGiven.Days.Select(day => whole with { Days = [day] })] : [whole];
    }

    /// <summary>Whether the figure is one of the days, so that it is known whether they last.</summary>
    public bool IsOfDays { get; }

    /// <summary>Whether each day is run by itself.</summary>
    public bool DayByDay { get; }

    /// <summary>How many runs one point takes.</summary>
    public int RunsEach => parts.Count;

    /// <summary>The way that the runs go.</summary>
    public SweepWay Way(CancellationToken cancellation) => SweepRun.WayOf(parts[0], cancellation);

    /// <summary>The figure, whether the days last and when the run ends, at each point.</summary>
    /// <param name="points">Shares for each uncertain field.</param>
    /// <param name="together">Whether fields that go together are joined; else each share is one of its own field.</param>
    /// <param name="progress">Told of how many runs are done.</param>
    /// <param name="cancellation">Stops it.</param>
    public DayRun[] At(IReadOnlyList<double[]> points, bool together, IProgress<long>? progress, CancellationToken cancellation)
    {
        var runs = new DayRun[points.Count];
        Over(part => SweepRun.Points(together ? part : part with { Plan = part.Plan with { Correlations = [] } }, points, 0,
            Part(part, points.Count, progress), cancellation), runs);
        return runs;
    }

    /// <summary>The same for the samples of each value along an axis, all samples of a value together.</summary>
    /// <param name="axis">The axis.</param>
    /// <param name="samples">How many samples of each value.</param>
    /// <param name="progress">Told of how many runs are done.</param>
    /// <param name="cancellation">Stops it.</param>
    public DayRun[] Along(SweepAxis axis, int samples, IProgress<long>? progress, CancellationToken cancellation)
    {
        var runs = new DayRun[axis.Values.Count * samples];
        Over(part =>
        {
            // What goes along the axis is known there.
            var free = part.Plan.Uncertain.Where(field => field.Path != axis.Path).ToList();
            var plan = new SweepPlan
            {
                Axes = [axis], Uncertain = free, Samples = samples, Seed = part.Plan.Seed,
                Correlations = [.. part.Plan.Correlations.Where(pair => pair.First != axis.Path && pair.Second != axis.Path)],
            };
            return SweepRun.Records(part with { Plan = plan }, Part(part, runs.Length, progress), cancellation);
        }, runs);
        return runs;
    }

    private void Over(Func<SweepQuestion, IEnumerable<SweepRecord>> run, DayRun[] runs)
    {
        foreach (var part in parts)
        {
            var at = 0;
            foreach (var record in run(part))
            {
                var one = Read(record.Cells);
                runs[at] = part == parts[0] ? one : DayRun.Tighter(runs[at], one);
                at++;
            }
        }
    }

    private DayRun Read(IReadOnlyList<SweepCell> cells) => IsOfDays
        ? new(Number(cells[0]), cells[1].YesNo, DayByDay && parts.Count > 1 ? double.NaN : Number(cells[2]))
        : new(Number(cells[0]), null, double.NaN);

    private Passed? Part(SweepQuestion part, long count, IProgress<long>? progress) =>
        progress is null ? null : new Passed(progress, parts.IndexOf(part) * count);

    private static double Number(SweepCell cell) => cell.Number ?? double.NaN;

    private sealed class Passed(IProgress<long> whole, long before) : IProgress<SweepProgress>
    {
        public void Report(SweepProgress value) => whole.Report(before + value.Done);
    }
}

/// <summary>What one run gives.</summary>
/// <param name="Figure">The figure; not a number where it is not known.</param>
/// <param name="Lasts">Whether the days last; null where the figure is none of the days.</param>
/// <param name="EndsAt">When the run ends, h from midnight of the first day; not a number where that is not known.</param>
internal readonly record struct DayRun(double Figure, bool? Lasts, double EndsAt)
{
    /// <summary>Two days that begin alike: the tighter one counts, and both must last.</summary>
    public static DayRun Tighter(DayRun one, DayRun other) => new(
        double.IsNaN(one.Figure) || double.IsNaN(other.Figure) ? double.NaN : Math.Min(one.Figure, other.Figure),
        one.Lasts is { } first && other.Lasts is { } second ? first && second : null, double.NaN);
}
