using System.Reflection;

namespace RigScenarios.Browser.Files;

/// <summary>Where files lie in the browser: a file system in its memory, empty at each start.</summary>
internal static class Folders
{
    /// <summary>The reader's own files.</summary>
    public const string Own = "/own";

    /// <summary>What came with the program: <c>parts</c> and <c>scenarios</c>.</summary>
    public const string Data = "/data";

    /// <summary>Makes the folders, and writes the parts library and the demos into theirs.</summary>
    public static void Fill()
    {
        Directory.CreateDirectory(Own);
        var program = Assembly.GetExecutingAssembly();
        foreach (var name in program.GetManifestResourceNames())
        {
            var path = Path.Combine(Data, name);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            using var from = program.GetManifestResourceStream(name)!;
            using var to = File.Create(path);
            from.CopyTo(to);
        }
    }
}
