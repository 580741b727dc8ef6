using System.Text.Json;

namespace RigScenarios.Requests.Messages;

/// <summary>Reads what a page sends, never more than allowed.</summary>
internal static class RequestJson
{
    private static readonly JsonDocumentOptions Strict = new() { MaxDepth = PageJson.Deepest, AllowDuplicateProperties = false };

    /// <summary>What a page asks, an object.</summary>
    /// <param name="bytes">The object as JSON.</param>
    /// <param name="largestBytes">The most bytes that are taken.</param>
    /// <exception cref="ProblemException">It is too large, no JSON, nested too deep, or no object.</exception>
    public static JsonElement Read(ReadOnlyMemory<byte> bytes, int largestBytes)
    {
        if (bytes.Length > largestBytes)
            throw TooLarge(largestBytes);
        try
        {
            return Parse(bytes);
        }
        catch (JsonException exception)
        {
            throw new ProblemException(ReplyStatus.BadRequest, [Broken(exception)]);
        }
    }

    /// <summary>Bytes as a JSON object.</summary>
    /// <exception cref="JsonException">They are none.</exception>
    public static JsonElement Parse(ReadOnlyMemory<byte> bytes)
    {
        using var document = JsonDocument.Parse(bytes, Strict);
        if (document.RootElement.ValueKind != JsonValueKind.Object)
            throw new JsonException("An object is needed.");
        try
        {
            MustBeText(document.RootElement);
        }
        catch (InvalidOperationException exception)
        {
            throw new JsonException("A text holds half of a character.", exception);
        }
        return document.RootElement.Clone();
    }

    public static Problem Broken(JsonException exception) => new(
        "What the page sent can't be read: it is no JSON object, is broken, says something twice, or is nested too deep.",
        Line: (int?)exception.LineNumber + 1,
        Column: (int?)exception.BytePositionInLine + 1);

    /// <summary>A text of the object; null where it is missing or null.</summary>
    /// <exception cref="ProblemException">It is no text.</exception>
    public static string? Text(JsonElement json, string name) =>
        !json.TryGetProperty(name, out var value) || value.ValueKind == JsonValueKind.Null ? null
        : value.ValueKind == JsonValueKind.String ? value.GetString()
        : throw new ProblemException(ReplyStatus.BadRequest, [new Problem($"\"{name}\" must be a text.", name)]);

    /// <summary>A text that must be there.</summary>
    /// <exception cref="ProblemException">It is missing or no text.</exception>
    public static string NeededText(JsonElement json, string name) =>
        Text(json, name) ?? throw new ProblemException(ReplyStatus.BadRequest,
            [new Problem($"\"{name}\" is missing.", name)]);

    /// <summary>A yes or no; no where it is missing.</summary>
    public static bool Flag(JsonElement json, string name) =>
        json.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.True;

    /// <summary>A whole number from 1 that must be there.</summary>
    /// <exception cref="ProblemException">It is missing or no such number.</exception>
    public static int NeededCount(JsonElement json, string name) =>
        json.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.Number
            && value.TryGetInt32(out var number) && number >= 1
            ? number
            : throw new ProblemException(ReplyStatus.BadRequest,
                [new Problem($"\"{name}\" must be a whole number from 1.", name)]);

    // JSON may hold half of a surrogate pair, which is no text: found here once, so that whoever reads a text later finds one.
    private static void MustBeText(JsonElement json)
    {
        switch (json.ValueKind)
        {
            case JsonValueKind.String:
                _ = json.GetString();
                break;
            case JsonValueKind.Object:
                foreach (var field in json.EnumerateObject())
                {
                    _ = field.Name;
                    MustBeText(field.Value);
                }
                break;
            case JsonValueKind.Array:
                foreach (var item in json.EnumerateArray())
                    MustBeText(item);
                break;
        }
    }

    /// <summary>Says that something is too large.</summary>
    public static ProblemException TooLarge(int largestBytes) =>
        new(ReplyStatus.TooLarge, "This is more than the program takes at once "
            + (largestBytes < 10 * 1024 * 1024 ? $"({largestBytes / 1024} kB)." : $"({largestBytes / 1024 / 1024} MB)."));
}
