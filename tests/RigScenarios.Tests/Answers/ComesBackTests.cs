using RigScenarios.Answers;
using UnitsNet;

namespace RigScenarios.Tests.Answers;

/// <summary>What rest and warmth give back to a battery that stopped in the cold, and when nothing is said of it.</summary>
public class ComesBackTests
{
    // A third of the capacity in an hour at -20 °C: the surface is empty before the inside, and the battery stays cold.
    private static RigAnswer Stopped => ColdScenario.Of(-20, 30, 9);

    [Fact]
    public void A_load_in_deep_cold_leaves_charge_inside_that_comes_back()
    {
        var back = Stopped.ComesBack!;

        Assert.Equal("brick", back.Battery);
        Assert.True(back.Inside > back.HeldBack && back.HeldBack > ComesBack.LeastHeldBack);
        Assert.Equal([10, 60, 60], back.Rests.Select(rest => rest.Rest.Minutes));
        Assert.Equal([null, null, 20], back.Rests.Select(rest => rest.Place is { } place
            ? Math.Round(place.DegreesCelsius, 6) : (double?)null));

        // A longer rest gives more, and warmth more than that.
        Assert.Equal(back.Rests.OrderBy(rest => rest.More), back.Rests);
    }

    // Charge is kept: what comes out after the rest is no more than was inside.
    [Fact]
    public void No_more_comes_back_than_was_inside()
    {
        var back = Stopped.ComesBack!;

        // 100 Wh over 14.4 V in four groups, none above 4.2 V.
        var most = back.Inside.DecimalFractions * (100 / 14.4) * 4 * 4.2;
        Each.Of(back.Rests, rest => Assert.InRange(rest.More.Hours * 30, 0, most));
    }

    [Fact]
    public void It_is_told_with_the_question_of_power()
    {
        var answer = Stopped;
        var words = AnswerSentences.Questions(answer)[0].Words;

        Assert.Contains($"The battery stopped with {answer.ComesBack!.Inside.Percent:0} % still inside.", words,
            StringComparison.Ordinal);
        Assert.Contains("After 10 minutes' rest it would run", words, StringComparison.Ordinal);
        Assert.Contains("after an hour in a warm pocket (20 °C)", words, StringComparison.Ordinal);
        Assert.NotNull(AnswerShape.Of(answer, null)["comes_back"]!["after"]);
    }

    [Theory]
    [InlineData(25, 30, 9, "")]      // Warm: it stops empty.
    [InlineData(-20, 30, 0.1, "")]  // Cold, and the day is lasted.
    [InlineData(-20, 30, 9, ", near-share: 1")] // One well holds nothing back.
    public void Else_nothing_is_said(double celsius, double watts, double hours, string battery)
    {
        var answer = ColdScenario.Of(celsius, watts, hours, battery);

        Assert.Null(answer.ComesBack);
        Assert.DoesNotContain("still inside", AnswerSentences.Questions(answer)[0].Words, StringComparison.Ordinal);
        Assert.Null(AnswerShape.Of(answer, null)["comes_back"]);
    }

    [Fact]
    public void A_search_does_not_look_for_it() =>
        Assert.Null(ColdScenario.Of(-20, 30, 9, options: new AnswerOptions { FollowsUp = false }).ComesBack);

    [Fact]
    public void A_rest_that_gives_nothing_is_told_as_such()
    {
        var back = new ComesBack("brick", Ratio.FromPercent(38.2), Ratio.FromPercent(30),
        [
            new(Duration.FromMinutes(10), null, Duration.FromSeconds(10)),
            new(Duration.FromMinutes(60), null, Duration.FromMinutes(13)),
            new(Duration.FromMinutes(60), Temperature.FromDegreesCelsius(20), Duration.FromMinutes(22)),
        ]);

        Assert.Equal("The battery stopped with 38 % still inside. After 10 minutes' rest it would run less than a minute more, "
            + "after an hour 13 min, after an hour in a warm pocket (20 °C) 22 min.", ColdWords.Of(back, null));
        Assert.StartsWith("Brick a stopped with", ColdWords.Of(back, "brick-a"), StringComparison.Ordinal);
    }
}
