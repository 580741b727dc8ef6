using System.Runtime.CompilerServices;

namespace RigScenarios.Notebooks.Tests.Engine;

/// <summary>Notebooks that exist to try the tools, beside this source file.</summary>
internal static class TestNotebook
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Here(), "..", "..", ".."));

    public static Notebook Load(string name) =>
        Notebook.Load(Path.Combine(Root, "tests", "RigScenarios.Notebooks.Tests", "TestNotebooks", name + ".ipynb"));

    private static string Here([CallerFilePath] string file = "") => Path.GetDirectoryName(file)!;
}
