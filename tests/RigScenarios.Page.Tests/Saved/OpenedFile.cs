using Microsoft.Playwright;
using RigScenarios.Page.Tests.Browser;

namespace RigScenarios.Page.Tests.Saved;

/// <summary>A page opened as a file in a browser whose network is cut. Whatever the browser complains of, and every request for
/// anything but the file itself, is kept and must be nothing at the end.</summary>
internal sealed class OpenedFile : IAsyncDisposable
{
    // The file, and what it holds.
    private static readonly string[] Own = ["file:", "data:", "blob:"];

    private readonly List<string> complaints = [];
    private readonly string folder = Directory.CreateTempSubdirectory("rigscenarios-opened-").FullName;
    private IBrowserContext? context;

    private OpenedFile()
    {
    }

    public IPage Page { get; private set; } = null!;

    /// <summary>Opens it.</summary>
    public static async Task<OpenedFile> OpenAsync(MachineBrowser machine, string html)
    {
        var opened = new OpenedFile();
        var file = Path.Combine(opened.folder, "saved page.html");
        await File.WriteAllTextAsync(file, html, TestContext.Current.CancellationToken);
        opened.context = await machine.Browser.NewContextAsync();
        opened.context.SetDefaultTimeout(MachineBrowser.Patience);
        if (machine is Chromium)
            await opened.context.SetOfflineAsync(true);
        opened.Page = await opened.context.NewPageAsync();
        opened.Page.Console += (_, message) => opened.Complain($"{message.Type}: {message.Text}");
        opened.Page.PageError += (_, error) => opened.Complain(error);
        opened.Page.Request += (_, request) =>
        {
            if (!Own.Any(start => request.Url.StartsWith(start, StringComparison.Ordinal)))
                opened.Complain($"asked: {request.Url}");
        };
        await opened.Page.GotoAsync(new Uri(file).AbsoluteUri);
        // It needs nothing of the disk any more.
        File.Delete(file);
        return opened;
    }

    /// <summary>Nothing was complained of, and nothing asked.</summary>
    public void AssertQuiet()
    {
        lock (complaints)
            Assert.Empty(complaints);
    }

    public async ValueTask DisposeAsync()
    {
        if (context is not null)
            await context.CloseAsync();
        Directory.Delete(folder, recursive: true);
    }

    private void Complain(string words)
    {
        lock (complaints)
            complaints.Add(words);
    }
}
