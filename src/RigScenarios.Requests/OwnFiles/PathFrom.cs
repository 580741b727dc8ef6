namespace RigScenarios.Requests.OwnFiles;

/// <summary>A path as it is written from a folder, with slashes, as files and commands name it on any system.</summary>
internal static class PathFrom
{
    // A path that climbs further breaks as soon as either end is moved, and nobody can read it.
    private const string TooHigh = "../../../../";

    /// <param name="folder">The folder, with its full path.</param>
    /// <param name="path">The full path.</param>
    /// <returns>The path from the folder; the full path where the two have little in common.</returns>
    public static string Of(string folder, string path)
    {
        var relative = Path.GetRelativePath(folder, path).Replace('\\', '/');
        return Path.IsPathRooted(relative) || relative.StartsWith(TooHigh, StringComparison.Ordinal)
            ? path.Replace('\\', '/') : relative;
    }
}
