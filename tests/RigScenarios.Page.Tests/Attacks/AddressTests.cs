using System.Net;
using System.Text.RegularExpressions;
using RigScenarios.Page.Address;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Attacks;

/// <summary>Who may speak to the server: only someone with the key, by the server's own address, from its own pages.</summary>
public sealed class AddressTests
{
    public static readonly TheoryData<string> Everything = new(
        "/", "/rig", "/n/01-quick", "/file/own/a.yaml", "/assets/figure.js", "/picture/01-quick",
        "/api/shelf", "/api/files/samples/teaching-kit.yaml", "/api/rig/questions", "/api/page/01-quick", "/api/live/01-quick",
        "/api/rig/live", "/nothing");

    [Theory]
    [MemberData(nameof(Everything))]
    public async Task Nothing_is_shown_without_the_key(string path)
    {
        await using var server = await TrialServer.StartAsync();
        using var answer = await server.SendAsync(new HttpRequestMessage(HttpMethod.Get, server.At(path)), isReader: false);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Theory]
    [InlineData("token=")]
    [InlineData("token=0000000000000000000000000000000000000000000000000000000000000000")]
    [InlineData("token=a&token=b")]
    public async Task A_wrong_key_opens_nothing(string query)
    {
        await using var server = await TrialServer.StartAsync();
        using var answer = await server.SendAsync(new HttpRequestMessage(HttpMethod.Get, server.At("/?" + query)),
            isReader: false);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.False(answer.Headers.Contains("Set-Cookie"));
    }

    [Fact]
    public async Task A_part_of_the_key_or_more_than_it_opens_nothing()
    {
        await using var server = await TrialServer.StartAsync();
        foreach (var address in (string[])[server.Address.AbsoluteUri[..^1], server.Address.AbsoluteUri + "0",
            server.Address.AbsoluteUri.ToUpperInvariant().Replace("HTTP", "http").Replace("TOKEN", "token")])
        {
            using var answer = await server.SendAsync(new HttpRequestMessage(HttpMethod.Get, address), isReader: false);
            Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        }
    }

    [Fact]
    public void The_key_is_long_random_and_compared_as_a_whole()
    {
        var keys = Enumerable.Range(0, 100).Select(_ => AccessToken.New().Text).ToList();
        Assert.Equal(100, keys.Distinct(StringComparer.Ordinal).Count());
        Each.Of(keys, key => Assert.Equal(64, key.Length));
        var token = AccessToken.New();
        Assert.True(token.Is(token.Text));
        Assert.False(token.Is(null));
        Assert.False(token.Is(token.Text + "\0"));
    }

    [Fact]
    public void Comparing_a_key_takes_as_long_for_a_near_guess_as_for_a_far_one()
    {
        // Not by the clock, which no test can trust: by what the comparison calls. Removing the constant-time call fails here.
        var il = typeof(AccessToken).GetMethod(nameof(AccessToken.Is))!.GetMethodBody()!.GetILAsByteArray()!;
        var called = Enumerable.Range(0, il.Length - 4).Where(i => il[i] is 0x28 or 0x6F)
            .Select(i =>
                { try { return typeof(AccessToken).Module
                .ResolveMethod(BitConverter.ToInt32(il, i + 1))?.Name; } catch (ArgumentException) { return null; } });
        Assert.Contains("FixedTimeEquals", called);
    }

    [Fact]
    public async Task The_cookie_can_be_read_by_no_script_and_goes_to_no_other_site()
    {
        await using var server = await TrialServer.StartAsync();
        var flags = server.SetCookie.Split(';', StringSplitOptions.TrimEntries).Skip(1)
            .Select(flag => flag.ToLowerInvariant()).ToList();
        Assert.Contains("httponly", flags);
        Assert.Contains("samesite=strict", flags);
        Assert.Contains("path=/", flags);
        Each.HasNot(flags, flag => flag.StartsWith("domain", StringComparison.Ordinal));
        Assert.DoesNotContain(server.Cookie.Split('=')[1], server.Address.AbsoluteUri, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_key_is_taken_out_of_the_address_at_once_and_the_rest_stays()
    {
        await using var server = await TrialServer.StartAsync();
        var key = server.Address.Query.TrimStart('?');
        using var answer = await server.SendAsync(new HttpRequestMessage(HttpMethod.Get,
            server.At($"/n/01-quick?amount=3&{key}&words=a%26b")), isReader: false);
        Assert.Equal("/n/01-quick?amount=3&words=a%26b", Next(await answer.TextAsync()));
    }

    [Theory]
    [InlineData("//evil.example/")]
    [InlineData("///evil.example/")]
    [InlineData("/\\evil.example/")]
    [InlineData("/%5Cevil.example/")]
    public async Task The_way_on_leads_to_no_other_server(string path)
    {
        await using var server = await TrialServer.StartAsync();
        var answer = await server.RawGetAsync(path + server.Address.Query);
        var location = Next(answer);
        Assert.Equal(server.Host, new Uri(new Uri(server.Origin), location.Replace('\\', '/')).Authority);
    }

    [Theory]
    [InlineData("evil.example")]
    [InlineData("evil.example:80")]
    [InlineData("127.0.0.1.evil.example")]
    [InlineData("localhost.evil.example")]
    [InlineData("127.0.0.1")]
    [InlineData("127.0.0.1:1")]
    [InlineData("[::1]")]
    [InlineData("0.0.0.0")]
    [InlineData("user@127.0.0.1")]
    public async Task A_name_that_someone_else_gave_this_machine_is_refused(string host)
    {
        await using var server = await TrialServer.StartAsync();
        foreach (var name in (string[])[host, host.Contains(':', StringComparison.Ordinal) ? host
            : $"{host}:{(host == "127.0.0.1" ? server.Port + 1 : server.Port)}"])
        {
            var answer = await server
                .RawAsync($"GET /api/shelf HTTP/1.1\r\nHost: {name}\r\n{server.Credentials}\r\nConnection: close\r\n\r\n");
            if (name == $"[::1]:{server.Port}")
                continue;
            Assert.Matches("^HTTP/1.1 40[03] ", answer);
            Assert.DoesNotContain("notebooks\":", answer, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Not_even_the_key_helps_under_a_foreign_name()
    {
        await using var server = await TrialServer.StartAsync();
        var answer = await server
            .RawAsync($"GET /{server.Address.Query} HTTP/1.1\r\nHost: evil.example:{server.Port}\r\nConnection: close\r\n\r\n");
        Assert.StartsWith("HTTP/1.1 403 ", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("Set-Cookie", answer, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("localhost")]
    [InlineData("127.0.0.1")]
    [InlineData("LOCALHOST")]
    public async Task Its_own_names_are_taken(string host)
    {
        await using var server = await TrialServer.StartAsync();
        Assert.StartsWith("HTTP/1.1 200 ",
            await server.RawAsync($"GET /api/shelf HTTP/1.1\r\nHost: {host}:{server.Port}\r\n"
                + $"{server.Credentials}\r\nConnection: close\r\n\r\n"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("http://evil.example")]
    [InlineData("null")]
    [InlineData("https://127.0.0.1")]
    [InlineData("http://127.0.0.1:1")]
    [InlineData("http://localhost")]
    [InlineData(null)]
    public async Task A_page_of_another_site_can_change_nothing(string? origin)
    {
        await using var server = await TrialServer.StartAsync();
        foreach (var (method, path) in ((HttpMethod, string)[])[(HttpMethod.Put, "/api/files/own/a.yaml"),
            (HttpMethod.Post, "/api/text/check"), (HttpMethod.Post, "/api/rig/save")])
        {
            var request = new HttpRequestMessage(method,
                server.At(path)) { Content = new StringContent("{\"text\":\"a\"}", System.Text.Encoding.UTF8,
                "application/json") };
            request.Headers.TryAddWithoutValidation("Cookie", server.Cookie);
            request.Headers.TryAddWithoutValidation("Rig-Key", server.Key);
            if (origin is not null)
                request.Headers.TryAddWithoutValidation("Origin", origin);
            using var answer = await server.SendAsync(request, isReader: false);
            Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        }
        Assert.Empty(Directory.EnumerateFileSystemEntries(server.Rigs));
    }

    [Theory]
    [InlineData("cross-site")]
    [InlineData("same-site")]
    [InlineData("none")]
    public async Task What_the_browser_says_of_the_page_counts_too(string site)
    {
        await using var server = await TrialServer.StartAsync();
        var request = new HttpRequestMessage(HttpMethod.Put,
            server.At("/api/files/own/a.yaml")) { Content = new StringContent("{\"text\":\"a\"}", System.Text.Encoding.UTF8,
            "application/json") };
        request.Headers.TryAddWithoutValidation("Sec-Fetch-Site", site);
        using var answer = await server.SendAsync(request);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Empty(Directory.EnumerateFileSystemEntries(server.Rigs));
    }

    [Fact]
    public async Task A_page_of_another_site_can_read_nothing()
    {
        await using var server = await TrialServer.StartAsync();
        foreach (var header in (string[])["Sec-Fetch-Site: cross-site", "Origin: http://evil.example"])
        {
            var answer = await server.RawGetAsync("/api/shelf", header);
            Assert.StartsWith("HTTP/1.1 403 ", answer, StringComparison.Ordinal);
            Assert.DoesNotContain("Access-Control-Allow", answer, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Theory]
    [InlineData("http://evil.example")]
    [InlineData("null")]
    [InlineData("http://localhost:1")]
    public async Task A_page_of_another_site_opens_no_connection(string origin)
    {
        await using var server = await TrialServer.StartAsync();
        var refused = await Assert.ThrowsAsync<RefusedException>(() => LiveReader.OpenAsync(server, "01-quick", origin));
        Assert.Equal(403, refused.Status);
        Assert.Equal(403, (await Assert.ThrowsAsync<RefusedException>(() => LiveReader.OpenRigAsync(server, origin))).Status);
    }

    [Fact]
    public async Task No_connection_is_opened_without_the_key_or_under_a_foreign_name()
    {
        await using var server = await TrialServer.StartAsync();
        Assert.Equal(403,
            (await Assert.ThrowsAsync<RefusedException>(() => LiveReader.OpenAsync(server, "01-quick", cookie: "rig=0"))).Status);
        var host = $"evil.example:{server.Port}";
        Assert.Equal(403,
            (await Assert.ThrowsAsync<RefusedException>(() => LiveReader.OpenAsync(server, "01-quick", origin: $"http://{host}",
            host: host))).Status);
        using var reader = await server.OpenAsync("01-quick");
        Assert.NotNull(await reader.NextAsync());
    }

    [Theory]
    [InlineData("DELETE")]
    [InlineData("PATCH")]
    [InlineData("OPTIONS")]
    [InlineData("TRACE")]
    [InlineData("HEAD")]
    [InlineData("NONSENSE")]
    public async Task Other_methods_are_refused(string method)
    {
        await using var server = await TrialServer.StartAsync();
        File.WriteAllText(Path.Combine(server.Rigs, "a.yaml"), "a");
        using var answer = await server.SendAsync(new HttpRequestMessage(new HttpMethod(method),
            server.At("/api/files/own/a.yaml")));
        Assert.Equal(HttpStatusCode.MethodNotAllowed, answer.StatusCode);
        Assert.True(File.Exists(Path.Combine(server.Rigs, "a.yaml")));
    }

    [Fact]
    public async Task Only_this_machine_is_listened_to_unless_asked_otherwise()
    {
        await using var server = await TrialServer.StartAsync();
        Assert.Empty(server.NetworkAddresses);
        var bound = System.Net.NetworkInformation.IPGlobalProperties.GetIPGlobalProperties().GetActiveTcpListeners()
            .Where(end => end.Port == server.Port).ToList();
        Assert.NotEmpty(bound);
        Each.Of(bound, end => Assert.True(IPAddress.IsLoopback(end.Address), end.ToString()));
    }

    [Fact]
    public async Task On_the_network_it_answers_to_its_numbers_and_still_wants_the_key()
    {
        await using var server = await TrialServer.StartAsync(listen: true);
        Assert.SkipWhen(server.NetworkAddresses.Count == 0, "this machine is on no network");
        var host = server.NetworkAddresses[0].Authority;
        Assert.StartsWith("HTTP/1.1 403 ",
            await server.RawAsync($"GET /api/shelf HTTP/1.1\r\nHost: {host}\r\nConnection: close\r\n\r\n"),
            StringComparison.Ordinal);
        Assert.StartsWith("HTTP/1.1 200 ",
            await server.RawAsync($"GET /api/shelf HTTP/1.1\r\nHost: {host}\r\n{server.Credentials}\r\nConnection: "
                + "close\r\n\r\n"), StringComparison.Ordinal);
        Assert.StartsWith("HTTP/1.1 403 ",
            await server.RawAsync($"GET /api/shelf HTTP/1.1\r\nHost: evil.example:{server.Port}\r\n"
                + $"{server.Credentials}\r\nConnection: close\r\n\r\n"), StringComparison.Ordinal);
    }

    /// <summary>Where the first page goes on; the shelf where it goes nowhere.</summary>
    private static string Next(string page) =>
        WebUtility.HtmlDecode(Regex.Match(page, "name=\"rig-next\" content=\"(?<next>[^\"]*)\"",
        RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Groups["next"].Value) is { Length: > 0 } next ? next : "/";
}
