using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using RigScenarios.Search.Choices;
using RigScenarios.Search.Rigs;
using UnitsNet;

namespace RigScenarios.Tests.Search.Rigs;

public class RigSearchTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    // By hand: 50 Wh at 24 W of camera, plate and thrifty light last 2 h 5 min; with the light of 5 W not the two hours. 100 Wh
    // last 3 h 42 min with the light, 4 h 10 min with the thrifty one; 200 Wh 7 h 24 min and 8 h 20 min.
    [Fact]
    public void A_front_that_can_be_worked_out_with_its_reasons()
    {
        var result = Find("{light: {parts: [thrifty]}, flat: {parts: [small, large]}}", "musts: {lasts: {}}");
        Assert.True(result.Front.IsComplete);
        Assert.Equal(["1 1", "0 0", "1 0", "0 2", "1 2"], result.Picks.Select(pick => pick.Choice.ToString()));
        Assert.Equal([1180m, 1220, 1240, 1350, 1370], result.Picks.Select(pick => pick.Cost!.Value));
        var first = result.Picks[0];
        Assert.Equal("light: next comes Light: 20 EUR less; but then it fails to last the day. The camera stops "
            + "1 h 51 min into the day, 9 min before wrap: the battery is empty.",
            RigSearchSentences.Why(result, first.Others[0]));
        Assert.Equal("flat: next comes Flat battery: 60 EUR more, 2 h 5 min longer.",
            RigSearchSentences.Why(result, first.Others[1]));
        Assert.Equal([("40 EUR more", 0, 1), ("20 EUR more", 1, 2), ("110 EUR more", 2, 3), ("20 EUR more", 3, 4)],
            RigSearchSentences.MoreMoney(result).Skip(1).Zip(result.MoreMoney).Select(one => (one.First.Split(',')[0],
                one.Second.From, one.Second.To)));
        Assert.Equal("Within 100 EUR more than the cheapest rig, longest day: rig 3, for 60 EUR more, 2 h 5 min longer.",
            RigSearchSentences.MoreMoney(result)[0]);
        // The cheapest rig at all is the small battery with the light that is there.
        Assert.Equal(["To last the day costs 20 EUR: without it the cheapest rig would be that much cheaper."],
            RigSearchSentences.MustPrices(result));
    }

    [Fact]
    public void Musts_that_do_not_go_together_are_told_with_what_each_costs()
    {
        var result = Find("{light: {parts: [thrifty]}, flat: {parts: [small, large]}}",
            "musts: {lasts: {reserve-time: 6 h}, mass: 2.5 kg, budget: 1300 EUR}");
        Assert.Empty(result.Picks);
        Assert.Equal("No: no rig of these parts holds all that must hold.", RigSearchSentences.Headline(result));
        var sets = result.Conflict!.Sets;
        Assert.Equal([[RigMust.Lasts, RigMust.Mass], [RigMust.Lasts, RigMust.Budget]], sets.Select(set => set.Musts));
        Assert.True(sets[0].IsMinimal && sets[1].IsMinimal && result.Conflict.IsComplete);
        // Light enough and within the budget is the small battery with the light; nothing that lasts so long is.
        Assert.Equal([1160, null], sets[0].Without);
        Assert.Contains("To last the day with 6 h left and to weigh at most 2.50 kg do not go together; any of them can be "
            + "dropped.",
            RigConflictSentences.Of(result));
    }

    [Fact]
    public void The_budget_that_a_wish_needs_is_told()
    {
        var result = Find("{light: {parts: [thrifty]}, flat: {parts: [small, large]}}",
            "musts: {lasts: {reserve-time: 6 h}, budget: 1300 EUR}");
        Assert.Contains("Without the wish \"to cost at most 1,300 EUR\" the cheapest rig that holds all else costs 1,370 EUR.",
            RigConflictSentences.Of(result));
    }

    // By hand: 200 Wh for 20 W, 2 W of the thrifty light and 2 W of the plate last 8 h 20 min of the 2 h; and nothing is cheaper
    // than the camera at 1,000, the plate at 30, the light at 70 and the small battery at 60.
    [Theory]
    [InlineData("musts: {lasts: {reserve-time: 9 h}}", "No rig of these parts is able to last the day with 9 h left. The nearest "
        + "is the rig with Thrifty light, Large battery. 6 h 20 min is left after wrap; 9 h is wanted.")]
    [InlineData("musts: {budget: 900 EUR}", "No rig of these parts is able to cost at most 900 EUR. The cheapest is the rig with "
        + "Small battery. It costs 1,160 EUR. 1,030 EUR of that is for what is not exchanged here: camera, plate. Nobody says "
        + "which of these are owned, so they count as bought; what is owned costs nothing.")]
    public void What_alone_can_not_hold_is_told_with_the_rig_that_comes_nearest(string musts, string told)
    {
        var result = Find("{light: {parts: [thrifty]}, flat: {parts: [small, large]}}", musts);
        Assert.Empty(result.Picks);
        Assert.Contains(told, RigConflictSentences.Of(result));
        // Prices are changed nowhere else; what a day takes is.
        Assert.Equal(musts.Contains("lasts", StringComparison.Ordinal), RigConflictSentences.Of(result).Contains("Only light and "
            + "flat are exchanged: where the reason is something else, such as a cable or how high the tripod stands, change "
            + "that and search again."));
        Assert.StartsWith("All 6 choices of parts are decided: it is proven of each", RigSearchSentences.Work(result)[0],
            StringComparison.Ordinal);
    }

    // Every choice is run for this must, so that the nearest of all is known: the one with the least past its limits.
    [Fact]
    public void The_nearest_to_the_limits_is_the_one_that_is_least_past_them()
    {
        var question = BestRigQuestion.Of(ScenarioFile.Read(Repository.Data("scenarios", "river-ferry.yaml")));
        var best = question.Best with
        {
            Slots = new(question.Best.Slots.Where(slot => slot.Key is "monitor" or "head" or "legs")), Upgrade = null,
            Musts = new RigMusts { Holds = true, CloseWillDo = true },
        };
        var build = question.Start with { OnLegs = question.Start.OnLegs! with { Wind = Speed.FromMetersPerSecond(25) } };
        var scenario = question.Scenario with { Builds = question.Scenario.Builds.With("tripod", build), BestRig = best };
        var result = RigSearch.Find(BestRigQuestion.Of(scenario), cancellation: Cancellation);
        Assert.Empty(result.Picks);
        var nearest = Assert.Single(result.Conflict!.Sets).Nearest!;
        var model = result.Model;
        var all = from monitor in Enumerable.Range(0, model.Slots[0].Candidates.Count)
                  from head in Enumerable.Range(0, model.Slots[1].Candidates.Count)
                  from legs in Enumerable.Range(0, model.Slots[2].Candidates.Count)
                  let choice = new Choice([monitor, head, legs])
                  where model.GoesTogether(choice)
                  let answer = model.Answer(choice, Cancellation).Answer
                  where answer is not null
                  select Past(answer);
        Assert.Equal(all.Min(), Past(model.Answer(nearest.Choice, Cancellation).Answer!), 1e-9);
        Assert.Contains(nearest.Why, RigConflictSentences.Of(result)[0], StringComparison.Ordinal);

        static double Past(RigAnswer answer) => new[] { QuestionKind.Wiring, QuestionKind.Stand }.Sum(kind =>
            answer.Of(kind)!.Limits.Where(limit => limit is { HasForce: true, IsPassed: true })
                .Sum(limit => -limit.Share!.Value));
    }

    [Fact]
    public void A_search_that_is_stopped_gives_what_it_has_found()
    {
        using var enough = new CancellationTokenSource();
        var question = BestRigQuestion.Of(ScenarioFile.Read(Repository.Data("scenarios", "river-ferry.yaml")));
        var result = RigSearch.Find(question, new RigSearchOptions { Enough = enough.Token }, new Stopping(enough), Cancellation);
        Assert.True(result.IsStopped);
        Assert.False(result.Front.IsComplete);
        Each.Of(result.Picks, pick => Each.Of(result.Model.AskedMusts.Where(must => must is not (RigMust.Mass or RigMust.Budget)),
            must => Assert.True(pick.Figures.Holds(must))));
        Assert.Contains("so far", RigSearchSentences.Headline(result), StringComparison.Ordinal);
        var work = RigSearchSentences.Work(result);
        Assert.Contains(work, line => line.StartsWith("Not all is decided", StringComparison.Ordinal));
        Assert.Contains(work, line => line.StartsWith("The search was stopped", StringComparison.Ordinal));
        Assert.DoesNotContain(RigSearchSections.After(result).SelectMany(section => section.Lines),
            line => line.Contains("time was over", StringComparison.Ordinal));
    }

    private sealed class Stopping(CancellationTokenSource enough) : IProgress<FrontProgress>
    {
        public void Report(FrontProgress value)
        {
            if (value.Entries > 0)
                enough.Cancel();
        }
    }

    [Fact]
    public void Nothing_that_goes_together_is_told_as_that()
    {
        var scenario = SmallScenario.Read(SmallQuestion.Text("{flat: {parts: [small]}, plate: {parts: [railed]}}"));
        var question = BestRigQuestion.Of(scenario);
        var places = question.Places.Select(place => place with { Candidates = [place.Candidates[1]] }).ToList();
        var result = RigSearch.Find(question with { Places = places }, cancellation: Cancellation);
        Assert.Equal(["No choice of these parts goes together, whatever else is asked."], RigConflictSentences.Of(result));
    }

    [Fact]
    public void Equals_stand_with_one_entry()
    {
        var result = Find("{light: {parts: [thrifty]}, plate: {parts: [slotted, railed]}}", "wishes: [least-mass]");
        var pick = Assert.Single(result.Picks);
        Assert.Equal(["1 0", "1 1", "1 2"], pick.JustAsGood.Prepend(pick.Choice).Select(choice => choice.ToString()));
    }

    [Fact]
    public void A_price_that_nobody_knows_is_neither_nothing_nor_a_reason_to_be_left_out()
    {
        var text = SmallQuestion.Text("{flat: {parts: [large]}}").Replace("    buy: 250 EUR\n", "", StringComparison.Ordinal);
        var result = RigSearch.Find(BestRigQuestion.Of(SmallScenario.Read(text)), cancellation: Cancellation);
        Assert.Equal(2, result.Picks.Count);
        Assert.Equal((1220m, null), (result.Picks[0].Cost, result.Picks[1].Cost));
        Assert.StartsWith("no price known, ", RigSearchSentences.Figures(result, result.Picks[1]), StringComparison.Ordinal);
    }

    // Kept small: each case runs every choice through the whole answer.
    [Fact]
    public void Drawn_libraries_have_the_front_of_all_choices_run()
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", "river-ferry.yaml"));
        var random = new Random(11);
        var looked = new LookedAt();
        for (var drawn = 0; drawn < 8; drawn++)
        {
            string[] Some(params string[] ids) => [.. ids.Where(_ => random.Next(2) == 0)];
            var slots = new List<KeyValuePair<string, RigSlot>>
            {
                KeyValuePair.Create("brick", new RigSlot { Parts = Some("brick-50wh", "brick-150wh", "brick-230wh") }),
                KeyValuePair.Create("plate", new RigSlot { Parts = Some("plate-plain", "plate-small-pack") }),
                KeyValuePair.Create("monitor", new RigSlot { Parts = Some("monitor-5in", "eyepiece-monitor") }),
                KeyValuePair.Create("transmitter", new RigSlot { Parts = Some("transmitter-long-range"), MayStayEmpty = true }),
                KeyValuePair.Create("head", new RigSlot { Parts = Some("head-light") }),
                KeyValuePair.Create("legs", new RigSlot { Parts = Some("tripod-middle", "tripod-heavy") }),
            };
            RigWish[] wishes = [.. Enum.GetValues<RigWish>().OrderBy(_ => random.Next()).Take(2 + random.Next(2)).Order()];
            var best = scenario.BestRig! with
            {
                Slots = new(slots), Wishes = wishes,
                Musts = new RigMusts
                {
                    Lasts = random.Next(2) == 0 ? new() : null, Balances = random.Next(3) == 0, CloseWillDo = true,
                    Mass = random.Next(2) == 0 ? Mass.FromKilograms(4.5) : null,
                },
            };
            var model = new RigChoices(BestRigQuestion.Of(scenario with { BestRig = best }));
            var remembered = new RememberedChoices(model);
            var (found, all) = (FrontSearch.Find(remembered, cancellation: Cancellation),
                BruteForce.Front(remembered, Cancellation));
            Assert.True(found.IsComplete);
            Assert.Equal(Told(all), Told(found));
            if (all.Entries.Count > 1)
                looked.One();
        }
        looked.AtLeast(2);
    }

    [Fact]
    public void A_search_that_nobody_wants_any_more_stops()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => RigSearch.Find(SmallQuestion.Of("{flat: {parts: [large]}}"),
            cancellation: stopped.Token));
    }

    private static List<string> Told(FrontResult front) =>
        [.. front.Entries.Select(entry => $"{string.Join('/', entry.Goals)}: {string.Join(" = ", entry.Choices)}").Order()];

    private static RigSearchResult Find(string slots, string more) =>
        RigSearch.Find(SmallQuestion.Of(slots, more), cancellation: Cancellation);
}
