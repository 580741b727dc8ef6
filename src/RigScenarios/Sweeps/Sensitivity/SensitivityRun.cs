using RigScenarios.Answers;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Evaluation;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>Finds which uncertainty matters.</summary>
public static class SensitivityRun
{
    // A whole answer takes some ten times as long as its days alone: for the progress that is told.
    private const int WholeWeight = 10;

    /// <summary>Runs a question: everything as given, one thing at a time, the design for the shares of the variance, the whole
    /// answer. The same seed gives the same result on any number of cores.</summary>
    /// <param name="question">The question.</param>
    /// <param name="progress">Told of the part that is done, 0…1; null for nobody.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ArgumentException">A count or a share of the question is not accepted.</exception>
    /// <exception cref="ScenarioProblemsException">There is no such build, day or figure; the figure is no number; nothing is
    /// uncertain; or an end of a spread is refused.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static SensitivityAnswer Of(SensitivityQuestion question, IProgress<double>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        SensitivityQuestion.Check(question);
        var figure = Figure(question);
        var asGiven = RigAnswer.Of(question.Scenario, question.Build, question.Days,
            AnswerOptions.EndOnly with { Today = question.Today, FollowsUp = false }, null, cancellation);
        var all = question.Uncertain ?? UsualUncertainty.Of(asGiven);
        var relevant = Relevant(all, question, figure);
        var runs = new DayRuns(question, asGiven, figure, relevant);
        var (things, told) = (UncertainGroups.Drawn(relevant), UncertainGroups.Told(relevant));
        List<IReadOnlyList<int>> further = [.. told.Select(one => one.Thing.Coordinates)
            .Where(set => !things.Any(thing => thing.Coordinates.SequenceEqual(set)))];
        var rows = question.Options.Rows;
        var ends = (1 + (2 * relevant.Figures.Count)) * runs.RunsEach;
        var design = rows * (long)(things.Count + further.Count + 2) * runs.RunsEach;
        var along = question.Along is { } axis ? (long)axis.Values.Count * question.SamplesAlong * runs.RunsEach : 0;
        var done = new Done(progress, ends + design + along + ((long)question.WholeSamples * WholeWeight));

        var tornado = Tornado(question, figure, relevant, runs, done, cancellation);
        done.Before(ends);
        DayRun[] results = [];
        var variance = SobolDesign.Ask(relevant.Figures.Count, things, further, points =>
        {
            results = runs.At(points, true, done, cancellation);
            return [.. results.Select(run => run.Figure)];
        }, question.Options, cancellation);
        done.Before(design);
        DayRun[] sample = [.. results.Take(2 * rows)];
        var bands = question.Along is null ? null : Along(question, figure, runs, done, cancellation);
        done.Before(along);
        var whole = question.WholeSamples == 0 ? null
            : WholeRuns.Of(question, asGiven.Days, all, new Weighted(done), cancellation);
        return new()
        {
            Question = question with { Uncertain = all }, AsGiven = asGiven, Uncertain = relevant, Figure = figure,
            Tornado = tornado, Indices = variance.Indices, Sample = [.. sample.Select(run => run.Figure)],
            Bands = new(figure.Meaning, figure.Unit, "", question.Shares,
                [BandAt.Of("", [.. sample.Select(run => run.Figure)], question.Shares)]),
            EndsAt = runs.IsOfDays && !runs.DayByDay ? new("when the run ends", "h", "", question.Shares,
                [BandAt.Of("", [.. sample.Select(run => run.EndsAt)], question.Shares)]) : null,
            Along = bands, Whole = whole,
            Lasts = runs.IsOfDays ? new(sample.Count(run => run.Lasts == true), sample.Count(run => run.Lasts == false),
                sample.Count(run => run.Lasts is null)) : null,
            Removals = Removals(told, things, further, variance, sample), Way = runs.Way(cancellation),
            Runs = ends + design + along + question.WholeSamples + 1,
        };
    }

    private static SweepColumn Figure(SensitivityQuestion question)
    {
        var column = SweepColumns.Choose(question.Scenario, [question.Figure])[0];
        return column.Kind == ColumnKind.Number ? column : throw Problem("figure", $"\"{column.Name}\" is no number.",
            string.Join(", ", SweepColumns.All(question.Scenario).Where(one => one.Kind == ColumnKind.Number)
                .Select(one => one.Name)));
    }

    // What only the rig at rest rests on moves no figure of the days, and costs runs.
    private static UsualUncertainty Relevant(UsualUncertainty all, SensitivityQuestion question, SweepColumn figure)
    {
        var needs = SweepColumns.ReadingsOf(question.Scenario, [figure])[0].Needs;
        var relevant = needs.HasFlag(ColumnNeeds.Answer) ? all
            : all with { Figures = [.. all.Figures.Where(one => needs == ColumnNeeds.AtRest ? !one.OnlyInDays
                : !one.OnlyAtRest)] };
        if (relevant.Figures.Count == 0)
            throw Problem("uncertain", $"Nothing that \"{figure.Name}\" rests on is uncertain.",
                "a field with its spread, such as \"days.day-one.ambient=-8 °C +- 2 °C\"");
        var known = all.Fields.Select(field => field.Path).ToList();
        if (all.Correlations.SelectMany(pair => new[] { pair.First, pair.Second }).FirstOrDefault(path => !known.Contains(path))
            is { } stray)
            throw Problem("together", $"\"{stray}\" is not uncertain, so that it goes together with nothing.",
                string.Join(", ", known), NearestName.To(stray, known));
        var paths = relevant.Fields.Select(field => field.Path).ToHashSet();
        return relevant with
        {
            Correlations = [.. relevant.Correlations.Where(pair => paths.Contains(pair.First) && paths.Contains(pair.Second))],
        };
    }

    private static Tornado Tornado(SensitivityQuestion question, SweepColumn figure, UsualUncertainty uncertain, DayRuns runs,
        Done done, CancellationToken cancellation)
    {
        var count = uncertain.Figures.Count;
        var (low, high) = question.Alone;
        var middle = Enumerable.Repeat(0.5, count).ToArray();
        List<double[]> points = [middle, .. Enumerable.Range(0, count).SelectMany(at => new[] { With(at, low), With(at, high) })];
        var results = runs.At(points, false, done, cancellation);
        var bars = uncertain.Figures.Select((one, at) => new TornadoBar(one.Name, one.Field.Path, one.Field.Spread.TextAt(low),
            one.Field.Spread.TextAt(high), results[1 + (2 * at)].Figure, results[2 + (2 * at)].Figure));
        return new(figure.Meaning, figure.Unit, results[0].Figure, low, high, [.. bars.OrderByDescending(bar => bar.Width)]);

        double[] With(int at, double share) => [.. middle.Select((half, other) => other == at ? share : half)];
    }

    private static QuantileBands Along(SensitivityQuestion question, SweepColumn figure, DayRuns runs, Done done,
        CancellationToken cancellation)
    {
        var axis = question.Along!;
        var values = runs.Along(axis, question.SamplesAlong, done, cancellation);
        return new(figure.Meaning, figure.Unit, axis.Path, question.Shares, [.. axis.Values.Select((value, at) => BandAt.Of(value,
            [.. values.Skip(at * question.SamplesAlong).Take(question.SamplesAlong).Select(run => run.Figure)],
            question.Shares))]);
    }

    private static IReadOnlyList<RemovalGain> Removals(IReadOnlyList<ToldThing> told, IReadOnlyList<UncertainThing> things,
        List<IReadOnlyList<int>> further, VarianceRun variance, DayRun[] sample)
    {
        var known = Enumerable.Range(0, sample.Length).Where(at => sample[at].Lasts is not null
            && double.IsFinite(sample[at].Figure)).ToList();
        var points = known.Select(at => variance.Apart[at]).ToList();
        double[] figure = [.. known.Select(at => sample[at].Figure)];
        bool[] lasts = [.. known.Select(at => sample[at].Lasts == true)];
        return
        [
            .. told.Select(one =>
            {
                var thing = Enumerable.Range(0, things.Count)
                    .FirstOrDefault(at => things[at].Coordinates.SequenceEqual(one.Thing.Coordinates), -1);
                var gone = variance.First[thing >= 0 ? thing : things.Count + further.IndexOf(one.Thing.Coordinates)];
                var left = Math.Sqrt(variance.Indices.Variance * (1 - Math.Clamp(gone.Value, 0, 1)));
                return new RemovalGain(one.Act, one.Names, one.Thing.Paths, gone, left,
                    known.Count == 0 ? null : GuessAfterMeasuring.Of(points, one.Thing.Coordinates, figure, lasts));
            }).OrderByDescending(gain => gain.VarianceGone.Value),
        ];
    }

    private static ScenarioProblemsException Problem(string field, string what, string accepted, string? nearest = null) =>
        new([new Diagnostic(Severity.Error, "", TextPlace.None, field, what, accepted, nearest)]);

    private sealed class Done(IProgress<double>? told, long all) : IProgress<long>
    {
        private long before;

        public void Before(long more) => before += more;

        public void Report(long value) => told?.Report(Math.Min(1, (double)(before + value) / Math.Max(1, all)));
    }

    private sealed class Weighted(Done done) : IProgress<long>
    {
        public void Report(long value) => done.Report(value * WholeWeight);
    }
}
