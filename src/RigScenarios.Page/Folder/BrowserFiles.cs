namespace RigScenarios.Page.Folder;

/// <summary>The files of a published browser build that a browser loads: one archive with the library and the runtime, and the
/// scripts that start them.</summary>
internal static class BrowserFiles
{
    // Scripts of others: the runtime's, and the one that unpacks.
    private const string Framework = "_framework", Unpacker = "fzstd";

    private static readonly string[] Needed = ["boot.js", "library.bin", $"{Unpacker}/fzstd-0.1.1.js",
        $"{Framework}/dotnet.js", $"{Framework}/dotnet.native.js", $"{Framework}/dotnet.runtime.js"];

    /// <summary>The paths of the files, relative to the folder, with "/" between.</summary>
    /// <param name="folder">The folder that was published.</param>
    /// <exception cref="IOException">It is no published browser build, or a file of it is missing.</exception>
    public static IReadOnlyList<string> In(string folder)
    {
        if (Needed.FirstOrDefault(file => !File.Exists(Path.Combine(folder, file))) is { } missing)
            throw new IOException($"{folder} is no whole browser build: {missing} is missing.");
        // What compresses each file once more, or maps scripts for those who debug them, is of no use on a plain server.
        return [.. Files(folder, "", ".js", ".bin").Concat(Files(folder, Framework + "/", ".js"))
            .Concat(Files(folder, Unpacker + "/", ".js")).Order(StringComparer.Ordinal)];
    }

    private static IEnumerable<string> Files(string folder, string below, params string[] endings) =>
        Directory.EnumerateFiles(Path.Combine(folder, below)).Select(file => Path.GetFileName(file))
            .Where(name => endings.Contains(Path.GetExtension(name), StringComparer.Ordinal)).Select(name => below + name);
}
