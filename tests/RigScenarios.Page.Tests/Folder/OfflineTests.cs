using Microsoft.Playwright;
using RigScenarios.Page.Folder;
using RigScenarios.Page.Tests.Browser;
using RigScenarios.Page.Tests.Folders;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Folder;

/// <summary>The folder without a network, and how a new version takes the place of an old one; with a stand-in for the browser
/// build, which these tests do not start.</summary>
[Collection(InABrowser.Name)]
public sealed class OfflineTests(Chromium chromium) : IDisposable
{
    private readonly string around = Directory.CreateTempSubdirectory("rigscenarios-offline-").FullName;
    private readonly string browser = StandInBuild.Make();

    public void Dispose()
    {
        Directory.Delete(around, recursive: true);
        Directory.Delete(browser, recursive: true);
    }

    [Theory]
    [InlineData("")]
    [InlineData("/a/place")]
    [InlineData("/Außen #1 100%")]
    public async Task After_the_first_visit_every_page_opens_without_its_server(string place)
    {
        var folder = Write("0.1.0");
        var context = await chromium.Browser.NewContextAsync();
        try
        {
            var page = await context.NewPageAsync();
            Uri address;
            await using (var server = await StaticServer.StartAsync(folder, place))
            {
                // A name in an address stands there escaped; a server reads it again as it is.
                address = new Uri($"{server.Origin}{string.Join('/', place.Split('/').Select(Uri.EscapeDataString))}/");
                await page.GotoAsync(address.AbsoluteUri);
                await Kept(page);
            }
            foreach (var (name, title) in ((string, string)[])[("", "The shelf"), ("index.html", "The shelf"),
                ("rig.html", "Your own rig"), ("rig.html?file=samples%2Fx.yaml", "Your own rig"), ("rig", "Your own rig"),
                ("file.html?file=a", "A scenario file")])
            {
                await page.GotoAsync(address.AbsoluteUri + name);
                Assert.StartsWith(title, await page.TitleAsync(), StringComparison.Ordinal);
                await Assertions.Expect(page.Locator(".top")).ToBeVisibleAsync();
                Assert.Equal("flex", await page.Locator(".top").EvaluateAsync<string>("box => getComputedStyle(box).display"));
            }
        }
        finally
        {
            await context.CloseAsync();
        }
    }

    [Fact]
    public async Task A_newer_version_is_taken_as_a_whole_and_only_when_its_reader_wants_it()
    {
        var folder = Write("0.1.0");
        await using var server = await StaticServer.StartAsync(folder);
        await using var context = await chromium.Browser.NewContextAsync();
        var page = await KeptAsync(context, server);
        await Assertions.Expect(page.Locator(".folder-foot")).ToContainTextAsync("RigScenarios 0.1.0.");
        Write("0.2.0");
        await page.ReloadAsync();
        var offer = page.Locator("#offline-told button");
        await Assertions.Expect(offer).ToBeVisibleAsync();
        // Until then the old one, also after another reload.
        await Assertions.Expect(page.Locator(".folder-foot")).ToContainTextAsync("RigScenarios 0.1.0.");
        await offer.ClickAsync();
        await Assertions.Expect(page.Locator(".folder-foot")).ToContainTextAsync("RigScenarios 0.2.0.");
        await Assertions.Expect(page.Locator("#offline-told")).ToContainTextAsync("works without a network");
        Assert.Equal(1, await page.EvaluateAsync<int>("async () => (await caches.keys()).length"));
    }

    [Fact]
    public async Task A_new_version_that_does_not_come_whole_leaves_the_old_one()
    {
        var folder = Write("0.1.0");
        await using var server = await StaticServer.StartAsync(folder);
        await using var context = await chromium.Browser.NewContextAsync();
        var page = await KeptAsync(context, server);
        File.WriteAllText(Path.Combine(browser, "library.bin"), "another");
        Write("0.2.0");
        File.Delete(Path.Combine(folder, "library", "library.bin"));
        await page.ReloadAsync();
        await Assertions.Expect(page.Locator("#offline-told")).ToContainTextAsync("works without a network");
        await page.EvaluateAsync("async () => { const one = await navigator.serviceWorker.getRegistration(); "
            + "await one.update().catch(() => {}); }");
        await Assertions.Expect(page.Locator("#offline-told button")).ToHaveCountAsync(0);
        Assert.Equal(200, await page.EvaluateAsync<int>("async () => (await fetch('library/library.bin')).status"));
        await Assertions.Expect(page.Locator(".folder-foot")).ToContainTextAsync("RigScenarios 0.1.0.");
    }

    [Theory]
    [InlineData("index.html")]
    [InlineData("rig.html")]
    [InlineData("file.html")]
    public async Task Opened_as_a_file_a_page_says_what_the_browser_forbids_and_how_to_go_on(string name)
    {
        await using var context = await chromium.Browser.NewContextAsync();
        var page = await context.NewPageAsync();
        await page.GotoAsync(new Uri(Path.Combine(Write("0.1.0"), name)).AbsoluteUri);
        var told = page.Locator("#opened-from-file");
        await Assertions.Expect(told).ToBeVisibleAsync();
        await Assertions.Expect(told).ToContainTextAsync("python3 -m http.server 8000 --bind 127.0.0.1");
        await Assertions.Expect(told).ToContainTextAsync("rigscenarios open");
        await Assertions.Expect(page.Locator("main h1")).ToBeHiddenAsync();
    }

    /// <summary>The form, kept for use without a network.</summary>
    private static async Task<IPage> KeptAsync(IBrowserContext context, StaticServer server)
    {
        var page = await context.NewPageAsync();
        await page.GotoAsync(server.Address.AbsoluteUri + "rig.html");
        await Kept(page);
        return page;
    }

    private static Task Kept(IPage page) =>
        Assertions.Expect(page.Locator("#offline-told")).ToContainTextAsync("Kept on this device: it works without a network.");

    private string Write(string version)
    {
        var folder = Path.Combine(around, "site");
        WholeFolder.Write(folder, SiteFolder.FilesOf(new FolderContent
        {
            BrowserFolder = browser,
            DataFolder = Checkout.Data,
            NotebookFolder = Path.Combine(Checkout.Root, "notebooks"),
            Version = version,
        }));
        return folder;
    }
}
