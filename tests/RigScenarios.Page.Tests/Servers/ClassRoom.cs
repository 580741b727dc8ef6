using System.Net;
using System.Text;
using System.Text.Json;

namespace RigScenarios.Page.Tests.Servers;

/// <summary>A class at a server: a teacher who has the keys, and students who have nothing but a task's code.</summary>
internal sealed class ClassRoom(TrialServer server)
{
    /// <summary>The harbour on its first day, everything hidden, the air open.</summary>
    public static Dictionary<string, object?> Harbour => new(StringComparer.Ordinal)
    {
        ["title"] = "How cold may it be?", ["text"] = "Estimate first.", ["scenario"] = "samples/winter-harbour.yaml",
        ["build"] = "tripod", ["days"] = new[] { "day-one" },
        ["controls"] = new[] { new { field = "air", from = (double?)-20, to = (double?)10 } },
        ["estimates"] = new[] { "energy", "until", "centre", "works" }, ["ownQuestions"] = new[] { "Why?" },
    };

    /// <summary>Keeps a task, and gives what the teacher's page gets of it.</summary>
    public async Task<JsonElement> KeepAsync(Dictionary<string, object?> task, string name = "cold.task.yaml",
        string? version = null)
    {
        using var answer = await server.SendJsonAsync(HttpMethod.Put, $"/api/class/task/{name}",
            new { task, version, replace = false });
        var json = await answer.JsonAsync();
        Assert.True(answer.IsSuccessStatusCode, json.ToString());
        return json;
    }

    /// <summary>The code of a task that was kept.</summary>
    public static string CodeOf(JsonElement kept) => kept.GetProperty("task").Text("code");

    /// <summary>Sends as a student's browser does: without any key or cookie.</summary>
    public async Task<(HttpStatusCode Status, string Text)> StudentAsync(HttpMethod method, string path, object? body = null,
        string? cookie = null)
    {
        var request = new HttpRequestMessage(method, server.At(path));
        if (body is not null)
            request.Content = new StringContent(JsonSerializer.Serialize(body), Encoding.UTF8, "application/json");
        if (method != HttpMethod.Get)
            request.Headers.TryAddWithoutValidation("Origin", server.Origin);
        if (cookie is not null)
            request.Headers.TryAddWithoutValidation("Cookie", cookie);
        using var answer = await server.SendAsync(request, isReader: false);
        return (answer.StatusCode, await answer.TextAsync());
    }

    /// <summary>What a student sees.</summary>
    public async Task<JsonElement> ViewAsync(string code, object? settings = null, string? student = null)
    {
        var (status, text) = await StudentAsync(HttpMethod.Post, $"/api/lesson/{code}/view",
            new { student, settings = settings ?? new { } });
        Assert.True(status == HttpStatusCode.OK, text);
        return Read(text);
    }

    /// <summary>Hands in.</summary>
    public Task<(HttpStatusCode Status, string Text)> HandInAsync(string code, string student, string name,
        object? estimates = null, object? settings = null) => StudentAsync(HttpMethod.Post, $"/api/lesson/{code}/hand-in",
            new { student, name, estimates = estimates ?? new { energy = "200 Wh" }, settings = settings ?? new { } });

    /// <summary>The lesson as the teacher's page sees it, or after the teacher did something.</summary>
    public async Task<JsonElement> LessonAsync(object? tell = null, string name = "cold.task.yaml") => await (tell is null
        ? await server.GetAsync($"/api/class/lesson/{name}")
        : await server.SendJsonAsync(HttpMethod.Post, $"/api/class/lesson/{name}", tell)).JsonAsync();

    public static JsonElement Read(string text)
    {
        using var document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }
}
