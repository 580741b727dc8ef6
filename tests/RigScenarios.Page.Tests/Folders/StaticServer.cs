using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace RigScenarios.Page.Tests.Folders;

/// <summary>
/// A plain server of files, as any web space has one: it knows nothing of what it serves, compresses nothing, sets no header but
/// the kind of file, and has the folder in a place of its own below the root.
/// </summary>
public sealed class StaticServer : IAsyncDisposable
{
    private static readonly Dictionary<string, string> Kinds = new(StringComparer.Ordinal)
    {
        [".html"] = "text/html; charset=utf-8",
        [".js"] = "text/javascript",
        [".css"] = "text/css",
        [".json"] = "application/json",
        [".wasm"] = "application/wasm",
        [".svg"] = "image/svg+xml",
        [".png"] = "image/png",
        [".webmanifest"] = "application/manifest+json",
        [".zip"] = "application/zip",
    };

    private readonly WebApplication application;
    private readonly string folder;

    private StaticServer(WebApplication application, string folder, string place)
    {
        (this.application, this.folder) = (application, Path.GetFullPath(folder));
        application.Run(context => AnswerAsync(context, place));
    }

    /// <summary>The address of the folder; it ends with a slash.</summary>
    public Uri Address { get; private set; } = new("about:blank");

    /// <summary>Scheme, machine and port.</summary>
    public string Origin => Address.GetLeftPart(UriPartial.Authority);

    /// <summary>Serves a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="place">Where it lies below the root, with a slash at its start and none at its end; may be empty.</param>
    public static async Task<StaticServer> StartAsync(string folder, string place = "/a/place")
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        var server = new StaticServer(builder.Build(), folder, place);
        await server.application.StartAsync();
        var address = server.application.Services.GetRequiredService<IServer>().Features
            .Get<IServerAddressesFeature>()!.Addresses.First();
        server.Address = new Uri($"{address}{place}/");
        return server;
    }

    public ValueTask DisposeAsync() => application.DisposeAsync();

    private async Task AnswerAsync(HttpContext context, string place)
    {
        var path = context.Request.Path.Value ?? "/";
        var answer = context.Response;
        if (!path.StartsWith(place + "/", StringComparison.Ordinal) || path.Contains("..", StringComparison.Ordinal))
        {
            answer.StatusCode = 404;
            return;
        }
        var file = Path.Combine(folder, path[(place.Length + 1)..]);
        if (Directory.Exists(file) && !path.EndsWith('/'))
        {
            answer.Redirect(path + "/" + context.Request.QueryString);
            return;
        }
        if (Directory.Exists(file))
            file = Path.Combine(file, "index.html");
        if (!File.Exists(file))
        {
            answer.StatusCode = 404;
            return;
        }
        answer.ContentType = Kinds.GetValueOrDefault(Path.GetExtension(file), "application/octet-stream");
        await answer.SendFileAsync(file, context.RequestAborted);
    }
}
