using Microsoft.Playwright;
using RigScenarios.Page.Settings;
using RigScenarios.Page.Tests.Folders;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>
/// A reader at a browser, with a server of their own or with the folder in which the library runs in the browser. Whatever the
/// browser complains of (a script that fails, something that the content security policy refuses, a request to elsewhere) is
/// kept and must be nothing at the end.
/// </summary>
public sealed class Visit : IAsyncDisposable
{
    private readonly List<string> complaints = [];
    private readonly TrialServer? server;
    private readonly StaticServer? folder;
    private readonly List<IBrowserContext> others = [];
    private IBrowserContext? context;
    private bool isCut;

    private Visit(TrialServer? server, StaticServer? folder) => (this.server, this.folder) = (server, folder);

    /// <summary>The server, where there is one.</summary>
    public TrialServer Server => server ?? throw new InvalidOperationException("There is no server behind the folder.");

    /// <summary>Scheme, machine and port of the pages.</summary>
    public string Origin => folder?.Origin ?? Server.Origin;

    /// <summary>The reader's own files.</summary>
    internal OwnFiles Own => new(this, server?.Rigs);

    public IPage Page { get; private set; } = null!;

    /// <summary>Complaints that a test expects, such as those of a server that was stopped on purpose.</summary>
    public bool ExpectsTrouble { get; set; }

    public static async Task<Visit> BeginAsync(MachineBrowser machine, bool ownNotebooks = true, int width = 1280,
        int height = 800,
        bool night = false, PageLimits? limits = null, PagesEnd end = PagesEnd.Server, bool touch = false)
    {
        var browser = machine.Browser;
        var visit = end == PagesEnd.Server
            ? new Visit(await TrialServer.StartAsync(limits, ownNotebooks: ownNotebooks), null)
            : new Visit(null, await StaticServer.StartAsync(await Published.Site.FolderAsync()));
        visit.context = await browser.NewContextAsync(new()
        {
            ViewportSize = new() { Width = width, Height = height }, ColorScheme = night ? ColorScheme.Dark : ColorScheme.Light,
            AcceptDownloads = true, HasTouch = touch, IsMobile = touch,
        });
        visit.context.SetDefaultTimeout(MachineBrowser.Patience);
        visit.Page = await visit.OpenPageAsync();
        await visit.Page.GotoAsync((visit.folder?.Address ?? visit.Server.Address).ToString());
        return visit;
    }

    /// <summary>A window of a browser that has never seen these pages.</summary>
    public async Task<IPage> OpenElsewhereAsync()
    {
        var other = await context!.Browser!.NewContextAsync();
        other.SetDefaultTimeout(MachineBrowser.Patience);
        others.Add(other);
        return await OpenPageAsync(other);
    }

    /// <summary>Cuts the network: whoever hands out the folder is gone, and its port is closed.</summary>
    public async Task CutAsync()
    {
        isCut = true;
        await folder!.DisposeAsync();
    }

    /// <summary>One more window of the same browser.</summary>
    public Task<IPage> OpenPageAsync() => OpenPageAsync(context!);

    private async Task<IPage> OpenPageAsync(IBrowserContext browser)
    {
        var page = await browser.NewPageAsync();
        page.Console += (_, message) =>
        {
            // The browser looks for a newer version of what it keeps, and says that nobody answers.
            if (message.Type is "error" or "warning"
                && !(isCut && message.Text.Contains("ERR_CONNECTION_REFUSED", StringComparison.Ordinal)))
                Complain($"{message.Type}: {message.Text}");
        };
        page.PageError += (_, error) => Complain(error);
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(Origin, StringComparison.Ordinal) && !request.Url.StartsWith("data:",
                StringComparison.Ordinal) && !request.Url.StartsWith("blob:", StringComparison.Ordinal))
                Complain($"asked elsewhere: {request.Url}");
        };
        return page;
    }

    /// <summary>Goes to a page by its path on the server; in the folder that page has a file's name.</summary>
    public Task GoAsync(string path) => Page.GotoAsync(AddressOf(path));

    /// <summary>The address of a page by its path on the server.</summary>
    public string AddressOf(string path) =>
        (folder is null ? Server.At(path) : new Uri(folder.Address, InFolder(path))).ToString();

    /// <summary>Goes to a notebook and waits for its first answer.</summary>
    public async Task ReadAsync(string notebook, string fragment = "")
    {
        await GoAsync($"/n/{notebook}{fragment}");
        await Page.Locator(".version-now .rs-answer").First.WaitForAsync();
        await SettledAsync(Page);
    }

    /// <summary>Keeps a notebook's page as a file, and opens that.</summary>
    public async Task OpenSavedAsync(string notebook)
    {
        using var answer = await Server.GetAsync($"/api/page/{notebook}");
        var saved = Directory.CreateTempSubdirectory("rigscenarios-saved-").FullName;
        var file = Path.Combine(saved, "page.html");
        await File.WriteAllTextAsync(file, await answer.TextAsync());
        await Page.GotoAsync(new Uri(file).AbsoluteUri);
        Directory.Delete(saved, recursive: true);
    }

    /// <summary>The text of the present answer.</summary>
    public Task<string> AnswerAsync() => Page.Locator(".version-now .rs-answer p").First.InnerTextAsync();

    /// <summary>Waits until no part of the page is waiting to be renewed and all charts are drawn.</summary>
    public static Task SettledAsync(IPage page) => page.WaitForFunctionAsync(
        "() => document.querySelector('.is-renewed') === null && [...document.querySelectorAll('.rs-chart')].filter(c => "
            + "c.clientWidth > 0 && c.getBoundingClientRect().top < innerHeight).every(c => c.querySelector('.main-svg'))");

    /// <summary>What the browser complained of, unless it was expected; a test ends with it.</summary>
    public void AssertQuiet()
    {
        lock (complaints)
            Assert.Empty(complaints);
    }

    public async ValueTask DisposeAsync()
    {
        foreach (var other in others)
            await other.CloseAsync();
        if (context is not null)
            await context.CloseAsync();
        if (server is not null)
            await server.DisposeAsync();
        if (folder is not null)
            await folder.DisposeAsync();
    }

    private static string InFolder(string path)
    {
        if (path == "/")
            return "index.html";
        foreach (var (start, instead) in ((string, string)[])[("/n/", "notebook.html?notebook="), ("/file/", "file.html?file="),
            ("/rig?", "rig.html?"), ("/rig", "rig.html")])
        {
            if (path.StartsWith(start, StringComparison.Ordinal))
                return instead + path[start.Length..];
        }
        throw new ArgumentException($"The folder has no page for {path}.", nameof(path));
    }

    private void Complain(string words)
    {
        lock (complaints)
        {
            if (!ExpectsTrouble)
                complaints.Add(words);
        }
    }
}
