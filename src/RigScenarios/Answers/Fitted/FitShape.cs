using System.Text.Json.Nodes;
using RigScenarios.Fits;
using RigScenarios.Limits;

namespace RigScenarios.Answers.Fitted;

/// <summary>What a fit says, for programs (docs/json.md). Fields are added, none is renamed.</summary>
public static class FitShape
{
    /// <summary>The document.</summary>
    /// <param name="answer">The answer.</param>
    public static JsonObject Of(FittedAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        var result = answer.Result;
        return new JsonObject
        {
            ["format"] = "rigscenarios fit 1",
            ["title"] = answer.Fitted.Title,
            ["build"] = answer.Input.Noted.Planned,
            ["battery"] = answer.Fitted.Builds[answer.Input.Noted.Build].Battery.Item,
            ["answer"] = Texts(FitSentences.Battery(answer)),
            ["found"] = result.Found,
            ["estimates"] = new JsonArray([.. result.Estimates.Select(estimate => (JsonNode)Estimate(estimate))]),
            ["correlation"] = new JsonArray([.. result.Correlation.Select(row =>
                (JsonNode)new JsonArray([.. row.Select(value => (JsonNode?)Round(value))]))]),
            ["days"] = new JsonArray([.. answer.Days.Select(day => (JsonNode)Day(day))]),
            ["runtime_known_to_percent"] = Round(answer.KnownTo.Percent),
            ["rests_on"] = FitSentences.RestsOn(answer),
            ["notes"] = new JsonArray([.. result.Notes.Zip(result.Problem.Notes).Select(note => (JsonNode)Note(result, note))]),
            ["logs"] = new JsonArray([.. result.Logs.Select(log => (JsonNode)Log(answer, log))]),
            ["misses"] = Texts(FitSentences.Misses(answer)),
            ["open"] = Texts(FitSentences.Open(answer)),
            ["inseparable"] = new JsonArray([.. result.Inseparable.Select(pair => (JsonNode)new JsonObject
            {
                ["pair"] = Texts([pair.First.Name, pair.Second.Name]),
                ["either"] = Texts([pair.FirstIsMore ? "more" : "less", pair.SecondIsMore ? "more" : "less"]),
                ["strong"] = Round(pair.Strong), ["weak"] = Round(pair.Weak),
            })]),
            ["chi2"] = Round(result.ChiSquared), ["data"] = result.Data, ["inflation"] = Round(result.Inflation),
            ["next_test"] = Next(answer),
            ["assumed"] = Texts(answer.Input.Assumed.Select(NoteWords.Of)),
            ["cautions"] = Texts(FitSentences.Cautions(answer)),
        };
    }

    private static JsonObject Estimate(FitEstimate estimate) => new()
    {
        ["unknown"] = estimate.Unknown.Name, ["value"] = Round(estimate.Value), ["low"] = Round(estimate.Low),
        ["high"] = Round(estimate.High), ["log"] = estimate.Log, ["standard_error"] = estimate.StandardError,
        ["by_profile"] = estimate.ByProfile, ["prior_mean"] = Round(estimate.Prior.Mean),
        ["prior_deviation"] = Round(estimate.Prior.Deviation), ["from_prior"] = Round(estimate.FromPrior),
    };

    private static JsonObject Day(DayForecast day) => new()
    {
        ["day"] = day.Day, ["title"] = day.Title, ["verdict"] = day.Verdict.InWords(), ["words"] = FitSentences.Day(day),
        ["reserve_h"] = Round(day.Answer.Tightest.Reserve.Time.Hours), ["give_or_take_h"] = Round(day.Within.Hours),
        ["chance_percent"] = Round(day.Chance.Percent),
        ["battery_runtime_h"] = Round(day.Forecast.Runtime.Hours), ["battery_low_h"] = Round(day.Forecast.Low.Hours),
        ["battery_high_h"] = Round(day.Forecast.High.Hours),
        ["battery_part_percent"] = Round(100 * day.Forecast.BatteryDeviation),
        ["day_part_percent"] = Round(100 * day.Forecast.DayDeviation),
    };

    private static JsonObject Note(FitResult result, (FittedNote Fitted, FieldNote Note) note) => new()
    {
        ["note"] = note.Note.Id, ["lasted_h"] = Round(note.Note.Runtime?.Hours),
        ["still_running_after_h"] = Round(note.Note.StillRunning?.Hours),
        ["predicted_h"] = Round(note.Fitted.Predicted.Hours), ["shown_percent"] = Round(note.Note.PercentShown?.Percent),
        ["predicted_percent"] = Round(note.Fitted.PredictedCharge?.Percent), ["miss"] = Round(note.Fitted.Miss),
        ["left_out"] = note.Fitted.LeftOut,
        ["deleted"] = Round(result.Outliers.Concat(result.Doubtful).FirstOrDefault(miss => miss.Note == note.Note.Id)?.Deleted),
    };

    private static JsonObject Log(FittedAnswer answer, FittedLog log)
    {
        var reading = answer.Input.Readings[log.Log];
        return new JsonObject
        {
            ["log"] = log.Log, ["rows"] = reading.Counts.Rows, ["dropped"] = reading.Counts.Dropped,
            ["resets"] = reading.Counts.Resets, ["duplicates"] = reading.Counts.Duplicates,
            ["flipped"] = reading.Counts.Flipped, ["gaps"] = reading.Rows.Gaps, ["blocks"] = log.Blocks,
            ["correlation_time_s"] = Round(log.CorrelationTime.Seconds), ["bin_s"] = Round(log.BinWidth.Seconds),
            ["gain"] = Round(log.Gain), ["start_charge"] = Round(log.StartCharge),
        };
    }

    private static JsonObject Next(FittedAnswer answer) => new()
    {
        ["words"] = FitSentences.Next(answer), ["day"] = answer.Nearest.Day, ["best"] = answer.Next.Best?.Test,
        ["tests"] = new JsonArray([.. answer.Next.Tests.Select(test => (JsonNode)new JsonObject
        {
            ["test"] = test.Test, ["words"] = Candidates.Words(test.Test),
            ["battery_part_after_percent"] = Round(100 * test.BatteryDeviationAfter), ["gain_min"] = Round(test.Gain.Minutes),
        })]),
    };

    private static JsonArray Texts(IEnumerable<string> texts) => new([.. texts.Select(text => (JsonNode)text)]);

    private static double? Round(double? value) => value is { } number ? Math.Round(number, 4) : null;
}
