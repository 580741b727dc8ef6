using System.Collections.Concurrent;
using RigScenarios.Batteries.Batch;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Discharges;
using RigScenarios.Sweeps.Sampling;
using UnitsNet;

namespace RigScenarios.Sweeps.Evaluation;

/// <summary>
/// The way through a sweep whose days come down to discharges of one battery: all of them in a batch, under the reduced wiring. A
/// scenario of which that does not tell the figures for certain is simulated.
/// </summary>
internal sealed class ByDischarges : SweepEvaluation
{
    // So many points are prepared by one core at a time.
    private const int Piece = 64;

    // Of each core some chunks of the batch.
    private const int PointsPerCore = 4096;

    private readonly SweptScenarios scenarios;
    private readonly ScenarioByScenario simulated;
    private readonly ColumnReading[] columns;
    private readonly bool wantsBatteries;
    private readonly bool wantsRest;
    private readonly WiringFields fields;
    private readonly CurvesInUse curves = new();
    private readonly ConcurrentBag<RigWorkshop> workshops = [];

    private long simulatedSoFar;

    private ByDischarges(SweptScenarios scenarios, IReadOnlyList<ColumnReading> columns, WiringFields fields, SweepWay way,
        CancellationToken cancellation)
    {
        (this.scenarios, this.fields, Way) = (scenarios, fields, way);
        this.columns = [.. columns];
        wantsBatteries = columns.Any(column => column.Needs == ColumnNeeds.Batteries);
        wantsRest = columns.Any(column => column.Needs == ColumnNeeds.AtRest);
        simulated = new(scenarios, columns, way.Reason, cancellation);
    }

    /// <inheritdoc/>
    public override SweepWay Way { get; }

    /// <inheritdoc/>
    public override int ChunkLength => PointsPerCore * Math.Max(1, Environment.ProcessorCount);

    /// <summary>How many scenarios had to be simulated so far.</summary>
    public long Simulated => Interlocked.Read(ref simulatedSoFar);

    /// <summary>That way, where it can be gone; else why not.</summary>
    /// <param name="scenarios">The scenarios.</param>
    /// <param name="columns">What is read of each.</param>
    /// <param name="cancellation">Stops the trials.</param>
    public static (ByDischarges? Way, string WhyNot) Try(SweptScenarios scenarios, IReadOnlyList<ColumnReading> columns,
        CancellationToken cancellation)
    {
        if (columns.FirstOrDefault(column => column.ReadDays is null && column.Needs != ColumnNeeds.AtRest) is { } column)
            return (null, $"The column {column.Column.Name} is asked for, which the end of a discharge does not tell.");
        string? whyNot = null;
        var (largest, works) = (0.0, false);
        WiringFields? found = null;
        var (rigs, shapes) = (new Dictionary<string, ReducedRig>(), new Dictionary<string, RigShape>());
        foreach (var point in scenarios.Spread())
        {
            cancellation.ThrowIfCancellationRequested();
            var days = scenarios.DaysOf(scenarios.Of(point), cancellation);
            if (DayDischarges.WhyNot(days) is { } reason)
            {
                whyNot ??= reason;
                continue;
            }
            var rig = new ReducedRig(days);
            if (DayDischarges.Of(days, rig) is null)
            {
                whyNot ??= "The wiring can't be reduced to a formula that is close enough to it.";
                continue;
            }
            (works, largest) = (true, Math.Max(largest, rig.LargestError));
            found ??= new(scenarios, cancellation);
            if ((!rigs.TryAdd(found.KeyOf(point), rig) && !rigs[found.KeyOf(point)].SameAs(rig))
                || (!shapes.TryAdd(found.ShapeOf(point), rig.Shape) && !shapes[found.ShapeOf(point)].SameAs(rig.Shape)))
                found.ShareNothing();
        }
        if (!works)
            return (null, whyNot!);
        var others = whyNot is null ? "" : $" Some scenarios are simulated: {char.ToLowerInvariant(whyNot[0])}{whyNot[1..]}";
        var way = new SweepWay(SweepWayKind.Batch,
            "The days come down to discharges of one battery, and of them only how they end is asked for." + others)
        {
            ReductionError = Ratio.FromDecimalFractions(largest),
        };
        return (new(scenarios, columns, found!, way, cancellation), "");
    }

    /// <inheritdoc/>
    public override SweepRecord[] Run(int count, Func<int, SweepPoint> pointOf, CancellationToken cancellation)
    {
        var points = new SweepPoint[count];
        var prepared = new PreparedPoint?[count];
        InPieces(count, (rigs, i) => prepared[i] = Prepare(points[i] = pointOf(i), rigs, cancellation), cancellation);
        var days = prepared.Index().Where(one => one.Item is not null)
            .SelectMany(one => Enumerable.Range(0, one.Item!.Count).Select(day => (Point: one.Index, Day: day))).ToList();
        if (wantsBatteries)
        {
            Batch(prepared, days, (point, day) => point.InDay(day), cancellation);
            days = [.. days.Where(one => one.Day + 1 == prepared[one.Point]!.Count && prepared[one.Point]!.GoesOn())];
        }
        Batch(prepared, days, (point, day) => point.CaseOf(day), cancellation);
        var records = new SweepRecord[count];
        InPieces(count, (_, i) => records[i] = Read(points[i], prepared[i], cancellation), cancellation);
        return records;
    }

    private void InPieces(int count, Action<RigWorkshop, int> work, CancellationToken cancellation) =>
        SweptDays.OnEveryCore((count + Piece - 1) / Piece, piece =>
        {
            var rigs = workshops.TryTake(out var used) ? used : new(fields);
            for (var i = piece * Piece; i < Math.Min(count, (piece + 1) * Piece); i++)
                work(rigs, i);
            workshops.Add(rigs);
        }, cancellation);

    private PreparedPoint? Prepare(SweepPoint point, RigWorkshop rigs, CancellationToken cancellation)
    {
        try
        {
            var days = scenarios.DaysOf(scenarios.Of(point), cancellation);
            return DayDischarges.WhyNot(days) is null && DayDischarges.Of(days, rigs.Of(point, days)) is { } made
                ? new(made, curves.Of(made.Pack)) : null;
        }
        catch (Exception exception) when (exception is ScenarioProblemsException or ArgumentException
            or InvalidOperationException)
        {
            // The simulation tells it with the number of the scenario.
            return null;
        }
    }

    private static void Batch(PreparedPoint?[] prepared, List<(int Point, int Day)> days,
        Func<PreparedPoint, int, BatchCase> caseOf, CancellationToken cancellation) =>
        BatchDischarge.Run(0, days.Count, (first, cases) =>
        {
            for (var i = 0; i < cases.Length; i++)
            {
                var (point, day) = days[(int)first + i];
                cases[i] = caseOf(prepared[point]!, day);
            }
        }, (first, ends) =>
        {
            for (var i = 0; i < ends.Length; i++)
            {
                var (point, day) = days[(int)first + i];
                prepared[point]!.Take(day, ends[i]);
            }
        }, cancellation);

    private SweepRecord Read(SweepPoint point, PreparedPoint? prepared, CancellationToken cancellation)
    {
        if (prepared?.Read() is not { } figures)
        {
            Interlocked.Increment(ref simulatedSoFar);
            return simulated.One(point, cancellation);
        }
        var rest = wantsRest
            ? new ScenarioOutcome(scenarios.Question, scenarios.Of(point), ColumnNeeds.AtRest, null, cancellation) : null;
        var cells = new SweepCell[columns.Length];
        for (var i = 0; i < cells.Length; i++)
            cells[i] = columns[i].ReadDays is { } read ? read(figures) : columns[i].Read(rest!);
        return new(point.Number, point.Values, cells);
    }
}
