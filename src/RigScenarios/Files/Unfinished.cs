using System.Text.RegularExpressions;

namespace RigScenarios.Files;

/// <summary>Files that are being written, under names of their own until they are whole. One is left behind where the program
/// was killed meanwhile.</summary>
public static partial class Unfinished
{
    /// <summary>Writing a file takes less than a second, so that one of this age belongs to nobody any more.</summary>
    private static readonly TimeSpan Old = TimeSpan.FromHours(1);

    /// <summary>A name that no other program gives to its files, in the folder of the file that it becomes.</summary>
    internal static string NewIn(string folder) => Path.Combine(folder, $".rigscenarios-{Path.GetRandomFileName()}.part");

    /// <summary>Removes what killed runs left in a folder: only files of this program's own names, and only old ones.</summary>
    /// <param name="folder">The folder. Nothing happens where there is none.</param>
    /// <param name="now">The time now.</param>
    public static void RemoveFrom(string folder, DateTimeOffset now)
    {
        try
        {
            foreach (var path in Directory.EnumerateFiles(folder, ".rigscenarios-*.part"))
            {
                var file = new FileInfo(path);
                if (Name().IsMatch(file.Name) && file.LinkTarget is null && file.LastWriteTimeUtc < now.UtcDateTime - Old
                    && PlainFile.IsAt(path))
                    file.Delete();
            }
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // Somebody else's folder, or another run that removes the same: nobody waits for this.
        }
    }

    [GeneratedRegex(@"^\.rigscenarios-[a-z0-9]{8}\.[a-z0-9]{3}\.part\z", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Name();
}
