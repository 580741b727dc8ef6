namespace RigScenarios.Numerics;

/// <summary>A place in what stands in order, found by halving.</summary>
internal static class SortedPlace
{
    /// <summary>The number of leading items of which something holds, where it holds of none after the first of which it
    /// doesn't.</summary>
    /// <param name="count">The number of items.</param>
    /// <param name="holds">Asked by index, from 0.</param>
    public static int CountWhile(int count, Func<int, bool> holds)
    {
        var (low, high) = (0, count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (holds(middle))
                low = middle + 1;
            else
                high = middle;
        }

        return low;
    }
}
