using RigScenarios.Files;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using RigScenarios.Page.Address;
using RigScenarios.Page.Requests;
using RigScenarios.Requests.OwnFiles;
using RigScenarios.Page.WebFiles;

namespace RigScenarios.Page.Shelf;

/// <summary>What stands on the shelf: the notebooks in reading order, and the scenario files.</summary>
internal sealed class ShelfEndpoints(NotebookShelf shelf, RigFiles files)
{
    private const long LargestPicture = 2 * 1024 * 1024;

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/shelf", ShelfAsync);
        routes.MapGet("/picture/{notebook}", PictureAsync);
    }

    private Task ShelfAsync(HttpContext context) => JsonReply.WriteAsync(context, new
    {
        notebooks = shelf.All().Select(notebook => new { name = notebook.Name, title = notebook.Title,
            sentence = notebook.Sentence, hasPicture = notebook.PictureFile is not null }),
        files = files.All(context.RequestAborted)
            .Select(file => new { id = file.Id, folder = file.Folder, name = file.Name, title = file.Title,
            problems = file.Errors }),
        folder = files.ShownFolder,
    });

    // A folder on the way may be a link, too.
    private bool LiesWithItsNotebook(string file) =>
        RealPath.IsInside(RealPath.Of(file), RealPath.Of(shelf.Folder));

    private async Task PictureAsync(HttpContext context)
    {
        var file = shelf.Find((string)context.GetRouteValue("notebook")!)?.PictureFile;
        if (file is null || WebFile.TypeOf(file.ToLowerInvariant()) is not ("image/svg+xml" or "image/png")
            || !LiesWithItsNotebook(file) || new FileInfo(file) is not { Exists: true, Length: <= LargestPicture })
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }
        PageHeaders.ForPicture(context);
        await new WebFile(await File.ReadAllBytesAsync(file, context.RequestAborted), WebFile.TypeOf(file.ToLowerInvariant())!)
            .WriteAsync(context);
    }
}
