using RigScenarios.Files;

namespace RigScenarios.Page.Folder;

/// <summary>Writes a folder so that nobody ever sees a part of it, and so that no folder of somebody else's is lost.</summary>
public static class WholeFolder
{
    private const string Temporary = ".rigscenarios-";

    private static readonly TimeSpan Old = TimeSpan.FromHours(1);

    /// <summary>Why the folder may not be written there, in one sentence; null where it may: where nothing stands, where an empty
    /// folder stands, and where an earlier one of the same kind stands, to which nothing was added.</summary>
    /// <param name="path">The folder.</param>
    public static string? Problem(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (string.IsNullOrWhiteSpace(path))
            return "No folder is named.";
        try
        {
            var target = RealPath.Of(Path.GetFullPath(path));
            if (target == Path.GetPathRoot(target))
                return "This is the root of a disk.";
            if (FileOnTheWay(target) is { } file)
                return file == target ? "This is a file and no folder."
                    : $"\"{file}\" is a file and no folder, so nothing can be written into it.";
            if (Directory.Exists(target) && RealPath.IsInside(RealPath.Of(Environment.CurrentDirectory), target))
                return "This is the folder that you are in, or one around it; it is replaced as a whole.";
            return Directory.Exists(target) ? FolderList.Foreign(target) is { } foreign
                ? $"There is something of somebody else's in it ({foreign}); it would be lost." : null : null;
        }
        catch (Exception exception) when (exception is IOException or ArgumentException or NotSupportedException
            or UnauthorizedAccessException)
        {
            return $"This can't be the name of a folder: {exception.Message}";
        }
    }

    /// <summary>
    /// Writes the folder: under a temporary name beside its place, then moved there. What stood there stays until the new one is
    /// whole. A link is followed, and stays one.
    /// </summary>
    /// <param name="path">The folder.</param>
    /// <param name="files">Its files by their paths, with "/" between the steps.</param>
    /// <param name="cancellation">Gives up; nothing is left behind.</param>
    /// <exception cref="IOException">It can't be written there.</exception>
    /// <exception cref="UnauthorizedAccessException">Nothing may be written there.</exception>
    public static void Write(string path, IReadOnlyDictionary<string, byte[]> files, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(files);
        if (Problem(path) is { } problem)
            throw new IOException($"{path}: {problem}");
        var target = RealPath.Of(Path.GetFullPath(path));
        var around = Path.GetDirectoryName(target)!;
        var made = NewIn(around);
        try
        {
            Directory.CreateDirectory(made);
            foreach (var (name, content) in files)
            {
                cancellation.ThrowIfCancellationRequested();
                var file = Path.Combine([made, .. name.Split('/')]);
                Directory.CreateDirectory(Path.GetDirectoryName(file)!);
                File.WriteAllBytes(file, content);
            }
            cancellation.ThrowIfCancellationRequested();
            RemoveOld(around, new DateTimeOffset(Directory.GetLastWriteTimeUtc(made)));
            Exchange(made, target);
        }
        catch (Exception exception) when (exception is UnauthorizedAccessException or FileNotFoundException
            or DirectoryNotFoundException)
        {
            throw new UnauthorizedAccessException($"{path}: nothing can be written there.", exception);
        }
        finally
        {
            if (Directory.Exists(made))
                Directory.Delete(made, recursive: true);
        }
    }

    // A folder can't be moved over another: for a moment neither is there, and a failure puts the old one back.
    private static void Exchange(string made, string target)
    {
        if (!Directory.Exists(target))
        {
            Directory.Move(made, target);
            return;
        }
        var old = NewIn(Path.GetDirectoryName(target)!);
        Directory.Move(target, old);
        try
        {
            Directory.Move(made, target);
        }
        catch
        {
            Directory.Move(old, target);
            throw;
        }
        Directory.Delete(old, recursive: true);
    }

    private static string NewIn(string folder) => Path.Combine(folder, $"{Temporary}{Path.GetRandomFileName()}.part");

    private static void RemoveOld(string around, DateTimeOffset now)
    {
        try
        {
            foreach (var folder in new DirectoryInfo(around).EnumerateDirectories($"{Temporary}*.part"))
            {
                if (folder.LinkTarget is null && folder.LastWriteTimeUtc < now.UtcDateTime - Old)
                    folder.Delete(recursive: true);
            }
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // What a killed run left is in nobody's way.
        }
    }

    private static string? FileOnTheWay(string target)
    {
        for (var step = target; step is not null; step = Path.GetDirectoryName(step))
        {
            if (Directory.Exists(step))
                return null;
            if (Path.Exists(step))
                return step;
        }
        return null;
    }
}
