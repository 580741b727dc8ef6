using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>Names in any script, saved and opened again.</summary>
public abstract class OwnRigNamesTests(Chromium chromium, PagesEnd end)
{
    [Fact]
    public async Task Names_stay_as_they_were_written()
    {
        const string name = "夜の撮影 🎬 Größe №7";
        await using var visit = await Visit.BeginAsync(chromium, end: end, height: 900);
        await visit.GoAsync("/rig?file=samples/winter-harbour.yaml&build=tripod&day=day-one");
        await visit.Page.Locator("#answer-first .rs-answer").First.WaitForAsync();
        await visit.Page.Locator("#title").FillAsync(name);
        await Form.SaveAsync(visit.Page, "names.yaml");
        await visit.GoAsync("/rig?file=own/names.yaml");
        await Assertions.Expect(visit.Page.Locator("#title")).ToHaveValueAsync(name);
        visit.AssertQuiet();
    }

    [Collection(InABrowser.Name)]
    public sealed class OnTheServer(Chromium chromium) : OwnRigNamesTests(chromium, PagesEnd.Server);

    [Collection(InABrowser.Name)]
    public sealed class InTheFolder(Chromium chromium) : OwnRigNamesTests(chromium, PagesEnd.Folder);
}
