using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>The machine's Firefox, spoken to as it comes (WebDriver BiDi); no build of anybody's is fetched.</summary>
public sealed class Firefox() : MachineBrowser("Firefox", "firefox-esr", "firefox")
{
    protected override Task<IBrowser> LaunchAsync(IPlaywright playwright, string program) => playwright.Firefox.LaunchAsync(new()
    {
        ExecutablePath = program,
        Channel = "moz-firefox",
        Headless = true,
    });
}

/// <summary>All tests in Firefox share one.</summary>
[CollectionDefinition(Name)]
public sealed class InFirefox : ICollectionFixture<Firefox>
{
    public const string Name = "in Firefox";
}
