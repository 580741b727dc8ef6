using BenchmarkDotNet.Attributes;
using RigScenarios.Charts;
using RigScenarios.Charts.ParallelAxes;

namespace RigScenarios.Benchmarks;

/// <summary>The picture of very many scenarios on six axes, in two groups: what a page waits for, and what it is sent.</summary>
[MemoryDiagnoser]
public class ParallelAxesBenchmarks
{
    private ParallelAxesChart chart = null!;

    [Params(1_000, 10_000, 100_000)]
    public int Scenarios { get; set; }

    /// <summary>Invented values, the last of them made of the others.</summary>
    [GlobalSetup]
    public void Draw()
    {
        var random = new Random(8);
        var fields = Enumerable.Range(0, 5)
            .Select(_ => Enumerable.Range(0, Scenarios).Select(_ => random.NextDouble() + random.NextDouble()).ToList()).ToList();
        var ends = Enumerable.Range(0, Scenarios).Select(i => fields.Sum(field => field[i])).ToList();
        chart = new ParallelAxesChart
        {
            Slug = "many", Title = "Which scenarios do not last?",
            Axes =
            [
                .. fields.Select((values, i) => new ParallelAxis(new ChartAxis($"field {i}", "W"), values)),
                new ParallelAxis(new ChartAxis("end", "h"), ends),
            ],
            Groups = [new("last", i => ends[i] >= 5), new("end before", i => ends[i] < 5)],
        };
    }

    /// <summary>The whole figure; gives the length of what a page is sent.</summary>
    [Benchmark]
    public int Figure() => chart.ToFigure().Specification.Length;
}
