using System.Text.Json;
using Snapshooter.Xunit3;

namespace RigScenarios.Tests.Cli;

[Collection(nameof(ConsoleRun))]
public class DayCommandTests
{
    private static readonly string Island = Repository.Data("scenarios", "island-crossing.yaml");
    private static readonly string Harbour = Repository.Data("scenarios", "winter-harbour.yaml");

    [Fact]
    public async Task The_answer_comes_first_then_swaps_then_what_is_left()
    {
        var (code, text, error) = await ConsoleRun.RunAsync("day", Island);
        Assert.Equal(("", 0), (error, code));
        Snapshot.Match(text.ReplaceLineEndings("\n"));
    }

    [Fact]
    public async Task With_a_battery_less_it_breaks_in_a_named_take_and_says_why()
    {
        using var folder = new TemporaryFolder();
        var file = await WithoutAsync(folder, "  old: {");
        var (code, text, _) = await ConsoleRun.RunAsync("day", file);
        Assert.Equal(0, code);
        string[] inOrder = ["The 3 days cannot be completed with 3 batteries: day 3, 09:00, in take 1 of \"The letters\", Compact body B stops", "Swaps ", "the rig had stopped", "Down times", "waiting for charge: ", "Batteries ", "Day 3 starts with", "Mind"];
        var flat = string.Join(' ', text.Split((char[])[' ', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries));
        var places = inOrder.Select(words => flat.IndexOf(words, StringComparison.Ordinal)).ToList();
        Assert.True(!places.Contains(-1) && places.Order().SequenceEqual(places), $"{string.Join(' ', places)}\n{text}");
    }

    [Fact]
    public async Task The_least_kit_is_the_four_and_every_smaller_one_fails_somewhere()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("day", Island, "--least", "--json");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        var least = json.RootElement.GetProperty("builds")[0].GetProperty("least_kit");
        Assert.Equal((4, 2), (least.GetProperty("batteries").GetArrayLength(), least.GetProperty("bays").GetInt32()));
        var tried = least.GetProperty("tried").EnumerateArray().ToList();
        Assert.Equal(45, tried.Count);
        Assert.All(tried.SkipLast(1), trial => Assert.False(trial.GetProperty("survives").GetBoolean()));
        Assert.All(tried.SkipLast(1), trial => Assert.NotEqual("", trial.GetProperty("where").GetString()));
    }

    [Fact]
    public async Task A_wish_for_what_is_left_can_fail_every_kit()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("day", Island, "--days", "crossing", "storm", "--keep-at-swap", "60 %");
        Assert.Equal(0, code);
        Assert.Contains("each battery coming off with 60 % or more", text.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains("No kit from these batteries and bays completes the days", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Json_has_the_documented_fields()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("day", Island, "--least", "--json");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        Assert.Equal("rigscenarios day 1", json.RootElement.GetProperty("format").GetString());
        var documented = await File.ReadAllTextAsync(Path.Combine(Repository.Root, "docs", "json.md"), TestContext.Current.CancellationToken);
        var section = documented[documented.IndexOf("## Days with several batteries", StringComparison.Ordinal)..];
        section = section[..section.IndexOf("\n## ", 5, StringComparison.Ordinal)];
        var names = new HashSet<string>();
        Names(json.RootElement, names);
        Assert.True(names.Count > 50);
        Assert.All(names, name => Assert.True(new[] { $"`{name}`", $"`.{name}`", $"`.{name}[]`", $"`{name}[]`" }.Any(way => section.Contains(way, StringComparison.Ordinal)), name));
        // What is told twice is the same: energy by days and by batteries, charge at the end.
        var build = json.RootElement.GetProperty("builds")[0];
        double Sum(string list, string field) => build.GetProperty(list).EnumerateArray().Sum(item => item.GetProperty(field).GetDouble());
        Assert.Equal(build.GetProperty("from_packs_Wh").GetDouble(), Sum("days", "from_packs_Wh"), 0.01);
        Assert.Equal(build.GetProperty("from_packs_Wh").GetDouble(), Sum("batteries", "delivered_Wh"), 0.01);
        Assert.Equal(build.GetProperty("from_wall_Wh").GetDouble(), Sum("batteries", "from_wall_Wh"), 0.01);
    }

    [Fact]
    public async Task Without_batteries_chargers_and_swaps_it_says_what_it_takes()
    {
        var (code, text, _) = await ConsoleRun.RunAsync("day", Harbour, "--build", "tripod", "--days", "day-one", "--json", "--set", "kit.brick.count=2");
        Assert.Equal(0, code);
        using var json = JsonDocument.Parse(text);
        var build = json.RootElement.GetProperty("builds")[0];
        Assert.True(build.GetProperty("completes").GetBoolean());
        Assert.Equal(["brick-1", "brick-2"], build.GetProperty("batteries").EnumerateArray().Select(battery => battery.GetProperty("battery").GetString()));
        var sentences = build.GetProperty("not_planned").EnumerateArray().Select(sentence => sentence.GetString()).ToList();
        Assert.Equal(3, sentences.Count);
        Assert.Contains("the kit's 2 of \"brick\" are taken", sentences[0], StringComparison.Ordinal);
        Assert.Contains("no charger", sentences[1], StringComparison.Ordinal);
        Assert.Contains("down to 15 %", sentences[2], StringComparison.Ordinal);
        var (_, one, _) = await ConsoleRun.RunAsync("day", Harbour, "--build", "tripod", "--days", "day-one");
        Assert.Contains("The day cannot be completed with one battery", one, StringComparison.Ordinal);
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
        var lines = (await File.ReadAllLinesAsync(Island, TestContext.Current.CancellationToken)).Where(other => !other.StartsWith(line, StringComparison.Ordinal));
        return folder.Write("island.yaml", string.Join('\n', lines).Replace("../parts", Repository.Data("parts"), StringComparison.Ordinal));
    }

    private static void Names(JsonElement element, HashSet<string> names)
    {
        foreach (var item in element.ValueKind == JsonValueKind.Array ? element.EnumerateArray() : Enumerable.Empty<JsonElement>())
            Names(item, names);
        foreach (var field in element.ValueKind == JsonValueKind.Object ? element.EnumerateObject() : Enumerable.Empty<JsonProperty>())
        {
            names.Add(field.Name);
            Names(field.Value, names);
        }
    }
}
