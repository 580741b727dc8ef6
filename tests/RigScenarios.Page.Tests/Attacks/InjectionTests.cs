using System.Net;
using System.Text.Json;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Attacks;

/// <summary>What a request brings is a value: it is never run as code, and reaches a page as text only.</summary>
public sealed class InjectionTests
{
    private const string Script = "<script>alert(1)</script>";

    /// <summary>Values that would do something if they were put into the source of a cell.</summary>
    private static readonly string[] Code =
    [
        "\"; System.IO.File.WriteAllText(\"MARK\", \"x\"); var y = \"",
        "plain\"); System.IO.File.WriteAllText(\"MARK\", \"x\"); //",
        "{System.IO.File.WriteAllText(\"MARK\", \"x\")}",
        "#r \"nuget: Evil\"\nSystem.IO.File.WriteAllText(\"MARK\", \"x\");",
        "\u2028System.IO.File.WriteAllText(\"MARK\", \"x\");",
        "\\\"; System.Environment.Exit(1); //",
        "*/ System.Environment.Exit(1); /*",
        "\n#line 1\nSystem.Environment.Exit(1);",
    ];

    [Fact]
    public async Task A_text_that_is_code_is_shown_and_not_run()
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("01-quick");
        var mark = Path.Combine(server.Outside, "mark.txt");
        for (var i = 0; i < Code.Length; i++)
        {
            var words = Code[i].Replace("MARK", mark.Replace("\\", "\\\\", StringComparison.Ordinal), StringComparison.Ordinal);
            await reader.RunAsync(i + 1, new { words });
            Assert.Equal("done", (await reader.EndAsync(i + 1)).Text("kind"));
            Assert.Contains(words, Assert.Single(reader.Parts(i + 1, "answer")).Text("text"), StringComparison.Ordinal);
        }
        Assert.False(File.Exists(mark));
    }

    [Theory]
    [InlineData("amount", "5; System.Environment.Exit(1)")]
    [InlineData("amount", "1e999")]
    [InlineData("amount", "NaN")]
    [InlineData("amount", "11")]
    [InlineData("amount", "5\u0001")]
    [InlineData("amount", "")]
    [InlineData("side", "left\"); //")]
    [InlineData("side", "<script>")]
    [InlineData("loud", "true || System.Environment.FailFast(null)")]
    [InlineData("amount = 3; string words", "x")]
    [InlineData("__proto__", "x")]
    [InlineData("", "x")]
    public async Task A_value_of_the_wrong_kind_is_a_problem_and_nothing_runs(string name, string value)
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("01-quick");
        await reader.RunAsync(1, new Dictionary<string, string> { [name] = value });
        var end = await reader.EndAsync(1);
        Assert.Equal("problems", end.Text("kind"));
        Assert.NotEmpty(end.Problems());
        Assert.Empty(reader.Parts(1, "answer"));
        if (name is "amount" or "side" or "loud")
            Assert.Equal(name, end.GetProperty("problems")[0].Text("path"));
        await reader.RunAsync(2, new { });
        Assert.Equal("done", (await reader.EndAsync(2)).Text("kind"));
    }

    [Theory]
    [InlineData("{\"kind\":\"run\",\"queue\":\"now\",\"run\":1,\"values\":{\"amount\":5}}")]
    [InlineData("{\"kind\":\"run\",\"queue\":\"now\",\"run\":1,\"values\":{\"amount\":[\"5\"]}}")]
    [InlineData("{\"kind\":\"run\",\"queue\":\"now\",\"run\":1,\"values\":[]}")]
    public async Task Values_that_no_page_sends_are_told_for_their_run(string message)
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("01-quick");
        await reader.SendTextAsync(message);
        Assert.Equal(("problems", 400),
            ((await reader.EndAsync(1)).Text("kind"), reader.Messages[^1].GetProperty("status").GetInt32()));
        await reader.RunAsync(2, new { });
        Assert.Equal("done", (await reader.EndAsync(2)).Text("kind"));
    }

    [Theory]
    [InlineData("{\"kind\":\"run\",\"queue\":\"elsewhere\",\"run\":1,\"values\":{}}")]
    [InlineData("{\"kind\":\"run\",\"queue\":\"now\",\"run\":\"1\",\"values\":{}}")]
    [InlineData("{\"kind\":\"run\",\"queue\":\"now\",\"run\":-1,\"values\":{}}")]
    [InlineData("{\"kind\":\"run\",\"queue\":\"now\",\"run\":1e99,\"values\":{}}")]
    [InlineData("{\"kind\":\"eval\",\"queue\":\"now\",\"run\":1,\"code\":\"1+1\"}")]
    [InlineData("{\"kind\":\"run\",\"kind\":\"stop\",\"queue\":\"now\",\"run\":1}")]
    [InlineData("{\"kind\":\"run\",\"queue\":\"now\",\"run\":1,\"values\":{\"words\":\"\\ud800\"}}")]
    [InlineData("{\"kind\":\"run\",\"queue\":\"now\",\"run\":1,\"values\":{\"words\":")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("\"run\"")]
    [InlineData("")]
    [InlineData("\0")]
    [InlineData("NaN")]
    public async Task A_message_that_no_page_sends_is_told_and_forgotten(string message)
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("01-quick");
        await reader.SendTextAsync(message);
        var told = await reader.UntilAsync("problems");
        Assert.Equal(JsonValueKind.Null, told.GetProperty("run").ValueKind);
        await reader.RunAsync(2, new { });
        Assert.Equal("done", (await reader.EndAsync(2)).Text("kind"));
    }

    [Fact]
    public async Task Too_many_and_too_long_values_are_refused()
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("01-quick");
        await reader.RunAsync(1, Enumerable.Range(0, 200).ToDictionary(i => $"v{i}", _ => "1"));
        await reader.UntilAsync("problems");
        await reader.RunAsync(2, new { words = new string('a', 5000) });
        await reader.UntilAsync("problems");
        Each.HasNot(reader.Messages, message => message.Text("kind") is "done" or "cell");
    }

    [Fact]
    public async Task A_title_that_is_a_script_reaches_every_page_as_text()
    {
        await using var server = await TrialServer.StartAsync();
        var text = Checkout.Sample("teaching-kit.yaml")
            .Replace("title: Teaching kit", $"title: \"{Script}\"", StringComparison.Ordinal)
            .Replace("parts-from: [../parts]",
                $"parts-from: [\"{Path.Combine(Checkout.Data, "parts").Replace("\\", "/", StringComparison.Ordinal)}\"]",
                StringComparison.Ordinal)
            .Replace("title: Camera and lens", $"title: \"{Script}\"", StringComparison.Ordinal);
        File.WriteAllText(Path.Combine(server.Rigs, "mine.yaml"), text);
        foreach (var path in (string[])["/api/shelf", "/api/files/own/mine.yaml"])
        {
            using var answer = await server.GetAsync(path);
            Assert.Equal("application/json", answer.Content.Headers.ContentType!.MediaType);
            var body = await answer.TextAsync();
            Assert.DoesNotContain("<script", body, StringComparison.OrdinalIgnoreCase);
            Assert.Contains("script", body, StringComparison.Ordinal);
        }
        var shelf = await (await server.GetAsync("/api/shelf")).JsonAsync();
        Assert.Contains(shelf.GetProperty("files").EnumerateArray(), file => file.Text("title") == Script);
    }

    [Fact]
    public async Task Prose_of_a_notebook_keeps_no_HTML_of_its_own()
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("01-quick");
        var html = (await reader.UntilAsync("notebook")).GetProperty("cells").EnumerateArray()
            .First(cell => cell.Text("kind") == "prose").Text("html");
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<b>", html, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;script&gt;", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_page_to_keep_holds_values_as_text()
    {
        await using var server = await TrialServer.StartAsync();
        using var answer = await server
            .GetAsync($"/api/page/01-quick?words={Uri.EscapeDataString("\"><img src=x onerror=alert(1)>" + Script)}");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("attachment", answer.Content.Headers.ContentDisposition!.DispositionType);
        var page = await answer.TextAsync();
        Assert.DoesNotContain("<img src=x", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<script>alert(1)", page, StringComparison.Ordinal);
        Assert.Contains("&lt;img src=x", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_path_that_is_HTML_is_shown_as_text_where_it_is_shown()
    {
        await using var server = await TrialServer.StartAsync();
        var answer = await server.RawGetAsync("/nothing/%22%3E%3Cscript%3Ealert(1)%3C/script%3E", "Accept: text/html");
        Assert.Contains("text/html", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", answer, StringComparison.OrdinalIgnoreCase);
        var refused = await server
            .RawAsync($"GET /%3Cscript%3E?x=<script> HTTP/1.1\r\nHost: <script>alert(1)</script>\r\nAccept: "
                + "text/html\r\nConnection: close\r\n\r\n");
        Assert.DoesNotContain("<script", refused, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task No_line_of_an_answer_can_be_made_from_an_address()
    {
        await using var server = await TrialServer.StartAsync();
        var answer = await server.RawGetAsync($"/n/a%0d%0aX-Made:%20yes{server.Address.Query}&b=%0d%0aX-Made:%20yes");
        Assert.DoesNotContain(answer.Split("\r\n"), line => line.StartsWith("X-Made", StringComparison.OrdinalIgnoreCase));
    }
}
