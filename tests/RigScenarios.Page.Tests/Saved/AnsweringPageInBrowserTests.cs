using System.Text.Json.Nodes;
using Microsoft.Playwright;
using RigScenarios.Page.Saved;
using RigScenarios.Page.Tests.Browser;
using RigScenarios.Page.Tests.Folders;
using RigScenarios.Page.Tests.InBrowser;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Saved;

/// <summary>A saved page with the library in it, opened as a file with the network cut: it shows at once what it was saved with,
/// its controls answer, and what they answer is what the living page of the local server answers.</summary>
/// <param name="machine">The browser.</param>
public abstract class AnsweringPageInBrowserTests(MachineBrowser machine)
{
    // The start of the library, and a run of all cells, on a busy machine.
    protected const int Longest = 240_000;

    protected const string Notebook = "05-one-kit-three-stances";

    // Everything that the page shows of the present version, as its parts came; how a chart is drawn is its script's matter.
    private const string Shown = """
        () => JSON.stringify([...document.querySelectorAll(".version-now .shown > *")]
          .map(({ rsPart: { specification, ...part } }) => part))
        """;

    private const string IsAtRest = """
        () => !document.querySelector(".is-renewed") && !document.querySelector(".strip .run button:not([hidden])")
        """;

    [Fact]
    public async Task It_answers_from_the_file_alone_as_the_living_page_does()
    {
        await using var saved = await OpenAsync(new() { ["takeOff"] = "45" });
        var page = saved.Page;
        await page.Locator(".version-now .rs-answer").First.WaitForAsync();
        var first = await page.Locator("#standing").TextContentAsync();
        Assert.Contains("As it was when this page was saved", first, StringComparison.Ordinal);
        var recorded = JsonNode.Parse(await page.EvaluateAsync<string>(Shown))!.AsArray();
        await AnswersAsync(page);
        Assert.Contains("MB)", await page.Locator("#standing").TextContentAsync(), StringComparison.Ordinal);
        await MoveAsync(page);
        var changed = JsonNode.Parse(await page.EvaluateAsync<string>(Shown))!.AsArray();

        await using var visit = await Visit.BeginAsync(machine);
        await visit.ReadAsync(Notebook, "#takeOff=45");
        await visit.Page.WaitForFunctionAsync(IsAtRest);
        var comparison = new FigureComparison(1e-9);
        comparison.Compare("first", JsonNode.Parse(await visit.Page.EvaluateAsync<string>(Shown)), recorded);
        await MoveAsync(visit.Page);
        comparison.Compare("changed", JsonNode.Parse(await visit.Page.EvaluateAsync<string>(Shown)), changed);
        Assert.True(comparison.Differences.Count == 0, string.Join('\n', comparison.Differences.Take(20)));
        Assert.True(comparison.Words > 40, $"only {comparison.Words} words");
        Assert.False(JsonNode.DeepEquals(recorded, changed), "nothing changed");
        saved.AssertQuiet();
    }

    [Fact]
    public async Task A_change_before_the_library_is_there_waits_for_it()
    {
        await using var saved = await OpenAsync([]);
        await saved.Page.Locator(".version-now .rs-answer").First.WaitForAsync();
        await MoveAsync(saved.Page);
        await AnswersAsync(saved.Page);
        Assert.Equal("30", await saved.Page.Locator("#control-takeOff").InputValueAsync());
        Assert.Contains("takeOff=30", saved.Page.Url, StringComparison.Ordinal);
        saved.AssertQuiet();
    }

    [Fact]
    public async Task Where_the_browser_starts_no_library_it_says_so_and_what_is_shown_stays()
    {
        await using var saved = await OpenAsync([], html => html.Replace("worker-src blob:", "worker-src 'none'",
            StringComparison.Ordinal));
        await Assertions.Expect(saved.Page.Locator("#standing[data-state=broken]")).ToBeAttachedAsync();
        Assert.Contains("Open the page in another browser", await saved.Page.Locator(".strip .problem").First.TextContentAsync(),
            StringComparison.Ordinal);
        Assert.NotEqual(0, await saved.Page.Locator(".version-now .rs-answer").CountAsync());
    }

    /// <summary>Waits until the library answers.</summary>
    protected static Task AnswersAsync(IPage page) =>
        Assertions.Expect(page.Locator("#standing[data-state=answers]")).ToBeAttachedAsync(new() { Timeout = Longest });

    private static async Task MoveAsync(IPage page)
    {
        await page.Locator("#controls .control input[type=range][aria-label*='ake a thing off']").EvaluateAsync(
            "slider => { slider.value = '30'; for (const kind of ['input', 'change']) slider.dispatchEvent(new Event(kind)); }");
        await page.WaitForFunctionAsync($"() => location.hash.includes('takeOff=30') && ({IsAtRest})()", null,
            new() { Timeout = Longest });
    }

    /// <summary>Saves the notebook with values, and opens that; as somebody changed it, where one did.</summary>
    private protected async Task<OpenedFile> OpenAsync(Dictionary<string, string> given, Func<string, string>? changed = null)
    {
        var library = await Published.ForNotebooks.FolderAsync();
        var conversation = await SavedPages.RecordAsync(SavedPages.Of(Path.Combine(Checkout.Root, "notebooks"), Notebook), given);
        var html = AnsweringPage.Of(conversation, library, "1.2.3");
        return await OpenedFile.OpenAsync(machine, changed?.Invoke(html) ?? html);
    }
}

/// <summary>In Chromium.</summary>
[Collection(InABrowser.Name)]
public sealed class AnsweringPageInChromiumTests(Chromium chromium) : AnsweringPageInBrowserTests(chromium)
{
    // Firefox tells nobody of a download who speaks to it as it comes.
    [Fact]
    public async Task What_it_keeps_as_a_page_is_whole()
    {
        await using var saved = await OpenAsync([]);
        await AnswersAsync(saved.Page);
        await saved.Page.GetByRole(AriaRole.Button, new() { Name = "Save…" }).ClickAsync();
        // It carries the library already; how to make another such page is the program's matter.
        await Assertions.Expect(saved.Page.GetByRole(AriaRole.Button, new() { Name = "HTML page that answers" }))
            .Not.ToBeVisibleAsync();
        var kept = await saved.Page.RunAndWaitForDownloadAsync(() => saved.Page.GetByRole(AriaRole.Button,
            new() { Name = "HTML page", Exact = true }).ClickAsync(), new() { Timeout = Longest });
        Assert.Equal($"{Notebook}.html", kept.SuggestedFilename);
        await using var opened = await OpenedFile.OpenAsync(chromium, await File.ReadAllTextAsync(await kept.PathAsync(),
            TestContext.Current.CancellationToken));
        await opened.Page.WaitForFunctionAsync("() => { const charts = [...document.querySelectorAll('.rs-chart')]; return "
            + "charts.length > 0 && charts.every(chart => chart.querySelector('.main-svg')); }");
        opened.AssertQuiet();
        saved.AssertQuiet();
    }
}

/// <summary>In Firefox.</summary>
[Collection(InFirefox.Name)]
public sealed class AnsweringPageInFirefoxTests(Firefox firefox) : AnsweringPageInBrowserTests(firefox);
