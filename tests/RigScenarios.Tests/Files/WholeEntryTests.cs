using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Files;

/// <summary>A change can be a whole entry in the file's own syntax, so that things can be added.</summary>
public class WholeEntryTests
{
    [Fact]
    public void An_entry_in_braces_is_added_with_its_fields()
    {
        var changed = ScenarioPath.SetAll(SmallScenario.Read(SmallScenario.Text()),
            [("kit.spare", "{part: flat, count: 2}"), ("batteries.first", "{item: flat}"),
            ("batteries.second", "{item: spare, charge: 80 %}")]);

        Assert.Equal(2, changed.Kit["spare"].Count);
        Assert.Equal(80, changed.Batteries["second"].Charge!.Value.Percent, 6);
        Assert.Equal(["first", "second"], changed.Batteries.Keys);
    }

    [Fact]
    public void A_state_of_a_device_that_the_block_does_not_name_is_added()
    {
        var changed = ScenarioPath.Set(SmallScenario.Read(SmallScenario.Text(devices: "{camera: {essential: yes}, light: {}}")),
            "days.day.blocks.all.states.light", "off");

        Assert.Equal(RigScenarios.Builds.PowerState.Off, changed.Days["day"].Blocks["all"].StateOf("light"));
    }

    [Fact]
    public void A_list_in_brackets_replaces_the_list()
    {
        var scenario = ScenarioPath.Set(SmallScenario.Read(SmallScenario.Text()), "chargers.van", "{bays: 2, current: 3 A}");

        Assert.Equal(2, ScenarioPath.Set(scenario, "chargers.van.power-hours",
            "[\"08:00-10:00\", \"12:00-14:00\"]").Chargers["van"].PowerHours.Count);
    }

    [Theory]
    [InlineData("kit.spare.part", "flat", "There is no thing of the kit \"spare\".")]
    [InlineData("kit.spare", "{count: 2}", "This field is missing.")]
    [InlineData("kit.Spare!", "{part: flat}", "There is no thing of the kit \"Spare!\".")]
    [InlineData("kit.spare", "{part: flat", "is not closed")]
    [InlineData("days.day.blocks.all.states.lihgt", "off", "No build has a device \"lihgt\".")]
    [InlineData("builds.one.battery", "flat", "This names a whole group.")]
    public void A_slip_is_told_with_its_path(string path, string value, string problem)
    {
        var problems = Assert.Throws<ScenarioProblemsException>(() => ScenarioPath.Set(SmallScenario.Read(SmallScenario.Text()),
            path, value)).Problems;

        Assert.Contains(problems, one => one.Problem.Contains(problem, StringComparison.Ordinal)
            && one.Path.StartsWith(path.Split('!')[0][..6], StringComparison.Ordinal));
    }
}
