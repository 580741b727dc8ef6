using System.Text.Json;
using System.Text.Json.Nodes;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Asked;

/// <summary>The form's line without a server: its runs, whole and in parts.</summary>
public sealed class RigLineTests
{
    [Fact]
    public async Task A_run_until_the_answer_and_one_from_it_tell_together_what_a_whole_run_tells()
    {
        using var page = new LocalPage();
        using var line = page.Open(new { kind = "rig" });
        var given = await FailingAsync(page);
        line.Say(new { kind = "run", queue = "now", run = 1, given });
        var whole = Kept(await line.UntilEndAsync());
        line.Say(new { kind = "run", queue = "now", run = 1, given, until = "answer" });
        var first = Kept(await line.UntilEndAsync());
        line.Say(new { kind = "run", queue = "now", run = 1, given, from = "answer" });
        var second = Kept(await line.UntilEndAsync());
        Assert.Equal(["answer", "rests-on", "would-work", "done"], whole.Select(message => message.Text("kind")));
        Assert.Equal(["answer", "done"], first.Select(message => message.Text("kind")));
        Assert.Equal(["rests-on", "would-work", "done"], second.Select(message => message.Text("kind")));
        Assert.True(first[0].GetProperty("seeks").GetBoolean());
        Assert.Equal(whole.SkipLast(1).Select(message => message.GetRawText()),
            first.SkipLast(1).Concat(second.SkipLast(1)).Select(message => message.GetRawText()));
    }

    [Fact]
    public async Task Parts_that_come_later_are_those_that_would_have_come_with_the_answer()
    {
        using var page = new LocalPage();
        using var line = page.Open(new { kind = "rig" });
        var given = await FailingAsync(page);
        line.Say(new { kind = "run", queue = "now", run = 1, given, until = "answer" });
        var together = Kept(await line.UntilEndAsync());
        line.Say(new { kind = "run", queue = "now", run = 1, given, until = "answer", parts = "later" });
        var parted = Kept(await line.UntilEndAsync());
        Assert.Equal(["answer", "parts", "done"], parted.Select(message => message.Text("kind")));
        Assert.Equal(Fields(together[0]).Select(field => field.Key).Where(name => name != "parts"),
            Fields(parted[0]).Select(field => field.Key));
        var put = Fields(parted[0]).Append(new("parts", parted[1].GetProperty("parts").GetRawText()));
        Assert.Equal(Fields(together[0]).OrderBy(field => field.Key, StringComparer.Ordinal),
            put.OrderBy(field => field.Key, StringComparer.Ordinal));
        Assert.NotEmpty(parted[1].GetProperty("parts").EnumerateArray());
    }

    [Fact]
    public async Task Without_an_answer_no_parts_come_later()
    {
        using var page = new LocalPage();
        using var line = page.Open(new { kind = "rig" });
        line.Say(new { kind = "run", queue = "now", run = 1, given = new JsonObject(), until = "answer", parts = "later" });
        var told = await line.UntilEndAsync();
        Assert.Equal(["answer", "done"], told.Select(message => message.Text("kind")));
        Assert.Empty(told[0].GetProperty("parts").EnumerateArray());
    }

    [Theory]
    [InlineData("until")]
    [InlineData("from")]
    [InlineData("parts")]
    public async Task A_part_that_no_run_has_is_told(string name)
    {
        using var page = new LocalPage();
        using var line = page.Open(new { kind = "rig" });
        var run = new JsonObject { ["kind"] = "run", ["queue"] = "now", ["run"] = 3, ["given"] = new JsonObject(),
            [name] = "the end" };
        line.Say(run);
        var end = (await line.UntilEndAsync())[^1];
        Assert.Equal(("problems", 3, name), (end.Text("kind"), end.GetProperty("run").GetInt32(),
            end.GetProperty("problems")[0].Text("path")));
    }

    [Fact]
    public async Task A_line_that_is_not_there_says_so()
    {
        using var page = new LocalPage();
        using var line = page.Open(new { kind = "notebook", name = "01-none" });
        var told = Assert.Single(await line.UntilEndAsync());
        Assert.Equal(("problems", JsonValueKind.Null, 404), (told.Text("kind"), told.GetProperty("run").ValueKind,
            told.GetProperty("status").GetInt32()));
    }

    [Fact]
    public async Task A_queue_that_is_not_there_and_broken_messages_are_told_and_the_line_goes_on()
    {
        using var page = new LocalPage();
        using var line = page.Open(new { kind = "rig" });
        line.Say(new { kind = "run", queue = "best", run = 1 });
        Assert.Contains("There is no such queue", (await line.UntilEndAsync())[^1].Problems(), StringComparison.Ordinal);
        line.Say(new[] { 1 });
        Assert.Contains("can't be read", (await line.UntilEndAsync())[^1].Problems(), StringComparison.Ordinal);
        line.Say(new { kind = "run", queue = "now", run = 2, given = new { } });
        Assert.Equal("done", (await line.UntilEndAsync())[^1].Text("kind"));
    }

    [Fact]
    public async Task Nothing_comes_on_a_line_that_was_closed()
    {
        using var page = new LocalPage();
        var line = page.Open(new { kind = "rig" });
        var given = await FailingAsync(page);
        line.Say(new { kind = "run", queue = "now", run = 1, given });
        line.Dispose();
        line.Dispose();
        // Another line of the same program still answers, and what that needs has been through the queues by then.
        using var other = page.Open(new { kind = "rig" });
        other.Say(new { kind = "run", queue = "now", run = 1, given, until = "answer" });
        Assert.Equal("done", (await other.UntilEndAsync())[^1].Text("kind"));
        Assert.True(line.IsQuiet);
    }

    /// <summary>A rig that does not last its day. Common practice, no source: 98 Wh do not carry a body of 21 W through ten
    /// hours.</summary>
    private static async Task<JsonNode> FailingAsync(LocalPage page)
    {
        var given = (await JsonAsync(page, "rig-questions", new { }))["given"]!.DeepClone();
        foreach (var (question, part) in ((string, string)[])[("camera", "compact-body-b"),
            ("battery", "brick-98wh"), ("plate", "plate-guarded")])
            given = (await JsonAsync(page, "rig-edit", new { given, edit = new { @do = "add", question, part } }))["given"]!
                .DeepClone();
        return given;
    }

    private static async Task<JsonNode> JsonAsync(LocalPage page, string name, object what) =>
        JsonNode.Parse((await page.AskAsync(name, what)).Body.Span)!;

    // How far a search has come depends on the machine's time.
    private static List<JsonElement> Kept(IReadOnlyList<JsonElement> messages) =>
        [.. messages.Where(message => message.Text("kind") != "progress")];

    private static IEnumerable<KeyValuePair<string, string>> Fields(JsonElement message) =>
        message.EnumerateObject().Select(field => KeyValuePair.Create(field.Name, field.Value.GetRawText()));
}
