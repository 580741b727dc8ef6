using RigScenarios.Files;

namespace RigScenarios.Tests.Cli;

/// <summary>What the commands on tables say and refuse.</summary>
[Collection(nameof(ConsoleRun))]
public sealed class SweepTableTests : IDisposable
{
    private static readonly string Teaching = Repository.Data("scenarios", "teaching-kit.yaml");

    private const string Over = "conditions.ambient=0 °C..1 °C:2";

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("t.csv")]
    [InlineData("t.parquet")]
    public async Task The_scenario_out_of_a_table_gives_the_same_table_again(string name)
    {
        var table = Path.Combine(folder.Path, name);
        Assert.Equal(0, (await Sweep(Teaching, table, "--set", "conditions.ambient=5 °C")).Code);
        var again = Path.Combine(folder.Path, "again.yaml");
        var (code, said, _) = await ConsoleRun.RunAsync("about", table, "--scenario", again);
        Assert.Equal(0, code);
        var told = said.ReplaceLineEndings(" ");
        Assert.Contains("whole and as it was written", told, StringComparison.Ordinal);
        Assert.Contains("runtime_h", told, StringComparison.Ordinal);
        Assert.Empty(ScenarioFile.TryRead(again).Problems);
        var second = Path.Combine(folder.Path, "second", name);
        Assert.Equal(0, (await Sweep(again, second)).Code);
        if (name.EndsWith(".csv", StringComparison.Ordinal))
            Assert.Equal(await File.ReadAllTextAsync(table, TestContext.Current.CancellationToken),
                await File.ReadAllTextAsync(second, TestContext.Current.CancellationToken));
        // The tables differ in what they rest on, and in nothing that is in their rows.
        var (one, two) = (Path.Combine(folder.Path, "one.csv"), Path.Combine(folder.Path, "two.csv"));
        await ConsoleRun.RunAsync("gather", table, "--out", one);
        await ConsoleRun.RunAsync("gather", second, "--out", two);
        Assert.Equal(await File.ReadAllTextAsync(one, TestContext.Current.CancellationToken),
            await File.ReadAllTextAsync(two, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_table_that_somebody_changed_is_not_called_whole()
    {
        var table = Path.Combine(folder.Path, "t.csv");
        await Sweep(Teaching, table);
        await File.AppendAllTextAsync(table, "9,1\r\n", TestContext.Current.CancellationToken);
        var (code, said, error) = await ConsoleRun.RunAsync("about", table);
        Assert.Equal((2, ""), (code, said));
        Assert.StartsWith($"{table}: error: It is not as it was written", error, StringComparison.Ordinal);
        // The same sweep sees that, too, and makes it anew.
        var (again, told, _) = await Sweep(Teaching, table);
        Assert.Equal(0, again);
        Assert.StartsWith("3 runs", told, StringComparison.Ordinal);
        Assert.Equal(0, (await ConsoleRun.RunAsync("about", table)).Code);
    }

    [Theory]
    [InlineData("--out: Found \"t.txt\", whose ending says no kind of table.", "--over", Over, "--out", "t.txt")]
    [InlineData("--over: No field is named.", "--out", "t.csv")]
    [InlineData("--samples: Nothing is uncertain", "--over", Over, "--samples", "8", "--out", "t.csv")]
    [InlineData("--sampling: Found \"dice\".", "--uncertain", "conditions.ambient=5 °C +- 1 °C", "--sampling", "dice", "--out",
        "t.csv")]
    [InlineData("--part: Found \"5/4\".", "--over", Over, "--part", "5/4", "--out", "t.csv")]
    [InlineData("--part: Found \"1/3\".", "--over", Over, "--part", "1/3", "--out", "t.csv")]
    [InlineData("Did you mean \"runtime_h\"?", "--over", Over, "--columns", "runtim_h", "--out", "t.csv")]
    [InlineData("--asked-on: ", "--over", Over, "--asked-on", "tomorrow", "--out", "t.csv")]
    public async Task What_cant_be_asked_is_refused_in_words(string words, params string[] options)
    {
        var (code, _, error) = await ConsoleRun.RunAsync(["sweep", Teaching, "--build", "full-rig",
            .. options.Select(word => word is "t.csv" ? Path.Combine(folder.Path, word) : word)]);
        Assert.True(code == 2 && error.Contains(words, StringComparison.Ordinal), $"{code} {error}");
        Assert.Empty(Directory.GetFiles(folder.Path));
    }

    [Fact]
    public async Task Somebody_elses_file_under_the_name_of_the_unfinished_table_stays()
    {
        var mine = folder.Write("t.csv.unfinished", "my notes");
        var (code, _, error) = await Sweep(Teaching, Path.Combine(folder.Path, "t.csv"));
        Assert.Equal(2, code);
        Assert.Contains("which is no unfinished table of a sweep", error, StringComparison.Ordinal);
        Assert.Equal(2, (await Sweep(Teaching, Path.Combine(folder.Path, "t.csv"), "--anew")).Code);
        Assert.Equal("my notes", await File.ReadAllTextAsync(mine, TestContext.Current.CancellationToken));
    }

    private static Task<(int Code, string Out, string Error)> Sweep(string rig, string table, params string[] more) =>
        ConsoleRun.RunAsync(["sweep", rig, "--build", "full-rig", "--over", "parts.brick-98wh.battery.energy=50 Wh..98 Wh:3",
            "--out", table, .. more]);
}
