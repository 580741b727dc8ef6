using System.Text.Json;

namespace RigScenarios.Tests.Cli;

/// <summary>The command that says how sure an answer is: what it prints, and what it refuses.</summary>
[Collection(nameof(ConsoleRun))]
public class UncertaintyCommandTests
{
    private static string Hall => Repository.Data("scenarios", "market-hall.yaml");

    [Fact]
    public async Task It_tells_the_chance_what_to_measure_and_what_all_of_it_rests_on()
    {
        var (code, text, error) = await ConsoleRun.RunAsync("uncertainty", Hall, "--rows", "32", "--whole", "16");

        Assert.Equal((0, ""), (code, error));
        Assert.Matches(@"The day lasts \d+ times in 10 \(\d+ %, standard error [\d.]+ %, of 64 runs\)\.", Plain(text));
        Assert.Matches(@"8 of 10 last (beyond \d\d:\d\d|to wrap with .* left or more)\.", Plain(text));
        Assert.Contains("What to measure first", text, StringComparison.Ordinal);
        Assert.Contains("Draw of the camera", text, StringComparison.Ordinal);
        Assert.Contains("The plan is taken as it stands", Plain(text), StringComparison.Ordinal);
        Assert.Contains("no source", text, StringComparison.Ordinal);
        Each.Of(text.ReplaceLineEndings("\n").Split('\n'), line => Assert.True(line.Length <= 100, line), 20);
    }

    [Fact]
    public async Task Every_field_of_the_json_answer_stands_in_the_documentation()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("uncertainty", Hall, "--rows", "32", "--whole", "16", "--json",
            "--along", "days.morning.blocks.breakfast.length=30 min..60 min:2", "--seed", "7");

        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        await DocumentedFields.AssertInAsync("uncertainty.md", json.RootElement, "## For programs");
        Assert.Equal(7, json.RootElement.GetProperty("seed").GetInt64());
        Assert.Equal(64, json.RootElement.GetProperty("lasts").GetProperty("yes").GetInt64()
            + json.RootElement.GetProperty("lasts").GetProperty("no").GetInt64());
        Assert.Equal(2, json.RootElement.GetProperty("along").GetProperty("places").GetArrayLength());
    }

    [Fact]
    public async Task Only_what_is_given_can_be_uncertain()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("uncertainty", Hall, "--rows", "16", "--whole", "0", "--json",
            "--nothing-else", "--uncertain", "conditions.ambient=5 °C +- 3 °C");

        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        var figure = Assert.Single(json.RootElement.GetProperty("uncertain").EnumerateArray());
        Assert.Equal("5 °C +- 3 °C", figure.GetProperty("spread").GetString());
        Assert.Equal(JsonValueKind.Null, figure.GetProperty("source").ValueKind);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("whole").ValueKind);
    }

    [Fact]
    public async Task All_that_is_wrong_is_told_at_once_with_what_is_accepted()
    {
        var (code, text, error) = await ConsoleRun.RunAsync("uncertainty", Hall, "--rows", "3", "--whole", "-1",
            "--uncertain", "conditions.ambient=5", "--figure", "resrve_h");

        Assert.Equal((2, ""), (code, text));
        Assert.Contains("--rows: Found 3. Accepted: a whole number from 16 to 1048576", error, StringComparison.Ordinal);
        Assert.Contains("--whole: Found -1.", error, StringComparison.Ordinal);
        Assert.Contains("conditions.ambient", error, StringComparison.Ordinal);
        Assert.Contains("There is no column \"resrve_h\".", error, StringComparison.Ordinal);
        Assert.Contains("reserve_h", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_else_needs_something()
    {
        var (code, _, error) = await ConsoleRun.RunAsync("uncertainty", Hall, "--nothing-else");

        Assert.Equal(2, code);
        Assert.Contains("--nothing-else: No field is named as uncertain.", error, StringComparison.Ordinal);
    }

    private static string Plain(string text) => string.Join(' ',
        text.Split((char[])[' ', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
