using System.Net;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Attacks;

/// <summary>Whoever has the code of a task has that task, and nothing else of the server.</summary>
public sealed class StudentTests
{
    [Fact]
    public async Task The_code_of_a_task_opens_that_task_and_nothing_else()
    {
        await using var server = await TrialServer.StartAsync();
        var room = new ClassRoom(server);
        var code = ClassRoom.CodeOf(await room.KeepAsync(ClassRoom.Harbour));
        var page = await server.SendAsync(new HttpRequestMessage(HttpMethod.Get, server.At($"/lesson/{code}")), isReader: false);
        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
        var cookie = Assert.Single(page.Headers.GetValues("Set-Cookie"));
        Assert.Contains("path=/assets", cookie, StringComparison.Ordinal);
        Assert.Contains("httponly", cookie, StringComparison.Ordinal);
        cookie = cookie.Split(';')[0];
        var text = await page.TextAsync();
        foreach (var secret in (string[])[server.Key, server.Cookie.Split('=')[1], "How cold", server.Rigs])
            Assert.DoesNotContain(secret, text, StringComparison.Ordinal);
        // What the page loads.
        foreach (var asset in (string[])["/assets/shared/common.css", "/assets/lesson/lesson.js", "/assets/plotly.js"])
            Assert.Equal(HttpStatusCode.OK, (await room.StudentAsync(HttpMethod.Get, asset, cookie: cookie)).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await room.StudentAsync(HttpMethod.Get, "/assets/lesson/lesson.js")).Status);
        foreach (var path in (string[])["/", "/class", "/rig", "/n/01-quick", "/file/own/cold.task.yaml", "/api/shelf",
            "/api/class/tasks", "/api/class/task/cold.task.yaml", "/api/class/lesson/cold.task.yaml",
            "/api/class/places?file=samples/winter-harbour.yaml", "/api/files/own/cold.task.yaml",
            "/api/files/samples/winter-harbour.yaml", "/api/rig/questions", "/picture/01-quick", "/api/page/01-quick",
            "/api/live/01-quick", "/api/rig/live", $"/api/class/{code}", "/lesson", "/lesson/", "/api/lesson",
            $"/api/lessons/{code}/view", $"/lesson/../api/shelf?{code}", $"/lesson//{code}", $"/{code}"])
            Assert.Equal((path, HttpStatusCode.Forbidden), (path, (await room.StudentAsync(HttpMethod.Get, path, cookie: cookie))
                .Status));
        foreach (var path in (string[])["/api/class/lesson/cold.task.yaml", "/api/class/choices", "/api/class/sheet",
            "/api/rig/take-along", "/api/rig/save", "/api/text/check"])
            Assert.Equal((path, HttpStatusCode.Forbidden), (path, (await room.StudentAsync(HttpMethod.Post, path,
                new { revealed = true, task = ClassRoom.Harbour, solution = true }, cookie)).Status));
        Assert.False((await room.LessonAsync()).GetProperty("isRevealed").GetBoolean());
    }

    [Theory]
    [InlineData("/lesson/aaaa-aaaa")]
    [InlineData("/lesson/cold.task.yaml")]
    [InlineData("/api/lesson/aaaa-aaaa/state")]
    [InlineData("/api/lesson//state")]
    [InlineData("/api/lesson/%2e%2e/state")]
    public async Task Without_a_code_nothing_is_opened_and_no_cookie_given(string path)
    {
        await using var server = await TrialServer.StartAsync();
        await new ClassRoom(server).KeepAsync(ClassRoom.Harbour);
        using var answer = await server.SendAsync(new HttpRequestMessage(HttpMethod.Get, server.At(path)), isReader: false);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.False(answer.Headers.Contains("Set-Cookie"));
    }

    [Fact]
    public async Task Another_site_and_another_name_reach_no_task()
    {
        await using var server = await TrialServer.StartAsync();
        var code = ClassRoom.CodeOf(await new ClassRoom(server).KeepAsync(ClassRoom.Harbour));
        foreach (var (host, origin) in new[] { (server.Host, "http://elsewhere.example"), (server.Host, "null"),
            (server.Host, ""), ("elsewhere.example", "http://elsewhere.example") })
        {
            var answer = await server.RawAsync($"POST /api/lesson/{code}/hand-in HTTP/1.1\r\nHost: {host}\r\n"
                + (origin.Length > 0 ? $"Origin: {origin}\r\n" : "") + "Content-Type: application/json\r\nContent-Length: 2\r\n"
                + "Connection: close\r\n\r\n{}");
            Assert.StartsWith("HTTP/1.1 403 ", answer, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Broken_requests_of_a_student_end_in_words()
    {
        await using var server = await TrialServer.StartAsync();
        var room = new ClassRoom(server);
        var code = ClassRoom.CodeOf(await room.KeepAsync(ClassRoom.Harbour));
        foreach (var body in (object[])[new { settings = 1 }, new { settings = new { air = 1 } }, new { student = 1 },
            new { settings = Enumerable.Range(0, 201).ToDictionary(i => $"a{i}", i => "1") }])
        {
            var (status, text) = await room.StudentAsync(HttpMethod.Post, $"/api/lesson/{code}/view", body);
            Assert.Equal(HttpStatusCode.BadRequest, status);
            Assert.NotEmpty(ClassRoom.Read(text).Problems());
            HeaderTests.NothingOfTheInside(text);
        }
        // A key that this server never gave is none.
        var view = await room.ViewAsync(code, student: "../../x");
        Assert.Matches("^[0-9a-f]{32}$", view.Text("student"));
        Assert.Equal(HttpStatusCode.BadRequest, (await room.HandInAsync(code, "x", "Ada")).Status);
        Assert.Empty(server.Reports);
    }

    [Fact]
    public async Task There_is_an_end_to_what_is_handed_in()
    {
        await using var server = await TrialServer.StartAsync();
        var room = new ClassRoom(server);
        var code = ClassRoom.CodeOf(await room.KeepAsync(ClassRoom.Harbour));
        for (var i = 0; i < 200; i++)
            Assert.Equal(HttpStatusCode.OK, (await room.HandInAsync(code, i.ToString("x32", null), $"Student {i}")).Status);
        Assert.Equal(HttpStatusCode.ServiceUnavailable,
            (await room.HandInAsync(code, 200.ToString("x32", null), "One more")).Status);
        Assert.Equal(HttpStatusCode.OK, (await room.HandInAsync(code, 7.ToString("x32", null), "Again")).Status);
        Assert.Equal(200, (await room.LessonAsync()).GetProperty("handIns").GetArrayLength());
    }
}
