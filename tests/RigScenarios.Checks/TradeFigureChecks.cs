using System.Runtime.CompilerServices;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Checks;

/// <summary>
/// What crews say of one brick. Source of both figures: common practice, no source. A 190 Wh, 14 V brick runs a mirrorless cinema
/// body through its
/// regulator for about 8 hours without a stop, and about 5 to 6 hours with a 5-inch monitor-recorder on. One set of draws, that
/// of
/// the parts library, must explain both.
/// </summary>
public class TradeFigureChecks
{
    private static readonly OrderedMap<Part> Parts = new(new[] { "bodies", "batteries", "power", "monitors-and-video" }
        .SelectMany(name => PartsFile.Read(Path.Combine(Root(), "data", "parts", $"{name}.yaml"))));

    [Fact]
    public void A_190_Wh_brick_runs_a_body_alone_for_about_8_hours() => Assert.InRange(Hours(monitor: false), 7.5, 8.5);

    [Fact]
    public void The_same_brick_runs_body_and_monitor_recorder_for_5_to_6_hours() => Assert.InRange(Hours(monitor: true), 5, 6);

    [Fact]
    public void The_draws_assumed_are_typical_of_the_parts_library()
    {
        var bodies = Parts.Values.Where(part => part.Kind == PartKind.Body && part.Power?.Record is not null)
            .Select(part => (double)part.Power!.Record!.Value.Watts).ToList();
        var monitors = Parts.Values.Where(part => part.Kind == PartKind.Monitor && part.Power?.Record is not null)
            .Select(part => (double)part.Power!.Record!.Value.Watts).ToList();
        Assert.InRange((double)Parts["compact-body-b"].Power!.Record!.Value.Watts, bodies.Min(), bodies.Max());
        Assert.InRange((double)Parts["monitor-recorder-5in"].Power!.Record!.Value.Watts, monitors.Min(), monitors.Max());
    }

    private static string Root([CallerFilePath] string file = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, "..", ".."));

    private static double Hours(bool monitor)
    {
        var devices = new List<KeyValuePair<string, DeviceInUse>> { new("body",
            new DeviceInUse { FedBy = "regulator", Essential = true }) };
        if (monitor)
            devices.Add(new("monitor", new DeviceInUse { Essential = true }));
        var build = new Build
        {
            Battery = new BatteryInUse { Item = "brick", CapacityLeft = Ratio.FromPercent(100) },
            Plate = "plate",
            Regulators = new([new("regulator", new RegulatorInUse())]),
            Devices = new(devices),
        };
        var kit = new Dictionary<string, string>
        {
            ["brick"] = "brick-190wh", ["plate"] = "plate-guarded", ["regulator"] = "dummy-battery-7v6",
            ["body"] = "compact-body-b", ["monitor"] = "monitor-recorder-5in",
        };
        var day =
            new ShootingDay { Blocks =
            new([new("recording", new DayBlock { Length = Duration.FromHours(1), Others = PowerState.Record })]) };
        var plan = new DayPlan { Days = [day],
            Batteries = new([new("brick", new KitBattery(Parts["brick-190wh"]) { CapacityLeft = Ratio.FromPercent(100) })]) };
        return DaySimulation.Run(PoweredBuild.From(build, name => Parts[kit[name]]), plan,
            SimulationOptions.EndOnly).Runtime.Hours;
    }
}
