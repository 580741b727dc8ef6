using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>What nobody means, and what people write: both in the form of one's own rig.</summary>
public abstract class OwnRigOddTests(Chromium chromium, PagesEnd end)
{
    [Theory]
    [InlineData("0")]
    [InlineData("-5 min")]
    [InlineData("99,999,999 h")]
    [InlineData("99999999 h")]
    [InlineData("soon")]
    public async Task A_length_that_no_block_can_have_is_marked_and_stops_nothing(string length)
    {
        await using var visit = await BeginAsync();
        await visit.Page.Locator("#block-length").FillAsync(length);
        await visit.Page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(visit.Page.Locator(".field:has(#block-length) .problem")).ToBeVisibleAsync();
        await Assertions.Expect(visit.Page.Locator("#block-length")).ToHaveAttributeAsync("aria-invalid", "true");
        await Assertions.Expect(visit.Page.Locator("#timeline .strip-wrong")).ToHaveCountAsync(1);
        await Assertions.Expect(visit.Page.Locator("#day-sum")).ToContainTextAsync("can't be read");
        Assert.True(await visit.Page.Locator("#timeline .strip-hours span").CountAsync() < 40);
        await visit.Page.Locator("#block-length").FillAsync("45 min");
        await Assertions.Expect(visit.Page.Locator(".field:has(#block-length) .problem")).ToHaveCountAsync(0);
        visit.AssertQuiet();
    }

    [Theory]
    [InlineData("ambient", "-500 °C")]
    [InlineData("ambient", "cold")]
    [InlineData("charge", "140 %")]
    [InlineData("capacity-left", "-3 %")]
    [InlineData("age-shoots", "80")]
    [InlineData("battery-count", "many")]
    [InlineData("starts", "25:70")]
    public async Task An_impossible_value_is_marked_at_its_field(string field, string text)
    {
        await using var visit = await BeginAsync();
        await Form.UnfoldAsync(visit.Page);
        var input = Form.Text(visit.Page, field);
        var before = await input.InputValueAsync();
        await input.FillAsync(text);
        await Assertions.Expect(Form.Field(visit.Page, field).Locator(".problem").First).ToBeVisibleAsync();
        await Assertions.Expect(input).ToHaveAttributeAsync("aria-invalid", "true");
        await input.FillAsync(before.Length > 0 ? before : "2");
        await Assertions.Expect(Form.Field(visit.Page, field).Locator(".problem")).ToHaveCountAsync(0);
        visit.AssertQuiet();
    }

    [Theory]
    [InlineData("-5 C")]
    [InlineData("23F")]
    [InlineData("－５ °C")]
    public async Task Temperatures_as_people_write_them_give_an_answer(string text)
    {
        await using var visit = await BeginAsync();
        var answer = visit.Page.Locator("#answer-first .rs-answer p").First;
        await visit.Page.Locator("#ambient").FillAsync("-29 °C");
        await Assertions.Expect(answer).ToBeVisibleAsync();
        var before = await answer.InnerTextAsync();
        await visit.Page.Locator("#ambient").FillAsync(text);
        await visit.Page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(answer).Not.ToHaveTextAsync(before);
        await Assertions.Expect(Form.Field(visit.Page, "ambient").Locator(".problem")).ToHaveCountAsync(0);
        visit.AssertQuiet();
    }

    private async Task<Visit> BeginAsync()
    {
        var visit = await Visit.BeginAsync(chromium, height: 900, end: end);
        await visit.GoAsync("/rig?file=samples/winter-harbour.yaml&build=tripod&day=day-one");
        await visit.Page.Locator("#answer-first .rs-answer").First.WaitForAsync();
        return visit;
    }

    [Collection(InABrowser.Name)]
    public sealed class OnTheServer(Chromium chromium) : OwnRigOddTests(chromium, PagesEnd.Server);

    [Collection(InABrowser.Name)]
    public sealed class InTheFolder(Chromium chromium) : OwnRigOddTests(chromium, PagesEnd.Folder);
}
