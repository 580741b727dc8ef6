using System.Text.Json;
using System.Text.Json.Nodes;
using RigScenarios.Charts.Search;
using RigScenarios.Drafts;
using RigScenarios.Files;
using RigScenarios.Page.Tests.Servers;
using RigScenarios.Search.Rigs;

namespace RigScenarios.Page.Tests.Api;

/// <summary>The best rig for the money of the form: the same as a search of the library gives.</summary>
public sealed class BestRigTests
{
    // The body alone is listed at 3,600 EUR.
    private const string Budget = "5000 EUR";

    [Fact]
    public async Task What_is_found_is_what_the_library_finds_for_the_same_file()
    {
        await using var server = await TrialServer.StartAsync();
        var given = await WithBudgetAsync(server);
        var text = (await FormRig.AnswerAsync(server, given)).Text("text");
        using var form = await LiveReader.OpenRigAsync(server);
        await form.SendAsync(new { kind = "run", queue = "best", run = 1, given });
        Assert.Equal("done", (await form.EndAsync(1)).Text("kind"));
        var found = Assert.Single(form.Messages, message => message.Text("kind") == "best-rig");
        var progress = form.Messages.First(message => message.Text("kind") == "progress");
        Assert.Equal("best", progress.Text("queue"));
        Assert.Contains("run through the answer", progress.Text("text"), StringComparison.Ordinal);

        var file = ScenarioFile.TryReadText(text, "mine.yaml").Scenario!;
        var scenario = file with { Library = RigLibrary.Read(Path.Combine(Checkout.Data, "parts")) };
        var best = UsualBestRig.Of(scenario, "rig");
        Assert.Equal(5000m, best.Musts.Budget!.Value.Amount);
        var expected = RigSearch.Find(BestRigQuestion.Of(scenario with { BestRig = best }),
            cancellation: TestContext.Current.CancellationToken);
        // Batteries and monitors of the library are there to choose from, and not only what is on the rig.
        Assert.True(expected.Front.Choices > 10, $"{expected.Front.Choices} choices");
        Assert.True(expected.Picks.Count > 1, $"{expected.Picks.Count} rigs");
        Assert.True(expected.Front.IsComplete);
        Assert.Equal(RigSearchSentences.Headline(expected), found.Text("text"));
        Assert.Equal(RigSearchShape.Cautions(expected), found.GetProperty("cautions").EnumerateArray()
            .Select(caution => caution.GetString()!));
        var parts = found.GetProperty("parts").EnumerateArray().ToList();
        Assert.Equal(["answer", "prose", "figure", "table", "table"], parts.Take(5).Select(part => part.Text("type")));
        Assert.Equal(RigSearchSentences.Musts(expected), parts[1].Text("text"));
        Assert.Contains("at most 5,000 EUR", parts[1].Text("text"), StringComparison.Ordinal);
        foreach (var (part, table) in parts.Skip(3).Zip([RigSearchPage.Figures(expected), RigSearchPage.Parts(expected)]))
            Assert.Equal(table.Rows, part.GetProperty("table").GetProperty("rows").EnumerateArray()
                .Select(row => row.EnumerateArray().Select(cell => cell.GetString()!).ToList()));
        foreach (var line in RigSearchSentences.MoreMoney(expected))
            Assert.Contains(parts, part => part.Text("type") == "html"
                && System.Net.WebUtility.HtmlDecode(part.Text("html")).Replace('\u00a0', ' ')
                    .Contains(line, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Without_a_budget_or_a_whole_rig_it_says_what_is_missing_and_where()
    {
        await using var server = await TrialServer.StartAsync();
        using var form = await LiveReader.OpenRigAsync(server);
        await form.SendAsync(new { kind = "run", queue = "best", run = 1, given = await FormRig.SmallAsync(server) });
        var refused = await form.EndAsync(1);
        Assert.Equal(("problems", 400), (refused.Text("kind"), refused.GetProperty("status").GetInt32()));
        var problem = Assert.Single(refused.GetProperty("problems").EnumerateArray());
        Assert.Equal("costs.budget", problem.Text("path"));
        Assert.Contains("2500 EUR", problem.Text("accepted"), StringComparison.Ordinal);

        await form.SendAsync(new { kind = "run", queue = "best", run = 2, given = await FormRig.BlankAsync(server) });
        var open = await form.EndAsync(2);
        Assert.Equal("problems", open.Text("kind"));
        Assert.Contains("builds.rig.battery.item", open.GetProperty("problems").EnumerateArray().Select(one => one.Text("path")));
    }

    [Fact]
    public async Task A_stop_ends_the_search_and_leaves_the_answer_alone()
    {
        await using var server = await TrialServer.StartAsync();
        var opened = await (await server.GetAsync("/api/rig/given?file=samples/winter-harbour.yaml")).JsonAsync();
        var given = (JsonObject)JsonNode.Parse(opened.GetProperty("given").GetRawText())!;
        given["costs"] = new JsonObject { ["budget"] = "2500 EUR" };
        var (file, build, day) = ("samples/winter-harbour.yaml", opened.Text("build"), opened.Text("day"));
        using var form = await LiveReader.OpenRigAsync(server);
        await form.SendAsync(new { kind = "run", queue = "best", run = 1, given, file, build, day });
        await form.UntilAsync("progress", 1);
        await form.SendAsync(new { kind = "run", queue = "now", run = 2, given, file, build, day, brief = true });
        await form.SendAsync(new { kind = "stop", queue = "best" });
        JsonElement[] ends = [await form.EndAsync(1), await form.EndAsync(2)];
        Assert.Equal(("stopped", "asked"), (ends[0].Text("kind"), ends[0].Text("why")));
        Assert.Equal("done", ends[1].Text("kind"));
        Assert.DoesNotContain(form.Messages, message => message.Text("kind") == "best-rig");
    }

    [Fact]
    public async Task What_was_found_before_a_stop_is_given_and_told_as_that()
    {
        await using var server = await TrialServer.StartAsync();
        // The slowest of the demos' searches: it is not at its end before the word to stop is there.
        var opened = await (await server.GetAsync("/api/rig/given?file=samples/island-crossing.yaml")).JsonAsync();
        var given = (JsonObject)JsonNode.Parse(opened.GetProperty("given").GetRawText())!;
        given["costs"] = new JsonObject { ["budget"] = "20000 EUR" };
        var (file, build, day) = ("samples/island-crossing.yaml", opened.Text("build"), opened.Text("day"));
        using var form = await LiveReader.OpenRigAsync(server);
        await form.SendAsync(new { kind = "run", queue = "best", run = 1, given, file, build, day });
        while ((await form.UntilAsync("progress", 1)).Text("text").Contains("; 0 rigs found", StringComparison.Ordinal))
        {
            // Nothing is found yet.
        }
        await form.SendAsync(new { kind = "stop", queue = "best" });
        var end = await form.EndAsync(1);
        Assert.Equal(("stopped", "asked"), (end.Text("kind"), end.Text("why")));
        var found = Assert.Single(form.Messages, message => message.Text("kind") == "best-rig");
        var parts = found.GetProperty("parts").GetRawText();
        Assert.Contains("search was stopped before all that is told", parts, StringComparison.Ordinal);
        // All rigs may have been found by then, and only the reasons be missing.
        Assert.Equal(parts.Contains("Not all is decided", StringComparison.Ordinal),
            found.Text("text").Contains("so far", StringComparison.Ordinal));
    }

    private static async Task<JsonObject> WithBudgetAsync(TrialServer server)
    {
        var given = await FormRig.SmallAsync(server);
        given["costs"] = new JsonObject { ["budget"] = Budget };
        return given;
    }
}
