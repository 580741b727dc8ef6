using System.Diagnostics;
using System.Net.WebSockets;
using System.Net;
using System.Text;
using RigScenarios.Page.Settings;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Attacks;

/// <summary>Limits on size, number, time and memory, and that the server answers as before afterwards.</summary>
public sealed class LimitTests
{
    [Fact]
    public async Task A_body_that_is_too_large_is_refused_and_nothing_is_written()
    {
        await using var server = await TrialServer.StartAsync();
        var text = new string('a', 2 * 1024 * 1024 + 10);
        using var file = await server.SendJsonAsync(HttpMethod.Put, "/api/files/own/a.yaml", new { text });
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, file.StatusCode);
        using var form = await server.SendJsonAsync(HttpMethod.Post, "/api/rig/save",
            new { given = new { title = new string('a', 256 * 1024) } });
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, form.StatusCode);
        Assert.Empty(Directory.EnumerateFileSystemEntries(server.Rigs));
        Assert.Equal(HttpStatusCode.OK, (await server.GetAsync("/api/shelf")).StatusCode);
    }

    [Fact]
    public async Task A_body_that_does_not_say_how_large_it_is_is_counted()
    {
        await using var server = await TrialServer.StartAsync(new PageLimits { LargestJsonBytes = 1000,
            LargestFileBytes = 4000 });
        var request = new HttpRequestMessage(HttpMethod.Put, server.At("/api/files/own/a.yaml"));
        request.Headers.TransferEncodingChunked = true;
        request.Content = new StringContent($"{{\"text\":\"{new string('a', 5000)}\"}}", Encoding.UTF8, "application/json");
        using var answer = await server.SendAsync(request);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
    }

    [Fact]
    public async Task A_body_that_is_no_JSON_by_its_own_word_is_refused()
    {
        await using var server = await TrialServer.StartAsync();
        foreach (var type in (string[])["text/plain", "application/x-www-form-urlencoded", "multipart/form-data"])
        {
            var request = new HttpRequestMessage(HttpMethod.Put,
                server.At("/api/files/own/a.yaml")) { Content = new StringContent("{\"text\":\"a\"}", Encoding.UTF8, type) };
            using var answer = await server.SendAsync(request);
            Assert.Equal(HttpStatusCode.UnsupportedMediaType, answer.StatusCode);
        }
        Assert.Empty(Directory.EnumerateFileSystemEntries(server.Rigs));
    }

    [Fact]
    public async Task A_message_that_is_too_large_ends_the_connection()
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("01-quick");
        await reader.UntilAsync("notebook");
        await reader
            .SendTextAsync(
            $"{{\"kind\":\"run\",\"queue\":\"now\",\"run\":1,\"values\":{{\"words\":\"{new string('a', 70 * 1024)}\"}}}}");
        await Assert.ThrowsAnyAsync<Exception>(() => reader.EndAsync(1));
        Assert.Equal(WebSocketCloseStatus.MessageTooBig, reader.Closed);
        using var next = await server.OpenAsync("01-quick");
        await next.RunAsync(1, new { });
        Assert.Equal("done", (await next.EndAsync(1)).Text("kind"));
    }

    [Fact]
    public async Task A_form_that_is_too_large_ends_its_connection()
    {
        await using var server = await TrialServer.StartAsync();
        using var form = await LiveReader.OpenRigAsync(server);
        await form
            .SendTextAsync(
            $"{{\"kind\":\"run\",\"queue\":\"now\",\"run\":1,\"given\":{{\"title\":\"{new string('a', 256 * 1024)}\"}}}}");
        await Assert.ThrowsAnyAsync<Exception>(() => form.EndAsync(1));
        Assert.Equal(WebSocketCloseStatus.MessageTooBig, form.Closed);
    }

    [Fact]
    public async Task Bytes_are_no_message()
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("01-quick");
        await reader.UntilAsync("notebook");
        await reader.SendBytesAsync([0, 255, 1], WebSocketMessageType.Binary);
        Assert.Null(await reader.NextAsync());
        Assert.Equal(WebSocketCloseStatus.InvalidMessageType, reader.Closed);
    }

    [Fact]
    public async Task There_are_so_many_readers_and_no_more_until_one_leaves()
    {
        await using var server = await TrialServer.StartAsync(new PageLimits { Readers = 3 });
        var readers = new List<LiveReader>();
        for (var i = 0; i < 3; i++)
        {
            readers.Add(await server.OpenAsync("01-quick"));
            await readers[i].UntilAsync("notebook");
        }
        Assert.Equal(503, (await Assert.ThrowsAsync<RefusedException>(() => server.OpenAsync("01-quick"))).Status);
        foreach (var reader in readers)
            reader.Dispose();
        await Eventually(async () =>
        {
            using var again = await server.OpenAsync("01-quick");
            return true;
        });
    }

    [Fact]
    public async Task A_run_that_takes_too_long_is_stopped_and_the_page_is_told()
    {
        await using var server = await TrialServer.StartAsync(new PageLimits { RunTime = TimeSpan.FromSeconds(2) });
        using var reader = await server.OpenAsync("02-slow");
        await reader.RunAsync(1, new { seconds = "600" });
        var end = await reader.EndAsync(1);
        Assert.Equal(("stopped", "time"), (end.Text("kind"), end.Text("why")));
        await reader.RunAsync(2, new { seconds = "0" });
        Assert.Equal("done", (await reader.EndAsync(2)).Text("kind"));
    }

    [Fact]
    public async Task A_run_that_will_not_stop_is_left_behind()
    {
        await using var server = await TrialServer.StartAsync(new PageLimits { RunTime = TimeSpan.FromSeconds(1),
            Grace = TimeSpan.FromMilliseconds(200) });
        using var reader = await server.OpenAsync("02-slow");
        await reader.RunAsync(1, new { seconds = "0" });
        await reader.EndAsync(1);
        var clock = Stopwatch.StartNew();
        await reader.RunAsync(2, new { seconds = "25", listens = "no" });
        var end = await reader.EndAsync(2);
        Assert.Equal(("stopped", "time"), (end.Text("kind"), end.Text("why")));
        await reader.RunAsync(3, new { seconds = "0" });
        Assert.Equal("done", (await reader.EndAsync(3)).Text("kind"));
        // It was not waited for: the cell works on for 25 s.
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(20), clock.Elapsed.ToString());
        Each.HasNot(reader.Messages, message => message.Text("kind") == "done"
            && message.GetProperty("run").GetInt32() == 2);
    }

    [Fact]
    public async Task A_page_to_keep_is_bound_by_the_same_time()
    {
        await using var server = await TrialServer.StartAsync(new PageLimits { RunTime = TimeSpan.FromSeconds(1) });
        using var answer = await server.GetAsync("/api/page/02-slow?seconds=600");
        Assert.Equal(HttpStatusCode.ServiceUnavailable, answer.StatusCode);
        Assert.Contains("longer than a run may", (await answer.JsonAsync()).Problems(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task When_memory_runs_out_runs_are_stopped_and_the_page_is_told()
    {
        var used = 100L;
        await using var server = await TrialServer.StartAsync(new PageLimits { MemoryBytes = 1000,
            MemoryInUse = () => Volatile.Read(ref used), BetweenMemoryLooks = TimeSpan.FromMilliseconds(20) });
        using var reader = await server.OpenAsync("02-slow");
        await reader.RunAsync(1, new { seconds = "600" });
        await reader.UntilAsync("progress", 1);
        Volatile.Write(ref used, 2000);
        var end = await reader.EndAsync(1);
        Assert.Equal(("stopped", "memory"), (end.Text("kind"), end.Text("why")));
        // While there is too little, none begins.
        await reader.RunAsync(2, new { seconds = "0.01" });
        Assert.Equal("memory", (await reader.EndAsync(2)).Text("why"));
        using var kept = await server.GetAsync("/api/page/02-slow?seconds=1");
        Assert.Equal(HttpStatusCode.ServiceUnavailable, kept.StatusCode);
        Volatile.Write(ref used, 100);
        await reader.RunAsync(3, new { seconds = "0" });
        Assert.Equal("done", (await reader.EndAsync(3)).Text("kind"));
    }

    [Fact]
    public void The_memory_that_is_watched_is_that_of_the_whole_program()
    {
        var before = new PageLimits().MemoryInUse();
        var block = new byte[200 * 1024 * 1024];
        for (var i = 0; i < block.Length; i += 4096)
            block[i] = 1;
        Assert.True(new PageLimits().MemoryInUse() > before + 100 * 1024 * 1024);
        GC.KeepAlive(block);
    }

    [Fact]
    public async Task So_many_runs_go_on_at_once_and_the_others_wait()
    {
        await using var server = await TrialServer.StartAsync(new PageLimits { Runs = 2 });
        var readers = new List<LiveReader>();
        for (var i = 0; i < 3; i++)
            readers.Add(await server.OpenAsync("02-slow"));
        foreach (var reader in readers.Take(2))
        {
            await reader.RunAsync(1, new { seconds = "600" });
            await reader.UntilAsync("progress", 1);
        }
        await readers[2].RunAsync(1, new { seconds = "0" });
        var ending = readers[2].EndAsync(1);
        await Task.Delay(500, TestContext.Current.CancellationToken);
        Assert.False(ending.IsCompleted);
        await readers[0].SendAsync(new { kind = "stop", queue = "now" });
        Assert.Equal("done", (await ending).Text("kind"));
        foreach (var reader in readers)
            reader.Dispose();
    }

    [Fact]
    public async Task A_reader_who_leaves_gives_back_the_place_of_their_run()
    {
        await using var server = await TrialServer.StartAsync(new PageLimits { Runs = 1 });
        using (var reader = await server.OpenAsync("02-slow"))
        {
            await reader.RunAsync(1, new { seconds = "600" });
            await reader.UntilAsync("progress", 1);
        }
        using var next = await server.OpenAsync("02-slow");
        await next.RunAsync(1, new { seconds = "0" });
        Assert.Equal("done", (await next.EndAsync(1)).Text("kind"));
    }

    [Fact]
    public async Task Progress_is_told_no_more_often_than_a_person_can_follow()
    {
        await using var server = await TrialServer.StartAsync();
        using var reader = await server.OpenAsync("02-slow");
        await reader.RunAsync(1, new { seconds = "1" });
        var done = await reader.EndAsync(1);
        Assert.Equal("done", done.Text("kind"));
        var told = reader.Messages.Count(message => message.Text("kind") == "progress"
            && message.GetProperty("fraction").GetDouble() > 0);
        // Ten a second of the time it took; the cell reports some hundred times a second.
        Assert.InRange(told, 2, done.GetProperty("milliseconds").GetDouble() / 100 + 2);
    }

    [Fact]
    public async Task A_half_request_does_not_keep_others_out()
    {
        await using var server = await TrialServer.StartAsync();
        using var half = new System.Net.Sockets.TcpClient();
        await half.ConnectAsync(IPAddress.Loopback, server.Port, TestContext.Current.CancellationToken);
        await half.GetStream().WriteAsync(Encoding.ASCII.GetBytes("GET / HTTP/1.1\r\nHost: "),
            TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, (await server.GetAsync("/api/shelf")).StatusCode);
    }

    private static async Task Eventually(Func<Task<bool>> succeeds)
    {
        for (var tries = 0; ; tries++)
        {
            try
            {
                if (await succeeds())
                    return;
            }
            catch (RefusedException) when (tries < 100)
            {
                await Task.Delay(50, TestContext.Current.CancellationToken);
            }
        }
    }
}
