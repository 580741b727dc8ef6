using System.Text.RegularExpressions;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Scripts;

/// <summary>The page's scripts: their types (from comments), the rules of the linter, and the unit tests of what has
/// logic.</summary>
public sealed partial class ScriptTests
{
    // The folders of the site that are held to both so far.
    private static readonly string[] Folders = ["shared", "file", "shelf"];

    private static string Site { get; } = Path.Combine(Checkout.Root, "src", "RigScenarios.Page", "site");

    [Fact]
    public async Task The_types_fit()
    {
        var (code, told) = await NodeProgram.RunPackageAsync("typescript", "bin/tsc", "-p", ".", "--pretty", "false");
        Assert.True(code == 0, told);
        // What the settings leave out is not looked at.
        var (_, files) = await NodeProgram.RunPackageAsync("typescript", "bin/tsc", "-p", ".", "--listFilesOnly");
        var looked = files.Split('\n').Select(file => file.Trim()).Where(file => file.Length > 0)
            .Select(Path.GetFullPath).ToHashSet(StringComparer.Ordinal);
        Each.Of(Scripts(), script => Assert.Contains(script, looked), atLeast: 20);
    }

    [Fact]
    public async Task The_linter_finds_nothing()
    {
        var (code, told) = await NodeProgram.RunPackageAsync("@biomejs/biome", "bin/biome", ["lint", "--config-path=.",
            "--error-on-warnings", "--max-diagnostics=none", "--colors=off",
            .. Folders.Select(folder => Path.Combine(Site, folder))]);
        Assert.True(code == 0, told);
        var files = Folders.SelectMany(folder => Directory.GetFiles(Path.Combine(Site, folder))).Count();
        var checkedFiles = int.Parse(CheckedFiles().Match(told).Groups["count"].Value,
            System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(files, checkedFiles);
    }

    private static IEnumerable<string> Scripts() =>
        Folders.SelectMany(folder => Directory.GetFiles(Path.Combine(Site, folder), "*.js"));

    [GeneratedRegex(@"Checked (?<count>\d+) files?", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex CheckedFiles();
}
