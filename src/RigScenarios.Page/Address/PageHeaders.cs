using Microsoft.AspNetCore.Http;

namespace RigScenarios.Page.Address;

/// <summary>The headers that every answer carries, also one that refuses: what a browser may do with it.</summary>
internal static class PageHeaders
{
    private const string ContentPolicy =
        "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; connect-src "
            + "'self'; "
        + "font-src 'self'; form-action 'none'; base-uri 'none'; frame-ancestors 'none'";

    // A picture is a document of its own when it is opened alone: then nothing in it may run.
    private const string PictureContentPolicy =
        "default-src 'none'; style-src 'unsafe-inline'; img-src data:; sandbox; frame-ancestors 'none'";

    /// <summary>Sees to it that the answer carries them, whoever writes it.</summary>
    public static void AddTo(HttpContext context) => context.Response.OnStarting(() =>
    {
        var headers = context.Response.Headers;
        headers.TryAdd("Content-Security-Policy", ContentPolicy);
        headers["X-Content-Type-Options"] = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers.TryAdd("Cache-Control", "no-store");
        return Task.CompletedTask;
    });

    /// <summary>Marks the answer as a picture that may run nothing.</summary>
    public static void ForPicture(HttpContext context) =>
        context.Response.Headers["Content-Security-Policy"] = PictureContentPolicy;

    /// <summary>Marks the answer as one that the browser may keep, if it asks each time whether it is still the same.</summary>
    public static void MayBeKept(HttpContext context) => context.Response.Headers["Cache-Control"] = "private, no-cache";
}
