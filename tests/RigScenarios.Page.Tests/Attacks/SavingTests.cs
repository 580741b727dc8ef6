using System.Net;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Attacks;

/// <summary>Nobody's work is written over unasked.</summary>
public sealed class SavingTests
{
    private const string First = "rigscenarios: scenario 1\ntitle: First\n";
    private const string Second = "rigscenarios: scenario 1\ntitle: Second\n";

    [Fact]
    public async Task A_file_that_changed_meanwhile_is_not_written_over()
    {
        await using var server = await TrialServer.StartAsync();
        var file = Path.Combine(server.Rigs, "mine.yaml");
        File.WriteAllText(file, First);
        var opened = await (await server.GetAsync("/api/files/own/mine.yaml")).JsonAsync();
        File.WriteAllText(file, Second);
        using var answer = await server.SendJsonAsync(HttpMethod.Put, "/api/files/own/mine.yaml",
            new { text = First + "# mine\n", version = opened.Text("version") });
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Contains("changed elsewhere", (await answer.JsonAsync()).Problems(), StringComparison.Ordinal);
        Assert.Equal(Second, File.ReadAllText(file));
        using var asked = await server.SendJsonAsync(HttpMethod.Put, "/api/files/own/mine.yaml",
            new { text = First, version = opened.Text("version"), replace = true });
        Assert.Equal(HttpStatusCode.OK, asked.StatusCode);
        Assert.Equal(First, File.ReadAllText(file));
    }

    [Fact]
    public async Task A_new_file_takes_no_name_that_is_taken()
    {
        await using var server = await TrialServer.StartAsync();
        var file = Path.Combine(server.Rigs, "mine.yaml");
        File.WriteAllText(file, First);
        using var answer = await server.SendJsonAsync(HttpMethod.Put, "/api/files/own/mine.yaml",
            new { text = Second, version = (string?)null });
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Equal(First, File.ReadAllText(file));
    }

    [Fact]
    public async Task A_file_that_was_deleted_meanwhile_does_not_come_back_unasked()
    {
        await using var server = await TrialServer.StartAsync();
        var file = Path.Combine(server.Rigs, "mine.yaml");
        File.WriteAllText(file, First);
        var opened = await (await server.GetAsync("/api/files/own/mine.yaml")).JsonAsync();
        File.Delete(file);
        using var answer = await server.SendJsonAsync(HttpMethod.Put, "/api/files/own/mine.yaml",
            new { text = First, version = opened.Text("version") });
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.False(File.Exists(file));
    }

    [Fact]
    public async Task Of_many_pages_that_save_at_once_one_wins()
    {
        await using var server = await TrialServer.StartAsync();
        File.WriteAllText(Path.Combine(server.Rigs, "mine.yaml"), First);
        var version = (await (await server.GetAsync("/api/files/own/mine.yaml")).JsonAsync()).Text("version");
        var saved = await Task.WhenAll(Enumerable.Range(0, 12)
            .Select(i => server.SendJsonAsync(HttpMethod.Put, "/api/files/own/mine.yaml",
            new { text = $"{First}# {i}\n", version })));
        Assert.Single(saved, answer => answer.StatusCode == HttpStatusCode.OK);
        Assert.Equal(11, saved.Count(answer => answer.StatusCode == HttpStatusCode.Conflict));
    }

    [Fact]
    public async Task A_draft_with_errors_is_saved_and_told()
    {
        await using var server = await TrialServer.StartAsync();
        using var answer = await server.SendJsonAsync(HttpMethod.Put, "/api/files/own/mine.yaml",
            new { text = "rigscenarios: scenario 1\nttle: A\n" });
        var json = await answer.JsonAsync();
        Assert.Equal("own/mine.yaml", json.Text("id"));
        var problem = Assert.Single(json.GetProperty("problems").EnumerateArray(),
            problem => problem.GetProperty("line").ValueKind == System.Text.Json.JsonValueKind.Number
            && problem.GetProperty("line").GetInt32() == 2);
        Assert.Equal("title", problem.Text("nearest"));
        Assert.Equal(json.Text("version"), (await (await server.GetAsync("/api/files/own/mine.yaml")).JsonAsync())
            .Text("version"));
    }

    [Fact]
    public async Task Nothing_but_the_file_is_left_in_the_folder()
    {
        await using var server = await TrialServer.StartAsync();
        (await server.SendJsonAsync(HttpMethod.Put, "/api/files/own/mine.yaml", new { text = First })).Dispose();
        (await server.SendJsonAsync(HttpMethod.Post, "/api/text/check", new { text = First })).Dispose();
        Assert.Equal(["mine.yaml"], Directory.EnumerateFileSystemEntries(server.Rigs).Select(Path.GetFileName));
    }

    [Fact]
    public async Task What_was_saved_is_there_after_the_server_was_stopped()
    {
        await using var server = await TrialServer.StartAsync();
        (await server.SendJsonAsync(HttpMethod.Put, "/api/files/own/mine.yaml", new { text = First })).Dispose();
        await server.StopAsync();
        await Assert.ThrowsAsync<HttpRequestException>(() => server.GetAsync("/api/shelf"));
        Assert.Equal(First, File.ReadAllText(Path.Combine(server.Rigs, "mine.yaml")));
        Assert.Equal(["mine.yaml"], Directory.EnumerateFileSystemEntries(server.Rigs).Select(Path.GetFileName));
    }
}
