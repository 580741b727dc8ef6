using RigScenarios.Answers;
using RigScenarios.Batteries;
using RigScenarios.Files;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Tests.Answers;

/// <summary>A battery whose figures come from a fit: what every answer makes of the fields that the fit writes.</summary>
public sealed class FittedBatteryTests
{
    // 100 Wh and 20 W: five hours, of which the day takes four and a half.
    private const string Day = "{all: {length: 4 h 30 min, others: record}}";

    [Fact]
    public void The_scale_multiplies_every_draw_of_the_build()
    {
        var once = Answer("");
        var twice = Answer(", load-scale: 1.25");
        Assert.Equal(0.5, once.Reserve.Time.Hours, 1e-3);
        // 25 W: four hours, half an hour before the end of the day.
        Assert.Equal(-0.5, twice.Reserve.Time.Hours, 1e-3);
    }

    [Fact]
    public void What_the_fit_leaves_open_makes_a_day_close()
    {
        Assert.Equal(Verdict.Holds, Answer("").Of(QuestionKind.Power)!.Verdict);
        var fitted = Answer(", runtime-known-to: 8 %, fitted-from: 5 notes and 1 log");
        Assert.Equal(Verdict.Close, fitted.Of(QuestionKind.Power)!.Verdict);
        var words = AnswerSentences.Questions(fitted)[0].Words;
        Assert.Contains("Rests on 5 notes and 1 log of this battery.", words, StringComparison.Ordinal);
        Assert.Contains("the prediction is good to about", words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_two_errors_add_up_as_independent_ones_do()
    {
        var model = new ExpectedError(Ratio.FromPercent(5), [], "the model");
        var both = FittedError.Of(model, Ratio.FromPercent(6), "5 notes");
        // 95 % of a normal distribution lie within 1.96 deviations (any table of it): √(5² + (1.96·6)²) = 12.8.
        Assert.Equal(12.78, both.Share!.Value.Percent, 0.01);
        Assert.Contains("5 notes of this battery", both.Why, StringComparison.Ordinal);
        Assert.Contains("the model", both.Why, StringComparison.Ordinal);
        Assert.Same(model, FittedError.Of(model, null, null));
        Assert.Null(FittedError.Of(model with { Share = null }, Ratio.FromPercent(6), null).Share);
    }

    [Fact]
    public void The_fields_read_write_and_move_in_a_sweep()
    {
        var scenario = SmallScenario.Read(SmallScenario.Text(
            battery: ", load-scale: 1.06, runtime-known-to: 6 %, fitted-from: 5 notes"));
        Assert.Equal("1.06", ScenarioPath.Find(scenario, "builds.one.battery.load-scale"));
        Assert.Equal("6 %", ScenarioPath.Find(scenario, "builds.one.battery.runtime-known-to"));
        Assert.Contains("fitted-from: 5 notes", ScenarioFile.Text(scenario), StringComparison.Ordinal);
        Assert.Equal(1.2, ScenarioPath.Set(scenario, "builds.one.battery.load-scale", "1.2").Builds["one"].Battery.LoadScale);
        Assert.Throws<Scenarios.ScenarioProblemsException>(() =>
            ScenarioPath.Set(scenario, "builds.one.battery.load-scale", "31"));
    }

    private static RigAnswer Answer(string battery) => RigAnswer.Of(
        SmallScenario.Read(SmallScenario.Text(blocks: Day, battery: battery)), "one", [], AnswerOptions.EndOnly,
        cancellation: TestContext.Current.CancellationToken);
}
