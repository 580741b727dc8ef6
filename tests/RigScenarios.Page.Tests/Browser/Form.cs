using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>The form of one's own rig as its tests use it.</summary>
internal static class Form
{
    /// <summary>A field by its key.</summary>
    public static ILocator Field(IPage page, string key) => page.Locator($"[data-field='{key}']");

    /// <summary>The text of a field by its key.</summary>
    public static ILocator Text(IPage page, string key) => Field(page, key).Locator("input[type=text]");

    /// <summary>Opens whatever of the form is folded.</summary>
    public static Task UnfoldAsync(IPage page) => page.EvaluateAsync(
        "() => document.querySelectorAll('#rig details.more').forEach((fold) => { fold.open = true; })");

    /// <summary>A line of the answer: one question with its verdict.</summary>
    public static ILocator Line(IPage page, string question) =>
        page.Locator($"#answer-first .rs-questions tr:has(th:text-is(\"{question}\"))");

    /// <summary>Chooses the first part of the list that the words find, in the first row of a question.</summary>
    public static async Task ChooseAsync(IPage page, string question, string words)
    {
        var field = page.Locator($"#question-{question} [role=combobox]").First;
        await field.ClickAsync();
        await field.FillAsync(words);
        await page.Locator($"#question-{question} [role=listbox]").First.GetByRole(AriaRole.Option).First.ClickAsync();
        await Assertions.Expect(page.Locator($"#question-{question} .thing:not(.thing-open)").First).ToBeVisibleAsync();
    }

    /// <summary>Says that one's own thing is not listed; its figures can be given then.</summary>
    public static async Task<ILocator> NotListedAsync(IPage page, string question)
    {
        await page.Locator($"#question-{question} .thing-own").First.ClickAsync();
        var own = page.Locator($"#question-{question} .own").First;
        await own.WaitForAsync();
        return own;
    }

    /// <summary>Waits until the answer is the one to all that was entered, with what would make it work below it: nothing on the
    /// page is put elsewhere after that.</summary>
    public static Task SettledAsync(IPage page) => page.WaitForFunctionAsync(
        "() => document.querySelector('#answer').getAttribute('aria-busy') === null "
            + "&& document.querySelector('#answer-work-search').getClientRects().length === 0");

    /// <summary>Saves under a name.</summary>
    public static async Task SaveAsync(IPage page, string? name = null)
    {
        if (name is not null)
            await page.Locator("#save-name").FillAsync(name);
        await page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Assertions.Expect(page.Locator("#save-told")).ToContainTextAsync($"Saved as {name}");
    }
}
