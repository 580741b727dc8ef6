using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Scenarios;
using RigScenarios.Tests.Files;
using UnitsNet;

namespace RigScenarios.Tests.Answers;

/// <summary>The verdicts of the one answer and its first sentence.</summary>
public class RigAnswerTests
{
    [Fact]
    public void A_day_that_is_lasted_is_a_yes_with_its_clock_time_and_what_is_left()
    {
        // 100 Wh at 20 W: 5 h; the day takes 2.
        var answer = Of(SmallScenario.Text(day: "starts: \"09:00\""));

        Assert.Equal(Verdict.Holds, answer.Of(QuestionKind.Power)!.Verdict);
        Assert.Equal("It lasts until wrap at 11:00 with 3 h left.", AnswerSentences.Questions(answer)[0].Words);
        Assert.Equal(3, answer.Reserve.Time.Hours, 3);
    }

    [Fact]
    public void A_day_that_is_not_lasted_is_a_no_that_names_device_time_and_what_is_short()
    {
        // 100 Wh at 20 W: 5 h of 9.
        var answer = Of(SmallScenario.Text(blocks: "{all: {length: 9 h, others: record}}", day: "starts: \"09:00\""));

        Assert.Equal(Verdict.Fails, answer.Verdict);
        Assert.Equal("No: the camera stops at 14:00, 4 h before wrap.", AnswerSentences.Headline(answer));
        Assert.Equal("The camera stops at 14:00, 4 h before wrap: the battery is empty.",
            AnswerSentences.Questions(answer)[0].Words);
        Assert.Equal(-4, answer.Reserve.Time.Hours, 3);
    }

    [Theory]
    [InlineData("4 h 58 min", Verdict.Close)]
    [InlineData("4 h 30 min", Verdict.Holds)]
    public void What_is_left_under_the_error_of_the_prediction_is_close(string length, Verdict verdict)
    {
        // 2 min of 5 h are 0.7 %, 30 min are 10 %; at 25 °C and C/5 the largest measured deviation is 1.5 %
        // (docs/measured-cells.md).
        var answer = Of(SmallScenario.Text(blocks: $"{{all: {{length: {length}, others: record}}}}"));

        Assert.Equal(verdict, answer.Of(QuestionKind.Power)!.Verdict);
    }

    [Fact]
    public void Less_than_is_wished_is_close()
    {
        var answer = Of(SmallScenario.Text(), AnswerOptions.EndOnly with { Wish = Duration.FromHours(4) });

        Assert.Equal(Verdict.Close, answer.Of(QuestionKind.Power)!.Verdict);
        Assert.Contains("4 h is wished", AnswerSentences.Questions(answer)[0].Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(10, Verdict.Fails)]
    [InlineData(10.5, Verdict.Close)]
    [InlineData(11, Verdict.Holds)]
    public void A_limit_is_passed_close_or_held(double allowed, Verdict verdict)
    {
        var limit = new Limit("outlet a of plate", LimitKind.Current, ElectricCurrent.FromAmperes(10.2),
            ElectricCurrent.FromAmperes(allowed), LimitBasis.PartsFile);

        Assert.Equal(verdict, QuestionRules.OfLimits(QuestionKind.Wiring, [limit], _ => true, []).Verdict);
    }

    [Fact]
    public void A_yardstick_fails_nobody_and_a_missing_figure_is_not_known()
    {
        var limit = new Limit("legs", LimitKind.TipAngle, Angle.FromDegrees(8), Angle.FromDegrees(10),
            new LimitBasis(LimitForce.Yardstick, "to compare"));

        Assert.Equal(Verdict.Holds, QuestionRules.OfLimits(QuestionKind.Stand, [limit], _ => true, []).Verdict);
        Assert.Equal(Verdict.NotKnown, QuestionRules.OfLimits(QuestionKind.Stand, [limit], _ => true,
            ["The tripod has no figures."]).Verdict);
    }

    [Fact]
    public void A_voltage_that_would_destroy_something_is_an_error_before_anything_runs()
    {
        var scenario = SmallScenario.Read(SmallScenario.Text());
        var low = scenario with { Parts = scenario.Parts.With("camera",
            scenario.Parts["camera"] with { Voltage = new(Maximum: ElectricPotential.FromVolts(8)) }) };

        var problems = Assert.Throws<ScenarioProblemsException>(() => RigAnswer.Of(low, "one", [],
            cancellation: TestContext.Current.CancellationToken)).Problems;
        Each.Of(problems, problem => Assert.StartsWith("builds.one", problem.Path, StringComparison.Ordinal));
    }

    [Fact]
    public void The_figures_do_not_depend_on_how_much_is_kept()
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", "night-dolly.yaml"));
        var token = TestContext.Current.CancellationToken;

        Assert.Equal(
            AnswerShape.Of(RigAnswer.Of(scenario, "thin-lead", [], AnswerOptions.EndOnly, cancellation: token), null)
                .ToJsonString(),
            AnswerShape.Of(RigAnswer.Of(scenario, "thin-lead", [], new AnswerOptions { SeriesPoints = 1000 },
                cancellation: token), null).ToJsonString());
    }

    [Fact]
    public void A_device_that_stops_for_want_of_voltage_is_named_with_its_reason()
    {
        var answer = Of(WiredScenario.Text(camera: ", power: {record: 60 W, peak: 60 W}", length: "5 m",
            blocks: "{all: {length: 4 h, others: record}}"));

        Assert.Contains("too little voltage at the camera", AnswerSentences.Questions(answer)[0].Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_battery_that_cannot_fly_goes_where_freight_is_planned()
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));
        var token = TestContext.Current.CancellationToken;

        Assert.Equal(Verdict.Holds, RigAnswer.Of(scenario, "tripod", [], AnswerOptions.EndOnly, cancellation: token)
            .Of(QuestionKind.Travel)!.Verdict);
        var alone = scenario with { Journeys = scenario.Journeys.Without("freight") };
        Assert.Equal(Verdict.Fails, RigAnswer.Of(alone, "tripod", [], AnswerOptions.EndOnly, cancellation: token)
            .Of(QuestionKind.Travel)!.Verdict);
    }

    private static RigAnswer Of(string text, AnswerOptions? options = null)
    {
        var scenario = SmallScenario.Read(text);
        return RigAnswer.Of(scenario, scenario.Builds.Keys.First(), [], options ?? AnswerOptions.EndOnly,
            cancellation: TestContext.Current.CancellationToken);
    }
}
