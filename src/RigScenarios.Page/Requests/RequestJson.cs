using System.Text.Json;
using Microsoft.AspNetCore.Http;

namespace RigScenarios.Page.Requests;

/// <summary>Reads what a page sends, never more than allowed.</summary>
internal static class RequestJson
{
    private static readonly JsonDocumentOptions Strict = new() { MaxDepth = PageJson.Deepest, AllowDuplicateProperties = false };

    /// <summary>The request's body, an object.</summary>
    /// <exception cref="ProblemException">It is too large, no JSON, nested too deep, or no object.</exception>
    public static async Task<JsonElement> ReadAsync(HttpContext context, int largestBytes)
    {
        if (!context.Request.HasJsonContentType())
            throw new ProblemException(StatusCodes.Status415UnsupportedMediaType,
                "The server takes JSON here (content type application/json).");
        var bytes = await BodyAsync(context, largestBytes);
        try
        {
            return Parse(bytes);
        }
        catch (JsonException exception)
        {
            throw new ProblemException(StatusCodes.Status400BadRequest, [Broken(exception)]);
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
        : throw new ProblemException(StatusCodes.Status400BadRequest, [new Problem($"\"{name}\" must be a text.", name)]);

    /// <summary>A text that must be there.</summary>
    /// <exception cref="ProblemException">It is missing or no text.</exception>
    public static string NeededText(JsonElement json, string name) =>
        Text(json, name) ?? throw new ProblemException(StatusCodes.Status400BadRequest,
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
            : throw new ProblemException(StatusCodes.Status400BadRequest,
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

    /// <summary>The request's body as it is.</summary>
    /// <exception cref="ProblemException">It is too large.</exception>
    public static async Task<ReadOnlyMemory<byte>> BodyAsync(HttpContext context, int largestBytes)
    {
        if (context.Request.ContentLength > largestBytes)
            throw TooLarge(largestBytes);
        using var body = new MemoryStream();
        var buffer = new byte[16 * 1024];
        int read;
        while ((read = await context.Request.Body.ReadAsync(buffer, context.RequestAborted)) > 0)
        {
            if (body.Length + read > largestBytes)
                throw TooLarge(largestBytes);
            body.Write(buffer, 0, read);
        }
        return body.GetBuffer().AsMemory(0, (int)body.Length);
    }

    private static ProblemException TooLarge(int largestBytes) =>
        new(StatusCodes.Status413PayloadTooLarge, "This is more than the server takes at once "
            + (largestBytes < 10 * 1024 * 1024 ? $"({largestBytes / 1024} kB)." : $"({largestBytes / 1024 / 1024} MB)."));
}
