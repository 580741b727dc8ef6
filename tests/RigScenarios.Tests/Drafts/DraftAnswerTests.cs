using RigScenarios.Answers;
using RigScenarios.Days;
using RigScenarios.Drafts;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Drafts;

/// <summary>The answer builds up while a form is filled in.</summary>
public sealed class DraftAnswerTests
{
    private static readonly DraftThing OwnMonitor = new()
    {
        Role = RigRole.Monitor,
        Own = new OwnFigures { Name = "My monitor", Voltage = ElectricPotential.FromVolts(12),
            Current = ElectricCurrent.FromAmperes(0.8) },
    };

    [Fact]
    public void With_nothing_on_the_rig_it_says_what_to_choose_first()
    {
        var answer = Drafting.Answer(new RigDraft());
        Assert.Equal(["camera", "battery", "blocks", "ambient"], answer.Missing);
        Assert.Empty(answer.Problems);
        Assert.Null(answer.Answer);
        Assert.Null(answer.Scenario);
        Assert.Equal("Choose a camera body and a battery: the answer begins there.", answer.Sentence);
    }

    [Fact]
    public void A_body_and_a_battery_are_enough_for_a_first_answer()
    {
        var answer = Drafting.Answer(new RigDraft { Things = Drafting.Small.Things.Without("monitor").Without("plate") });
        Assert.Equal(["blocks", "ambient"], answer.Missing);
        Assert.Null(answer.Scenario);
        // Common practice, no source: a 190 Wh brick runs a body of this size about 8 h in record without a stop.
        Assert.InRange(answer.Answer!.Simulation.Runtime.Hours, 7, 8.5);
        Assert.StartsWith("Recording without a stop it lasts ", answer.Sentence, StringComparison.Ordinal);
        Assert.Contains("20 °C", answer.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_whole_draft_gives_the_scenario_and_its_answer()
    {
        var answer = Drafting.Answer(Drafting.Small);
        Assert.Empty(answer.Missing);
        Assert.Empty(answer.Problems);
        Assert.NotNull(answer.Scenario);
        Assert.True(answer.IsForDay);
        Assert.Equal(AnswerSentences.Headline(answer.Answer!), answer.Sentence);
        Assert.NotEmpty(answer.Cautions);
        Assert.Equal(2473, answer.Totals.Mass.Grams, 6);
        Assert.Equal(new Parts.Money(4705, "EUR"), Assert.Single(answer.Totals.Buy));
    }

    [Fact]
    public void What_is_not_complete_is_told_at_its_field_and_left_out_of_the_answer()
    {
        var without = Drafting.Answer(Drafting.Small.Without("monitor"));
        var answer = Drafting.Answer(Drafting.Small.With("monitor", new DraftThing { Role = RigRole.Monitor }));
        Assert.Equal("things.monitor.part", Assert.Single(answer.Problems).Path);
        Assert.Null(answer.Scenario);
        Assert.Equal(without.Answer!.Simulation.Runtime, answer.Answer!.Simulation.Runtime);
        Assert.Contains("Not counted yet: monitor.", answer.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Own_figures_become_a_part_that_says_what_was_assumed_and_so_does_the_answer()
    {
        var answer = Drafting.Answer(Drafting.Small.With("monitor", OwnMonitor));
        Assert.Empty(answer.Problems);
        var part = answer.Scenario!.Parts["own-monitor"];
        Assert.Equal(9.6, (double)part.Power!.Record!.Value.As(UnitsNet.Units.PowerUnit.Watt), 9);
        Assert.Equal(["mass", "power.standby", "voltage.minimum", "voltage.maximum"], part.Assumed);
        // A steady supply of 12 V on the label, so not the brick itself.
        Assert.Equal("regulator-12v", answer.Wiring.Single(line => line.Thing == "monitor").FedBy);
        Assert.Contains(answer.Assumed, value => value.Field == "parts.own-monitor.mass");
        var entered = PartAssumptions.In(answer.Answer!.Scenario, answer.Answer.TheBuild, answer.Answer.Plan.Days[0])
            .Select(value => value.Field);
        // The mass is in no day's result, and a regulator holds the voltage of what hangs on it.
        Assert.Equal(["parts.own-monitor.power.standby"], entered);
        Assert.Contains(answer.Cautions, caution => caution.Contains("My monitor", StringComparison.Ordinal)
            && caution.Contains("assumed", StringComparison.Ordinal));
    }

    [Fact]
    public void An_assumed_draw_that_no_block_asks_for_is_not_listed()
    {
        var draft = Drafting.Small.With("monitor", OwnMonitor);
        draft = draft with { Blocks = draft.Blocks.Without("rigging").Without("second-rigging").Without("afternoon-wait") };
        Assert.DoesNotContain(Drafting.Answer(draft).Answer!.Assumed,
            value => value.Field.EndsWith("power.standby", StringComparison.Ordinal));
    }

    [Fact]
    public void Own_figures_without_what_is_needed_are_told_in_one_go()
    {
        var answer = Drafting.Answer(Drafting.Small
            .With("monitor", new DraftThing { Role = RigRole.Monitor, Own = new OwnFigures { Name = "M" } })
            .With("battery", new DraftThing { Role = RigRole.Battery, Own = new OwnFigures { Name = "B" } })
            .With("camera-power", new DraftThing { Role = RigRole.Regulator, Own = new OwnFigures { Name = "R" } }));
        Assert.Equal(["things.battery.own.energy", "things.camera-power.own.output-voltage", "things.monitor.own.power"],
            answer.Problems.Select(problem => problem.Path).Order());
        Assert.Equal(["battery"], answer.Missing);
    }

    [Theory]
    [InlineData("no-such-part", RigRole.Monitor, "There is no part")]
    [InlineData("monitor-5inch", RigRole.Monitor, "There is no part")]
    [InlineData("rods-150", RigRole.Monitor, "can't stand here")]
    public void A_part_that_can_not_stand_there_is_told(string part, RigRole role, string words)
    {
        var answer = Drafting.Answer(Drafting.Small.With("monitor", new DraftThing { Role = role, Part = part }));
        var problem = Assert.Single(answer.Problems);
        Assert.Equal("things.monitor.part", problem.Path);
        Assert.Contains(words, problem.Problem, StringComparison.Ordinal);
        Assert.Equal(part == "monitor-5inch" ? "monitor-5in" : null, problem.Nearest);
        Assert.NotNull(answer.Answer);
    }

    [Fact]
    public void A_second_battery_is_told_and_the_first_counted()
    {
        var answer = Drafting.Answer(Drafting.Small.With("spare",
            new DraftThing { Role = RigRole.Battery, Part = "brick-98wh" }));
        Assert.Equal("things.spare", Assert.Single(answer.Problems).Path);
        Assert.Equal(Drafting.Answer(Drafting.Small).Answer!.Simulation.Runtime, answer.Answer!.Simulation.Runtime);
    }

    [Fact]
    public void A_wrong_voltage_that_somebody_chose_gets_no_answer_but_a_warning_at_the_thing()
    {
        var answer = Drafting.Answer(Drafting.Small.With("camera", Drafting.Small.Things["camera"] with { FedBy = "plate" }));
        Assert.Null(answer.Answer);
        Assert.Contains(answer.Problems, problem => problem.Path == "things.camera"
            && problem.Problem.StartsWith("WRONG VOLTAGE", StringComparison.Ordinal));
        Assert.Contains("WRONG VOLTAGE", answer.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Applying_an_incomplete_draft_is_refused_with_everything_that_is_missing()
    {
        var refused = Assert.Throws<ScenarioProblemsException>(() =>
            (Drafting.Small.Without("battery") with { Blocks = Parts.OrderedMap<DayBlock>.Empty })
            .ApplyTo(null, Drafting.Library, "rig", "day"));
        Assert.Equal(2, refused.Problems.Count);
    }

    [Fact]
    public void The_reader_of_a_form_tells_all_problems_with_path_and_nearest_name_and_keeps_the_rest()
    {
        using var json = System.Text.Json.JsonDocument.Parse("""
            {"title": "T", "stance": "tripd", "ambient": "-8", "starts": "", "charge": null, "colour": "red",
             "things": {"monitor": {"role": "moniter", "own": {"power": "9,6 W", "voltage": "12 V", "mass": 310}},
             "camera": {"role": "camera", "part": "compact-body-b", "essential": true}},
             "blocks": {"one": {"length": "45", "states": {"camera": "recrd"}}}}
            """);
        var (draft, problems) = RigDraftFormat.TryRead(json.RootElement);
        string[] paths = ["stance", "ambient", "colour", "things.monitor.role", "things.monitor.own.power",
            "things.monitor.own.mass", "blocks.one.length", "blocks.one.states.camera"];
        Assert.Equal(paths.Order(), problems.Select(problem => problem.Path).Order());
        Assert.Equal(["tripod", "monitor", "record"],
            problems.Where(problem => problem.Nearest is not null).Select(problem => problem.Nearest));
        Each.Of(problems, problem => Assert.NotNull(problem.Accepted));
        Assert.Equal("T", draft!.Title);
        Assert.Equal(12, draft.Things["monitor"].Own!.Voltage!.Value.Volts);
        Assert.True(draft.Things["camera"].Essential);
    }

    [Fact]
    public void A_name_that_no_file_could_hold_never_gets_into_a_scenario()
    {
        using var json = System.Text.Json.JsonDocument.Parse("""
            {"things": {"Big Monitor": {"role": "monitor", "part": "monitor-5in"}}, "blocks": {"a b": {"length": "45 min"}}}
            """);
        var (draft, problems) = RigDraftFormat.TryRead(json.RootElement);
        Assert.Equal(2, problems.Count);
        Assert.Empty(draft!.Things);
        Assert.Empty(draft.Blocks);
        var answer = Drafting.Answer(Drafting.Small, build: "My build");
        Assert.Equal("build", Assert.Single(answer.Problems).Path);
        Assert.Null(answer.Scenario);
    }

    [Theory]
    [InlineData("{\"title\": \"\\ud800\"}")]
    [InlineData("[]")]
    [InlineData("3")]
    [InlineData("\"rig\"")]
    public void What_is_no_draft_at_all_is_told(string text)
    {
        using var json = System.Text.Json.JsonDocument.Parse(text);
        var (draft, problems) = RigDraftFormat.TryRead(json.RootElement);
        Assert.Null(draft);
        Assert.Single(problems);
    }
}
