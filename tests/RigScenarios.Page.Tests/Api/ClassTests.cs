using System.Net;
using System.Text.Json;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Api;

/// <summary>Tasks for a class: kept, handed out, worked on, handed in, revealed.</summary>
public sealed class ClassTests
{
    /// <summary>What the program has to say of the harbour's first day, read from the teacher's page.</summary>
    private static async Task<List<string>> AnswersAsync(ClassRoom room)
    {
        var lesson = await room.LessonAsync();
        return [lesson.Text("headline"), .. lesson.GetProperty("asked").EnumerateArray()
            .Select(asked => asked.GetProperty("answer").GetString()).OfType<string>()];
    }

    [Fact]
    public async Task Nothing_that_is_hidden_is_sent_until_the_teacher_shows_it()
    {
        await using var server = await TrialServer.StartAsync();
        var room = new ClassRoom(server);
        var code = ClassRoom.CodeOf(await room.KeepAsync(ClassRoom.Harbour));
        var answers = await AnswersAsync(room);
        Assert.Equal(5, answers.Count);
        var first = await room.ViewAsync(code);
        Assert.True(first.GetProperty("isHiding").GetBoolean());
        Assert.Equal(["Power", "Wiring", "Balance", "Tripod and joints", "Travel"],
            first.GetProperty("hidden").EnumerateArray().Select(title => title.GetString()));
        Each.Of(answers, answer => Assert.DoesNotContain(JsonText(answer), first.GetRawText(), StringComparison.Ordinal),
            atLeast: 5);
        Assert.DoesNotContain("centre of gravity", first.GetProperty("parts").GetRawText(), StringComparison.Ordinal);
        var student = first.Text("student");
        var told = await room.LessonAsync(new { revealed = true });
        Assert.True(told.GetProperty("isRevealed").GetBoolean());
        var after = await room.ViewAsync(code, student: student);
        Assert.NotEqual(first.Text("version"), after.Text("version"));
        Each.Of(answers, answer => Assert.Contains(JsonText(answer), after.GetRawText(), StringComparison.Ordinal), atLeast: 5);
        await room.LessonAsync(new { revealed = false });
        Assert.Equal(first.GetProperty("asked").GetRawText(), (await room.ViewAsync(code)).GetProperty("asked").GetRawText());
    }

    [Fact]
    public async Task Only_what_is_open_can_be_set_and_only_within_its_bounds()
    {
        await using var server = await TrialServer.StartAsync();
        var room = new ClassRoom(server);
        var code = ClassRoom.CodeOf(await room.KeepAsync(ClassRoom.Harbour));
        var cold = await room.ViewAsync(code, new { air = "-18" });
        Assert.Contains("air -18", cold.GetProperty("days").GetRawText(), StringComparison.Ordinal);
        Assert.Equal("air", Assert.Single(cold.GetProperty("controls").EnumerateArray()).Text("name"));
        foreach (var (settings, words) in new (Dictionary<string, string>, string)[] {
            (new() { ["air"] = "-21" }, "It goes from"), (new() { ["title"] = "mine" }, "locked"),
            (new() { ["builds.tripod.battery.charge"] = "1" }, "locked") })
        {
            var (status, text) = await room.StudentAsync(HttpMethod.Post, $"/api/lesson/{code}/view", new { settings });
            Assert.Equal(HttpStatusCode.BadRequest, status);
            Assert.Contains(words, ClassRoom.Read(text).Problems(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task What_is_handed_in_comes_to_the_teacher_with_what_was_changed()
    {
        await using var server = await TrialServer.StartAsync();
        var room = new ClassRoom(server);
        var code = ClassRoom.CodeOf(await room.KeepAsync(ClassRoom.Harbour));
        var (one, other) = ((await room.ViewAsync(code)).Text("student"), (await room.ViewAsync(code)).Text("student"));
        Assert.NotEqual(one, other);
        Assert.Equal(HttpStatusCode.OK, (await room.HandInAsync(code, one, "Ada", new { energy = "200 Wh" })).Status);
        Assert.Equal(HttpStatusCode.OK,
            (await room.HandInAsync(code, other, "Bo", new { works = "no" }, new { air = "-18" })).Status);
        // Once more, in the place of the first.
        Assert.Equal(HttpStatusCode.OK, (await room.HandInAsync(code, one, "Ada", new { energy = "180 Wh" })).Status);
        var lesson = await room.LessonAsync();
        var handed = lesson.GetProperty("handIns").EnumerateArray().ToList();
        Assert.Equal(["Ada", "Bo"], handed.Select(hand => hand.Text("name")));
        Assert.Equal("180 Wh", handed[0].GetProperty("estimates").Text("energy"));
        Assert.Equal(["coldest air: -8 °C → -18 °C"], handed[1].GetProperty("changes").EnumerateArray()
            .Select(change => change.GetString()));
        Assert.Equal(lesson.Text("headline"), handed[0].Text("outcome"));
        Assert.NotEqual(handed[0].Text("outcome"), handed[1].Text("outcome"));
        // Neither of them is told anything of it.
        var (_, state) = await room.StudentAsync(HttpMethod.Get, $"/api/lesson/{code}/state?student={one}");
        Assert.DoesNotContain("Bo", state, StringComparison.Ordinal);
        Assert.True((await room.ViewAsync(code, student: one)).GetProperty("isHiding").GetBoolean());
        Assert.Equal(0, (await room.LessonAsync(new { clear = true })).GetProperty("handIns").GetArrayLength());
    }

    [Fact]
    public async Task To_each_until_it_is_handed_in_shows_it_to_that_one_alone_and_for_good()
    {
        await using var server = await TrialServer.StartAsync();
        var room = new ClassRoom(server);
        var code = ClassRoom.CodeOf(await room.KeepAsync(new(ClassRoom.Harbour) { ["reveal"] = "on-hand-in" }));
        var (one, other) = ((await room.ViewAsync(code)).Text("student"), (await room.ViewAsync(code)).Text("student"));
        foreach (var (name, estimates, words) in new (string, object, string)[] { ("", new { energy = "1" }, "name"),
            ("Ada", new { }, "at least one"), ("Ada", new { energy = "  " }, "at least one"),
            ("Ada", new { nonsense = "1" }, "at least one"), (new string('a', 61), new { energy = "1" }, "can't be handed in"),
            ("A\u0007da", new { energy = "1" }, "can't be handed in"),
            ("Ada", new { energy = new string('1', 301) }, "can't be") })
        {
            var (status, text) = await room.HandInAsync(code, one, name, estimates);
            Assert.Equal(HttpStatusCode.BadRequest, status);
            Assert.Contains(words, ClassRoom.Read(text).Problems(), StringComparison.Ordinal);
        }
        Assert.True((await room.ViewAsync(code, student: one)).GetProperty("isHiding").GetBoolean());
        Assert.Equal(HttpStatusCode.OK, (await room.HandInAsync(code, one, "Ada")).Status);
        Assert.False((await room.ViewAsync(code, student: one)).GetProperty("isHiding").GetBoolean());
        Assert.True((await room.ViewAsync(code, student: other)).GetProperty("isHiding").GetBoolean());
        Assert.True((await room.ViewAsync(code)).GetProperty("isHiding").GetBoolean());
        // Who has seen the answer changes no estimate.
        Assert.Equal(HttpStatusCode.Conflict, (await room.HandInAsync(code, one, "Ada", new { energy = "152 Wh" })).Status);
    }

    [Fact]
    public async Task A_task_survives_the_program_and_the_hand_ins_do_not()
    {
        await using var server = await TrialServer.StartAsync();
        var room = new ClassRoom(server);
        var kept = await room.KeepAsync(ClassRoom.Harbour);
        var code = ClassRoom.CodeOf(kept);
        Assert.Equal($"{server.Origin}/lesson/{code}", kept.GetProperty("addresses")[0].GetString());
        var student = (await room.ViewAsync(code)).Text("student");
        Assert.Equal(HttpStatusCode.OK, (await room.HandInAsync(code, student, "Ada Secret")).Status);
        await room.LessonAsync(new { revealed = true });
        Assert.DoesNotContain("Ada Secret", string.Concat(Directory.EnumerateFiles(server.Rigs).Select(File.ReadAllText)),
            StringComparison.Ordinal);
        await server.StopAsync();
        await server.StartAgainAsync();
        var again = await room.ViewAsync(code, student: student);
        Assert.True(again.GetProperty("isHiding").GetBoolean());
        Assert.False(again.GetProperty("isIn").GetBoolean());
    }

    [Fact]
    public async Task A_changed_task_and_a_changed_scenario_are_what_the_class_sees_next()
    {
        await using var server = await TrialServer.StartAsync();
        var room = new ClassRoom(server);
        var own = Path.Combine(server.Rigs, "mine.yaml");
        File.WriteAllText(own, File.ReadAllText(Path.Combine(Checkout.Data, "scenarios", "winter-harbour.yaml"))
            .Replace("../parts", Path.Combine(Checkout.Data, "parts"), StringComparison.Ordinal));
        var kept = await room.KeepAsync(new(ClassRoom.Harbour) { ["scenario"] = "own/mine.yaml" });
        var code = ClassRoom.CodeOf(kept);
        Assert.Contains("Winter harbour", (await room.ViewAsync(code)).Text("about"), StringComparison.Ordinal);
        File.WriteAllText(own, File.ReadAllText(own).Replace("title: Winter harbour", "title: Summer harbour",
            StringComparison.Ordinal));
        Assert.Contains("Summer harbour", (await room.ViewAsync(code)).Text("about"), StringComparison.Ordinal);
        var changed = await room.KeepAsync(new(ClassRoom.Harbour) { ["scenario"] = "own/mine.yaml", ["title"] = "Anew",
            ["code"] = code }, version: kept.Text("version"));
        Assert.Equal(code, ClassRoom.CodeOf(changed));
        Assert.Equal("Anew", (await room.ViewAsync(code)).Text("title"));
        // A copy is another task, with another address.
        var copy = await room.KeepAsync(new(ClassRoom.Harbour) { ["code"] = code }, "copy.task.yaml");
        Assert.NotEqual(code, ClassRoom.CodeOf(copy));
        using var conflict = await server.SendJsonAsync(HttpMethod.Put, "/api/class/task/copy.task.yaml",
            new { task = ClassRoom.Harbour, version = "0", replace = false });
        Assert.Equal(HttpStatusCode.Conflict, conflict.StatusCode);
    }

    [Fact]
    public async Task An_exercise_is_a_task_whose_key_is_sent_to_nobody_before_it_is_shown()
    {
        await using var server = await TrialServer.StartAsync();
        var room = new ClassRoom(server);
        var code = ClassRoom.CodeOf(await room.KeepAsync(new(StringComparer.Ordinal)
        {
            ["title"] = "What is wrong?", ["scenario"] = "samples/pottery-class.yaml", ["build"] = "tripod", ["causes"] = 3,
            ["seed"] = 2, ["shown"] = new[] { "power", "wiring", "balance", "stand" },
        }));
        var key = (await room.LessonAsync()).GetProperty("asked").EnumerateArray().Select(asked => asked.Text("answer"))
            .ToList();
        Assert.Equal(6, key.Count);
        var view = await room.ViewAsync(code);
        Each.Of(key, words => Assert.DoesNotContain(JsonText(words), view.GetRawText(), StringComparison.Ordinal), atLeast: 6);
        Assert.Contains("Three causes are still there.", view.GetProperty("check").EnumerateArray().Select(line =>
            line.GetString()));
        await room.LessonAsync(new { revealed = true });
        var told = (await room.ViewAsync(code)).GetRawText();
        Each.Of(key, words => Assert.Contains(JsonText(words), told, StringComparison.Ordinal), atLeast: 6);
    }

    [Fact]
    public async Task A_task_that_no_class_could_open_is_not_kept()
    {
        await using var server = await TrialServer.StartAsync();
        foreach (var (field, value, words) in new (string, object, string)[] { ("title", " ", "title first"),
            ("build", "tripot", "no build"), ("scenario", "samples/nothing.yaml", "no scenario file"),
            ("scenario", "../secret.yaml", "no scenario file"), ("days", new[] { "day-none" }, "no day"),
            ("shown", new[] { "all" }, "can't be read"), ("causes", 4, "Found"), ("causes", 2, "starts from a rig that works"),
            ("controls", new[] { new { field = "nothing" } }, "is called"), ("text", new string('a', 4001), "Found"),
            ("ownQuestions", Enumerable.Repeat("Why?", 13), "Found"), ("code", "../../etc", "Found") })
        {
            using var answer = await server.SendJsonAsync(HttpMethod.Put, "/api/class/task/a.task.yaml",
                new { task = new Dictionary<string, object?>(ClassRoom.Harbour) { [field] = value } });
            var json = await answer.JsonAsync();
            Assert.True(answer.StatusCode is HttpStatusCode.BadRequest or HttpStatusCode.NotFound, $"{field}: {json}");
            Assert.Contains(words, json.Problems(), StringComparison.Ordinal);
        }
        Assert.Empty(Directory.EnumerateFileSystemEntries(server.Rigs));
        Assert.Empty(server.Reports);
    }

    [Fact]
    public async Task Tasks_are_no_scenarios_of_the_shelf_and_sheets_are_made_of_what_is_not_kept_yet()
    {
        await using var server = await TrialServer.StartAsync();
        var room = new ClassRoom(server);
        await room.KeepAsync(ClassRoom.Harbour);
        File.WriteAllText(Path.Combine(server.Rigs, "odd.task.yaml"), "rigscenarios: class task 1\nnonsense: 1\n");
        var shelf = await (await server.GetAsync("/api/shelf")).JsonAsync();
        Assert.DoesNotContain("task.yaml", shelf.GetRawText(), StringComparison.Ordinal);
        var tasks = (await (await server.GetAsync("/api/class/tasks")).JsonAsync()).GetProperty("tasks").EnumerateArray()
            .ToList();
        Assert.Equal([("cold.task.yaml", "How cold may it be?", true), ("odd.task.yaml", "odd.task.yaml", false)],
            tasks.Select(task => (task.Text("name"), task.Text("title"), task.GetProperty("isRead").GetBoolean())));
        var answers = await AnswersAsync(room);
        foreach (var solution in (bool[])[false, true])
        {
            var sheet = await (await server.SendJsonAsync(HttpMethod.Post, "/api/class/sheet",
                new { task = ClassRoom.Harbour, solution })).TextAsync();
            Assert.Contains("Estimate first.", sheet, StringComparison.Ordinal);
            Assert.Equal(solution, sheet.Contains(answers[0].Split(',')[0], StringComparison.Ordinal));
        }
    }

    // As it stands in JSON, where a degree sign and a dash are escaped.
    private static string JsonText(string text) => JsonSerializer.Serialize(text)[1..^1];
}
