using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using RigScenarios.Answers;
using RigScenarios.Batteries;
using RigScenarios.Scenarios;

namespace RigScenarios.Cli.Answers;

/// <summary>What all answers for programs have in common: their shape, how they are written, how far figures are rounded, how a
/// default is told.</summary>
internal static class JsonText
{
    private static readonly JsonSerializerOptions Options = new() { WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>An object as text.</summary>
    public static string Of(object answer) => JsonSerializer.Serialize(answer, Options);

    /// <summary>A document that the core made, as text.</summary>
    public static string Document(JsonObject document) => document.ToJsonString(Options);

    /// <summary>The document of every command that gives the answer or a part of it (docs/json.md).</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="answers">One entry for each build, in the order of the file.</param>
    /// <param name="more">Fields that only this command has beside the answers.</param>
    public static string Answers(Scenario scenario,
        IReadOnlyList<JsonObject> answers, params IEnumerable<KeyValuePair<string, object>> more)
    {
        var document = new JsonObject
        {
            ["format"] = "rigscenarios answer 2", ["title"] = scenario.Title, ["answers"] = new JsonArray([.. answers]),
        };
        foreach (var (name, value) in more)
            document[name] = Node(value);
        return document.ToJsonString(Options);
    }

    /// <summary>An entry of <c>answers</c>: what all commands share, and what only this one has, in a group of its own.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="sets">What would make it work; null where nobody looked.</param>
    /// <param name="command">The command, which is the name of its group.</param>
    /// <param name="own">The group.</param>
    public static JsonObject Entry(RigAnswer answer, WorkingSets? sets, string command, object own)
    {
        var entry = AnswerShape.Of(answer, sets);
        entry[command] = Node(own);
        return entry;
    }

    /// <summary>Four decimals are beyond what any of these figures means, and keep the text readable.</summary>
    /// <param name="value">The figure; null where there is none.</param>
    public static double? Round(double? value) => value is { } number ? Math.Round(number, 4) : null;

    /// <summary>A default that stands in for a figure.</summary>
    public static object Assumed(AssumedValue assumed) =>
        new { field = assumed.Field, name = assumed.Name, value = assumed.Value, why = assumed.Why,
            source = assumed.Source.ToString() };

    private static JsonNode? Node(object value) => JsonSerializer.SerializeToNode(value, value.GetType(), Options);
}
