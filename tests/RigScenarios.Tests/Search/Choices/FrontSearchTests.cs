using RigScenarios.Search.Choices;
using UnitsNet;

namespace RigScenarios.Tests.Search.Choices;

public sealed class FrontSearchTests
{
    private static readonly FrontOptions AllEquals = new() { MostEquals = 100_000 };

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public void The_front_of_small_libraries_is_that_of_running_every_choice() =>
        Drawn.Cases(1, 40, atLeast: 20, (random, looked) =>
        {
            var model = new DrawnModel(random);
            var found = FrontSearch.Find(model, AllEquals, null, Stop);
            Assert.Equal(Told(BruteForce.Front(model, Stop)), Told(found));
            Assert.True(found.IsComplete);
            Assert.Equal(0, found.UndecidedAtMost);
            if (found.Entries.Count > 1)
                looked.One();
        });

    // The libraries show something only if what is hard comes up among them.
    [Fact]
    public void Equals_and_goals_that_are_not_known_and_libraries_where_nothing_holds_come_up()
    {
        var fronts = Enumerable.Range(1, 40).Select(seed => BruteForce.Front(new DrawnModel(new Random(seed)), Stop)).ToList();
        Assert.InRange(fronts.Count(front => front.Entries.Any(entry => entry.Choices.Count > 1)), 5, 40);
        Assert.InRange(fronts.Count(front => front.Entries.Any(entry => !entry.IsKnown)), 3, 40);
        Assert.Contains(fronts, front => front.Entries.Count == 0);
    }

    [Fact]
    public void Bounds_change_nothing_but_the_work() =>
        Drawn.Cases(200, 12, random =>
        {
            var model = new DrawnModel(random) { HasBounds = true };
            var with = FrontSearch.Find(model, AllEquals, null, Stop);
            var without = FrontSearch.Find(model with { HasBounds = false }, AllEquals, null, Stop);
            Assert.Equal(Told(without), Told(with));
        });

    [Fact]
    public void One_at_a_time_finds_what_many_at_once_find() =>
        Drawn.Cases(300, 10, random =>
        {
            var model = new DrawnModel(random);
            Assert.Equal(Told(FrontSearch.Find(model, AllEquals with { AtOnce = 1 }, null, Stop)),
                Told(FrontSearch.Find(model, AllEquals with { AtOnce = 5 }, null, Stop)));
        });

    [Fact]
    public void The_order_of_slots_and_candidates_changes_nothing() =>
        Drawn.Cases(400, 12, random =>
        {
            var model = new DrawnModel(random);
            var permuted = new PermutedModel(model, random);
            var found = FrontSearch.Find(permuted, AllEquals, null, Stop);
            Assert.Equal(Told(FrontSearch.Find(model, AllEquals, null, Stop)), Told(found with
            {
                Entries = [.. found.Entries.Select(entry => entry with
                {
                    Choices = [.. entry.Choices.Select(permuted.Original).Order()],
                })],
            }));
        });

    [Fact]
    public void One_candidate_more_never_worsens_the_front() =>
        Drawn.Cases(500, 20, atLeast: 8, (random, looked) =>
        {
            var model = new DrawnModel(random);
            var slot = random.Next(model.Slots.Count);
            var fewer = new FewerCandidates(model, slot, random.Next(model.Slots[slot].Candidates.Count));
            var more = FrontSearch.Find(model, null, null, Stop).Entries;
            foreach (var entry in FrontSearch.Find(fewer, null, null, Stop).Entries.Where(entry => entry.IsKnown))
            {
                Assert.Contains(more, other => other.Goals.Zip(entry.Goals).All(pair => pair.First <= pair.Second));
                looked.One();
            }
        });

    // A sum that is a goal too: whatever dominates an entry holds the tighter must as well.
    [Fact]
    public void A_tighter_limit_of_a_goal_takes_entries_away_and_adds_none() =>
        Drawn.Cases(600, 20, atLeast: 5, (random, looked) =>
        {
            var drawn = new DrawnModel(random);
            if (drawn.Goals.FirstOrDefault(goal => goal.Name == "mass") is not { } mass)
                return;
            DrawnModel Limited(decimal most) => drawn with
            {
                Musts = [new("mass at most") { Sum = mass.Sum, AtMost = most }],
            };
            var loose = FrontSearch.Find(Limited(8), AllEquals, null, Stop);
            var tight = FrontSearch.Find(Limited(5), AllEquals, null, Stop);
            var place = drawn.Goals.ToList().IndexOf(mass);
            Assert.Equal(Told(loose with { Entries = [.. loose.Entries.Where(entry => entry.Goals[place] <= 5)] }), Told(tight));
            if (tight.Entries.Count < loose.Entries.Count && tight.Entries.Count > 0)
                looked.One();
        });

    [Fact]
    public void Choices_with_a_goal_that_is_not_known_are_left_out_where_that_is_wanted() =>
        Drawn.Cases(1, 25, atLeast: 4, (random, looked) =>
        {
            var model = new DrawnModel(random);
            var all = BruteForce.Front(model, Stop);
            var known = FrontSearch.Find(model, AllEquals with { KnownOnly = true }, null, Stop);
            Assert.Equal(Told(all with { Entries = [.. all.Entries.Where(entry => entry.IsKnown)] }), Told(known));
            if (all.Entries.Any(entry => !entry.IsKnown))
                looked.One();
        });

    [Fact]
    public void At_its_time_limit_a_search_says_what_is_left_and_no_more_than_it_knows() =>
        Drawn.Cases(700, 30, atLeast: 6, (random, looked) =>
        {
            var model = new DrawnModel(random);
            var all = BruteForce.Front(model, Stop).Entries;
            var found = FrontSearch.Find(model, AllEquals with { TimeLimit = Duration.FromSeconds(random.Next(6, 30)),
                Clock = new SteppingClock() }, null, Stop);
            var told = found.Entries.Select(entry => string.Join(' ', entry.Goals)).ToHashSet(StringComparer.Ordinal);
            var missing = all.Where(entry => !told.Contains(string.Join(' ', entry.Goals))).ToList();
            Assert.True(missing.Count <= found.UndecidedAtMost, $"{missing.Count} missing, {found.UndecidedAtMost} undecided");
            Assert.True(found.UndecidedAtMost <= found.Choices);
            if (found.IsComplete)
                Assert.Empty(missing);
            foreach (var entry in missing)
                Assert.Equal(0, entry.Goals.Zip(found.OpenAtLeast).Count(pair => pair.First < pair.Second));
            if (missing.Count > 0)
                looked.One();
        });

    [Fact]
    public void A_choice_is_run_once_however_many_searches_ask_for_it()
    {
        var model = new CountingModel(OneWithAFront());
        var remembered = new RememberedChoices(model);
        var first = FrontSearch.Find(remembered, AllEquals, null, Stop);
        var second = FrontSearch.Find(remembered, AllEquals, null, Stop);
        Assert.Equal(Told(first), Told(second));
        Assert.Equal(0, second.Evaluated);
        Assert.Equal(first.Evaluated, model.Runs);
    }

    [Fact]
    public void A_search_that_is_stopped_while_a_choice_runs_ends_with_it()
    {
        using var stop = new CancellationTokenSource();
        var model = new StoppingModel(OneWithAFront(), stop);
        Assert.ThrowsAny<OperationCanceledException>(() => FrontSearch.Find(model, null, null, stop.Token));
    }

    [Fact]
    public void A_fault_of_the_model_comes_out_as_it_is()
    {
        var model = new FaultyModel(OneWithAFront());
        Assert.Equal("no such part", Assert.Throws<InvalidOperationException>(() =>
            FrontSearch.Find(model, null, null, Stop)).Message);
    }

    [Theory]
    [InlineData(0, 20, 2)]
    [InlineData(60, 0, 2)]
    [InlineData(60, 20, 0)]
    [InlineData(60, 20, 9)]
    public void Options_that_mean_nothing_are_refused(double seconds, int equals, int atOnce) =>
        Assert.Throws<ArgumentException>(() => FrontSearch.Find(new DrawnModel(new Random(1)), new FrontOptions
        {
            TimeLimit = Duration.FromSeconds(seconds), MostEquals = equals, AtOnce = atOnce,
        }, null, Stop));

    private static DrawnModel OneWithAFront() => Enumerable.Range(1, 40).Select(seed => new DrawnModel(new Random(seed)))
        .First(model => BruteForce.Front(model, Stop).Entries.Count > 3);

    /// <summary>The front as text, in no order of its own: goals, and all choices with them.</summary>
    internal static IReadOnlyList<string> Told(FrontResult result) => [.. result.Entries.Select(entry =>
    {
        Assert.True(entry.HasAllEquals);
        return $"{string.Join(' ', entry.Goals)}: {string.Join(", ", entry.Choices)}";
    }).Order(StringComparer.Ordinal)];
}
