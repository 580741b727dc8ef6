using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>The pages in another browser: they answer, draw, move and take what is typed, and axe-core finds nothing.</summary>
[Collection(InFirefox.Name)]
public sealed class FirefoxTests(Firefox firefox)
{
    private const string AllDrawn = "() => { const charts = [...document.querySelectorAll('.rs-chart')]"
        + ".filter(chart => chart.clientWidth > 0); return charts.length > 0 && charts.every(chart => "
        + "chart.querySelector('.main-svg')); }";

    [Theory]
    [MemberData(nameof(AccessibilityTests.Notebooks), MemberType = typeof(AccessibilityTests))]
    public async Task A_notebook_answers_and_draws_its_charts(string notebook)
    {
        await using var visit = await Visit.BeginAsync(firefox);
        await visit.ReadAsync(notebook);
        await visit.Page.WaitForFunctionAsync("() => !document.querySelector('.strip .run button:not([hidden])')");
        if (await visit.Page.Locator(".rs-chart").CountAsync() > 0)
            await visit.Page.WaitForFunctionAsync(AllDrawn);
        var faults = new AxeFaults();
        await faults.LookAsync(visit.Page, notebook);
        faults.AssertNone(atLeast: 1);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_part_is_moved_with_the_pointer_and_with_the_keyboard()
    {
        const string plate = ".version-now svg.rs-wide [data-view=side] .rs-part[data-part=plate]";
        await using var visit = await Visit.BeginAsync(firefox);
        await visit.ReadAsync("04-placement-and-balance");
        var part = visit.Page.Locator(plate);
        // What is drawn above it later pushes it down again.
        await visit.Page.WaitForFunctionAsync("() => !document.querySelector('.strip .run button:not([hidden])')");
        await visit.Page.WaitForFunctionAsync($"() => {{ const top = () => document.querySelector('{plate}')"
            + ".getBoundingClientRect().top; scrollBy(0, top() - 400); return Math.abs(top() - 400) < 50; }");
        var box = await StandingStill.BoxAsync(visit.Page.Locator($"{plate} polygon"));
        await visit.Page.Mouse.MoveAsync(box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await visit.Page.Mouse.DownAsync();
        await visit.Page.Mouse.MoveAsync(box.X + (box.Width / 2) - 30, box.Y + (box.Height / 2), new() { Steps = 5 });
        await visit.Page.Mouse.UpAsync();
        await Visit.SettledAsync(visit.Page);
        var field = visit.Page.Locator("#controls .moved-list li input");
        var dragged = double.Parse(await field.InputValueAsync(), System.Globalization.CultureInfo.InvariantCulture);
        await part.FocusAsync();
        await visit.Page.Keyboard.PressAsync("ArrowRight");
        await Visit.SettledAsync(visit.Page);
        Assert.Equal(dragged + 1, double.Parse(await field.InputValueAsync(), System.Globalization.CultureInfo.InvariantCulture),
            0.5);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task The_form_answers_and_a_file_as_text_takes_what_is_typed()
    {
        await using var visit = await Visit.BeginAsync(firefox);
        var faults = new AxeFaults();
        await faults.LookAsync(visit.Page, "the shelf");
        await visit.GoAsync("/rig?file=samples/winter-harbour.yaml");
        await visit.Page.Locator("#answer-first .rs-answer").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await faults.LookAsync(visit.Page, "a rig");
        await Form.SaveAsync(visit.Page, "fox.yaml");
        await visit.GoAsync("/file/own/fox.yaml");
        await visit.Page.Locator("#answers li").First.WaitForAsync();
        await faults.LookAsync(visit.Page, "a file as text");
        var text = visit.Page.Locator("#text");
        await text.FocusAsync();
        await visit.Page.Keyboard.PressAsync("Control+End");
        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.Page.Keyboard.TypeAsync("moon: 1");
        await Assertions.Expect(visit.Page.Locator("#problems-sum")).ToContainTextAsync("to put right");
        // What a script types is the browser's own to take back.
        await visit.Page.Keyboard.PressAsync("Escape");
        for (var i = 0; i < 30 && (await text.InputValueAsync()).Contains("moon", StringComparison.Ordinal); i++)
            await visit.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(visit.Page.Locator("#problems-sum")).Not.ToContainTextAsync("to put right");
        faults.AssertNone(atLeast: 3);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_saved_page_draws_its_charts()
    {
        await using var visit = await Visit.BeginAsync(firefox);
        await visit.OpenSavedAsync("01-one-build-one-day");
        await visit.Page.WaitForFunctionAsync(AllDrawn);
        var faults = new AxeFaults();
        await faults.LookAsync(visit.Page, "a saved page");
        faults.AssertNone(atLeast: 1);
    }
}
