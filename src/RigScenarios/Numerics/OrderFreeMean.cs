namespace RigScenarios.Numerics;

/// <summary>
/// Splits the effect of several changes made together among them, where it is no sum: the mean, over all orders in which the
/// changes can be made one after the other, of what each adds when its turn comes. The shares add up to the whole effect, a
/// change that never does anything gets none, and two that do the same get the same (L. S. Shapley, A value for n-person games,
/// in Contributions to the Theory of Games II, 1953, pp. 307-317: the value of a game).
/// </summary>
/// <remarks>
/// <c>φ_i = Σ_S |S|!·(n - |S| - 1)!/n! · (v(S ∪ i) - v(S))</c> over all sets S without i. A set is a number whose bit i says that
/// change i is made. 2^n values are asked for, each once.
/// </remarks>
public static class OrderFreeMean
{
    /// <summary>With more changes than this the values asked for are too many to be runs of whole days.</summary>
    public const int MostChanges = 6;

    /// <summary>The share of each change.</summary>
    /// <param name="changes">How many changes there are, 1…20.</param>
    /// <param name="worth">The figure with the changes of a set made; any unit, the shares have the same.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than 1 or more than 20 changes.</exception>
    public static IReadOnlyList<double> Of(int changes, Func<int, double> worth)
    {
        ArgumentNullException.ThrowIfNull(worth);
        ArgumentOutOfRangeException.ThrowIfLessThan(changes, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(changes, 20);
        double[] worths = [.. Enumerable.Range(0, 1 << changes).Select(worth)];
        var weights = Weights(changes);
        var shares = new double[changes];
        for (var i = 0; i < changes; i++)
        {
            var bit = 1 << i;
            for (var set = 0; set < worths.Length; set++)
            {
                if ((set & bit) == 0)
                    shares[i] += weights[int.PopCount(set)] * (worths[set | bit] - worths[set]);
            }
        }
        return shares;
    }

    /// <summary>What is lost of the whole effect when one change is left out and all others are made: quicker, but the shares
    /// need not add up to the whole effect.</summary>
    /// <param name="changes">How many changes there are, 1…30.</param>
    /// <param name="worth">The figure with the changes of a set made.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than 1 or more than 30 changes.</exception>
    public static IReadOnlyList<double> LeaveOneOut(int changes, Func<int, double> worth)
    {
        ArgumentNullException.ThrowIfNull(worth);
        ArgumentOutOfRangeException.ThrowIfLessThan(changes, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(changes, 30);
        var all = (int)((1L << changes) - 1);
        var whole = worth(all);
        return [.. Enumerable.Range(0, changes).Select(i => whole - worth(all & ~(1 << i)))];
    }

    // |S|!·(n - |S| - 1)!/n! = 1/(n·C(n-1, |S|)), for each size of a set.
    private static double[] Weights(int changes)
    {
        var weights = new double[changes];
        var choices = 1.0;
        for (var size = 0; size < changes; size++)
        {
            weights[size] = 1 / (changes * choices);
            choices = choices * (changes - 1 - size) / (size + 1);
        }
        return weights;
    }
}
