using System.Text.RegularExpressions;
using RigScenarios.Files;

namespace RigScenarios.Notebooks.Parameters;

/// <summary>A folder whose scenario files readers may choose, under a short name: <c>own/my-rig.yaml</c>.</summary>
/// <param name="Name">The short name.</param>
/// <param name="Path">The folder, with its full path.</param>
public sealed partial record ScenarioFolder(string Name, string Path)
{
    private const int MostFiles = 200;

    /// <summary>The scenario files in the folder itself, by name.</summary>
    public IReadOnlyList<ParameterChoice> Files()
    {
        if (!Directory.Exists(Path))
            return [];
        return
        [
            .. Directory.EnumerateFiles(Path)
                .Where(file => ScenarioFileName.Is(System.IO.Path.GetFileName(file))
                    && IsInside(System.IO.Path.GetFileName(file)))
                .Order(StringComparer.Ordinal).Take(MostFiles)
                .Select(file => (file, head: Head(file)))
                .Where(item => item.head.Contains("rigscenarios: scenario", StringComparison.Ordinal))
                .Select(item => new ParameterChoice($"{Name}/{System.IO.Path.GetFileName(item.file)}",
                    TitleOf(item.head) ?? System.IO.Path.GetFileName(item.file), System.IO.Path.GetFileName(item.file))),
        ];
    }

    /// <summary>The full path of a file that <see cref="Files"/> would list under this value; null for any other text.</summary>
    internal string? PathOf(string value) =>
        value.StartsWith(Name + "/", StringComparison.Ordinal) && ScenarioFileName.Is(value[(Name.Length + 1)..])
            && IsInside(value[(Name.Length + 1)..])
            ? System.IO.Path.Combine(Path, value[(Name.Length + 1)..])
            : null;

    /// <summary>The value that stands for a file of this folder; null for a file elsewhere.</summary>
    internal string? ValueOf(string fullPath) =>
        string.Equals(System.IO.Path.GetDirectoryName(fullPath), System.IO.Path.TrimEndingDirectorySeparator(Path),
            StringComparison.Ordinal)
            ? $"{Name}/{System.IO.Path.GetFileName(fullPath)}"
            : null;

    // A link in the folder may lead out of it; what it leads to is not for readers of a page.
    private bool IsInside(string name)
    {
        var file = new FileInfo(System.IO.Path.Combine(Path, name));
        try
        {
            return PlainFile.IsAt(file.FullName) && (file.LinkTarget is null
                || ValueOf(file.ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? "") is not null);
        }
        catch (IOException)
        {
            // The links go in a circle.
            return false;
        }
    }

    private static string Head(string file)
    {
        try
        {
            using var reader = new StreamReader(file);
            var buffer = new char[8000];
            return new string(buffer, 0, reader.ReadBlock(buffer));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return "";
        }
    }

    private static string? TitleOf(string head) =>
        Title().Match(head) is { Success: true } match ? match.Groups["title"].Value.Trim().Trim('"', '\'') : null;

    [GeneratedRegex(@"^title:[ \t]*(?<title>[^#\r\n]+)", RegexOptions.Multiline | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000)]
    private static partial Regex Title();
}
