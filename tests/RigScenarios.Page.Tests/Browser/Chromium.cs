using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>The machine's Chromium, started once for all tests that look at pages; without it they are skipped by name.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private IPlaywright? playwright;
    private IBrowser? browser;

    /// <summary>The browser.</summary>
    public IBrowser Browser
    {
        get
        {
            Assert.SkipWhen(browser is null, "Chromium is not installed");
            return browser!;
        }
    }

    public async ValueTask InitializeAsync()
    {
        if (Find() is not { } program)
            return;
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = program,
            Headless = true,
            // Whatever the browser does by itself on a network is no matter of these tests.
            Args = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update",
                "--disable-sync", "--no-first-run"],
        });
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
            await browser.CloseAsync();
        playwright?.Dispose();
    }

    private static string? Find() =>
        (from name in (string[])["chromium", "chromium-browser"]
         from folder in (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
         let path = Path.Combine(folder, OperatingSystem.IsWindows() ? name + ".exe" : name)
         where File.Exists(path)
         select path).FirstOrDefault();
}

/// <summary>All tests in a browser share one.</summary>
[CollectionDefinition(Name)]
public sealed class InABrowser : ICollectionFixture<Chromium>
{
    public const string Name = "in a browser";
}
