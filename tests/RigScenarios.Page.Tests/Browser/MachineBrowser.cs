using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>A browser of this machine, started once for all tests that look at pages in it; without it they are skipped by
/// name.</summary>
public abstract class MachineBrowser(string name, params string[] programs) : IAsyncLifetime
{
    /// <summary>How long a page may take to show what is expected, ms: a machine on which several programs work is slow, and
    /// no test here is about time.</summary>
    public const int Patience = 60_000;

    private IPlaywright? playwright;
    private IBrowser? browser;

    /// <summary>The browser.</summary>
    public IBrowser Browser
    {
        get
        {
            Assert.SkipWhen(browser is null, $"{name} is not installed");
            return browser!;
        }
    }

    public async ValueTask InitializeAsync()
    {
        if (Find() is not { } program)
            return;
        Assertions.SetDefaultExpectTimeout(Patience);
        playwright = await Playwright.CreateAsync();
        browser = await LaunchAsync(playwright, program);
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
            await browser.CloseAsync();
        playwright?.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>Starts it, without a window.</summary>
    protected abstract Task<IBrowser> LaunchAsync(IPlaywright playwright, string program);

    private string? Find() =>
        (from program in programs
         from folder in (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
         let path = Path.Combine(folder, OperatingSystem.IsWindows() ? program + ".exe" : program)
         where File.Exists(path)
         select path).FirstOrDefault();
}
