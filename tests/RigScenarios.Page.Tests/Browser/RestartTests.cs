using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>The program goes away under an open page, and comes back.</summary>
[Collection(InABrowser.Name)]
public sealed class RestartTests(Chromium chromium)
{
    [Fact]
    public async Task What_was_saved_and_what_was_typed_outlive_the_program()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        await visit.GoAsync("/rig?file=samples/winter-harbour.yaml");
        await visit.Page.Locator("#answer-first .rs-answer").First.WaitForAsync();
        await visit.Page.Locator("#save-name").FillAsync("kept.yaml");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#save-told")).ToContainTextAsync("Saved as kept.yaml");
        var saved = await File.ReadAllTextAsync(Path.Combine(visit.Server.Rigs, "kept.yaml"),
            TestContext.Current.CancellationToken);

        visit.ExpectsTrouble = true;
        await visit.Server.StopAsync();
        await visit.Page.Locator("#ambient").FillAsync("-11 °C");
        await Assertions.Expect(visit.Page.Locator("#answer-away")).ToBeVisibleAsync();
        Assert.Equal(saved, await File.ReadAllTextAsync(Path.Combine(visit.Server.Rigs, "kept.yaml"),
            TestContext.Current.CancellationToken));

        await visit.Server.StartAgainAsync();
        await visit.Page.GotoAsync(visit.Server.Address.ToString());
        await visit.GoAsync("/rig?file=own/kept.yaml");
        await visit.Page.Locator("#answer-first .rs-answer").First.WaitForAsync();
        await Assertions.Expect(visit.Page.Locator("#ambient")).ToHaveValueAsync("-11 °C");
    }

    [Fact]
    public async Task A_notebook_says_that_the_program_has_gone_and_what_to_do()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        await visit.ReadAsync("01-one-build-one-day");
        var answer = await visit.AnswerAsync();
        visit.ExpectsTrouble = true;
        await visit.Server.StopAsync();
        await Assertions.Expect(visit.Page.Locator(".strip .problem").First).ToContainTextAsync("rigscenarios open");
        Assert.Equal(answer, await visit.AnswerAsync());
    }
}
