using BenchmarkDotNet.Attributes;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Benchmarks;

/// <summary>A build's day on its one battery, with its reserve: with perfect wires, and with a cable before everything. Invented
/// parts.</summary>
[MemoryDiagnoser]
public class OneDayBenchmarks
{
    private static readonly Build Rig = new()
    {
        Battery = new BatteryInUse { Item = "brick" },
        Plate = "plate",
        Regulators = new([new("dummy", new RegulatorInUse())]),
        Devices = new([new("camera", new DeviceInUse { FedBy = "dummy", Essential = true }), new("monitor", new DeviceInUse()),
            new("transmitter", new DeviceInUse())]),
    };

    private static readonly ShootingDay Day = new()
    {
        Blocks = new([.. Enumerable.Range(0, 30).Select(i => KeyValuePair.Create($"block {i}", new DayBlock
        {
            Length = Duration.FromMinutes(20), Others = i % 2 == 0 ? PowerState.Standby : PowerState.Record,
        }))]),
    };

    private static readonly DayPlan Plan = new()
    {
        Days = [Day], Ambient = Temperature.FromDegreesCelsius(5),
        Batteries = new([new("brick", new KitBattery(PartOf("brick")!))]), TakesAnyCharge = true,
    };

    private readonly PoweredBuild perfect = PoweredBuild.From(Rig, PartOf);
    private readonly PoweredBuild cabled = PoweredBuild.From(Rig, PartOf) with
    {
        Cables = new([.. new[] { "plate", "dummy", "monitor",
            "transmitter" }.Select(name => KeyValuePair.Create(name, ElectricResistance.FromMilliohms(40)))]),
    };

    /// <summary>Perfect wires.</summary>
    [Benchmark(Baseline = true)]
    public SimulationResult PerfectWires() => DaySimulation.Run(perfect, Plan, SimulationOptions.EndOnly);

    /// <summary>Four cables of 40 mΩ.</summary>
    [Benchmark]
    public SimulationResult Cables() => DaySimulation.Run(cabled, Plan, SimulationOptions.EndOnly);

    /// <summary>The same with a series of points and every limit.</summary>
    [Benchmark]
    public SimulationResult CablesWithLimits() => DaySimulation.Run(cabled, Plan);

    private static Part? PartOf(string name) => name switch
    {
        "brick" => new Part { Kind = PartKind.Battery, Name = name,
            Battery = new Battery { Energy = Energy.FromWattHours(290), Voltage = Volts(14.4) } },
        "plate" => new Part { Kind = PartKind.Plate, Name = name, Plate = new PlateData(Watts(0.4), Volts(11)) },
        "dummy" =>
            new Part { Kind = PartKind.Regulator, Name = name,
            Regulator = new RegulatorData { InputMinimum = Volts(10), InputMaximum = Volts(24), OutputVoltage = Volts(7.6),
            Efficiency = Ratio.FromPercent(91) } },
        _ => new Part { Kind = PartKind.Monitor, Name = name, Power = new PowerDraw(Standby: Watts(6), Record: Watts(12)) },
    };

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    private static Power Watts(double watts) => Power.FromWatts(watts);
}
