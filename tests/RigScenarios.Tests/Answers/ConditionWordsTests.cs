using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Answers;

/// <summary>What an answer was asked with, in words; and a battery that stays at home.</summary>
public class ConditionWordsTests
{
    private static readonly Scenario Island = ScenarioFile.Read(Repository.Data("scenarios", "island-crossing.yaml"));

    [Fact]
    public void The_air_tells_its_course_and_what_moved_it()
    {
        var colder = TemperatureDelta.FromKelvins(-3.5);

        Assert.Equal("Air from 1 to 8 °C in the course of the day, as the file says.",
            ConditionWords.Air(Of(Island, "crossing"), TemperatureDelta.Zero));
        Assert.Equal("Air from −2.5 to 4.5 °C in the course of the day, 3.5 °C colder than the file says.",
            ConditionWords.Air(Of(Island.Warmer(colder), "crossing"), colder));
        Assert.Equal("Air 25 °C all day, as the file says.", ConditionWords.Air(Of(SmallScenario.Read(SmallScenario.Text())),
            TemperatureDelta.Zero));
    }

    [Fact]
    public void The_air_says_where_it_comes_to_an_end()
    {
        var by = TemperatureDelta.FromKelvins(-60);

        Assert.EndsWith("60 °C colder than the file says; no colder than that is computed.",
            ConditionWords.Air(Of(Island.Warmer(by), "crossing"), by), StringComparison.Ordinal);
    }

    [Fact]
    public void The_wear_tells_capacity_and_resistance_of_each_battery()
    {
        var words = ConditionWords.Wear(Of(Island, "crossing"));

        Assert.Contains("new 98 %, 1.05 times; used 86 %, 1.3 times; old 72 %, 1.7 times", words, StringComparison.Ordinal);
        Assert.Contains("Resistance grows with the capacity that is lost.", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Less_capacity_raises_the_resistance_that_is_told()
    {
        // By hand: 0.05 of growth for 2 % lost is 2.5 a whole; with 12 % lost 1.3 times.
        var worn = ConditionWords.Wear(Of(Island.MoreWorn(Ratio.FromPercent(10)), "crossing"));

        Assert.Contains("new 88 %, 1.3 times", worn, StringComparison.Ordinal);
    }

    [Fact]
    public void A_battery_at_home_is_on_no_day_and_on_no_journey()
    {
        var home = Island.Without("big");

        Assert.Equal(["new", "used", "old"], home.Batteries.Keys);
        Assert.DoesNotContain("big-brick", home.BatteriesOn(home.Journeys["out"]));
        Assert.Throws<ScenarioProblemsException>(() => Island.Without("bog"));
    }

    [Fact]
    public void Of_several_alike_one_less_travels_and_a_journey_of_that_one_alone_is_none()
    {
        var island = Island with
        {
            Kit = Island.Kit.With("used-brick", Island.Kit["used-brick"] with { Count = 2 }),
            Journeys = Island.Journeys.With("apart", new() { Batteries = ["big-brick"] }),
        };

        Assert.Equal(1, island.Without("used").Kit["used-brick"].Count);
        Assert.Equal(["out"], island.Without("big").Journeys.Keys);
    }

    private static RigAnswer Of(Scenario scenario, params string[] days) => RigAnswer.Of(scenario,
        scenario.Builds.Keys.First(), days, AnswerOptions.EndOnly, cancellation: TestContext.Current.CancellationToken);
}
