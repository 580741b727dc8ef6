using System.Text.Json.Nodes;
using RigScenarios.Answers;
using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Answers;

/// <summary>The whole answer for programs. The shape is documented in docs/json.md and held by a test; fields are added, never
/// changed.</summary>
internal static class RunJson
{
    /// <summary>The document.</summary>
    public static string Text(Scenario scenario, IReadOnlyList<JsonObject> answers) => JsonText.Answers(scenario, answers);

    /// <summary>One build.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="sets">What would make it work; null where nobody looked.</param>
    /// <param name="leading">The assumptions that move it most; null where nobody looked.</param>
    public static JsonObject One(RigAnswer answer, WorkingSets? sets, IReadOnlyList<AssumptionEffect>? leading) =>
        JsonText.Entry(answer, sets, "run", new
        {
            runtime_h = JsonText.Round(answer.Simulation.Runtime.Hours),
            coldest_battery_C = JsonText.Round(answer.Simulation.ColdestBattery.DegreesCelsius),
            rests_on = leading is null ? null : LeadingAssumptions.RestsOn(leading).Select(rest => new
            {
                path = rest.Path, text = rest.Text,
            }),
            leading_assumptions = leading?.Select(effect => new
            {
                path = effect.Path, words = effect.Words, low = effect.Low, high = effect.High,
                low_changes_reserve_h = JsonText.Round(effect.Less.Hours),
                high_changes_reserve_h = JsonText.Round(effect.More.Hours),
            }),
            not_planned = NotPlanned.Of(answer.Scenario, answer.Build, answer.Days.Count),
            assumed = answer.Assumed.Select(JsonText.Assumed),
        });
}
