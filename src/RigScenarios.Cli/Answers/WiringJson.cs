using RigScenarios.Answers;
using RigScenarios.Files.Formats;
using RigScenarios.Limits;
using RigScenarios.Scenarios;
using RigScenarios.Wiring;

namespace RigScenarios.Cli.Answers;

/// <summary>What fails first in the wiring, for programs. The shape is documented in docs/json.md and held by a test; fields are added, never changed.</summary>
internal static class WiringJson
{
    public static string Text(Scenario scenario, IReadOnlyList<WiringOfDay> answers) =>
        JsonText.Of(new { format = "rigscenarios wiring 1", title = scenario.Title, answers = answers.Select(One) });

    private static object One(WiringOfDay wiring) => new
    {
        build = wiring.BuildName,
        day = wiring.DayName,
        ambient_C = JsonText.Round(wiring.Ambient.DegreesCelsius),
        answer = WiringWords.Answer(wiring),
        end_cause = wiring.Run.EndCause,
        runtime_h = JsonText.Round(wiring.Run.BuildRuntime.Hours),
        planned_h = JsonText.Round(wiring.Day.Length.Hours),
        charge_left_percent = JsonText.Round(wiring.Run.Charge.Percent),
        fails_first = wiring.Failure is { } failure ? new { element = failure.Element, name = wiring.NameOf(failure.Element), at_h = JsonText.Round(failure.At.Hours), charge_left_percent = JsonText.Round(wiring.Worst?.Charge.Percent) } : null,
        drop_outs = wiring.Run.DropOuts.Select(drop => new { element = drop.Element, at_h = JsonText.Round(drop.At.Hours), right_after_change = drop.RightAfterChange }),
        devices = wiring.Powered.Devices.Keys.Select(device => new
        {
            device, runtime_h = JsonText.Round(wiring.Run.Devices[device].At.Hours), stopped_by = wiring.Run.Devices[device].Because,
            lowest_V = JsonText.Round(Lowest(wiring, device)?.Volts), lowest_at_h = JsonText.Round(Lowest(wiring, device)?.At), minimum_V = JsonText.Round(wiring.Powered.Devices[device].Voltage?.Minimum?.Volts),
        }),
        limits = wiring.Findings.Select(finding => new
        {
            element = finding.Element, name = wiring.NameOf(finding.Element), limit = finding.Limit, load_case = ChoiceFormat<LoadCase>.Word(finding.Case), worst = finding.Load, allowed = finding.Allowed,
            left_percent = JsonText.Round(finding.Margin.Percent), at_h = JsonText.Round(finding.At.Hours), block = wiring.Day.Blocks.ElementAt(finding.Block).Key, states = finding.States, source = finding.Source, remedy = finding.Remedy,
        }),
        fixes = wiring.Fixes.Select(fix => new { words = fix.Words, gain_h = JsonText.Round(fix.Gain.Hours), reaches_end = fix.ReachesEnd }),
        worst_moment = wiring.Worst is { } worst ? new { at_h = JsonText.Round(worst.At.Hours), battery_V = JsonText.Round(worst.Point.Terminals.Volts), battery_A = JsonText.Round(worst.Point.Current.Amperes), elements = wiring.Network.Elements.Select(element => Element(element, worst)) } : null,
        not_known = WiringWords.NotKnown(wiring),
        cautions = WiringWords.Cautions(wiring),
    };

    private static object Element(WiringElement element, WiringMoment moment)
    {
        var at = moment.Point.Elements[element.Name];
        return new
        {
            element = element.Name, fed_by = element.FedBy, inlet_V = JsonText.Round(at.Inlet.Volts), outlet_V = at.Inlet.Volts > 0 ? JsonText.Round(at.Outlet?.Volts) : null, current_A = JsonText.Round(at.Current.Amperes),
            output_A = JsonText.Round(at.OutputCurrent?.Amperes), loss_W = JsonText.Round((double)at.Loss.Watts), resistance_mOhm = element is Wire wire ? JsonText.Round(wire.Resistance.Milliohms) : null,
        };
    }

    private static (double Volts, double At)? Lowest(WiringOfDay wiring, string device) =>
        wiring.LowestOf(device) is { } lowest ? (lowest.Inlet.Volts, lowest.At.Hours) : null;
}
