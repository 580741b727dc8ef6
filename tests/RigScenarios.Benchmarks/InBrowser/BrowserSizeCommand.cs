using System.Globalization;

namespace RigScenarios.Benchmarks.InBrowser;

/// <summary>
/// `browser-size FOLDER`: what each part of a folder for browsers weighs, as a table for docs/no-install.md. The folder is one
/// that `rigscenarios site` wrote, or the published build of src/RigScenarios.Browser alone.
/// </summary>
internal static class BrowserSizeCommand
{
    public const string Usage = "browser-size FOLDER";

    private const string Notebooks = "notebooks and their pictures, loaded when one is opened";

    private const string Cells = "the library once more, with the cells of the notebooks, loaded when one is opened that answers";

    private const string Others = "the other pages (shelf, notebooks, files as text), loaded when one is opened";

    private static readonly string[] OfOthers = ["assets/notebook/", "assets/file/", "assets/shelf/", "index.html",
        "notebook.html", "file.html"];

    // The first that fits counts.
    private static readonly (string Share, Func<string, bool> Is)[] Shares =
    [
        (Cells, name => name.StartsWith("notebook-library/", Ordinal)),
        ("runtime: the interpreter and its scripts", name => Named(name, "dotnet") || name.Contains("_framework/", Ordinal)),
        ("RigScenarios: library, charts, requests, with parts and demos", name => Named(name, "RigScenarios")),
        ("units (UnitsNet)", name => Named(name, "UnitsNet")),
        (".NET's own libraries", name => name.EndsWith(".wasm", Ordinal) && (Named(name, "System") || Named(name, "Microsoft"))),
        ("other packages (YAML, linear algebra, tables, near names)", name => name.EndsWith(".wasm", Ordinal)),
        (Notebooks, name => name.StartsWith("notebooks/", Ordinal) || name.Contains("/notebooks/", Ordinal)
            || name.Contains("picture", Ordinal) || name.EndsWith(".dll", Ordinal) || name == "assets/plotly.js"),
        ("charts (plotly.js)", name => name.Contains("plotly", Ordinal)),
        (Others, name => OfOthers.Any(start => name.StartsWith(start, Ordinal))),
        ("the form: scripts, styles, words, icons", _ => true),
    ];

    private const StringComparison Ordinal = StringComparison.Ordinal;

    public static int Run(string[] arguments)
    {
        if (arguments is not [var folder] || !Directory.Exists(folder))
        {
            Console.Error.WriteLine($"Usage: {Usage}, with a folder that is there, such as one that rigscenarios site wrote");
            return 2;
        }

        var pieces = FolderPiece.Of(folder);
        Console.WriteLine("| part | files | plain server, kB | compressing server, kB |");
        Console.WriteLine("|---|---:|---:|---:|");
        foreach (var (share, _) in Shares)
            Tell(share, [.. pieces.Where(piece => ShareOf(piece) == share)]);
        Tell("**what the form loads, in all**", [.. pieces.Where(piece => ShareOf(piece) is not (Notebooks or Cells or Others))]);
        return 0;
    }

    private static string ShareOf(FolderPiece piece) => Shares.First(share => share.Is(piece.Name)).Share;

    private static void Tell(string what, IReadOnlyList<FolderPiece> pieces)
    {
        if (pieces.Count > 0)
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"| {what} | {pieces.Count} | {pieces.Sum(piece => piece.Plain) / 1e3:0} | "
                + $"{pieces.Sum(piece => piece.Compressed) / 1e3:0} |"));
    }

    private static bool Named(string name, string begins) =>
        name.Split('/')[^1].StartsWith(begins, Ordinal);
}
