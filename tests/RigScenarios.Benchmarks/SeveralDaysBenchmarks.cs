using BenchmarkDotNet.Attributes;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Search;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Benchmarks;

/// <summary>Three days with four batteries and one charger of two bays; and the search for the least kit. Invented
/// parts.</summary>
[MemoryDiagnoser]
public class SeveralDaysBenchmarks
{
    private static readonly Part Brick = new() { Kind = PartKind.Battery, Name = "brick",
        Battery = new Battery { Energy = Energy.FromWattHours(98), Voltage = Volts(14.4) } };

    private static readonly Build Rig = new()
    {
        Battery = new BatteryInUse { Item = "brick" },
        Regulators = new([new("dummy", new RegulatorInUse())]),
        Devices = new([new("camera", new DeviceInUse { FedBy = "dummy", Essential = true }), new("monitor", new DeviceInUse()),
            new("transmitter", new DeviceInUse())]),
    };

    private static readonly DayBlock Work = new()
    {
        Length = Duration.FromHours(5), Others = PowerState.Record,
        Cycle = new TakeCycle(Duration.FromMinutes(3), Duration.FromMinutes(7)),
    };

    private static readonly ShootingDay Day = new()
    {
        Starts = new TimeOnly(7, 0),
        Blocks = new([new("morning", Work), new("meal", new DayBlock { Length = Duration.FromMinutes(45) }),
            new("afternoon", Work)]),
        AmbientPoints = [new(new TimeOnly(7, 0), Temperature.FromDegreesCelsius(-4)),
            new(new TimeOnly(13, 0), Temperature.FromDegreesCelsius(9)),
            new(new TimeOnly(18, 0), Temperature.FromDegreesCelsius(1))],
    };

    private static readonly DayPlan Plan = new()
    {
        Days = [Day, Day, Day],
        Batteries = new(Enumerable.Range(1, 4).Select(i => KeyValuePair.Create($"b{i}",
            new KitBattery(Brick) { CapacityLeft = Ratio.FromPercent(100 - (4 * i)), ResistanceGrowth = 1 + (0.1 * i) }))),
        Chargers =
            new([new("charger", new DayCharger(ElectricCurrent.FromAmperes(3)) { Bays = 2,
            Ambient = Temperature.FromDegreesCelsius(18) })]),
        Swaps = new SwapPolicy { WarningVoltage = Volts(13) },
    };

    private readonly PoweredBuild perfect = PoweredBuild.From(Rig, PartOf);
    private readonly PoweredBuild cabled = PoweredBuild.From(Rig, PartOf) with
    {
        Cables = new([.. new[] { "dummy", "monitor",
            "transmitter" }.Select(name => KeyValuePair.Create(name, ElectricResistance.FromMilliohms(40)))]),
    };

    /// <summary>Three days, perfect wires.</summary>
    [Benchmark(Baseline = true)]
    public SimulationResult ThreeDays() => DaySimulation.Run(perfect, Plan);

    /// <summary>Three days, three cables of 40 mΩ.</summary>
    [Benchmark]
    public SimulationResult ThreeDaysCabled() => DaySimulation.Run(cabled, Plan);

    /// <summary>The least kit of the four unequal batteries and two bays.</summary>
    [Benchmark]
    public LeastKitResult Least() => LeastKit.Find(perfect, Plan, KitWish.None);

    private static Part? PartOf(string name) => name switch
    {
        "brick" => Brick,
        "dummy" =>
            new Part { Kind = PartKind.Regulator, Name = name,
            Regulator = new RegulatorData { InputMinimum = Volts(10), InputMaximum = Volts(24), OutputVoltage = Volts(7.6),
            Efficiency = Ratio.FromPercent(91) } },
        _ => new Part { Kind = PartKind.Monitor, Name = name, Power = new PowerDraw(Standby: Watts(7), Record: Watts(14)) },
    };

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    private static Power Watts(double watts) => Power.FromWatts(watts);
}
