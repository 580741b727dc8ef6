using RigScenarios.Costs;

namespace RigScenarios.Tests.Costs;

/// <summary>The rent of so many days, by hand and by trying every combination.</summary>
public sealed class RentPriceTests
{
    // 100 a day: a week is 300, a month 1000 (3 and 10 days' rent: common practice, no source).
    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 100)]
    [InlineData(2, 200)]
    [InlineData(3, 300)]
    [InlineData(7, 300)]
    [InlineData(8, 400)]
    [InlineData(10, 600)]
    [InlineData(11, 600)]
    [InlineData(21, 900)]
    [InlineData(22, 1000)]
    [InlineData(30, 1000)]
    [InlineData(31, 1100)]
    [InlineData(37, 1300)]
    public void A_week_is_three_days_and_a_month_ten_where_nobody_says(int days, int rent) =>
        Assert.Equal(rent, new RentPrice(100).For(days));

    [Fact]
    public void A_week_that_costs_more_than_its_days_is_not_taken() => Assert.Equal(700, new RentPrice(100, 900, 5000).For(7));

    [Fact]
    public void Something_let_by_the_week_alone_is_rented_for_whole_weeks() =>
        Assert.Equal([0m, 250, 250, 500], [.. new[] { 0, 1, 7, 8 }.Select(new RentPrice(null, 250).For)]);

    [Fact]
    public void Jobs_are_rented_one_by_one()
    {
        var rent = new RentPrice(100);
        Assert.Equal((4 * 200) + 100, rent.ForJobs(9, 2));
        Assert.Equal(rent.For(9), rent.ForJobs(9, null));
        Assert.Equal(0, rent.ForJobs(0, 3));
    }

    [Fact]
    public void Nothing_and_less_than_nothing_is_no_rent()
    {
        Assert.Throws<ArgumentException>(() => new RentPrice(null));
        Assert.Throws<ArgumentOutOfRangeException>(() => new RentPrice(10, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new RentPrice(10).For(-1));
        Assert.Equal(0, new RentPrice(0).For(40));
    }

    [Fact]
    public void It_is_the_least_of_all_combinations_that_cover_the_days() => Drawn.Cases(100, 60, 60, (random, looked) =>
    {
        decimal? Price(int most) => random.Next(4) == 0 ? null : random.Next(0, most) / 4m;
        var (day, week, month) = (Price(400), Price(1600), Price(6000));
        if (day is null && week is null && month is null)
            day = 1;
        var rent = new RentPrice(day, week, month);
        var days = random.Next(0, 100);
        var least = decimal.MaxValue;
        for (var months = 0; months <= 4; months++)
        {
            for (var weeks = 0; weeks <= 15; weeks++)
            {
                var rest = Math.Max(0, days - (months * 30) - (weeks * 7));
                if ((months > 0 && rent.Month is null) || (weeks > 0 && rent.Week is null) || (rest > 0 && rent.Day is null))
                    continue;
                least = Math.Min(least, (months * (rent.Month ?? 0)) + (weeks * (rent.Week ?? 0)) + (rest * (rent.Day ?? 0)));
            }
        }
        Assert.Equal(least, rent.For(days));
        looked.One();
    });
}
