using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>A link that carries a whole rig: it rebuilds the rig anywhere, and takes the place of none.</summary>
public abstract class OwnRigLinkTests(Chromium chromium, PagesEnd end)
{
    [Fact]
    public async Task A_link_rebuilds_the_rig_where_nothing_of_it_is_known()
    {
        await using var visit = await Visit.BeginAsync(chromium, height: 900, end: end);
        await visit.GoAsync("/rig?file=samples/winter-harbour.yaml&build=shoulder&day=day-two");
        await AnsweredAsync(visit.Page);
        var full = await StillAsync(visit.Page);
        await FillAsync(visit.Page, "61 %");
        var answer = await StillAsync(visit.Page, full);
        var link = await TakeAsync(visit.Page);
        var page = await visit.OpenElsewhereAsync();
        // Its reader has the program open too.
        if (end == PagesEnd.Server)
            await page.GotoAsync(visit.Server.Address.ToString());
        await page.GotoAsync(link);
        await AnsweredAsync(page);
        Assert.Equal(answer, await StillAsync(page));
        await Assertions.Expect(page.Locator("#linked-told")).ToContainTextAsync("came with the link");
        Assert.DoesNotContain("#", page.Url, StringComparison.Ordinal);
        // What is made of it stays, and is no question any more.
        await FillAsync(page, "44 %");
        await page.ReloadAsync();
        await Assertions.Expect(Charge(page)).ToHaveValueAsync("44 %");
        await Assertions.Expect(page.Locator("#kept")).ToBeVisibleAsync();
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_rig_that_is_left_here_is_not_written_over()
    {
        await using var visit = await Visit.BeginAsync(chromium, height: 900, end: end);
        await visit.GoAsync("/rig");
        await Form.ChooseAsync(visit.Page, "camera", "compact body b");
        await Form.ChooseAsync(visit.Page, "battery", "brick 190");
        await FillAsync(visit.Page, "61 %");
        var link = await TakeAsync(visit.Page);
        await FillAsync(visit.Page, "33 %");
        foreach (var (button, charge, sideBySide) in ((string, string, int)[])[("#link-leave", "33 %", 0),
            ("#link-beside", "61 %", 2), ("#link-instead", "61 %", 0)])
        {
            await visit.Page.GotoAsync("about:blank");
            await visit.Page.GotoAsync(link);
            await Assertions.Expect(visit.Page.Locator("#linked-told")).ToContainTextAsync("Another one is left here");
            await Assertions.Expect(Charge(visit.Page)).ToHaveValueAsync("33 %");
            await visit.Page.ClickAsync(button);
            await Assertions.Expect(Charge(visit.Page)).ToHaveValueAsync(charge);
            await Assertions.Expect(visit.Page.Locator("#compare-table thead th")).ToHaveCountAsync(sideBySide);
            await Assertions.Expect(visit.Page.Locator("#link-choice")).ToBeHiddenAsync();
            await FillAsync(visit.Page, "33 %");
        }
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_link_that_is_not_whole_is_told_and_the_form_is_there_all_the_same()
    {
        await using var visit = await Visit.BeginAsync(chromium, height: 900, end: end);
        await visit.GoAsync("/rig#rig=q1YqSyzKTFWyUgIA");
        await Assertions.Expect(visit.Page.Locator("#linked-told")).ToContainTextAsync("not whole");
        await Assertions.Expect(visit.Page.Locator("#rig")).ToBeVisibleAsync();
        visit.AssertQuiet();
    }

    private static ILocator Charge(IPage page) => Form.Text(page, "charge");

    private static async Task FillAsync(IPage page, string charge)
    {
        await Charge(page).FillAsync(charge);
        await Charge(page).PressAsync("Tab");
    }

    private static async Task<string> TakeAsync(IPage page)
    {
        await page.ClickAsync("#link-take");
        await page.Locator("#link-field").WaitForAsync();
        await Assertions.Expect(page.Locator("#carry-told")).ToContainTextAsync("characters");
        return await page.InputValueAsync("#link-text");
    }

    private static Task AnsweredAsync(IPage page) => page.Locator("#answer-first .rs-answer").First.WaitForAsync();

    /// <summary>The verdicts, once they stay as they are and are other than those of before.</summary>
    private static async Task<string> StillAsync(IPage page, string? other = null)
    {
        var before = "";
        for (var second = 0; second < 60; second++)
        {
            var now = await TextAsync();
            if (now == before && now != other)
                return now;
            before = now;
            await page.WaitForTimeoutAsync(1000);
        }
        throw new InvalidOperationException($"After a minute it still says: {before}");

        Task<string> TextAsync() => page.Locator("#answer-first .rs-answer").First.InnerTextAsync();
    }

    [Collection(InABrowser.Name)]
    public sealed class OnTheServer(Chromium chromium) : OwnRigLinkTests(chromium, PagesEnd.Server);

    [Collection(InABrowser.Name)]
    public sealed class InTheFolder(Chromium chromium) : OwnRigLinkTests(chromium, PagesEnd.Folder);
}
