using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Notebooks.Tests.Domain;

/// <summary>The demo scenarios and notebooks of this repository.</summary>
internal static class DemoData
{
    public static string Root { get; } = FindRoot();

    public static Scenario Harbour { get; } = ScenarioFile.Read(Path.Combine(Root, "data/scenarios/winter-harbour.yaml"));

    public static Scenario TeachingKit { get; } = ScenarioFile.Read(Path.Combine(Root, "data/scenarios/teaching-kit.yaml"));

    public static string NotebookPath(string fileName) => Path.Combine(Root, "notebooks", fileName);

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "RigScenarios.sln")))
            folder = folder.Parent ?? throw new InvalidOperationException("The tests run outside of the repository: "
                + "RigScenarios.sln is not found.");
        return folder.FullName;
    }
}
