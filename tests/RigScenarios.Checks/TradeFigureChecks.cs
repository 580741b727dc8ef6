using System.Runtime.CompilerServices;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Checks;

/// <summary>
/// What crews say of one battery: 190 Wh at 14 V run a mirrorless cinema body through its regulator for about 8 hours without a
/// stop, and about 5 to 6 hours with a 5-inch monitor-recorder on. The two draws of the parts library were chosen so that one
/// set explains both (data/parts/bodies.yaml has the sum); what is checked is that the simulation, through regulator, plate,
/// cells and cut-off, says the same, and that the draws chosen are such as makers publish.
/// </summary>
[Source(SourceKind.TradePractice, "what crews say: 190 Wh run a body for about 8 h, with a 5-inch monitor-recorder 5 to 6 h")]
public class TradeFigureChecks
{
    private static readonly OrderedMap<Part> Parts = new(new[] { "bodies", "batteries", "power", "monitors-and-video" }
        .SelectMany(name => PartsFile.Read(Path.Combine(Root(), "data", "parts", $"{name}.yaml"))));

    // 5 %: "about 8" is neither 7½ nor 8½.
    [Fact]
    public void A_190_Wh_battery_runs_a_body_alone_for_about_8_hours() => Assert.Equal(8, Hours(monitor: false), 0.4);

    [Fact]
    public void The_same_battery_runs_body_and_monitor_recorder_for_5_to_6_hours() => Assert.InRange(Hours(monitor: true), 5, 6);

    // What the two figures leave for the monitor, whatever the body draws: 190/6 - 190/8 to 190/5 - 190/8 W at the battery.
    [Fact]
    public void The_monitor_recorder_draws_what_the_two_figures_leave_for_it() =>
        Assert.InRange(Record("monitor-recorder-5in"), (190.0 / 6) - (190.0 / 8), (190.0 / 5) - (190.0 / 8));

    // Figures of three cinema bodies: 18 W in 4K raw, about 25 W, about 60 W. The library's body with a fan lies between the two
    // compact ones.
    [Fact]
    [Source(SourceKind.DataSheet,
        "makers' power consumption of three cinema bodies, 18, 25 and 60 W, as quoted on two users' pages; "
        + "second-hand")]
    public void The_body_draws_what_makers_say_of_compact_cinema_bodies() => Assert.InRange(Record("compact-body-b"), 18, 25);

    private static double Record(string part) => (double)Parts[part].Power!.Record!.Value.Watts;

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
