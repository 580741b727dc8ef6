using System.Text.Json;
using Microsoft.AspNetCore.Http;
using RigScenarios.Page.Requests;

namespace RigScenarios.Page.Runs;

/// <summary>What a page asks for: a run of a lane with other values, or that its run stops.</summary>
/// <param name="Lane">"now", or "pinned" for the version beside it.</param>
/// <param name="Run">The page's own number of the run; 0 where a run is to stop.</param>
/// <param name="Values">Values of parameters by name, as a person writes them. Texts, and never code: the notebook reads each by its declared kind.</param>
internal sealed record LiveAsk(string Lane, int Run, IReadOnlyDictionary<string, string> Values)
{
    /// <summary>The lanes that a page has.</summary>
    public static readonly IReadOnlyList<string> Lanes = ["now", "pinned"];

    private const int MostValues = 100;
    private const int LongestValue = 4096;

    public bool IsStop => Run == 0;

    /// <exception cref="JsonException">The message is no JSON object.</exception>
    /// <exception cref="ProblemException">The message asks for something else.</exception>
    public static LiveAsk Read(byte[] message)
    {
        var json = RequestJson.Parse(message);
        var lane = RequestJson.NeededText(json, "lane");
        if (!Lanes.Contains(lane))
            throw Refused("lane", "There is no such lane.", string.Join(", ", Lanes));
        return RequestJson.NeededText(json, "kind") switch
        {
            "stop" => new LiveAsk(lane, 0, new Dictionary<string, string>()),
            "run" => new LiveAsk(lane, RequestJson.NeededCount(json, "run"), ReadValues(json)),
            _ => throw Refused("kind", "There is no such message.", "run, stop"),
        };
    }

    private static Dictionary<string, string> ReadValues(JsonElement json)
    {
        var values = new Dictionary<string, string>(StringComparer.Ordinal);
        if (!json.TryGetProperty("values", out var given))
            return values;
        if (given.ValueKind != JsonValueKind.Object)
            throw Refused("values", "The values must be an object of texts.", "{\"name\":\"value\"}");
        foreach (var value in given.EnumerateObject())
        {
            var text = RequestJson.NeededText(given, value.Name);
            if (values.Count >= MostValues || value.Name.Length > LongestValue || text.Length > LongestValue)
                throw Refused("values", "These are more or longer values than any notebook has.", $"at most {MostValues} values of at most {LongestValue} characters");
            values[value.Name] = text;
        }
        return values;
    }

    private static ProblemException Refused(string path, string text, string accepted) => new(StatusCodes.Status400BadRequest, [new Problem(text, path, accepted)]);
}
