using System.Net;
using System.Text;
using RigScenarios.Page.Address;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Attacks;

/// <summary>
/// The three secrets of a start: the key in the printed address, the cookie, and the page's key. None of what others can get hold
/// of, a cookie on another port or an address in the list of processes, opens anything for long.
/// </summary>
public sealed class KeyTests
{
    public static readonly TheoryData<string> WhatIsSomebodys = new(
        "/picture/01-quick", "/api/shelf", "/api/files/samples/teaching-kit.yaml", "/api/rig/questions", "/api/page/01-quick");

    [Theory]
    [MemberData(nameof(WhatIsSomebodys))]
    public async Task The_cookie_alone_shows_nothing_of_anybody(string path)
    {
        await using var server = await TrialServer.StartAsync();
        foreach (var key in (string[])["", "Rig-Key: \r\n", $"Rig-Key: {new string('0', 64)}\r\n",
            $"Rig-Key: {server.Cookie}\r\n",
            $"Rig-Key: {server.Cookie.Split('=')[1]}\r\n", $"Rig-Key: {server.Key}0\r\n",
            $"Rig-Key: {server.Key}\r\nRig-Key: {server.Key}\r\n"])
        {
            var answer = await server.RawAsync($"GET {path} HTTP/1.1\r\nHost: {server.Host}\r\nCookie: {server.Cookie}\r\n"
                + $"{key}Connection: close\r\n\r\n");
            Assert.StartsWith("HTTP/1.1 403 ", answer, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(WhatIsSomebodys))]
    public async Task The_page_s_key_alone_shows_nothing_either(string path)
    {
        await using var server = await TrialServer.StartAsync();
        Assert.StartsWith("HTTP/1.1 403 ", await server.RawAsync($"GET {path} HTTP/1.1\r\nHost: {server.Host}\r\n"
            + $"Rig-Key: {server.Key}\r\nConnection: close\r\n\r\n"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_cookie_alone_writes_nothing_and_opens_no_connection()
    {
        await using var server = await TrialServer.StartAsync();
        var request = new HttpRequestMessage(HttpMethod.Put, server.At("/api/files/own/a.yaml"))
        {
            Content = new StringContent("{\"text\":\"a\"}", Encoding.UTF8, "application/json"),
        };
        request.Headers.TryAddWithoutValidation("Cookie", server.Cookie);
        request.Headers.TryAddWithoutValidation("Origin", server.Origin);
        using var answer = await server.SendAsync(request, isReader: false);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Empty(Directory.EnumerateFileSystemEntries(server.Rigs));
        foreach (var key in (string[])["", new string('0', 64), "none"])
            Assert.Equal(403,
                (await Assert.ThrowsAsync<RefusedException>(() => LiveReader.OpenAsync(server, "01-quick", key: key))).Status);
    }

    [Fact]
    public async Task The_pages_that_the_cookie_opens_hold_nothing_of_anybody()
    {
        await using var server = await TrialServer.StartAsync();
        File.WriteAllText(Path.Combine(server.Rigs, "mine.yaml"), "rigscenarios: scenario 1\ntitle: This is mine\n");
        foreach (var path in (string[])["/", "/n/01-quick", "/rig?file=own/mine.yaml", "/file/own/mine.yaml"])
        {
            var page = await server.RawAsync($"GET {path} HTTP/1.1\r\nHost: {server.Host}\r\nCookie: {server.Cookie}\r\n"
                + "Connection: close\r\n\r\n");
            Assert.StartsWith("HTTP/1.1 200 ", page, StringComparison.Ordinal);
            foreach (var secret in (string[])["This is mine", "mine.yaml", "What is said?", server.Key, server.Rigs])
                Assert.DoesNotContain(secret, page, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_one_time_address_opens_the_pages_once()
    {
        await using var server = await TrialServer.StartAsync();
        var once = server.OneTimeAddress();
        using var first = await server.SendAsync(new HttpRequestMessage(HttpMethod.Get, once), isReader: false);
        Assert.Equal(server.Key, TrialServer.KeyIn(await first.TextAsync()));
        Assert.True(first.Headers.Contains("Set-Cookie"));
        // Whoever reads it in the list of processes afterwards.
        using var second = await server.SendAsync(new HttpRequestMessage(HttpMethod.Get, once), isReader: false);
        Assert.Equal(HttpStatusCode.Forbidden, second.StatusCode);
        Assert.False(second.Headers.Contains("Set-Cookie"));
        Assert.Contains("used already", (await second.JsonAsync()).Problems(), StringComparison.Ordinal);
        // The browser itself, with a tab that it restores.
        using var third = await server.SendAsync(new HttpRequestMessage(HttpMethod.Get, once));
        Assert.Equal(HttpStatusCode.OK, third.StatusCode);
        // The printed address opens them whenever the person likes.
        foreach (var _ in Enumerable.Range(0, 2))
        {
            using var printed = await server.SendAsync(new HttpRequestMessage(HttpMethod.Get, server.Address), isReader: false);
            Assert.Equal(server.Key, TrialServer.KeyIn(await printed.TextAsync()));
        }
        // Each time another one, and none of them is the lasting key.
        Assert.NotEqual(once, server.OneTimeAddress());
        Assert.DoesNotContain(server.Address.Query[^64..], once.AbsoluteUri, StringComparison.Ordinal);
    }

    [Fact]
    public void A_one_time_key_is_not_kept_for_long()
    {
        var clock = new Clock();
        var keys = new OneTimeKeys(clock);
        var (early, late) = (keys.New(), keys.New());
        clock.Now += OneTimeKeys.Life;
        Assert.Equal(OneTimeKey.Taken, keys.Take(early));
        clock.Now += TimeSpan.FromSeconds(1);
        Assert.Equal(OneTimeKey.Spent, keys.Take(late));
        Assert.Equal(OneTimeKey.Unknown, keys.Take(new string('0', 64)));
        Assert.Equal(OneTimeKey.Unknown, keys.Take(null));
    }

    [Fact]
    public async Task Of_many_that_ask_at_once_with_a_one_time_address_one_gets_in()
    {
        await using var server = await TrialServer.StartAsync();
        var once = server.OneTimeAddress();
        var answers = await Task.WhenAll(Enumerable.Range(0, 12)
            .Select(_ => server.SendAsync(new HttpRequestMessage(HttpMethod.Get, once), isReader: false)));
        Assert.Single(answers, answer => answer.StatusCode == HttpStatusCode.OK);
    }

    private sealed class Clock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2026, 1, 1, 0, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
