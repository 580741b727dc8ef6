using System.Text.Json;
using Snapshooter.Xunit3;

namespace RigScenarios.Tests.Cli;

[Collection(nameof(ConsoleRun))]
public class CommandTests
{
    private static readonly string Harbour = Repository.Data("scenarios", "winter-harbour.yaml");
    private static readonly string Teaching = Repository.Data("scenarios", "teaching-kit.yaml");

    [Fact]
    public async Task Check_says_that_the_demo_files_have_no_errors_and_ends_with_0()
    {
        var (code, text, _) = await ConsoleRun.RunAsync(["check", Harbour, Teaching, .. Repository.PartsFiles]);
        Assert.Equal(0, code);
        Assert.Equal(2 + Repository.PartsFiles.Count, text.Split("no errors").Length - 1);
    }

    [Fact]
    public async Task Check_lists_every_mistake_of_a_file_and_ends_with_2()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("check", Repository.TestData("ten-mistakes.yaml"));
        Assert.Equal(2, code);
        Assert.Contains("ten-mistakes.yaml: 16 errors", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_gives_the_answer_first_and_ends_with_0()
    {
        var (code, text, error) = await ConsoleRun.RunAsync("run", Harbour, "--build", "tripod", "--day", "day-one");
        Assert.Equal("", error);
        Assert.Equal(0, code);
        Snapshot.Match(text.ReplaceLineEndings("\n").Replace(Repository.Root, "HERE", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Json_has_the_documented_fields()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("run", Teaching, "--json");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        Assert.Equal(3, json.RootElement.GetProperty("answers").GetArrayLength());
        await DocumentedFields.AssertAsync(json.RootElement, "# The answer as JSON", "## What only one command tells");
        var (_, nothing, _) = await ConsoleRun.RunAsync("run", Teaching, "--json", "--quick", "--build", "full-rig");
        using var quick = JsonDocument.Parse(nothing);
        Assert.Equal(JsonValueKind.Null, quick.RootElement.GetProperty("answers")[0].GetProperty("would_work").ValueKind);
    }

    [Fact]
    public async Task A_set_value_changes_the_answer_and_a_wrong_one_names_the_path()
    {
        var (_, plain, _) = await ConsoleRun.RunAsync("run", Teaching, "--build", "full-rig", "--json", "--quick");
        var (code, worn, _) = await ConsoleRun.RunAsync("run", Teaching, "--build", "full-rig", "--json", "--quick", "--set",
            "builds.full-rig.battery.capacity-left=70 %");
        Assert.Equal(0, code);
        Assert.True(Runtime(worn) < Runtime(plain));
        var (wrongCode, _, error) = await ConsoleRun.RunAsync("run", Teaching, "--set", "builds.ful-rig.battery.charge=50 %",
            "--set", "conditions.ambient=5");
        Assert.Equal(2, wrongCode);
        Assert.Contains("Did you mean \"full-rig\"?", error, StringComparison.Ordinal);
        Assert.Contains("Probably \"5 °C\" was meant", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sweep_writes_a_table_with_one_row_a_run()
    {
        using var folder = new TemporaryFolder();
        var file = Path.Combine(folder.Path, "table.csv");
        var (code, text, _) = await ConsoleRun.RunAsync("sweep", Teaching, "--build", "full-rig", "--over",
            "parts.brick-98wh.battery.energy=50 Wh..290 Wh:4", "--out", file);
        Assert.Equal(0, code);
        Assert.StartsWith("4 runs", text, StringComparison.Ordinal);
        Assert.Equal(5, (await File.ReadAllLinesAsync(file, TestContext.Current.CancellationToken)).Length);
        Assert.Equal(["table.csv", "table.csv-metadata.json"], Directory.GetFiles(folder.Path).Select(Path.GetFileName).Order());
    }

    [Fact]
    public async Task Sweep_says_first_which_build_and_day_it_took_where_there_are_several()
    {
        using var folder = new TemporaryFolder();
        var (code, text, _) = await ConsoleRun.RunAsync("sweep", Teaching, "--over",
            "parts.brick-98wh.battery.energy=50 Wh..98 Wh:2", "--out", Path.Combine(folder.Path, "table.csv"));
        Assert.Equal(0, code);
        Assert.StartsWith("Taken: the build \"camera-only\" on the day \"workshop\". Others: --build with-monitor, full-rig.",
            text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("sweep", "--over", "days.workshop.ambient=1 °C..2 Wh")]
    [InlineData("sweep", "--over", "days.workshop.ambien=1 °C..2 °C")]
    [InlineData("sweep", "--over", "days.workshop.ambient")]
    [InlineData("run", "--build", "ful-rig")]
    [InlineData("run", "--set", "nonsense")]
    [InlineData("run", "--no-such-option", "x")]
    public async Task Bad_input_ends_with_2_in_plain_words_and_writes_nothing(string verb, string option, string value)
    {
        using var folder = new TemporaryFolder();
        var file = Path.Combine(folder.Path, "out.csv");
        string[] rest = verb == "sweep" ? ["--out", file] : [];
        var (code, _, error) = await ConsoleRun.RunAsync([verb, Teaching, option, value, .. rest]);
        Assert.Equal(2, code);
        Assert.NotEqual("", error);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(folder.Path));
    }

    private static double Runtime(string text)
    {
        using var json = JsonDocument.Parse(text);
        return json.RootElement.GetProperty("answers")[0].GetProperty("run").GetProperty("runtime_h").GetDouble();
    }

    [Fact]
    public async Task Balance_gives_the_answer_first_and_ends_with_0()
    {
        var (code, text, error) = await ConsoleRun.RunAsync("balance", Harbour);
        Assert.Equal("", error);
        Assert.Equal(0, code);
        Snapshot.Match(text.ReplaceLineEndings("\n").Replace(Repository.Root, "HERE", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Json_of_balance_has_the_documented_fields()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("balance", Harbour, "--json");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        await DocumentedFields.AssertAsync(json.RootElement, "# The answer as JSON", "## Balance");
        var limits = json.RootElement.GetProperty("answers")[0].GetProperty("limits").EnumerateArray().ToList();
        Each.Of(limits, limit => Assert.Equal(JsonValueKind.Number, limit.GetProperty("worst").ValueKind));
        Assert.Contains(limits, limit => limit.GetProperty("question").GetString() == "stand");
    }

    [Fact]
    public async Task A_change_of_a_place_changes_the_answer()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("balance", Harbour, "--build", "tripod", "--set",
            "builds.tripod.on-head.slide-middle=-40 mm");
        Assert.Equal(0, code);
        Assert.Contains("It does not balance", text, StringComparison.Ordinal);
        (code, _, var error) = await ConsoleRun.RunAsync("balance", Harbour, "--build", "tripd");
        Assert.Equal(2, code);
        Assert.Contains("tripod", error, StringComparison.Ordinal);
    }
}
