using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>Steps back and forth in the form of one's own rig: fields, the day, the drawing and the wiring alike.</summary>
public abstract class OwnRigStepsTests(Chromium chromium, PagesEnd end)
{
    private const string Plate = "#answer-parts svg.rs-wide [data-view=side] .rs-part[data-part=plate]";

    [Fact]
    public async Task What_was_typed_is_one_step_and_the_field_takes_its_own_typing_back_first()
    {
        await using var visit = await BeginAsync();
        var cold = Form.Field(visit.Page, "ambient").Locator("input[type=text]");
        await Assertions.Expect(Undo(visit.Page)).ToBeHiddenAsync();
        await cold.ClickAsync();
        await visit.Page.Keyboard.TypeAsync("-13");
        await visit.Page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(cold).ToHaveValueAsync("-13 °C");
        await Undo(visit.Page).ClickAsync();
        await Assertions.Expect(cold).ToHaveValueAsync("-8 °C");
        await visit.Page.Keyboard.PressAsync("Control+y");
        await Assertions.Expect(cold).ToHaveValueAsync("-13 °C");
        // In a field with typing of its own the keys are the browser's, after that the form's.
        var charge = Form.Field(visit.Page, "charge").Locator("input[type=text]");
        await charge.ClickAsync();
        await visit.Page.Keyboard.TypeAsync("5");
        await Assertions.Expect(charge).ToHaveValueAsync("5");
        await visit.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(charge).ToHaveValueAsync("100 %");
        await Assertions.Expect(cold).ToHaveValueAsync("-13 °C");
        await visit.Page.Keyboard.PressAsync("Control+Shift+z");
        await Assertions.Expect(charge).ToHaveValueAsync("5");
        await visit.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(charge).ToHaveValueAsync("100 %");
        await visit.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(cold).ToHaveValueAsync("-8 °C");
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_drag_in_the_drawing_a_cable_and_a_block_go_back_and_come_again()
    {
        await using var visit = await BeginAsync();
        await visit.Page.Locator(Plate + ".rs-can-move").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await visit.Page.Locator(Plate).EvaluateAsync("part => part.scrollIntoView({ block: 'center' })");
        var box = await StandingStill.BoxAsync(visit.Page.Locator($"{Plate} polygon"));
        await visit.Page.Mouse.MoveAsync(box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await visit.Page.Mouse.DownAsync();
        await visit.Page.Mouse.MoveAsync(box.X + (box.Width / 2) + 400, box.Y + (box.Height / 2), new() { Steps = 10 });
        await visit.Page.Mouse.UpAsync();
        var at = visit.Page.Locator("#places-list input[data-path$='places.plate.forward']");
        await Assertions.Expect(at).ToHaveValueAsync("-136 mm");
        await visit.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(at).ToHaveValueAsync("-168 mm");
        await visit.Page.WaitForFunctionAsync($"() => document.querySelector('{Plate}').dataset.at === '-0.168'");
        await visit.Page.Keyboard.PressAsync("Control+y");
        await Assertions.Expect(at).ToHaveValueAsync("-136 mm");

        // A cable of the wiring.
        const string monitor = "#answer-parts [data-drawing^=wiring] svg.rs-wide .wire-element[data-element=monitor]";
        var element = visit.Page.Locator(monitor);
        await element.FocusAsync();
        await visit.Page.Keyboard.PressAsync("Enter");
        var through = visit.Page.Locator(".wire-panel").GetByLabel("Through");
        var before = await through.InputValueAsync();
        await through.SelectOptionAsync("power-cable-short");
        await Assertions.Expect(visit.Page.Locator($"{monitor}[aria-description*='0.3 m']")).ToHaveCountAsync(1);
        await visit.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(through).ToHaveValueAsync(before);
        await Assertions.Expect(visit.Page.Locator($"{monitor}[aria-description*='no cable']")).ToHaveCountAsync(1);

        // A block of the day: its edge with the pointer, then the block taken out.
        var sum = visit.Page.Locator("#day-sum");
        var whole = await sum.InnerTextAsync();
        var edge = visit.Page.Locator("#timeline .edge").First;
        await edge.EvaluateAsync("edge => edge.scrollIntoView({ block: 'center' })");
        var handle = await StandingStill.BoxAsync(edge);
        await visit.Page.Mouse.MoveAsync(handle.X + (handle.Width / 2), handle.Y + (handle.Height / 2));
        await visit.Page.Mouse.DownAsync();
        await visit.Page.Mouse.MoveAsync(handle.X + 30, handle.Y + (handle.Height / 2), new() { Steps = 6 });
        await visit.Page.Mouse.UpAsync();
        await Assertions.Expect(visit.Page.Locator("#block-length")).Not.ToHaveValueAsync("45 min");
        await visit.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(visit.Page.Locator("#block-length")).ToHaveValueAsync("45 min");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Take this block out" }).ClickAsync();
        await Assertions.Expect(sum).Not.ToHaveTextAsync(whole);
        await visit.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(sum).ToHaveTextAsync(whole);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_thing_that_was_added_goes_back_too_and_a_reload_keeps_the_rig()
    {
        await using var visit = await Visit.BeginAsync(chromium, end: end, height: 900);
        await visit.GoAsync("/rig");
        await Form.ChooseAsync(visit.Page, "camera", "compact body b");
        await Form.ChooseAsync(visit.Page, "monitor", "5 inch");
        var rows = visit.Page.Locator("#question-monitor .thing:not(.thing-open)");
        await Assertions.Expect(rows).ToHaveCountAsync(1);
        await Undo(visit.Page).ClickAsync();
        await Assertions.Expect(rows).ToHaveCountAsync(0);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Redo", Exact = false }).ClickAsync();
        await Assertions.Expect(rows).ToHaveCountAsync(1);
        await visit.Page.ReloadAsync();
        await Assertions.Expect(rows).ToHaveCountAsync(1);
        await Assertions.Expect(visit.Page.Locator("#kept")).ToBeVisibleAsync();
        visit.AssertQuiet();
    }

    private static ILocator Undo(IPage page) => page.Locator("#undo-bar button").First;

    private async Task<Visit> BeginAsync()
    {
        var visit = await Visit.BeginAsync(chromium, end: end, height: 900);
        await visit.GoAsync("/rig?file=samples/winter-harbour.yaml&build=tripod&day=day-one");
        await visit.Page.Locator("#answer-first .rs-answer").First.WaitForAsync();
        return visit;
    }

    [Collection(InABrowser.Name)]
    public sealed class OnTheServer(Chromium chromium) : OwnRigStepsTests(chromium, PagesEnd.Server);

    [Collection(InABrowser.Name)]
    public sealed class InTheFolder(Chromium chromium) : OwnRigStepsTests(chromium, PagesEnd.Folder);
}
