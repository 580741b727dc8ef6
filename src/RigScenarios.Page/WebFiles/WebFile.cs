using System.Security.Cryptography;
using Microsoft.AspNetCore.Http;
using RigScenarios.Page.Address;

namespace RigScenarios.Page.WebFiles;

/// <summary>A file of the page itself: its content, and a mark by which a browser sees that it has it already.</summary>
internal sealed class WebFile(byte[] content, string type)
{
    private readonly string mark = $"\"{Convert.ToHexStringLower(SHA256.HashData(content))[..32]}\"";

    public async Task WriteAsync(HttpContext context)
    {
        PageHeaders.MayBeKept(context);
        context.Response.Headers.ETag = mark;
        if (context.Request.Headers.IfNoneMatch.Contains(mark))
        {
            context.Response.StatusCode = StatusCodes.Status304NotModified;
            return;
        }
        context.Response.ContentType = type;
        context.Response.ContentLength = content.Length;
        await context.Response.Body.WriteAsync(content, context.RequestAborted);
    }

    /// <summary>The content type by the name's ending; null for a file that no page needs.</summary>
    public static string? TypeOf(string name) => Path.GetExtension(name) switch
    {
        ".html" => "text/html; charset=utf-8",
        ".js" or ".mjs" => "text/javascript; charset=utf-8",
        ".css" => "text/css; charset=utf-8",
        ".svg" => "image/svg+xml",
        ".png" => "image/png",
        ".woff2" => "font/woff2",
        ".json" or ".webmanifest" => "application/json; charset=utf-8",
        _ => null,
    };
}
