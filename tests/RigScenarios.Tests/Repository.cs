using System.Runtime.CompilerServices;

namespace RigScenarios.Tests;

/// <summary>Where the files stand that tests read: beside this source file.</summary>
internal static class Repository
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Here(), "..", ".."));

    /// <summary>Set to 1 to write snapshots and published schemas anew instead of comparing with them.</summary>
    public static bool Accept => Environment.GetEnvironmentVariable("RIGSCENARIOS_ACCEPT") == "1";

    public static string TestData(string name) => Path.Combine(Root, "tests", "RigScenarios.Tests", "data", name);

    public static string Data(params string[] names) => Path.Combine([Root, "data", .. names]);

    public static IReadOnlyList<string> ScenarioFiles { get; } = [.. Directory.GetFiles(Data("scenarios"), "*.yaml")
        .Order(StringComparer.Ordinal)];

    public static IReadOnlyList<string> PartsFiles { get; } = [.. Directory.GetFiles(Data("parts"), "*.yaml")
        .Order(StringComparer.Ordinal)];

    private static string Here([CallerFilePath] string file = "") => Path.GetDirectoryName(file)!;
}

internal static class StrictSnapshots
{
    /// <summary>Without this a missing snapshot would be created and the test would pass.</summary>
    [ModuleInitializer]
    internal static void Demand()
    {
        Environment.SetEnvironmentVariable("SNAPSHOOTER_STRICT_MODE", Repository.Accept ? "off" : "on");
        if (!Repository.Accept)
            return;
        foreach (var snapshot in Directory.GetFiles(Path.Combine(Repository.Root, "tests", "RigScenarios.Tests"), "*.snap",
            SearchOption.AllDirectories))
            File.Delete(snapshot);
    }
}
