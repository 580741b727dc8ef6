using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Tests.Simulation;

/// <summary>An invented rig with batteries and days for the tests of this folder.</summary>
internal static class Plans
{
    public static Part Brick(double wattHours) => new()
    {
        Kind = PartKind.Battery, Name = $"brick {wattHours:0}",
        Battery = new Battery { Energy = Energy.FromWattHours(wattHours), Voltage = Volts(14.4) },
    };

    /// <summary>A small pack whose protection allows the current of the whole rig.</summary>
    public static Part Small { get; } =
        Brick(15) with { Battery = Brick(15).Battery! with { MaximumCurrent = ElectricCurrent.FromAmperes(6) } };

    public static readonly Part Brick98 = Brick(98);

    public static PoweredBuild Rig { get; } = PoweredBuild.From(
        new Build
        {
            Battery = new BatteryInUse { Item = "brick" },
            Devices = new([new("camera", new DeviceInUse { Essential = true }), new("monitor", new DeviceInUse())]),
        },
        PartOf);

    public static PoweredBuild CabledRig { get; } =
        Rig with { Cables = new([new("camera", ElectricResistance.FromMilliohms(60)),
        new("monitor", ElectricResistance.FromMilliohms(90))]) };

    /// <summary>Takes of four minutes with resets of six, for some hours, from 8 o'clock.</summary>
    public static ShootingDay Takes(double hours) => new()
    {
        Starts = new TimeOnly(8, 0),
        Blocks = new([
            new("morning", Block(hours / 2)),
            new("meal", new DayBlock { Length = Duration.FromMinutes(30) }),
            new("afternoon", Block(hours / 2)),
        ]),
    };

    public static DayPlan Plan(int batteries, double hours, int days = 1) => new()
    {
        Days = [.. Enumerable.Repeat(Takes(hours), days)],
        Batteries = Kit([.. Enumerable.Repeat(new KitBattery(Brick98), batteries)]),
        Swaps = new SwapPolicy { WarningVoltage = Volts(13) },
    };

    public static OrderedMap<KitBattery> Kit(params KitBattery[] batteries) =>
        new(batteries.Select((battery, i) => KeyValuePair.Create($"b{i + 1}", battery)));

    public static DayCharger TwoBays { get; } = new(ElectricCurrent.FromAmperes(3)) { Bays = 2 };

    public static OrderedMap<DayCharger> One(DayCharger charger) => new([new("charger", charger)]);

    public static SimulationResult Run(this DayPlan plan, PoweredBuild? rig = null) =>
        DaySimulation.Run(rig ?? Rig, plan, null, null, TestContext.Current.CancellationToken);

    /// <summary>What happened, for a failing test to show.</summary>
    public static string Story(this SimulationResult result) => string.Join('\n',
        result.Batteries.SelectMany(battery => battery.Value.Spans.Select(span =>
                $"{battery.Key} {span.Start.Hours:F3}-{span.End.Hours:F3} {span.Place.InWords()} "
                    + $"{span.ChargeAtStart.Percent:F1}->{span.ChargeAtEnd.Percent:F1} "
                + $"{span.TemperatureAtEnd.DegreesCelsius:F1}"))
            .Concat(result.DownTimes
                .Select(down => $"{down.Device} {down.Start.Hours:F3}-{down.End.Hours:F3} {down.Reason} {down.Awaits} "
                    + $"{down.Block} {down.InTake}")));

    public static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    public static Power Watts(double watts) => Power.FromWatts(watts);

    public static Temperature Celsius(double degrees) => Temperature.FromDegreesCelsius(degrees);

    private static DayBlock Block(double hours) => new()
    {
        Length = Duration.FromHours(hours), Others = PowerState.Record,
        Cycle = new TakeCycle(Duration.FromMinutes(4), Duration.FromMinutes(6)),
    };

    private static Part? PartOf(string name) => name switch
    {
        "brick" => Brick98,
        "camera" => new Part { Kind = PartKind.Body, Name = "compact body A",
            Power = new PowerDraw(Standby: Watts(22), Record: Watts(30)), Voltage = new VoltageWindow(Volts(11.5), Volts(17)) },
        _ => new Part { Kind = PartKind.Monitor, Name = "monitor", Power = new PowerDraw(Standby: Watts(6), Record: Watts(12)),
            Voltage = new VoltageWindow(Volts(10), Volts(18)) },
    };
}
