using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>The machine's Chromium.</summary>
public sealed class Chromium() : MachineBrowser("Chromium", "chromium", "chromium-browser")
{
    protected override Task<IBrowser> LaunchAsync(IPlaywright playwright, string program) => playwright.Chromium.LaunchAsync(new()
    {
        ExecutablePath = program,
        Headless = true,
        // Whatever the browser does by itself on a network is no matter of these tests.
        Args = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update",
            "--disable-sync", "--no-first-run"],
    });
}

/// <summary>All tests in a browser share one.</summary>
[CollectionDefinition(Name)]
public sealed class InABrowser : ICollectionFixture<Chromium>
{
    public const string Name = "in a browser";
}
