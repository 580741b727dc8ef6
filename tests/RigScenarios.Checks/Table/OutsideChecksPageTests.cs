using System.Runtime.CompilerServices;

namespace RigScenarios.Checks.Table;

/// <summary>Each check names what it rests on and how that was read, and the page in docs counts them as they are.</summary>
public class OutsideChecksPageTests
{
    /// <summary>Kinds whose figures stand somewhere to be read.</summary>
    private static readonly SourceKind[] Published = [SourceKind.Standard, SourceKind.Regulation, SourceKind.Handbook,
        SourceKind.Paper, SourceKind.DataSheet, SourceKind.OpenData];

    private static readonly string[] Standings = ["read", "second-hand", "from memory"];

    [Fact]
    public async Task Every_check_names_its_source()
    {
        var bare = (await OutsideCheck.AllAsync()).Where(check => check.Sources.Count == 0)
            .Select(check => $"{check.Room}: {check.Name}");
        Assert.True(!bare.Any(),
            "These tests have no [Source], nor has their class; a test without a source from outside belongs to "
            + $"tests/RigScenarios.Tests:\n{string.Join('\n', bare)}");
    }

    [Fact]
    public async Task Every_source_that_can_be_read_says_how_it_was_read()
    {
        var silent = (await OutsideCheck.AllAsync()).SelectMany(check => check.Sources)
            .Where(source => Published.Contains(source.Kind)
                && !Standings.Any(word => source.Citation.Contains(word, StringComparison.OrdinalIgnoreCase)))
            .Select(source => source.Citation).Distinct();
        Assert.True(!silent.Any(), "Say \"read\", \"second-hand\" or \"from memory\" in each of these:\n"
            + string.Join('\n', silent));
    }

    [Fact]
    public async Task The_page_is_the_one_that_the_command_makes()
    {
        var path = Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", "..", OutsideChecksPage.Path);
        var text = OutsideChecksPage.Text(await OutsideCheck.AllAsync());
        Assert.True(text == await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken),
            $"{OutsideChecksPage.Path} is not what the checks are now; make it anew: {OutsideChecksPage.Command}");
    }

    private static string Here([CallerFilePath] string file = "") => file;
}
