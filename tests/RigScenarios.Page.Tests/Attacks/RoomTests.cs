using System.Net.WebSockets;
using RigScenarios.Page.Settings;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Attacks;

/// <summary>How many living pages there may be, and which one makes room for one more.</summary>
public sealed class RoomTests
{
    private static readonly PageLimits Three = new() { Readers = 3, Idle = TimeSpan.FromMilliseconds(300) };

    [Fact]
    public async Task One_more_takes_the_place_of_the_page_left_alone_the_longest()
    {
        await using var server = await TrialServer.StartAsync(Three);
        var readers = await OpenAsync(server, 3);
        // The first one works again after the others came: now the second has been left alone the longest.
        await readers[0].RunAsync(1, new { });
        Assert.Equal("done", (await readers[0].EndAsync(1)).Text("kind"));
        await Task.Delay(500, TestContext.Current.CancellationToken);
        using var fourth = await server.OpenAsync("01-quick");
        await fourth.UntilAsync("notebook");
        Assert.Null(await readers[1].NextAsync());
        Assert.Equal((WebSocketCloseStatus)4001, readers[1].Closed);
        foreach (var reader in (LiveReader[])[readers[0], readers[2], fourth])
        {
            await reader.RunAsync(2, new { });
            Assert.Equal("done", (await reader.EndAsync(2)).Text("kind"));
        }
        readers.ForEach(reader => reader.Dispose());
    }

    [Fact]
    public async Task A_page_whose_run_goes_on_is_not_left_alone()
    {
        await using var server = await TrialServer.StartAsync(Three with { Readers = 1 });
        using var busy = await server.OpenAsync("02-slow");
        await busy.RunAsync(1, new { seconds = "600" });
        await busy.UntilAsync("progress", 1);
        await Task.Delay(500, TestContext.Current.CancellationToken);
        Assert.Equal(503, (await Assert.ThrowsAsync<RefusedException>(() => server.OpenAsync("01-quick"))).Status);
        await busy.SendAsync(new { kind = "stop", queue = "now" });
        Assert.Equal("stopped", (await busy.EndAsync(1)).Text("kind"));
    }

    [Fact]
    public async Task Where_memory_is_short_a_new_page_takes_the_place_of_an_idle_one()
    {
        var used = 100L;
        await using var server = await TrialServer.StartAsync(Three with { Readers = 10, MemoryBytes = 1000,
            MemoryInUse = () => Volatile.Read(ref used) });
        var readers = await OpenAsync(server, 2);
        await Task.Delay(500, TestContext.Current.CancellationToken);
        Volatile.Write(ref used, 800);
        using var third = await server.OpenAsync("01-quick");
        await third.UntilAsync("notebook");
        Assert.Null(await readers[0].NextAsync());
        Assert.Equal((WebSocketCloseStatus)4001, readers[0].Closed);
        // Where none is idle it still comes in: the memory of runs has a bound of its own.
        using var fourth = await server.OpenAsync("01-quick");
        await fourth.UntilAsync("notebook");
        readers.ForEach(reader => reader.Dispose());
    }

    [Fact]
    public async Task A_class_on_the_network_finds_room()
    {
        await using var server = await TrialServer.StartAsync(listen: true);
        var readers = await OpenAsync(server, 30);
        foreach (var reader in (LiveReader[])[readers[0], readers[^1]])
        {
            await reader.RunAsync(1, new { });
            Assert.Equal("done", (await reader.EndAsync(1)).Text("kind"));
        }
        readers.ForEach(reader => reader.Dispose());
    }

    [Fact]
    public void The_documentation_says_how_many()
    {
        var words = File.ReadAllText(Path.Combine(Checkout.Root, "docs", "living-page.md")).ReplaceLineEndings(" ");
        var limits = new PageLimits();
        Assert.Contains($"{limits.Readers} pages may be open at once, with `--listen` {limits.ReadersOnNetwork}", words,
            StringComparison.Ordinal);
        Assert.Contains($"nobody has used for {limits.Idle.TotalSeconds:0} s", words, StringComparison.Ordinal);
    }

    private static async Task<List<LiveReader>> OpenAsync(TrialServer server, int count)
    {
        var readers = new List<LiveReader>();
        for (var i = 0; i < count; i++)
        {
            readers.Add(await server.OpenAsync("01-quick"));
            await readers[i].UntilAsync("notebook");
        }
        return readers;
    }
}
