using System.Text.RegularExpressions;
using Microsoft.Playwright;
using RigScenarios.Cells.Aging;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>"How old is it?" in the form of one's own rig.</summary>
public abstract class OwnRigAgeTests(Chromium chromium, PagesEnd end)
{
    [Fact]
    public async Task How_old_it_is_is_said_in_words_holds_today_and_is_saved()
    {
        await using var visit = await Visit.BeginAsync(chromium, height: 900, end: end);
        await visit.GoAsync("/rig?file=samples/market-hall.yaml");
        var (page, today) = (visit.Page, await TodayAsync(visit.Page));
        var answer = page.Locator("#answer-first .rs-answer p").First;
        await answer.WaitForAsync();
        await Assertions.Expect(page.Locator("#age-bought")).ToBeHiddenAsync();
        await page.GetByText("How old is it?").ClickAsync();
        await page.Locator("#age-bought").FillAsync("2022-06");
        await Assertions.Expect(page.Locator("#age-until")).ToHaveValueAsync(today);
        await Form.Field(page, "age-place").Locator("select").SelectOptionAsync("hot van");
        await Form.Field(page, "age-kept").Locator("select").SelectOptionAsync("half");
        await page.Locator("#age-shoots").FillAsync("3");
        // What the words make of it stands where nothing was measured.
        await Assertions.Expect(page.Locator("#capacity-left")).ToHaveAttributeAsync("placeholder",
            new Regex(@"^[4-9]\d(?:\.\d)? % \(assumed\)$", RegexOptions.None, TimeSpan.FromSeconds(1)));
        // What the answer makes of it stands beside the questions: the band, how far off the fits are, and to measure it.
        await Assertions.Expect(page.Locator("#age-told")).ToContainTextAsync("Other published fits say");
        await Assertions.Expect(page.Locator("#age-told")).ToContainTextAsync("eleven measured cells");
        await Assertions.Expect(page.Locator("#age-told")).ToContainTextAsync("A measured capacity outweighs any fit");
        await Form.SaveAsync(page, "old.yaml");
        var life = (await visit.Own.ScenarioAsync("old.yaml")).Builds.Values.First().Battery.Life!;
        Assert.Equal((StoragePlace.HotVan, Kept.Half, (double?)3, today),
            (life.Place, life.Kept, life.ShootsPerMonth, life.Until!.Value.ToString("yyyy-MM-dd")));
        // What nobody says any more is unknown again.
        await page.Locator("#age-bought").FillAsync("");
        await page.Locator("#age-shoots").FillAsync("");
        foreach (var field in (string[])["age-place", "age-kept"])
            await Form.Field(page, field).Locator("select").SelectOptionAsync("");
        await Assertions.Expect(page.Locator("#age-until")).ToHaveValueAsync("");
        await Assertions.Expect(page.Locator("#age-told")).ToBeHiddenAsync();
        visit.AssertQuiet();
    }

    [Fact]
    public async Task What_can_not_be_is_told_at_its_field_and_unfolds_it()
    {
        await using var visit = await Visit.BeginAsync(chromium, height: 900, end: end);
        await visit.GoAsync("/rig?file=samples/market-hall.yaml");
        await visit.Page.GetByText("How old is it?").ClickAsync();
        await visit.Page.Locator("#age-bought").FillAsync("last spring");
        await visit.Page.GetByText("How old is it?").ClickAsync();
        var problem = Form.Field(visit.Page, "age-bought").Locator(".problem");
        await Assertions.Expect(problem).ToContainTextAsync("2023-03");
        await visit.Page.Locator("#age-bought").FillAsync("2023-03");
        await Assertions.Expect(problem).ToHaveCountAsync(0);
        visit.AssertQuiet();
    }

    private static Task<string> TodayAsync(IPage page) => page.EvaluateAsync<string>(
        "() => { const now = new Date(), zone = now.getTimezoneOffset() * 60000; "
            + "return new Date(now.getTime() - zone).toISOString().slice(0, 10); }");

    [Collection(InABrowser.Name)]
    public sealed class OnTheServer(Chromium chromium) : OwnRigAgeTests(chromium, PagesEnd.Server);

    [Collection(InABrowser.Name)]
    public sealed class InTheFolder(Chromium chromium) : OwnRigAgeTests(chromium, PagesEnd.Folder);
}
