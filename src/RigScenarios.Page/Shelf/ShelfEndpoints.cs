using RigScenarios.Files;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using RigScenarios.Page.Address;
using RigScenarios.Page.WebFiles;

namespace RigScenarios.Page.Shelf;

/// <summary>The pictures of the notebooks on the shelf.</summary>
internal sealed class ShelfEndpoints(NotebookShelf shelf)
{
    private const long LargestPicture = 2 * 1024 * 1024;

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/picture/{notebook}", PictureAsync);
    }

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
