using RigScenarios.Answers;
using RigScenarios.Scenarios;
using RigScenarios.Wiring;

namespace RigScenarios.Cli.Answers;

/// <summary>The wiring for programs, beside the answer that all commands share. The shape is documented in docs/json.md and held
/// by a test; fields are added, never changed.</summary>
internal static class WiringJson
{
    public static string Text(Scenario scenario, IReadOnlyList<RigAnswer> answers) =>
        JsonText.Answers(scenario, [.. answers.Select(answer => JsonText.Entry(answer, null, "wiring", One(answer)))]);

    private static object One(RigAnswer answer) => new
    {
        drop_outs = answer.Simulation.DropOuts.Select(drop => new
        {
            element = drop.Element, at_h = JsonText.Round(drop.At.Hours), right_after_change = drop.RightAfterChange,
        }),
        elements = answer.Simulation.Network.Elements.Select(element =>
        {
            var load = answer.Simulation.Loads.TryGetValue(element.Name, out var found) ? found : null;
            return new
            {
                element = element.Name, fed_by = element.FedBy, name = LimitSentences.Element(element.Name),
                most_A = JsonText.Round(load?.Current.Amperes), most_at_h = JsonText.Round(load?.At.Hours),
                most_out_A = JsonText.Round(load?.OutputCurrent?.Amperes),
                resistance_mOhm = element is Wire wire ? JsonText.Round(wire.Resistance.Milliohms) : null,
            };
        }),
    };
}
