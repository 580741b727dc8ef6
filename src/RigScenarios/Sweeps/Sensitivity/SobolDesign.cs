namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>Estimates how the variance of a figure is shared among what is uncertain.</summary>
public static class SobolDesign
{
    /// <summary>Runs a design and estimates the indices. The figure is asked for once, for all points. The same seed gives the
    /// same result, however the figure is
    /// computed.</summary>
    /// <param name="dimensions">Coordinates of a point of the unit cube; 1 or more.</param>
    /// <param name="things">What is uncertain; each coordinate belongs to one thing at most. Coordinates that belong to none are
    /// drawn all the same.</param>
    /// <param name="figure">The figure at each of the points, in their order; not a number where it is not known.</param>
    /// <param name="options">How finely; null for the usual.</param>
    /// <param name="cancellation">Stops it before and after the figure is asked for; while it is, the figure itself must be
    /// stopped.</param>
    /// <exception cref="ArgumentException">A thing has no coordinates or one that is not there, or the figure gives another
    /// number
    /// of results than points.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static SobolIndices Run(int dimensions, IReadOnlyList<UncertainThing> things,
        Func<IReadOnlyList<double[]>, IReadOnlyList<double>> figure, VarianceOptions? options = null,
        CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(dimensions, 1);
        ArgumentNullException.ThrowIfNull(things);
        ArgumentNullException.ThrowIfNull(figure);
        if (things.FirstOrDefault(thing => thing.Coordinates.Count == 0
            || thing.Coordinates.Any(at => at < 0 || at >= dimensions)) is { } wrong)
            throw new ArgumentException($"\"{wrong.Name}\" has coordinates {string.Join(", ", wrong.Coordinates)}; accepted: "
                + $"one or more from 0 to {dimensions - 1}.", nameof(things));
        options ??= new();
        return Ask(dimensions, things, [], figure, options, cancellation).Indices;
    }

    /// <summary>The same with further sets of coordinates, whose first-order indices are wanted beside those of the
    /// things.</summary>
    internal static VarianceRun Ask(int dimensions, IReadOnlyList<UncertainThing> things,
        IReadOnlyList<IReadOnlyList<int>> further, Func<IReadOnlyList<double[]>, IReadOnlyList<double>> figure,
        VarianceOptions options, CancellationToken cancellation)
    {
        List<IReadOnlyList<int>> sets = [.. things.Select(thing => thing.Coordinates), .. further];
        var (rows, design) = (options.Rows, new VarianceDesign(dimensions, options.Rows, options.Seed, sets));
        cancellation.ThrowIfCancellationRequested();
        var results = figure(design);
        if (results.Count != design.Count)
            throw new ArgumentException($"{results.Count} results for {design.Count} points.", nameof(figure));
        var estimator = new VarianceEstimator(Table(0), Table(1), [.. sets.Select((_, set) => Table(set + 2))]);
        var indices = estimator.Indices(options, cancellation);
        var found = things.Select((thing, at) => new SobolIndex(thing.Name, thing.Paths, indices[at].First, indices[at].Total));
        return new(new SobolIndices
        {
            Things = [.. found.OrderByDescending(thing => thing.Total.Value)], Mean = estimator.Mean,
            Variance = estimator.Variance, Level = options.Level, Rows = rows, RowsUnknown = estimator.Unknown,
            Runs = design.Count,
        }, [.. indices.Select(index => index.First)], design.Apart);

        IReadOnlyList<double> Table(int table) => [.. results.Skip(table * rows).Take(rows)];
    }
}

/// <summary>What a design gave.</summary>
/// <param name="Indices">The indices of the things, the greatest first.</param>
/// <param name="First">The first-order indices of the things and then of the further sets, in the order in which they were
/// given.</param>
/// <param name="Apart">The points that were drawn apart from each other: the first that the figure was asked for.</param>
internal sealed record VarianceRun(SobolIndices Indices, IReadOnlyList<IndexEstimate> First, IReadOnlyList<double[]> Apart);
