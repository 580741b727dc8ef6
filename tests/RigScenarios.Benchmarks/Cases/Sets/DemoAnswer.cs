using System.Text.Json.Nodes;
using RigScenarios.Answers;
using RigScenarios.Benchmarks.Cases.Days;
using RigScenarios.Files;
using RigScenarios.Limits;

namespace RigScenarios.Benchmarks.Cases.Sets;

/// <summary>The answer of every build of a scenario file as people and programs read it, and its figures with all their
/// digits.</summary>
internal static class DemoAnswer
{
    public static JsonObject Of(string file)
    {
        var scenario = ScenarioFile.Read(file);
        return new(scenario.Builds.Keys.Select(build =>
            KeyValuePair.Create(build, (JsonNode?)Of(RigAnswer.Of(scenario, build, [])))));
    }

    private static JsonObject Of(RigAnswer answer) => new()
    {
        ["told"] = AnswerShape.Of(answer, null),
        ["days"] = DayFields.Common(answer.Simulation, answer.Days),
        ["reserve_s"] = answer.Reserve.Time.Seconds,
        ["reserve_J"] = answer.Reserve.Energy.Joules,
        ["runtime_s"] = answer.Simulation.Runtime.Seconds,
        ["devices"] = new JsonObject(answer.Simulation.Devices.Select(device =>
            KeyValuePair.Create(device.Key, (JsonNode?)new JsonObject
            {
                ["runtime_s"] = device.Value.Runtime.Seconds,
                ["first_stop_s"] = device.Value.FirstStop?.At.Seconds,
                ["reason"] = device.Value.FirstStop?.Reason.ToString(),
            }))),
        ["mass_kg"] = answer.Balance?.Mass.Mass.Kilograms,
        ["centre_m"] = answer.Balance?.Mass.Centre is { } centre
            ? new JsonArray(centre.X.Meters, centre.Y.Meters, centre.Z.Meters) : null,
        ["limits"] = new JsonArray([.. answer.Questions.SelectMany(question => question.Limits).Select(LimitOf)]),
    };

    private static JsonObject LimitOf(Limit limit) => new()
    {
        ["element"] = limit.Element,
        ["kind"] = limit.Kind.ToString(),
        ["situation"] = limit.Situation,
        ["worst"] = Finite((double)limit.Worst.Value),
        ["allowed"] = limit.Allowed is { } allowed ? Finite((double)allowed.Value) : null,
        ["share"] = limit.Share is { } share ? Finite(share) : null,
        ["at_s"] = limit.At?.Time.Seconds,
    };

    // JSON has no word for what has no end.
    private static JsonNode Finite(double value) => double.IsFinite(value) ? value : value.ToString("R", null);
}
