using System.Text.RegularExpressions;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Scripts;

/// <summary>The page's scripts: their types (from comments), the rules of the linter, and the unit tests of what has
/// logic.</summary>
public sealed partial class ScriptTests
{
    // What is held to both.
    private static readonly string[] Folders =
    [
        Path.Combine(Checkout.Root, "src", "RigScenarios.Page", "site"),
        Path.Combine(Checkout.Root, "src", "RigScenarios.Charts", "Pages"),
        Path.Combine(Checkout.Root, "src", "RigScenarios.Browser", "wwwroot"),
        NodeProgram.Folder,
    ];

    [Fact]
    public async Task The_types_fit()
    {
        var (code, told) = await NodeProgram.RunPackageAsync("typescript", "bin/tsc", "-p", ".", "--pretty", "false");
        Assert.True(code == 0, told);
        // What the settings leave out is not looked at.
        var (_, files) = await NodeProgram.RunPackageAsync("typescript", "bin/tsc", "-p", ".", "--listFilesOnly");
        var looked = files.Split('\n').Select(file => file.Trim()).Where(file => file.Length > 0)
            .Select(Path.GetFullPath).ToHashSet(StringComparer.Ordinal);
        Each.Of(Scripts(), script => Assert.Contains(script, looked), atLeast: 50);
    }

    [Fact]
    public async Task The_linter_finds_nothing()
    {
        var (code, told) = await NodeProgram.RunPackageAsync("@biomejs/biome", "bin/biome", ["lint", "--config-path=.",
            "--error-on-warnings", "--max-diagnostics=none", "--colors=off", .. Folders]);
        Assert.True(code == 0, told);
        var files = Folders.SelectMany(folder => Directory.GetFiles(folder, "*", SearchOption.AllDirectories))
            .Count(file => Path.GetExtension(file) is ".js" or ".css" or ".html" or ".svg" or ".ts" or ".json" or ".jsonc"
                    or ".webmanifest"
                && Path.GetFileName(file) != "package-lock.json"
                && !IsOfOthers(file));
        Assert.Equal(files, Count(CheckedFiles(), told));
    }

    // They need Node.js and none of the packages.
    [Fact]
    public async Task Their_own_tests_pass()
    {
        var (code, told) = await NodeProgram.RunAsync("--test", "--test-reporter=tap");
        Assert.True(code == 0,
            string.Join('\n', told.Split('\n').Where(line => !line.StartsWith("ok ", StringComparison.Ordinal))));
        Assert.True(Count(Passed(), told) >= 110, told);
    }

    private static int Count(Regex count, string told) =>
        int.Parse(count.Match(told).Groups["count"].Value, System.Globalization.CultureInfo.InvariantCulture);

    private static IEnumerable<string> Scripts() =>
        Folders.SkipLast(1).SelectMany(folder => Directory.GetFiles(folder, "*.js", SearchOption.AllDirectories))
            .Where(file => !IsOfOthers(file));

    // As their makers publish them.
    private static bool IsOfOthers(string file) =>
        file.Split(Path.DirectorySeparatorChar).Any(part => part is "node_modules" or "plotly" or "fzstd");

    [GeneratedRegex(@"Checked (?<count>\d+) files?", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex CheckedFiles();

    [GeneratedRegex(@"^# pass (?<count>\d+)",
        RegexOptions.ExplicitCapture | RegexOptions.Multiline | RegexOptions.CultureInvariant,
        1000)]
    private static partial Regex Passed();
}
