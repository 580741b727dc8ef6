using Microsoft.Playwright;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>Pages for everyone: nothing at all that axe-core finds, by day and by night, on a wide window and on a
/// phone.</summary>
[Collection(InABrowser.Name)]
public sealed class AccessibilityTests(Chromium chromium)
{
    public static TheoryData<string> Notebooks() =>
        [.. Directory.GetFiles(Path.Combine(Checkout.Root, "notebooks"), "*.ipynb")
            .Select(file => Path.GetFileNameWithoutExtension(file)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Notebooks))]
    public async Task No_notebook_has_a_fault(string notebook)
    {
        var faults = new AxeFaults();
        foreach (var (night, width) in ((bool, int)[])[(false, 1280), (true, 390)])
        {
            await using var visit = await Visit.BeginAsync(chromium, night: night, width: width);
            await visit.ReadAsync(notebook);
            await visit.Page.WaitForFunctionAsync("() => !document.querySelector('.strip .run button:not([hidden])')");
            await faults.LookAsync(visit.Page, $"{notebook}, {width}");
            visit.AssertQuiet();
        }
        faults.AssertNone(atLeast: 2);
    }

    [Theory]
    [InlineData(false, 1280)]
    [InlineData(true, 1280)]
    [InlineData(false, 390)]
    [InlineData(true, 390)]
    public async Task No_other_page_has_a_fault(bool night, int width)
    {
        await using var visit = await Visit.BeginAsync(chromium, night: night, width: width);
        var faults = new AxeFaults();
        await visit.Page.Locator("#notebook-list > li").First.WaitForAsync();
        await faults.LookAsync(visit.Page, "the shelf");
        await visit.ReadAsync("01-one-build-one-day", "#degreesColder=3/pinned?degreesColder=0");
        await visit.Page.Locator(".version-pinned .rs-answer").First.WaitForAsync();
        await Visit.SettledAsync(visit.Page);
        await faults.LookAsync(visit.Page, "a notebook with a pinned version");
        // On a phone the button is folded away with the controls.
        if (width > 700)
        {
            await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save…" }).ClickAsync();
            await visit.Page.Locator("dialog").WaitForAsync();
            await faults.LookAsync(visit.Page, "the dialog of what can be saved");
        }
        await visit.GoAsync("/rig");
        await visit.Page.Locator("#rig").WaitForAsync();
        await faults.LookAsync(visit.Page, "a new rig");
        await Form.UnfoldAsync(visit.Page);
        await faults.LookAsync(visit.Page, "a new rig, unfolded");
        await visit.GoAsync("/rig?file=samples/winter-harbour.yaml");
        await visit.Page.Locator("#answer-first .rs-answer").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await faults.LookAsync(visit.Page, "a rig");
        // A rig with its wiring's panel open, and several batteries.
        await visit.GoAsync("/rig?file=samples/night-dolly.yaml");
        var element = visit.Page.Locator($"#answer-parts svg.{(width < 700 ? "rs-narrow" : "rs-wide")} .wire-element").First;
        await element.WaitForAsync();
        await element.FocusAsync();
        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.Page.Locator(".wire-panel").WaitForAsync();
        await visit.Page.Locator("#battery-count").FillAsync("3");
        await visit.Page.Locator("#answer-parts [data-drawing=batteries-over-the-days]").WaitForAsync();
        await faults.LookAsync(visit.Page, "a rig with its wiring open");
        await visit.GoAsync("/file/samples/winter-harbour.yaml");
        await visit.Page.Locator("#answers li").First.WaitForAsync();
        await faults.LookAsync(visit.Page, "a file as text");
        visit.AssertQuiet();
        faults.AssertNone(atLeast: 6);
    }

    [Theory]
    [InlineData(1280)]
    [InlineData(390)]
    public async Task No_saved_page_has_a_fault(int width)
    {
        await using var visit = await Visit.BeginAsync(chromium, width: width);
        await visit.OpenSavedAsync("01-one-build-one-day");
        await visit.Page.WaitForFunctionAsync(
            "() => [...document.querySelectorAll('.rs-chart')].every(chart => chart.querySelector('.main-svg'))");
        var faults = new AxeFaults();
        await faults.LookAsync(visit.Page, "a saved page");
        faults.AssertNone(atLeast: 1);
    }
}
