using System.Text.Json;
using Microsoft.AspNetCore.Http;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Page.Requests;

/// <summary>Reads what a page sends, never more than allowed.</summary>
internal static class RequestBody
{
    /// <summary>The request's body, an object.</summary>
    /// <exception cref="ProblemException">It is too large, no JSON, nested too deep, or no object.</exception>
    public static async Task<JsonElement> ReadAsync(HttpContext context, int largestBytes) =>
        RequestJson.Read(await JsonAsync(context, largestBytes), largestBytes);

    /// <summary>The request's body as bytes of JSON.</summary>
    /// <exception cref="ProblemException">It is too large, or doesn't say that it is JSON.</exception>
    public static Task<ReadOnlyMemory<byte>> JsonAsync(HttpContext context, int largestBytes) =>
        context.Request.HasJsonContentType() ? BytesAsync(context, largestBytes)
            : throw new ProblemException(StatusCodes.Status415UnsupportedMediaType,
                "The server takes JSON here (content type application/json).");

    /// <summary>The request's body as it is.</summary>
    /// <exception cref="ProblemException">It is too large.</exception>
    public static async Task<ReadOnlyMemory<byte>> BytesAsync(HttpContext context, int largestBytes)
    {
        if (context.Request.ContentLength > largestBytes)
            throw RequestJson.TooLarge(largestBytes);
        using var body = new MemoryStream();
        var buffer = new byte[16 * 1024];
        int read;
        while ((read = await context.Request.Body.ReadAsync(buffer, context.RequestAborted)) > 0)
        {
            if (body.Length + read > largestBytes)
                throw RequestJson.TooLarge(largestBytes);
            body.Write(buffer, 0, read);
        }
        return body.GetBuffer().AsMemory(0, (int)body.Length);
    }
}
