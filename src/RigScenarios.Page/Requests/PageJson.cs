using System.Text.Json;
using Microsoft.AspNetCore.Http;

namespace RigScenarios.Page.Requests;

/// <summary>Answers as JSON.</summary>
internal static class PageJson
{
    /// <summary>How deep a request's JSON may nest. The deepest that pages send has six levels.</summary>
    public const int Deepest = 16;

    // The usual encoder stays: it writes < > & ' as escapes, so that no text could end a script even where one stood around it.
    public static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web);

    public static async Task WriteAsync<T>(HttpContext context, T value, int status = StatusCodes.Status200OK)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "application/json; charset=utf-8";
        await JsonSerializer.SerializeAsync(context.Response.Body, value, Options, context.RequestAborted);
    }

    public static Task WriteProblemsAsync(HttpContext context, int status, IReadOnlyList<Problem> problems) =>
        WriteAsync(context, new { problems }, status);
}
