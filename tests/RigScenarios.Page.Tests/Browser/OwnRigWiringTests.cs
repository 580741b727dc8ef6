using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>The wiring in the form of one's own rig: chosen in the drawing with pointer and keyboard.</summary>
public abstract class OwnRigWiringTests(Chromium chromium, PagesEnd end)
{
    private const string Drawing = "#answer-parts [data-drawing^=wiring]";

    [Fact]
    public async Task Another_cable_chosen_with_the_pointer_changes_the_answer_and_is_saved()
    {
        await using var visit = await BeginAsync();
        var before = await Answer(visit.Page).InnerTextAsync();
        Assert.Contains("fails", before, StringComparison.Ordinal);
        await visit.Page.Locator($"{Element("splitter")} > rect").First.ClickAsync();
        var panel = visit.Page.Locator(".wire-panel");
        await Assertions.Expect(panel.GetByLabel("Plugged into")).ToBeFocusedAsync();
        await Assertions.Expect(panel.GetByLabel("Plugged into")).ToHaveValueAsync("plate a");
        await Assertions.Expect(panel.GetByLabel("Through")).ToHaveValueAsync("thin-lead");
        await panel.GetByLabel("Through").SelectOptionAsync("heavy-lead");
        await Assertions.Expect(Answer(visit.Page)).Not.ToHaveTextAsync(before);
        await Assertions.Expect(Power(visit.Page)).ToContainTextAsync("lasts");
        await Assertions.Expect(visit.Page.Locator($"{Element("splitter")} text").First).ToContainTextAsync("2.5 mm²");
        await Assertions.Expect(visit.Page.Locator("#feeds-splitter-why")).ToContainTextAsync("Heavy extension cable");
        // The panel is still there, and the drawing says to what it belongs.
        await Assertions.Expect(visit.Page.Locator(Element("splitter"))).ToHaveAttributeAsync("aria-expanded", "true");
        await SaveAsync(visit);
        Assert.Equal(("a", "heavy-lead"), await SplitterAsync(visit));
        await visit.GoAsync("/rig?file=own/dolly.yaml&build=thin-lead&day=night");
        await visit.Page.Locator($"{Element("splitter")} > rect").First.ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".wire-panel").GetByLabel("Through")).ToHaveValueAsync("heavy-lead");
        visit.AssertQuiet();
    }

    [Fact]
    public async Task An_outlet_and_a_cable_of_its_own_are_chosen_with_the_keyboard()
    {
        await using var visit = await BeginAsync();
        var before = await Answer(visit.Page).InnerTextAsync();
        await visit.Page.Locator(Element("transmitter")).FocusAsync();
        await visit.Page.Keyboard.PressAsync("Enter");
        var panel = visit.Page.Locator(".wire-panel");
        await Assertions.Expect(panel.GetByLabel("Plugged into")).ToBeFocusedAsync();
        await Assertions.Expect(panel.GetByLabel("Plugged into")).ToHaveValueAsync("plate b");
        // What can't be taken says why, and can't be chosen.
        await Assertions.Expect(panel.Locator("option[value='plate usb']")).ToBeDisabledAsync();
        await Assertions.Expect(panel.Locator("option[value='plate usb']")).ToContainTextAsync("can't take 5.1 V");
        await visit.Page.Keyboard.PressAsync("ArrowDown");
        await Assertions.Expect(panel.GetByLabel("Plugged into")).ToHaveValueAsync("plate c");
        await Assertions.Expect(visit.Page.Locator(Element("transmitter"))).ToHaveAttributeAsync("aria-description",
            "plugged into Plate with four outlets, outlet c, through Power cable 0.3 m");
        await visit.Page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(panel).ToBeHiddenAsync();
        await Assertions.Expect(visit.Page.Locator(Element("transmitter"))).ToBeFocusedAsync();
        // The lead of the splitter by figures of its own: short and thick.
        await visit.Page.Locator(Element("splitter")).FocusAsync();
        await visit.Page.Keyboard.PressAsync(" ");
        await visit.Page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(panel.GetByLabel("Through")).ToBeFocusedAsync();
        await visit.Page.Keyboard.PressAsync("End");
        await Assertions.Expect(panel.GetByLabel("Length, one way")).ToHaveValueAsync("600 mm");
        await panel.GetByLabel("Length, one way").FillAsync("900");
        await visit.Page.Keyboard.PressAsync("Tab");
        await panel.GetByLabel("Gauge of each conductor").FillAsync("1.5");
        await visit.Page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(visit.Page.Locator($"{Element("splitter")} text").First).ToContainTextAsync("1.5 mm²");
        await Assertions.Expect(Answer(visit.Page)).Not.ToHaveTextAsync(before);
        // A gauge that there isn't is told beside it, and the last answer stays.
        await panel.GetByLabel("Gauge of each conductor").FillAsync("thick");
        await visit.Page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(panel.Locator(".problems")).ToContainTextAsync("AWG 20");
        await panel.GetByLabel("Gauge of each conductor").FillAsync("1.5 mm²");
        await visit.Page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(panel.Locator(".problems")).ToBeHiddenAsync();
        await SaveAsync(visit);
        var scenario = await visit.Own.ScenarioAsync("dolly.yaml");
        var build = scenario.Builds["thin-lead"];
        Assert.Equal("c", build.Devices["transmitter"].Outlet);
        Assert.Equal((900, "1.5 mm²"),
            (Math.Round(scenario.PartOf(build.Splitters["splitter"].Cable!)!.Cable!.Length.Millimeters),
            scenario.PartOf(build.Splitters["splitter"].Cable!)!.Cable!.Gauge.ToString()));
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_proposed_regulator_that_gets_a_cable_becomes_one_of_the_rig()
    {
        await using var visit = await Visit.BeginAsync(chromium, end: end, height: 900);
        await visit.GoAsync("/rig");
        await Form.ChooseAsync(visit.Page, "camera", "compact body b");
        await Form.ChooseAsync(visit.Page, "battery", "brick 190");
        await Form.ChooseAsync(visit.Page, "plate", "four outlets");
        var regulator = visit.Page.Locator($"{Drawing} svg.rs-wide .wire-element:not([data-element=camera])");
        await Assertions.Expect(regulator).ToHaveCountAsync(1);
        // An answer that was still on its way draws anew, and what was opened on the old drawing goes with it.
        var cable = visit.Page.Locator(".wire-panel").GetByLabel("Through");
        for (var i = 0; i < 10 && !await cable.IsVisibleAsync(); i++)
        {
            await regulator.Locator("rect").First.ClickAsync();
            await visit.Page.WaitForTimeoutAsync(500);
        }

        await cable.SelectOptionAsync("power-cable-short");
        await Assertions.Expect(visit.Page.Locator("#question-regulator .thing-remove").First).ToBeVisibleAsync();
        await Assertions.Expect(regulator.Locator("text").First).ToContainTextAsync("0.3 m");
        visit.AssertQuiet();
    }

    // The wiring's answer is the last of them.
    private static ILocator Answer(IPage page) => Line(page, "Wiring");

    private static ILocator Power(IPage page) => Line(page, "Power");

    private static ILocator Line(IPage page, string question) =>
        page.Locator($"#answer-first .rs-questions tr:has(th:text-is(\"{question}\"))");

    private static string Element(string name) => $"{Drawing} svg.rs-wide .wire-element[data-element={name}]";

    private async Task<Visit> BeginAsync()
    {
        var visit = await Visit.BeginAsync(chromium, end: end, height: 900);
        await visit.Own.PutDemoAsync("dolly.yaml", "night-dolly.yaml");
        await visit.GoAsync("/rig?file=own/dolly.yaml&build=thin-lead&day=night");
        await visit.Page.Locator(Element("camera")).WaitForAsync();
        return visit;
    }

    private static async Task<(string? Outlet, string? Cable)> SplitterAsync(Visit visit)
    {
        var splitter = (await visit.Own.ScenarioAsync("dolly.yaml")).Builds["thin-lead"].Splitters["splitter"];
        return (splitter.Outlet, splitter.Cable);
    }

    private static async Task SaveAsync(Visit visit)
    {
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#save-told")).ToContainTextAsync("Saved as dolly.yaml");
    }

    [Collection(InABrowser.Name)]
    public sealed class OnTheServer(Chromium chromium) : OwnRigWiringTests(chromium, PagesEnd.Server);

    [Collection(InABrowser.Name)]
    public sealed class InTheFolder(Chromium chromium) : OwnRigWiringTests(chromium, PagesEnd.Folder);
}
