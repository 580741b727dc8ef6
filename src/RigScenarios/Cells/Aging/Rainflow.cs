namespace RigScenarios.Cells.Aging;

/// <summary>
/// Rainflow counting by three points: which whole and half cycles a history of ups and downs consists of. ASTM E1049-85, section
/// 5.4.4.
/// </summary>
internal static class Rainflow
{
    /// <summary>One cycle that was counted: its range, the mean of its ends, and 1 or 0.5.</summary>
    public readonly record struct Counted(double Range, double Mean, double Count);

    /// <summary>The cycles of a history, in the order in which they are found.</summary>
    /// <param name="values">Values in order of time, turning points or not.</param>
    public static IReadOnlyList<Counted> Count(IReadOnlyList<double> values)
    {
        var counted = new List<Counted>();
        var open = new List<double>();
        foreach (var turn in TurningPoints(values))
        {
            open.Add(turn);
            while (open.Count >= 3)
            {
                var (first, second) = (open[^3], open[^2]);
                var range = Math.Abs(second - first);
                if (Math.Abs(open[^1] - second) < range)
                    break;
                var mean = (first + second) / 2;
                if (open.Count == 3)
                {
                    // The range holds the starting point: half a cycle, and the start moves on.
                    counted.Add(new Counted(range, mean, 0.5));
                    open.RemoveAt(0);
                }
                else
                {
                    counted.Add(new Counted(range, mean, 1));
                    open.RemoveRange(open.Count - 3, 2);
                }
            }
        }

        for (var i = 1; i < open.Count; i++)
            counted.Add(new Counted(Math.Abs(open[i] - open[i - 1]), (open[i] + open[i - 1]) / 2, 0.5));
        return counted;
    }

    /// <summary>First and last value and each turn between them; what stays level counts once.</summary>
    private static List<double> TurningPoints(IReadOnlyList<double> values)
    {
        var turns = new List<double>();
        foreach (var value in values)
        {
            if (turns.Count > 0 && value == turns[^1])
                continue;
            if (turns.Count > 1 && (turns[^1] > turns[^2]) == (value > turns[^1]))
                turns[^1] = value;
            else
                turns.Add(value);
        }

        return turns;
    }
}
