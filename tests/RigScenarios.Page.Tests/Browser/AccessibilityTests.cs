using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>Pages for everyone: no fault that axe-core calls serious or critical, by day and by night.</summary>
[Collection(InABrowser.Name)]
public sealed class AccessibilityTests(Chromium chromium)
{
    [Theory]
    [InlineData(false, 1280)]
    [InlineData(true, 1280)]
    [InlineData(false, 390)]
    [InlineData(true, 390)]
    public async Task No_page_has_a_serious_fault(bool night, int width)
    {
        await using var visit = await Visit.BeginAsync(chromium, night: night, width: width);
        var faults = new List<string>();
        await visit.Page.Locator("#notebook-list > li").First.WaitForAsync();
        await CheckAsync("/");
        await visit.ReadAsync("01-one-build-one-day", "#degreesColder=3/pinned?degreesColder=0");
        await visit.Page.Locator(".version-pinned .rs-answer").First.WaitForAsync();
        await Visit.SettledAsync(visit.Page);
        await CheckAsync("/n/01");
        await visit.ReadAsync("03-the-cold");
        await CheckAsync("/n/03");
        await visit.GoAsync("/rig?file=samples/winter-harbour.yaml");
        await visit.Page.Locator("#answer-first .rs-answer").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await CheckAsync("/rig");
        // A rig with its wiring's panel open, and several batteries.
        await visit.GoAsync("/rig?file=samples/night-dolly.yaml");
        var element = visit.Page.Locator($"#answer-parts svg.{(width < 700 ? "rs-narrow" : "rs-wide")} .wire-element").First;
        await element.WaitForAsync();
        await element.FocusAsync();
        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.Page.Locator(".wire-panel").WaitForAsync();
        await visit.Page.Locator("#battery-count").FillAsync("3");
        await visit.Page.Locator("#answer-parts [data-drawing=batteries-over-the-days]").WaitForAsync();
        await CheckAsync("/rig, wiring");
        await visit.GoAsync("/file/samples/winter-harbour.yaml");
        await visit.Page.Locator("#answers li").First.WaitForAsync();
        await CheckAsync("/file");
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        visit.AssertQuiet();

        async Task CheckAsync(string page)
        {
            var result = await visit.Page.RunAxe();
            faults.AddRange(result.Violations.Where(violation => violation.Impact is "serious" or "critical")
                .Select(violation => $"{page}: {violation.Id} ({violation.Help}): "
                    + $"{string.Join(" | ", violation.Nodes.Take(3).Select(node => node.Html))}"));
        }
    }
}
