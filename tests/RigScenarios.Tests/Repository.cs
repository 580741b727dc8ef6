using System.Runtime.CompilerServices;

namespace RigScenarios.Tests;

/// <summary>Where the files stand that tests read: beside this source file.</summary>
internal static class Repository
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Here(), "..", ".."));

    public static string TestData(string name) => Path.Combine(Root, "tests", "RigScenarios.Tests", "data", name);

    public static string Data(params string[] names) => Path.Combine([Root, "data", .. names]);

    public static IReadOnlyList<string> ScenarioFiles { get; } = [.. Directory.GetFiles(Data("scenarios"), "*.yaml")
        .Order(StringComparer.Ordinal)];

    public static IReadOnlyList<string> PartsFiles { get; } = [.. Directory.GetFiles(Data("parts"), "*.yaml")
        .Order(StringComparer.Ordinal)];

    public static IReadOnlyList<string> FieldNotesFiles { get; } = [.. Directory.GetFiles(Data("field-notes"), "*.yaml")
        .Order(StringComparer.Ordinal)];

    private static string Here([CallerFilePath] string file = "") => Path.GetDirectoryName(file)!;
}
