using System.Net;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Attacks;

/// <summary>What every answer carries, and what none does.</summary>
public sealed class HeaderTests
{
    [Fact]
    public async Task Every_answer_says_what_the_browser_may_do_with_it()
    {
        await using var server = await TrialServer.StartAsync();
        File.WriteAllText(Path.Combine(server.Rigs, "mine.yaml"), "rigscenarios: scenario 1\n");
        var answers = new List<HttpResponseMessage>();
        foreach (var path in (string[])["/", "/rig", "/n/01-quick", "/n/none", "/file/own/mine.yaml", "/assets/figure.js",
            "/assets/plotly.js", "/assets/none.js", "/api/shelf", "/api/files/own/mine.yaml", "/api/files/own/none.yaml",
            "/api/files/samples/teaching-kit.yaml", "/api/page/01-quick", "/api/page/04-broken", "/api/page/none",
            "/api/live/01-quick", "/picture/01-quick", "/none", "/api/none", "/api/text/check"])
            answers.Add(await server.GetAsync(path));
        answers.Add(await server.SendAsync(new HttpRequestMessage(HttpMethod.Get, server.Address), isReader: false));
        answers.Add(await server.SendAsync(new HttpRequestMessage(HttpMethod.Get, server.At("/")), isReader: false));
        answers.Add(await server.SendAsync(new HttpRequestMessage(HttpMethod.Delete, server.At("/"))));
        answers.Add(await server.SendTextAsync(HttpMethod.Post, "/api/text/check", "{"));
        answers.Add(await server.SendTextAsync(HttpMethod.Post, "/none", "{}"));
        answers.Add(await server.SendJsonAsync(HttpMethod.Put, "/api/files/own/mine.yaml", new { text = "" }));
        answers.Add(await server.SendJsonAsync(HttpMethod.Put, "/api/files/own/other.yaml", new { text = "" }));
        answers.Add(await server.SendJsonAsync(HttpMethod.Post, "/api/text/check",
            new { text = new string('a', 3 * 1024 * 1024) }));
        Assert.Contains(answers, answer => answer.StatusCode == HttpStatusCode.OK);
        Assert.Contains(answers, answer => answer.StatusCode == HttpStatusCode.RequestEntityTooLarge);
        foreach (var answer in answers)
        {
            var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
            var place = $"{answer.RequestMessage!.Method} {answer.RequestMessage.RequestUri} {answer.StatusCode}";
            Assert.True(policy.StartsWith("default-src 'none'; script-src 'self';", StringComparison.Ordinal), place);
            Assert.DoesNotContain("unsafe-eval", policy, StringComparison.Ordinal);
            Assert.DoesNotContain("script-src 'self' 'unsafe-inline'", policy, StringComparison.Ordinal);
            Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
            Assert.Contains("base-uri 'none'", policy, StringComparison.Ordinal);
            Assert.Contains("form-action 'none'", policy, StringComparison.Ordinal);
            Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
            Assert.Equal("no-referrer", Assert.Single(answer.Headers.GetValues("Referrer-Policy")));
            Assert.Equal("same-origin", Assert.Single(answer.Headers.GetValues("Cross-Origin-Opener-Policy")));
            Assert.Equal("same-origin", Assert.Single(answer.Headers.GetValues("Cross-Origin-Resource-Policy")));
            Assert.False(answer.Headers.Contains("Server"), place);
            Assert.False(answer.Headers.Contains("Access-Control-Allow-Origin"), place);
            Assert.True(answer.Headers.CacheControl is { NoStore: true } or { Private: true, NoCache: true }, place);
            NothingOfTheInside(await answer.TextAsync(), isPage: place.Contains("/assets/", StringComparison.Ordinal)
                || place.Contains("/api/page/01", StringComparison.Ordinal));
        }
    }

    [Fact]
    public async Task A_picture_can_run_nothing()
    {
        await using var server = await TrialServer.StartAsync();
        File.WriteAllText(Path.Combine(server.Notebooks, "p.svg"),
            "<svg xmlns=\"http://www.w3.org/2000/svg\"><script>alert(1)</script></svg>");
        var file = Path.Combine(server.Notebooks, "01-quick.ipynb");
        File.WriteAllText(file, File.ReadAllText(file)
            .Replace("\"metadata\":{},\"cells\"",
            "\"metadata\":{\"rigscenarios\":{\"sentence\":\"Says.\",\"picture\":\"p.svg\"}},\"cells\"",
            StringComparison.Ordinal));
        using var answer = await server.GetAsync("/picture/01-quick");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("sandbox", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("script-src", policy, StringComparison.Ordinal);
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pages_carry_no_script_of_their_own_which_the_policy_would_stop()
    {
        await using var server = await TrialServer.StartAsync();
        foreach (var path in (string[])["/", "/n/01-quick", "/rig", "/file/own/mine.yaml"])
        {
            using var answer = await server.GetAsync(path);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            var page = await answer.TextAsync();
            Assert.DoesNotMatch("(?i)<script(?![^>]*\\ssrc=)[^>]*>", page);
            Assert.DoesNotMatch("(?i)\\son[a-z]+\\s*=", page);
            Assert.DoesNotMatch("(?i)javascript:", page);
            Assert.DoesNotMatch("(?i)(src|href)\\s*=\\s*[\"']?(https?:)?//", page);
        }
    }

    [Fact]
    public async Task Every_file_that_a_page_loads_is_there()
    {
        await using var server = await TrialServer.StartAsync();
        foreach (var path in (string[])["/", "/n/01-quick", "/rig", "/file/own/mine.yaml"])
        {
            var page = await (await server.GetAsync(path)).TextAsync();
            var loaded = System.Text.RegularExpressions.Regex.Matches(page, "(src|href)=\"(?<file>/assets/[^\"]+)\"",
                System.Text.RegularExpressions.RegexOptions.ExplicitCapture,
                TimeSpan.FromSeconds(1)).Select(match => match.Groups["file"].Value).ToList();
            Assert.NotEmpty(loaded);
            foreach (var file in loaded)
                Assert.True((await server.GetAsync(file)).StatusCode == HttpStatusCode.OK, $"{path} loads {file}");
        }
    }

    [Fact]
    public async Task A_bug_reaches_the_reader_as_plain_words()
    {
        var door = new Requests.ExceptionHandler(new(null, "The window"));
        foreach (var exception in (Exception[])[new InvalidOperationException("secret inside"), new IOException("secret inside"),
            new KeyNotFoundException("secret inside"), new UnauthorizedAccessException("secret inside")])
        {
            var context = new Microsoft.AspNetCore.Http.DefaultHttpContext();
            context.Response.Body = new MemoryStream();
            await door.RunAsync(context, _ => throw exception);
            Assert.Equal(500, context.Response.StatusCode);
            context.Response.Body.Position = 0;
            var text = await new StreamReader(context.Response.Body).ReadToEndAsync(TestContext.Current.CancellationToken);
            Assert.DoesNotContain("secret inside", text, StringComparison.Ordinal);
            Assert.Contains("problems", text, StringComparison.Ordinal);
            NothingOfTheInside(text);
        }
    }

    /// <summary>No stack trace, no name of a type.</summary>
    internal static void NothingOfTheInside(string text, bool isPage = false)
    {
        if (isPage)
            return;
        Assert.DoesNotMatch(@"\bat [A-Z]\w+(\.\w+)+\(", text);
        Assert.DoesNotMatch(@"Exception\b", text);
        Assert.DoesNotMatch(@"\b(System|Microsoft|YamlDotNet)\.[A-Z]", text);
        Assert.DoesNotContain(".cs:line", text, StringComparison.Ordinal);
    }
}
