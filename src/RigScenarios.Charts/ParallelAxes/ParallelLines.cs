namespace RigScenarios.Charts.ParallelAxes;

/// <summary>The scenarios of a picture as counts: in which group, on which step of each axis, and how many lines pass
/// where.</summary>
internal sealed class ParallelLines
{
    private readonly double[][] values;
    private readonly int[][] steps;

    public ParallelLines(ParallelAxesChart chart)
    {
        // As arrays: a hundred thousand values are gone through many times.
        values = [.. chart.Axes.Select(axis => axis.Values.ToArray())];
        Ranges = [.. chart.Axes.Select((axis, number) => axis.Range(values[number]))];
        steps = [.. values.Select((axis, number) => StepsOf(axis, Ranges[number]))];
        int[] all = [.. Enumerable.Range(0, chart.Count)];
        Groups = chart.Groups.Count == 0 ? [new("", all)]
            : [.. chart.Groups.Select(group => new Drawn(group.Name, Array.FindAll(all, line => group.Has(line))))];
        Cells = [.. Groups.Select(CellsOf)];
        Most = Cells.SelectMany(gaps => gaps).SelectMany(gap => gap).SelectMany(row => row).DefaultIfEmpty(0).Max();
    }

    /// <summary>A group: its name, and the numbers of its scenarios.</summary>
    public sealed record Drawn(string Name, int[] Lines);

    /// <summary>The groups; one without a name where all are drawn together.</summary>
    public IReadOnlyList<Drawn> Groups { get; }

    /// <summary>For each group and each gap between two axes its rows of cells, see <see cref="LineDensity.Between"/>.</summary>
    public IReadOnlyList<IReadOnlyList<double[][]>> Cells { get; }

    /// <summary>From where to where each axis goes.</summary>
    public IReadOnlyList<(double Low, double High)> Ranges { get; }

    /// <summary>In how many scenarios a value is not known.</summary>
    public int Unknown => Enumerable.Range(0, steps[0].Length).Count(line => Array.Exists(steps, axis => axis[line] < 0));

    /// <summary>The most lines in one cell.</summary>
    public double Most { get; }

    /// <summary>How many scenarios of a group lie on each step of an axis that is divided into so many.</summary>
    public int[] CountsOn(int axis, Drawn group, int into)
    {
        var counts = new int[into];
        var (low, high) = Ranges[axis];
        foreach (var line in group.Lines)
        {
            if (double.IsFinite(values[axis][line]))
                counts[Math.Clamp((int)((values[axis][line] - low) * into / (high - low)), 0, into - 1)]++;
        }

        return counts;
    }

    /// <summary>The values of a group on an axis, rising; those that are not known are left out.</summary>
    public double[] Sorted(int axis, Drawn group)
    {
        double[] found = [.. group.Lines.Select(line => values[axis][line]).Where(double.IsFinite)];
        Array.Sort(found);
        return found;
    }

    private List<double[][]> CellsOf(Drawn group)
    {
        var of = steps.Select(axis => group.Lines.Select(line => axis[line]).ToArray()).ToArray();
        return [.. Enumerable.Range(0, of.Length - 1)
            .Select(gap => LineDensity.Between(of[gap], of[gap + 1], ParallelAxesChart.Steps, ParallelAxesChart.Rows))];
    }

    private static int[] StepsOf(double[] values, (double Low, double High) range)
    {
        var scale = ParallelAxesChart.Steps / (range.High - range.Low);
        return Array.ConvertAll(values, value => double.IsFinite(value)
            ? Math.Clamp((int)((value - range.Low) * scale), 0, ParallelAxesChart.Steps - 1) : -1);
    }
}
