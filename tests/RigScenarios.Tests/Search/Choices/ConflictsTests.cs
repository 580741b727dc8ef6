using RigScenarios.Search.Choices;
using UnitsNet;

namespace RigScenarios.Tests.Search.Choices;

public sealed class ConflictsTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public void A_conflict_is_a_set_that_nothing_holds_and_every_part_of_it_is_held_by_something() =>
        Drawn.Cases(1, 40, atLeast: 12, (random, looked) =>
        {
            var model = Tight(new DrawnModel(random), random);
            var found = Conflicts.Find(model, null, Stop);
            var minimal = MinimalSets(model);
            Assert.True(found.IsComplete);
            Assert.Equal(minimal.Count == 0, found.Feasible is not null);
            // Larger ones than three are not all wanted, but one conflict there must be.
            Assert.Equal(minimal.Where(set => set.Length <= Conflicts.MostTogether).Select(Told),
                found.Sets.Where(set => set.Musts.Count <= Conflicts.MostTogether).Select(set => Told(set.Musts)));
            Assert.Subset(minimal.Select(Told).ToHashSet(), found.Sets.Select(set => Told(set.Musts)).ToHashSet());
            Assert.Equal(minimal.Count > 0, found.Sets.Count > 0);
            Assert.DoesNotContain(found.Sets, set => !set.IsMinimal);
            if (minimal.Any(set => set.Length > 1))
                looked.One();
        });

    [Fact]
    public void What_holds_all_musts_is_shown_instead_of_a_conflict()
    {
        var model = new DrawnModel(new Random(2)) { Musts = [] };
        var found = Conflicts.Find(model, null, Stop);
        Assert.NotNull(found.Feasible);
        Assert.Empty(found.Sets);
    }

    [Fact]
    public void Parts_that_do_not_fit_each_other_are_a_conflict_of_no_must()
    {
        var found = Conflicts.Find(new NothingFits(), null, Stop);
        Assert.Empty(Assert.Single(found.Sets).Musts);
    }

    [Fact]
    public void Without_time_nothing_is_claimed()
    {
        var model = Tight(new DrawnModel(new Random(5)), new Random(5));
        var found = Conflicts.Find(model, new() { TimeLimit = Duration.FromSeconds(1), Clock = new SteppingClock() }, Stop);
        Assert.Empty(found.Sets);
        Assert.Null(found.Feasible);
        Assert.False(found.IsComplete);
    }

    // Four musts, each of which many choices hold.
    private static DrawnModel Tight(DrawnModel drawn, Random random)
    {
        ChoiceSum Turned(ChoiceSum sum) => new([.. sum.Weights.Select(slot =>
            (IReadOnlyList<decimal?>)[.. slot.Select(one => -one)])], -sum.Rest);
        ChoiceSum Middle(int most) => new([.. drawn.Slots.Select(slot => (IReadOnlyList<decimal?>)[.. slot.Candidates
            .Select(_ => (decimal?)random.Next(most))])]);
        var (one, other) = (Middle(5), Middle(4));
        return drawn with
        {
            Musts = [new("little of one") { Sum = one, AtMost = random.Next(1, 7) },
                new("little of the other") { Sum = other, AtMost = random.Next(1, 6) },
                new("much of one") { Sum = Turned(one), AtMost = -random.Next(3, 8) },
                new("flies") { DependsOn = [0, 1] }, new("runs long enough")],
            LeastRuntime = random.Next(1, 5),
        };
    }

    /// <summary>By trying: every set of musts, smallest first, that no choice holds and that has no smaller one in it.</summary>
    private static List<int[]> MinimalSets(DrawnModel model)
    {
        var tables = new ChoiceTables(model with { Musts = [] }, knownOnly: false);
        var held = BruteForce.Feasible(tables, model with { Musts = [] }, Stop)
            .Select(point => Held(model, point.Choice)).ToList();
        var sets = Enumerable.Range(0, 1 << model.Musts.Count)
            .Select(bits => Enumerable.Range(0, model.Musts.Count).Where(must => (bits >> must & 1) == 1).ToArray())
            .Where(set => !held.Exists(musts => musts.IsSupersetOf(set))).ToList();
        return [.. sets.Where(set => !sets.Exists(smaller => smaller.Length < set.Length && smaller.All(set.Contains)))
            .OrderBy(set => set.Length).ThenBy(Told, StringComparer.Ordinal)];
    }

    private static HashSet<int> Held(DrawnModel model, Choice choice)
    {
        var figures = model.Evaluate(choice, Stop);
        return [.. model.Musts.Index().Where(must => must.Item.Sum is { } sum ? sum.Of(choice) <= must.Item.AtMost
            : figures.Musts[must.Index] is true).Select(must => must.Index)];
    }

    private static string Told(IEnumerable<int> musts) => string.Join(' ', musts);

    private sealed class NothingFits : IChoiceModel
    {
        public IReadOnlyList<ChoiceSlot> Slots => [new("battery", ["a", "b"]), new("plate", ["c"])];

        public IReadOnlyList<ChoiceGoal> Goals => [];

        public IReadOnlyList<ChoiceMust> Musts => [new("flies")];

        public bool IsCompatible(int slotA, int candidateA, int slotB, int candidateB) => false;

        public ChoiceFigures Evaluate(Choice choice, CancellationToken cancellation) => new([], [true]);
    }
}
