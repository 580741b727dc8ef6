using System.Text.RegularExpressions;
using Microsoft.Playwright;
using RigScenarios.Answers;
using RigScenarios.Answers.TakeAlong;
using RigScenarios.Charts.TakeAlong;
using RigScenarios.Files;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>The sheet to take along, printed and out of the pages.</summary>
[Collection(InABrowser.Name)]
public sealed partial class TakeAlongTests(Chromium chromium)
{
    public static TheoryData<string> Demos => ["winter-harbour", "market-hall", "island-crossing", "night-dolly", "river-ferry",
        "teaching-kit", "pottery-class"];

    [Theory]
    [MemberData(nameof(Demos))]
    public async Task Every_sheet_of_every_build_is_one_printed_page_of_A4_and_of_Letter(string demo)
    {
        var scenario = ScenarioFile.Read(Path.Combine(Checkout.Data, "scenarios", $"{demo}.yaml"));
        var page = await chromium.Browser.NewPageAsync();
        foreach (var build in scenario.Builds.Keys)
        {
            var answer = RigAnswer.Of(scenario, build, [], AnswerOptions.EndOnly, null,
                TestContext.Current.CancellationToken);
            foreach (var kind in Enum.GetValues<SheetKind>())
            {
                await page.SetContentAsync(SheetPage.Of(TakeAlongSheets.Of(answer, kind)));
                foreach (var paper in (string[])["A4", "Letter"])
                    Assert.Equal((demo, build, kind, paper, 1), (demo, build, kind, paper, await PagesAsync(page, paper)));
                Assert.Equal("", await page.EvaluateAsync<string>(CutOff));
            }
        }
        await page.CloseAsync();
    }

    [Theory]
    [InlineData("night-dolly", "thin-lead")]
    [InlineData("winter-harbour", "tripod")]
    [InlineData("teaching-kit", "full-rig")]
    public async Task A_sheet_for_one_paper_is_one_page_of_it(string demo, string build)
    {
        var answer = RigAnswer.Of(ScenarioFile.Read(Path.Combine(Checkout.Data, "scenarios", $"{demo}.yaml")), build, [],
            AnswerOptions.EndOnly, null, TestContext.Current.CancellationToken);
        var page = await chromium.Browser.NewPageAsync();
        foreach (var kind in (SheetKind[])[SheetKind.Build, SheetKind.Shopping, SheetKind.Day])
        {
            // Nothing else says which paper it is: the page itself does, with its size in points (ISO 216; 8.5 in by 11 in).
            foreach (var (paper, size) in new[] { (SheetPaper.A4, "595 842"), (SheetPaper.Letter, "612 792") })
            {
                await page.SetContentAsync(SheetPage.Of(TakeAlongSheets.Of(answer, kind), paper: paper));
                var printed = System.Text.Encoding.Latin1.GetString(await page.PdfAsync(new() { PreferCSSPageSize = true }));
                Assert.Equal((kind, paper, 1), (kind, paper, OfAPage().Count(printed)));
                Assert.Equal(size, string.Join(' ', Box().Match(printed).Groups["size"].Value.Split(' ')
                    .Select(side => $"{double.Parse(side, System.Globalization.CultureInfo.InvariantCulture):0}")));
                Assert.Equal("", await page.EvaluateAsync<string>(CutOff));
            }
        }
        await page.CloseAsync();
    }

    [Fact]
    public async Task A_second_page_would_be_seen()
    {
        var page = await chromium.Browser.NewPageAsync();
        await page.SetContentAsync("<p style=\"height:300mm\">long</p>");
        Assert.Equal(2, await PagesAsync(page, "A4"));
        await page.CloseAsync();
    }

    [Fact]
    public async Task A_notebook_gives_the_sheet_of_the_answer_that_it_shows()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        await visit.ReadAsync("00-will-it-work");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save…", Exact = true }).ClickAsync();
        var sheet = await SheetAsync(visit.Page, "For the day");
        Assert.Contains($"<span>{Plain(await visit.AnswerAsync())}</span>", Plain(sheet), StringComparison.Ordinal);
        var blanks = await SheetAsync(visit.Page, "For a class: with blanks");
        Assert.DoesNotContain(Plain(await visit.AnswerAsync()), Plain(blanks), StringComparison.Ordinal);
        visit.AssertQuiet();
    }

    internal static async Task<string> SheetAsync(IPage page, string which)
    {
        var choice = page.Locator("details.take-along");
        if (await choice.GetAttributeAsync("open") is null)
            await choice.Locator("summary").ClickAsync();
        var download = await page.RunAndWaitForDownloadAsync(() =>
            choice.GetByRole(AriaRole.Button, new() { Name = which, Exact = true }).ClickAsync());
        return await File.ReadAllTextAsync(await download.PathAsync());
    }

    internal static string Plain(string html) => System.Net.WebUtility.HtmlDecode(html).Replace('\u00a0', ' ');

    private static async Task<int> PagesAsync(IPage page, string paper) =>
        OfAPage().Count(System.Text.Encoding.Latin1.GetString(await page.PdfAsync(new() { Format = paper })));

    // Words that their cell or the page cuts off.
    private const string CutOff = """
        () => [...document.querySelectorAll("td, th, li, p")].filter(box => box.scrollWidth > box.clientWidth + 1)
          .map(box => box.textContent).join("; ")
        """;

    [GeneratedRegex(@"/MediaBox \[0 0 (?<size>[\d.]+ [\d.]+)\]", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Box();

    [GeneratedRegex(@"/Type /Page\b(?!s)", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex OfAPage();
}
