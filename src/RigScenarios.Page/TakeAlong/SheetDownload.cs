using Microsoft.AspNetCore.Http;
using RigScenarios.Requests.TakeAlong;

namespace RigScenarios.Page.TakeAlong;

/// <summary>The sheet to take along as a file to keep.</summary>
internal static class SheetDownload
{
    /// <param name="context">The request.</param>
    /// <param name="page">The sheet.</param>
    public static Task WriteAsync(HttpContext context, string page)
    {
        context.Response.ContentType = "text/html; charset=utf-8";
        context.Response.Headers.ContentDisposition = $"attachment; filename=\"{SheetReply.FileName}\"";
        return context.Response.WriteAsync(page, context.RequestAborted);
    }
}
