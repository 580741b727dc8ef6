using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>The folder after its first visit, with whoever handed it out gone.</summary>
[Collection(InABrowser.Name)]
public sealed class WithoutNetworkTests(Chromium chromium)
{
    private const string Plate = "#answer-parts svg.rs-wide [data-view=side] .rs-part[data-part=plate]";

    private const string At = "#places-list input[data-path$='places.plate.forward']";

    [Fact]
    public async Task A_rig_is_made_moved_reloaded_and_saved_with_the_network_cut()
    {
        await using var visit = await Visit.BeginAsync(chromium, height: 900, end: PagesEnd.Folder);
        await KeptAsync(visit.Page);
        await visit.CutAsync();

        // A rig from nothing, in the form.
        await visit.GoAsync("/rig");
        await Form.ChooseAsync(visit.Page, "camera", "compact body b");
        await Form.ChooseAsync(visit.Page, "battery", "brick 190");
        await Form.ChooseAsync(visit.Page, "plate", "plate");
        await Form.ChooseAsync(visit.Page, "other", "400");
        await Form.ChooseAsync(visit.Page, "head", "middle");
        await Form.ChooseAsync(visit.Page, "legs", "middle");
        await visit.Page.Locator("#ambient").FillAsync("5 °C");
        await Assertions.Expect(Form.Line(visit.Page, "Balance")).Not.ToContainTextAsync("not known");

        // A part is moved with the pointer, and the answer follows.
        await Form.SettledAsync(visit.Page);
        await visit.Page.Locator(Plate + ".rs-can-move").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        var before = await visit.Page.Locator(At).InputValueAsync();
        await visit.Page.Locator(Plate).EvaluateAsync("part => part.scrollIntoView({ block: 'center' })");
        var box = await StandingStill.BoxAsync(visit.Page.Locator($"{Plate} polygon"));
        await visit.Page.Mouse.MoveAsync(box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await visit.Page.Mouse.DownAsync();
        await visit.Page.Mouse.MoveAsync(box.X + (box.Width / 2) - 60, box.Y + (box.Height / 2), new() { Steps = 5 });
        await visit.Page.Mouse.UpAsync();
        await Assertions.Expect(visit.Page.Locator(At)).Not.ToHaveValueAsync(before);
        var moved = await visit.Page.Locator(At).InputValueAsync();

        // A reload keeps it all, and what is saved is there for another visit.
        await visit.Page.ReloadAsync();
        await Assertions.Expect(visit.Page.Locator(At)).ToHaveValueAsync(moved);
        await Assertions.Expect(visit.Page.Locator("#ambient")).ToHaveValueAsync("5 °C");
        await Form.Line(visit.Page, "Power").WaitForAsync();
        await Form.SaveAsync(visit.Page, "night-bus.yaml");
        var scenario = await visit.Own.ScenarioAsync("night-bus.yaml");
        Assert.Equal(moved, $"{scenario.Builds["rig"].Places["plate"].Forward!.Value.Millimeters:0} mm");
        await visit.GoAsync("/rig?file=own/night-bus.yaml");
        await Assertions.Expect(visit.Page.Locator(At)).ToHaveValueAsync(moved);
        visit.AssertQuiet();
    }

    // What the page's foot says once the browser has kept every file.
    private static Task KeptAsync(IPage page) =>
        Assertions.Expect(page.Locator("#offline-told")).ToContainTextAsync("works without a network");
}
