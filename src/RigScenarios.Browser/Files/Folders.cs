using System.Reflection;

namespace RigScenarios.Browser.Files;

/// <summary>Where files lie in the browser: a file system in its memory, empty at each start.</summary>
internal static class Folders
{
    /// <summary>The reader's own files.</summary>
    public const string Own = "/own";

    /// <summary>What came with the program: <c>parts</c> and <c>scenarios</c>.</summary>
    public const string Data = "/data";

    /// <summary>The notebooks; beside the data, because their cells name files as seen from here.</summary>
    public const string Notebooks = "/notebooks";

    /// <summary>What is kept of notebooks that were compiled; not there where none were.</summary>
    public const string Cells = "/cells";

    /// <summary>Makes the folders, and writes what came along into theirs.</summary>
    public static void Fill()
    {
        Directory.CreateDirectory(Own);
        Directory.CreateDirectory(Notebooks);
        var program = Assembly.GetExecutingAssembly();
        foreach (var name in program.GetManifestResourceNames())
        {
            var path = "/" + name;
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            using var from = program.GetManifestResourceStream(name)!;
            using var to = File.Create(path);
            from.CopyTo(to);
        }
    }
}
