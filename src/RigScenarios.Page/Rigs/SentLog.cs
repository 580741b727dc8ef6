using System.Text.Json;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using RigScenarios.Page.Requests;
using RigScenarios.Page.Settings;

namespace RigScenarios.Page.Rigs;

/// <summary>A power log as a page sends it: a line of JSON about it, and below it the file as it is.</summary>
/// <param name="What">The line: the rig, the file's name, air and charge.</param>
/// <param name="Bytes">The file.</param>
internal sealed record SentLog(JsonElement What, ReadOnlyMemory<byte> Bytes)
{
    /// <summary>Such a body is no form that another site could send by itself.</summary>
    private const string ContentType = "application/octet-stream";

    /// <summary>Reads a request's body.</summary>
    /// <exception cref="ProblemException">It is too large, of another kind, or its first line is no JSON object.</exception>
    public static async Task<SentLog> ReadAsync(HttpContext context, PageLimits limits)
    {
        if (context.Request.ContentType != ContentType)
            throw new ProblemException(StatusCodes.Status415UnsupportedMediaType,
                $"The server takes a log here (content type {ContentType}).");
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
            size.MaxRequestBodySize = limits.LargestLogBytes + limits.LargestJsonBytes;
        var body = await RequestJson.BodyAsync(context, limits.LargestLogBytes + limits.LargestJsonBytes);
        var end = body.Span.IndexOf((byte)'\n');
        if (end < 0 || end > limits.LargestJsonBytes)
            throw new ProblemException(StatusCodes.Status400BadRequest,
                "What the page sent begins without a line about the log.");
        try
        {
            return new(RequestJson.Parse(body[..end]), body[(end + 1)..]);
        }
        catch (JsonException exception)
        {
            throw new ProblemException(StatusCodes.Status400BadRequest, [RequestJson.Broken(exception)]);
        }
    }
}
