using RigScenarios.Cells.Aging;
using UnitsNet;

namespace RigScenarios.Tests.Cells.Aging;

/// <summary>What somebody says of a battery's age becomes phases; what is not said stays unknown.</summary>
public sealed class LifeInWordsTests
{
    private static readonly LifeInWords Said = LifeInWords.Usual with
    {
        Bought = new MonthOrDay(2023, 3),
        Until = new DateOnly(2026, 11, 30),
    };

    [Fact]
    public void Nothing_said_is_a_new_battery()
    {
        var life = new LifeInWords().Life(null);
        Assert.Empty(life.Phases);
        Assert.Equal((1.0, 1.0), (life.Age.CapacityLeft.DecimalFractions, life.Age.ResistanceFactor));
        Assert.True(life.After(Duration.FromDays(365)).CapacityLeft.DecimalFractions < 1);
    }

    [Fact]
    public void A_month_is_its_15th_and_a_shoot_comes_so_often_a_month()
    {
        var use = Assert.IsType<Shooting>(Assert.Single(Said.Phases()));
        Assert.Equal(1356, use.Length.Days, 1e-9);
        Assert.Equal(2 * 1356 / 30.4375, use.Days, 1e-9);
        Assert.Equal((20.0, 1.0, 0.5), (use.ShelfTemperature.DegreesCelsius, use.Charge.DecimalFractions,
            use.Depth!.Value.DecimalFractions));
    }

    [Fact]
    public void What_is_left_open_of_its_use_is_taken_from_the_usual() => Assert.Equal(
        Said.Life(null).Age, new LifeInWords { Bought = Said.Bought, Until = Said.Until }.Life(null).Age);

    [Fact]
    public void Second_hand_counts_from_its_measurement()
    {
        var said = Said with { SecondHand = true, MeasuredCapacity = Ratio.FromPercent(84) };
        var measured = Assert.IsType<Measured>(Assert.Single(said.Phases()));
        Assert.False(measured.HistoryKnown);
        Assert.Equal(84, said.Life(null).Age.CapacityLeft.Percent, 1e-9);
        Assert.Empty((Said with { SecondHand = true }).Phases());
    }

    [Fact]
    public void A_measured_capacity_on_the_date_is_what_is_left()
    {
        var life = (Said with { MeasuredCapacity = Ratio.FromPercent(90) }).Life("nmc");
        Assert.Equal(90, life.Age.CapacityLeft.Percent, 1e-9);
        Assert.True(life.Phases[1].Pace is > 0.25 and < 1);
        Assert.DoesNotContain(AgingWarning.DefaultModel, life.Warnings);
    }

    [Fact]
    public void As_it_came_back_is_what_a_shoot_leaves() =>
        Assert.Equal(0.2, Kept.AsItCameBack.ChargeAfter(Emptied.Mostly).DecimalFractions, 1e-12);

    [Fact]
    public void Bought_after_the_date_is_refused() =>
        Assert.Contains("2027-01", Assert.Throws<ArgumentException>(
            () => (Said with { Bought = new MonthOrDay(2027, 1) }).Phases()).Message, StringComparison.Ordinal);

    [Fact]
    public void More_shoots_than_there_are_hours_are_refused() =>
        Assert.Throws<ArgumentException>(() => (Said with { ShootsPerMonth = 100 }).Phases());

    [Fact]
    public void Every_word_is_found_again()
    {
        Each.Of(Kept.All, one => Assert.Same(one, Kept.Find(one.Word)), atLeast: 3);
        Each.Of(StoragePlace.All, one => Assert.Same(one, StoragePlace.Find(one.Word!.Replace(' ', '-'))), atLeast: 4);
        Each.Of(Emptied.All, one => Assert.Same(one, Emptied.Find(one.Word!.ToUpperInvariant())), atLeast: 4);
        Assert.Null(StoragePlace.Find("cellar"));
        Assert.Null(Kept.Find(null));
    }

    [Theory]
    [InlineData("2023-03", "2023-03", 15)]
    [InlineData(" 2023-03-17 ", "2023-03-17", 17)]
    public void A_date_is_read_and_written(string text, string written, int day)
    {
        Assert.True(MonthOrDay.TryParse(text, out var date));
        Assert.Equal((written, day), (date.Value.ToString(), date.Value.Date.Day));
    }

    [Theory]
    [InlineData("2023")]
    [InlineData("March 2023")]
    [InlineData("2023-13")]
    [InlineData("")]
    public void Another_text_is_no_date(string text) => Assert.False(MonthOrDay.TryParse(text, out _));
}
