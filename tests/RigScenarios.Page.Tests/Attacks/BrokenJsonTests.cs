using System.Net;
using System.Text;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Attacks;

/// <summary>Bodies that no page sends: told in plain words, with nothing of the program's inside showing.</summary>
public sealed class BrokenJsonTests
{
    public static readonly TheoryData<string> Doors = new("/api/text/check", "/api/text/help", "/api/rig/save",
        "/api/rig/edit");

    private static readonly string[] Bodies =
    [
        "", " ", "{", "}", "[]", "null", "1", "\"text\"", "{\"text\":}", "{\"text\":\"a\"", "{text:\"a\"}", "{\"text\":\"a\",}",
        "{\"text\":\"a\"}{}", "// no\n{}",
        "{\"text\":1}", "{\"text\":[]}", "{\"text\":{}}", "{\"text\":\"\\ud800\"}", "{\"text\":\"a\",\"text\":\"b\"}",
        "{\"given\":1}", "{\"given\":\"x\"}", "{\"given\":[]}", "{\"given\":null}",
        "{\"given\":{\"kit\":[]},\"edit\":{}}", "{\"given\":{\"kit\":{\"camera\":7},\"builds\":3}}",
        "{\"given\":{},\"file\":7,\"edit\":[]}", "{\"given\":{\"builds\":{\"rig\":[]},\"days\":\"x\"},\"edit\":{\"do\":7}}",
        "{\"given\":{},\"name\":\"../x.yaml\",\"edit\":{\"do\":\"move\",\"thing\":\"a\",\"forward\":{}}}",
        "{\"text\":\"a\",\"line\":0,\"column\":0}", "{\"text\":\"a\",\"line\":-1,\"column\":1}",
        "{\"text\":\"a\",\"line\":1e9,\"column\":\"x\"}",
        "{\"text\":\"\u0001\"}", "\0", "{\"\0\":1}",
    ];

    [Theory]
    [MemberData(nameof(Doors))]
    public async Task A_broken_body_is_the_senders_problem(string door)
    {
        await using var server = await TrialServer.StartAsync();
        foreach (var body in Bodies)
        {
            using var answer = await server.SendTextAsync(HttpMethod.Post, door, body);
            var text = await answer.TextAsync();
            Assert.True((int)answer.StatusCode is 200 or (>= 400 and < 500), $"{body}: {answer.StatusCode} {text}");
            Assert.Contains("\"problems\"", text, StringComparison.Ordinal);
            HeaderTests.NothingOfTheInside(text);
        }
        Assert.Empty(server.Reports);
        Assert.Empty(Directory.EnumerateFileSystemEntries(server.Rigs));
    }

    [Theory]
    [MemberData(nameof(Doors))]
    public async Task Deep_nesting_is_refused(string door)
    {
        await using var server = await TrialServer.StartAsync();
        foreach (var depth in (int[])[20, 1000, 100_000])
        {
            foreach (var body in (string[])[$"{{\"text\":{new string('[', depth)}{new string(']', depth)}}}",
                $"{{\"given\":{string.Concat(Enumerable.Repeat("{\"a\":", Math.Min(depth, 20_000)))}1"
                    + $"{new string('}', Math.Min(depth, 20_000))}}}"])
            {
                using var answer = await server.SendTextAsync(HttpMethod.Post, door, body);
                Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
            }
        }
    }

    [Fact]
    public async Task Text_that_no_file_holds_is_not_saved()
    {
        await using var server = await TrialServer.StartAsync();
        foreach (var text in (string[])["a\\u0000b", "\\ud800", "\\uffff"])
        {
            using var answer = await server.SendTextAsync(HttpMethod.Put, "/api/files/own/a.yaml", $"{{\"text\":\"{text}\"}}");
            Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        }
        Assert.Empty(Directory.EnumerateFileSystemEntries(server.Rigs));
    }

    [Fact]
    public async Task Hostile_text_of_a_scenario_is_told_at_its_line()
    {
        await using var server = await TrialServer.StartAsync();
        string[] texts =
        [
            "a: &a [*a]", "a: &a {b: *a}", "!!python/object:os.system x", "--- \n--- \n", new string('[', 5000),
            string.Concat(Enumerable.Range(0, 2000).Select(i => new string(' ', i) + "a:\n")),
            "rigscenarios: scenario 1\ntitle: \u0001\u0002\u001b[31m\n", "a: \"\\x00\"", "\uFEFFrigscenarios: scenario 1",
            "%YAML 9.9\n---\na: 1", "? [a]\n: b", "a: |\n" + new string('x', 100_000),
        ];
        foreach (var text in texts)
        {
            using var answer = await server.SendJsonAsync(HttpMethod.Post, "/api/text/check", new { text });
            var body = await answer.TextAsync();
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.Contains("\"severity\":\"error\"", body, StringComparison.Ordinal);
            HeaderTests.NothingOfTheInside(body);
        }
        Assert.Empty(server.Reports);
    }

    [Theory]
    [InlineData("/%00")]
    [InlineData("/api/files/own/%00.yaml")]
    [InlineData("/n/%ff%fe")]
    [InlineData("/n/a%0ab")]
    [InlineData("/%zz")]
    [InlineData("/api/rig/given?file=%00")]
    [InlineData("/api/rig/given?file=own/a.yaml&file=own/b.yaml")]
    [InlineData("/api/page/01-quick?%00=%00")]
    [InlineData("/?%ff")]
    public async Task Odd_addresses_are_answered_in_plain_words_or_not_at_all(string path)
    {
        await using var server = await TrialServer.StartAsync();
        var answer = await server.RawGetAsync(path);
        Assert.Matches("^HTTP/1.1 (200|4[0-9][0-9]) ", answer);
        HeaderTests.NothingOfTheInside(answer);
        Assert.Empty(server.Reports);
    }

    [Fact]
    public async Task Random_bytes_leave_the_server_as_it_was()
    {
        await using var server = await TrialServer.StartAsync();
        for (var seed = 20; seed < 50; seed++)
        {
            var bytes = new byte[200];
            new Random(seed).NextBytes(bytes);
            using var client = new System.Net.Sockets.TcpClient();
            await client.ConnectAsync(IPAddress.Loopback, server.Port, TestContext.Current.CancellationToken);
            await client.GetStream().WriteAsync(bytes, TestContext.Current.CancellationToken);
            using var answer = await server.SendTextAsync(HttpMethod.Post, "/api/text/check", Encoding.Latin1.GetString(bytes));
            Assert.True((int)answer.StatusCode is >= 400 and <= 499, $"Bytes of seed {seed} get {(int)answer.StatusCode}.");
        }
        Assert.Equal(HttpStatusCode.OK, (await server.GetAsync("/api/shelf")).StatusCode);
        Assert.Empty(server.Reports);
    }
}
