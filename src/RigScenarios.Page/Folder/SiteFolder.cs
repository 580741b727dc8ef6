using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace RigScenarios.Page.Folder;

/// <summary>
/// The form, its answer, drawings, charts and notebooks as files that any web server hands out, with the library in them: nothing
/// is asked of a program, and nothing is sent anywhere.
/// </summary>
public static class SiteFolder
{
    /// <summary>What pages of the local server alone need, and what stands elsewhere.</summary>
    private static readonly string[] OfTheServer = ["class/", "lesson/", "shared/enter.js", "folder/", "saved/"];

    /// <summary>The files of the folder by their paths, in an order that does not change.</summary>
    /// <param name="content">What goes into it.</param>
    /// <exception cref="IOException">The browser build is not whole, or a file can't be read.</exception>
    public static IReadOnlyDictionary<string, byte[]> FilesOf(FolderContent content)
    {
        ArgumentNullException.ThrowIfNull(content);
        var files = new SortedDictionary<string, byte[]>(StringComparer.Ordinal);
        var parts = new FolderParts(content.Version);
        foreach (var (name, source) in FolderPage.Sources)
            files[name] = Encoding.UTF8.GetBytes(FolderPage.Of(SiteFiles.Text(source), parts));
        foreach (var name in SiteFiles.Names.Where(IsForPages))
            files[$"assets/{name}"] = SiteFiles.Content(name);
        // Only the pages of notebooks, which are also opened as files, take it as it is.
        foreach (var (name, text) in SiteFiles.OfFigures.Where(file => file.Key != PackedCharts.Name
            || content.Notebooks.Count > 0))
            files[$"assets/{name}"] = Encoding.UTF8.GetBytes(text());
        files[PackedCharts.File] = PackedCharts.Bytes();
        files["index.html"] = Encoding.UTF8.GetBytes(FolderShelf.With(Encoding.UTF8.GetString(files["index.html"]),
            content.Notebooks, content.AnsweringNotebooks));
        // The same names, other addresses: the pages of the folder lie beside each other.
        files["assets/shared/addresses.js"] = Encoding.UTF8.GetBytes(Addresses(content));
        foreach (var name in (string[])["keep-offline.js", "folder.css", "packed-charts.js"])
            files[$"assets/folder/{name}"] = SiteFiles.Content($"folder/{name}");
        foreach (var name in (string[])["app.webmanifest", "icon.svg", "icon-192.png", "icon-512.png"])
            files[name] = SiteFiles.Content($"folder/{name}");
        AddLibrary(files, "library", content.BrowserFolder);
        if (content.NotebookBrowserFolder is { } forNotebooks)
            AddLibrary(files, "notebook-library", forNotebooks);
        foreach (var notebook in content.Notebooks)
        {
            files[notebook.File] = Encoding.UTF8.GetBytes(notebook.Html());
            if (notebook.Picture is { } picture)
                files[picture] = File.ReadAllBytes(notebook.PictureFile!);
        }
        files["READ-ME.txt"] = SiteFiles.Content("folder/READ-ME.txt");
        PageAddresses.Check(files);
        var mark = MarkOf(files);
        files["offline.js"] = Encoding.UTF8.GetBytes(Offline(mark, files));
        // Some hosts leave out folders whose names begin with an underscore, unless this file is there; others hand it out to
        // nobody, so that what keeps the folder offline does not ask for it.
        files[".nojekyll"] = [];
        files[FolderList.Name] = FolderList.Of(content.Version, mark, files);
        return files;
    }

    private static bool IsForPages(string name) => !name.EndsWith(".html", StringComparison.Ordinal)
        && !OfTheServer.Any(start => name.StartsWith(start, StringComparison.Ordinal));

    private static string MarkOf(IReadOnlyDictionary<string, byte[]> files)
    {
        using var all = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var (name, content) in files)
        {
            all.AppendData(Encoding.UTF8.GetBytes(name + "\n"));
            all.AppendData(SHA256.HashData(content));
        }
        return Convert.ToHexStringLower(all.GetHashAndReset())[..16];
    }

    private static void AddLibrary(SortedDictionary<string, byte[]> files, string into, string from)
    {
        foreach (var name in BrowserFiles.In(from))
            files[$"{into}/{name}"] = File.ReadAllBytes(Path.Combine(from, name));
    }

    private static string Addresses(FolderContent content) => SiteFiles.Text("folder/addresses.js")
        .Replace("[/* notebooks as pages */]", JsonSerializer.Serialize(content.Notebooks.Select(notebook => notebook.Name)
            .Except(content.AnsweringNotebooks, StringComparer.Ordinal)), StringComparison.Ordinal);

    private static string Offline(string mark, IReadOnlyDictionary<string, byte[]> files) => SiteFiles.Text("folder/offline.js")
        .Replace("\"/* mark */\"", JsonSerializer.Serialize(mark), StringComparison.Ordinal)
        .Replace("{/* files */}", JsonSerializer.Serialize(files.ToDictionary(file => file.Key,
            file => FolderList.MarkOf(file.Value))), StringComparison.Ordinal);
}
