using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Tests.Costs;

namespace RigScenarios.Tests.Answers;

/// <summary>What it costs as a question of the answer: the verdict against the budget, its words, its numbers, its way
/// out.</summary>
public sealed class CostQuestionTests
{
    private const string Priced = "camera: rented, flat: bought, light: bought";

    private static RigAnswer Answer(string? costs, string had = Priced) => RigAnswer.Of(PricedScenario.Read(costs, had), "one",
        [], cancellation: TestContext.Current.CancellationToken);

    private static QuestionLine Line(RigAnswer answer) =>
        AnswerSentences.Questions(answer).Single(line => line.Kind == QuestionKind.Cost);

    [Fact]
    public void Nobody_asks_where_the_file_says_nothing_of_money()
    {
        var answer = Answer(null, "");
        Assert.Null(answer.Of(QuestionKind.Cost));
        Assert.Null(answer.Cost);
        Assert.Null(answer.CostAhead);
        Assert.Null(AnswerShape.Of(answer, null)["cost"]);
    }

    // The battery 200, three lights 300, the camera's day 90: 590.
    [Theory]
    [InlineData("budget: 600 EUR, others-are: owned", Verdict.Holds,
        "What it needs costs 590 EUR (500 EUR to buy, 90 EUR to rent for 1 day), 10 EUR under the budget of 600 EUR.")]
    [InlineData("budget: 590 EUR, others-are: owned", Verdict.Holds,
        "What it needs costs 590 EUR (500 EUR to buy, 90 EUR to rent for 1 day), all of the budget of 590 EUR.")]
    [InlineData("budget: 589.99 EUR, others-are: owned", Verdict.Fails,
        "What it needs costs 590 EUR (500 EUR to buy, 90 EUR to rent for 1 day), 0.01 EUR over the budget of 589.99 EUR.")]
    [InlineData("budget: 600 EUR, others-are: owned, contingency: 5 %", Verdict.Close,
        "What it needs costs 590 EUR (500 EUR to buy, 90 EUR to rent for 1 day), 10 EUR under the budget of 600 EUR, of which "
        + "30 EUR is to stay.")]
    [InlineData("others-are: owned", Verdict.Holds,
        "What it needs costs 590 EUR (500 EUR to buy, 90 EUR to rent for 1 day); no budget is given.")]
    // The regulator has no price.
    [InlineData("budget: 600 EUR", Verdict.NotKnown, "What it needs costs at least 590 EUR (500 EUR to buy, 90 EUR to rent for "
        + "1 day), 10 EUR under the budget of 600 EUR; no price is known for regulator.")]
    [InlineData("budget: 500 EUR", Verdict.Fails, "What it needs costs at least 590 EUR (500 EUR to buy, 90 EUR to rent for "
        + "1 day), 90 EUR over the budget of 500 EUR; no price is known for regulator.")]
    public void The_verdict_is_that_against_the_budget(string costs, Verdict verdict, string words)
    {
        var answer = Answer(costs);
        Assert.Equal(verdict, answer.Of(QuestionKind.Cost)!.Verdict);
        Assert.Equal((verdict, words), (Line(answer).Verdict, Line(answer).Words));
        Assert.Equal(answer.Questions.Select(question => question.Verdict).Worst(), answer.Verdict);
    }

    [Fact]
    public void What_is_all_owned_costs_nothing_and_says_so()
    {
        var answer = Answer("budget: 0 EUR, others-are: owned", "");
        Assert.Equal(Verdict.Holds, answer.Of(QuestionKind.Cost)!.Verdict);
        Assert.Equal("Nothing of it is to be paid for: all is owned, all of the budget of 0 EUR.", Line(answer).Words);
    }

    [Fact]
    public void A_budget_that_is_passed_is_told_in_the_headline() =>
        Assert.Equal("No: it lasts the day with 1 h 2 min left, but what it needs costs 590 EUR (500 EUR to buy, 90 EUR to rent "
            + "for 1 day), 190 EUR over the budget of 400 EUR.",
            AnswerSentences.Headline(Answer("budget: 400 EUR, others-are: owned")));

    [Fact]
    public void The_missing_price_is_asked_for_at_its_field()
    {
        var question = Answer("budget: 900 EUR").Of(QuestionKind.Cost)!;
        Assert.Equal(["parts.regulator.buy"], question.MissingPaths);
        Assert.Equal(["The price to buy is not known of regulator."], question.Missing);
    }

    [Fact]
    public void The_section_tells_what_costs_most_and_the_years_to_come()
    {
        var answer = Answer("budget: 900 EUR, others-are: owned, vat: gross, years: 2, days-per-year: 10, days-in-a-row: 2, "
            + "battery-years: 4");
        var section = AnswerDetails.Of(answer).Single(one => one.Kind == QuestionKind.Cost);
        Assert.Equal("Cost", section.Title);
        // The battery brings 200 · 0.7 · 0.85 = 119 in the end and the lights 178.50, of 500: 202.50 are left to pay. The camera
        // is rented for five jobs of two days in each of two years: 1800. Over 20 days.
        Assert.Equal("Light, 3 of them (light): 300 EUR to buy.", section.Lines[0]);
        Assert.Equal("Flat battery (flat): 200 EUR to buy.", section.Lines[1]);
        Assert.Equal("Camera (camera): 90 EUR to rent for 1 day.", section.Lines[2]);
        Assert.Equal("Prices are gross, with value added tax.", section.Lines[3]);
        Assert.StartsWith("Over 2 years with 10 shooting days a year it costs 2,002.50 EUR in today's money, what things bring "
            + "in the end counted: 100.12 EUR a shooting day. Owning the batteries over these years comes "
            + "to ", section.Lines[4], StringComparison.Ordinal);
        Assert.StartsWith("Buying all of it costs no more than renting from ", section.Lines[5], StringComparison.Ordinal);
        Assert.Equal("1 is owned and costs nothing more.", section.Folded);
    }

    [Fact]
    public void Its_numbers_are_those_of_the_kit()
    {
        var answer = Answer("budget: 600 EUR, days-per-year: 12");
        var cost = AnswerShape.Of(answer, null)["cost"]!;
        Assert.Equal((590m, 500m, 90m, 10m), (Number("total"), Number("bought"), Number("rented"), Number("left")));
        Assert.Equal(("EUR", true), ((string?)cost["currency"], (bool)cost["is_at_least"]!));
        Assert.Equal(answer.Cost!.Lines.Count, cost["things"]!.AsArray().Count);
        Assert.Equal(answer.CostAhead!.Years!.Total, Number("years", "total"), 2);
        Assert.Equal(answer.CostAhead.BuyOrRent.Together!.Least, (int)cost["buying_pays"]![0]!["from"]!);
        Assert.Equal(["regulator"], cost["left_out"]!.AsArray().Select(name => (string?)name));
        decimal Number(params string[] path) => (decimal)path.Aggregate(cost, (node, step) => node[step]!)!;
    }

    [Fact]
    public void Where_the_budget_is_passed_renting_is_tried_and_what_costs_least_is_told_first()
    {
        var now = Answer("budget: 700 EUR, others-are: owned, vat: net", "camera: bought, flat: bought, light: bought");
        Assert.Equal(Verdict.Fails, now.Verdict);
        var sets = WouldWork.Find(now, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(Verdict.Holds, sets.Reach);
        Each.Step(sets.Sets, (first, then) => Assert.True(first.CostsMore!.Value.Amount <= then.CostsMore!.Value.Amount));
        // All three rented: 12 + 90 + 30 in place of 3500; the camera alone: 590 in place of it.
        Assert.Equal(-3368, sets.Sets[0].CostsMore!.Value.Amount);
        Assert.StartsWith("Rent 3 things in place of buying them: camera, light, flat (nothing to buy; 3,368 EUR less to pay): "
            + "then it lasts the day", WouldWorkSentences.Of(sets.Sets[0]), StringComparison.Ordinal);
        Assert.Contains(sets.Sets, set => set.CostsMore!.Value.Amount == -2910
            && set.Changes[0].Words == "Rent the Camera in place of buying it");
        Each.Of(sets.Sets, set => Assert.Equal(set.Then.Cost!.Total,
            RigAnswer.Of(ScenarioPath.SetAll(now.Scenario, set.Settings.Select(one => (one.Path, one.Value))), "one", [],
                AnswerOptions.EndOnly, cancellation: TestContext.Current.CancellationToken).Cost!.Total));
    }

    // 5 h in record ask for two batteries; one more costs 200, which a kit of owned things does not have for nothing.
    [Theory]
    [InlineData(500, Verdict.Holds)]
    [InlineData(150, Verdict.Fails)]
    public void What_a_way_out_buys_is_paid_for_though_the_kit_is_owned(int budget, Verdict reach)
    {
        var text = PricedScenario.Text($"budget: {budget} EUR, others-are: owned").Replace("length: 2 h", "length: 5 h",
            StringComparison.Ordinal);
        var now = RigAnswer.Of(SmallScenario.Read(text), "one", [], cancellation: TestContext.Current.CancellationToken);
        Assert.Equal((Verdict.Fails, Verdict.Holds),
            (now.Of(QuestionKind.Power)!.Verdict, now.Of(QuestionKind.Cost)!.Verdict));
        var sets = WouldWork.Find(now, cancellation: TestContext.Current.CancellationToken);
        var bought = sets.Sets.Where(set => set.Effort == ChangeEffort.Buy).ToList();
        if (reach == Verdict.Fails)
        {
            Assert.Empty(bought);
            return;
        }
        Each.Of(bought, set =>
        {
            Assert.Equal(set.Price, set.CostsMore);
            Assert.Equal(set.Then.Cost!.Total, set.Price!.Value.Amount);
            Assert.InRange(set.Then.Cost.Total, 200, budget);
        });
    }

    [Fact]
    public void Without_a_word_of_money_what_is_bought_ranks_a_set()
    {
        var harbour = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));
        var now = RigAnswer.Of(harbour, "shoulder", ["day-one"], cancellation: TestContext.Current.CancellationToken);
        Assert.Null(now.Cost);
        var sets = WouldWork.Find(now, cancellation: TestContext.Current.CancellationToken).Sets;
        Assert.Contains(sets, set => set.Effort == ChangeEffort.Buy);
        Each.HasNot(sets, set => set.CostsMore is not null);
        Each.Step(sets, (first, then) => Assert.True(first.CostInOrder <= then.CostInOrder));
    }

    [Fact]
    public void Money_changes_no_other_question()
    {
        var (with, without) = (Answer("budget: 1 EUR"), Answer(null));
        Assert.Equal(without.Questions.Select(question => (question.Kind, question.Verdict)), with.Questions
            .Where(question => question.Kind != QuestionKind.Cost).Select(question => (question.Kind, question.Verdict)));
        Assert.Equal(AnswerCautions.Of(without), AnswerCautions.Of(with));
    }
}
