namespace RigScenarios.Charts.ParallelAxes;

/// <summary>How many lines pass through each cell between two axes. However many lines there are, the result has the same size,
/// and every row of it holds all of them: none is left out or drawn for others.</summary>
internal static class LineDensity
{
    /// <summary>The lines between two axes.</summary>
    /// <param name="from">For each line the step of the first axis on which it begins, from 0; negative for one that is not
    /// known.</param>
    /// <param name="to">For each line the step of the second axis on which it ends.</param>
    /// <param name="steps">How many steps both axes have.</param>
    /// <param name="rows">How many rows of cells lie between the axes.</param>
    /// <returns>For each row, from the first axis to the second, the number of lines in each of its cells. A line that crosses
    /// several cells of a row counts in parts, one line together.</returns>
    public static double[][] Between(ReadOnlySpan<int> from, ReadOnlySpan<int> to, int steps, int rows)
    {
        // Lines that begin and end alike lie over each other: each pair is drawn once, with its number as its weight.
        var pairs = new int[steps * steps];
        for (var line = 0; line < from.Length; line++)
        {
            if (from[line] >= 0 && to[line] >= 0)
                pairs[from[line] * steps + to[line]]++;
        }

        var cells = new double[rows][];
        for (var row = 0; row < rows; row++)
            cells[row] = new double[steps];
        for (var pair = 0; pair < pairs.Length; pair++)
        {
            if (pairs[pair] == 0)
                continue;
            var (begin, end) = (pair / steps + 0.5, pair % steps + 0.5);
            for (var row = 0; row < rows; row++)
                Spread(cells[row], begin + (end - begin) * row / rows, begin + (end - begin) * (row + 1) / rows, pairs[pair]);
        }

        return cells;
    }

    // Over the cells from one place to another, by the length of the line in each.
    private static void Spread(double[] cells, double from, double to, int weight)
    {
        var (low, high) = (Math.Min(from, to), Math.Max(from, to));
        var (first, last) = ((int)low, Math.Min(cells.Length - 1, (int)high));
        if (first == last)
        {
            cells[first] += weight;
            return;
        }

        for (var cell = first; cell <= last; cell++)
            cells[cell] += weight * (Math.Min(high, cell + 1) - Math.Max(low, cell)) / (high - low);
    }
}
