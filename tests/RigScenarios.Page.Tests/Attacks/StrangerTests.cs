using System.Net;
using System.Net.Sockets;
using System.Text;
using RigScenarios.Page.Settings;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Attacks;

/// <summary>Connections that never show the key keep nobody out who has it, and don't stay.</summary>
public sealed class StrangerTests
{
    [Theory]
    [InlineData("")]
    [InlineData("GET / HTTP/1.1\r\nHost: ")]
    [InlineData("GET / HTTP/1.1\r\nHost: 127.0.0.1\r\nCookie: none\r\n\r\n")]
    public async Task Hundreds_of_them_do_not_block_the_page(string said)
    {
        // So long that none of them goes by itself while this looks.
        await using var server = await TrialServer.StartAsync(new PageLimits { StrangerTime = TimeSpan.FromMinutes(10) });
        var silent = new List<TcpClient>();
        try
        {
            for (var i = 0; i < 300; i++)
            {
                silent.Add(await ConnectAsync(server));
                if (said.Length > 0)
                    await SayAsync(silent[^1], said);
            }
            // A new connection for each: the handler keeps its own.
            for (var i = 0; i < 5; i++)
                Assert.StartsWith("HTTP/1.1 200 ", await server.RawGetAsync("/api/shelf"), StringComparison.Ordinal);
            using var reader = await server.OpenAsync("01-quick");
            Assert.NotNull(await reader.NextAsync());
        }
        finally
        {
            silent.ForEach(client => client.Dispose());
        }
    }

    [Fact]
    public async Task One_that_says_nothing_is_closed_in_its_time()
    {
        await using var server = await TrialServer.StartAsync(new PageLimits { StrangerTime = TimeSpan.FromMilliseconds(200) });
        using var silent = await ConnectAsync(server);
        Assert.True(await IsClosedAsync(silent));
    }

    [Fact]
    public async Task One_that_goes_on_asking_without_the_key_is_closed_too()
    {
        await using var server = await TrialServer.StartAsync(new PageLimits { StrangerTime = TimeSpan.FromMilliseconds(500) });
        using var asking = await ConnectAsync(server);
        var request = $"GET / HTTP/1.1\r\nHost: {server.Host}\r\n\r\n";
        await SayAsync(asking, request);
        var first = new byte[12];
        await asking.GetStream().ReadExactlyAsync(first, TestContext.Current.CancellationToken);
        Assert.Equal("HTTP/1.1 403", Encoding.ASCII.GetString(first));
        Assert.True(await IsClosedAsync(asking));
    }

    [Fact]
    public async Task One_that_showed_the_key_stays_beyond_that_time()
    {
        await using var server = await TrialServer.StartAsync(new PageLimits { StrangerTime = TimeSpan.FromMilliseconds(300) });
        using var known = await ConnectAsync(server);
        using var reader = await server.OpenAsync("01-quick");
        foreach (var _ in Enumerable.Range(0, 3))
        {
            Assert.StartsWith("HTTP/1.1 200 ", await AskAsync(known,
                $"GET /assets/shared/enter.js HTTP/1.1\r\nHost: {server.Host}\r\n{server.Credentials}\r\n\r\n"),
                StringComparison.Ordinal);
            await Task.Delay(400, TestContext.Current.CancellationToken);
        }
        await reader.RunAsync(1, new { });
        Assert.Equal("done", (await reader.EndAsync(1)).Text("kind"));
    }

    [Fact]
    public async Task Even_with_the_key_there_are_so_many_and_no_more()
    {
        await using var server = await TrialServer.StartAsync(new PageLimits { Connections = 3 });
        var open = new List<LiveReader>();
        // The one that the address was opened with is kept by the client.
        for (var i = 0; i < 2; i++)
            open.Add(await server.OpenAsync("01-quick"));
        Assert.StartsWith("HTTP/1.1 503 ", await server.RawGetAsync("/api/shelf"), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await server.GetAsync("/api/shelf")).StatusCode);
        open.ForEach(reader => reader.Dispose());
    }

    private static async Task<TcpClient> ConnectAsync(TrialServer server)
    {
        var client = new TcpClient();
        await client.ConnectAsync(IPAddress.Loopback, server.Port, TestContext.Current.CancellationToken);
        return client;
    }

    private static async Task SayAsync(TcpClient client, string text)
    {
        try
        {
            await client.GetStream().WriteAsync(Encoding.ASCII.GetBytes(text), TestContext.Current.CancellationToken);
        }
        catch (IOException)
        {
            // Closed already, to make room.
        }
    }

    /// <summary>Sends a request and reads the whole answer, on a connection that stays open.</summary>
    private static async Task<string> AskAsync(TcpClient client, string request)
    {
        await SayAsync(client, request);
        var head = new StringBuilder();
        var next = new byte[1];
        while (!head.ToString().EndsWith("\r\n\r\n", StringComparison.Ordinal))
        {
            await client.GetStream().ReadExactlyAsync(next, TestContext.Current.CancellationToken);
            head.Append((char)next[0]);
        }
        var length = head.ToString().Split("\r\n")
            .First(line => line.StartsWith("Content-Length:", StringComparison.OrdinalIgnoreCase));
        await client.GetStream().ReadExactlyAsync(new byte[int.Parse(length.Split(' ')[1], null)],
            TestContext.Current.CancellationToken);
        return head.ToString();
    }

    /// <summary>Reads what comes until the other end closes; false if it doesn't within the time of the test.</summary>
    private static async Task<bool> IsClosedAsync(TcpClient client)
    {
        var buffer = new byte[4096];
        try
        {
            while (await client.GetStream().ReadAsync(buffer, TestContext.Current.CancellationToken) > 0)
            {
            }
        }
        catch (IOException)
        {
            // Reset.
        }
        return true;
    }
}
