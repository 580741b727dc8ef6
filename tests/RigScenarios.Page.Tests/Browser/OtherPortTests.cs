using System.Net;
using System.Net.Sockets;
using System.Text;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>A server of somebody else on another port of the same host: what a browser gives it, and what that is good
/// for.</summary>
[Collection(InABrowser.Name)]
public sealed class OtherPortTests(Chromium chromium)
{
    [Fact]
    public async Task The_cookie_that_it_gets_opens_nothing()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        await visit.Page.Locator("#notebook-list > li").First.WaitForAsync();
        visit.ExpectsTrouble = true;
        using var other = new TcpListener(IPAddress.Loopback, 0);
        other.Start();
        var port = ((IPEndPoint)other.LocalEndpoint).Port;
        var heard = HearAsync(other);
        await visit.Page.GotoAsync($"http://127.0.0.1:{port}/");
        var request = await heard;
        // Browsers do give it away: cookies know hosts and no ports.
        var cookie = Assert.Single(request.Split("\r\n"), line => line.StartsWith("Cookie:", StringComparison.OrdinalIgnoreCase));
        Assert.Contains($"rig-{visit.Server.Port}=", cookie, StringComparison.Ordinal);
        // The page's key is shown to no page of another port.
        Assert.Equal("nothing", await visit.Page.EvaluateAsync<string>("() => localStorage.getItem('rig-key') ?? 'nothing'"));
        Assert.DoesNotContain("Rig-Key", request, StringComparison.OrdinalIgnoreCase);
        // With all that, and whatever else it likes to write in the head of a request:
        foreach (var path in (string[])["/api/shelf", "/api/files/samples/winter-harbour.yaml", "/picture/01-one-build-one-day",
            "/api/rig/questions"])
            Assert.StartsWith("HTTP/1.1 403 ", await visit.Server.RawAsync($"GET {path} HTTP/1.1\r\nHost: {visit.Server.Host}\r\n"
                + $"{cookie}\r\nOrigin: {visit.Server.Origin}\r\nSec-Fetch-Site: same-origin\r\nConnection: close\r\n\r\n"),
                StringComparison.Ordinal);
        // The reader's own page works as before.
        await visit.GoAsync("/");
        await visit.Page.Locator("#notebook-list > li").First.WaitForAsync();
    }

    [Fact]
    public async Task A_page_of_it_reads_nothing_through_the_reader_s_browser()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        visit.ExpectsTrouble = true;
        using var other = new TcpListener(IPAddress.Loopback, 0);
        other.Start();
        var heard = HearAsync(other);
        await visit.Page.GotoAsync($"http://127.0.0.1:{((IPEndPoint)other.LocalEndpoint).Port}/");
        await heard;
        // The browser takes both ports for one site, so that it sends the cookie along.
        Assert.Equal("refused", await visit.Page.EvaluateAsync<string>(
            $"() => fetch('{visit.Server.Origin}/api/shelf', {{ credentials: 'include' }})"
                + ".then(a => a.text(), () => 'refused')"));
        Assert.Equal("closed", await visit.Page.EvaluateAsync<string>(
            $"() => new Promise(done => {{ const line = new WebSocket('ws://{visit.Server.Host}/api/rig/live', ['rig']); "
            + "line.onopen = () => done('open'); line.onclose = () => done('closed'); })"));
    }

    [Fact]
    public async Task A_page_left_alone_says_that_it_made_room_and_goes_on_when_its_reader_comes_back()
    {
        await using var visit = await Visit.BeginAsync(chromium, ownNotebooks: false,
            limits: new() { Readers = 1, Idle = TimeSpan.FromMilliseconds(300) });
        await visit.ReadAsync("01-quick");
        await visit.Page.WaitForTimeoutAsync(600);
        visit.ExpectsTrouble = true;
        var second = await visit.OpenPageAsync();
        await second.GotoAsync(visit.Server.At("/n/01-quick").ToString());
        await second.Locator(".version-now .rs-answer").First.WaitForAsync();
        await Microsoft.Playwright.Assertions.Expect(visit.Page.Locator(".strip .problem").First)
            .ToContainTextAsync("its place was needed");
        var answer = await visit.AnswerAsync();
        await second.WaitForTimeoutAsync(600);
        await visit.Page.BringToFrontAsync();
        await visit.Page.Locator("h1").First.ClickAsync();
        await Microsoft.Playwright.Assertions.Expect(visit.Page.Locator(".strip .problem").First)
            .Not.ToContainTextAsync("its place was needed");
        await Visit.SettledAsync(visit.Page);
        Assert.Equal(answer, await visit.AnswerAsync());
        await Microsoft.Playwright.Assertions.Expect(second.Locator(".strip .problem").First)
            .ToContainTextAsync("its place was needed");
    }

    /// <summary>Answers the first request with an empty page, and gives what it said.</summary>
    private static async Task<string> HearAsync(TcpListener server)
    {
        while (true)
        {
            using var client = await server.AcceptTcpClientAsync(TestContext.Current.CancellationToken);
            var buffer = new byte[16 * 1024];
            var length = await client.GetStream().ReadAsync(buffer, TestContext.Current.CancellationToken);
            // A browser opens lines in advance that say nothing.
            if (length == 0)
                continue;
            await client.GetStream()
                .WriteAsync("HTTP/1.1 200 OK\r\nContent-Type: text/html\r\nContent-Length: 15\r\nConnection: "u8
                .ToArray().Concat("close\r\n\r\n<h1>Other</h1>\n"u8.ToArray()).ToArray(), TestContext.Current.CancellationToken);
            return Encoding.ASCII.GetString(buffer, 0, length);
        }
    }
}
