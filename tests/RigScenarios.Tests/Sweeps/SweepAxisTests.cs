using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps;
using UnitsNet;

namespace RigScenarios.Tests.Sweeps;

public sealed class SweepAxisTests
{
    private static readonly Scenario Harbour = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));

    [Theory]
    [InlineData("days.day-one.ambient=-10 °C..10 °C:5", "-10 °C|-5 °C|0 °C|5 °C|10 °C")]
    [InlineData("days.day-one.ambient = -10C .. 10 C : 3", "-10 °C|0 °C|10 °C")]
    [InlineData("builds.tripod.battery.charge=60 %..100 %:3", "60 %|80 %|100 %")]
    [InlineData("parts.brick-190wh.battery.energy=0.1 kWh..200 Wh:3", "0.1 kWh|0.15 kWh|0.2 kWh")]
    [InlineData("builds.tripod.battery.resistance-growth=1..2:5", "1|1.25|1.5|1.75|2")]
    [InlineData("kit.brick.count=1..5:9", "1|2|3|4|5")]
    [InlineData("days.day-one.blocks.lunch.length=30 min..1 h:3", "30 min|45 min|60 min")]
    [InlineData("builds.tripod.battery.charge=0.1 %..0.4 %:4", "0.1 %|0.2 %|0.3 %|0.4 %")]
    [InlineData("builds.tripod.devices.monitor.power.record=5 W..10 W:2", "5 W|10 W")]
    [InlineData("days.day-one.ambient=10 °F..30 °F:3", "10 °F|20 °F|30 °F")]
    [InlineData("days.day-one.starts=05:30..07:30:5", "05:30|06:00|06:30|07:00|07:30")]
    [InlineData("days.day-one.starts=06:30..06:34", "06:30|06:31|06:32|06:33|06:34")]
    [InlineData("days.day-one.blocks.lunch.length=1 h 30 min..2 h:3", "90 min|105 min|120 min")]
    [InlineData("builds.tripod.battery.age.until=2026-11-30..2026-12-02:3", "2026-11-30|2026-12-01|2026-12-02")]
    [InlineData("builds.tripod.battery.item=brick | spare|third", "brick|spare|third")]
    [InlineData("days.day-one.ambient = -8 °C | 20 °F", "-8 °C|20 °F")]
    [InlineData("builds.tripod.battery.item=each battery in the kit", "brick")]
    [InlineData("kit.legs.part=Each Tripod in the library", "tripod-light|tripod-middle|tripod-heavy")]
    [InlineData("kit.brick.part=each fitting battery in the library",
        "brick-50wh|brick-98wh|brick-150wh|brick-190wh|brick-230wh|brick-290wh")]
    [InlineData("parts.brick-190wh.battery.heat-conductance=0.2 W/K..0.6 W/K:3", "0.2 W/K|0.4 W/K|0.6 W/K")]
    public void The_short_form_gives_evenly_spaced_values(string text, string values) =>
        Assert.Equal(values, string.Join('|', SweepAxis.Parse(Harbour, text).Values));

    [Fact]
    public void Nine_steps_are_taken_where_none_are_said() =>
        Assert.Equal(9, SweepAxis.Parse(Harbour, "days.day-one.ambient=-10 °C..10 °C").Values.Count);

    [Fact]
    public void Resistance_growth_keeps_its_fractions_where_its_present_value_is_whole()
    {
        var scenario = ScenarioPath.Set(Harbour, "builds.tripod.battery.resistance-growth", "1");
        Assert.Equal(["1", "1.5", "2"], SweepAxis.Parse(scenario, "builds.tripod.battery.resistance-growth=1..2:3").Values);
    }

    [Theory]
    [InlineData("", "not an axis of a sweep")]
    [InlineData("days.day-one.ambient", "not an axis of a sweep")]
    [InlineData("=1..2", "not an axis of a sweep")]
    [InlineData("days.day-one.ambient=-10 °C", "not an axis of a sweep")]
    [InlineData("days.day-one.ambient=-10 °C..10 °C:1", "Found \"1\" for the number of steps")]
    [InlineData("days.day-one.ambient=-10 °C..10 °C:many", "Found \"many\" for the number of steps")]
    [InlineData("days.day-one.ambient=-10 °C..10 °C:99999999999", "Found \"99999999999\" for the number of steps")]
    [InlineData("days.day-one.ambient=-10 °C..10 Wh:3", "\"Wh\" is not a unit of temperature")]
    [InlineData("days.day-one.ambient=-10 Wh..10 Wh:3", "\"Wh\" is not a unit of temperature")]
    [InlineData("days.day-one.ambient=cold..warm:3", "Found \"cold\", which is not a number")]
    [InlineData("days.day-nine.ambient=cold..warm:3", "no day \"day-nine\"")]
    [InlineData("builds.tripod.battery.item=brick..plate:3", "is not a battery")]
    [InlineData("kit.brick.part=each batery in the library", "no kind of part \"batery\"")]
    [InlineData("days.day-one.ambient=-10..3", "a number without a unit")]
    [InlineData("builds.tripod.battery.item=each fitting lens in the kit", "is not a battery")]
    [InlineData("kit.brick.part=each battery", "doesn't say where from")]
    [InlineData("kit.brick.part=each battery in the van", "no kind of part \"battery-in-the-van\"")]
    [InlineData("kit.brick.part=each follow focus in the kit", "no follow-focus in the kit")]
    [InlineData("kit.brick.part=brick-98wh | ", "a value is missing")]
    [InlineData("kit.brick.part=brick-98wh | brick-98wh", "Found \"brick-98wh\" twice")]
    [InlineData("days.day-one.ambient=..:3", "Found \"\", which is not a number")]
    public void What_is_no_axis_is_refused_with_the_form_or_the_field_s_own_reason(string text, string reason)
    {
        var problems = Assert.Throws<ScenarioProblemsException>(() => SweepAxis.Parse(Harbour, text)).Problems;
        Assert.Contains(reason, problems[0].Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Both_ends_that_the_field_doesn_t_take_are_told() =>
        Assert.Equal(["Found \"cold\", which is not a number with a unit.", "Found \"warm\", which is not a number with a unit."],
            Assert.Throws<ScenarioProblemsException>(() => SweepAxis.Parse(Harbour, "days.day-one.ambient=cold..warm"))
                .Problems.Select(problem => problem.Problem));

    [Fact]
    public void Too_few_or_too_many_steps_are_refused_in_code_too()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SweepAxis.Between("a", Mass.FromGrams(1), Mass.FromGrams(2), 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => SweepAxis.Between("a", Mass.FromGrams(1), Mass.FromGrams(2),
            SweepAxis.MostSteps + 1));
    }

    /// <summary>The example of docs/what-if.md, as it stands there.</summary>
    [Fact]
    public void The_example_of_the_documentation_runs()
    {
        var file = Repository.Data("scenarios", "winter-harbour.yaml");
        var cancellation = TestContext.Current.CancellationToken;

        // docs/what-if.md: begin
        var scenario = ScenarioFile.Read(file);
        var cold = SweepAxis.Between("days.day-one.ambient", Temperature.FromDegreesCelsius(-20),
            Temperature.FromDegreesCelsius(10), steps: 7);
        var brick = new SweepAxis("parts.brick-190wh.battery.energy", ["150 Wh", "190 Wh", "230 Wh"]);
        var table = GridSweep.Run(scenario, "tripod", "day-one", [cold, brick], cancellation: cancellation);
        foreach (var row in table.Rows)
            Console.WriteLine($"{row.Values[0]}, {row.Values[1]}: {row.Result.Runtime.Hours:F1} h, {row.Ends}");
        // docs/what-if.md: end

        Assert.Equal(21, table.Rows.Count);
        var source = Lines(Path.Combine(Repository.Root, "tests", "RigScenarios.Tests", "Sweeps", "SweepAxisTests.cs"));
        var example = source[(source.IndexOf("// docs/what-if.md: begin") + 1)..source.IndexOf("// docs/what-if.md: end")];
        Assert.Contains(string.Join('\n', example), string.Join('\n', Lines(Path.Combine(Repository.Root, "docs", "what-if.md"))),
            StringComparison.Ordinal);
    }

    private static List<string> Lines(string file) => [.. File.ReadLines(file).Select(line => line.Trim())];
}
