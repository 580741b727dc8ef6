using System.Globalization;

namespace RigScenarios.Sweeps.Sampling;

/// <summary>The correlations of all uncertain fields of a plan as one matrix.</summary>
internal static class CorrelationMatrix
{
    /// <summary>The matrix: 1 on its diagonal, 0 where nothing is said.</summary>
    /// <param name="paths">The uncertain fields.</param>
    /// <param name="correlations">Which go together.</param>
    /// <exception cref="ArgumentException">A field is not there, a coefficient is out of range, or a pair is named
    /// twice.</exception>
    public static double[,] Of(IReadOnlyList<string> paths, IReadOnlyList<Correlation> correlations)
    {
        var matrix = new double[paths.Count, paths.Count];
        for (var field = 0; field < paths.Count; field++)
            matrix[field, field] = 1;
        foreach (var pair in correlations)
        {
            if (Problem(pair, paths, matrix) is { } problem)
                throw new ArgumentException(problem);
            var (first, second) = (Place(paths, pair.First), Place(paths, pair.Second));
            matrix[first, second] = matrix[second, first] = pair.Coefficient;
        }
        return matrix;
    }

    /// <summary>What is said of coefficients that contradict each other.</summary>
    /// <param name="path">The field at which it shows.</param>
    public static string Contradiction(string path) =>
        $"What goes together contradicts itself: no values of {path} can have all the correlations that it and the fields before it "
        + "are given. Two fields that go along with a third can't go against each other; weaken or leave out one of them.";

    private static string? Problem(Correlation pair, IReadOnlyList<string> paths, double[,] matrix)
    {
        var (first, second) = (Place(paths, pair.First), Place(paths, pair.Second));
        if (first < 0 || second < 0)
            return $"{(first < 0 ? pair.First : pair.Second)} is no uncertain field of this sweep.";
        if (first == second)
            return $"{pair.First} goes together with itself already.";
        if (!(pair.Coefficient is > -1 and < 1))
            return $"Found {pair.Coefficient.ToString("R", CultureInfo.InvariantCulture)} for how {pair.First} and {pair.Second} go "
                + "together; accepted: above -1 and below 1. Where one says the other exactly, leave one out.";
        return matrix[first, second] != 0 ? $"{pair.First} and {pair.Second} are told twice how they go together." : null;
    }

    private static int Place(IReadOnlyList<string> paths, string path)
    {
        for (var place = 0; place < paths.Count; place++)
        {
            if (paths[place] == path)
                return place;
        }
        return -1;
    }
}
