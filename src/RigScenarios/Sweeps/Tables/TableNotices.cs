using RigScenarios.Sweeps.Sampling;

namespace RigScenarios.Sweeps.Tables;

/// <summary>What a reader should know of a table before drawing conclusions: above all an axis along which nothing changes, which
/// mostly means that another field overrides it.</summary>
public static class TableNotices
{
    /// <summary>Larger tables are not looked through: whoever asks for them has looked at a small one.</summary>
    private const long MostRows = 100_000;

    /// <summary>The notices; none where the table is a part or very large.</summary>
    /// <param name="table">The table, all of it.</param>
    /// <param name="plan">Its plan.</param>
    public static IReadOnlyList<string> Of(UnfinishedTable table, SweepPlan plan)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(plan);
        if (!table.Head.Part.IsWhole || plan.Count > MostRows)
            return [];
        var results = Results(table, plan.Paths.Count);
        var notices = new List<string>();
        long step = plan.SamplesEach;
        foreach (var axis in plan.Axes.Reverse())
        {
            var (width, values) = (step, axis.Values.Count);
            if (values > 1 && Enumerable.Range(0, results.Count).All(row => results[row]
                == results[(int)(row - (row / width % values * width))]))
            {
                notices.Insert(0, $"Nothing changes along {axis.Path}: another field may override it, or this build and its days "
                    + "don't use it.");
            }
            step *= values;
        }
        return notices;
    }

    private static List<int> Results(UnfinishedTable table, int moved)
    {
        // Equal results get equal numbers; what they are does not matter here.
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        var results = new List<int>();
        foreach (var block in table.Blocks())
        {
            var rows = CsvTable.Rows(block.Span, table.Head.Identity.Columns);
            for (var row = 0; row < rows.Count; row++)
            {
                var text = string.Join('\n', rows.Values.Skip(moved).Select(values => values[row] is var cell
                    ? $"{cell.Number:R}|{cell.Text}" : ""));
                if (!seen.TryGetValue(text, out var number))
                    seen.Add(text, number = seen.Count);
                results.Add(number);
            }
        }
        return results;
    }
}
