using RigScenarios.Answers;
using RigScenarios.Batteries;
using RigScenarios.Cells.Aging;
using RigScenarios.Limits;
using UnitsNet;

namespace RigScenarios.Tests.Answers;

/// <summary>What an answer says of the age of its batteries, and what that does to its verdict.</summary>
public class AgingSentencesTests
{
    private const string ThreeYears = ", age: {bought: 2023-06-01, until: 2026-06-01}";

    [Fact]
    public void Each_of_the_fourteen_warnings_is_a_sentence_of_its_own()
    {
        var warnings = Enum.GetValues<AgingWarning>();
        var sentences = warnings.Select(warning => AgingSentences.Of(warning, AgingSets.Nmc811Silicon)).ToList();

        Assert.Equal(14, sentences.Distinct().Count());
        Each.Of(sentences, sentence => Assert.Matches("^[A-Z].*[a-z].*\\.$", sentence));
        Each.Of(sentences, sentence => Assert.DoesNotContain("_", sentence, StringComparison.Ordinal));
    }

    [Fact]
    public void What_lies_outside_the_tests_is_said_once_and_called_extrapolated()
    {
        var lines = AgingSentences.Warnings(AgingSets.Nmc,
            [AgingWarning.CalendarTemperature, AgingWarning.BeyondTests, AgingWarning.Knee]);

        Assert.Equal(2, lines.Count);
        Assert.Equal("Extrapolated: its life lies outside what the fit was tested on (stored at 35 to 50 °C, for 500 days and "
            + "1000 full cycles).", lines[0]);
    }

    [Fact]
    public void An_age_that_nobody_gives_is_told_with_what_three_years_would_do()
    {
        var answer = Of(SmallScenario.Text());
        var caution = Assert.Single(AnswerCautions.Of(answer), caution => caution.Contains("age is not given",
            StringComparison.Ordinal));

        Assert.EndsWith("After three years, kept full in a room, 2 shoots a month that half empty it, one has 89 % left "
            + "(76 to 90 % by other published fits) and 1.16 times the resistance.", caution, StringComparison.Ordinal);
        Assert.Empty(AgeOfAnswer.Lines(answer));
    }

    [Fact]
    public void A_life_is_told_first_then_its_band_and_at_last_what_outweighs_it()
    {
        var lines = AgeOfAnswer.Lines(Of(SmallScenario.Text(battery: ThreeYears)));

        Assert.StartsWith("89 % of the capacity left (by its life: bought 2023-06-01, kept full in a room", lines[0],
            StringComparison.Ordinal);
        Assert.StartsWith("Other published fits say 76 to 90 %", lines[1], StringComparison.Ordinal);
        Assert.StartsWith("Run at both ends", lines[2], StringComparison.Ordinal);
        Assert.Contains(AgingSentences.MeasuredCells, lines);
        Assert.Equal(AgingSentences.Measure, lines[^1]);
        Assert.DoesNotContain(AnswerCautions.Of(Of(SmallScenario.Text(battery: ThreeYears))), caution =>
            caution.Contains("age is not given", StringComparison.Ordinal));
    }

    // 100 Wh at 20 W without losses: 89.4 % are 4.47 h, 76.1 % (the least of the fits) are 3.8 h.
    [Theory]
    [InlineData("3 h 30 min", Verdict.Holds)]
    [InlineData("4 h 10 min", Verdict.Close)]
    [InlineData("4 h 40 min", Verdict.Fails)]
    public void A_day_that_ends_inside_the_band_of_the_age_is_close(string length, Verdict verdict)
    {
        var answer = Of(SmallScenario.Text(blocks: $"{{all: {{length: {length}, others: record}}}}", battery: ThreeYears,
            day: "starts: \"09:00\""));

        Assert.Equal(verdict, answer.Of(QuestionKind.Power)!.Verdict);
        if (verdict == Verdict.Close)
            Assert.Equal("It lasts until wrap at 13:10 with 18 min left; with the least that its age may have left it stops "
                + "at 12:48.",
                AnswerSentences.Questions(answer)[0].Words);
    }

    [Fact]
    public void A_battery_without_a_life_is_run_once()
    {
        Assert.Null(Of(SmallScenario.Text(battery: ", capacity-left: 88 %")).AgeSpread);
        var spread = Of(SmallScenario.Text(battery: ThreeYears)).AgeSpread!;
        Assert.Equal(0.761 * 5, spread.Least.Runtime.Hours, 0.01);
        Assert.Equal(0.896 * 5, spread.Greatest.Runtime.Hours, 0.01);
    }

    [Fact]
    public void A_measured_capacity_is_known_to_two_points()
    {
        var known = new KnownAge("nmc", LifeInWords.Usual with { Bought = new MonthOrDay(2023, 6), Until =
            new DateOnly(2026, 6, 1) }, Ratio.FromPercent(88), null);

        Assert.Equal("88 % of the capacity left (measured)", AgingSentences.Of(known)[0][..36]);
        Assert.Equal("A capacity measured by one run is known to 2 %: 86 to 90 %.", AgingSentences.Of(known)[1]);
        Assert.DoesNotContain(AgingSentences.Measure, AgingSentences.Of(known));
    }

    private static RigAnswer Of(string text)
    {
        var scenario = SmallScenario.Read(text);
        return RigAnswer.Of(scenario, "one", [], AnswerOptions.EndOnly, cancellation: TestContext.Current.CancellationToken);
    }
}
