using RigScenarios.Costs;
using UnitsNet;

namespace RigScenarios.Tests.Costs;

/// <summary>At how many days a year owning costs no more than renting.</summary>
public sealed class BreakEvenTests
{
    private static readonly OwningTerms OneYear = new() { Years = 1 };

    // Owning costs 1000 - 400 = 600. Ten days are a week of 300 and three of 100; nine are 500.
    [Fact]
    public void The_least_days_are_found_on_the_steps()
    {
        var one = BreakEven.Of([new OwnedThing("head", 1000) { Resale = 400, Rent = new RentPrice(100) }], OneYear)!;
        Assert.Equal([new DayStretch(10, 365)], one.Stretches);
        Assert.Equal(10, one.Least);
        Assert.Equal((500m, 600m, 600m), (one.Renting[9], one.Renting[10], one.Owning[10]));
        Assert.False(one.IsOwningCheaper(9));
        Assert.True(one.IsOwningCheaper(10));
    }

    // Owning 100 + 30 a day, renting 100 a day and 300 a week: 1 day 130 against 100; 2 to 6 days 160 to 280 against 200 to 300;
    // 7 days 310 against 300; from 8 days on 340 against 400 and so on.
    [Fact]
    public void Where_a_week_makes_renting_the_better_once_more_all_stretches_are_given()
    {
        var thing = new OwnedThing("light", 100) { Resale = 0, Rent = new RentPrice(100) };
        var one = BreakEven.Of([thing], OneYear with { ConsumablesPerDay = 30 }, 20)!;
        Assert.Equal([new DayStretch(2, 6), new DayStretch(8, 20)], one.Stretches);
    }

    [Fact]
    public void What_is_never_worth_its_price_has_no_stretch()
    {
        var one = BreakEven.Of([new OwnedThing("lens", 100_000) { Resale = 0, Rent = new RentPrice(1) }], OneYear)!;
        Assert.Empty(one.Stretches);
        Assert.Null(one.Least);
    }

    [Fact]
    public void Nobody_can_say_where_a_rent_is_missing_or_there_is_nothing()
    {
        Assert.Null(BreakEven.Of([], OneYear));
        var head = new OwnedThing("head", 900) { Rent = new RentPrice(9) };
        Assert.Null(BreakEven.Of([new OwnedThing("cage", 100), head], OneYear));
    }

    [Fact]
    public void It_is_what_trying_every_number_of_days_by_itself_gives() => Drawn.Cases(200, 30, 30, (random, looked) =>
    {
        var (things, terms) = Draw(random, 1);
        var one = BreakEven.Of(things, terms, 60)!;
        for (var days = 1; days <= 60; days++)
        {
            var (owning, renting) = (Owning.Of(things, terms, days).Total, Owning.Renting(things, terms, days)!.Value);
            Assert.Equal(owning, one.Owning[days]);
            Assert.Equal(renting, one.Renting[days]);
            Assert.Equal(owning <= renting, one.IsOwningCheaper(days));
        }
        Each.Step([new DayStretch(-1, -1), .. one.Stretches], (before, after) => Assert.True(after.From > before.To + 1), 0);
        looked.One();
    });

    // cost-model: scaling all money scales break-even not at all.
    [Fact]
    public void More_of_all_money_changes_no_day() => Drawn.Cases(300, 20, 20, (random, looked) =>
    {
        var seed = random.Next();
        var (things, terms) = Draw(new Random(seed), 1);
        var (more, moreTerms) = Draw(new Random(seed), 8);
        Assert.Equal(BreakEven.Of(things, terms, 90)!.Stretches, BreakEven.Of(more, moreTerms, 90)!.Stretches);
        looked.One();
    });

    private static (List<OwnedThing> Things, OwningTerms Terms) Draw(Random random, int scale)
    {
        var things = Enumerable.Range(1, random.Next(1, 4)).Select(number =>
        {
            var day = random.Next(1, 60);
            var wears = random.Next(3) == 0 ? random.Next(1, 30) / 8.0 : (double?)null;
            return new OwnedThing($"thing-{number}", scale * random.Next(50, 900))
            {
                Count = random.Next(1, 3),
                Rent = new RentPrice(scale * day, random.Next(2) == 0 ? null : scale * random.Next(day, 6 * day)),
                WearsOutIn = wears is null ? null : days => days > 10 ? wears : null,
            };
        }).ToList();
        return (things, new OwningTerms
        {
            Years = random.Next(1, 6), Rate = Ratio.FromPercent(random.Next(2) == 0 ? 0 : random.Next(1, 12)),
            ConsumablesPerDay = scale * random.Next(0, 8), RepairsPerYear = scale * random.Next(0, 40),
            DaysInARow = random.Next(2) == 0 ? null : random.Next(1, 12),
        });
    }
}
