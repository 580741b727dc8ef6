using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>The sheet for the day, printed from a phone: no file is saved and opened first.</summary>
[Collection(InABrowser.Name)]
public sealed partial class PrintedSheetTests(Chromium chromium)
{
    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task The_sheet_is_printed_from_the_page_and_the_page_comes_back(string paper)
    {
        await using var visit = await Visit.BeginAsync(chromium, width: 390, height: 844, touch: true, night: true);
        await visit.GoAsync("/rig?file=samples/winter-harbour.yaml&build=tripod&day=day-one");
        await visit.Page.Locator("#answer-first .rs-answer").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        var sentence = await visit.Page.Locator("#answer-first .rs-answer > p").First.TextContentAsync();
        await visit.Page.EvaluateAsync("() => { window.prints = 0; window.print = () => { window.prints++; }; }");
        var choice = visit.Page.Locator("details.take-along");
        await choice.Locator("summary").ClickAsync();
        await choice.GetByRole(AriaRole.Button, new() { Name = "Print: For the day", Exact = true }).TapAsync();
        await visit.Page.WaitForFunctionAsync("() => window.prints === 1");
        // On the screen nothing changed; on paper there is the sheet and nothing else, on one page.
        await Assertions.Expect(visit.Page.Locator("#rig")).ToBeVisibleAsync();
        var printed = System.Text.Encoding.Latin1.GetString(await visit.Page.PdfAsync(new() { Format = paper }));
        Assert.Single(OfAPage().Matches(printed));
        await visit.Page.EmulateMediaAsync(new() { Media = Media.Print });
        await Assertions.Expect(visit.Page.Locator("#rig")).ToBeHiddenAsync();
        var onPaper = await visit.Page.EvaluateAsync<string>(
            "() => document.querySelector('.printed-sheet').shadowRoot.textContent");
        Assert.Contains(Plain(sentence!), Plain(onPaper), StringComparison.Ordinal);
        Assert.Equal("rgb(0, 0, 0)", await visit.Page.EvaluateAsync<string>(
            "() => getComputedStyle(document.querySelector('.printed-sheet').shadowRoot.querySelector('h1')).color"));
        await visit.Page.EmulateMediaAsync(new() { Media = Media.Null });
        // The next doing makes the page itself printable again.
        await choice.Locator("summary").ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".printed-sheet")).ToHaveCountAsync(0);
        await visit.Page.EmulateMediaAsync(new() { Media = Media.Print });
        await Assertions.Expect(visit.Page.Locator("#rig")).ToBeVisibleAsync();
        visit.AssertQuiet();
    }

    private static string Plain(string text) => Spaces().Replace(text, " ").Trim();

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Spaces();

    [GeneratedRegex(@"/Type /Page\b(?!s)", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex OfAPage();
}
