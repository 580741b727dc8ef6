using System.Text.Json;
using RigScenarios.Charts.Search;
using RigScenarios.Search.Rigs;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Page.Rigs;

/// <summary>The best rigs for the money as JSON.</summary>
internal static class BestRigJson
{
    /// <param name="json">Written to: an object that is begun and not ended here.</param>
    /// <param name="result">What was found.</param>
    public static void Write(Utf8JsonWriter json, RigSearchResult result)
    {
        json.WriteString("text", RigSearchSentences.Headline(result));
        PartJson.WriteAll(json, RigSearchParts.Of(result));
        json.WritePropertyName("cautions");
        JsonSerializer.Serialize(json, RigSearchShape.Cautions(result), PageJson.Options);
    }
}
