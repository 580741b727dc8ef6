using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>What a screen reader hears of the answer to one's own rig: each verdict as it changes, once, and nothing while
/// something is still being moved.</summary>
[Collection(InABrowser.Name)]
public sealed class SpokenTests(Chromium chromium)
{
    [Fact]
    public async Task A_verdict_is_heard_once_it_changed_and_not_at_every_step_of_a_drag()
    {
        await using var visit = await BeginAsync();
        var (slider, text) = (visit.Page.Locator("#ambient-slider"), visit.Page.Locator("#answer-line-text"));
        var before = await text.InnerTextAsync();
        await slider.ScrollIntoViewIfNeededAsync();
        var box = await StandingStill.BoxAsync(slider);
        await visit.Page.EvaluateAsync("() => { heard.length = 0; }");
        await visit.Page.Mouse.MoveAsync(box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await visit.Page.Mouse.DownAsync();
        for (var step = 1; step <= 8; step++)
        {
            await visit.Page.Mouse.MoveAsync(box.X + (box.Width / 2) + (step * box.Width / 20), box.Y + (box.Height / 2));
            await visit.Page.WaitForTimeoutAsync(250);
        }
        await Assertions.Expect(text).Not.ToHaveTextAsync(before);
        // Held still it is still held.
        await visit.Page.WaitForTimeoutAsync(1500);
        Assert.Empty(await HeardAsync(visit));
        await visit.Page.Mouse.UpAsync();
        await visit.Page.WaitForFunctionAsync("() => heard.length > 0");
        await visit.Page.WaitForTimeoutAsync(1500);
        var heard = await HeardAsync(visit);
        Assert.Contains(Plain(await visit.Page.Locator("#answer-first .rs-answer > p").First.InnerTextAsync()),
            Plain(Assert.Single(heard)), StringComparison.Ordinal);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task Each_question_whose_verdict_changed_is_heard_and_no_other()
    {
        await using var visit = await BeginAsync();
        var first = await visit.Page.Locator("#answer-first .rs-answer > p").First.InnerTextAsync();
        await visit.Page.EvaluateAsync("() => { heard.length = 0; }");
        // A budget of nothing: the cost is a new question, and all else stays as it is.
        await visit.Page.Locator("#budget").FillAsync("1 EUR");
        await visit.Page.WaitForFunctionAsync("() => heard.length > 0");
        await visit.Page.WaitForTimeoutAsync(1500);
        var told = Assert.Single(await HeardAsync(visit));
        var line = visit.Page.Locator("#answer-first .rs-questions tr").Filter(new() { HasText = "ost" }).Last;
        var question = await line.Locator("th").TextContentAsync();
        Assert.Contains($"{question}: {await line.Locator(".rs-verdict").TextContentAsync()}", told, StringComparison.Ordinal);
        Assert.DoesNotContain(Plain(first), Plain(told), StringComparison.Ordinal);
        // The same again is not said again.
        await visit.Page.Locator("#title").FillAsync("Another name");
        await visit.Page.WaitForTimeoutAsync(2500);
        Assert.Single(await HeardAsync(visit));
        visit.AssertQuiet();
    }

    // Every text that comes into a live region of the page (WAI-ARIA 1.2, "status", "alert"), in the order in which it came, but
    // for what would make it work, which is looked for after the answer and heard for itself.
    private async Task<Visit> BeginAsync()
    {
        var visit = await Visit.BeginAsync(chromium, width: 1280, height: 800);
        await visit.GoAsync("/rig?file=samples/winter-harbour.yaml&build=tripod&day=day-one");
        await visit.Page.Locator("#answer-first .rs-answer").First.WaitForAsync();
        await visit.Page.WaitForFunctionAsync("() => document.querySelector('#answer-spoken').textContent !== ''");
        await visit.Page.EvaluateAsync("""
            () => {
              window.heard = [];
              const told = new Map();
              new MutationObserver(changes => {
                for (const region of new Set(changes.map(({ target }) => (target.closest ? target : target.parentElement)
                    ?.closest("[role=status], [role=alert], [aria-live=polite], [aria-live=assertive]")))) {
                  if (!region || region.id === "answer-found" || told.get(region) === region.textContent) continue;
                  told.set(region, region.textContent);
                  if (region.textContent && region.checkVisibility()) heard.push(region.textContent);
                }
              }).observe(document.body, { childList: true, subtree: true, characterData: true });
            }
            """);
        return visit;
    }

    // On the page a figure and its unit are not parted at a line's end.
    private static string Plain(string text) => text.Replace('\u00a0', ' ').Trim();

    private static Task<string[]> HeardAsync(Visit visit) => visit.Page.EvaluateAsync<string[]>("() => [...heard]");
}
