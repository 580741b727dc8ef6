namespace RigScenarios.Page.Tests.Browser;

/// <summary>The sheet to take along, out of the form of one's own rig.</summary>
public abstract class OwnRigSheetTests(Chromium chromium, PagesEnd end)
{
    [Fact]
    public async Task The_form_gives_the_sheet_of_the_answer_that_it_shows()
    {
        await using var visit = await Visit.BeginAsync(chromium, end: end);
        await visit.GoAsync("/rig?file=samples/night-dolly.yaml");
        var first = visit.Page.Locator("#answer-first .rs-answer p").First;
        await first.WaitForAsync();
        var sheet = await TakeAlongTests.SheetAsync(visit.Page, "For the day");
        Assert.Contains($"<span>{TakeAlongTests.Plain(await first.InnerTextAsync())}</span>", TakeAlongTests.Plain(sheet),
            StringComparison.Ordinal);
        visit.AssertQuiet();
    }

    [Collection(InABrowser.Name)]
    public sealed class OnTheServer(Chromium chromium) : OwnRigSheetTests(chromium, PagesEnd.Server);

    [Collection(InABrowser.Name)]
    public sealed class InTheFolder(Chromium chromium) : OwnRigSheetTests(chromium, PagesEnd.Folder);
}
