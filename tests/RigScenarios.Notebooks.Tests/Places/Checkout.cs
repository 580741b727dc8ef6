using System.Runtime.CompilerServices;

namespace RigScenarios.Notebooks.Tests.Places;

/// <summary>Where things lie in the checkout, found from this file's own place.</summary>
internal static class Checkout
{
    public static string Root { get; } = Find();

    public static string TestNotebook(string name) =>
        Path.Combine(Root, "tests", "RigScenarios.Notebooks.Tests", "TestNotebooks", name);

    /// <summary>The notebooks that people get, after the trial one and that of results.</summary>
    public static IReadOnlyList<string> Notebooks
    {
        get
        {
            var folder = Path.Combine(Root, "notebooks");
            var committed = Directory.Exists(folder) ? Directory.EnumerateFiles(folder, "*.ipynb") : [];
            return [TestNotebook("trial.ipynb"), TestNotebook("results.ipynb"), .. committed.Order(StringComparer.Ordinal)];
        }
    }

    private static string Find([CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));
}
