using BenchmarkDotNet.Attributes;
using RigScenarios.Batteries;
using RigScenarios.Batteries.Batch;
using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Benchmarks;

/// <summary>One discharge over a long day, and a map of 20 temperatures by 20 ages of it; an invented battery and invented
/// loads.</summary>
[MemoryDiagnoser]
public class DischargeBenchmarks
{
    private static readonly Battery Large = new()
    {
        Energy = Energy.FromWattHours(290),
        Voltage = ElectricPotential.FromVolts(14.4),
    };

    private static readonly Demand Takes = new(
    [
        Segment(600, 22),
        Segment(120, 38),
        Segment(300, 26),
        Segment(180, 41),
    ]);

    private readonly Pack pack = PackModel.From(Large, null, null, null).Pack;
    private readonly DischargeOptions endOnly = new() { SeriesPoints = 0 };
    private readonly BatchScenario[] scenarios;

    public DischargeBenchmarks() => scenarios = [.. Enumerable.Range(0, 400).Select(i => new BatchScenario
    {
        Pack = pack with { Age = new Age(Ratio.FromDecimalFractions(1 - (0.02 * (i % 20))), 1 + (0.04 * (i % 20))) },
        Ambient = Temperature.FromDegreesCelsius(-20 + (3 * (i / 20))),
        Demand = Takes,
    })];

    /// <summary>A steady 28 W, some ten hours.</summary>
    [Benchmark]
    public DischargeResult SteadyDay() =>
        Discharge.Run(pack, Temperature.FromDegreesCelsius(5), DischargeStart.Full, Demand.OfPower(Power.FromWatts(28)),
            DischargeOptions.Default);

    /// <summary>Takes and pauses, four blocks in twenty minutes, some ten hours; with the time series.</summary>
    [Benchmark(Baseline = true)]
    public DischargeResult TypicalDay() =>
        Discharge.Run(pack, Temperature.FromDegreesCelsius(5), DischargeStart.Full, Takes, DischargeOptions.Default);

    /// <summary>The same, its end only.</summary>
    [Benchmark]
    public DischargeResult TypicalDayEndOnly() =>
        Discharge.Run(pack, Temperature.FromDegreesCelsius(5), DischargeStart.Full, Takes, endOnly);

    /// <summary>400 typical days, their ends only, one after the other.</summary>
    [Benchmark]
    public double Sweep400()
    {
        var hours = 0.0;
        for (var i = 0; i < 20; i++)
        {
            for (var j = 0; j < 20; j++)
            {
                var aged = pack with { Age = new Age(Ratio.FromDecimalFractions(1 - (0.02 * j)), 1 + (0.04 * j)) };
                hours += Discharge.Run(aged, Temperature.FromDegreesCelsius(-20 + (3 * i)), DischargeStart.Full, Takes,
                    endOnly).EndTime.Hours;
            }
        }

        return hours;
    }

    /// <summary>The same 400 as a batch.</summary>
    [Benchmark]
    public double Batch400() => BatchDischarge.Run(scenarios).Sum(end => end.EndTime.Hours);

    private static DemandSegment Segment(double seconds, double watts) =>
        new(Duration.FromSeconds(seconds), Power.FromWatts(watts), ElectricCurrent.Zero, ElectricConductance.Zero);
}
