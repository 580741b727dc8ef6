using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>What a rig may cost, and what two rigs cost beside each other.</summary>
public abstract class OwnRigMoneyTests(Chromium chromium, PagesEnd end)
{
    [Fact]
    public async Task A_budget_asks_what_it_costs_and_the_table_has_the_same_figure()
    {
        await using var visit = await Visit.BeginAsync(chromium, height: 900, end: end);
        await visit.GoAsync("/rig?file=samples/winter-harbour.yaml&build=tripod&day=day-one");
        var line = Form.Line(visit.Page, "Cost").Locator("td").Last;
        await Form.Text(visit.Page, "budget").FillAsync("3000");
        await visit.Page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(Form.Field(visit.Page, "budget")).ToContainTextAsync("currency's three letters");
        await Form.Text(visit.Page, "budget").FillAsync("1000 EUR");
        await visit.Page.Keyboard.PressAsync("Tab");
        await Assertions.Expect(line).ToContainTextAsync("over the budget of 1,000 EUR");
        var costs = (await line.InnerTextAsync()).Split("costs ")[1].Split(',')[0..2];
        await visit.Page.Locator("#compare-more").ClickAsync();
        var row = visit.Page.Locator("#compare-table tr:has(th:text-is(\"Price\")) td");
        await Assertions.Expect(row.First).ToContainTextAsync(string.Join(',', costs).Split(" to buy")[0]);
        await Form.Field(visit.Page, "others-are").Locator("select").SelectOptionAsync("owned");
        await Assertions.Expect(line).ToContainTextAsync("all is owned");
        await Assertions.Expect(row.Last).ToContainTextAsync("nothing: all is owned");
        await Assertions.Expect(row.First).ToContainTextAsync("to buy");
        visit.AssertQuiet();
    }

    [Collection(InABrowser.Name)]
    public sealed class OnTheServer(Chromium chromium) : OwnRigMoneyTests(chromium, PagesEnd.Server);

    [Collection(InABrowser.Name)]
    public sealed class InTheFolder(Chromium chromium) : OwnRigMoneyTests(chromium, PagesEnd.Folder);
}
