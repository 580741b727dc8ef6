using System.Runtime.InteropServices.JavaScript;
using RigScenarios.Benchmarks.Cases.Sets;

/// <summary>The door of the program: files are put into the browser's own file system, and a set of cases is answered from
/// them.</summary>
public static partial class Program
{
    public static void Main()
    {
        // The page asks; nothing is done at the start.
    }

    [JSExport]
    internal static void Put(string path, byte[] bytes)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, bytes);
    }

    [JSExport]
    internal static string Answer(string name) =>
        CaseSet.All.First(set => set.Name == name) is var set ? set.Answer($"/{set.Path}").ToJsonString() : "";
}
