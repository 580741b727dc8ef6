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
        Devices = new([new("camera", new DeviceInUse { FedBy = "dummy", Essential = true }), new("monitor", new DeviceInUse()), new("light", new DeviceInUse { FedBy = Build.BatteryFeed })]),
    };

    private static readonly Dictionary<string, Part> Parts = new(StringComparer.Ordinal)
    {
        ["brick"] = new Part { Kind = PartKind.Battery, Name = "Brick", Battery = new Battery { Energy = Energy.FromWattHours(98), Voltage = Volts(14.4) } },
        ["plate"] = new Part { Kind = PartKind.Plate, Name = "Plate", Plate = new PlateData(Watts(0.4), Volts(11), ElectricCurrent.FromAmperes(10)) },
        ["dummy"] = new Part
        {
            Kind = PartKind.Regulator,
            Name = "Dummy battery",
            Regulator = new RegulatorData { InputMinimum = Volts(12.6), InputMaximum = Volts(24), OutputVoltage = Volts(7.6), Efficiency = Ratio.FromPercent(91), OwnDraw = Watts(0.3), MaximumCurrent = ElectricCurrent.FromAmperes(6) },
        },
        ["camera"] = new Part { Kind = PartKind.Body, Name = "Camera", Power = new PowerDraw(Standby: Watts(9), Record: Watts(22)), Voltage = new VoltageWindow(Volts(6.5), Volts(8.4)) },
        ["monitor"] = new Part { Kind = PartKind.Monitor, Name = "Monitor", Power = new PowerDraw(Standby: Watts(8), Record: Watts(11)), Voltage = new VoltageWindow(Volts(13.4), Volts(18)) },
        ["light"] = new Part { Kind = PartKind.Monitor, Name = "Light", Power = new PowerDraw(Standby: Watts(0), Record: Watts(6)) },
    };

    private static readonly ShootingDay Takes = new()
    {
        Blocks = new(
        [
            new("setup", new DayBlock { Length = Duration.FromMinutes(40), Others = PowerState.Standby }),
            new("takes", new DayBlock { Length = Duration.FromMinutes(25), Others = PowerState.Record }),
            new("rest", new DayBlock { Length = Duration.FromMinutes(10) }),
        ]),
    };

    [Fact]
    public void A_day_is_the_run_of_its_wiring_with_cables_and_without()
    {
        Gen.Select(Gen.Double[0, 0.4], Gen.Double[0, 0.2], Gen.Double[-15, 30]).Sample(
            (camera, plate, celsius) =>
            {
                Same(Powered(), celsius);
                Same(Powered() with { Cables = new([new("dummy", Ohms(camera)), new("plate", Ohms(plate)), new("light", Ohms(plate))]) }, celsius);
            },
            iter: 25);
    }

    [Fact]
    public void A_thin_cable_before_the_dummy_battery_stops_the_camera_sooner_and_costs_energy()
    {
        var thick = Run(Powered());
        var thin = Run(Powered() with { Cables = new([new("dummy", Ohms(0.5))]) });

        Assert.Equal("drop-out of dummy", thick.EndCause);
        Assert.Equal("drop-out of dummy", thin.EndCause);
        Assert.True(thin.Runtime < 0.95 * thick.Runtime, $"{thin.Runtime.Hours} h against {thick.Runtime.Hours} h");
        Assert.True(thin.Blocks[1].Demand > thick.Blocks[1].Demand);
        Assert.Equal(0.4 + 22 / 0.91 + 0.3 + 11 + 6, (double)thick.Blocks[1].Demand.Watts, 1e-9);
    }

    private static void Same(PoweredBuild powered, double celsius)
    {
        var day = DayRun.Run(powered, Takes, Temperature.FromDegreesCelsius(celsius), DayRunOptions.EndOnly, TestContext.Current.CancellationToken);
        var battery = powered.Battery;
        var run = WiringRun.Run(
            BuildWiring.Of(powered),
            PackModel.From(battery.Battery!, battery.Mass, battery.Size, null).Pack,
            Temperature.FromDegreesCelsius(celsius),
            DischargeStart.Full,
            [.. Takes.Blocks.Values.Select(block => new WiringBlock(block.Length, BuildWiring.States(powered, block.StateOf)))],
            new DischargeOptions { SeriesPoints = 0 },
            TestContext.Current.CancellationToken);

        Assert.Equal(run.BuildRuntime.Seconds, day.Runtime.Seconds, 1e-6 * (1 + run.BuildRuntime.Seconds));
        foreach (var device in day.Devices.Where(device => run.Devices[device.Device].Because is not null))
        {
            Assert.Equal(run.Devices[device.Device].At.Seconds, device.Runtime.Seconds, 1e-6 * (1 + device.Runtime.Seconds));
            Assert.Equal($"drop-out of {run.Devices[device.Device].Because}", device.Cause);
        }
    }

    private static DayResult Run(PoweredBuild powered) =>
        DayRun.Run(powered, Takes, Temperature.FromDegreesCelsius(15), cancellation: TestContext.Current.CancellationToken);

    private static PoweredBuild Powered() => PoweredBuild.From(Rig, name => Parts.GetValueOrDefault(name));

    private static ElectricPotential Volts(double volts) => ElectricPotential.FromVolts(volts);

    private static ElectricResistance Ohms(double ohms) => ElectricResistance.FromOhms(ohms);

    private static Power Watts(double watts) => Power.FromWatts(watts);
}
