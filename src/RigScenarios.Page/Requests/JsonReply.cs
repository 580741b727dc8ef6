using System.Text.Json;
using Microsoft.AspNetCore.Http;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Page.Requests;

/// <summary>Answers as JSON.</summary>
internal static class JsonReply
{
    public static async Task WriteAsync<T>(HttpContext context, T value, int status = StatusCodes.Status200OK)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "application/json; charset=utf-8";
        await JsonSerializer.SerializeAsync(context.Response.Body, value, PageJson.Options, context.RequestAborted);
    }

    public static Task WriteProblemsAsync(HttpContext context, int status, IReadOnlyList<Problem> problems) =>
        WriteAsync(context, new { problems }, status);
}
