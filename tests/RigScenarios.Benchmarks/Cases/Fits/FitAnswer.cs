using System.Text.Json.Nodes;
using RigScenarios.Fits;
using RigScenarios.Fits.Logs;

namespace RigScenarios.Benchmarks.Cases.Fits;

/// <summary>What came out of a fit, in the fields of fit-format.md.</summary>
internal static class FitAnswer
{
    public static JsonObject Of(FitCase one, FitResult result)
    {
        var answer = new JsonObject
        {
            ["id"] = one.Id,
            ["found"] = result.Found,
            ["estimates"] = Array(result.Estimates, Estimate),
            ["correlation"] = Array(result.Correlation, row => Array(row, value => (JsonNode)value)),
            ["cost"] = result.Cost,
            ["data"] = result.Data,
            ["chi2"] = result.ChiSquared,
            ["inflation"] = result.Inflation,
            ["outliers"] = Array(result.Outliers, Miss),
            ["doubtful"] = Array(result.Doubtful, Miss),
            ["inseparable"] = Array(result.Inseparable, Pair),
            ["ocvOffsetV"] = result.OpenCircuitOffset?.Volts,
            ["logs"] = Array(result.Logs.Zip(one.Logs), pair => Log(pair.First, pair.Second)),
        };
        if (one.Forecast is not { } run)
            return answer;
        var next = result.NextTest(run, one.Candidates);
        var forecast = next.Before;
        answer["forecast"] = new JsonObject
        {
            ["runtimeS"] = forecast.Runtime.Seconds,
            ["sdParameters"] = forecast.BatteryDeviation,
            ["sd"] = forecast.Deviation,
            ["intervalS"] = new JsonArray(forecast.Low.Seconds, forecast.High.Seconds),
        };
        answer["tests"] = Array(next.Tests, test => new JsonObject
        {
            ["id"] = test.Test,
            ["sdParametersAfter"] = test.BatteryDeviationAfter,
        });
        answer["next"] = next.Best?.Test;
        return answer;
    }

    private static JsonObject Estimate(FitEstimate estimate) => new()
    {
        ["name"] = estimate.Unknown.Name,
        ["log"] = estimate.Log,
        ["se"] = estimate.StandardError,
        ["value"] = estimate.Value,
        ["profile_check"] = estimate.ProfileCheck is { } check ? new JsonArray(check.Low, check.High) : null,
        ["interval"] = new JsonArray(estimate.LogLow, estimate.LogHigh),
        ["kind"] = estimate.ByProfile ? "profile" : "linear",
    };

    private static JsonObject Miss(NoteMiss miss) => new() { ["note"] = miss.Note, ["deleted"] = miss.Deleted };

    private static JsonObject Pair(InseparablePair pair) => new()
    {
        ["pair"] = new JsonArray(pair.First.Name, pair.Second.Name),
        ["condition"] = pair.Weak > 0 ? pair.Strong / pair.Weak : null,
        ["strong"] = pair.Strong,
        ["weak"] = pair.Weak,
        ["either"] = new JsonArray(Words(pair.First, pair.FirstIsMore), Words(pair.Second, pair.SecondIsMore)),
    };

    // The words of the reference results; those for people stand in Answers.
    private static string Words(FitUnknown unknown, bool isMore) => unknown.Kind switch
    {
        UnknownKind.Capacity => isMore ? "the battery holds more" : "the battery holds less",
        UnknownKind.Load when unknown.Of is { } device => $"the {device} draws {(isMore ? "more" : "less")}",
        UnknownKind.Load => isMore ? "the devices draw more" : "the devices draw less",
        UnknownKind.Resistance => isMore ? "its resistance is higher" : "its resistance is lower",
        _ => isMore ? "it was warmer" : "it was colder",
    };

    private static JsonObject Log(FittedLog fitted, LogReading read)
    {
        var log = LogCase.Facts(read);
        log["id"] = fitted.Log;
        log["correlationTimeS"] = fitted.CorrelationTime.Seconds;
        log["binS"] = fitted.BinWidth.Seconds;
        log["blocks"] = fitted.Blocks;
        log["gain"] = fitted.Gain;
        log["start"] = fitted.StartCharge;
        return log;
    }

    private static JsonArray Array<T>(IEnumerable<T> items, Func<T, JsonNode?> node) => new([.. items.Select(node)]);
}
