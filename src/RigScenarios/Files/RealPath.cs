namespace RigScenarios.Files;

/// <summary>Where a path leads in the end, when every link on the way is followed.</summary>
public static class RealPath
{
    private const int MostLinks = 40;

    /// <summary>The end of a path.</summary>
    /// <param name="path">A full path; what doesn't exist counts as no link.</param>
    /// <exception cref="IOException">The links go in a circle.</exception>
    public static string Of(string path) => Of(path, 0);

    /// <summary>Whether a path is a folder or lies somewhere inside it. Both are real paths.</summary>
    /// <param name="path">The path.</param>
    /// <param name="folder">The folder.</param>
    public static bool IsInside(string path, string folder) =>
        path == folder || path.StartsWith(Path.EndsInDirectorySeparator(folder) ? folder : folder + Path.DirectorySeparatorChar,
            StringComparison.Ordinal);

    private static string Of(string path, int depth)
    {
        if (depth > MostLinks)
            throw new IOException("The path leads through a circle of links.");
        var real = Path.GetPathRoot(path)!;
        foreach (var step in Path.GetFullPath(path)[real.Length..]
            .Split(Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries))
        {
            var next = new FileInfo(Path.Combine(real, step));
            real = next.LinkTarget is { } target ? Of(Path.GetFullPath(target, real), depth + 1) : next.FullName;
        }
        return Path.TrimEndingDirectorySeparator(real);
    }
}
