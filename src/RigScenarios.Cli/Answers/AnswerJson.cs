using RigScenarios.Answers;
using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Answers;

/// <summary>Answers for programs. The shape is documented in docs/json.md and held by a test; fields are added, never changed.</summary>
internal static class AnswerJson
{
    public static string Text(Scenario scenario, IReadOnlyList<Answer> answers) => JsonText.Of(new { format = "rigscenarios answer 1", title = scenario.Title, answers = answers.Select(One) });

    private static object One(Answer answer)
    {
        var result = answer.Result;
        return new
        {
            build = answer.BuildName,
            day = answer.DayName,
            ambient_C = JsonText.Round(answer.Ambient.DegreesCelsius),
            answer = DayWords.Answer(result),
            ending = DayWords.Ending(result, answer.Day.Starts),
            runtime_h = JsonText.Round(result.Runtime.Hours),
            runtime_is_lower_bound = result.RuntimeIsLowerBound,
            planned_h = JsonText.Round(result.Planned.Hours),
            margin_h = JsonText.Round(result.Margin.Hours),
            reaches_end = result.ReachesEnd,
            end_cause = result.EndCause,
            end_block = result.EndBlock,
            charge_left_percent = JsonText.Round(result.ChargeLeft.Percent),
            delivered_Wh = JsonText.Round(result.Delivered.WattHours),
            still_needed_Wh = JsonText.Round(DayWords.StillNeeded(result).WattHours),
            coldest_battery_C = JsonText.Round(result.ColdestBattery.DegreesCelsius),
            expected_error_percent = JsonText.Round(result.ExpectedError.Share?.Percent),
            expected_error_why = result.ExpectedError.Why,
            devices = result.Devices.Select(device => new { device = device.Device, title = device.Title, essential = device.Essential, runtime_h = JsonText.Round(device.Runtime.Hours), stopped_by = device.Cause }),
            limits = result.Margins.Select(margin => new { limit = margin.Limit, worst = margin.Worst, allowed = margin.Allowed, left_percent = JsonText.Round(margin.Margin.Percent), source = margin.Source }),
            what_helps = answer.Helps.Select(help => new { words = help.Words, gain_h = JsonText.Round(help.Gain.Hours), reaches_end = help.ReachesEnd }),
            assumed = result.Assumed.Select(JsonText.Assumed),
            cautions = answer.Cautions,
        };
    }
}
