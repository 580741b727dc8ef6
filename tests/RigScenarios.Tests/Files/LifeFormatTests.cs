using RigScenarios.Cells.Aging;
using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Files;

/// <summary>How old a battery is, as a file says it.</summary>
public sealed class LifeFormatTests
{
    private const string Whole =
        "{bought: 2023-03, until: 2026-11-30, kept: full, place: warm store, shoots-per-month: 2, emptied: half}";

    [Fact]
    public void A_life_in_words_is_read()
    {
        var life = SmallScenario.Read(SmallScenario.Text(battery: $", age: {Whole}")).Builds["one"].Battery.Life!;

        Assert.Equal((new MonthOrDay(2023, 3), new DateOnly(2026, 11, 30)), (life.Bought!.Value, life.Until!.Value));
        Assert.Equal((Kept.Full, StoragePlace.WarmStore, Emptied.Half), (life.Kept, life.Place, life.Emptied));
        Assert.Equal((2.0, false), (life.ShootsPerMonth!.Value, life.SecondHand));
    }

    [Fact]
    public void Quantities_stand_in_for_words_and_hyphens_for_spaces()
    {
        var life = SmallScenario.Read(SmallScenario.Text(battery: ", age: {bought: 2023-03-17, until: 2026-11-30, kept: 60 %, "
            + "place: 25 °C, emptied: to-the-end}")).Builds["one"].Battery.Life!;

        Assert.Equal(60, life.Kept!.ChargeAfter(Emptied.Half).Percent, 1e-9);
        Assert.Equal(25, life.Place!.Temperature.DegreesCelsius, 1e-9);
        Assert.Equal(Emptied.ToTheEnd, life.Emptied);
        Assert.Equal("2023-03-17", life.Bought.ToString());
    }

    [Theory]
    [InlineData(Whole)]
    [InlineData("{bought: 2023-03-17, kept: 60 %, place: 25 °C, emptied: 35 %, second-hand: yes}")]
    [InlineData("{kept: as it came back, place: hot van, emptied: a little}")]
    public void What_is_written_reads_the_same(string age)
    {
        var scenario = SmallScenario.Read(SmallScenario.Text(battery: $", capacity-left: 90 %, age: {age}"));
        var life = scenario.Builds["one"].Battery.Life!;

        Assert.Equal(age, LifeFormat.Text(life));
        Assert.Equal(life, SmallScenario.Read(ScenarioFile.Text(scenario)).Builds["one"].Battery.Life);
        Assert.Equal(life, ScenarioPath.Set(SmallScenario.Read(SmallScenario.Text(battery: ", capacity-left: 90 %")),
            "builds.one.battery.age", LifeFormat.Text(life)).Builds["one"].Battery.Life);
    }

    [Fact]
    public void All_that_is_impossible_is_told_at_once_each_at_its_field()
    {
        var text = SmallScenario.Text(battery: ", age: {bought: 2027-01, until: 2026-11-30, kept: 120 %, place: frigde, "
            + "shoots-per-month: 90, emptied: 0 %}");
        using var folder = new TemporaryFolder();
        var (_, problems) = ScenarioFile.TryRead(folder.Write("scenario.yaml", text));
        const string age = "builds.one.battery.age";

        string[] paths = [$"{age}.kept", $"{age}.place", $"{age}.shoots-per-month", $"{age}.emptied"];
        Each.Of(paths, path => Assert.Contains(problems, problem => problem.Path == path && problem.At.Line > 0));
        Assert.Contains(problems, problem => problem.Path == $"{age}.place" && problem.Nearest == "fridge");
        Assert.Contains(problems, problem => problem.Path == $"{age}.shoots-per-month"
            && problem.Accepted!.Contains("0 to 30", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("{bought: 2027-01, until: 2026-11-30}", "bought", "after the day for which its age is asked (2026-11-30)")]
    [InlineData("{bought: 2026-11, until: 2026-11-10}", "bought", "means the 15th")]
    [InlineData("{bought: 1985-05, until: 2026-11-30}", "bought", "before 1991")]
    [InlineData("{bought: 2023-03, until: 2300-01-01}", "until", "Found \"2300-01-01\"")]
    public void A_history_that_cannot_be_is_told_at_its_field_with_its_line(string age, string field, string words)
    {
        using var folder = new TemporaryFolder();
        var (scenario, problems) = ScenarioFile.TryRead(folder.Write("scenario.yaml",
            SmallScenario.Text(battery: $", age: {age}")));

        Assert.Null(scenario);
        var problem = Assert.Single(problems);
        Assert.Equal($"builds.one.battery.age.{field}", problem.Path);
        Assert.Contains(words, problem.Problem, StringComparison.Ordinal);
        Assert.True(problem.At.Line > 0 && problem.Accepted is not null);
    }

    [Theory]
    [InlineData("{until: 2026-11-30, second-hand: yes}", "second-hand")]
    [InlineData("{until: 2026-11-30, kept: full}", "bought")]
    public void A_life_from_which_nothing_follows_is_warned_of(string age, string words)
    {
        using var folder = new TemporaryFolder();
        var (scenario, problems) = ScenarioFile.TryRead(folder.Write("scenario.yaml",
            SmallScenario.Text(battery: $", age: {age}")));

        Assert.NotNull(scenario);
        Assert.Contains(words, Assert.Single(problems).Problem, StringComparison.Ordinal);
        Assert.True(scenario.AgeOf(scenario.Builds["one"].Battery).IsUnknown);
    }

    [Fact]
    public void A_sweep_goes_along_the_numbers_of_a_life_and_a_set_along_its_dates()
    {
        var scenario = SmallScenario.Read(SmallScenario.Text(battery: $", age: {Whole}"));
        const string shoots = "builds.one.battery.age.shoots-per-month";

        Assert.Contains(ScenarioPath.NumericFields(scenario), field => field.Path == shoots && field.Text == "2");
        var later = ScenarioPath.Set(scenario, "builds.one.battery.age.until", "2030-11-30");
        Assert.True(Left(later) < Left(scenario));
        Assert.True(Left(ScenarioPath.Set(scenario, shoots, "12")) < Left(scenario));
    }

    [Fact]
    public void A_life_without_a_day_of_its_own_goes_until_the_day_on_which_it_is_asked()
    {
        var open = SmallScenario.Read(SmallScenario.Text(battery: ", age: {bought: 2023-03}"));
        var asked = open.AskedOn(new DateOnly(2026, 11, 30));

        Assert.True(open.AgeOf(open.Builds["one"].Battery).IsUnknown);
        Assert.Equal(new DateOnly(2026, 11, 30), asked.Builds["one"].Battery.Life!.Until);
        Assert.InRange(Left(asked), 0.8, 0.95);
        var early = Assert.Throws<ScenarioProblemsException>(() => open.AskedOn(new DateOnly(2020, 1, 1)));
        Assert.Equal("builds.one.battery.age.bought", Assert.Single(early.Problems).Path);
    }

    private static double Left(Scenario scenario) =>
        scenario.AgeOf(scenario.Builds["one"].Battery).Age.CapacityLeft.DecimalFractions;
}
