using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Cells;
using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Tests.Simulation;

/// <summary>A day walked block by block must agree with one discharge under the same demand, where nothing drops out.</summary>
public sealed class DayAgainstDischargeTests
{
    [Theory]
    [InlineData("winter-harbour.yaml", "tripod", "day-one")]
    [InlineData("winter-harbour.yaml", "shoulder", "day-two")]
    [InlineData("teaching-kit.yaml", "full-rig", "workshop")]
    [InlineData("teaching-kit.yaml", "camera-only", "workshop")]
    public void A_day_is_one_discharge_with_many_segments(string file, string buildName, string dayName)
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", file));
        // No plate switch and no least input of the regulator, so that only the pack ends the run.
        scenario = ScenarioPath.SetAll(scenario,
            [("parts.plate-guarded.plate.switch-off-voltage", "1 V"),
            ("parts.dummy-battery-7v6.regulator.input-minimum", "1 V")]);
        scenario = OnOneBattery(scenario) with { Parts = WithoutDeviceMinimum(scenario) };
        var day = SmallScenario.RunOne(scenario, buildName, dayName, SimulationOptions.EndOnly);

        var build = scenario.Builds[buildName];
        var battery = scenario.PartOf(build.Battery.Item)!;
        var age = new Age(build.Battery.CapacityLeft ?? Ratio.FromPercent(100), build.Battery.ResistanceGrowth ?? 1);
        var pack = PackModel.From(battery.Battery!, battery.Mass, battery.Size, age).Pack;
        var ambient = scenario.AmbientOn(scenario.Days[dayName]);
        var demand = new Demand(day.Blocks.Select(block => new DemandSegment(block.End - block.Start, block.Demand,
            ElectricCurrent.Zero, ElectricConductance.Zero)));
        var start = new DischargeStart { StateOfCharge = build.Battery.Charge ?? Ratio.FromPercent(100),
            Temperature = build.Battery.StartTemperature ?? ambient };
        var run = Discharge.Run(pack, ambient, start, demand, new DischargeOptions { SeriesPoints = 0 },
            TestContext.Current.CancellationToken);

        Assert.Equal(run.Cause.AsStop(), day.FirstStop?.Reason ?? day.Reserve.Ends);

        // A battery may end while no essential device is wanted: the runtime then ends when one is.
        var ends = day.FirstStop is { } stop ? stop.At - day.Days[0].Start : day.Runtime;
        Assert.Equal(run.EndTime.Seconds, ends.Seconds, run.EndTime.Seconds * 1e-6);
        Assert.True(day.Runtime.Seconds >= ends.Seconds);
    }

    [Fact]
    public void A_battery_that_comes_warm_out_of_the_bag_runs_longer_in_the_cold()
    {
        var harbour = OnOneBattery(ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml")));
        double Hours(string temperature) => SmallScenario.RunOne(
            ScenarioPath.SetAll(harbour, [("builds.tripod.battery.start-temperature", temperature),
                ("days.day-one.ambient", "-18 °C")]),
            "tripod", "day-one", SimulationOptions.EndOnly).Runtime.Hours;
        Assert.True(Hours("20 °C") > Hours("0 °C"));
        Assert.True(Hours("0 °C") > Hours("-18 °C"));
    }

    [Fact]
    public void Colder_air_older_cells_and_less_charge_never_make_a_build_run_longer()
    {
        var harbour = OnOneBattery(ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml")));
        foreach (var (path, better, worse) in ((string, string, string)[])[
            ("days.day-one.ambient", "10 °C", "-12 °C"), ("builds.tripod.battery.capacity-left", "95 %", "70 %"),
            ("builds.tripod.battery.resistance-growth", "1", "2.5"), ("builds.tripod.battery.charge", "100 %", "60 %"),
            ("parts.compact-body-b.power.record", "15 W", "25 W")])
        {
            double Hours(string text) => 
                SmallScenario.RunOne(ScenarioPath.Set(harbour, path, text), "tripod", "day-one",
                    SimulationOptions.EndOnly).Runtime.Hours;
            Assert.True(Hours(better) >= Hours(worse), path);
        }
    }

    // Steady blocks in still air on the build's own battery: what one discharge can do.
    private static Scenario OnOneBattery(Scenario scenario) => scenario with
    {
        Batteries = OrderedMap<BatteryAtStart>.Empty,
        HotSwap = null,
        Builds = new(scenario.Builds.Select(build => KeyValuePair.Create(build.Key, build.Value with
        {
            // No splitter: its contacts are the only resistance in these rigs.
            Splitters = OrderedMap<SplitterInUse>.Empty,
            Devices = new(build.Value.Devices.Select(device => KeyValuePair.Create(
                device.Key, device.Value.Outlet is null ? device.Value
                    : device.Value with { FedBy = build.Value.Plate, Outlet = null }))),
        }))),
        Days = new(scenario.Days.Select(day => KeyValuePair.Create(day.Key, day.Value with
        {
            AmbientPoints = [],
            Blocks = new(day.Value.Blocks.Select(block => KeyValuePair.Create(block.Key, block.Value with { Cycle = null }))),
        }))),
    };

    private static OrderedMap<Part> WithoutDeviceMinimum(Scenario scenario) =>
        new(scenario.Library.Concat([]).Where(part => !scenario.Parts.ContainsKey(part.Key)).Concat(scenario.Parts)
            .Select(part => KeyValuePair.Create(part.Key,
                part.Value with { Voltage = part.Value.Voltage is { } window ? window with { Minimum = null } : null })));
}
