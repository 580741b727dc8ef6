using Microsoft.Playwright;
using RigScenarios.Page.Settings;
using RigScenarios.Page;

namespace RigScenarios.Benchmarks;

/// <summary>A page of the living server in Chromium: a notebook's, or the form of one's own rig for a scenario file.</summary>
internal sealed class OpenedPage : IAsyncDisposable
{
    private readonly string rigs = Directory.CreateTempSubdirectory("rigscenarios-benchmark-").FullName;
    private PageServer? server;
    private IPlaywright? playwright;
    private IBrowser? browser;

    private OpenedPage()
    {
    }

    public IPage Page { get; private set; } = null!;

    /// <summary>Opens the page and waits for its first answer; null, with words on the error stream, where there is no
    /// Chromium.</summary>
    public static async Task<OpenedPage?> OpenAsync(string file)
    {
        if (Find() is not { } chromium)
        {
            await Console.Error.WriteLineAsync("This needs Chromium on the path; it was not found.");
            return null;
        }

        var opened = new OpenedPage();
        var path = Path.GetFullPath(file);
        var isRig = path.EndsWith(".yaml", StringComparison.Ordinal);
        var root = Path.GetDirectoryName(path)!;
        while (!Directory.Exists(Path.Combine(root, "data", "parts")))
            root = Path.GetDirectoryName(root)
                ?? throw new DirectoryNotFoundException("The folder data/parts is not above that file.");
        opened.server = await PageServer.StartAsync(new PageOptions { NotebookFolder = isRig ? Path.Combine(root, "notebooks")
            : Path.GetDirectoryName(path)!, DataFolder = Path.Combine(root, "data"), RigFolder = opened.rigs, Port = 0 });
        opened.playwright = await Playwright.CreateAsync();
        opened.browser = await opened.playwright.Chromium
            .LaunchAsync(new() { ExecutablePath = chromium, Args = ["--no-sandbox", "--disable-gpu"] });
        opened.Page = await opened.browser.NewPageAsync(new() { ViewportSize = new() { Width = 1280, Height = 900 } });
        opened.Page.SetDefaultTimeout(600_000);
        await opened.Page.GotoAsync(opened.server.Address.ToString());
        var address = isRig ? $"/rig?file=samples/{Uri.EscapeDataString(Path.GetFileName(path))}"
            : $"/n/{Uri.EscapeDataString(Path.GetFileNameWithoutExtension(path))}";
        await opened.Page.GotoAsync(new Uri(opened.server.Address, address).ToString());
        await opened.Page.WaitForFunctionAsync("() => document.documentElement.dataset.rsRun");
        return opened;
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
            await browser.DisposeAsync();
        playwright?.Dispose();
        if (server is not null)
            await server.DisposeAsync();
        Directory.Delete(rigs, recursive: true);
    }

    /// <summary>The path of Chromium; null where there is none.</summary>
    internal static string? Find() =>
        (from name in (string[])["chromium", "chromium-browser"]
         from folder in (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
         let path = Path.Combine(folder, OperatingSystem.IsWindows() ? name + ".exe" : name)
         where File.Exists(path)
         select path).FirstOrDefault();
}
