using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Files;

/// <summary>What must hold between the fields of a scenario. Each row changes one thing of a sound scenario and names the
/// complaint.</summary>
public sealed class ScenarioCheckTests
{
    private static readonly string Sound =
        SmallScenario.Text(devices: "{camera: {essential: yes, fed-by: regulator}, light: {count: 2}}",
        build: "plate: plate\n    regulators: {regulator: {fed-by: plate}}");

    [Fact]
    public void The_scenario_that_the_rows_change_is_sound() => Assert.Empty(Problems(Sound));

    [Theory]
    [InlineData("conditions: {ambient: 25 °C}", "conditions: {}", "days.day.ambient", "No air temperature")]
    [InlineData("light: {count: 2}", "light: {count: 4}", "builds.one.devices.light.count", "the kit only 3")]
    [InlineData("light: {count: 2}", "regulator: {power: {record: 1 W, standby: 1 W}}", "builds.one.devices.regulator",
        "among the regulators")]
    [InlineData("light: {count: 2}", "flat: {}", "builds.one.devices.flat", "is not a device")]
    [InlineData("item: flat", "item: camera", "builds.one.battery.item", "is not a battery")]
    [InlineData("plate: plate\n", "plate: light\n", "builds.one.plate", "is not a battery plate")]
    [InlineData("standby: 10 W, record: 20 W", "standby: 10 W", "days.day.blocks.all.states.camera",
        "in the state record is not known")]
    [InlineData("record: 20 W}}", "record: 20 W}, voltage: {maximum: 7.5 V}}", "builds.one.devices.camera",
        "WRONG VOLTAGE: Camera takes 7.5 V at most, but the regulator \"regulator\" puts 8 V on it")]
    [InlineData("record: 20 W}}", "record: 20 W}, voltage: {minimum: 9 V}}", "builds.one.devices.camera", "needs at least 9 V")]
    [InlineData("record: 5 W}}", "record: 5 W}, voltage: {maximum: 8.4 V}}", "builds.one.devices.light",
        "the full battery \"flat\" puts 10 V on it")]
    [InlineData("input-maximum: 20 V", "input-maximum: 9 V", "builds.one.regulators.regulator", "WRONG VOLTAGE")]
    [InlineData("capacity: 10 Ah,", "capacity: 10 Ah, charge-voltage: 10 V,", "parts.flat.battery.charge-voltage",
        "is not above")]
    [InlineData("input-minimum: 5 V", "input-minimum: 25 V", "parts.regulator.regulator", "is not below the greatest")]
    [InlineData("{charge: 100 %, voltage: 10 V}", "{charge: 90 %, voltage: 10 V}", "builds.one.battery.item", "does not add up")]
    [InlineData("length: 2 h, others", "length: 2 h, states: {ligth: off}, others", "days.day.blocks.all.states.ligth",
        "No build has a device")]
    [InlineData("essential: yes, ", "", "builds.one.devices", "No device is marked")]
    public void A_wrong_connection_between_fields_is_told_at_its_field(string right, string wrong, string path, string words)
    {
        Assert.Contains(right, Sound, StringComparison.Ordinal);
        var problems = Problems(Sound.Replace(right, wrong, StringComparison.Ordinal));
        Assert.True(problems.Any(problem => problem.Path == path && problem.Problem.Contains(words, StringComparison.Ordinal)),
            string.Join('\n', problems));
    }

    // Four LFP groups have 14.1 V full and at rest, and 14.6 V just off their charger: what takes 14.4 V would see too much.
    [Theory]
    [InlineData("14.4 V", true)]
    [InlineData("15 V", false)]
    public void A_battery_just_off_its_charger_puts_more_on_a_device_than_at_rest(string most, bool wrong)
    {
        var text = Sound.Replace("light: {count: 2}", "light: {fed-by: battery}", StringComparison.Ordinal)
            .Replace("light: {kind: monitor, name: Light,", $"light: {{kind: monitor, name: Light, voltage: {{maximum: {most}}},",
                StringComparison.Ordinal)
            .Replace("kit: {flat: {part: flat}", "kit: {flat: {part: lfp}", StringComparison.Ordinal)
            .Replace("conditions:", "  lfp: {kind: battery, name: LFP, battery: {energy: 96 Wh, voltage: 12.8 V, chemistry: lfp}}"
                + "\nconditions:", StringComparison.Ordinal);
        Assert.Equal(wrong, Problems(text).Any(problem =>
            problem.Problem.Contains("puts 14.6 V on it", StringComparison.Ordinal)));
    }

    [Fact]
    public void Nothing_of_a_build_can_be_called_battery_because_that_word_means_the_feed()
    {
        var text = Sound.Replace("light: {count: 2}", "battery: {}", StringComparison.Ordinal)
            .Replace("light: {part: light, count: 3}", "battery: {part: light}", StringComparison.Ordinal);
        Assert.Contains(Problems(text), problem => problem.Path == "builds.one.devices.battery"
            && problem.Severity == Severity.Error);
    }

    [Fact]
    public void A_part_that_two_parts_files_describe_is_told_with_both_files()
    {
        using var folder = new TemporaryFolder();
        const string parts = "rigscenarios: parts 1\nparts: {cage: {kind: cage, name: Cage}}\n";
        folder.Write("a.yaml", parts);
        folder.Write("b.yaml", parts);
        var problems = ScenarioFile.TryRead(folder.Write("scenario.yaml", Sound + "\nparts-from: [a.yaml, b.yaml]\n")).Problems;
        var problem = Assert.Single(problems);
        Assert.EndsWith("b.yaml", problem.File, StringComparison.Ordinal);
        Assert.Contains("a.yaml", problem.Problem, StringComparison.Ordinal);
    }

    private static IReadOnlyList<Diagnostic> Problems(string text)
    {
        using var folder = new TemporaryFolder();
        return ScenarioFile.TryRead(folder.Write("scenario.yaml", text)).Problems;
    }

    // Its place, what it carries and what is at its far end are right, whatever part it is.
    [Theory]
    [InlineData("stills-standard-zoom", "kit.zoom.part")]
    [InlineData("cage-full-baseplate", "kit.cage.part")]
    [InlineData("arm-short", "kit.monitor-arm.part")]
    public void A_part_that_is_not_known_is_told_once_and_not_at_every_place_that_names_the_thing(string part, string path)
    {
        var file = Repository.Data("scenarios", "river-ferry.yaml");
        var text = File.ReadAllText(file).Replace($"{part}", "no-such-part", StringComparison.Ordinal);
        var (_, problems) = ScenarioFile.TryReadText(text, file);
        Assert.Equal([path], problems.Where(problem => problem.Severity == Severity.Error).Select(problem => problem.Path));
    }
}
