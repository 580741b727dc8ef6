using RigScenarios.Requests.OwnFiles;
using RigScenarios.Requests.Reading;

namespace RigScenarios.Requests.Shelf;

/// <summary>A notebook on the shelf.</summary>
/// <param name="Name">Its name, by which it is opened.</param>
/// <param name="Title">Its title.</param>
/// <param name="Sentence">What it shows, in one sentence.</param>
/// <param name="HasPicture">Whether it has a picture for the shelf.</param>
internal sealed record NotebookOnShelf(string Name, string Title, string Sentence, bool HasPicture);

/// <summary>What stands on the shelf: the notebooks in reading order, and the scenario files.</summary>
/// <param name="files">The scenario files.</param>
/// <param name="shelf">The notebooks; null where there are none.</param>
internal sealed class ShelfRequests(RigFiles files, INotebookShelf? shelf)
{
    /// <summary>The shelf as it is now.</summary>
    public object All(CancellationToken cancellation) => new
    {
        notebooks = shelf?.All().Select(notebook => new NotebookOnShelf(notebook.Name, notebook.Title, notebook.Sentence,
            notebook.PictureFile is not null)) ?? [],
        files = files.All(cancellation)
            .Select(file => new { id = file.Id, folder = file.Folder, name = file.Name, title = file.Title,
            problems = file.Errors }),
        folder = files.ShownFolder,
    };
}
