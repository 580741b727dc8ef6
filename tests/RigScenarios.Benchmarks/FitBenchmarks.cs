using BenchmarkDotNet.Attributes;
using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Fits;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Benchmarks;

/// <summary>Fits of invented notes, with their intervals checked.</summary>
[MemoryDiagnoser]
public class FitBenchmarks
{
    private FitProblem problem = null!;

    /// <summary>Number of notes.</summary>
    [Params(3, 10, 30)]
    public int Notes { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        var pack = PackModel.From(
            new Battery { Energy = Energy.FromWattHours(98), Voltage = ElectricPotential.FromVolts(14.4) },
            null, null, null).Pack;
        var priors = FitPriors.Of(new Age(Ratio.FromPercent(85), 1.3));
        problem = new FitProblem(pack, priors, [.. Enumerable.Range(0, Notes).Select(i =>
        {
            var watts = 25 + (i % 4 * 5);
            return new FieldNote
            {
                Id = $"n{i}",
                Runtime = Duration.FromMinutes((4700.0 / watts) + (i % 3)),
                Run = new BatteryRun
                {
                    Ambient = Temperature.FromDegreesCelsius(-5 + (i % 7 * 5)),
                    Stretches = [RunStretch.ToTheEnd(new([new("camera", Power.FromWatts(watts))]))],
                },
            };
        })]);
    }

    [Benchmark]
    public FitResult Fit() => BatteryFit.Find(problem);
}
