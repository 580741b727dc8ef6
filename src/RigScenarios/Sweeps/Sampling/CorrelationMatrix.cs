using System.Globalization;
using RigScenarios.Scenarios;

namespace RigScenarios.Sweeps.Sampling;

/// <summary>The correlations of all uncertain fields of a plan as one matrix.</summary>
internal static class CorrelationMatrix
{
    // Below this what is left of a field beside the others is rounding.
    private const double Least = 1e-9;

    /// <summary>What is wrong with correlations, one problem after the other.</summary>
    /// <param name="paths">The uncertain fields.</param>
    /// <param name="correlations">Which go together.</param>
    public static IEnumerable<Diagnostic> Problems(IReadOnlyList<string> paths, IReadOnlyList<Correlation> correlations)
    {
        var told = new HashSet<(string, string)>();
        var wrong = false;
        foreach (var pair in correlations)
        {
            foreach (var unknown in new[] { pair.First, pair.Second }.Where(path => !paths.Contains(path)))
            {
                wrong = true;
                yield return Problem(unknown, "This is no uncertain field of this sweep: only those can go together.",
                    paths.Count == 0 ? null : string.Join(", ", paths), NearestName.To(unknown, paths));
            }
            if (OfPair(pair, told) is { } problem)
            {
                wrong = true;
                yield return problem;
            }
        }
        if (!wrong && Factor(paths, correlations, out var last) is null)
            yield return Contradiction(paths, correlations, last);
    }

    /// <summary>The lower triangular factor of A.-L. Cholesky of the matrix.</summary>
    /// <param name="paths">The uncertain fields.</param>
    /// <param name="correlations">Which go together, each pair of known fields once.</param>
    /// <param name="last">The field at which the correlations contradict each other.</param>
    /// <returns>The rows of the factor; null where the correlations contradict each other.</returns>
    public static double[][]? Factor(IReadOnlyList<string> paths, IReadOnlyList<Correlation> correlations, out int last)
    {
        var matrix = Matrix(paths, correlations);
        var factor = new double[paths.Count][];
        for (last = 0; last < paths.Count; last++)
        {
            var row = factor[last] = new double[last + 1];
            for (var column = 0; column <= last; column++)
            {
                var rest = matrix[last, column];
                for (var before = 0; before < column; before++)
                    rest -= row[before] * factor[column][before];
                if (column < last)
                    row[column] = rest / factor[column][column];
                else if (rest > Least)
                    row[column] = Math.Sqrt(rest);
                else
                    return null;
            }
        }
        return factor;
    }

    private static double[,] Matrix(IReadOnlyList<string> paths, IReadOnlyList<Correlation> correlations)
    {
        var places = paths.Index().DistinctBy(field => field.Item).ToDictionary(field => field.Item, field => field.Index);
        var matrix = new double[paths.Count, paths.Count];
        for (var field = 0; field < paths.Count; field++)
            matrix[field, field] = 1;
        foreach (var (first, second, coefficient) in correlations)
            matrix[places[first], places[second]] = matrix[places[second], places[first]] = coefficient;
        return matrix;
    }

    private static Diagnostic? OfPair(Correlation pair, HashSet<(string, string)> told)
    {
        var (first, second, coefficient) = pair;
        if (first == second)
            return Problem(first, "A field goes together with itself already.");
        if (!(coefficient is > -1 and < 1))
        {
            return Problem(first, $"Found {coefficient.ToString("R", CultureInfo.InvariantCulture)} for how it goes together "
                + $"with {second}. Where one field says the other exactly, leave one out.",
                "a number above -1 and below 1, such as 0.6");
        }
        return told.Add((first, second)) & told.Add((second, first)) ? null
            : Problem(first, $"How it goes together with {second} is said twice.");
    }

    private static Diagnostic Contradiction(
        IReadOnlyList<string> paths, IReadOnlyList<Correlation> correlations, int last)
    {
        var before = paths.Take(last + 1).ToHashSet();
        var named = correlations.Where(pair => before.Contains(pair.First) && before.Contains(pair.Second));
        return Problem(paths[last], $"What goes together contradicts itself: {string.Join("; ", named)}. Two fields that both go "
            + "closely along with a third can't go against each other, nor be without any tie.",
            "weaker coefficients, or fewer of them");
    }

    private static Diagnostic Problem(string path, string problem, string? accepted = null, string? nearest = null) =>
        new(Severity.Error, "", TextPlace.None, path, problem, accepted, nearest);
}
