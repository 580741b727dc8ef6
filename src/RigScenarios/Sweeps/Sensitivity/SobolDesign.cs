namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>Estimates how the variance of a figure is shared among what is uncertain.</summary>
public static class SobolDesign
{
    /// <summary>Runs a design and estimates the indices. The same seed gives the same result, however the figure is
    /// computed.</summary>
    /// <param name="dimensions">Coordinates of a point of the unit cube; 1 or more.</param>
    /// <param name="things">What is uncertain; each coordinate belongs to one thing at most. Coordinates that belong to none are
    /// drawn all the same.</param>
    /// <param name="figure">The figure at each of the points, in their order; not a number where it is not known.</param>
    /// <param name="options">How finely; null for the usual.</param>
    /// <param name="cancellation">Stops it between two tables of the design.</param>
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
        var design = new VarianceDesign(dimensions, options.Rows, options.Seed);
        var (a, b) = (Asked(design.A), Asked(design.B));
        var sets = things.Select(thing => thing.Coordinates).Concat(further).ToList();
        List<IReadOnlyList<double>> swapped = [.. sets.Select(set => Asked(design.Swapped(set)))];
        var estimator = new VarianceEstimator(a, b, swapped);
        var indices = estimator.Indices(options, cancellation);
        var found = things.Select((thing, at) => new SobolIndex(thing.Name, thing.Paths, indices[at].First, indices[at].Total));
        return new(new SobolIndices
        {
            Things = [.. found.OrderByDescending(thing => thing.Total.Value)], Mean = estimator.Mean,
            Variance = estimator.Variance, Level = options.Level, Rows = options.Rows, RowsUnknown = estimator.Unknown,
            Runs = (long)options.Rows * (sets.Count + 2),
        }, [.. indices.Select(index => index.First)], [.. design.A, .. design.B], [.. a, .. b]);

        IReadOnlyList<double> Asked(IReadOnlyList<double[]> points)
        {
            cancellation.ThrowIfCancellationRequested();
            var results = figure(points);
            return results.Count == points.Count ? results
                : throw new ArgumentException($"{results.Count} results for {points.Count} points.", nameof(figure));
        }
    }
}

/// <summary>What a design gave.</summary>
/// <param name="Indices">The indices of the things, the greatest first.</param>
/// <param name="First">The first-order indices of the things and then of the further sets, in the order in which they were
/// given.</param>
/// <param name="Points">The points that were drawn apart from each other.</param>
/// <param name="Figures">The figure at each of them.</param>
internal sealed record VarianceRun(SobolIndices Indices, IReadOnlyList<IndexEstimate> First, IReadOnlyList<double[]> Points,
    IReadOnlyList<double> Figures);
