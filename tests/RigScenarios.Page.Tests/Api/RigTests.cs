using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Api;

/// <summary>One's own rig: from the first question to a file that the command line takes with the same answer.</summary>
public sealed class RigTests
{
    [Fact]
    public async Task The_form_gets_its_questions_fields_parts_days_and_a_first_rig()
    {
        await using var server = await TrialServer.StartAsync();
        var knowledge = await (await server.GetAsync("/api/rig/questions")).JsonAsync();
        Assert.Equal(["camera", "battery"], knowledge.GetProperty("questions").EnumerateArray().Take(2)
            .Select(question => question.Text("key")));
        var part = knowledge.GetProperty("parts").EnumerateArray().First(part => part.Text("id") == "compact-body-b");
        Assert.Equal(("body", "820 g"), (part.Text("kind"), part.Text("mass")));
        Assert.Contains("21 W", part.Text("draw"), StringComparison.Ordinal);
        Assert.Equal(5, knowledge.GetProperty("days").GetArrayLength());
        Assert.NotEmpty(knowledge.GetProperty("days")[0].Text("sentence"));
        var given = knowledge.GetProperty("given");
        Assert.Equal("100 %", given.GetProperty("builds").GetProperty("rig").GetProperty("battery").Text("charge"));
        Assert.NotEmpty(given.GetProperty("days").GetProperty("day").GetProperty("blocks").EnumerateObject());
        Assert.Equal(("rig", "day"), (knowledge.Text("build"), knowledge.Text("day")));
        Assert.Equal("builds.{build}.battery.charge", knowledge.GetProperty("fields").EnumerateArray()
            .Single(field => field.Text("key") == "charge").Text("path"));
        var watts = knowledge.GetProperty("label").EnumerateArray().Single(figure => figure.Text("path") == "power.record");
        Assert.Contains("camera", watts.GetProperty("needed").EnumerateArray().Select(key => key.GetString()));
    }

    [Fact]
    public async Task The_answer_builds_up_and_says_what_is_still_missing()
    {
        await using var server = await TrialServer.StartAsync();
        var nothing = await FormRig.AnswerAsync(server, await FormRig.BlankAsync(server));
        Assert.Equal([("builds.rig.devices", "Camera body"), ("builds.rig.battery.item", "Battery")],
            nothing.GetProperty("missing").EnumerateArray().Select(field => (field.Text("path"), field.Text("label"))));
        Assert.Empty(nothing.GetProperty("parts").EnumerateArray());
        var whole = await FormRig.AnswerAsync(server, await FormRig.SmallAsync(server));
        Assert.Equal(["camera", "battery", "plate", "monitor"],
            whole.GetProperty("view").GetProperty("things").EnumerateArray().Select(thing => thing.Text("name")));
        Assert.Empty(whole.GetProperty("missing").EnumerateArray());
        Assert.Empty(whole.GetProperty("problems").EnumerateArray());
        Assert.Matches("^(Yes|Just|No|Not known): ", whole.GetProperty("answer").Text("text"));
        // The verdict in words, with a line for each question.
        Each.Of(["Power", "Wiring", "Balance", "Tripod and joints"],
            title => Assert.Contains($">{title}<", whole.GetProperty("first").Text("html"), StringComparison.Ordinal));
        Assert.NotEmpty(whole.GetProperty("answer").GetProperty("cautions").EnumerateArray());
        // The day first, then whether it balances, with the rig drawn at its usual places, then the wiring.
        var parts = whole.GetProperty("parts").EnumerateArray().ToList();
        Assert.Equal("figure", parts[0].Text("type"));
        Assert.Contains("class=\"rs-wide\"", parts.First(part => part.Text("type") == "drawing").Text("svg"),
            StringComparison.Ordinal);
        Assert.True(whole.GetProperty("isWhole").GetBoolean());
        Assert.Contains(whole.GetProperty("wiring").EnumerateArray(), line => line.GetProperty("proposed").GetBoolean());
        Assert.Contains(whole.GetProperty("assumed").EnumerateArray(),
            assumed => assumed.Text("name").Length > 0 && assumed.Text("value").Length > 0 && assumed.Text("source").Length > 0);
        Assert.EndsWith("g", whole.Text("mass").Split(" (")[0], StringComparison.Ordinal);
        Assert.Contains("EUR", whole.Text("price"), StringComparison.Ordinal);
        Assert.StartsWith("rigscenarios: scenario 1", whole.Text("text"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_answer_draws_its_wiring_with_the_nearest_limit_first()
    {
        await using var server = await TrialServer.StartAsync();
        var given = await FormRig.SmallAsync(server);
        var answer = await FormRig.AnswerAsync(server, given);
        var parts = answer.GetProperty("parts").EnumerateArray().ToList();
        var drawing = Assert.Single(parts, part => part.Text("type") == "drawing"
            && part.Text("slug").StartsWith("wiring", StringComparison.Ordinal));
        foreach (var line in answer.GetProperty("wiring").EnumerateArray())
            Assert.Contains($"data-element=\"{line.Text("thing")}\"", drawing.Text("svg"), StringComparison.Ordinal);
        // The same words and limits as the library gives for the file that would be saved.
        var ofFile = RigAnswer.Of(ScenarioFile.TryReadText(answer.Text("text"), "mine.yaml").Scenario!, "rig", ["day"],
            cancellation: TestContext.Current.CancellationToken);
        var told = AnswerSentences.Questions(ofFile).Single(question => question.Kind == QuestionKind.Wiring);
        Assert.Contains(parts, part => part.Text("type") == "prose" && part.Text("text") == told.Words);
        var limits = parts.Last(part => part.Text("type") == "table");
        var times = new AnswerTimes(ofFile.Plan.Days);
        var expected = ofFile.Of(QuestionKind.Wiring)!.Limits.Where(limit => limit.Allowed is not null).Take(8)
            .Select(limit => $"{LimitSentences.Of(limit, times)}.");
        Assert.Equal(expected, limits.GetProperty("table").GetProperty("rows").EnumerateArray()
            .Select(row => row[0].GetString()!), StringComparer.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task What_is_wrong_is_told_at_its_field_beside_what_can_be_said()
    {
        await using var server = await TrialServer.StartAsync();
        var given = await FormRig.SmallAsync(server);
        given["parts"]!["own-monitor"]!["mass"] = "heavy";
        var answer = await FormRig.AnswerAsync(server, given);
        var problem = Assert.Single(answer.GetProperty("problems").EnumerateArray());
        Assert.Equal("parts.own-monitor.mass", problem.Text("path"));
        Assert.Contains("g", problem.Text("accepted"), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, answer.GetProperty("text").ValueKind);
        using var saved = await server.SendJsonAsync(HttpMethod.Post, "/api/rig/save", new { given, name = "mine.yaml" });
        Assert.Equal(HttpStatusCode.BadRequest, saved.StatusCode);
        Assert.Empty(Directory.EnumerateFileSystemEntries(server.Rigs));
    }

    [Fact]
    public async Task A_saved_rig_is_an_ordinary_file_with_the_same_answer()
    {
        await using var server = await TrialServer.StartAsync();
        var given = await FormRig.SmallAsync(server);
        var shown = await FormRig.AnswerAsync(server, given);
        var saved = await (await server.SendJsonAsync(HttpMethod.Post, "/api/rig/save", new { given, name = "my rig.yaml" }))
            .JsonAsync();
        Assert.Equal("own/my rig.yaml", saved.Text("id"));
        Assert.Equal("rigscenarios run \"my rig.yaml\"", saved.Text("command"));
        var scenario = ScenarioFile.Read(Path.Combine(server.Rigs, "my rig.yaml"));
        var ofFile = RigAnswer.Of(scenario, saved.Text("build"), [saved.Text("day")],
            cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(AnswerSentences.Headline(ofFile), shown.GetProperty("answer").Text("text"));
        Assert.Equal(shown.Text("text"), File.ReadAllText(Path.Combine(server.Rigs, "my rig.yaml")));
        using var again = await server.SendJsonAsync(HttpMethod.Post, "/api/rig/save", new { given, name = "my rig.yaml" });
        Assert.Equal(HttpStatusCode.Conflict, again.StatusCode);
    }

    [Fact]
    public async Task A_file_opens_in_the_form_and_keeps_its_comments_and_what_the_form_does_not_show()
    {
        await using var server = await TrialServer.StartAsync();
        var file = Path.Combine(server.Rigs, "mine.yaml");
        var before = Checkout.Sample("teaching-kit.yaml")
            .Replace("[../parts]", $"[\"{Checkout.Data.Replace('\\', '/')}/parts\"]", StringComparison.Ordinal)
            .Replace("title: Teaching kit", "title: Teaching kit  # ours since spring", StringComparison.Ordinal);
        File.WriteAllText(file, before);
        var opened = await (await server.GetAsync("/api/rig/given?file=own/mine.yaml&build=full-rig")).JsonAsync();
        Assert.Equal("full-rig", opened.Text("build"));
        var given = JsonNode.Parse(opened.GetProperty("given").GetRawText())!;
        given["builds"]!["full-rig"]!["battery"]!["charge"] = "90 %";
        using var answer = await server.SendJsonAsync(HttpMethod.Post, "/api/rig/save",
            new { given, name = "mine.yaml", file = "own/mine.yaml", build = "full-rig", day = opened.Text("day"),
            version = opened.Text("version") });
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains("--build full-rig", (await answer.JsonAsync()).Text("command"), StringComparison.Ordinal);
        var after = File.ReadAllText(file);
        Assert.Contains("# ours since spring", after, StringComparison.Ordinal);
        Assert.Equal(before.Split('\n').Length, after.Split('\n').Length);
        var changed = before.Split('\n').Zip(after.Split('\n')).Where(lines => lines.First != lines.Second).ToList();
        Assert.Contains("charge: 90 %", Assert.Single(changed).Second, StringComparison.Ordinal);
        Assert.Equal(90, ScenarioFile.Read(file).Builds["full-rig"].Battery.Charge!.Value.Percent, 1e-9);
        Assert.Equal(100, ScenarioFile.Read(file).Builds["camera-only"].Battery.Charge!.Value.Percent, 1e-9);
    }

    [Fact]
    public async Task A_form_does_not_write_over_a_file_that_changed_meanwhile()
    {
        await using var server = await TrialServer.StartAsync();
        var given = await FormRig.SmallAsync(server);
        (await server.SendJsonAsync(HttpMethod.Post, "/api/rig/save", new { given, name = "mine.yaml" })).Dispose();
        var opened = await (await server.GetAsync("/api/rig/given?file=own/mine.yaml")).JsonAsync();
        File.AppendAllText(Path.Combine(server.Rigs, "mine.yaml"), "# changed elsewhere\n");
        var body = new { given, name = "mine.yaml", file = "own/mine.yaml", build = opened.Text("build"),
            day = opened.Text("day"), version = opened.Text("version") };
        using var answer = await server.SendJsonAsync(HttpMethod.Post, "/api/rig/save", body);
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.EndsWith("# changed elsewhere\n", File.ReadAllText(Path.Combine(server.Rigs, "mine.yaml")),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_sample_becomes_an_own_file_that_finds_the_same_parts()
    {
        await using var server = await TrialServer.StartAsync();
        var opened = await (await server.GetAsync("/api/rig/given?file=samples/winter-harbour.yaml")).JsonAsync();
        using var answer = await server.SendJsonAsync(HttpMethod.Post, "/api/rig/save",
            new { given = opened.GetProperty("given"), name = "harbour.yaml", file = "samples/winter-harbour.yaml",
            build = opened.Text("build"), day = opened.Text("day") });
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var mine = ScenarioFile.Read(Path.Combine(server.Rigs, "harbour.yaml"));
        var sample = ScenarioFile.Read(Path.Combine(Checkout.Data, "scenarios", "winter-harbour.yaml"));
        Assert.Equal(ScenarioFile.Text(sample with { PartsFrom = [] }), ScenarioFile.Text(mine with { PartsFrom = [] }));
        Assert.Equal(sample.Library.Keys, mine.Library.Keys);
        Assert.Contains("# ", File.ReadAllText(Path.Combine(server.Rigs, "harbour.yaml")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("build=none", "build")]
    [InlineData("day=none", "day")]
    public async Task A_build_or_day_that_is_not_there_is_told_with_those_that_are(string query, string what)
    {
        await using var server = await TrialServer.StartAsync();
        using var answer = await server.GetAsync($"/api/rig/given?file=samples/teaching-kit.yaml&{query}");
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        var problem = (await answer.JsonAsync()).GetProperty("problems")[0];
        Assert.Equal(what, problem.Text("path"));
        Assert.NotEmpty(problem.Text("accepted"));
    }

    [Fact]
    public async Task The_form_has_the_queue_of_the_notebooks()
    {
        await using var server = await TrialServer.StartAsync();
        using var form = await LiveReader.OpenRigAsync(server);
        var given = await FormRig.BlankAsync(server);
        for (var run = 1; run <= 20; run++)
            await form.SendAsync(new { kind = "run", queue = "now", run, given });
        Assert.Equal("done", (await form.EndAsync(20)).Text("kind"));
        var ends = form.Messages.Where(message => message.Text("kind") is "done" or "stopped")
            .Select(end => end.GetProperty("run").GetInt32());
        Assert.Equal(Enumerable.Range(1, 20), ends.Order());

        await form.SendAsync(new { kind = "run", queue = "now", run = 21 });
        var refused = await form.EndAsync(21);
        Assert.Equal(("problems", 400), (refused.Text("kind"), refused.GetProperty("status").GetInt32()));
        Assert.Contains("What is given of the rig is missing", refused.Problems(), StringComparison.Ordinal);
        await form.SendAsync(new { kind = "run", queue = "now", run = 22, given, file = "own/none.yaml" });
        Assert.Equal(404, (await form.EndAsync(22)).GetProperty("status").GetInt32());
        await form.SendAsync(new { kind = "run", queue = "pinned", run = 23, given });
        Assert.Contains("There is no such queue", (await form.UntilAsync("problems")).Problems(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_would_make_it_work_comes_after_the_answer_on_the_same_line_and_is_what_the_file_gives()
    {
        await using var server = await TrialServer.StartAsync();
        var given = await FormRig.SmallAsync(server);
        // Common practice, no source: 98 Wh do not carry a body of 21 W and a monitor through ten hours.
        given["kit"]!["battery"]!["part"] = "brick-98wh";
        using var form = await LiveReader.OpenRigAsync(server);
        await form.SendAsync(new { kind = "run", queue = "now", run = 1, given });
        Assert.Equal("done", (await form.EndAsync(1)).Text("kind"));
        var kinds = form.Messages.Select(message => message.Text("kind")).Where(kind => kind != "progress").ToList();
        Assert.Equal(["answer", "rests-on", "would-work", "done"], kinds);
        var answer = form.Messages.First(message => message.Text("kind") == "answer");
        Assert.True(answer.GetProperty("seeks").GetBoolean());
        var ofFile = RigAnswer.Of(ScenarioFile.TryReadText(answer.Text("text"), "mine.yaml").Scenario!, "rig", ["day"],
            cancellation: TestContext.Current.CancellationToken);
        var sets = WouldWork.Find(ofFile, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(WouldWorkSentences.Heading(sets),
            form.Messages.First(message => message.Text("kind") == "would-work").Text("text"));
    }

    [Fact]
    public async Task A_change_stops_the_search_for_what_would_make_it_work()
    {
        await using var server = await TrialServer.StartAsync();
        var given = await FormRig.SmallAsync(server);
        given["kit"]!["battery"]!["part"] = "brick-98wh";
        using var form = await LiveReader.OpenRigAsync(server);
        await form.SendAsync(new { kind = "run", queue = "now", run = 1, given });
        await form.UntilAsync("answer");
        await form.SendAsync(new { kind = "run", queue = "now", run = 2, given });
        Assert.Equal("overtaken", (await form.EndAsync(1)).Text("why"));
        Assert.Equal("done", (await form.EndAsync(2)).Text("kind"));
        Assert.Equal(2, Assert.Single(form.Messages, message => message.Text("kind") == "would-work")
            .GetProperty("run").GetInt32());
    }

    [Fact]
    public async Task A_file_with_errors_opens_as_text_only()
    {
        await using var server = await TrialServer.StartAsync();
        File.WriteAllText(Path.Combine(server.Rigs, "mine.yaml"), "rigscenarios: scenario 1\ntitle: [\n");
        using var answer = await server.GetAsync("/api/rig/given?file=own/mine.yaml");
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("Open it as text", (await answer.JsonAsync()).Problems(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_of_a_new_rig_opens_as_it_was_given()
    {
        await using var server = await TrialServer.StartAsync();
        var given = await FormRig.SmallAsync(server);
        (await server.SendJsonAsync(HttpMethod.Post, "/api/rig/save", new { given, name = "mine.yaml" })).Dispose();
        var opened = await (await server.GetAsync("/api/rig/given?file=own/mine.yaml")).JsonAsync();
        Assert.True(JsonNode.DeepEquals(Sorted(given), Sorted(JsonNode.Parse(opened.GetProperty("given").GetRawText())!)));

        static JsonNode Sorted(JsonNode node) => node is JsonObject map
            ? new JsonObject(map.OrderBy(entry => entry.Key, StringComparer.Ordinal)
                .Select(entry => KeyValuePair.Create(entry.Key, (JsonNode?)Sorted(entry.Value!)))) : node.DeepClone();
    }
}
