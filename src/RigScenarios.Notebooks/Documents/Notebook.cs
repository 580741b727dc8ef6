using System.Text.Json.Nodes;
using System.Text.Json;
using System.Text.RegularExpressions;
using RigScenarios.Files;
using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Notebooks.Documents;

/// <summary>What a cell of a notebook is.</summary>
public enum CellKind
{
    /// <summary>Text for people, in Markdown.</summary>
    Prose,

    /// <summary>C# that is run.</summary>
    Code,

    /// <summary>Anything else; neither shown nor run.</summary>
    Other,
}

/// <summary>A cell of a notebook.</summary>
/// <param name="Number">Its place from 1, counting all cells, as a reader would count them.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Text">Its text, lines ended by a line feed.</param>
/// <param name="Tags">Its tags, such as <c>parameters</c>.</param>
public sealed record NotebookCell(int Number, CellKind Kind, string Text, IReadOnlyList<string> Tags)
{
    /// <summary>Whether it is the first cell of every notebook, which only prepares the session.</summary>
    public bool IsStart => Kind == CellKind.Code && Text.Contains("NotebookSession.Start()", StringComparison.Ordinal);

    /// <summary>Whether it speaks to users of a notebook program only (tag <c>jupyter</c>): pages leave it out.</summary>
    public bool IsForNotebookPrograms => Tags.Contains("jupyter");
}

/// <summary>A notebook as it was read from an <c>.ipynb</c> file (nbformat 4). Nothing has been run.</summary>
public sealed partial record Notebook
{
    private readonly INotebookReader reader;

    private Notebook(string path, IReadOnlyList<NotebookCell> cells, JsonNode? shelf,
        INotebookReader reader)
    {
        this.reader = reader;
        FilePath = path;
        Cells = cells;
        Title = FindTitle();
        Sentence = shelf?["sentence"]?.GetValue<string>() ?? "";
        NeedsProgram = shelf?["needsProgram"]?.GetValue<string>();
        PictureFile = shelf?["picture"]?.GetValue<string>() is { } picture ? FindPicture(picture) : null;
        var first = cells.FirstOrDefault(cell => cell.Kind == CellKind.Code && cell.Tags.Contains(NotebookParameters.Tag));
        Parameters = new NotebookParameters(Path.GetDirectoryName(path)!, first?.Number,
            first is null ? [] : reader.Parameters(first.Text));
    }

    /// <summary>The file, with its full path.</summary>
    public string FilePath { get; }

    /// <summary>The file's name without folder: what messages call the notebook.</summary>
    public string FileName => Path.GetFileName(FilePath);

    /// <summary>The file's name without folder and ending: what the notebook is called in addresses.</summary>
    public string Name => Path.GetFileNameWithoutExtension(FilePath);

    /// <summary>One sentence that says on a shelf what the notebook answers; empty where its file has none.</summary>
    public string Sentence { get; }

    /// <summary>Why it runs only in the program on a computer and not in a browser by itself, in a sentence; null where it does
    /// both.</summary>
    public string? NeedsProgram { get; }

    /// <summary>The picture (.svg or .png) that stands for it on a shelf, with its full path; null where there is none.</summary>
    public string? PictureFile { get; }

    /// <summary>All cells in their order.</summary>
    public IReadOnlyList<NotebookCell> Cells { get; }

    /// <summary>The first heading of the prose, or the file's name without its ending where there is none.</summary>
    public string Title { get; }

    /// <summary>The parameters that the notebook declares, in their order.</summary>
    public NotebookParameters Parameters { get; }

    /// <summary>The largest notebook that is read: one with its results and some pictures has a few MB.</summary>
    public const int LargestBytes = 32 * 1024 * 1024;

    /// <summary>Reads a notebook.</summary>
    /// <param name="path">An <c>.ipynb</c> file, a plain one of at most <see cref="LargestBytes"/>.</param>
    /// <param name="reader">Reads what its cells hold.</param>
    /// <exception cref="NotebookInputException">There is no such file, or it is no notebook; the message says what and
    /// where.</exception>
    internal static Notebook Load(string path, INotebookReader reader)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (string.IsNullOrWhiteSpace(path))
            throw new NotebookInputException(["No file is named. Accepted: a notebook, such as \"03-the-cold.ipynb\"."]);
        var full = Path.GetFullPath(path);
        if (!File.Exists(full))
            throw new NotebookInputException([$"There is no notebook \"{path}\".{Nearest(full)}"]);
        try
        {
            var (content, problems) = TextFile.TryRead(full, LargestBytes);
            if (content is null)
                throw new NotebookInputException([.. problems.Select(problem => $"{path}: {problem.Problem}")]);
            var root = JsonNode.Parse(content);
            if (root?["cells"] is not JsonArray cells || root["nbformat"]?.GetValue<int>() is not 4)
                throw new NotebookInputException(
                    [$"{path}: this is no notebook: it needs \"nbformat\": 4 and a list \"cells\"."]);
            return new Notebook(
                full, [.. cells.Select((cell, i) => ReadCell(cell ?? throw new FormatException("an empty one"), i + 1))],
                root["metadata"]?["rigscenarios"], reader);
        }
        catch (JsonException e)
        {
            throw new NotebookInputException(
                [$"{path}, line {e.LineNumber + 1}: the file is not readable as a notebook (its JSON is broken there)."]);
        }
        catch (Exception e) when (e is InvalidOperationException or FormatException)
        {
            throw new NotebookInputException([$"{path}: a cell of this notebook is not as the format wants it: {e.Message}"]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new NotebookInputException([$"{path}: the file cannot be read: {e.Message}"]);
        }
    }

    /// <summary>One of its text cells as HTML.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="addressOf">The address of another notebook's page by that notebook's path without ending; null for a file
    /// beside this page.</param>
    internal string ProseHtml(NotebookCell cell, Func<string, string>? addressOf = null) =>
        reader.Prose(cell, Path.GetDirectoryName(FilePath)!, addressOf ?? (name => name + ".html"));

    private static NotebookCell ReadCell(JsonNode cell, int number)
    {
        var kind = cell["cell_type"]?.GetValue<string>() switch
        {
            "markdown" => CellKind.Prose,
            "code" => CellKind.Code,
            _ => CellKind.Other,
        };
        var text = cell["source"] switch
        {
            JsonArray lines => string.Concat(lines.Select(line => line?.GetValue<string>())),
            { } whole => whole.GetValue<string>(),
            null => "",
        };
        var tags = cell["metadata"]?["tags"] is JsonArray list ? list.Select(tag => tag?.GetValue<string>() ?? "").ToList() : [];
        return new NotebookCell(number, kind, text.ReplaceLineEndings("\n"), tags);
    }

    // Only a picture below the notebook's own folder: a notebook from elsewhere must not show other files of the machine.
    private string? FindPicture(string name)
    {
        var folder = Path.GetDirectoryName(FilePath)! + Path.DirectorySeparatorChar;
        var full = Path.GetFullPath(name, folder);
        return full.StartsWith(folder, StringComparison.Ordinal) && Path.GetExtension(full) is ".svg" or ".png"
            && new FileInfo(full) is { Exists: true, LinkTarget: null } ? full : null;
    }

    private string FindTitle() =>
        Cells.Where(cell => cell.Kind == CellKind.Prose).Select(cell => Heading().Match(cell.Text))
            .FirstOrDefault(match => match.Success)
            ?.Groups["text"].Value.Trim() ?? Path.GetFileNameWithoutExtension(FilePath);

    private static string Nearest(string path)
    {
        var folder = Path.GetDirectoryName(path)!;
        if (!Directory.Exists(folder))
            return "";
        var names = Directory.EnumerateFiles(folder, "*.ipynb").Select(file => Path.GetFileName(file))
            .Order(StringComparer.Ordinal).ToList();
        return names.Count == 0 ? "" : $" In that folder: {string.Join(", ", names)}.";
    }

    [GeneratedRegex(@"^#\s+(?<text>.+)$", RegexOptions.Multiline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Heading();
}
