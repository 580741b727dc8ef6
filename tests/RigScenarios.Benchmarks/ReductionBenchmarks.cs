using BenchmarkDotNet.Attributes;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Benchmarks;

/// <summary>An invented wiring of a battery plate, a regulator, cables and four devices, reduced to a formula at the battery's
/// terminals: what a sweep does for each of its scenarios whose loads differ.</summary>
[MemoryDiagnoser]
public class ReductionBenchmarks
{
    private readonly WiringNetwork network = Network();
    private readonly OrderedMap<string> states =
        new([new("camera", "on"), new("monitor", "on"), new("motor", "on"), new("transmitter", "on")]);

    [Benchmark]
    public Ratio Reduction() => Reduced(network);

    /// <summary>The same with the network made anew.</summary>
    [Benchmark]
    public Ratio NetworkAndReduction() => Reduced(Network());

    private Ratio Reduced(WiringNetwork of) => WiringReduction.Of(of, states, ElectricPotential.FromVolts(11.2),
        ElectricPotential.FromVolts(16.8), Temperature.FromDegreesCelsius(5))!.Error;

    private static WiringNetwork Network() => new(
    [
        Cable("lead", null, 0.02), Draws("camera", "lead", 22), Cable("arm", null, 0.05), Draws("monitor", "arm", 11),
        Cable("rod", null, 0.08), Draws("motor", "rod", 4), Draws("transmitter", "arm", 7),
    ]);

    private static Wire Cable(string name, string? from, double ohms) => new(name, from, ElectricResistance.FromOhms(ohms));

    private static Device Draws(string name, string from, double watts) =>
        new(name, from, new([new("on", DeviceDraw.OfPower(Power.FromWatts(watts)))]));
}
