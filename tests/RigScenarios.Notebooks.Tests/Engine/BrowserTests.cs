using RigScenarios.Notebooks.Pages;
using Xunit;

namespace RigScenarios.Notebooks.Tests.Engine;

/// <summary>A page opened in a real browser, without network, draws its charts.</summary>
public sealed class BrowserTests
{
    [Fact]
    public async Task The_page_draws_its_charts_in_a_browser_without_network()
    {
        var browser = OutsideProgram.Find("chromium", "chromium-browser", "google-chrome");
        Assert.SkipWhen(browser is null, "Chromium is not installed.");
        var folder = Directory.CreateTempSubdirectory("rigscenarios-browser-");
        try
        {
            var page = Path.Combine(folder.FullName, "page.html");
            var run = await NotebookRunner.RunAsync(TestNotebook.Load("trial"), cancellation: TestContext.Current.CancellationToken);
            await NotebookPage.Of(run).WriteAsync(page, TestContext.Current.CancellationToken);
            var (code, dom) = await OutsideProgram.RunAsync(browser!, folder.FullName,
            [
                "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
                $"--user-data-dir={Path.Combine(folder.FullName, "profile")}", "--host-resolver-rules=MAP * ~NOTFOUND", "--virtual-time-budget=8000", "--dump-dom", new Uri(page).AbsoluteUri,
            ], TestContext.Current.CancellationToken);
            Assert.Equal(0, code);
            Assert.Contains("Battery voltage until the camera stops", dom, StringComparison.Ordinal);
            Assert.True(dom.Split("class=\"main-svg\"").Length > 2, "The charts were not drawn.");
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
