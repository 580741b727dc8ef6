using Microsoft.AspNetCore.Http;
using RigScenarios.Charts.Pages;

namespace RigScenarios.Page.Address;

/// <summary>
/// The first page of whoever showed a key: hands over the page's key and goes on without any key in the address. A page and no
/// redirection, because only a script can keep something for this port alone, and because it keeps what stands behind the "#".
/// </summary>
internal static class WelcomePage
{
    /// <summary>Writes it.</summary>
    /// <param name="context">The request.</param>
    /// <param name="key">The page's key.</param>
    /// <param name="next">Where it goes on: a path of this server with its query.</param>
    public static async Task WriteAsync(HttpContext context, string key, string next)
    {
        context.Response.ContentType = "text/html; charset=utf-8";
        await context.Response.WriteAsync(
            $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <title>Opening: RigScenarios</title>
            <link rel="icon" href="data:,">
            <meta name="rig-key" content="{key}">
            <meta name="rig-next" content="{HtmlText.Escape(next)}">
            <script src="/assets/shared/enter.js"></script>
            </head>
            <body>
            <p>Opening the pages. If nothing follows, this browser runs no scripts or keeps nothing for them; the pages
              need both.</p>
            </body>
            </html>

            """, context.RequestAborted);
    }
}
