using System.Net;
using RigScenarios.Page.Settings;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Api;

/// <summary>The shelf, the address, and the files of the page itself.</summary>
public sealed class ShelfTests
{
    [Fact]
    public async Task The_shelf_has_the_notebooks_in_order_and_the_files()
    {
        await using var server = await TrialServer.StartAsync();
        File.WriteAllText(Path.Combine(server.Rigs, "mine.yaml"), "rigscenarios: scenario 1\ntitle: Mine\nnonsense: 1\n");
        File.WriteAllText(Path.Combine(server.Rigs, "parts.yaml"), "rigscenarios: parts 1\nparts: {}\n");
        File.WriteAllText(Path.Combine(server.Rigs, "other-program.yaml"), "services: []\n");
        File.WriteAllText(Path.Combine(server.Rigs, "notes.txt"), "rigscenarios: scenario 1\n");
        var shelf = await (await server.GetAsync("/api/shelf")).JsonAsync();
        // The broken one is left out; the others stay.
        Assert.Equal(["01-quick", "02-slow", "03-fails", "05-moves", "06-of-the-file"],
            shelf.GetProperty("notebooks").EnumerateArray().Select(notebook => notebook.Text("name")));
        Assert.Equal("What is said?", shelf.GetProperty("notebooks")[0].Text("title"));
        Assert.Equal(["own/mine.yaml", "samples/island-crossing.yaml", "samples/market-hall.yaml", "samples/night-dolly.yaml",
            "samples/pottery-class.yaml", "samples/river-ferry.yaml", "samples/teaching-kit.yaml", "samples/winter-harbour.yaml"],
            shelf.GetProperty("files").EnumerateArray().Select(file => file.Text("id")));
        Assert.True(shelf.GetProperty("files")[0].GetProperty("problems").GetInt32() > 0);
        Assert.Equal(0, shelf.GetProperty("files")[1].GetProperty("problems").GetInt32());
        Assert.Equal("Teaching kit", shelf.GetProperty("files")[6].Text("title"));
    }

    [Fact]
    public async Task The_page_is_kept_by_the_browser_only_while_it_is_the_same()
    {
        await using var server = await TrialServer.StartAsync();
        using var first = await server.GetAsync("/assets/plotly.js");
        Assert.Equal("text/javascript", first.Content.Headers.ContentType!.MediaType);
        var request = new HttpRequestMessage(HttpMethod.Get, server.At("/assets/plotly.js"));
        request.Headers.TryAddWithoutValidation("If-None-Match", first.Headers.ETag!.Tag);
        using var second = await server.SendAsync(request);
        Assert.Equal(HttpStatusCode.NotModified, second.StatusCode);
    }

    [Fact]
    public async Task A_port_that_is_taken_is_passed_over_and_two_servers_do_not_share_a_key()
    {
        await using var first = await TrialServer.StartAsync();
        await using var second = await PageServer.StartAsync(
            new PageOptions { NotebookFolder = first.Notebooks, DataFolder = Checkout.Data, RigFolder = first.Rigs,
                Port = first.Port }, TestContext.Current.CancellationToken);
        Assert.NotEqual(first.Port, second.Port);
        using var client = new HttpClient();
        var request = new HttpRequestMessage(HttpMethod.Get, new Uri(second.Address, "/api/shelf"));
        request.Headers.TryAddWithoutValidation("Cookie",
            first.Cookie.Replace($"{first.Port}", $"{second.Port}", StringComparison.Ordinal));
        request.Headers.TryAddWithoutValidation("Rig-Key", first.Key);
        Assert.Equal(HttpStatusCode.Forbidden,
            (await client.SendAsync(request, TestContext.Current.CancellationToken)).StatusCode);
    }

    [Fact]
    public async Task A_folder_that_is_not_there_is_told_before_anything_starts()
    {
        var missing = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        var told = await Assert.ThrowsAsync<DirectoryNotFoundException>(() => PageServer.StartAsync(
            new PageOptions { NotebookFolder = Path.Combine(Checkout.Root, "notebooks"), DataFolder = Checkout.Data,
                RigFolder = missing }, TestContext.Current.CancellationToken));
        Assert.Contains(missing, told.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Settings_of_the_machine_do_not_change_the_server()
    {
        string[] names = ["ASPNETCORE_ENVIRONMENT", "DOTNET_ENVIRONMENT", "ASPNETCORE_URLS", "ASPNETCORE_DETAILEDERRORS"];
        string[] values = ["Development", "Development", "http://0.0.0.0:0", "true"];
        for (var i = 0; i < names.Length; i++)
            Environment.SetEnvironmentVariable(names[i], values[i]);
        try
        {
            await using var server = await TrialServer.StartAsync();
            var bound = System.Net.NetworkInformation.IPGlobalProperties.GetIPGlobalProperties().GetActiveTcpListeners()
                .Where(end => end.Port == server.Port).ToList();
            Each.Of(bound, end => Assert.True(IPAddress.IsLoopback(end.Address)));
            Attacks.HeaderTests.NothingOfTheInside(await (await server.SendTextAsync(HttpMethod.Post, "/api/text/check", "{"))
                .TextAsync());
        }
        finally
        {
            foreach (var name in names)
                Environment.SetEnvironmentVariable(name, null);
        }
    }
}
