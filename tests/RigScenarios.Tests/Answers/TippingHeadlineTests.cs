using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Answers;

/// <summary>The first sentence follows wind, slope and wanted lean, with the figures of the limits that the verdict rests
/// on.</summary>
public class TippingHeadlineTests
{
    [Theory]
    [InlineData("wind=6 m/s", "Yes: it lasts until wrap", "nothing is past a limit, and it stands: a gust of ",
        "10.0 m/s are expected")]
    [InlineData("wind=7.5 m/s", "Just: it may tip: a gust of ", " tips it, 12.", " left; apart from that it lasts until wrap")]
    [InlineData("wind=12 m/s", "No: it tips: gusts of 19.9 m/s are expected and ", " tip it, ",
        " too many; apart from that it lasts")]
    [InlineData("wind=0 m/s", "Yes: it lasts until wrap", "it stands: a gust of 12.9 m/s tips it, no wind is expected.")]
    [InlineData("slope=10 °", "Yes: it lasts until wrap",
        "it stands: it tips at a slope of 10.8°, this one has 10.0°, 0.8° left")]
    [InlineData("slope=15 °",
        "No: it tips over by itself: the slope is 15.0° and it tips at 10.8°, 4.2° too steep; apart from that")]
    [InlineData("wanted-lean=10 °", "Yes: it lasts until wrap",
        "it stands: it tips at a lean of 10.8°, 10.0° is wanted, 0.8° left")]
    [InlineData("wanted-lean=20 °", "Just: it tips at a lean of 10.8°, 20.0° is wanted, 9.2° short; apart from that it lasts")]
    public void It_tells_what_was_asked_about(string setting, params string[] words)
    {
        var headline = AnswerSentences.Headline(Of(setting));

        Assert.StartsWith(words[0], headline, StringComparison.Ordinal);
        Each.Of(words, word => Assert.Contains(word, headline, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("wind=6 m/s", "Yes: lasts the day, 52 min left, 2.9 m/s until it tips")]
    [InlineData("wind=12 m/s", "No: it tips, 7.0 m/s too windy")]
    [InlineData("slope=15 °", "No: it tips over by itself, 4.2° too steep")]
    [InlineData("wanted-lean=20 °", "Just: it tips 9.2° before the lean that is wanted")]
    [InlineData("height=1300 mm", "Yes: lasts the day, 52 min left")]
    public void The_one_line_tells_it_too(string setting, string expected) =>
        Assert.Equal(expected, AnswerLine.Of(Of(setting)));

    [Fact]
    public void Back_to_less_wind_is_the_first_sentence_again()
    {
        var calm = AnswerSentences.Headline(Of("wind=3 m/s"));

        Assert.NotEqual(calm, AnswerSentences.Headline(Of("wind=12 m/s")));
        Assert.Equal(calm, AnswerSentences.Headline(Of("wind=3 m/s")));
    }

    [Fact]
    public void Nobody_asked_and_nothing_is_told()
    {
        var answer = Of("height=1300 mm");

        Assert.DoesNotContain("stands", AnswerSentences.Headline(answer), StringComparison.Ordinal);
    }

    [Fact]
    public void A_rig_that_stops_before_wrap_says_that_it_tips_too()
    {
        var scenario = ScenarioPath.SetAll(Plain(),
            [("builds.tripod.on-legs.wind", "12 m/s"), ("builds.tripod.battery.charge", "30 %")]);
        var answer = RigAnswer.Of(scenario, "tripod", [], AnswerOptions.EndOnly,
            cancellation: TestContext.Current.CancellationToken);

        Assert.Equal(Verdict.Fails, answer.Of(QuestionKind.Power)!.Verdict);
        var headline = AnswerSentences.Headline(answer);
        Assert.StartsWith("No: the camera stops at ", headline, StringComparison.Ordinal);
        Assert.EndsWith(" before wrap, and the wind tips it, 7.0 m/s too strong.", headline, StringComparison.Ordinal);
    }

    [Fact]
    public void The_mean_wind_that_tips_it_is_the_one_at_which_the_gust_limit_turns()
    {
        var balance = Of("wind=6 m/s").Balance!;
        var mean = balance.TippingMean(balance.Stand!, balance.Slope)!.Value.MetersPerSecond;

        bool Passed(double wind) => Of($"wind={wind:0.####} m/s").Balance!.StandLimits
            .Single(limit => limit.Kind == LimitKind.Gust).IsPassed;
        Assert.False(Passed(mean - 0.01));
        Assert.True(Passed(mean + 0.01));
        Assert.Null(balance.TippingMean(balance.Stand!, balance.Stand!.TipAngle + Angle.FromDegrees(1)));
    }

    /// <summary>The market hall's tripod, with nothing asked about it.</summary>
    private static Scenario Plain()
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", "market-hall.yaml"));
        return scenario with { Builds = scenario.Builds.With("tripod", scenario.Builds["tripod"] with { OnLegs = null }) };
    }

    private static RigAnswer Of(string setting)
    {
        var parts = setting.Split('=');
        var scenario = ScenarioPath.Set(Plain(), $"builds.tripod.on-legs.{parts[0]}", parts[1]);
        return RigAnswer.Of(scenario, "tripod", [], AnswerOptions.EndOnly,
            cancellation: TestContext.Current.CancellationToken);
    }
}
