using System.Text.Json;
using Snapshooter.Xunit3;

namespace RigScenarios.Tests.Cli;

/// <summary>Every command shows a part of the same answer, and the first screen has what a tired person must know.</summary>
[Collection(nameof(ConsoleRun))]
public class OneAnswerTests
{
    // 24 lines of 100 columns: the plain terminal.
    private const int ScreenLines = 24;
    private const int ScreenColumns = 100;

    private static readonly string[] Shared =
    [
        "build", "days", "verdict", "answer", "questions", "reserve_h", "reserve_Wh", "reserve_is_lower_bound", "tightest_day",
        "tightest_reserve_h", "devices", "limits",
        "expected_error_percent", "warmth", "comes_back", "cautions",
    ];

    public static TheoryData<string> Demos =>
        [.. Directory.GetFiles(Repository.Data("scenarios"), "*.yaml").Select(Path.GetFileNameWithoutExtension).Order()
            .OfType<string>()];

    [Theory]
    [MemberData(nameof(Demos))]
    public async Task What_the_commands_share_is_equal_to_the_byte(string demo)
    {
        var run = await SharedAsync("run", demo, "--quick");
        Assert.NotEmpty(run);
        foreach (var command in (string[])["wiring", "day", "balance"])
            Assert.Equal(run, await SharedAsync(command, demo));
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public async Task The_first_screen_has_verdict_questions_the_first_way_and_a_caution(string demo)
    {
        var (code, text, error) = await ConsoleRun.RunAsync("run", Demo(demo));
        Assert.Equal((0, ""), (code, error));
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        Each.Of(lines.Where(line => !line.StartsWith("  --set ", StringComparison.Ordinal)),
            line => Assert.True(line.Length <= ScreenColumns, line));
        var screen = string.Join('\n', lines.Take(ScreenLines));
        var first = lines[1].Split(':')[0];
        Assert.Contains(first, (string[])["Yes", "Just", "No", "Not known"]);
        Each.Of((string[])["\nPower ", "\nWiring ", "\nBalance "],
            title => Assert.Contains(title, screen, StringComparison.Ordinal));
        if (first is not "Yes")
            Assert.Contains("make", screen, StringComparison.Ordinal);
        if (first is "No" or "Just")
            Assert.Matches("\n  (1\\. |Nearest|None)", screen);
        Assert.Matches("\nCautions\n  - ", screen);
        // What is left on the screen at the end is the verdict.
        Assert.Contains(lines[1][..25], string.Join(' ', lines[^5..]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("night-dolly")]
    [InlineData("winter-harbour")]
    [InlineData("market-hall")]
    public async Task The_first_screen_reads_well(string demo)
    {
        var (_, text, _) = await ConsoleRun.RunAsync("run", Demo(demo));
        Snapshot.Match(string.Join('\n', text.ReplaceLineEndings("\n").Split('\n').Take(ScreenLines)),
            $"OneAnswerTests.first-screen.{demo}");
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public async Task Every_command_has_the_same_headline(string demo)
    {
        var build = (await SharedAsync("run", demo, "--quick")).Count == 0 ? "" : await FirstBuildAsync(demo);
        var headline = await HeadlineAsync("run", demo, build, "--quick");
        foreach (var command in (string[])["wiring", "day", "balance"])
            Assert.Equal(headline, await HeadlineAsync(command, demo, build));
    }

    [Fact]
    public async Task A_way_applied_as_its_settings_gives_what_it_promised()
    {
        var (_, text, _) = await ConsoleRun.RunAsync("run", Demo("night-dolly"), "--build", "thin-lead", "--json");
        using var json = JsonDocument.Parse(text);
        var set = json.RootElement.GetProperty("answers")[0].GetProperty("would_work").GetProperty("sets")[0];
        var settings = set.GetProperty("set").EnumerateArray().SelectMany(setting => new[] { "--set", setting.GetString()! });
        var (code, applied, error) = await ConsoleRun.RunAsync(["run", Demo("night-dolly"), "--build", "thin-lead", "--quick",
            "--json", .. settings]);
        Assert.Equal((0, ""), (code, error));
        using var then = JsonDocument.Parse(applied);
        var answer = then.RootElement.GetProperty("answers")[0];
        Assert.Equal("holds", answer.GetProperty("verdict").GetString());
        Each.Of((string[])["verdict", "reserve_h", "reserve_Wh"],
            field => Assert.Equal(set.GetProperty(field).GetRawText(), answer.GetProperty(field).GetRawText()));
    }

    [Fact]
    public async Task A_reserve_that_is_wished_and_not_there_is_close()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("run", Demo("market-hall"), "--build", "tripod", "--reserve", "3 h",
            "--quick", "--json");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        Assert.Equal("close", json.RootElement.GetProperty("answers")[0].GetProperty("verdict").GetString());
        var (wrong, _, error) = await ConsoleRun.RunAsync("run", Demo("market-hall"), "--reserve", "soon");
        Assert.Equal(2, wrong);
        Assert.Contains("1 h", error, StringComparison.Ordinal);
    }

    private static string Demo(string name) => Repository.Data("scenarios", $"{name}.yaml");

    private static async Task<string> FirstBuildAsync(string demo)
    {
        using var json = JsonDocument.Parse((await ConsoleRun.RunAsync("run", Demo(demo), "--quick", "--json")).Out);
        return json.RootElement.GetProperty("answers")[0].GetProperty("build").GetString()!;
    }

    private static async Task<string> HeadlineAsync(string command, string demo, string build, params string[] more)
    {
        var (code, text, _) = await ConsoleRun.RunAsync([command, Demo(demo), "--build", build, .. more]);
        Assert.Equal(0, code);
        return text.ReplaceLineEndings("\n").Split("\n\n")[0];
    }

    private static async Task<IReadOnlyList<string>> SharedAsync(string command, string demo, params string[] more)
    {
        var (code, text, _) = await ConsoleRun.RunAsync([command, Demo(demo), "--json", .. more]);
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        Assert.Equal("rigscenarios answer 2", json.RootElement.GetProperty("format").GetString());
        return [.. json.RootElement.GetProperty("answers").EnumerateArray()
            .Select(answer => string.Join('\n', Shared.Select(field => $"{field}: {answer.GetProperty(field).GetRawText()}")))];
    }
}
