using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Files;

public sealed class ScenarioPathTests
{
    private static readonly Scenario Harbour = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));

    public static TheoryData<string> Files => [.. Repository.ScenarioFiles.Select(path => Path.GetFileName(path))];

    [Theory]
    [MemberData(nameof(Files))]
    public void Each_numeric_field_can_be_set_to_its_own_value_and_changes_nothing(string name)
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", name));
        var fields = ScenarioPath.NumericFields(scenario);
        Assert.True(fields.Count > 30);
        foreach (var (path, text) in fields)
        {
            var changed = ScenarioPath.Set(scenario, path, text);
            if (path.StartsWith("parts.", StringComparison.Ordinal))
                changed = changed with { Parts = scenario.Parts };
            Assert.True(scenario.Equals(changed), $"{path} = {text} changed the scenario.");
        }
    }

    [Fact]
    public void Each_numeric_field_that_is_set_to_another_value_shows_it_there_and_nowhere_else()
    {
        var before = ScenarioPath.NumericFields(Harbour).ToDictionary(field => field.Path, field => field.Text);
        var looked = new LookedAt();
        foreach (var (path, value) in before)
        {
            // Another figure of the same unit, near enough that most are accepted.
            var other = value.StartsWith('2') ? "3" + value[1..] : "2" + value[(value.StartsWith('-') ? 2 : 1)..];
            if (Changed(path, other) is not { } changed)
                continue;
            looked.One();
            var after = ScenarioPath.NumericFields(changed).ToDictionary(field => field.Path, field => field.Text);
            Assert.Equal(before.Keys.Order(), after.Keys.Order());
            Assert.Equal([path], before.Keys.Where(key => before[key] != after[key]));
        }
        looked.AtLeast(200);

        // Null where the file's checks refuse it: a rule between two fields is broken.
        static Scenario? Changed(string path, string value)
        {
            try
            {
                return ScenarioPath.Set(Harbour, path, value);
            }
            catch (ScenarioProblemsException)
            {
                return null;
            }
        }
    }

    [Fact]
    public void A_field_that_has_no_value_yet_can_be_set()
    {
        var changed = ScenarioPath.Set(Harbour, "builds.tripod.devices.monitor.power.record", "5 W");
        Assert.Equal(5, changed.Builds["tripod"].Devices["monitor"].Power!.Record!.Value.As(UnitsNet.Units.PowerUnit.Watt));
        Assert.Equal("5 W", ScenarioPath.Find(changed, "builds.tripod.devices.monitor.power.record"));
        Assert.Null(ScenarioPath.Find(Harbour, "builds.tripod.devices.monitor.power.record"));
    }

    [Fact]
    public void Changing_a_part_of_the_parts_files_makes_a_copy_that_the_scenario_owns()
    {
        var changed = ScenarioPath.Set(Harbour, "parts.brick-190wh.battery.energy", "250 Wh");
        Assert.Empty(Harbour.Parts);
        Assert.Equal(250, changed.Parts["brick-190wh"].Battery!.Energy.WattHours);
        Assert.Equal(190, changed.Library["brick-190wh"].Battery!.Energy.WattHours);
        Assert.Equal(250, changed.PartOf("brick")!.Battery!.Energy.WattHours);
        Assert.Contains("energy: 250 Wh", ScenarioFile.Text(changed), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("builds.tripot.battery.charge", "tripod")]
    [InlineData("builds.tripod.batery.charge", "battery")]
    [InlineData("days.day-on.ambient", "day-one")]
    [InlineData("days.day-one.blocks.luch.length", "lunch")]
    [InlineData("parts.brick-190w.battery.energy", "brick-190wh")]
    [InlineData("bilds.tripod.battery.charge", "builds")]
    [InlineData("parts.brick-190wh.battery.enery", "energy")]
    public void An_unknown_path_gets_the_nearest_name(string path, string nearest)
    {
        var problem =
            Assert.Single(Assert.Throws<ScenarioProblemsException>(() => ScenarioPath.Set(Harbour, path, "10 Wh")).Problems);
        Assert.Equal(nearest, problem.Nearest);
        Assert.Equal(path, problem.Path);
    }

    [Theory]
    [InlineData("", "1", "no field \"\" here")]
    [InlineData(".", "1", "no field \"\" here")]
    [InlineData("builds", "1", "names no build")]
    [InlineData("builds.tripod", "1", "names a whole group")]
    [InlineData("builds.tripod.battery.charge.more", "1 %", "\"more\" inside a plain value")]
    [InlineData("parts.brick-190wh", "1", "names a whole group")]
    [InlineData("parts.brick-190wh.battery", "1", "names a whole group")]
    [InlineData("builds.tripod.carries.1", "cage", "\"1\" inside a plain value")]
    [InlineData("builds.tripod.battery.charge", "0 %", "outside the range")]
    [InlineData("builds.tripod.battery.charge", "90", "Probably \"90 %\" was meant")]
    [InlineData("builds.tripod.battery.item", "camera", "is not a battery")]
    [InlineData("days.day-one.blocks.lunch.length", "-1 h", "outside the range")]
    public void A_path_or_value_that_makes_no_sense_is_refused_with_its_reason(string path, string text, string reason)
    {
        var problem =
            Assert.Single(Assert.Throws<ScenarioProblemsException>(() => ScenarioPath.Set(Harbour, path, text)).Problems);
        Assert.Equal(path, problem.Path);
        Assert.Contains(reason, problem.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Several_changes_are_checked_together_and_all_their_problems_told()
    {
        var problems = Assert.Throws<ScenarioProblemsException>(() => ScenarioPath.SetAll(
            Harbour, [("builds.tripod.battery.charge", "200 %"), ("days.day-one.ambient", "cold")])).Problems;
        Assert.Equal(["builds.tripod.battery.charge", "days.day-one.ambient"], problems.Select(problem => problem.Path));
    }

    [Fact]
    public void A_change_that_makes_a_wrong_voltage_is_refused()
    {
        var problems = Assert.Throws<ScenarioProblemsException>(() => ScenarioPath.Set(Harbour,
            "parts.dummy-battery-7v6.regulator.output-voltage", "12 V")).Problems;
        Assert.Contains(problems, problem => problem.Problem.StartsWith("WRONG VOLTAGE", StringComparison.Ordinal));
    }

    [Fact]
    public void Maps_that_hold_the_same_in_another_order_are_not_equal()
    {
        var one = new OrderedMap<int>([new("a", 1), new("b", 2)]);
        Assert.Equal(one, OrderedMap<int>.Empty.With("a", 1).With("b", 2));
        Assert.NotEqual(one, new OrderedMap<int>([new("b", 2), new("a", 1)]));
        Assert.Equal(["a"], one.Without("b").Keys);
    }
}
