using System.IO.Compression;
using System.Net;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Api;

/// <summary>A rig that goes anywhere without its file, such as in a link, and what arrives.</summary>
public sealed class RigAloneTests
{
    private static readonly JsonSerializerOptions AsScriptsWrite =
        new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>What docs/no-install.md says.</summary>
    private const int Longest = 5000;

    [Theory]
    [InlineData("winter-harbour", "shoulder", "day-two")]
    [InlineData("river-ferry", null, null)]
    [InlineData("teaching-kit", null, null)]
    public async Task A_rig_of_a_file_is_answered_the_same_where_its_file_is_not(string name, string? build, string? day)
    {
        await using var server = await TrialServer.StartAsync();
        var file = $"samples/{name}.yaml";
        var which = build is null ? "" : $"&build={build}&day={day}";
        var opened = await (await server.GetAsync($"/api/rig/given?file={file}{which}")).JsonAsync();
        var asked = new { given = opened.GetProperty("given"), file = (string?)file, build = opened.Text("build"),
            day = opened.Text("day") };
        var sent = await AloneAsync(server, asked);
        Assert.Null(sent["given"]!["parts-from"]);
        var arrived = await AloneAsync(server, new { given = sent["given"], file = (string?)null, build = asked.build,
            day = asked.day });
        Assert.Equal((asked.build, asked.day), ((string?)arrived["build"], (string?)arrived["day"]));
        Assert.Equal(sent["given"]!.ToJsonString(), arrived["given"]!.ToJsonString());
        var before = await AnswerAsync(server, asked);
        var after = await AnswerAsync(server, new { given = JsonSerializer.SerializeToElement(arrived["given"]),
            file = (string?)null, asked.build, asked.day });
        Assert.Equal(before.GetProperty("answer").Text("text"), after.GetProperty("answer").Text("text"));
        Assert.Equal(before.GetProperty("first").Text("html"), after.GetProperty("first").Text("html"));
        Assert.Empty(after.GetProperty("problems").EnumerateArray());
        Assert.Equal(arrived["view"]!.ToJsonString(), JsonNode.Parse(after.GetProperty("view").GetRawText())!.ToJsonString());
    }

    // As site/shared/rig-link.js makes it; another deflater differs by a few characters.
    [Fact]
    public async Task The_link_of_any_demo_has_less_than_5000_characters()
    {
        await using var server = await TrialServer.StartAsync();
        var demos = Directory.GetFiles(Path.Combine(Checkout.Root, "data", "scenarios"), "*.yaml").Select(Path.GetFileName);
        foreach (var file in demos.Select(name => $"samples/{name}"))
        {
            var opened = await (await server.GetAsync($"/api/rig/given?file={file}")).JsonAsync();
            var sent = await AloneAsync(server, new { given = opened.GetProperty("given"), file, build = opened.Text("build"),
                day = opened.Text("day") });
            var text = JsonSerializer.SerializeToUtf8Bytes(new object[] { 1, opened.Text("build"), opened.Text("day"),
                sent["given"]! }, AsScriptsWrite);
            using var packed = new MemoryStream();
            await using (var deflate = new DeflateStream(packed, CompressionLevel.Optimal, leaveOpen: true))
                await deflate.WriteAsync(text, TestContext.Current.CancellationToken);
            Assert.InRange(packed.Length * 4 / 3, 500, Longest);
        }
    }

    [Theory]
    [InlineData("{}", "rig", "day")]
    [InlineData("""{"builds": {"other": {}}, "days": {"long": {}}}""", "other", "long")]
    [InlineData("""{"builds": "none", "kit": ["a"], "parts": {"x": {"y": {"z": "1"}}}}""", "rig", "day")]
    public async Task What_arrives_may_come_from_anybody(string given, string build, string day)
    {
        await using var server = await TrialServer.StartAsync();
        var arrived = await AloneAsync(server, new { given = JsonNode.Parse(given), file = (string?)null, build = "a.b <i>",
            day = "" });
        Assert.Equal((build, day), ((string?)arrived["build"], (string?)arrived["day"]));
        Assert.NotNull(arrived["view"]!["things"]);
    }

    private static async Task<JsonObject> AloneAsync(TrialServer server, object asked)
    {
        using var answer = await server.SendJsonAsync(HttpMethod.Post, "/api/rig/alone", asked);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return (JsonObject)JsonNode.Parse(await answer.TextAsync())!;
    }

    private static async Task<JsonElement> AnswerAsync(TrialServer server, object asked)
    {
        using var form = await LiveReader.OpenRigAsync(server);
        var run = JsonSerializer.SerializeToNode(asked)!.AsObject();
        (run["kind"], run["queue"], run["run"], run["until"]) = ("run", "now", 1, "answer");
        await form.SendAsync(run);
        Assert.Equal("done", (await form.EndAsync(1)).Text("kind"));
        return form.Messages.Single(message => message.Text("kind") == "answer");
    }
}
