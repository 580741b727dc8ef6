using System.Text.Json;
using Snapshooter.Xunit3;

namespace RigScenarios.Tests.Cli;

[Collection(nameof(ConsoleRun))]
public class DayCommandTests
{
    private static readonly string Island = Repository.Data("scenarios", "island-crossing.yaml");
    /// <summary>Where all four batteries get there.</summary>
    private const string ByRoad = "journeys.out.by=road";

    private static readonly string Harbour = Repository.Data("scenarios", "winter-harbour.yaml");

    [Fact]
    public async Task The_answer_comes_first_then_swaps_then_what_is_left()
    {
        var (code, text, error) = await ConsoleRun.RunAsync("day", Island);
        Assert.Equal(("", 0), (error, code));
        Snapshot.Match(text.ReplaceLineEndings("\n").Replace(Repository.Root, "HERE", StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_cannot_fly_is_left_out_and_what_that_costs_is_told()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("day", Island, "--json");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        var answer = json.RootElement.GetProperty("answers")[0];
        Assert.Equal("big", answer.GetProperty("stays_behind")[0].GetProperty("battery").GetString());
        Assert.Equal(3, answer.GetProperty("day").GetProperty("batteries").GetArrayLength());
    }

    [Fact]
    public async Task With_a_battery_less_it_breaks_in_a_named_block_and_says_why()
    {
        using var folder = new TemporaryFolder();
        var file = await WithoutAsync(folder, "  old: {");
        var (code, text, _) = await ConsoleRun.RunAsync("day", file, "--set", ByRoad);
        Assert.Equal(0, code);
        string[] inOrder =
        [
            "No: the camera stops at 09:1", "Power fails", "swaps, the emptiest battery", "lock the tilt", "the rig had stopped",
            "Times without an essential device", "\"The letters\"", "Batteries, with", "Day 3, The mail boat",
            "Assumed", "Cautions",
        ];
        var flat = string.Join(' ', text.Split((char[])[' ', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries));
        var places = inOrder.Select(words => flat.IndexOf(words, StringComparison.Ordinal)).ToList();
        Assert.True(!places.Contains(-1) && places.Order().SequenceEqual(places), $"{string.Join(' ', places)}\n{text}");
    }

    [Fact]
    public async Task The_least_kit_is_the_four_and_every_smaller_one_fails_somewhere()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("day", Island, "--least", "--json", "--set", ByRoad);
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        var least = json.RootElement.GetProperty("answers")[0].GetProperty("day").GetProperty("least_kit");
        Assert.Equal((4, 2), (least.GetProperty("batteries").GetArrayLength(), least.GetProperty("bays").GetInt32()));
        var tried = least.GetProperty("tried").EnumerateArray().ToList();
        Assert.Equal(45, tried.Count);
        Each.Of(tried.SkipLast(1), trial => Assert.False(trial.GetProperty("survives").GetBoolean()));
        Each.Of(tried.SkipLast(1), trial => Assert.NotEqual("", trial.GetProperty("where").GetString()));
    }

    [Fact]
    public async Task A_wish_for_what_is_left_can_fail_every_kit()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("day", Island, "--days", "crossing", "storm", "--keep-at-swap", "60 %");
        Assert.Equal(0, code);
        Assert.Contains("each battery coming off with 60 % or more", text.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains("No kit from these batteries and bays lasts the days", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Json_has_the_documented_fields()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("day", Island, "--least", "--json");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        await DocumentedFields.AssertAsync(json.RootElement, "# The answer as JSON", "## Days with several batteries");
        // What is told twice is the same: energy by days and by batteries, charge at the end.
        var build = json.RootElement.GetProperty("answers")[0].GetProperty("day");
        double Sum(string list, string field) =>
            build.GetProperty(list).EnumerateArray().Sum(item => item.GetProperty(field).GetDouble());
        Assert.Equal(build.GetProperty("from_packs_Wh").GetDouble(), Sum("day_by_day", "from_packs_Wh"), 0.01);
        Assert.Equal(build.GetProperty("from_packs_Wh").GetDouble(), Sum("batteries", "delivered_Wh"), 0.01);
        Assert.Equal(build.GetProperty("from_wall_Wh").GetDouble(), Sum("batteries", "from_wall_Wh"), 0.01);
    }

    [Fact]
    public async Task Without_batteries_chargers_and_swaps_it_says_what_it_takes()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("day", Harbour, "--build", "tripod", "--days", "day-one",
            "day-two", "--json");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        var day = json.RootElement.GetProperty("answers")[0].GetProperty("day");
        Assert.Equal(["brick"], day.GetProperty("batteries").EnumerateArray()
            .Select(battery => battery.GetProperty("battery").GetString()));
        var sentences = day.GetProperty("not_planned").EnumerateArray().Select(sentence => sentence.GetString()).ToList();
        Assert.Equal(2, sentences.Count);
        Assert.Contains("names no batteries", sentences[0], StringComparison.Ordinal);
        Assert.Contains("charged overnight elsewhere", sentences[1], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--days", "crosing", "Did you mean \"crossing\"?")]
    [InlineData("--build", "tripot", "Did you mean \"tripod\"?")]
    [InlineData("--keep-at-swap", "15", "15 %")]
    [InlineData("--keep-at-end", "soon", "1 h")]
    public async Task What_cannot_be_used_ends_with_2_and_says_what_is_accepted(string option, string value, string said)
    {
        var (code, text, error) = await ConsoleRun.RunAsync("day", Island, option, value);
        Assert.Equal((2, ""), (code, text));
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    private static async Task<string> WithoutAsync(TemporaryFolder folder, string line)
    {
        var lines = (await File.ReadAllLinesAsync(Island, TestContext.Current.CancellationToken))
            .Where(other => !other.StartsWith(line, StringComparison.Ordinal));
        return folder.Write("island.yaml", string.Join('\n', lines)
            .Replace("../parts", Repository.Data("parts"), StringComparison.Ordinal));
    }
}
