using BenchmarkDotNet.Attributes;
using RigScenarios.Answers;
using RigScenarios.Charts.Balance;
using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Benchmarks;

/// <summary>The drawing of a rig of the demo scenario, both sheets, as often as a page needs it while somebody drags: asked for
/// in under 10 ms.</summary>
public class RigDrawingBenchmarks
{
    private readonly Scenario scenario = ScenarioFile.Read(Path.Combine(Root(), "data", "scenarios", "winter-harbour.yaml"));
    private int step;

    [Params("tripod", "shoulder")]
    public string Build { get; set; } = "";

    /// <summary>Everything between a moved part and what is sent: places, balance, drawing.</summary>
    [Benchmark]
    public int MovedBalancedDrawn()
    {
        step = (step + 1) % 40;
        var plate = MovedPlaces.Of(scenario, Build).First(part => part.Name == "plate");
        var at = plate.Range.Least + ((plate.Range.Greatest - plate.Range.Least) * step / 40);
        return Draw(ScenarioBalance.Of(MovedPlaces.Apply(scenario, Build, MovedPlaces.Text([new("plate", at)])), Build));
    }

    /// <summary>The drawing alone.</summary>
    [Benchmark]
    public int Drawn() => Draw(balance ??= ScenarioBalance.Of(scenario, Build));

    private BuildBalance? balance;

    private static int Draw(BuildBalance balance)
    {
        var drawing = RigDrawing.Of(balance.Rig.Placed,
            new RigDrawingOptions { Head = balance.Present, Shoulder = balance.Shoulder,
            Moveable = new OrderedMap<RigScenarios.Balance.LengthRange>(balance.Rig.Moveable) });
        return drawing.Svg.Length + drawing.NarrowSvg.Length;
    }

    private static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!Directory.Exists(Path.Combine(folder, "data", "scenarios")))
            folder = Path.GetDirectoryName(folder)
                ?? throw new DirectoryNotFoundException("The folder data/scenarios is not above this program.");
        return folder;
    }
}
