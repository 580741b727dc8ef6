using RigScenarios.Answers;
using RigScenarios.Answers.Years;
using RigScenarios.Cells.Aging;

namespace RigScenarios.Tests.Answers.Years;

/// <summary>The years ahead of a battery whose days can be worked out by hand: 100 Wh new, 20 W, no losses.</summary>
public class YearsAheadTests
{
    private static readonly DateOnly Today = new(2026, 11, 30);

    private const string OneYear = ", age: {bought: 2025-11-30, until: 2026-11-30, kept: full, place: room, shoots-per-month: 2, "
        + "emptied: half}";

    [Fact]
    public void The_day_ends_on_the_date_on_which_the_battery_holds_no_more_than_it_takes()
    {
        // 4 h 24 min at 20 W are 88 Wh.
        var result = Of(Text("4 h 24 min"));
        var battery = Assert.Single(result.Batteries);
        var at = battery.Ages.First(age => age.Age.CapacityLeft.DecimalFractions < 0.88);

        Assert.InRange(result.LastDay.Middle!.Value.DayNumber, at.Date.DayNumber - 33, at.Date.DayNumber + 2);
        Assert.Equal(ReplaceCause.Days, battery.Replace.Cause);
        Assert.Equal(result.LastDay.Middle, battery.Replace.Date.Middle);
        Assert.True(battery.Eighty.Middle > battery.Replace.Date.Middle);
    }

    [Fact]
    public void An_easy_day_leaves_the_convention_of_80_percent_to_say_when()
    {
        var battery = Of(Text("1 h")).Batteries[0];

        Assert.Equal(ReplaceCause.Capacity, battery.Replace.Cause);
        Assert.Equal(battery.Eighty, battery.Replace.Date);
        Assert.True(battery.Eighty.Earliest < battery.Eighty.Middle);
        Assert.True(battery.Eighty.Latest is null || battery.Eighty.Latest >= battery.Eighty.Middle);
    }

    [Fact]
    public void Days_that_no_new_battery_lasts_are_ended_by_no_age()
    {
        var result = Of(Text("6 h"));

        Assert.False(result.LastsWhenNew);
        Assert.Null(result.LastDay.Middle);
        Assert.Equal(ReplaceCause.Capacity, result.Batteries[0].Replace.Cause);
        Assert.Contains("no new battery of the same kind changes that", YearsSentences.Lasting(result), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1 h")]
    [InlineData("4 h 24 min")]
    [InlineData("6 h")]
    public void Older_never_lasts_longer_and_the_least_never_longer_than_the_greatest(string length)
    {
        var result = Of(Text(length));

        Each.Of(result.Days.Zip(result.Days.Skip(1)), pair =>
        {
            Assert.True(pair.Second.Days.Reserve <= pair.First.Days.Reserve);
            Assert.True(pair.Second.Cold!.Reserve <= pair.First.Cold!.Reserve);
            Assert.True(pair.First.Days.Completes || !pair.Second.Days.Completes);
        });
        Each.Of(result.Days, row =>
        {
            Assert.True(row.Least.Reserve <= row.Days.Reserve && row.Days.Reserve <= row.Greatest.Reserve);
        });
        Each.Of(result.Batteries[0].Ages.Zip(result.Batteries[0].Ages.Skip(1)), pair =>
            Assert.True(pair.Second.Age.CapacityLeft <= pair.First.Age.CapacityLeft));
        Assert.Equal(5 * 12 + 1, result.Batteries[0].Ages.Count);
    }

    [Fact]
    public void Kept_cooler_or_less_full_is_never_worse()
    {
        var ways = Of(Text("4 h")).Storage;
        StorageCase Way(Kept kept, StoragePlace place) => ways.Single(way => way.Kept == kept && way.Place == place);
        (StorageCase Better, StorageCase Worse)[] pairs =
        [
            (Way(Kept.Half, StoragePlace.Fridge), Way(Kept.Half, StoragePlace.Room)),
            (Way(Kept.Half, StoragePlace.Room), Way(Kept.Half, StoragePlace.WarmStore)),
            (Way(Kept.Half, StoragePlace.Room), Way(Kept.Full, StoragePlace.Room)),
            (Way(Kept.Full, StoragePlace.Room), Way(Kept.Full, StoragePlace.WarmStore)),
        ];

        Each.Of(pairs, pair => Each.Of(pair.Better.After.Zip(pair.Worse.After), years =>
        {
            Assert.True(years.First.Age.CapacityLeft > years.Second.Age.CapacityLeft);
            Assert.True(years.First.Days.Reserve >= years.Second.Days.Reserve);
        }));
        Assert.Single(ways, way => way.IsAsNow);
        Assert.True(Way(Kept.Full, StoragePlace.Room).IsAsNow);
    }

    [Fact]
    public void A_measured_capacity_is_where_the_years_begin()
    {
        var result = Of(Text("4 h", OneYear + ", capacity-left: 91 %"));

        Assert.Equal(91, result.Batteries[0].Now.Age.CapacityLeft.Percent, 1e-9);
        Assert.Equal((0.91 * 5) - 4, result.Days[0].Days.Reserve.Hours, 1e-3);
        // It lost more in its year than the fit says, and goes on so.
        Assert.True(result.Batteries[0].Ages[^1].Age.CapacityLeft < Of(Text("4 h")).Batteries[0].Ages[^1].Age.CapacityLeft);
    }

    [Fact]
    public void A_shooting_day_is_the_planned_one_and_not_the_words()
    {
        // The words say half emptied; the planned days take a fifth and four fifths of it.
        var light = Of(Text("1 h")).Batteries[0].Ages[^1].Age.CapacityLeft;
        var heavy = Of(Text("4 h")).Batteries[0].Ages[^1].Age.CapacityLeft;

        Assert.True(heavy < light);
    }

    [Fact]
    public void Of_a_battery_without_a_life_the_use_is_taken_and_told_so()
    {
        var result = Of(Text("4 h", ", capacity-left: 90 %"));
        var battery = result.Batteries[0];

        Assert.Equal(Today, result.From);
        Assert.StartsWith("Nobody says how it is kept and used; taken: kept full in a room", YearsSentences.Use(battery),
            StringComparison.Ordinal);
        Assert.Equal(90, battery.Now.Age.CapacityLeft.Percent, 1e-9);
        Assert.True(battery.Eighty.Middle > Today);
    }

    [Fact]
    public void The_price_is_spread_over_shooting_days_and_energy_until_it_is_replaced()
    {
        var battery = Of(Text("1 h").Replace("name: Flat battery", "name: Flat battery, buy: 200 EUR".Replace(", ",
            "\n    ", StringComparison.Ordinal), StringComparison.Ordinal)).Batteries[0];
        var cost = battery.Cost;
        var years = (battery.Replace.Date.Middle!.Value.DayNumber - new DateOnly(2025, 11, 30).DayNumber) / 365.25;

        Assert.Equal(2 * 12 * years, cost.ShootingDays!.Value, 0.2);
        Assert.Equal(200 / cost.ShootingDays.Value, (double)cost.PerShootingDay!.Value.Amount, 0.006);
        Assert.Equal(200 / cost.Delivered!.Value.KilowattHours, (double)cost.PerKilowattHour!.Value.Amount, 0.006);
        Assert.Contains("no cost is told", YearsSentences.Cost(Of(Text("1 h")).Batteries[0]), StringComparison.Ordinal);
    }

    [Fact]
    public void The_look_ahead_stops_when_it_is_told_to_and_tells_how_far_it_is()
    {
        var (scenario, told) = (SmallScenario.Read(Text("4 h")), new List<double>());
        var answer = RigAnswer.Of(scenario, "one", [], AnswerOptions.EndOnly,
            cancellation: TestContext.Current.CancellationToken);
        YearsAhead.Of(answer, new YearsQuestion { From = Today }, new Told(told), TestContext.Current.CancellationToken);
        Assert.Equal(1, told.Max(), 1e-9);

        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() =>
            YearsAhead.Of(answer, new YearsQuestion { From = Today }, null, stopped.Token));
    }

    private static string Text(string length, string battery = OneYear) => SmallScenario.Text(
        blocks: $"{{all: {{length: {length}, others: record}}}}", battery: battery, day: "starts: \"09:00\"");

    private static YearsResult Of(string text)
    {
        var scenario = SmallScenario.Read(text);
        var answer = RigAnswer.Of(scenario, "one", [], AnswerOptions.EndOnly,
            cancellation: TestContext.Current.CancellationToken);
        return YearsAhead.Of(answer, new YearsQuestion { From = Today }, null, TestContext.Current.CancellationToken);
    }

    private sealed class Told(List<double> values) : IProgress<double>
    {
        public void Report(double value)
        {
            lock (values)
                values.Add(value);
        }
    }
}
