using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Api;

/// <summary>Scenario files as text: read, checked while they are written, helped with, saved.</summary>
public sealed class FileTests
{
    [Fact]
    public async Task A_sample_is_read_with_its_builds_and_days()
    {
        await using var server = await TrialServer.StartAsync();
        var file = await (await server.GetAsync("/api/files/samples/teaching-kit.yaml")).JsonAsync();
        Assert.Equal(Checkout.Sample("teaching-kit.yaml"), file.Text("text"));
        Assert.False(file.GetProperty("writable").GetBoolean());
        Assert.Empty(file.GetProperty("problems").EnumerateArray());
        Assert.Contains(file.GetProperty("builds").EnumerateArray(), build => build.Text("name") == "full-rig"
            && build.Text("title").StartsWith("With monitor", StringComparison.Ordinal));
        Assert.NotEmpty(file.GetProperty("days").EnumerateArray());
    }

    [Fact]
    public async Task A_text_that_is_right_is_answered_for_each_build_and_day()
    {
        await using var server = await TrialServer.StartAsync();
        var answer = await (await server.SendJsonAsync(HttpMethod.Post, "/api/text/check",
            new { text = Checkout.Sample("teaching-kit.yaml"), file = "samples/teaching-kit.yaml" })).JsonAsync();
        Assert.Empty(answer.GetProperty("problems").EnumerateArray());
        Assert.Equal(3, answer.GetProperty("answers").GetArrayLength());
        Assert.Matches("^(Yes|Just|No|Not known): ", answer.GetProperty("answers")[0].Text("text"));
    }

    [Fact]
    public async Task Errors_are_told_at_their_line_with_what_is_accepted_and_the_nearest_name()
    {
        await using var server = await TrialServer.StartAsync();
        var text = Checkout.Sample("teaching-kit.yaml").Replace("camera-only:\n    title:", "camera-only:\n    titel:",
            StringComparison.Ordinal).Replace("charge: 100 %", "charge: 300 %", StringComparison.Ordinal);
        var answer = await (await server.SendJsonAsync(HttpMethod.Post, "/api/text/check",
            new { text, file = "samples/teaching-kit.yaml" })).JsonAsync();
        var lines = text.Split('\n');
        var problems = answer.GetProperty("problems").EnumerateArray().ToList();
        var name = Assert.Single(problems, problem => problem.GetProperty("nearest").GetString() == "title");
        Assert.Contains("titel", lines[name.GetProperty("line").GetInt32() - 1], StringComparison.Ordinal);
        var charge = problems.First(problem => problem.Text("path").EndsWith("battery.charge", StringComparison.Ordinal));
        Assert.Contains("300 %", lines[charge.GetProperty("line").GetInt32() - 1], StringComparison.Ordinal);
        Assert.Contains("%", charge.Text("accepted"), StringComparison.Ordinal);
        Assert.Empty(answer.GetProperty("answers").EnumerateArray());
    }

    [Fact]
    public async Task A_problem_of_a_parts_file_is_told_without_a_line_of_this_text()
    {
        await using var server = await TrialServer.StartAsync();
        File.WriteAllText(Path.Combine(server.Rigs, "lenses.yaml"),
            "rigscenarios: parts 1\nparts:\n  prime: {kind: lense, name: A}\n");
        var answer = await (await server.SendJsonAsync(HttpMethod.Post, "/api/text/check",
            new { text = "rigscenarios: scenario 1\ntitle: A\nparts-from: [lenses.yaml]\n" })).JsonAsync();
        var problem = Assert.Single(answer.GetProperty("problems").EnumerateArray(),
            problem => problem.Text("text").StartsWith("In lenses.yaml, line 3:", StringComparison.Ordinal));
        Assert.Equal(System.Text.Json.JsonValueKind.Null, problem.GetProperty("line").ValueKind);
    }

    [Fact]
    public async Task Help_tells_what_may_stand_at_the_cursor()
    {
        await using var server = await TrialServer.StartAsync();
        var text = Checkout.Sample("teaching-kit.yaml");
        var line = Array.FindIndex(text.Split('\n'), row => row.Contains("stance: hand", StringComparison.Ordinal)) + 1;
        var help = await (await server.SendJsonAsync(HttpMethod.Post, "/api/text/help", new { text, line, column = 14 }))
            .JsonAsync();
        Assert.Equal("builds.camera-only.stance", help.Text("path"));
        Assert.NotEmpty(help.Text("about"));
        Assert.Contains("tripod", help.Text("accepted"), StringComparison.Ordinal);
    }
}
