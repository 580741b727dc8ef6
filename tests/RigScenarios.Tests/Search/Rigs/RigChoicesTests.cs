using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Search.Choices;
using RigScenarios.Search.Rigs;

namespace RigScenarios.Tests.Search.Rigs;

public class RigChoicesTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public void Candidates_are_what_is_there_now_then_parts_then_the_kit_then_nothing()
    {
        var model = new RigChoices(SmallQuestion.Of(
            "{light: {parts: [thrifty], kind: monitor, may-stay-empty: yes}, flat: {from-kit: [spare]}}"));
        Assert.Equal(["now", "thrifty", "bright", "fragile", "none"], model.Slots[0].Candidates);
        Assert.Equal(["now", "kit spare"], model.Slots[1].Candidates);
        Assert.Equal(10, model.Question.Choices);
    }

    // By hand: 20 W + 5 W + 2 W of the plate from 100 Wh last 3 h 42 min, so that 1 h 42 min are left after two hours; with the
    // thrifty light and 200 Wh 24 W last 8 h 20 min.
    [Fact]
    public void Figures_are_those_that_can_be_worked_out()
    {
        var model = new RigChoices(SmallQuestion.Of("{light: {parts: [thrifty]}, flat: {parts: [large]}}",
            "wishes: [least-cost, least-mass, longest-day]"));
        var now = new Choice([0, 0]);
        var other = new Choice([1, 1]);
        Assert.Equal((1220m, 2300m), (model.Cost.Of(now), model.Mass.Of(now)));
        Assert.Equal((1370m, 3000m), (model.Cost.Of(other), model.Mass.Of(other)));
        Assert.Equal((100.0 / 27) - 2, model.Figures(now, Cancellation).Reserve!.Value.Hours, 1e-4);
        Assert.Equal((200.0 / 24) - 2, model.Figures(other, Cancellation).Reserve!.Value.Hours, 1e-4);
        Assert.Equal(1 - (48.0 / 200), model.Figures(other, Cancellation).ReserveShare!.Value.DecimalFractions, 1e-4);
        Assert.Equal([1370, 3000, 2 - (200.0 / 24)], model.Evaluate(other, Cancellation).Goals,
            (one, two) => Math.Abs(one - two) < 1e-4);
        Assert.Equal(3.0, model.Figures(other, Cancellation).Mass!.Value.Kilograms, 1e-9);
    }

    [Fact]
    public void What_is_owned_costs_nothing_and_what_is_new_is_bought_even_where_the_rest_is_owned()
    {
        var text = SmallQuestion.Text("{flat: {parts: [large], from-kit: [spare]}}") + "\ncosts: {others-are: owned}\n";
        var model = new RigChoices(BestRigQuestion.Of(SmallScenario.Read(text)));
        Assert.Equal([0m, 250m, 0m], Enumerable.Range(0, 3).Select(candidate => model.Cost.Of(new Choice([candidate]))!.Value));
    }

    // A light at 8 EUR a day in a file of two days: 1,150 EUR for the rest, and a day's rent where one day is asked about.
    [Theory]
    [InlineData("", 1150 + 16)]
    [InlineData("days: [day]", 1150 + 8)]
    public void Rent_is_for_the_days_that_the_question_asks_about(string days, int cost)
    {
        var scenario = SmallScenario.Read(SmallQuestion.Text("{flat: {parts: [large]}}", days)
            .Replace("buy: 70 EUR", "buy: 70 EUR, rent-per-day: 8 EUR", StringComparison.Ordinal)
            .Replace("light: {part: light}", "light: {part: light, had: rented}", StringComparison.Ordinal)
            .Replace("\ndays:", "\ndays:\n  other: {blocks: {all: {length: 1 h, others: record}}}", StringComparison.Ordinal));
        var question = BestRigQuestion.Of(scenario);
        var model = new RigChoices(question);
        Assert.Equal(cost, model.Cost.Of(new Choice([0])));
        // The answer to the same choice on the same days says the same.
        var answer = RigAnswer.Of(question.With([0]) with { Costs = new CostTerms().ForDays(question.Days.Count) }, "one",
            question.Days, AnswerOptions.EndOnly, cancellation: Cancellation);
        Assert.Equal(cost, answer.Cost!.Total);
    }

    [Fact]
    public void A_slot_that_stays_empty_weighs_costs_and_draws_nothing()
    {
        var model = new RigChoices(SmallQuestion.Of("{light: {may-stay-empty: yes}}"));
        var none = new Choice([1]);
        Assert.Equal((1150m, 2000m), (model.Cost.Of(none), model.Mass.Of(none)));
        Assert.Equal((100.0 / 22) - 2, model.Figures(none, Cancellation).Reserve!.Value.Hours, 1e-4);
    }

    [Fact]
    public void A_battery_of_the_library_is_new_and_the_one_that_stays_keeps_its_age()
    {
        var scenario = SmallScenario.Read(SmallQuestion.Text("{flat: {parts: [flat, large]}}")
            .Replace("battery: {item: flat}", "battery: {item: flat, capacity-left: 50 %}", StringComparison.Ordinal));
        var model = new RigChoices(BestRigQuestion.Of(scenario));
        Assert.Equal(["now", "flat", "large"], model.Slots[0].Candidates);
        Assert.Equal([(50.0 / 27) - 2, (100.0 / 27) - 2, (200.0 / 27) - 2], Enumerable.Range(0, 3)
            .Select(candidate => model.Figures(new Choice([candidate]), Cancellation).Reserve!.Value.Hours),
            (one, two) => Math.Abs(one - two) < 0.02);
    }

    [Theory]
    [InlineData("musts: {lasts: {}}", RigMust.Lasts, true, false)]
    [InlineData("musts: {lasts: {reserve: 70 %}}", RigMust.Lasts, true, false)]
    [InlineData("musts: {lasts: {reserve: 80 %}}", RigMust.Lasts, false, false)]
    [InlineData("musts: {lasts: {reserve-time: 6 h}}", RigMust.Lasts, true, false)]
    [InlineData("musts: {lasts: {reserve-time: 7 h}}", RigMust.Lasts, false, false)]
    [InlineData("musts: {flies: without-asking}", RigMust.Flies, false, true)]
    [InlineData("musts: {flies: with-approval}", RigMust.Flies, false, true)]
    public void A_must_holds_or_says_why_not(string musts, RigMust must, bool large, bool small)
    {
        var model = new RigChoices(SmallQuestion.Of("{light: {parts: [thrifty]}, flat: {parts: [large, small]}}", musts));
        foreach (var (candidate, holds) in new[] { (1, large), (2, small) })
        {
            var choice = new Choice([candidate == 1 ? 1 : 0, candidate]);
            var figures = model.Figures(choice, Cancellation);
            Assert.True(figures.Holds(must) == holds, figures.Failing[(int)must]);
            Assert.Equal(holds, model.Evaluate(choice, Cancellation).Musts[model.AskedMusts.ToList().IndexOf(must)]);
        }
    }

    [Fact]
    public void Air_of_the_must_moves_the_coldest_point_and_keeps_the_course()
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", "river-ferry.yaml"));
        var question = BestRigQuestion.Of(scenario);
        Assert.Equal(-5, question.Scenario.ColdestAir!.Value.DegreesCelsius, 1e-9);
        var (was, now) = (scenario.Days["crossing"].AmbientPoints, question.Scenario.Days["crossing"].AmbientPoints);
        Assert.Equal(was.Select(point => point.Temperature.DegreesCelsius - 4),
            now.Select(point => point.Temperature.DegreesCelsius), (one, two) => Math.Abs(one - two) < 1e-6);
    }

    // The search shares one run among choices that differ only in what carries no current, and adds money and mass itself: both
    // must be what the answer to the whole scenario says.
    [Fact]
    public void Every_figure_is_the_one_that_the_answer_to_the_written_scenario_has()
    {
        var question = BestRigQuestion.Of(ScenarioFile.Read(Repository.Data("scenarios", "river-ferry.yaml")),
            new DateOnly(2026, 11, 30));
        var model = new RigChoices(question);
        var random = new Random(5);
        var looked = new LookedAt();
        for (var drawn = 0; drawn < 12; drawn++)
        {
            var choice = new Choice(model.Slots.Select(slot => random.Next(slot.Candidates.Count)));
            var figures = model.Figures(choice, Cancellation);
            if (figures.Refused is not null)
                continue;
            looked.One();
            var (written, problems) = ScenarioFile.TryReadText(ScenarioFile.Text(question.With(choice)),
                Repository.Data("scenarios", "chosen.yaml"));
            Assert.DoesNotContain(problems, problem => problem.Severity == Severity.Error);
            var answer = RigAnswer.Of(written!, "tripod", [], AnswerOptions.EndOnly with { Today = question.Today },
                cancellation: Cancellation);
            Assert.Equal(AnswerSentences.Headline(answer), figures.Headline);
            Assert.Equal(answer.Tightest.Reserve.Time.Hours, figures.Reserve!.Value.Hours, 1e-9);
            Assert.Equal(AnswerSentences.Questions(answer), figures.Questions);
            Assert.Equal(answer.Balance!.Mass.Mass.Grams, (double)model.Mass.Of(choice)!.Value, 1e-6);
            Assert.Equal(RigScenarios.Costs.KitCost.Of(written!, "tripod").Total, model.Cost.Of(choice)!.Value);
        }
        looked.AtLeast(4);
    }

    [Fact]
    public void A_choice_that_makes_no_rig_is_refused_with_the_words_of_the_check()
    {
        var model = new RigChoices(SmallQuestion.Of("{light: {parts: [fragile]}}", "musts: {lasts: {}, holds: yes}"));
        var figures = model.Figures(new Choice([1]), Cancellation);
        Assert.Contains("WRONG VOLTAGE", figures.Refused, StringComparison.Ordinal);
        Assert.False(figures.Holds(RigMust.Fits));
        Assert.False(figures.Holds(RigMust.Lasts));
    }

    [Fact]
    public void A_scenario_without_the_question_is_told_what_it_needs() =>
        Assert.Contains("best-rig: {build: NAME", Assert.Throws<ScenarioProblemsException>(() =>
            BestRigQuestion.Of(SmallScenario.Read(SmallScenario.Text()))).Message, StringComparison.Ordinal);
}
