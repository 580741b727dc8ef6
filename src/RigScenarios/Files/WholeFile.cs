namespace RigScenarios.Files;

/// <summary>Writes files of any size so that nobody ever sees a part of one.</summary>
public static class WholeFile
{
    /// <summary>
    /// Writes a file so that a reader sees either the old one or the whole new one: to a temporary name beside it, then moved.
    /// A link is followed, and stays one. What killed runs left in that folder is removed.
    /// </summary>
    /// <param name="path">The file.</param>
    /// <param name="write">Writes into the stream that it is given. Where it throws, the old file stays.</param>
    /// <exception cref="IOException">The file can't be written, or something stands there that is no plain file.</exception>
    /// <exception cref="UnauthorizedAccessException">Nothing can be written into that folder.</exception>
    public static async Task WriteAsync(string path, Func<Stream, Task> write)
    {
        ArgumentNullException.ThrowIfNull(write);
        if (TargetFile.Problem(path) is { } problem)
            throw new IOException($"{path}: {problem}");
        var full = RealPath.Of(Path.GetFullPath(path));
        var folder = Path.GetDirectoryName(full)!;
        Directory.CreateDirectory(folder);
        var temporary = Unfinished.NewIn(folder);
        try
        {
            await WriteThroughAsync(temporary, write);
            KeepMode(full, temporary);
            Unfinished.RemoveFrom(folder, new DateTimeOffset(File.GetLastWriteTimeUtc(temporary)));
            File.Move(temporary, full, overwrite: true);
        }
        catch (Exception exception) when (exception is UnauthorizedAccessException or FileNotFoundException
            or DirectoryNotFoundException)
        {
            throw new UnauthorizedAccessException($"{path}: nothing can be written into that folder.", exception);
        }
        finally
        {
            File.Delete(temporary);
        }
    }

    /// <summary>Whoever may not read the old file may not read the new one either.</summary>
    private static void KeepMode(string old, string temporary)
    {
        if (OperatingSystem.IsWindows() || !File.Exists(old))
            return;
        try
        {
            File.SetUnixFileMode(temporary, File.GetUnixFileMode(old));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // A memory card has no modes to keep.
        }
    }

    private static async Task WriteThroughAsync(string path, Func<Stream, Task> write)
    {
        await using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.ReadWrite);
        try
        {
            await write(stream);
            // Else a loss of power might leave the new name with nothing in it.
            stream.Flush(flushToDisk: true);
        }
        catch (ArgumentOutOfRangeException exception) when (exception.ParamName == "value")
        {
            // In these words .NET tells that the system bounds the size of files.
            throw new IOException("The file is larger than may be written here.", exception);
        }
    }
}
