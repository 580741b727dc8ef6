using Microsoft.Playwright;
using RigScenarios.Answers;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>What the rig stands on and where things sit, in the form of one's own rig.</summary>
public abstract class OwnRigPlacesTests(Chromium chromium, PagesEnd end)
{
    private const string Plate = "#answer-parts svg.rs-wide [data-view=side] .rs-part[data-part=plate]";

    private const string At = "#places-list input[data-path$='places.plate.forward']";

    [Fact]
    public async Task A_part_dragged_in_the_drawing_is_saved_where_it_was_left()
    {
        await using var visit = await Visit.BeginAsync(chromium, end: end, height: 900);
        var text = await visit.Own.PutDemoAsync("harbour.yaml", "winter-harbour.yaml");
        await visit.GoAsync("/rig?file=own/harbour.yaml&build=tripod&day=day-one");
        await visit.Page.Locator(Plate + ".rs-can-move").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        var (power, balance) = (await LineAsync(visit.Page, "Power"), await Centre(visit.Page).InnerTextAsync());
        await visit.Page.Locator(Plate).EvaluateAsync("part => part.scrollIntoView({ block: 'center' })");
        var box = await StandingStill.BoxAsync(visit.Page.Locator($"{Plate} polygon"));
        await visit.Page.Mouse.MoveAsync(box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await visit.Page.Mouse.DownAsync();
        await visit.Page.Mouse.MoveAsync(box.X + (box.Width / 2) + 400, box.Y + (box.Height / 2), new() { Steps = 10 });
        await visit.Page.WaitForFunctionAsync($"() => document.querySelector('{Plate}').dataset.at === '-0.136'");
        await visit.Page.Mouse.UpAsync();
        // The balance follows; the day on the battery has nothing to do with it.
        Assert.NotEqual(balance, await Centre(visit.Page).InnerTextAsync());
        Assert.Equal(power, await LineAsync(visit.Page, "Power"));
        await Assertions.Expect(visit.Page.Locator(At)).ToHaveValueAsync("-136 mm");
        await Assertions.Expect(visit.Page.Locator("#battery-place-slider")).ToHaveValueAsync("-136");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#save-told")).ToContainTextAsync("Saved as harbour.yaml");
        var moved = text.Replace("plate: {on: long-rods, forward: -168 mm", "plate: {on: long-rods, forward: -136 mm",
            StringComparison.Ordinal);
        var saved = await visit.Own.TextAsync("harbour.yaml");
        // Without a folder the file brings its parts along, in the place of the line that names them.
        if (end == PagesEnd.Server)
            Assert.Equal(moved, saved);
        else
            Assert.EndsWith(moved[moved.IndexOf("builds:", StringComparison.Ordinal)..], saved, StringComparison.Ordinal);
        await visit.GoAsync("/rig?file=own/harbour.yaml&build=tripod&day=day-one");
        await visit.Page.WaitForFunctionAsync($"() => document.querySelector('{Plate}')?.dataset.at === '-0.136'");
        await Assertions.Expect(visit.Page.Locator(At)).ToHaveValueAsync("-136 mm");
        visit.AssertQuiet();
    }

    [Fact]
    public async Task What_is_held_stays_in_the_hand_when_the_answer_says_more_or_less_than_before()
    {
        await using var visit = await Visit.BeginAsync(chromium, end: end, height: 900);
        await visit.GoAsync("/rig?file=samples/winter-harbour.yaml");
        await visit.Page.Locator(Plate + ".rs-can-move").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await visit.Page.Locator(Plate).EvaluateAsync("part => part.scrollIntoView({ block: 'center' })");
        var box = await StandingStill.BoxAsync(visit.Page.Locator($"{Plate} polygon"));
        var (x, y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await visit.Page.Mouse.MoveAsync(x, y);
        await visit.Page.Mouse.DownAsync();
        const string shown = "[...document.getElementById('answer-parts').children]";
        await visit.Page.EvaluateAsync($"() => {shown}.forEach(part => part.isOld = true)");
        foreach (var step in (float[])[-6, 1, 8, -8, -1, 6, 11, -11])
        {
            await visit.Page.EvaluateAsync("() => { window.updated = new Promise(done => "
                + "addEventListener('rs-updated', done, { once: true })); }");
            await visit.Page.Mouse.MoveAsync(x + step, y);
            await visit.Page.EvaluateAsync("() => window.updated.then(() => true)");
            Assert.Equal(1, await visit.Page.Locator("#answer-parts .rs-moving").CountAsync());
        }
        await visit.Page.Mouse.UpAsync();
        // Beside the drawing a part of the answer was put anew meanwhile, or this would show nothing.
        Assert.NotEqual(0, await visit.Page.EvaluateAsync<int>($"() => {shown}.filter(part => !part.isOld).length"));
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_rig_from_nothing_gets_places_a_head_and_an_answer()
    {
        await using var visit = await Visit.BeginAsync(chromium, end: end, height: 900);
        await visit.GoAsync("/rig");
        await Form.ChooseAsync(visit.Page, "camera", "compact body b");
        await Form.ChooseAsync(visit.Page, "battery", "brick 190");
        await Form.ChooseAsync(visit.Page, "plate", "plate");
        await Form.ChooseAsync(visit.Page, "other", "400");
        await visit.Page.Locator("#ambient").FillAsync("5 °C");
        await visit.Page.Locator("#answer-parts [data-drawing='rig-to-scale']").WaitForAsync();
        await Assertions.Expect(visit.Page.Locator("#head-plate")).ToBeHiddenAsync();
        await Assertions.Expect(Line(visit.Page, "Balance")).ToContainTextAsync("not known");
        await Form.ChooseAsync(visit.Page, "head", "middle");
        await Form.ChooseAsync(visit.Page, "legs", "middle");
        await Assertions.Expect(Line(visit.Page, "Balance")).Not.ToContainTextAsync("not known");
        await Assertions.Expect(visit.Page.Locator("#head-plate")).ToBeVisibleAsync();
        var balance = await LineAsync(visit.Page, "Balance");
        await visit.Page.Locator("#slide-middle-slider").FillAsync("-120");
        await Assertions.Expect(visit.Page.Locator("#slide-middle")).ToHaveValueAsync("-120 mm");
        await Assertions.Expect(Line(visit.Page, "Balance")).Not.ToHaveTextAsync(balance);
        // The battery further back with the slider: the drawing and the list follow.
        var least = await visit.Page.Locator("#battery-place-slider").GetAttributeAsync("min");
        await visit.Page.Locator("#battery-place-slider").FillAsync(least!);
        await Assertions.Expect(visit.Page.Locator(At)).ToHaveValueAsync($"{least} mm");
        await visit.Page.Locator("#save-name").FillAsync("placed.yaml");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#save-told")).ToContainTextAsync("Saved as placed.yaml");
        var scenario = await visit.Own.ScenarioAsync("placed.yaml");
        Assert.Equal(-120, scenario.Builds["rig"].OnHead!.SlideMiddle!.Value.Millimeters, 6);
        Assert.Equal(least, scenario.Builds["rig"].Places["plate"].Forward!.Value.Millimeters.ToString("0", null));
        var ofFile = RigAnswer.Of(scenario, "rig", [scenario.Days.Keys.First()],
            cancellation: TestContext.Current.CancellationToken);
        var words = AnswerSentences.Questions(ofFile).Single(line => line.Kind == QuestionKind.Balance).Words;
        Assert.Contains(words, (await LineAsync(visit.Page, "Balance")).Replace('\u00a0', ' '), StringComparison.Ordinal);
        visit.AssertQuiet();
    }

    private static ILocator Centre(IPage page) => page.Locator("#answer-parts > p:has-text(\"centre of gravity\")").First;

    private static ILocator Line(IPage page, string question) =>
        page.Locator($"#answer-first .rs-questions tr:has(th:text-is(\"{question}\"))");

    private static Task<string> LineAsync(IPage page, string question) => Line(page, question).InnerTextAsync();

    [Collection(InABrowser.Name)]
    public sealed class OnTheServer(Chromium chromium) : OwnRigPlacesTests(chromium, PagesEnd.Server);

    [Collection(InABrowser.Name)]
    public sealed class InTheFolder(Chromium chromium) : OwnRigPlacesTests(chromium, PagesEnd.Folder);
}
