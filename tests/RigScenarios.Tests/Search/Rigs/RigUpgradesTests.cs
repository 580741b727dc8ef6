using RigScenarios.Scenarios;
using RigScenarios.Search.Rigs;

namespace RigScenarios.Tests.Search.Rigs;

public class RigUpgradesTests
{
    private const string Slots = "{light: {parts: [thrifty]}, flat: {parts: [small, large]}}";

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    // By hand: light 70, thrifty light 90, flat battery 120, small one 60, large one 250; none is owned. What lasts two hours
    // costs at least 60 + 90, so year 1 has none. In year 2 the 200 pay the flat battery and the light (1 h 42 min left). In
    // year 3 the 110 pay the thrifty light (2 h 10 min left); the light brings 70 · 0.7 · 0.85 · 0.85 then. For the large
    // battery it never does.
    [Fact]
    public void An_order_that_can_be_worked_out()
    {
        var result = Find(Slots, "musts: {lasts: {}}", "{budget-a-year: 100 EUR, years: 3}");
        var plan = result.Upgrades!;
        Assert.Equal((2, true, RigWish.LongestDay), (plan.FirstFeasible, plan.IsExact, plan.Wish));
        Assert.Equal(["Flat battery", "Light"], plan.Years.Take(2).SelectMany(year => year.Bought).Select(Title).Order());
        Assert.Equal([("Thrifty light", 90m)], plan.Years[2].Bought.Select(trade => (Title(trade), trade.Amount)));
        Assert.Equal([("Light", 35.4025m)], plan.Years[2].Sold.Select(trade => (Title(trade), trade.Amount)));
        Assert.Equal([100, 10, 55.4025m], plan.Years.Select(year => year.MoneyLeft));
        Assert.Null(plan.Years[0].Choice);
        Assert.Equal(["light", "flat"], plan.Years[0].EmptyPlaces);
        Assert.Equal(result.Model.Figures(plan.Years[2].Choice!, Cancellation).Headline, plan.Years[2].Figures!.Headline);
        Assert.Equal(["camera", "plate"], plan.NotPaid);
    }

    [Fact]
    public void It_is_told_year_by_year_with_the_sentence_of_the_answer()
    {
        var result = Find(Slots, "musts: {lasts: {}}", "{budget-a-year: 100 EUR, years: 3}");
        Assert.Equal("With 100 EUR a year over 3 years a rig that holds all musts but the budget is there in year 2, no sooner; "
            + "this order serves the longest day best, and 55.40 EUR are left at the end.", RigUpgradeSentences.Headline(result));
        var years = RigUpgradeSentences.Years(result);
        Assert.Equal("Year 1: nothing is bought; 100 EUR are left. Not yet a rig: there is nothing yet for light, flat.",
            years[0]);
        Assert.Equal("Year 3: buy Thrifty light for 90 EUR; sell Light for 35.40 EUR; 55.40 EUR are left. The rig: "
            + $"Thrifty light, Flat battery. {result.Upgrades!.Years[2].Figures!.Headline}", years[2]);
        Assert.Contains("2 h 10 min", years[2], StringComparison.Ordinal);
        Assert.Contains(RigUpgradeSentences.RestsOn(result), line => line.EndsWith("is not owned: camera, plate.",
            StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_owned_costs_nothing_and_may_be_sold()
    {
        // The large battery is owned and lasts longest of all: nothing is gained by another one.
        var result = Find("{light: {parts: [thrifty]}, flat: {parts: [small], from-kit: [spare]}}", "musts: {lasts: {}}",
            "{budget-a-year: 100 EUR, years: 2}");
        var first = result.Upgrades!.Years[0];
        Assert.Equal((1, 10m), (result.Upgrades.FirstFeasible!.Value, first.MoneyLeft));
        Assert.Equal(["Thrifty light"], first.Bought.Select(Title));
        Assert.Equal("Year 2: nothing is bought; 110 EUR are left. The rig stays as it is.",
            RigUpgradeSentences.Years(result)[1]);
        // Too heavy, it is sold for its price less 30 %: 250 · 0.7 = 175. With it the 175 pay what is light enough at once.
        var light = Find("{light: {parts: [thrifty]}, flat: {parts: [small], from-kit: [spare]}}",
            "musts: {lasts: {}, mass: 2 kg}", "{budget-a-year: 0 EUR, years: 2}");
        first = light.Upgrades!.Years[0];
        Assert.Equal((1, 175m), (light.Upgrades.FirstFeasible!.Value, first.Sold.Single().Amount));
        Assert.Equal(["Small battery", "Thrifty light"], first.Bought.Select(Title).Order());
        Assert.Equal(25, first.MoneyLeft);
    }

    [Fact]
    public void A_thing_that_another_build_uses_is_not_sold()
    {
        var text = SmallQuestion.Text("{light: {parts: [thrifty]}, flat: {parts: [small], from-kit: [spare]}}",
            "musts: {mass: 2 kg}\n  upgrade: {budget-a-year: 200 EUR, years: 1}");
        const string one = "builds:\n";
        Assert.Contains(one, text, StringComparison.Ordinal);
        var other = text.Replace(one,
            $"{one}  other: {{stance: tripod, battery: {{item: spare}}, plate: plate, devices: {{camera: {{}}}}}}\n",
            StringComparison.Ordinal);
        Assert.NotEmpty(Plan(text).Years.Single().Sold);
        Assert.Empty(Plan(other).Years.Single().Sold);
    }

    [Fact]
    public void Money_that_never_does_is_told_and_buys_nothing()
    {
        var result = Find(Slots, "musts: {lasts: {}}", "{budget-a-year: 40 EUR, years: 3}");
        Assert.Empty(result.Upgrades!.Years);
        Assert.Equal("No: 40 EUR a year over 3 years buy no rig that holds all musts but the budget.",
            RigUpgradeSentences.Headline(result));
        Assert.Single(RigUpgradeSentences.RestsOn(result));
    }

    [Fact]
    public void The_budget_of_the_question_does_not_bind_the_years() => Assert.Equal(2,
        Find(Slots, "musts: {lasts: {}, budget: 50 EUR}", "{budget-a-year: 100 EUR, years: 3}").Upgrades!.FirstFeasible);

    [Fact]
    public void A_file_that_does_not_ask_gets_no_order() => Assert.Null(RigSearch.Find(SmallQuestion.Of(Slots),
        cancellation: Cancellation).Upgrades);

    [Fact]
    public void Drawn_questions_have_the_best_of_all_orders() => Drawn.Cases(5, 60, atLeast: 8, (random, looked) =>
    {
        string Some(params string[] ids) =>
            $"[{string.Join(", ", ids.Where(_ => random.Next(2) == 0).Append(ids[^1]).Distinct())}]";
        var empty = random.Next(2) == 0 ? ", may-stay-empty: yes" : "";
        var kit = random.Next(2) == 0 ? ", from-kit: [spare]" : "";
        var mass = random.Next(2) == 0 ? ", mass: 2.2 kg" : "";
        var wish = random.Next(2) == 0 ? "longest-day" : "least-mass";
        var years = random.Next(1, 4);
        var question = SmallQuestion.Of($"{{light: {{parts: {Some("bright", "thrifty")}{empty}}}, flat: {{parts: "
            + $"{Some("small", "large")}{kit}}}}}", $"musts: {{lasts: {{}}{mass}}}\n  wishes: [{wish}]\n  upgrade: "
            + $"{{budget-a-year: {random.Next(2, 20) * 10} EUR, years: {years}}}");
        var plan = RigUpgrades.Find(new RigChoices(question), cancellation: Cancellation);
        var best = new AllOrders(new RigChoices(question), Cancellation).Best();
        Assert.True(plan.IsExact);
        Assert.Equal(best.First, plan.FirstFeasible ?? int.MaxValue);
        if (plan.FirstFeasible is null)
            return;
        var goals = plan.Years.Where(year => year.Choice is not null).Sum(year => AllOrders.Goal(plan.Wish, year.Figures!));
        Assert.Equal((best.GoalSum, best.Money), (goals, plan.Years[^1].MoneyLeft));
        if (plan.Years.Skip(1).Any(year => year.Bought.Count > 0))
            looked.One();
    });

    [Fact]
    public void More_things_than_can_be_weighed_against_each_other_are_told()
    {
        // Each draws less than the one before and costs more.
        var lights = string.Concat(Enumerable.Range(1, 24).Select(number => $"\n  light-{number}: {{kind: monitor, name: Light "
            + $"number {number}, mass: 100 g, buy: {10 + number} EUR, power: {{standby: 0.1 W, record: {(30 - number) / 10}."
            + $"{(30 - number) % 10} W}}}}"));
        var text = SmallQuestion.Text("{light: {kind: monitor}}", "upgrade: {budget-a-year: 30 EUR, years: 2}")
            .Replace("parts:\n", $"parts:{lights}\n", StringComparison.Ordinal);
        var result = RigSearch.Find(BestRigQuestion.Of(SmallScenario.Read(text)), cancellation: Cancellation);
        Assert.False(result.Upgrades!.IsExact);
        Assert.Equal(1, result.Upgrades.FirstFeasible);
        Assert.StartsWith("Not every order was tried: the plan is the best of those of ", RigUpgradeSentences.RestsOn(result)[0],
            StringComparison.Ordinal);
        Assert.Contains(" by what was tried", RigUpgradeSentences.Headline(result), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_too_many_choices_those_of_the_best_rigs_are_run()
    {
        var question = SmallQuestion.Of(Slots, "upgrade: {budget-a-year: 400 EUR, years: 2}");
        var plan = RigUpgrades.Find(new RigChoices(question), null, [new([1, 2])], mostRun: 4, Cancellation);
        Assert.False(plan.IsExact);
        Assert.Equal(["Large battery", "Thrifty light"], plan.Years[0].Bought.Select(Title).Order());
    }

    [Fact]
    public void An_order_that_nobody_wants_any_more_stops()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        var model = new RigChoices(SmallQuestion.Of(Slots, "upgrade: {budget-a-year: 400 EUR, years: 2}"));
        Assert.ThrowsAny<OperationCanceledException>(() => RigUpgrades.Find(model, cancellation: stopped.Token));
        Assert.Throws<ArgumentException>(() => RigUpgrades.Find(new RigChoices(SmallQuestion.Of(Slots)),
            cancellation: Cancellation));
    }

    private static string Title(RigTrade trade) => trade.Thing.Title;

    private static RigUpgradePlan Plan(string text) =>
        RigUpgrades.Find(new RigChoices(BestRigQuestion.Of(SmallScenario.Read(text))), cancellation: Cancellation);

    private static RigSearchResult Find(string slots, string more, string upgrade) =>
        RigSearch.Find(SmallQuestion.Of(slots, $"{more}\n  upgrade: {upgrade}"), cancellation: Cancellation);
}
