namespace RigScenarios.Tests.House;

/// <summary>The files of text that the rules of the house hold for, wherever they lie.</summary>
internal static class SourceFiles
{
    /// <summary>C# of the library and its programs.</summary>
    public static IReadOnlyList<string> OfSource { get; } = Of("src", "*.cs");

    /// <summary>C# of tests and benchmarks.</summary>
    public static IReadOnlyList<string> OfTests { get; } = Of("tests", "*.cs");

    /// <summary>Scripts of tests.</summary>
    public static IReadOnlyList<string> OfTestScripts { get; } = [.. Of("tests", "*.js"), .. Of("tests", "*.ts")];

    /// <summary>What pages are made of.</summary>
    public static IReadOnlyList<string> OfPages { get; } = [.. Of("src", "*.js"), .. Of("src", "*.css"), .. Of("src", "*.html")];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [.. OfSource, .. OfTests, .. OfTestScripts, .. OfPages];

    private static List<string> Of(string folder, string pattern) =>
        [.. Directory.GetFiles(Path.Combine(Repository.Root, folder), pattern, SearchOption.AllDirectories)
            .Where(file => !file.Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj" or "node_modules"
                // As their makers publish them.
                or "plotly" or "fzstd"))
                .Order(StringComparer.Ordinal)];
}
