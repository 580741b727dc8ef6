using System.Security.Cryptography;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace RigScenarios.Page.Folder;

/// <summary>
/// The list of a folder's files, which lies in it: by it a folder of ours is known, each of its files can be held against its
/// mark, and its version is named.
/// </summary>
internal static class FolderList
{
    /// <summary>The list's own name.</summary>
    public const string Name = "rigscenarios-files.json";

    private static readonly JsonSerializerOptions Readable = new()
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>A mark of a file's content, as browsers check it.</summary>
    public static string MarkOf(byte[] content) => $"sha256-{Convert.ToBase64String(SHA256.HashData(content))}";

    /// <summary>The list as a file.</summary>
    /// <param name="version">The program's version.</param>
    /// <param name="mark">The mark of all files together.</param>
    /// <param name="files">The files by their paths.</param>
    public static byte[] Of(string version, string mark, IReadOnlyDictionary<string, byte[]> files)
    {
        var list = new JsonObject();
        foreach (var (name, content) in files)
            list[name] = MarkOf(content);
        return JsonSerializer.SerializeToUtf8Bytes(new JsonObject
        {
            ["program"] = "RigScenarios",
            ["version"] = version,
            ["mark"] = mark,
            ["files"] = list,
        }, Readable);
    }

    /// <summary>Something in a folder that is not of ours, by its name; null where all of it is, or nothing is in it.</summary>
    /// <exception cref="IOException">The folder can't be read.</exception>
    public static string? Foreign(string folder)
    {
        var own = Read(Path.Combine(folder, Name));
        foreach (var entry in Directory.EnumerateFileSystemEntries(folder, "*", new EnumerationOptions
        { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None, IgnoreInaccessible = false }))
        {
            var name = Path.GetRelativePath(folder, entry).Replace(Path.DirectorySeparatorChar, '/');
            var isOwn = name == Name ? own is not null : own is not null && (own.Contains(name)
                || (Directory.Exists(entry) && new DirectoryInfo(entry).LinkTarget is null
                    && own.Any(file => file.StartsWith(name + "/", StringComparison.Ordinal))));
            if (!isOwn)
                return name;
        }
        return null;
    }

    private static HashSet<string>? Read(string path)
    {
        try
        {
            return File.Exists(path) && JsonNode.Parse(File.ReadAllBytes(path)) is JsonObject list
                && list["program"]?.ToString() == "RigScenarios" && list["files"] is JsonObject files
                ? [.. files.Select(file => file.Key)] : null;
        }
        catch (Exception exception) when (exception is JsonException or InvalidOperationException)
        {
            return null;
        }
    }
}
