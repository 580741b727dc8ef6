using System.Text.RegularExpressions;
using Microsoft.Playwright;
using RigScenarios.Answers.Exercises;
using RigScenarios.Charts.TakeAlong;
using RigScenarios.Files;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>The sheets of an exercise as <c>exercise --sheet</c> and <c>--key</c> write them, printed.</summary>
[Collection(InABrowser.Name)]
public sealed partial class ExerciseSheetTests(Chromium chromium)
{
    [Theory]
    [InlineData("pottery-class", 2, 3)]
    [InlineData("pottery-class", 3, 1)]
    [InlineData("market-hall", 4, 3)]
    [InlineData("market-hall", 5, 2)]
    public async Task Sheet_and_key_are_one_printed_page_of_A4_and_of_Letter_with_nothing_cut_off(string demo, int seed,
        int causes)
    {
        var exercise = Exercise.Draw(ScenarioFile.Read(Path.Combine(Checkout.Data, "scenarios", $"{demo}.yaml")), "tripod", [],
            seed, causes, cancellation: TestContext.Current.CancellationToken);
        var page = await chromium.Browser.NewPageAsync();
        foreach (var (sheet, last) in new[] { (ExercisePages.Student(exercise), "Name:"),
            (ExercisePages.Teacher(exercise), "Predicted, not measured.") })
        {
            await page.SetContentAsync(SheetPage.Of(sheet, whole: true));
            await page.EmulateMediaAsync(new() { Media = Media.Print });
            foreach (var paper in (string[])["A4", "Letter"])
            {
                var printed = System.Text.Encoding.Latin1.GetString(await page.PdfAsync(new() { Format = paper }));
                Assert.Equal((last, paper, 1), (last, paper, OfAPage().Count(printed)));
            }
            Assert.Equal("", await page.EvaluateAsync<string>(CutOff));
            await Assertions.Expect(page.GetByText(last).Last).ToBeVisibleAsync();
        }
        await page.CloseAsync();
    }

    // Words that their cell or the page cuts off.
    private const string CutOff = """
        () => [...document.querySelectorAll("td, th, li, p")].filter(box => box.scrollWidth > box.clientWidth + 1)
          .map(box => box.textContent).join("; ")
        """;

    [GeneratedRegex(@"/Type /Page\b(?!s)", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex OfAPage();
}
