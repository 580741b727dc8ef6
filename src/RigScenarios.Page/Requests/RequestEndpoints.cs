using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Routing;
using RigScenarios.Page.Settings;
using RigScenarios.Requests;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Page.Requests;

/// <summary>Where requests of pages stand on this server: each address is one request, with what stands in the address as fields
/// beside those of its body.</summary>
internal sealed class RequestEndpoints(PageRequests requests, PageLimits limits)
{
    /// <summary>Such a body is no form that another site could send by itself.</summary>
    private const string BytesType = "application/octet-stream";

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/abilities", context => AskAsync(context, "abilities"));
        routes.MapGet("/api/shelf", context => AskAsync(context, "shelf"));
        routes.MapGet("/api/rig/questions", context => AskAsync(context, "rig-questions"));
        routes.MapGet("/api/rig/given", context => AskAsync(context, "rig-given", FromQuery(context, "file", "build", "day")));
        routes.MapPost("/api/rig/alone", context => AskAsync(context, "rig-alone", limits.LargestJsonBytes));
        routes.MapPost("/api/rig/edit", context => AskAsync(context, "rig-edit", limits.LargestJsonBytes));
        routes.MapPost("/api/rig/save", context => AskAsync(context, "save-rig", limits.LargestJsonBytes));
        routes.MapPost("/api/rig/take-along", context => AskAsync(context, "rig-sheet", limits.LargestJsonBytes));
        routes.MapPost("/api/rig/log", LogAsync);
        routes.MapGet("/api/files/{folder}/{name}", context => AskAsync(context, "file",
            [("id", $"{Of(context, "folder")}/{Of(context, "name")}")]));
        routes.MapPut("/api/files/own/{name}", context => AskAsync(context, "save-file", limits.LargestFileBytes,
            ("name", Of(context, "name"))));
        routes.MapPost("/api/text/check", context => AskAsync(context, "check-text", limits.LargestFileBytes));
        routes.MapPost("/api/text/help", context => AskAsync(context, "text-help", limits.LargestFileBytes));
    }

    private static string Of(HttpContext context, string name) => (string)context.GetRouteValue(name)!;

    /// <summary>The fields that stand once in the address's query.</summary>
    private static (string Name, string Value)[] FromQuery(HttpContext context, params string[] names) =>
    [
        .. names.Where(name => context.Request.Query[name].Count == 1)
            .Select(name => (name, context.Request.Query[name].ToString())),
    ];

    private Task AskAsync(HttpContext context, string name, params (string Name, string Value)[] fields) =>
        WriteAsync(context, name, Joined(fields, default), default);

    private async Task AskAsync(HttpContext context, string name, int largestBytes,
        params (string Name, string Value)[] fields)
    {
        var body = await RequestBody.JsonAsync(context, largestBytes);
        await WriteAsync(context, name, fields.Length == 0 ? body : Joined(fields, RequestJson.Read(body, largestBytes)),
            default);
    }

    /// <summary>A power log comes as a line of JSON about it, and below it the file as it is: it may be large.</summary>
    private async Task LogAsync(HttpContext context)
    {
        if (context.Request.ContentType != BytesType)
            throw new ProblemException(StatusCodes.Status415UnsupportedMediaType,
                $"The server takes a log here (content type {BytesType}).");
        var largest = limits.LargestLogBytes + limits.LargestJsonBytes;
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
            size.MaxRequestBodySize = largest;
        var body = await RequestBody.BytesAsync(context, largest);
        var end = body.Span.IndexOf((byte)'\n');
        if (end < 0 || end > limits.LargestJsonBytes)
            throw new ProblemException(StatusCodes.Status400BadRequest,
                "What the page sent begins without a line about the log.");
        await WriteAsync(context, "rig-log", body[..end], body[(end + 1)..]);
    }

    /// <summary>What the address says, and what the body says besides.</summary>
    private static byte[] Joined((string Name, string Value)[] fields, JsonElement body)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartObject();
            foreach (var (name, value) in fields)
                json.WriteString(name, value);
            if (body.ValueKind == JsonValueKind.Object)
            {
                foreach (var field in body.EnumerateObject().Where(field => !fields.Any(given => given.Name == field.Name)))
                    field.WriteTo(json);
            }
            json.WriteEndObject();
        }
        return bytes.ToArray();
    }

    private async Task WriteAsync(HttpContext context, string name, ReadOnlyMemory<byte> json, ReadOnlyMemory<byte> attachment)
    {
        var reply = await requests.AskAsync(name, json, attachment, context.RequestAborted);
        context.Response.StatusCode = reply.Status;
        context.Response.ContentType = reply.ContentType;
        if (reply.FileName is { } file)
            context.Response.Headers.ContentDisposition = $"attachment; filename=\"{file}\"";
        await context.Response.Body.WriteAsync(reply.Body, context.RequestAborted);
    }
}
