using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>The best rig for the money, in the form of one's own rig.</summary>
[Collection(InABrowser.Name)]
public sealed class OwnRigBestTests(Chromium chromium)
{
    // A search that lasts: it is not at its end before a reader can press Stop.
    private const string Long = "/rig?file=samples/winter-harbour.yaml&build=tripod&day=day-one";

    // One that finds rigs long before its end.
    private const string Slow = "/rig?file=samples/island-crossing.yaml";

    // One with several rigs, the dearest of them for less than 10,000 EUR.
    private const string Several = "/rig?file=samples/market-hall.yaml&build=tripod";

    [Theory]
    [InlineData(false, 1280)]
    [InlineData(true, 390)]
    public async Task The_best_rigs_stand_below_the_budget_with_chart_tables_and_cautions(bool night, int width)
    {
        await using var visit = await Visit.BeginAsync(chromium, width: width, height: 900, night: night);
        var page = visit.Page;
        await OpenAsync(visit, Several, "10000 EUR");
        await page.GetByRole(AriaRole.Button, new() { Name = "Find the best rig for this money" }).ClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Stop", Exact = true })).ToBeVisibleAsync();
        var found = page.GetByRole(AriaRole.Region, new() { Name = "The best rig for this money" });
        await Assertions.Expect(found).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await Assertions.Expect(page.Locator("#best-told")).ToContainTextAsync("none is better than another in every wish");
        await Assertions.Expect(found.Locator(".rs-answer"))
            .ToContainTextAsync(await page.Locator("#best-told").InnerTextAsync());
        await Assertions.Expect(found).ToContainTextAsync("to cost at most 10,000 EUR");
        await Assertions.Expect(found).ToContainTextAsync("What more money buys:");
        await found.Locator("[data-slug=rig-front] .main-svg").First.WaitForAsync();
        var rigs = found.GetByRole(AriaRole.Table, new() { Name = "What each rig costs and gives" });
        Assert.True(await rigs.Locator("tbody tr").CountAsync() >= 2);
        await Assertions.Expect(found.GetByRole(AriaRole.Table, new() { Name = "What stands in each place" }))
            .ToBeVisibleAsync();
        await Assertions.Expect(found.Locator("#best-cautions li").First).ToBeVisibleAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "Stop", Exact = true })).ToBeHiddenAsync();
        // Nothing of it is wider than the window.
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"));
        var faults = new AxeFaults();
        await faults.LookAsync(page, $"the best rig, {width}");
        faults.AssertNone(atLeast: 1);

        // What was found stays, and says that it is from before, until the rig is what it was.
        await Assertions.Expect(page.Locator("#best-old")).ToBeHiddenAsync();
        await SayAsync(page, "11000 EUR");
        await Assertions.Expect(page.Locator("#best-old")).ToBeVisibleAsync();
        await Assertions.Expect(rigs).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(page.Locator("#best-old")).ToBeHiddenAsync();
        visit.AssertQuiet();
    }

    [Fact]
    public async Task Stop_and_the_next_change_end_the_search_and_say_how_far_it_had_come()
    {
        await using var visit = await Visit.BeginAsync(chromium, height: 900);
        var page = visit.Page;
        var (find, stop, told) = (page.Locator("#best-find"), page.Locator("#best-stop"), page.Locator("#best-told"));
        await OpenAsync(visit, Long, "6000 EUR");
        await find.ClickAsync();
        await Assertions.Expect(page.Locator("#best-so-far")).ToContainTextAsync("run through the answer");
        await stop.ClickAsync();
        await Assertions.Expect(told).ToContainTextAsync("Stopped. ");
        await Assertions.Expect(told).ToContainTextAsync("run through the answer");
        await Assertions.Expect(stop).ToBeHiddenAsync();
        // Whoever pressed a button that is gone is not lost.
        await Assertions.Expect(find).ToBeFocusedAsync();
        await Assertions.Expect(page.Locator("#best-found")).ToBeHiddenAsync();

        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(stop).ToBeVisibleAsync();
        await SayAsync(page, "7000 EUR");
        await Assertions.Expect(told).ToContainTextAsync("Stopped, because the rig was changed.");
        await Assertions.Expect(stop).ToBeHiddenAsync();
        visit.AssertQuiet();
    }

    [Fact]
    public async Task What_was_found_before_a_stop_stays_and_is_told_as_that()
    {
        await using var visit = await Visit.BeginAsync(chromium, height: 900);
        var page = visit.Page;
        await OpenAsync(visit, Slow, "20000 EUR");
        // Pressed in the moment in which the first rig is told: a hand of the test's own may come after the search's end.
        await page.EvaluateAsync("""
            () => {
              const said = document.getElementById("best-so-far");
              new MutationObserver((_, watch) => {
                if (!/[1-9][0-9]* rigs? found so far/.test(said.textContent)) return;
                watch.disconnect();
                document.getElementById("best-stop").click();
              }).observe(said, { childList: true, characterData: true, subtree: true });
            }
            """);
        await page.Locator("#best-find").ClickAsync();
        await Assertions.Expect(page.Locator("#best-told")).ToContainTextAsync("What was found so far stands below.",
            new() { Timeout = 60_000 });
        await Assertions.Expect(page.Locator("#best-told")).ToContainTextAsync("Stopped.");
        await Assertions.Expect(page.Locator("#best-found")).ToContainTextAsync("The search was stopped");
        await Assertions.Expect(page.GetByRole(AriaRole.Table, new() { Name = "What each rig costs and gives" }))
            .ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("#best-old")).ToBeHiddenAsync();
        visit.AssertQuiet();
    }

    [Fact]
    public async Task Without_a_budget_it_says_so()
    {
        await using var visit = await Visit.BeginAsync(chromium, height: 900);
        var page = visit.Page;
        await OpenAsync(visit, Long, "");
        await page.Locator("#best-find").ClickAsync();
        await Assertions.Expect(page.Locator("#best-told")).ToContainTextAsync("no budget is given yet. Accepted: an amount");
        await Assertions.Expect(page.Locator("#best-stop")).ToBeHiddenAsync();
        await SayAsync(page, "100 EUR");
        await page.Locator("#best-find").ClickAsync();
        await Assertions.Expect(page.Locator("#best-told")).ToContainTextAsync(
            "No: no rig of these parts holds all that must hold.", new() { Timeout = 60_000 });
        await Assertions.Expect(page.Locator("#best-found")).ToContainTextAsync("cost at most 100 EUR");
        visit.AssertQuiet();
    }

    private static async Task OpenAsync(Visit visit, string rig, string budget)
    {
        await visit.GoAsync(rig);
        await visit.Page.Locator("#answer-first .rs-answer").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await SayAsync(visit.Page, budget);
    }

    private static async Task SayAsync(IPage page, string budget)
    {
        await Form.Text(page, "budget").FillAsync(budget);
        await page.Keyboard.PressAsync("Tab");
    }
}
