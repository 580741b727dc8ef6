using System.Net;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Api;

/// <summary>A notebook that answers while its parameters change.</summary>
public sealed class LiveTests
{
    [Fact]
    public async Task The_notebook_comes_first_then_the_run()
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("01-quick");
        var notebook = (await reader.NextAsync())!.Value;
        Assert.Equal(("notebook", "01-quick", "What is said?"),
            (notebook.Text("kind"), notebook.Text("name"), notebook.Text("title")));
        var cells = notebook.GetProperty("cells").EnumerateArray().ToList();
        Assert.True(cells[1].GetProperty("isStart").GetBoolean());
        Assert.True(cells[2].GetProperty("isParameters").GetBoolean());
        var parameters = notebook.GetProperty("parameters").EnumerateArray().ToList();
        Assert.Equal(["number", "text", "choice", "yes-no"], parameters.Select(parameter => parameter.Text("kind")));
        Assert.Equal((0, 10, "°C", "how much"), (parameters[0].GetProperty("minimum").GetDouble(),
            parameters[0].GetProperty("maximum").GetDouble(), parameters[0].Text("unit"), parameters[0].Text("label")));
        Assert.Equal(["left", "right"], parameters[2].GetProperty("choices").EnumerateArray()
            .Select(choice => choice.Text("value")));

        await reader.RunAsync(17, new { amount = "7", words = "a < b" });
        var done = await reader.EndAsync(17);
        Assert.Equal("done", done.Text("kind"));
        var answer = Assert.Single(reader.Parts(17, "answer"));
        Assert.Equal("Words: a < b. Side: left. Loud: False.", answer.Text("text"));
        Assert.Equal("Carry a reserve.", answer.GetProperty("cautions")[0].GetString());
        var table = Assert.Single(reader.Parts(17, "table")).GetProperty("table");
        Assert.Equal("What was given", table.Text("caption"));
        Assert.Equal(["7", "a < b"], table.GetProperty("rows")[0].EnumerateArray().Select(cell => cell.GetString()!));
        Assert.True(table.GetProperty("columns")[0].GetProperty("isNumber").GetBoolean());
        Assert.Equal("Printed 7", Assert.Single(reader.Parts(17, "printed")).Text("text").Trim());
    }

    [Fact]
    public async Task A_change_reruns_only_what_rests_on_it()
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("01-quick");
        await reader.RunAsync(1, new { });
        await reader.EndAsync(1);
        await reader.RunAsync(2, new { side = "right" });
        var done = await reader.EndAsync(2);
        Assert.Equal([4], done.GetProperty("rerun").EnumerateArray().Select(cell => cell.GetInt32()));
        Assert.Empty(reader.Parts(2, "table"));
        Assert.Contains("Side: right", Assert.Single(reader.Parts(2, "answer")).Text("text"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_in_sight_comes_first()
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("01-quick");
        await reader.RunAsync(1, new { });
        await reader.EndAsync(1);
        await reader.SendAsync(new { kind = "run", queue = "now", run = 2, values = new { amount = "7", words = "seen" },
            inSight = new[] { 5 } });
        Assert.Equal([5], (await reader.UntilAsync("inSight", 2)).GetProperty("rerun").EnumerateArray()
            .Select(cell => cell.GetInt32()));
        Assert.Empty(reader.Parts(2, "answer"));
        Assert.Equal([5, 4, 6], (await reader.EndAsync(2)).GetProperty("rerun").EnumerateArray().Select(cell => cell.GetInt32()));
    }

    [Fact]
    public async Task Two_queues_keep_apart()
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("01-quick");
        await reader.RunAsync(1, new { words = "now" });
        await reader.EndAsync(1);
        await reader.RunAsync(2, new { words = "pinned" }, "pinned");
        Assert.Equal("pinned", (await reader.EndAsync(2)).Text("queue"));
        await reader.RunAsync(3, new { words = "now", side = "right" });
        await reader.EndAsync(3);
        Assert.Contains("Words: now. Side: right", Assert.Single(reader.Parts(3, "answer")).Text("text"),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_run_that_is_overtaken_stops_and_only_the_newest_is_answered()
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("02-slow");
        await reader.RunAsync(1, new { seconds = "600" });
        await reader.UntilAsync("progress", 1);
        for (var run = 2; run <= 20; run++)
            await reader.RunAsync(run, new { seconds = run < 20 ? "500" : "0" });
        Assert.Equal("done", (await reader.EndAsync(20)).Text("kind"));
        var ends = reader.Messages.Where(message => message.Text("kind") is "done" or "stopped").ToList();
        Assert.Equal(Enumerable.Range(1, 20), ends.Select(end => end.GetProperty("run").GetInt32()).Order());
        Each.Of(ends.Where(end => end.GetProperty("run").GetInt32() < 20), end => Assert.Equal("overtaken", end.Text("why")));
    }

    [Fact]
    public async Task A_run_is_never_overtaken_by_itself()
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("01-quick");
        for (var run = 1; run <= 300; run++)
        {
            await reader.RunAsync(run, new { words = $"{run}" });
            Assert.Equal("done", (await reader.EndAsync(run)).Text("kind"));
        }
    }

    [Fact]
    public async Task A_reader_may_stop_a_run()
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("02-slow");
        await reader.RunAsync(1, new { seconds = "600" });
        await reader.UntilAsync("progress", 1);
        await reader.SendAsync(new { kind = "stop", queue = "pinned" });
        await reader.SendAsync(new { kind = "stop", queue = "now" });
        Assert.Equal("asked", (await reader.EndAsync(1)).Text("why"));
    }

    [Fact]
    public async Task A_cell_that_fails_tells_where_and_why_as_text()
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("03-fails");
        await reader.RunAsync(1, new { });
        var failed = await reader.EndAsync(1);
        Assert.Equal(("failed", 4, 3), (failed.Text("kind"), failed.GetProperty("cell").GetInt32(),
            failed.GetProperty("line").GetInt32()));
        Assert.Equal("The lens is <b>missing</b>.", failed.Text("text"));
        await reader.RunAsync(2, new { fails = "0" });
        Assert.Equal("done", (await reader.EndAsync(2)).Text("kind"));
        Assert.Empty(server.Reports);
    }

    [Fact]
    public async Task A_notebook_that_changed_on_disk_is_read_anew()
    {
        await using var server = await TrialServer.StartAsync();
        using (var reader = await server.OpenAsync("01-quick"))
        {
            await reader.RunAsync(1, new { });
            await reader.EndAsync(1);
        }
        var file = Path.Combine(server.Notebooks, "01-quick.ipynb");
        File.WriteAllText(file, File.ReadAllText(file).Replace("Words:", "New words:", StringComparison.Ordinal));
        File.SetLastWriteTimeUtc(file, File.GetLastWriteTimeUtc(file).AddSeconds(2));
        using var again = await server.OpenAsync("01-quick");
        await again.RunAsync(1, new { });
        await again.EndAsync(1);
        Assert.StartsWith("New words:", Assert.Single(again.Parts(1, "answer")).Text("text"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("none", 404)]
    [InlineData("04-broken", 400)]
    public async Task What_is_no_notebook_opens_no_connection(string name, int status)
    {
        await using var server = await TrialServer.StartAsync();
        Assert.Equal(status, (await Assert.ThrowsAsync<RefusedException>(() => server.OpenAsync(name))).Status);
    }

    [Fact]
    public async Task Links_to_other_notebooks_lead_to_their_living_pages()
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("01-quick");
        var html = (await reader.UntilAsync("notebook")).GetProperty("cells")[0].Text("html");
        Assert.Contains("href=\"/n/02-slow\"", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_page_to_keep_is_whole_and_made_with_the_values()
    {
        await using var server = await TrialServer.StartAsync();
        using var answer = await server.GetAsync("/api/page/01-quick?words=kept&amount=3");
        Assert.Equal("01-quick.html", answer.Content.Headers.ContentDisposition!.FileName!.Trim('"'));
        var page = await answer.TextAsync();
        Assert.Contains("Words: kept.", page, StringComparison.Ordinal);
        Assert.EndsWith("</html>\n", page, StringComparison.Ordinal);
        using var wrong = await server.GetAsync("/api/page/01-quick?amount=99");
        Assert.Equal(HttpStatusCode.BadRequest, wrong.StatusCode);
        Assert.Contains("99 lies outside 0 to 10", (await wrong.JsonAsync()).Problems(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task When_the_server_stops_readers_are_told_and_runs_end()
    {
        var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("02-slow");
        await reader.RunAsync(1, new { seconds = "600" });
        await reader.UntilAsync("progress", 1);
        await server.DisposeAsync();
        while (await reader.NextAsync() is not null)
        {
        }
        Assert.Equal(System.Net.WebSockets.WebSocketCloseStatus.EndpointUnavailable, reader.Closed);
    }

    public static TheoryData<string> Committed =>
        [.. Directory.EnumerateFiles(Path.Combine(Checkout.Root, "notebooks"), "*.ipynb")
        .Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal)];

    [Fact]
    public void All_committed_notebooks_are_looked_at() => Assert.True(Committed.Count >= 8, $"{Committed.Count} notebooks");

    [Theory]
    [MemberData(nameof(Committed))]
    public async Task A_committed_notebook_answers_with_figures(string name)
    {
        await using var server = await TrialServer.StartAsync(ownNotebooks: true);
        using var reader = await server.OpenAsync(name);
        await reader.RunAsync(1, new { });
        Assert.Equal("done", (await reader.EndAsync(1)).Text("kind"));
        Each.Of(reader.Parts(1, "answer"), answer => Assert.NotEqual("", answer.Text("text")));
        Each.Of(reader.Parts(1, "figure"), figure =>
        {
            Assert.NotEmpty(figure.GetProperty("specification").GetProperty("data").EnumerateArray());
            Assert.NotEmpty(figure.GetProperty("table").GetProperty("rows").EnumerateArray());
            Assert.NotEmpty(figure.Text("alternative"));
        });
        Assert.Empty(server.Reports);
    }
}
