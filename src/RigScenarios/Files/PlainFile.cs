using System.Formats.Tar;

namespace RigScenarios.Files;

/// <summary>
/// Tells plain files from pipes, devices and sockets, without opening anything: opening a pipe waits until somebody writes to it,
/// and a device may never end.
/// </summary>
public static class PlainFile
{
    /// <summary>What is said of a path that leads to something else.</summary>
    public const string NoPlainFile = "This is no plain file but a pipe or a device, and nothing else is read or replaced.";

    /// <summary>Whether a path leads to a plain file, over links if there are some; false where there is nothing.</summary>
    /// <param name="path">The path.</param>
    /// <exception cref="IOException">The links go in a circle.</exception>
    public static bool IsAt(string path)
    {
        var file = new FileInfo(RealPath.Of(Path.GetFullPath(path)));
        // Only plain files have a length; one that holds nothing yet must be told from the others by its kind.
        return file.Exists && (file.Length > 0 || IsPlain(file.FullName));
    }

    /// <summary>The archive's writer is what the runtime has to ask a path for its kind.</summary>
    private static bool IsPlain(string path)
    {
        try
        {
            using var archive = new MemoryStream();
            using (var writer = new TarWriter(archive, TarEntryFormat.Pax, leaveOpen: true))
                writer.WriteEntry(path, "asked");
            archive.Position = 0;
            using var reader = new TarReader(archive);
            return reader.GetNextEntry()?.EntryType == TarEntryType.RegularFile;
        }
        catch (IOException)
        {
            // A socket is of no kind that an archive has.
            return false;
        }
        catch (UnauthorizedAccessException)
        {
            // Only a plain file is opened to be asked, and whoever opens it next is told that it can't be.
            return true;
        }
    }
}
