using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>The first visit says in one sentence what this is, that nothing is sent away, and what a margin is worth.</summary>
[Collection(InABrowser.Name)]
public sealed class FirstVisitTests(Chromium chromium)
{
    [Theory]
    [InlineData("/")]
    [InlineData("/rig")]
    public async Task It_is_said_once_and_kept_as_seen(string page)
    {
        await using var visit = await Visit.BeginAsync(chromium, width: 390, height: 844, touch: true);
        await visit.GoAsync(page);
        var said = visit.Page.Locator("#first-visit");
        await said.WaitForAsync();
        // This server answers the machine that it runs on.
        await Assertions.Expect(said).ToContainTextAsync("everything stays on this machine");
        await Assertions.Expect(said).ToContainTextAsync("the makers' limits go first");
        Assert.DoesNotMatch("(?i)\\bsafe\\b", await said.InnerTextAsync());
        // One sentence: one full stop, at its end.
        Assert.Single((await said.Locator("p").First.InnerTextAsync()).Trim(), letter => letter == '.');
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Understood" }).TapAsync();
        await Assertions.Expect(said).ToBeHiddenAsync();
        // The focus goes on from the page's heading and is not lost.
        Assert.Equal("H1", await visit.Page.EvaluateAsync<string>("() => document.activeElement.tagName"));
        foreach (var other in (string[])["/", "/rig"])
        {
            await visit.GoAsync(other);
            await visit.Page.Locator("h1").First.WaitForAsync();
            await visit.Page.WaitForTimeoutAsync(500);
            await Assertions.Expect(said).ToBeHiddenAsync();
        }
        visit.AssertQuiet();
    }
}
