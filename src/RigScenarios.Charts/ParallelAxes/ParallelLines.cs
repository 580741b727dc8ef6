namespace RigScenarios.Charts.ParallelAxes;

/// <summary>The scenarios of a picture as counts: in which group, on which step of each axis, and how many lines pass
/// where.</summary>
internal sealed class ParallelLines
{
    private readonly ParallelAxesChart chart;
    private readonly int[][] steps;

    public ParallelLines(ParallelAxesChart chart)
    {
        this.chart = chart;
        steps = [.. chart.Axes.Select(StepsOf)];
        List<int> all = [.. Enumerable.Range(0, chart.Count)];
        Groups = chart.Groups.Count == 0 ? [new("", all)]
            : [.. chart.Groups.Select(group => new Drawn(group.Name, all.FindAll(line => group.Has(line))))];
        Cells = [.. Groups.Select(CellsOf)];
        Most = Cells.SelectMany(gaps => gaps).SelectMany(gap => gap).SelectMany(row => row).DefaultIfEmpty(0).Max();
    }

    /// <summary>A group: its name, and the numbers of its scenarios.</summary>
    public sealed record Drawn(string Name, List<int> Lines);

    /// <summary>The groups; one without a name where all are drawn together.</summary>
    public IReadOnlyList<Drawn> Groups { get; }

    /// <summary>For each group and each gap between two axes its rows of cells, see <see cref="LineDensity.Between"/>.</summary>
    public IReadOnlyList<IReadOnlyList<double[][]>> Cells { get; }

    /// <summary>The most lines in one cell.</summary>
    public double Most { get; }

    /// <summary>How many scenarios of a group lie on each step of an axis.</summary>
    public int[] CountsOn(int axis, Drawn group)
    {
        var counts = new int[ParallelAxesChart.Steps];
        foreach (var line in group.Lines)
        {
            if (steps[axis][line] is var step and >= 0)
                counts[step]++;
        }

        return counts;
    }

    private List<double[][]> CellsOf(Drawn group)
    {
        var of = steps.Select(axis => group.Lines.Select(line => axis[line]).ToArray()).ToArray();
        return [.. Enumerable.Range(0, of.Length - 1)
            .Select(gap => LineDensity.Between(of[gap], of[gap + 1], ParallelAxesChart.Steps, ParallelAxesChart.Rows))];
    }

    private static int[] StepsOf(ParallelAxis axis)
    {
        var (low, high) = axis.Range();
        var scale = ParallelAxesChart.Steps / (high - low);
        var found = new int[axis.Values.Count];
        for (var line = 0; line < found.Length; line++)
        {
            var value = axis.Values[line];
            found[line] = double.IsFinite(value)
                ? Math.Clamp((int)((value - low) * scale), 0, ParallelAxesChart.Steps - 1) : -1;
        }

        return found;
    }
}
