using System.Text.Encodings.Web;
using System.Text.Json;
using RigScenarios.Days;
using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Answers;

/// <summary>Answers for programs. The shape is documented in docs/json.md and held by a test; fields are added, never changed.</summary>
internal static class AnswerJson
{
    private static readonly JsonSerializerOptions Options = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Text(Scenario scenario, IReadOnlyList<Answer> answers) => JsonSerializer.Serialize(
        new { format = "rigscenarios answer 1", title = scenario.Title, answers = answers.Select(One) }, Options);

    private static object One(Answer answer)
    {
        var result = answer.Result;
        return new
        {
            build = answer.BuildName,
            day = answer.DayName,
            ambient_C = Round(answer.Ambient.DegreesCelsius),
            answer = DayWords.Answer(result),
            ending = DayWords.Ending(result, answer.Day.Starts),
            runtime_h = Round(result.Runtime.Hours),
            runtime_is_lower_bound = result.RuntimeIsLowerBound,
            planned_h = Round(result.Planned.Hours),
            margin_h = Round(result.Margin.Hours),
            reaches_end = result.ReachesEnd,
            end_cause = result.EndCause,
            end_block = result.EndBlock,
            charge_left_percent = Round(result.ChargeLeft.Percent),
            delivered_Wh = Round(result.Delivered.WattHours),
            still_needed_Wh = Round(DayWords.StillNeeded(result).WattHours),
            coldest_battery_C = Round(result.ColdestBattery.DegreesCelsius),
            expected_error_percent = Round(result.ExpectedError.Share.Percent),
            expected_error_why = result.ExpectedError.Why,
            devices = result.Devices.Select(device => new { device = device.Device, title = device.Title, essential = device.Essential, runtime_h = Round(device.Runtime.Hours), stopped_by = device.Cause }),
            limits = result.Margins.Select(margin => new { limit = margin.Limit, worst = margin.Worst, allowed = margin.Allowed, left_percent = Round(margin.Margin.Percent), source = margin.Source }),
            what_helps = answer.Helps.Select(help => new { words = help.Words, gain_h = Round(help.Gain.Hours), reaches_end = help.ReachesEnd }),
            assumed = result.Assumed.Select(assumed => new { field = assumed.Field, name = assumed.Name, value = assumed.Value, why = assumed.Why, source = assumed.Source.ToString() }),
            cautions = answer.Cautions,
        };
    }

    /// <summary>Four decimals are beyond what any of these figures means, and keep the text readable.</summary>
    private static double Round(double value) => Math.Round(value, 4);
}
