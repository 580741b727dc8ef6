using System.Text.Json;

namespace RigScenarios.Requests.Messages;

/// <summary>How requests and answers are written as JSON.</summary>
internal static class PageJson
{
    /// <summary>How deep a request's JSON may nest. The deepest that pages send has six levels.</summary>
    public const int Deepest = 16;

    // The usual encoder stays: it writes < > & ' as escapes, so that no text could end a script even where one stood around it.
    public static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web);
}
