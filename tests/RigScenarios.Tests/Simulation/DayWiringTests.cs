using CsCheck;
using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Parts;
using RigScenarios.Simulation;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Tests.Simulation;

/// <summary>A build's day against the run of its wiring, and what cables do to it. All parts are invented.</summary>
public class DayWiringTests
{
    private static readonly Build Rig = new()
    {
        Battery = new BatteryInUse { Item = "brick" },
        Plate = "plate",
        Regulators = new([new("dummy", new RegulatorInUse())]),
        Devices = new([new("camera", new DeviceInUse { FedBy = "dummy", Essential = true }), new("monitor", new DeviceInUse()),
            new("light", new DeviceInUse { FedBy = Build.BatteryFeed })]),
    };

    private static readonly Dictionary<string, Part> Parts = new(StringComparer.Ordinal)
    {
        ["brick"] = new Part { Kind = PartKind.Battery, Name = "Brick",
            Battery = new Battery { Energy = Energy.FromWattHours(98), Voltage = Volts(14.4) } },
        ["plate"] = new Part { Kind = PartKind.Plate, Name = "Plate",
            Plate = new PlateData(Watts(0.4), Volts(11), ElectricCurrent.FromAmperes(10)) },
        ["dummy"] = new Part
        {
            Kind = PartKind.Regulator,
            Name = "Dummy battery",
            Regulator = new RegulatorData { InputMinimum = Volts(12.6), InputMaximum = Volts(24), OutputVoltage = Volts(7.6),
                Efficiency = Ratio.FromPercent(91), OwnDraw = Watts(0.3), MaximumCurrent = ElectricCurrent.FromAmperes(6) },
        },
        ["camera"] = new Part { Kind = PartKind.Body, Name = "Camera",
            Power = new PowerDraw(Standby: Watts(9), Record: Watts(22)), Voltage = new VoltageWindow(Volts(6.5), Volts(8.4)) },
        ["monitor"] = new Part { Kind = PartKind.Monitor, Name = "Monitor",
            Power = new PowerDraw(Standby: Watts(8), Record: Watts(11)), Voltage = new VoltageWindow(Volts(13.4), Volts(18)) },
        ["light"] = new Part { Kind = PartKind.Monitor, Name = "Light",
            Power = new PowerDraw(Standby: Watts(0), Record: Watts(6)) },
    };

    private static readonly (string Name, DayBlock Block)[] Blocks =
    [
        ("setup", new DayBlock { Length = Duration.FromMinutes(40), Others = PowerState.Standby }),
        ("takes", new DayBlock { Length = Duration.FromMinutes(25), Others = PowerState.Record }),
        ("rest", new DayBlock { Length = Duration.FromMinutes(10) }),
    ];

    // The three again and again, until long after the battery is empty.
    private static readonly ShootingDay Takes = new()
    {
        Blocks = new(Enumerable.Range(0, 19)
            .SelectMany(turn => Blocks.Select(block => KeyValuePair.Create($"{block.Name} {turn}", block.Block)))),
    };

    [Fact]
    public void A_day_is_the_run_of_its_wiring_with_cables_and_without()
    {
        Gen.Select(Gen.Double[0, 0.4], Gen.Double[0, 0.2], Gen.Double[-15, 30]).Holds(
            (camera, plate, celsius) =>
            {
                Same(Powered(), celsius);
                Same(Powered() with { Cables = new([new("dummy", Ohms(camera)), new("plate", Ohms(plate)),
                    new("light", Ohms(plate))]) }, celsius);
            },
            cases: 25);
    }

    [Fact]
    public void A_thin_cable_before_the_dummy_battery_stops_the_camera_sooner_and_costs_energy()
    {
        var thick = Run(Powered());
        var thin = Run(Powered() with { Cables = new([new("dummy", Ohms(0.5))]) });

        Assert.Equal("drop-out of dummy", thick.FirstStop!.Reason.ToString());
        Assert.Equal("drop-out of dummy", thin.FirstStop!.Reason.ToString());
        Assert.True(thin.Runtime < 0.95 * thick.Runtime, $"{thin.Runtime.Hours} h against {thick.Runtime.Hours} h");
        Assert.True(thin.Blocks[1].Demand > thick.Blocks[1].Demand);
        Assert.Equal(0.4 + 22 / 0.91 + 0.3 + 11 + 6, (double)thick.Blocks[1].Demand.Watts, 1e-9);
    }

    private static void Same(PoweredBuild powered, double celsius)
    {
        var day = Run(powered, celsius);
        var battery = powered.Battery;
        var run = NetworkSimulation.Run(
            BuildWiring.Of(powered),
            PackModel.From(battery.Battery!, battery.Mass, battery.Size, null).Pack,
            Temperature.FromDegreesCelsius(celsius),
            DischargeStart.Full,
            [.. Blocks.Select(block => new WiringBlock(block.Block.Length, BuildWiring.States(powered, block.Block.StateOf)))],
            Takes.Length,
            SimulationOptions.DaysOnly,
            TestContext.Current.CancellationToken);

        Assert.Equal(run.FirstStop!.At.Seconds, day.Runtime.Seconds, 1e-6 * (1 + day.Runtime.Seconds));
        Assert.Equal(run.FirstStop.Reason, day.FirstStop!.Reason);
        foreach (var (name, device) in day.Devices)
        {
            Assert.Equal(run.Devices[name].FirstStop!.At.Seconds, device.Runtime.Seconds, 1e-6 * (1 + device.Runtime.Seconds));
            Assert.Equal(run.Devices[name].FirstStop!.Reason, device.FirstStop!.Reason);
        }
    }

    private static SimulationResult Run(PoweredBuild powered, double celsius = 15)
    {
        var plan = new DayPlan
        {
            Days = [Takes], Ambient = Temperature.FromDegreesCelsius(celsius),
            Batteries = new([new("brick", new KitBattery(powered.Battery))]), TakesAnyCharge = true,
        };
        return DaySimulation.Run(powered, plan, SimulationOptions.EndOnly, null, TestContext.Current.CancellationToken);
    }

    private static PoweredBuild Powered() => PoweredBuild.From(Rig, name => Parts.GetValueOrDefault(name));

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    private static ElectricResistance Ohms(double ohms) => ElectricResistance.FromOhms(ohms);

    private static Power Watts(double watts) => Power.FromWatts(watts);
}
