using Microsoft.Playwright;
using RigScenarios.Page.Tests.Browser;
using RigScenarios.Page.Tests.Folders;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.InBrowser;

/// <summary>A page with the library and the reference cases in it, opened once for all sets.</summary>
public sealed class ReferencePage : IAsyncDisposable
{
    // A set takes up to a minute; one that never ends is a fault, and a page that works hears nothing.
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(15);

    private readonly List<string> complaints = [];
    private StaticServer? server;
    private IPage? page;

    /// <summary>Answers a set in a browser, with a file or folder of the checkout put at its place there.</summary>
    public async Task<string> AnswerAsync(MachineBrowser machine, string set, params string[] paths)
    {
        page ??= await OpenAsync(machine);
        foreach (var path in paths)
            await PutAsync(page, path);
        var answer = await page.EvaluateAsync<string>("name => reference.answer(name)", set)
            .WaitAsync(Longest, TestContext.Current.CancellationToken);
        Assert.Empty(complaints);
        return answer;
    }

    public async ValueTask DisposeAsync()
    {
        // A page that still works would not close: the browser is closed with all its pages at the end.
        if (page is not null && complaints.Count == 0)
            await Task.WhenAny(page.CloseAsync(), Task.Delay(TimeSpan.FromSeconds(5)));
        if (server is not null)
            await server.DisposeAsync();
    }

    private async Task<IPage> OpenAsync(MachineBrowser machine)
    {
        var browser = machine.Browser;
        server = await StaticServer.StartAsync(await Published.ReferenceCases.FolderAsync());
        var opened = await browser.NewPageAsync();
        opened.PageError += (_, error) => complaints.Add(error);
        opened.SetDefaultTimeout(MachineBrowser.Patience);
        await opened.GotoAsync(server.Address.ToString());
        await opened.WaitForFunctionAsync("() => globalThis.reference !== undefined");
        return opened;
    }

    private static async Task PutAsync(IPage page, string path)
    {
        var here = Path.Combine(Checkout.Root, path);
        if (Directory.Exists(here))
        {
            foreach (var name in Directory.GetFileSystemEntries(here).Select(Path.GetFileName))
                await PutAsync(page, $"{path}/{name}");
            return;
        }
        await page.EvaluateAsync("([path, bytes]) => reference.put(path, bytes)",
            new[] { "/" + path, Convert.ToBase64String(await File.ReadAllBytesAsync(here)) });
    }
}
