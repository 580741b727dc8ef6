using RigScenarios.Files;

namespace RigScenarios.Requests.OwnFiles;

/// <summary>
/// The scenario files of one folder by their names. A name is a name and never a path: what isn't a plain file name of a
/// few harmless characters doesn't exist, and a link that leads out of the folder isn't followed.
/// </summary>
internal sealed class NamedFolder(string folder)
{
    /// <summary>What a name may be, for messages.</summary>
    public const string Accepted =
        "letters, digits, spaces, dots, hyphens and underscores, at most 80, ending in .yaml; such as my-rig.yaml";

    private const int Most = 500;

    private readonly string realFolder = RealPath.Of(folder);

    /// <summary>The names of the files, in order.</summary>
    public IReadOnlyList<string> Names() =>
    [
        .. Directory.EnumerateFiles(folder).Select(file => Path.GetFileName(file)).Where(name => IsName(name) && Holds(name))
            .Order(StringComparer.OrdinalIgnoreCase).Take(Most),
    ];

    /// <summary>The full path of a file that is there; null for any other name.</summary>
    public string? Find(string name) => IsName(name) && Holds(name) ? Path.Combine(folder, name) : null;

    /// <summary>The full path for a file to be written; null if the name is no name, or taken by something that isn't such a
    /// file.</summary>
    public string? Place(string name)
    {
        if (!IsName(name))
            return null;
        var path = Path.Combine(folder, name);
        var taken = Path.Exists(path) || new FileInfo(path).LinkTarget is not null;
        return !taken || Holds(name) ? path : null;
    }

    public static bool IsName(string name) => ScenarioFileName.Is(name);

    // A link is followed to its end; a file counts only if that end lies in this very folder.
    private bool Holds(string name)
    {
        var file = new FileInfo(Path.Combine(folder, name));
        if (!file.Exists)
            return false;
        try
        {
            return PlainFile.IsAt(file.FullName)
                && (file.LinkTarget is null || (file.ResolveLinkTarget(returnFinalTarget: true) is FileInfo { Exists: true } end
                && RealPath.Of(end.DirectoryName!) == realFolder));
        }
        catch (IOException)
        {
            // A circle of links.
            return false;
        }
    }
}
