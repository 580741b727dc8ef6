using System.Text.RegularExpressions;
using Microsoft.Playwright;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>A power log chosen or dropped on the form of one's own rig.</summary>
public abstract class OwnRigLogTests(Chromium chromium, PagesEnd end)
{
    private static string Log { get; } = Path.Combine(Checkout.Data, "field-notes", "market-hall-log.csv");

    [Fact]
    public async Task A_log_is_read_said_and_taken_as_one_step_back()
    {
        await using var visit = await Visit.BeginAsync(chromium, height: 900, end: end);
        var page = visit.Page;
        await visit.GoAsync("/rig?file=samples/market-hall.yaml");
        await page.Locator("#answer-first .rs-answer p").First.WaitForAsync();
        await page.GetByText("Is there a power log of it?").ClickAsync();
        await page.Locator("#log-file").SetInputFilesAsync(Log);
        await Assertions.Expect(page.Locator("#log-told")).ToContainTextAsync("market-hall-log.csv is read. Your battery holds");
        await Assertions.Expect(page.Locator("#log-says li").First).ToContainTextAsync("It resists");
        await page.GetByText("How it was read").ClickAsync();
        await Assertions.Expect(page.Locator("#log-read")).ToContainTextAsync("rows");
        var before = await page.Locator("#capacity-left").InputValueAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take this into the rig" }).ClickAsync();
        await Assertions.Expect(page.Locator("#capacity-left"))
            .ToHaveValueAsync(new Regex(@"^\d+", RegexOptions.None, TimeSpan.FromSeconds(1)));
        await Assertions.Expect(page.Locator("#resistance-growth")).ToHaveValueAsync(
            new Regex(@"^\d+", RegexOptions.None, TimeSpan.FromSeconds(1)));
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Assertions.Expect(page.Locator("#capacity-left")).ToHaveValueAsync(before);
        await Assertions.Expect(page.Locator("#resistance-growth")).ToHaveValueAsync("");
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_log_dropped_anywhere_on_the_page_is_read_and_the_page_stays()
    {
        await using var visit = await Visit.BeginAsync(chromium, height: 900, end: end);
        var page = visit.Page;
        await visit.GoAsync("/rig?file=samples/market-hall.yaml");
        await page.Locator("#answer-first .rs-answer p").First.WaitForAsync();
        // A browser complains of whatever is refused.
        visit.ExpectsTrouble = true;
        await DropAsync(page, "log.csv", "time,voltage,current\n0,7.4,1\n60,7.3,1\n120,7.2,1\n");
        await Assertions.Expect(page.Locator("#log-told")).ToContainTextAsync("Is it a log of this battery");
        await Assertions.Expect(page.Locator("#log-answer")).ToBeHiddenAsync();
        visit.ExpectsTrouble = false;
        await DropAsync(page, "own.csv", await File.ReadAllTextAsync(Log, TestContext.Current.CancellationToken));
        await Assertions.Expect(page.Locator("#log-told")).ToContainTextAsync("own.csv is read.");
        // What is no log at all is told where it belongs.
        await DropAsync(page, "mine.yaml", "rigscenarios: scenario 1\n");
        await Assertions.Expect(page.Locator("#log-told")).ToContainTextAsync("opened from the shelf");
        await Assertions.Expect(page.Locator("#log-answer")).ToBeHiddenAsync();
        await DropAsync(page, "own.csv", await File.ReadAllTextAsync(Log, TestContext.Current.CancellationToken));
        await Assertions.Expect(page.Locator("#log-told")).ToContainTextAsync("own.csv is read.");
        // Another air is another answer, of the same file.
        var told = await page.Locator("#log-says").TextContentAsync();
        await page.Locator("#log-air").FillAsync("-15");
        await page.Locator("#log-air").BlurAsync();
        await Assertions.Expect(page.Locator("#log-read")).ToContainTextAsync("the air at −15 °C");
        Assert.NotEqual(told, await page.Locator("#log-says").TextContentAsync());
        Assert.Contains("/rig", page.Url, StringComparison.Ordinal);
        visit.AssertQuiet();
    }

    private static Task<System.Text.Json.JsonElement?> DropAsync(IPage page, string name, string text) => page.EvaluateAsync(
        """
        ([name, text]) => {
          const carried = new DataTransfer();
          carried.items.add(new File([text], name, { type: "text/csv" }));
          for (const kind of ["dragover", "drop"])
            document.querySelector("#step-day").dispatchEvent(
              new DragEvent(kind, { dataTransfer: carried, bubbles: true, cancelable: true }));
        }
        """, new[] { name, text });

    [Collection(InABrowser.Name)]
    public sealed class OnTheServer(Chromium chromium) : OwnRigLogTests(chromium, PagesEnd.Server);

    [Collection(InABrowser.Name)]
    public sealed class InTheFolder(Chromium chromium) : OwnRigLogTests(chromium, PagesEnd.Folder);
}
