using RigScenarios.Answers;
using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Drafts;
using RigScenarios.Drafts.Edits;
using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Drafts;

/// <summary>Several batteries, a charger and a journey: from the form to the file and back.</summary>
public sealed class SupplyingTests
{
    private static readonly GivenRig OnSmall = Drafting.Small.Choose("battery", "brick-98wh");

    private static readonly GivenRig Three = OnSmall.Batteries(3).Charger("2").Set("charger-current", "2.5 A")
        .Set("power-hours", "12:00-14:00").Set("swap-at", "20 %");

    [Fact]
    public void Nobody_asked_no_swaps_and_nothing_of_them_in_the_file()
    {
        var answer = Drafting.Answer(Drafting.Small);
        Assert.Single(answer.Answer!.Plan.Batteries);
        Assert.Empty(answer.Scenario!.Batteries);
        Assert.Empty(answer.Scenario.Chargers);
        Assert.Equal(new SwapPolicy(), answer.Scenario.Swaps);
    }

    [Fact]
    public void What_is_said_stands_in_the_file_and_comes_back()
    {
        var answer = Drafting.Answer(Three);
        Assert.Empty(answer.Problems);
        var (read, problems) = ScenarioFile.TryReadText(ScenarioFile.Text(answer.Scenario!), "mine.yaml");
        Assert.Empty(problems);
        Assert.Equal(["battery-1", "battery-2", "battery-3"], read!.Batteries.Keys);
        Assert.Equal(3, read.Kit["battery"].Count);
        Assert.Equal(new DayCharger(ElectricCurrent.FromAmperes(2.5)) { Bays = 2, Ambient = Temperature.FromDegreesCelsius(20),
            PowerHours = [new ClockRange(new(12, 0), new(14, 0))] }, read.Chargers["charger"]);
        Assert.Equal(20, read.Swaps.Reserve!.Value.Percent, 9);
        var again = Drafting.Open(read);
        Assert.Equal(("2", "2.5 A", "12:00-14:00", null), (again.TextAt("chargers.charger.bays"),
            again.TextAt("chargers.charger.current"), again.TextAt("chargers.charger.power-hours"),
            again.TextAt("chargers.charger.ambient")));
        Assert.Equal(ScenarioFile.Text(read), ScenarioFile.Text(again.Whole()));
        // The answer is that of the file.
        var ofFile = RigAnswer.Of(read, "rig", ["day"], cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(AnswerSentences.Headline(ofFile), answer.Sentence);
        Assert.Equal(ofFile.Simulation.Swaps, answer.Answer!.Simulation.Swaps);
    }

    [Fact]
    public void More_batteries_lose_less_work_and_who_says_nothing_of_swaps_is_told_what_is_taken()
    {
        static double Lost(int count) => Drafting.Answer(Three.Batteries(count).Charger(null)).Answer!.Simulation.DownTimes
            .Where(down => !down.IsPlanned).Sum(down => (down.End - down.Start).Seconds);
        Assert.True(Lost(1) > Lost(2));
        Assert.Equal(0, Lost(4));
        var answer = Drafting.Answer(Drafting.Small.Batteries(2));
        Assert.Equal(Ratio.FromPercent(15), answer.Scenario!.Swaps.Reserve);
        Assert.Contains(answer.Assumed, value => value is { Field: "swaps.reserve", Value: "15 %" });
        Assert.Null(Drafting.Open(answer.Scenario).TextAt("swaps.reserve"));
    }

    [Fact]
    public void Further_batteries_begin_as_the_one_on_the_rig_also_where_that_is_said_later()
    {
        var old = OnSmall.Batteries(3).Set("capacity-left", "80 %");
        Each.Of(old.Whole().Batteries.Values, battery => Assert.Equal(80, battery.CapacityLeft!.Value.Percent, 9));
        Assert.Contains(Drafting.Answer(old).Assumed, value => value.Field == "batteries");
        var again = Drafting.Open(old.Whole()).Set("capacity-left", "70 %").With("batteries.battery-2.capacity-left", "90 %");
        Assert.Equal([70.0, 90, 70], again.Whole().Batteries.Values.Select(battery => battery.CapacityLeft!.Value.Percent));
    }

    [Fact]
    public void A_charger_of_which_nobody_says_where_it_stands_is_not_left_in_the_cold()
    {
        var night = Three.Set("ambient", "-5 °C").Set("power-hours", null);
        var answer = Drafting.Answer(night);
        Assert.Equal(20, answer.Scenario!.Chargers["charger"].Ambient!.Value.DegreesCelsius, 9);
        Assert.Contains(answer.Assumed, value => value is { Field: "chargers.charger.ambient", Value: "20 °C" });
        Assert.True(Charged(answer) > 0);
        var places = RigFields.Of("charger-stands").Choices.Select(choice => choice.Text).ToList();
        var outside = Drafting.Answer(night.Set("charger-stands", places[^1]));
        Assert.Null(outside.Scenario!.Chargers["charger"].Ambient);
        // Below the 10 °C under which no battery is charged.
        Assert.Equal(0, Charged(outside), 9);
        Assert.Equal(places[1], Drafting.Answer(night.Set("charger-stands", places[1])).Scenario!.Chargers["charger"].Stands);

        static double Charged(RigSoFar answer) => answer.Answer!.Simulation.FromWall.WattHours;
    }

    [Fact]
    public void While_it_rolls_nothing_is_swapped()
    {
        var four = Three.Batteries(4).Charger(null);
        var rolling = four.Day.Blocks.Where(block => block.Value.StateOf("camera") == PowerState.Record)
            .Aggregate(four, (given, block) => given.With($"days.day.blocks.{block.Key}.rolling", "yes"));
        var days = new[] { "20 %", "35 %", "50 %", "65 %" }.Select(share => (
            Rolling: Drafting.Answer(rolling.Set("swap-at", share)).Answer!.Simulation.Swaps,
            Free: Drafting.Answer(four.Set("swap-at", share)).Answer!.Simulation.Swaps)).ToList();
        // A swap that is not forced falls into no block that rolls.
        Each.Of(days.SelectMany(day => day.Rolling).Where(swap => !swap.Forced && swap.Block.Length > 0),
            swap => Assert.False(rolling.Day.Blocks[swap.Block].Rolling));
        Assert.Contains(days, day => !day.Rolling.Select(swap => swap.Time).SequenceEqual(day.Free.Select(swap => swap.Time)));
    }

    [Fact]
    public void Fewer_or_more_than_in_the_file_leave_the_others_as_they_are()
    {
        var before = Three.Whole();
        before = before with
        {
            Batteries = before.Batteries.With("battery-1",
                before.Batteries["battery-1"] with { CapacityLeft = Ratio.FromPercent(80) }),
            Chargers = before.Chargers.With("charger", before.Chargers["charger"] with { WallLimit = Power.FromWatts(90) })
                .With("van", new DayCharger(ElectricCurrent.FromAmperes(1))),
        };
        var given = Drafting.Open(before);
        var fewer = given.Batteries(2).Charger("1").Whole();
        Assert.Equal(before.Batteries.Take(2), fewer.Batteries);
        Assert.Equal((1, 90.0), (fewer.Chargers["charger"].Bays, (double)fewer.Chargers["charger"].WallLimit!.Value.Watts));
        Assert.Equal(before.Chargers["van"], fewer.Chargers["van"]);
        Assert.Equal(2, fewer.Kit["battery"].Count);
        var more = given.Batteries(5).Whole();
        Assert.Equal(5, more.Batteries.Count);
        Assert.Equal(before.Batteries, new OrderedMap<BatteryAtStart>(more.Batteries.Take(3)));
        var none = given.Batteries(null).Charger(null).Whole();
        Assert.Empty(none.Batteries);
        Assert.Equal(["van"], none.Chargers.Keys);
    }

    [Fact]
    public void Another_kind_of_battery_takes_the_place_of_all()
    {
        var before = Three.Whole();
        var after = Drafting.Open(before).Choose("battery", "brick-190wh").Whole();
        Each.Of(after.Batteries.Values, battery => Assert.Equal("battery", battery.Item));
        Assert.Equal(("brick-190wh", 3), (after.Kit["battery"].Part, after.Kit["battery"].Count));
    }

    [Fact]
    public void A_number_that_can_not_be_is_refused()
    {
        Assert.Throws<ScenarioProblemsException>(() => Supplying.Batteries(Drafting.Small, 0));
        Assert.Throws<ScenarioProblemsException>(() => Supplying.Batteries(Drafting.Blank, 2));
        Assert.Equal("chargers.charger.bays", Assert.Single(Drafting.Answer(Three.Charger("many")).Problems).Path);
    }

    [Fact]
    public void Two_questions_make_a_journey_that_the_answer_speaks_of()
    {
        var given = Supplying.Journey(Three, "flight", "2").Given;
        var answer = Drafting.Answer(given);
        Assert.Empty(answer.Problems);
        Assert.NotNull(answer.Answer!.Of(QuestionKind.Travel));
        Assert.Equal(2, answer.Scenario!.Journeys["journey"].Travellers.Count);
        var back = Drafting.Open(answer.Scenario);
        Assert.Equal(("flight", "2"), (back.TextAt("journeys.journey.by"), back.TextAt("journeys.journey.travellers")));
        Assert.Equal(ScenarioFile.Text(answer.Scenario), ScenarioFile.Text(back.Whole()));
        Assert.Empty(Supplying.Journey(back, "", null).Given.Whole().Journeys);
        Assert.Equal("journeys.journey.by",
            Assert.Single(Drafting.Answer(Supplying.Journey(Three, "fly", "2").Given).Problems).Path);
    }
}
