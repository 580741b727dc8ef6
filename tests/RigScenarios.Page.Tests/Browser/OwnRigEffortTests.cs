using Microsoft.Playwright;
using RigScenarios.Answers;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>
/// How much it takes from opening the page to an answer: clicks and keystrokes are counted in the page. The rig: a body of 24 W
/// labelled 14.4 V, a heavy prime, a monitor of 7 inches, a battery of 98 Wh at 80 %, a night at -5 °C.
/// </summary>
public abstract class OwnRigEffortTests(Chromium chromium, PagesEnd end)
{
    private const string Count = """
        window.effort = { clicks: 0, keys: 0 };
        addEventListener("pointerdown", event => { if (event.isTrusted) effort.clicks++; }, true);
        addEventListener("keydown", event => {
          if (event.isTrusted && !["Shift", "Control", "Alt", "Meta"].includes(event.key)) effort.keys++;
        }, true);
        """;

    [Fact]
    public async Task The_first_right_answer_takes_few_clicks_and_keys_and_the_full_rig_not_many_more()
    {
        await using var visit = await Visit.BeginAsync(chromium, end: end);
        await visit.Page.AddInitScriptAsync(Count);
        await visit.GoAsync("/rig");
        await visit.Page.Locator("#typical-days button").First.WaitForAsync();
        var keys = visit.Page.Keyboard;
        // The camera's label: 24 W, 14.4 V.
        await visit.Page.Locator("#question-camera .thing-own").ClickAsync();
        await FocusedAsync(visit.Page, "power-record");
        await keys.TypeAsync("24");
        await keys.PressAsync("Tab");
        await keys.TypeAsync("14.4");
        // The battery, its charge, the day and the cold.
        await PickAsync(visit.Page, "battery", "98");
        await TypeAsync(visit.Page, "charge", "80");
        await visit.Page.Locator("#typical-days button").Filter(new() { HasText = "A night" }).ClickAsync();
        await TypeAsync(visit.Page, "ambient", "-5");
        await keys.PressAsync("Tab");
        await Form.Line(visit.Page, "Power").WaitForAsync();
        await Form.SettledAsync(visit.Page);
        var first = await EffortAsync(visit.Page);
        Assert.True(first is { Clicks: <= 7, Keys: <= 30 }, $"the first answer: {first}");
        // Fed directly: a device labelled for the battery's own voltage needs no regulator.
        var wiring = await visit.Page.Locator("#wiring").InnerTextAsync();
        Assert.DoesNotContain("regulator", wiring, StringComparison.OrdinalIgnoreCase);
        await SameAsTheCommandAsync(visit, "first.yaml");
        await visit.Page.EvaluateAsync($"() => Object.assign(window.effort, {{ clicks: {first.Clicks}, keys: {first.Keys} }})");

        // The rest: mass and size of the body, plate, prime, monitor, head and tripod.
        await visit.Page.Locator("#question-camera [data-field=mass] input").ClickAsync();
        await keys.TypeAsync("2400");
        await keys.PressAsync("Tab");
        await keys.TypeAsync("L");
        await PickAsync(visit.Page, "plate", "plate");
        await visit.Page.Locator("#question-lens .thing-own").ClickAsync();
        await FocusedAsync(visit.Page, "mass");
        await keys.TypeAsync("2100");
        await keys.PressAsync("Tab");
        await keys.TypeAsync("L");
        await visit.Page.Locator("#question-monitor .thing-own").ClickAsync();
        await FocusedAsync(visit.Page, "power-record");
        await keys.TypeAsync("18");
        await keys.PressAsync("Tab");
        await keys.TypeAsync("14.4");
        // Past amperes and mass to the size: a middle one.
        for (var field = 0; field < 3; field++)
            await keys.PressAsync("Tab");
        await keys.TypeAsync("m");
        await PickAsync(visit.Page, "head", "middle");
        await PickAsync(visit.Page, "legs", "middle");
        await keys.PressAsync("Tab");
        await Form.Line(visit.Page, "Balance").WaitForAsync();
        await Assertions.Expect(Form.Line(visit.Page, "Balance")).Not.ToContainTextAsync("not known");
        await Form.SettledAsync(visit.Page);
        var full = await EffortAsync(visit.Page);
        Assert.True(full is { Clicks: <= 25, Keys: <= 130 }, $"the full rig: {full}");
        TestContext.Current.TestOutputHelper?.WriteLine($"first: {first}; full: {full}");
        await SameAsTheCommandAsync(visit, "full.yaml");
        visit.AssertQuiet();
    }

    // What is saved gives the same answer without the page.
    private static async Task SameAsTheCommandAsync(Visit visit, string name)
    {
        await Form.SaveAsync(visit.Page, name);
        await Form.SettledAsync(visit.Page);
        var scenario = await visit.Own.ScenarioAsync(name);
        var answer = RigAnswer.Of(scenario, scenario.Builds.Keys.First(), [scenario.Days.Keys.First()],
            cancellation: TestContext.Current.CancellationToken);
        // Where the command names a field's path, the form has a link to the field.
        var shown = (await visit.Page.Locator("#answer-first").InnerTextAsync()).Replace('\u00a0', ' ')
            .Replace(" (say it)", "", StringComparison.Ordinal);
        Assert.Contains(AnswerSentences.Headline(answer), shown, StringComparison.Ordinal);
        foreach (var line in AnswerSentences.Questions(answer))
            Assert.Contains(WithoutPaths(line.Words), shown, StringComparison.Ordinal);
    }

    private static string WithoutPaths(string words)
    {
        for (var at = words.IndexOf(" (parts.", StringComparison.Ordinal); at >= 0;
            at = words.IndexOf(" (parts.", StringComparison.Ordinal))
            words = words.Remove(at, words.IndexOf(')', at) + 1 - at);
        return words;
    }

    private static async Task PickAsync(IPage page, string question, string words)
    {
        await page.Locator($"#question-{question} [role=combobox]").First.ClickAsync();
        await page.Keyboard.TypeAsync(words);
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator($"#question-{question} .thing:not(.thing-open)").First).ToBeVisibleAsync();
    }

    private static async Task TypeAsync(IPage page, string field, string text)
    {
        await page.Locator($"#{field}").ClickAsync();
        await page.Keyboard.TypeAsync(text);
    }

    private static async Task FocusedAsync(IPage page, string field) =>
        await page.WaitForFunctionAsync($"() => document.activeElement.closest('[data-field]')?.dataset.field === '{field}'");

    private static async Task<(int Clicks, int Keys)> EffortAsync(IPage page) =>
        (await page.EvaluateAsync<int>("() => effort.clicks"), await page.EvaluateAsync<int>("() => effort.keys"));

    [Collection(InABrowser.Name)]
    public sealed class OnTheServer(Chromium chromium) : OwnRigEffortTests(chromium, PagesEnd.Server);

    [Collection(InABrowser.Name)]
    public sealed class InTheFolder(Chromium chromium) : OwnRigEffortTests(chromium, PagesEnd.Folder);
}
