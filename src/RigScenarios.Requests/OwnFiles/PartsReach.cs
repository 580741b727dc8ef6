using RigScenarios.Files;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Requests.OwnFiles;

/// <summary>
/// Which parts files a text that came from a page may name. A scenario file may name any file of the machine, and reading it
/// tells what stands there; a page may reach the given folders only, and what the file on disk named before.
/// </summary>
internal sealed class PartsReach(params IReadOnlyList<string> folders)
{
    private readonly IReadOnlyList<string> real = [.. folders.Select(RealPath.Of)];

    /// <summary>What the text names that it may not; nothing of it has been looked for.</summary>
    /// <param name="text">The text.</param>
    /// <param name="path">The file it is meant for: parts are named from its folder.</param>
    /// <param name="before">What that file says now; null where there is none.</param>
    public IReadOnlyList<Problem> Problems(string text, string path, string? before)
    {
        // What a file says already may stay.
        if (text == before)
            return [];
        var names = ScenarioFile.PartsFrom(text);
        if (names.Count == 0)
            return [];
        var known = before is null ? [] : ScenarioFile.PartsFrom(before);
        return
        [
            .. names.Select((name, i) => (name, i)).Where(item => !known.Contains(item.name)
                && !IsWithin(item.name, Path.GetDirectoryName(path)!))
                .Select(item => new Problem(
                    $"The parts \"{item.name}\" lie outside of the folders that this page may read.",
                    $"parts-from.{item.i + 1}",
                    "parts files in the folder of your rigs, or those that came with the program; others can be named in a "
                        + "text editor, outside of this page")),
        ];
    }

    private bool IsWithin(string name, string folder)
    {
        try
        {
            var path = RealPath.Of(Path.GetFullPath(name, folder));
            // Of a folder all its parts files are read, and any of them may be a link that leads out of it.
            IEnumerable<string> reached = Directory.Exists(path) ? [path, .. Directory.EnumerateFiles(path).Select(RealPath.Of)]
                : [path];
            return reached.All(file => real.Any(given => RealPath.IsInside(file, given)));
        }
        catch (Exception exception) when (exception is ArgumentException or IOException or UnauthorizedAccessException
            or NotSupportedException)
        {
            return false;
        }
    }
}
