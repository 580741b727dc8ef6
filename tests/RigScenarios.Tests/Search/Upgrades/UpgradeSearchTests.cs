using RigScenarios.Search.Upgrades;

namespace RigScenarios.Tests.Search.Upgrades;

public sealed class UpgradeSearchTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public void The_plan_is_the_best_of_all_sequences() =>
        Drawn.Cases(1, 100, atLeast: 20, (random, looked) =>
        {
            var model = new DrawnThings(random, random.Next(2, 5));
            var (saved, budget, years) = ((decimal)random.Next(3), (decimal)random.Next(5), random.Next(1, 4));
            var plan = UpgradeSearch.Find(model, saved, budget, years, null, Stop);
            var best = AllSequences(model, saved, budget, years);
            Assert.True(plan.IsExact);
            Assert.Equal((best.First, best.Sum, best.Money), (plan.FirstFeasible, plan.GoalSum, plan.MoneyLeft));
            AssertAddsUp(plan, model, saved, budget);
            if (plan.FirstFeasible is not null && plan.Years.Any(year => year.Bought.Count > 0))
                looked.One();
        });

    [Fact]
    public void Following_the_best_kits_only_is_never_better_and_mostly_as_good() =>
        Drawn.Cases(100, 30, atLeast: 15, (random, looked) =>
        {
            var model = new DrawnThings(random, 6);
            var exact = UpgradeSearch.Find(model, 2, 3, 3, null, Stop);
            var followed = UpgradeSearch.Find(model, 2, 3, 3, mostExact: 0, null, Stop);
            Assert.False(followed.IsExact);
            AssertAddsUp(followed, model, 2, 3);
            Assert.True(Order(exact) is var one && Order(followed) is var other && one.CompareTo(other) <= 0,
                $"{Order(followed)} is better than {Order(exact)}");
            if (Order(exact) == Order(followed))
                looked.One();
        });

    [Fact]
    public void Of_more_than_twenty_things_the_plan_says_that_it_may_not_be_the_best()
    {
        var model = new DrawnThings(new Random(7), 24);
        var plan = UpgradeSearch.Find(model, 2, 3, 3, null, Stop);
        Assert.False(plan.IsExact);
        AssertAddsUp(plan, model, 2, 3);
    }

    [Fact]
    public void Money_is_saved_for_what_one_year_does_not_pay()
    {
        // One thing at 10, of which everything depends, and 4 a year: bought in the third year, with 2 left.
        var plan = UpgradeSearch.Find(new OneThing(), 0, 4, 4, null, Stop);
        Assert.Equal((2, 10m - 10 + 2 + 4), (plan.FirstFeasible, plan.MoneyLeft));
        Assert.Equal([[], [], [0], []], plan.Years.Select(year => year.Bought));
        Assert.Equal([4, 8, 2, 6], plan.Years.Select(year => year.Money));
    }

    [Fact]
    public void A_plan_that_is_never_feasible_keeps_its_money()
    {
        var plan = UpgradeSearch.Find(new OneThing(), 0, 2, 4, null, Stop);
        Assert.Null(plan.FirstFeasible);
        Assert.Equal(8, plan.MoneyLeft);
    }

    [Fact]
    public void What_means_nothing_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => UpgradeSearch.Find(new OneThing(), -1, 2, 4, null, Stop));
        Assert.Throws<ArgumentOutOfRangeException>(() => UpgradeSearch.Find(new OneThing(), 0, -2, 4, null, Stop));
        Assert.Throws<ArgumentOutOfRangeException>(() => UpgradeSearch.Find(new OneThing(), 0, 2, 0, null, Stop));
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => UpgradeSearch.Find(new OneThing(), 0, 2, 4, null, stopped.Token));
    }

    private static (int First, double Sum, decimal Money) Order(UpgradePlan plan) =>
        (plan.FirstFeasible ?? int.MaxValue, plan.GoalSum, -plan.MoneyLeft);

    private static void AssertAddsUp(UpgradePlan plan, IUpgradeModel model, decimal saved, decimal budget)
    {
        var money = saved;
        var owned = model.Owned.ToHashSet();
        Each.Of(plan.Years, year =>
        {
            money += budget + year.Sold.Sum(thing => model.Resale(thing, year.Year)!.Value)
                - year.Bought.Sum(thing => model.Price(thing, year.Year)!.Value);
            Assert.True(money >= 0);
            Assert.Equal(money, year.Money);
            Assert.Subset(owned, year.Sold.ToHashSet());
            owned = [.. owned.Except(year.Sold).Concat(year.Bought)];
            Assert.Equal(owned.Order(), year.Owned);
            Assert.Equal(plan.FirstFeasible <= year.Year, year.State.IsFeasible is true && !double.IsNaN(year.State.Goal));
        });
    }

    /// <summary>Every kit in every year, one sequence after the other.</summary>
    private static (int? First, double Sum, decimal Money) AllSequences(
        DrawnThings model, decimal saved, decimal budget, int years)
    {
        var best = (First: int.MaxValue, Sum: 0.0, Debt: decimal.MaxValue);
        void Go(int year, HashSet<int> owned, decimal money, int? first, double sum)
        {
            if (year == years)
            {
                var end = (first ?? int.MaxValue, sum, -money);
                if (end.CompareTo(best) < 0)
                    best = end;
                return;
            }
            for (var bits = 0; bits < 1 << model.Things.Count; bits++)
            {
                HashSet<int> next = [.. Enumerable.Range(0, model.Things.Count).Where(thing => (bits >> thing & 1) == 1)];
                var left = money + budget + owned.Except(next).Sum(thing => model.Resale(thing, year) ?? -1000)
                    - next.Except(owned).Sum(thing => model.Price(thing, year) ?? 1000);
                if (left < 0)
                    continue;
                var state = model.Look([.. next.Order()], Stop);
                var holds = state.IsFeasible is true && !double.IsNaN(state.Goal);
                if (holds || first is null)
                    Go(year + 1, next, left, holds ? first ?? year : null, holds ? sum + state.Goal : sum);
            }
        }
        Go(0, [.. model.Owned], saved, null, 0);
        return (best.First == int.MaxValue ? null : best.First, best.Sum, -best.Debt);
    }

    /// <summary>Things by chance: prices that fall, resale below them, some not to be had or not to be sold; a kit is feasible
    /// with enough strength, and its goal is no sum.</summary>
    private sealed class DrawnThings : IUpgradeModel
    {
        private readonly int[] strength;
        private readonly int[] prices;
        private readonly int[] first;
        private readonly bool[] isKept;
        private readonly int least;

        public DrawnThings(Random random, int count)
        {
            Things = [.. Enumerable.Range(0, count).Select(thing => $"thing {thing}")];
            Owned = [.. Enumerable.Range(0, count).Where(_ => random.Next(4) == 0)];
            strength = [.. Things.Select(_ => random.Next(1, 5))];
            prices = [.. Things.Select(_ => random.Next(1, 9))];
            first = [.. Things.Select(_ => random.Next(4) == 0 ? 1 : 0)];
            isKept = [.. Things.Select(_ => random.Next(3) == 0)];
            least = random.Next(3, 8);
        }

        public IReadOnlyList<string> Things { get; }

        public IReadOnlyList<int> Owned { get; }

        public decimal? Price(int thing, int year) => year < first[thing] ? null : Math.Max(1, prices[thing] - (0.5m * year));

        public decimal? Resale(int thing, int year) => isKept[thing] ? null : Math.Max(0, (prices[thing] / 2m) - (0.5m * year));

        public UpgradeState Look(IReadOnlyList<int> owned, CancellationToken cancellation)
        {
            var sum = owned.Sum(thing => strength[thing]);
            return new(sum == least + 2 ? null : sum >= least, sum % 5 == 4 ? double.NaN : 20 - (sum * sum % 7));
        }
    }

    private sealed class OneThing : IUpgradeModel
    {
        public IReadOnlyList<string> Things => ["battery"];

        public IReadOnlyList<int> Owned => [];

        public decimal? Price(int thing, int year) => 10;

        public decimal? Resale(int thing, int year) => null;

        public UpgradeState Look(IReadOnlyList<int> owned, CancellationToken cancellation) => new(owned.Count == 1, 1);
    }
}
