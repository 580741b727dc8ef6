using BenchmarkDotNet.Attributes;
using RigScenarios.Answers;
using RigScenarios.Charts;
using RigScenarios.Charts.Sweeps;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Evaluation;
using RigScenarios.Sweeps.Sampling;
using RigScenarios.Sweeps.Sensitivity;

namespace RigScenarios.Benchmarks;

/// <summary>Ten thousand days with all that is usually uncertain, and their charts: what notebook 08 does between a control and
/// its first chart.</summary>
public class ManyDaysBenchmarks
{
    private const string Build = "shoulder";
    private const string Day = "day-three";
    private readonly Scenario scenario = ScenarioFile.Read(Path.Combine(Root(), "data", "scenarios", "winter-harbour.yaml"));
    private SweepQuestion question = null!;
    private List<SweepRecord> records = [];

    [Params(1_000, 10_000)]
    public int Days { get; set; }

    [GlobalSetup]
    public void Ask()
    {
        var usual = UsualUncertainty.Of(RigAnswer.Of(scenario, Build, [Day]));
        List<UncertainField> fields = [.. usual.Figures.Where(one => !one.OnlyAtRest).Select(one => one.Field)];
        question = new SweepQuestion(scenario, Build, [Day], new SweepPlan
        {
            Uncertain = fields, Samples = Days, Method = SamplingMethod.Random,
            Correlations = [.. usual.Correlations.Where(pair => fields.Exists(field => field.Path == pair.First)
                && fields.Exists(field => field.Path == pair.Second))],
        }, SweepColumns.Choose(scenario, ["lasts", "ends_at_h"]));
        records = [.. SweepRun.Records(question)];
    }

    /// <summary>The days and the first chart.</summary>
    [Benchmark]
    public int SweptAndDrawn()
    {
        var ends = SweepRun.Records(question).Select(one => one.Cells[1].Number ?? double.NaN).ToList();
        return MattersFigures.Of(ends, ChartAxis.ClockTime("runs until"), "How many still run?")!.Specification.Length;
    }

    /// <summary>The picture of all of them, of days that were run.</summary>
    [Benchmark]
    public int LinesDrawn() => SweepLines.Of(question, records, "ends_at_h", "lasts").Specification.Length;

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "RigScenarios.sln")))
            folder = folder.Parent ?? throw new InvalidOperationException("RigScenarios.sln is not found above the program.");
        return folder.FullName;
    }
}
