using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>Several batteries and a charger in the form of one's own rig.</summary>
public abstract class OwnRigBatteriesTests(Chromium chromium, PagesEnd end)
{
    [Fact]
    public async Task How_many_batteries_there_are_brings_the_days_answer_and_is_saved()
    {
        await using var visit = await Visit.BeginAsync(chromium, height: 900, end: end);
        await visit.GoAsync("/rig?file=samples/winter-harbour.yaml");
        await visit.Page.Locator("#answer-parts .rs-drawing").First.WaitForAsync();
        var timeline = visit.Page.Locator("#answer-parts [data-drawing=batteries-over-the-days]");
        await Assertions.Expect(timeline).ToHaveCountAsync(0);
        await visit.Page.Locator("#battery-count").FillAsync("2");
        await timeline.WaitForAsync();
        var answer = visit.Page.Locator("#answer-first .rs-answer p");
        var two = await answer.InnerTextAsync();
        // The longest block rolls through, and a charger has power at noon.
        await visit.Page.Locator("#block-editor")
            .GetByLabel("the camera rolls all through it: no battery is swapped").CheckAsync();
        await visit.Page.Locator("#battery-count").FillAsync("3");
        await Assertions.Expect(answer).Not.ToHaveTextAsync(two);
        await visit.Page.Locator("#charger-bays").FillAsync("2");
        await visit.Page.Locator("#power-hours").FillAsync("12:00-14:00");
        await visit.Page.Locator("#swap-at").FillAsync("25");
        await visit.Page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(visit.Page.Locator("#swap-at")).ToHaveValueAsync("25 %");
        await Assertions.Expect(visit.Page.Locator("#answer-cautions"))
            .ToContainTextAsync("Never charge lithium batteries unattended");
        // What can't be read is told at its field.
        await visit.Page.Locator("#power-hours").FillAsync("at noon");
        await Assertions.Expect(visit.Page.Locator("[data-field=power-hours] .problem")).ToContainTextAsync("19:00-07:00");
        await visit.Page.Locator("#power-hours").FillAsync("12:00-14:00");
        await Assertions.Expect(visit.Page.Locator("[data-field=power-hours] .problem")).ToHaveCountAsync(0);
        await visit.Page.Locator("#save-name").FillAsync("batteries.yaml");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#save-told")).ToContainTextAsync("Saved as batteries.yaml");
        var scenario = await visit.Own.ScenarioAsync("batteries.yaml");
        Assert.Equal((3, 2, 25.0), (scenario.Batteries.Count, scenario.Chargers["charger"].Bays,
            Math.Round(scenario.Swaps.Reserve!.Value.Percent, 6)));
        Assert.Contains(scenario.Days.Values.First().Blocks.Values, block => block.Rolling);
        await visit.GoAsync("/rig?file=own/batteries.yaml");
        await timeline.WaitForAsync();
        await Assertions.Expect(visit.Page.Locator("#battery-count")).ToHaveValueAsync("3");
        await Assertions.Expect(visit.Page.Locator("#power-hours")).ToHaveValueAsync("12:00-14:00");
        visit.AssertQuiet();
    }

    [Collection(InABrowser.Name)]
    public sealed class OnTheServer(Chromium chromium) : OwnRigBatteriesTests(chromium, PagesEnd.Server);

    [Collection(InABrowser.Name)]
    public sealed class InTheFolder(Chromium chromium) : OwnRigBatteriesTests(chromium, PagesEnd.Folder);
}
