using RigScenarios.Answers;
using RigScenarios.Drafts;
using RigScenarios.Drafts.Edits;
using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Drafts;

/// <summary>The answer builds up while a form is filled in.</summary>
public sealed class AnswerSoFarTests
{
    private static readonly GivenRig NoMonitor = Drafting.Small.Without("monitor");

    private static readonly GivenRig OwnMonitor = NoMonitor.AndOwn("monitor", ("name", "My monitor"), ("label.voltage", "12 V"),
        ("label.current", "0.8 A"));

    [Fact]
    public void With_nothing_on_the_rig_it_says_what_to_choose_first()
    {
        var answer = Drafting.Answer(Drafting.Blank.With("days.day", null));
        Assert.Equal(["builds.rig.devices", "days.day.blocks", "days.day.ambient", "builds.rig.battery.item"],
            answer.Missing.Select(field => field.Path));
        Assert.Empty(answer.Problems);
        Assert.Null(answer.Answer);
        Assert.Null(answer.Scenario);
        Assert.Equal("Choose a camera body and a battery: the answer begins there.", answer.Sentence);
    }

    [Fact]
    public void A_body_and_a_battery_are_enough_for_a_first_answer()
    {
        var answer = Drafting.Answer(NoMonitor.Without("plate").Set("ambient", null).Set("blocks", null));
        Assert.Equal(["days.day.blocks", "days.day.ambient"], answer.Missing.Select(field => field.Path));
        Assert.Null(answer.Scenario);
        // Common practice, no source: a 190 Wh battery runs a body of this size about 8 h in record without a stop.
        Assert.InRange(answer.Answer!.Simulation.Runtime.Hours, 7, 8.5);
        Assert.StartsWith("Recording without a stop it lasts ", answer.Sentence, StringComparison.Ordinal);
        Assert.Contains("20 °C", answer.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_whole_rig_gives_the_scenario_and_its_answer()
    {
        var answer = Drafting.Answer(Drafting.Small);
        Assert.Empty(answer.Missing);
        Assert.Empty(answer.Problems);
        Assert.NotNull(answer.Scenario);
        Assert.True(answer.IsForDay);
        Assert.Equal(AnswerSentences.Headline(answer.Answer!), answer.Sentence);
        Assert.NotEmpty(answer.Cautions);
        Assert.Equal(2473, answer.Totals.Mass.Grams, 6);
        Assert.Equal(new Parts.Money(4705, "EUR"), answer.Totals.Cost!.TotalMoney);
    }

    [Fact]
    public void A_budget_brings_the_question_of_cost_with_the_figure_of_the_table()
    {
        var asked = Drafting.Answer(Drafting.Small.With("costs.budget", "4000 EUR").With("costs.others-are", "bought"));
        var question = asked.Answer!.Of(QuestionKind.Cost)!;
        Assert.Equal(Limits.Verdict.Fails, question.Verdict);
        Assert.Equal("4,705 EUR to buy", CostSentences.InATable(asked.Totals.Cost!));
        Assert.Contains("costs 4,705 EUR to buy, 705 EUR over the budget of 4,000 EUR",
            CostSentences.Line(asked.Answer!), StringComparison.Ordinal);
        Assert.Null(Drafting.Answer(Drafting.Small).Answer!.Of(QuestionKind.Cost));
    }

    [Fact]
    public void Of_a_file_with_several_days_both_figures_rent_for_the_one_that_is_shown()
    {
        var file = RigScenarios.Files.ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));
        Assert.NotEqual(1, file.Days.Count);
        var rented = Drafting.Answer(Drafting.Open(file, "tripod", "day-one").With("costs.others-are", "rented"));
        Assert.Equal(1, rented.Answer!.Cost!.RentedDays);
        Assert.Equal(rented.Answer!.Cost!.Total, rented.Totals.Cost!.Total);
        Assert.Contains("to rent for 1 day", CostSentences.InATable(rented.Totals.Cost!), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_complete_is_named_at_its_field_and_left_out_of_the_answer()
    {
        var answer = Drafting.Answer(NoMonitor.AndOwn("monitor", ("name", "Side monitor")));
        Assert.Empty(answer.Problems);
        Assert.Equal(new MissingField("parts.own-monitor.power.record", "Side monitor: Watts"), Assert.Single(answer.Missing));
        Assert.Null(answer.Scenario);
        Assert.Equal(Drafting.Answer(NoMonitor).Answer!.Simulation.Runtime, answer.Answer!.Simulation.Runtime);
        Assert.Contains("Not counted yet: Side monitor.", answer.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Own_figures_become_a_part_that_says_what_was_assumed_and_so_does_the_answer()
    {
        var answer = Drafting.Answer(OwnMonitor);
        Assert.Empty(answer.Problems);
        var part = answer.Scenario!.Parts["own-monitor"];
        Assert.Equal(9.6, (double)part.Power!.Record!.Value.As(UnitsNet.Units.PowerUnit.Watt), 9);
        Assert.Equal(["power.record", "power.standby", "voltage.minimum", "voltage.maximum", "maximum-current", "mass"],
            part.Assumed);
        // A steady supply of 12 V on the label, so not the battery itself.
        Assert.Equal("regulator-12v", answer.Wiring.Single(line => line.Thing == "monitor").FedBy);
        Assert.Contains(answer.Assumed, value => value.Field == "parts.own-monitor.mass");
        var entered = PartAssumptions.In(answer.Answer!.Scenario, answer.Answer.TheBuild, answer.Answer.Plan.Days[0])
            .Select(value => value.Field);
        // The mass is in no day's result, a regulator holds the voltage of what hangs on it, and the watts are of the label.
        Assert.Equal(["parts.own-monitor.power.standby"], entered);
        Assert.Contains(answer.Cautions, caution => caution.Contains("My monitor", StringComparison.Ordinal)
            && caution.Contains("assumed", StringComparison.Ordinal));
    }

    [Fact]
    public void An_assumed_draw_that_no_block_asks_for_is_not_listed()
    {
        var given = new[] { "rigging", "second-rigging", "afternoon-wait" }
            .Aggregate(OwnMonitor, (now, block) => now.With($"days.day.blocks.{block}", null));
        Each.HasNot(Drafting.Answer(given).Answer!.Assumed,
            value => value.Field.EndsWith("power.standby", StringComparison.Ordinal));
    }

    [Fact]
    public void Own_things_without_what_is_needed_are_told_in_one_go()
    {
        var answer = Drafting.Answer(NoMonitor.Without("battery").AndOwn("monitor").AndOwn("battery").AndOwn("regulator"));
        Assert.Equal(["parts.own-battery.battery.energy", "parts.own-monitor.power.record",
            "parts.own-regulator.regulator.output-voltage"], answer.Missing.Select(field => field.Path).Order());
        Assert.Empty(answer.Problems);
        Assert.StartsWith("Still needed: ", answer.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("no-such-part", "There is no part")]
    [InlineData("monitor-5inch", "There is no part")]
    [InlineData("rods-150", "is not a device")]
    public void A_part_that_can_not_stand_there_is_told_by_the_check_of_a_file(string part, string words)
    {
        var answer = Drafting.Answer(Drafting.Small.With("kit.monitor.part", part));
        var problem = Assert.Single(answer.Problems);
        Assert.Contains(words, problem.Problem, StringComparison.Ordinal);
        Assert.Contains("monitor", problem.Path, StringComparison.Ordinal);
        Assert.Equal(part == "monitor-5inch" ? "monitor-5in" : null, problem.Nearest);
        Assert.Equal(Drafting.Answer(NoMonitor).Answer!.Simulation.Runtime, answer.Answer!.Simulation.Runtime);
        var refused = Assert.Throws<ScenarioProblemsException>(() => Choosing.Listed(Drafting.Small, "monitor", part));
        Assert.Equal("part", Assert.Single(refused.Problems).Path);
    }

    [Fact]
    public void A_second_battery_is_refused()
    {
        var refused = Assert.Throws<ScenarioProblemsException>(() => Adding.Listed(Drafting.Small, "battery", "brick-98wh"));
        Assert.Contains("another battery", Assert.Single(refused.Problems).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_voltage_that_somebody_chose_gets_no_answer_but_a_warning_at_the_thing()
    {
        var answer = Drafting.Answer(Drafting.Small.Feed("camera", "plate"));
        Assert.Null(answer.Answer);
        Assert.Contains(answer.Problems, problem => problem.Path == "builds.rig.devices.camera"
            && problem.Problem.StartsWith("WRONG VOLTAGE", StringComparison.Ordinal));
        Assert.Contains("WRONG VOLTAGE", answer.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void An_incomplete_rig_is_no_scenario_and_everything_that_is_missing_is_told()
    {
        var refused = Assert.Throws<ScenarioProblemsException>(
            () => Drafting.Small.Without("battery").Set("blocks", null).Whole());
        Assert.Equal(["builds.rig.battery.item", "days.day.blocks"], refused.Problems.Select(problem => problem.Path).Order());
    }

    [Fact]
    public void All_texts_that_can_not_be_read_are_told_with_path_and_nearest_name_and_the_rest_is_kept()
    {
        var given = OwnMonitor.Set("stance", "tripd").Set("ambient", "-8").With("colour", "red")
            .With("parts.own-monitor.power.record", "9,6 W").With("parts.own-monitor.mass", "310")
            .With("days.day.blocks.early-takes.length", "45").With("days.day.blocks.early-takes.states.camera", "recrd");
        var problems = Drafting.Answer(given).Problems;
        Assert.Equal(new[] { "builds.rig.stance", "days.day.ambient", "colour", "parts.own-monitor.power.record",
            "parts.own-monitor.mass", "days.day.blocks.early-takes.length", "days.day.blocks.early-takes.states.camera" }.Order(),
            problems.Select(problem => problem.Path).Order());
        Assert.Equal(["record", "tripod"], problems.Where(problem => problem.Nearest is not null)
            .Select(problem => problem.Nearest).Order());
        Each.Of(problems, problem => Assert.NotNull(problem.Accepted));
        // What can't be read stays as it was written, also when something else is changed.
        Assert.Equal("310", given.And("lens", "stills-prime-24").TextAt("parts.own-monitor.mass"));
        Assert.NotNull(Drafting.Answer(given).Answer);
    }

    [Fact]
    public void A_name_that_no_file_could_hold_is_told_and_makes_no_scenario()
    {
        var answer = Drafting.Answer(Drafting.Small.With("days.day.blocks.a b.length", "45 min"));
        Assert.Contains(answer.Problems, problem => problem.Problem.Contains("a b", StringComparison.Ordinal));
        Assert.Null(answer.Scenario);
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("3")]
    [InlineData("{\"builds\": [3], \"days\": \"x\", \"kit\": {\"a\": {\"part\": {}}}}")]
    public void What_is_no_rig_at_all_gets_no_answer(string text)
    {
        using var json = System.Text.Json.JsonDocument.Parse(text);
        var answer = Drafting.Answer(GivenRig.Read(GivenJson.Read(json.RootElement), RigFrame.New(Drafting.Library)));
        Assert.Null(answer.Answer);
        Assert.Null(answer.Scenario);
        Assert.NotEmpty(answer.Missing);
    }

    [Fact]
    public void A_place_changes_the_balance_and_the_day_is_not_run_again()
    {
        var first = Drafting.Answer(Drafting.Small);
        var moved = RigSoFar.Of(Drafting.Small.Set("slide-middle", "30 mm"), first.Answer, TestContext.Current.CancellationToken);
        Assert.Same(first.Answer!.Simulation, moved.Answer!.Simulation);
        Assert.Equal(30, moved.Scenario!.Builds["rig"].OnHead!.SlideMiddle!.Value.Millimeters, 9);
    }
}
