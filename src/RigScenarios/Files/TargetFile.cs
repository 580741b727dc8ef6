namespace RigScenarios.Files;

/// <summary>Where something may be written: a new file, or a plain one that is there, and never one that it was made
/// from.</summary>
public static class TargetFile
{
    private static readonly StringComparison Names = OperatingSystem.IsWindows() || OperatingSystem.IsMacOS()
        ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal;

    /// <summary>Why nothing may be written there, in one sentence; null where it may.</summary>
    /// <param name="path">The file, which need not exist. Links are followed.</param>
    /// <param name="inputs">Files that must stay: what is written comes from them.</param>
    public static string? Problem(string path, params IEnumerable<string> inputs)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(inputs);
        if (string.IsNullOrWhiteSpace(path))
            return TextFile.NoName;
        if (Path.EndsInDirectorySeparator(path))
            return "This names a folder; the name of a file is needed.";
        try
        {
            var target = RealPath.Of(Path.GetFullPath(path));
            if (Directory.Exists(target))
                return "This is a folder; the name of a file is needed.";
            if (Path.Exists(target) && !PlainFile.IsAt(target))
                return PlainFile.NoPlainFile;
            if (FileAmongFolders(target) is { } file)
                return $"\"{file}\" is a file and no folder, so nothing can be written into it.";
            return inputs.Any(input => string.Equals(RealPath.Of(Path.GetFullPath(input)), target, Names))
                ? "This is one of the files that are read for it; it would be lost." : null;
        }
        catch (Exception exception) when (exception is IOException or ArgumentException or NotSupportedException
            or UnauthorizedAccessException)
        {
            return $"This can't be the name of a file: {exception.Message}";
        }
    }

    private static string? FileAmongFolders(string target)
    {
        for (var folder = Path.GetDirectoryName(target); folder is not null; folder = Path.GetDirectoryName(folder))
        {
            if (Directory.Exists(folder))
                return null;
            if (Path.Exists(folder))
                return folder;
        }
        return null;
    }
}
