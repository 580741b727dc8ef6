using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Sweeps.Evaluation;

/// <summary>
/// Runs the question of very many scenarios. Each scenario is made by its number alone and its result does not hang on the
/// others, so that any part of a sweep, on any number of cores, gives the same records. Only a few thousand of them are held at a
/// time.
/// </summary>
public static class SweepRun
{
    /// <summary>A table of so many combinations of values, with nothing uncertain, is simulated one by one: that takes a moment,
    /// and its figures are to the last digit those of the single answer. Of samples nobody looks at a single one so
    /// closely.</summary>
    public const int FewEnough = 400;

    /// <summary>The way that the question goes, without running it.</summary>
    /// <param name="question">The question.</param>
    /// <param name="cancellation">Stops the trials.</param>
    /// <exception cref="ScenarioProblemsException">The build, a day, a column or a value of the plan is refused; carries every
    /// problem of the plan.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static SweepWay WayOf(SweepQuestion question, CancellationToken cancellation = default) =>
        Choose(question, cancellation).Way;

    /// <summary>Runs scenarios of the plan one after the other.</summary>
    /// <param name="question">The question.</param>
    /// <param name="from">The number of the first one, from 0.</param>
    /// <param name="count">How many; the numbers must be of the plan.</param>
    /// <param name="progress">Told of how far it has come, some times a second; null for nobody.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>The records, in the order of their numbers, as they come.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The plan has no such numbers.</exception>
    /// <exception cref="ScenarioProblemsException">The build, a day, a column or a value of the plan is refused, before anything
    /// runs; or a combination of values, when its turn comes.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static IEnumerable<SweepRecord> Records(SweepQuestion question, long from, long count,
        IProgress<SweepProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        var all = question.Plan.Count;
        if (from < 0 || from > all)
            throw new ArgumentOutOfRangeException(nameof(from), from, $"The plan has the numbers 0 to {all - 1}.");
        if (count < 0 || count > all - from)
            throw new ArgumentOutOfRangeException(nameof(count), count, $"From {from} on the plan has {all - from} scenarios.");
        var way = Choose(question, cancellation);
        return InOrder(way, count, number => question.Plan.At(from + number), progress, cancellation);
    }

    /// <summary>All scenarios of the plan.</summary>
    /// <param name="question">The question.</param>
    /// <param name="progress">Told of how far it has come; null for nobody.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>As for <see cref="Records(SweepQuestion, long, long, IProgress{SweepProgress}, CancellationToken)"/>.</returns>
    public static IEnumerable<SweepRecord> Records(SweepQuestion question, IProgress<SweepProgress>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        return Records(question, 0, question.Plan.Count, progress, cancellation);
    }

    /// <summary>Runs points of one's own choice: a design for the sensitivity of results.</summary>
    /// <param name="question">The question; its plan says what the shares of a point mean.</param>
    /// <param name="points">A share, 0 to 1, for each uncertain field of the plan.</param>
    /// <param name="combination">Which combination of the plan's axes, from 0; 0 where it has none.</param>
    /// <param name="progress">Told of how far it has come; null for nobody.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>A record for each point, in their order, with the number of the first sample of the combination.</returns>
    /// <exception cref="ArgumentException">A point has more or fewer shares than there are uncertain fields.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside 0…1, or there is no such combination.</exception>
    /// <exception cref="ScenarioProblemsException">As for the records of the plan.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static IEnumerable<SweepRecord> Points(SweepQuestion question, IReadOnlyList<double[]> points, long combination = 0,
        IProgress<SweepProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(points);
        if (combination < 0 || combination >= question.Plan.Combinations)
            throw new ArgumentOutOfRangeException(nameof(combination), combination,
                $"The plan has the combinations 0 to {question.Plan.Combinations - 1}.");
        var first = combination * question.Plan.SamplesEach;
        var way = Choose(question, cancellation);
        return InOrder(way, points.Count, number => question.Plan.FromUnit(points[(int)number], first), progress, cancellation);
    }

    /// <summary>One figure at points of one's own choice.</summary>
    /// <param name="question">The question; its columns do not matter.</param>
    /// <param name="column">The figure: a column of numbers, or of yes (1) and no (0).</param>
    /// <param name="points">A share, 0 to 1, for each uncertain field of the plan.</param>
    /// <param name="progress">Told of how far it has come; null for nobody.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>The figure at each point, in their order; not a number where it is not known.</returns>
    /// <exception cref="ArgumentException">The column holds words, or a point has more or fewer shares than there are uncertain
    /// fields.</exception>
    /// <exception cref="ScenarioProblemsException">As for the records of the plan.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static double[] Numbers(SweepQuestion question, SweepColumn column, IReadOnlyList<double[]> points,
        IProgress<SweepProgress>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(column);
        ArgumentNullException.ThrowIfNull(points);
        if (column.Kind == ColumnKind.Text)
            throw new ArgumentException($"The column {column.Name} holds words; accepted: numbers, yes and no.", nameof(column));
        var numbers = new double[points.Count];
        var at = 0;
        foreach (var record in Points(question with { Columns = [column] }, points, 0, progress, cancellation))
            numbers[at++] = record.Cells[0].Number ?? double.NaN;
        return numbers;
    }

    private static SweepEvaluation Choose(SweepQuestion question, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(question);
        // A name that is not there is told before every value of the plan is tried.
        _ = ScenarioPlan.Of(question.Scenario, question.Build, question.Days);
        var columns = SweepColumns.ReadingsOf(question.Scenario, question.Columns);
        var scenarios = new SweptScenarios(question, cancellation);
        if (columns.All(column => column.Needs == ColumnNeeds.AtRest))
            return new ScenarioByScenario(scenarios, columns, "", cancellation);
        var (quick, whyNot) = question.Plan.Uncertain.Count == 0 && question.Plan.Count <= FewEnough
            ? (null, "A table of few values is read beside single answers, so that each is simulated as they are.")
            : ByDischarges.Try(scenarios, columns, cancellation);
        return quick is not null ? quick : new ScenarioByScenario(scenarios, columns, whyNot, cancellation);
    }

    // The next chunk is worked on while the one before is written away, where there are threads for that.
    private static IEnumerable<SweepRecord> InOrder(SweepEvaluation way, long count, Func<long, SweepPoint> pointOf,
        IProgress<SweepProgress>? progress, CancellationToken cancellation)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        var ahead = Environment.ProcessorCount > 1;
        Task<SweepRecord[]>? coming = null;
        try
        {
            for (var done = 0L; done < count;)
            {
                var records = coming is null ? Chunk(done) : coming.GetAwaiter().GetResult();
                done += records.Length;
                progress?.Report(new(done, count));
                var next = done;
                coming = ahead && next < count ? Task.Run(() => Chunk(next), stop.Token) : null;
                foreach (var record in records)
                    yield return record;
            }
        }
        finally
        {
            stop.Cancel();
            // Whoever goes early must not leave work behind that still runs; how it ends is nobody's business any more.
            ((IAsyncResult?)coming)?.AsyncWaitHandle.WaitOne();
            _ = coming?.Exception;
        }

        SweepRecord[] Chunk(long first)
        {
            stop.Token.ThrowIfCancellationRequested();
            return way.Run((int)Math.Min(way.ChunkLength, count - first), i => pointOf(first + i), stop.Token);
        }
    }
}
