using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using RigScenarios.Charts.Pages;

namespace RigScenarios.Page.WebFiles;

/// <summary>
/// The pages and what they load. All of it lies inside the program: a name is looked up in a list, and no path is made of it.
/// </summary>
internal sealed class WebFileEndpoints
{
    private const string Prefix = "site/";

    // What the folder without a server adds to the pages: here nothing would keep them, for the program is needed.
    private const string OfTheFolder = "site/folder/";

    private readonly Dictionary<string, Lazy<WebFile>> files = new(StringComparer.Ordinal);

    public WebFileEndpoints()
    {
        var assembly = typeof(WebFileEndpoints).Assembly;
        foreach (var resource in assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(Prefix, StringComparison.Ordinal)
                && !name.StartsWith(OfTheFolder, StringComparison.Ordinal)))
        {
            if (WebFile.TypeOf(resource) is not { } type)
                continue;
            Add(resource[Prefix.Length..], type, () =>
            {
                using var stream = assembly.GetManifestResourceStream(resource)!;
                using var content = new MemoryStream();
                stream.CopyTo(content);
                return content.ToArray();
            });
        }
        Add("plotly.js", "text/javascript; charset=utf-8", () => Encoding.UTF8.GetBytes(ChartScript.Plotly));
        Add("figure.js", "text/javascript; charset=utf-8", () => Encoding.UTF8.GetBytes(ChartScript.FigureScript));
        Add("figure.css", "text/css; charset=utf-8", () => Encoding.UTF8.GetBytes(ChartScript.FigureStyle));
    }

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/assets/{**file}", context => WriteAsync(context, (string?)context.GetRouteValue("file") ?? ""));
        routes.MapGet("/", context => WriteAsync(context, "shelf/shelf.html"));
        routes.MapGet("/n/{name}", context => WriteAsync(context, "notebook/notebook.html"));
        routes.MapGet("/rig", context => WriteAsync(context, "rig/rig.html"));
        routes.MapGet("/class", context => WriteAsync(context, "class/class.html"));
        routes.MapGet("/lesson/{code}", context => WriteAsync(context, "lesson/lesson.html"));
        routes.MapGet("/file/{folder}/{name}", context => WriteAsync(context, "file/file.html"));
    }

    private void Add(string name, string type, Func<byte[]> read) =>
        files[name] = new Lazy<WebFile>(() => new WebFile(read(), type));

    private async Task WriteAsync(HttpContext context, string name)
    {
        if (files.TryGetValue(name, out var file))
            await file.Value.WriteAsync(context);
        else
            context.Response.StatusCode = StatusCodes.Status404NotFound;
    }
}
