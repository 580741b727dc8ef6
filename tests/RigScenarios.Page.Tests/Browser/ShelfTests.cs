using Microsoft.Playwright;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Browser;

[Collection(InABrowser.Name)]
public sealed class ShelfTests(Chromium chromium)
{
    [Fact]
    public async Task One_s_own_rig_comes_first_then_the_notebooks_with_a_sentence_and_a_picture_each()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        await Assertions.Expect(visit.Page.GetByRole(AriaRole.Heading, new() { Level = 2 }).First)
            .ToHaveTextAsync("Start with your own rig");
        var notebooks = visit.Page.Locator("#notebook-list > li");
        await Assertions.Expect(notebooks)
            .ToHaveCountAsync(Directory.GetFiles(Path.Combine(Checkout.Root, "notebooks"), "*.ipynb").Length);
        foreach (var notebook in await notebooks.AllAsync())
        {
            Assert.NotEqual("", (await notebook.Locator("p").InnerTextAsync()).Trim());
            await notebook.ScrollIntoViewIfNeededAsync();
            await visit.Page.WaitForFunctionAsync("img => img.complete && img.naturalWidth > 0",
                await notebook.Locator("img").ElementHandleAsync());
        }
        Assert.DoesNotContain("token", visit.Page.Url, StringComparison.Ordinal);
        await notebooks.First.GetByRole(AriaRole.Link).ClickAsync();
        await visit.Page.Locator(".version-now .rs-answer").First.WaitForAsync();
        visit.AssertQuiet();
    }

    [Fact]
    public async Task Files_of_one_s_own_stand_on_it_also_broken_ones()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        await File.WriteAllTextAsync(Path.Combine(visit.Server.Rigs, "mine.yaml"),
            "rigscenarios: scenario 1\ntitle: <b>Mine</b>\n", TestContext.Current.CancellationToken);
        await visit.GoAsync("/");
        var row = visit.Page.Locator("#own-list > li");
        await Assertions.Expect(row).ToHaveCountAsync(1);
        await Assertions.Expect(row).ToContainTextAsync("mine.yaml");
        await Assertions.Expect(row.Locator(".problem")).ToContainTextAsync("cannot be read yet");
        visit.AssertQuiet();
    }
}
