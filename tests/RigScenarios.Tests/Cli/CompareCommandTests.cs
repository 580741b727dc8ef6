using System.Text.Json;
using RigScenarios.Tests.Search.Compare;
using Snapshooter.Xunit3;

namespace RigScenarios.Tests.Cli;

/// <summary>The command that puts rigs side by side: what it prints, writes and refuses.</summary>
[Collection(nameof(ConsoleRun))]
public class CompareCommandTests
{
    private static string Night => Repository.Data("scenarios", "night-dolly.yaml");

    [Fact]
    public async Task The_table_tells_figures_differences_and_what_they_come_from()
    {
        using var folder = new TemporaryFolder();
        var (code, text, error) = await ConsoleRun.RunAsync("compare", Own(folder));
        Assert.Equal((0, ""), (code, error));
        Assert.Contains("Time left after wrap -3 h: the battery -2 h 15 min, lamp -45 min.",
            Plain(text), StringComparison.Ordinal);
        Each.Of(text.ReplaceLineEndings("\n").Split('\n'), line => Assert.True(line.Length <= 100, line));
        Snapshot.Match(text.ReplaceLineEndings("\n"), "CompareCommandTests.table");
    }

    [Fact]
    public async Task Every_field_of_the_json_answer_stands_in_the_documentation()
    {
        using var folder = new TemporaryFolder();
        var (code, text, _) = await ConsoleRun.RunAsync("compare", Own(folder), "--json");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        await DocumentedFields.AssertInAsync("side-by-side.md", json.RootElement, "## For programs");
        var reserve = json.RootElement.GetProperty("figures")[0];
        Assert.Equal("reserve", reserve.GetProperty("figure").GetString());
        Assert.Equal(-180, reserve.GetProperty("differences")[0].GetProperty("difference").GetDouble(), 1);
        Assert.Equal("worse", reserve.GetProperty("differences")[0].GetProperty("stands").GetString());
    }

    [Fact]
    public async Task A_changed_field_is_a_rig_beside_the_base()
    {
        var (code, text, error) = await ConsoleRun.RunAsync("compare", Night, "--builds", "thin-lead", "--quick",
            "--with", "cold: conditions.ambient=-12 °C; days.night.ambient=-12 °C");
        Assert.Equal((0, ""), (code, error));
        Assert.Contains("cold against thin-lead", text, StringComparison.Ordinal);
        Assert.Contains("The rigs do not go through the same days", Plain(text), StringComparison.Ordinal);
        Assert.DoesNotContain("What it comes from", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Several_files_are_told_by_their_names_and_the_table_and_the_page_are_written()
    {
        using var folder = new TemporaryFolder();
        var (table, page) = (Path.Combine(folder.Path, "rigs.csv"), Path.Combine(folder.Path, "rigs.html"));
        var (code, text, error) = await ConsoleRun.RunAsync("compare", Night, Own(folder), "--base", "own/tired", "--quick",
            "--csv", table, "--out", page);
        Assert.Equal((0, ""), (code, error));
        Assert.Contains("own/tired (base)", text, StringComparison.Ordinal);
        var lines = await File.ReadAllLinesAsync(table, TestContext.Current.CancellationToken);
        Assert.StartsWith("row,unit,night-dolly/thin-lead,night-dolly/heavy-lead,own/bare,own/tired,"
            + "night-dolly/thin-lead_difference,",
            lines[0], StringComparison.Ordinal);
        Each.Of(lines, line => Assert.Equal(lines[0].Split(',').Length, line.Split(',').Length), atLeast: 14);
        var html = await File.ReadAllTextAsync(page, TestContext.Current.CancellationToken);
        Assert.Contains("own/bare against own/tired", html, StringComparison.Ordinal);
        Assert.DoesNotContain(folder.Path, html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_files_of_one_name_are_counted_and_a_build_that_is_named_twice_is_one()
    {
        using var one = new TemporaryFolder();
        using var two = new TemporaryFolder();
        var (code, text, error) = await ConsoleRun.RunAsync("compare", Own(one), Own(two), Own(two), "--builds", "bare,bare",
            "--quick");
        Assert.Equal((0, ""), (code, error));
        Each.Of((string[])["own (base)", "own-2:", "own-3:"], name => Assert.Contains(name, text, StringComparison.Ordinal));
        Assert.DoesNotContain(two.Path, text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("There is only one rig to look at.", "--builds", "thin-lead")]
    [InlineData("No file has a build \"thin\". Accepted: thin-lead, heavy-lead", "--builds", "thin")]
    [InlineData("No rig is named \"heavy\".", "--base", "heavy")]
    [InlineData("night-dolly has no day \"nigth\".", "--days", "nigth")]
    [InlineData("Found \"kit.brick.part=brick-98wh\".", "--with", "kit.brick.part=brick-98wh")]
    [InlineData("stands for another rig already", "--with", "thin-lead: conditions.ambient=-12 °C")]
    [InlineData("conditions.ambint", "--with", "cold: conditions.ambint=-12 °C")]
    [InlineData("Rigs and notebooks have such names", "--csv", "rigs.yaml")]
    [InlineData("Rigs and notebooks have such names", "--out", "rigs.ipynb")]
    public async Task What_can_not_be_is_refused_with_what_can(string told, params string[] options)
    {
        var (code, text, error) = await ConsoleRun.RunAsync(["compare", Night, .. options]);
        Assert.Equal((2, ""), (code, text));
        Assert.Contains(told, error, StringComparison.OrdinalIgnoreCase);
        Assert.False(File.Exists("rigs.yaml") || File.Exists("rigs.ipynb"));
    }

    [Fact]
    public async Task The_problems_of_all_files_are_told_at_once()
    {
        using var folder = new TemporaryFolder();
        var (code, _, error) = await ConsoleRun.RunAsync("compare", folder.Write("one.yaml",
            "rigscenarios: scenario 1\ntitel: x\n"),
            folder.Write("two.yaml", "rigscenarios: scenario 1\nbuids: {}\n"));
        Assert.Equal(2, code);
        Assert.Contains("one.yaml", error, StringComparison.Ordinal);
        Assert.Contains("two.yaml", error, StringComparison.Ordinal);
    }

    private static string Own(TemporaryFolder folder) => folder.Write("own.yaml", TwoRigs.Text(
        TwoRigs.Build("bare") + TwoRigs.Build("tired", "camera: {essential: yes}, lamp: {}", "item: flat, charge: 50 %")));

    // Paragraphs are broken into lines; here it is the words that count.
    private static string Plain(string text) => string.Join(' ', text.Split((char[])[' ', '\n', '\r'],
        StringSplitOptions.RemoveEmptyEntries));
}
