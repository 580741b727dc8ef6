using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>The verdict stays in sight while the form is filled in, and rigs stand side by side.</summary>
public abstract class OwnRigSightTests(Chromium chromium, PagesEnd end)
{
    private const string InSight =
        "selector => { const box = document.querySelector(selector).getBoundingClientRect(); "
            + "return box.height > 20 && box.top >= -1 && box.bottom <= innerHeight + 1; }";

    [Fact]
    public async Task On_a_wide_window_the_verdict_stays_beside_the_form_and_above_the_drawing()
    {
        await using var visit = await BeginAsync(1280, 800);
        foreach (var place in (string[])["#step-save", "#question-monitor", "#block-editor"])
        {
            await visit.Page.Locator(place).ScrollIntoViewIfNeededAsync();
            Assert.True(await visit.Page.EvaluateAsync<bool>(InSight, "#answer-first .rs-answer"), place);
        }
        const string plate = "#answer-parts svg.rs-wide [data-view=side] .rs-part[data-part=plate] polygon";
        await visit.Page.Locator(plate).EvaluateAsync("part => part.scrollIntoView({ block: 'end' })");
        Assert.True(await visit.Page.EvaluateAsync<bool>(InSight, "#answer-first .rs-answer > p"), "while a part is dragged");
        visit.AssertQuiet();
    }

    [Theory]
    [InlineData(390, 844)]
    [InlineData(640, 400)] // a window of 1280 x 800 at 200 %
    public async Task On_a_small_window_one_line_stays_at_the_top_and_opens_the_whole(int width, int height)
    {
        await using var visit = await BeginAsync(width, height);
        var line = visit.Page.Locator("#answer-line");
        foreach (var place in (string[])["#step-save", "#question-monitor", "#answer-parts"])
        {
            await visit.Page.Locator(place).EvaluateAsync("place => place.scrollIntoView()");
            Assert.True(await visit.Page.EvaluateAsync<bool>(InSight, "#answer-line"), place);
        }
        Assert.InRange((await StandingStill.BoxAsync(line)).Height, 24, height * 0.15);
        await Assertions.Expect(visit.Page.Locator("#answer-first .rs-answer")).ToBeHiddenAsync();
        await line.ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#answer-first .rs-answer")).ToBeVisibleAsync();
        await visit.Page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(visit.Page.Locator("#answer-first .rs-answer")).ToBeHiddenAsync();
        // Nothing is cut off at the side, and whatever one taps is large enough (24 CSS pixels: WCAG 2.2, 2.5.8).
        Assert.Equal(0, await visit.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth - innerWidth"));
        var small = await visit.Page.EvaluateAsync<string[]>("""
            () => [...document.querySelectorAll(
              "#rig :is(button, select, summary, input:not([type=radio], [type=checkbox])), #rig a")]
              .filter(e => e.getClientRects().length > 0 && e.checkVisibility() && !e.closest("p, li, .visually-hidden, .block"))
              .map(e => [e, e.getBoundingClientRect()]).filter(([, box]) => box.height < 24 || box.width < 24)
              .map(([e, box]) => `${e.outerHTML.slice(0, 90)} ${box.width} x ${box.height}`)
            """);
        Assert.Empty(small);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task What_the_answer_rests_on_leads_to_its_field()
    {
        await using var visit = await Visit.BeginAsync(chromium, end: end);
        await visit.GoAsync("/rig");
        await visit.Page.Locator("#typical-days button").First.WaitForAsync();
        var own = await Form.NotListedAsync(visit.Page, "camera");
        await own.Locator("[data-field=power-record] input").FillAsync("24");
        await own.Locator("[data-field=label-voltage] input").FillAsync("14.4");
        await Form.ChooseAsync(visit.Page, "battery", "brick 98");
        // What is assumed for an open field stands in it.
        await Assertions.Expect(own.Locator("[data-field=voltage-minimum] input[placeholder*='V (assumed)']"))
            .ToHaveCountAsync(1);
        var link = visit.Page.Locator("#answer-rests a").First;
        await link.WaitForAsync();
        var path = await link.GetAttributeAsync("data-to");
        await link.ClickAsync();
        Assert.Equal(path, await visit.Page.EvaluateAsync<string>("() => document.activeElement.dataset.path"));
        visit.AssertQuiet();
    }

    [Fact]
    public async Task Up_to_four_rigs_stand_side_by_side_and_are_kept_in_the_window()
    {
        await using var visit = await BeginAsync(1280, 900);
        var table = visit.Page.Locator("#compare-table");
        var columns = table.Locator("thead th");
        await visit.Page.Locator("#compare-more").ClickAsync();
        await Assertions.Expect(columns).ToHaveCountAsync(2);
        await visit.Page.Locator("#charge").FillAsync("40");
        var power = table.Locator("tr:has(th:text-is('Power')) td");
        await Assertions.Expect(power.Nth(1)).Not.ToHaveTextAsync(await power.Nth(0).InnerTextAsync());
        // The first one comes back into the form, with what was given to it and its own steps.
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Change it: A" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#charge")).ToHaveValueAsync("100 %");
        await Assertions.Expect(visit.Page.Locator("#undo-bar")).ToBeHiddenAsync();
        for (var more = 3; more <= 4; more++)
        {
            await visit.Page.Locator("#compare-more").ClickAsync();
            await Assertions.Expect(columns).ToHaveCountAsync(more);
        }
        await Assertions.Expect(visit.Page.Locator("#compare-more")).ToBeDisabledAsync();
        await visit.Page.ReloadAsync();
        await Assertions.Expect(columns).ToHaveCountAsync(4);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Forget D" }).ClickAsync();
        await Assertions.Expect(columns).ToHaveCountAsync(3);
        visit.AssertQuiet();
    }

    private async Task<Visit> BeginAsync(int width, int height)
    {
        var visit = await Visit.BeginAsync(chromium, end: end, width: width, height: height);
        await visit.GoAsync("/rig?file=samples/winter-harbour.yaml&build=tripod&day=day-one");
        await visit.Page.Locator("#answer-first .rs-answer").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        return visit;
    }

    [Collection(InABrowser.Name)]
    public sealed class OnTheServer(Chromium chromium) : OwnRigSightTests(chromium, PagesEnd.Server);

    [Collection(InABrowser.Name)]
    public sealed class InTheFolder(Chromium chromium) : OwnRigSightTests(chromium, PagesEnd.Folder);
}
