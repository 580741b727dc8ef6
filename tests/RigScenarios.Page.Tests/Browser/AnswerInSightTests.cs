using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>In every notebook the answer stands in the first screenful, and stays in sight while one reads on or changes
/// something.</summary>
[Collection(InABrowser.Name)]
public sealed class AnswerInSightTests(Chromium chromium)
{
    private static readonly string[] Notebooks =
        [.. Directory.EnumerateFiles(Path.Combine(Servers.Checkout.Root, "notebooks"), "*.ipynb")
            .Select(Path.GetFileNameWithoutExtension).OfType<string>().Order(StringComparer.Ordinal)];

    // What of the answer is in the window: "block" for all of its verdicts, "sentence", "line" for the line at the edge, or "".
    private const string Seen = """
        () => {
          const foot = getComputedStyle(document.querySelector('.strip')).position === 'fixed'
            ? document.querySelector('.strip').getBoundingClientRect().top : innerHeight;
          const within = element => {
            if (!element || element.hidden || element.getClientRects().length === 0) return false;
            const { top, bottom } = element.getBoundingClientRect(), middle = (top + bottom) / 2;
            const above = document.elementFromPoint(innerWidth / 2 + 100, middle);
            return top >= -1 && bottom <= foot + 1 && (element.contains(above) || (above?.contains(element) ?? false));
          };
          if (within(document.querySelector('.answer-line'))) return 'line';
          if (within(document.querySelector('.sight-block .version-now .rs-answer'))) return 'block';
          return within(document.querySelector('.sight-block .version-now .rs-answer p')) ? 'sentence' : '';
        }
        """;

    [Theory]
    [InlineData(1280, 800, "block", "block")]
    [InlineData(390, 844, "block sentence", "line")]
    public async Task The_answer_is_in_the_first_screenful_and_stays_in_sight(int width, int height, string first, string later)
    {
        await using var visit = await Visit.BeginAsync(chromium, width: width, height: height);
        var told = new List<string>();
        Assert.Equal(13, Notebooks.Length);
        foreach (var notebook in Notebooks)
        {
            await visit.GoAsync($"/n/{notebook}");
            await visit.Page.Locator(".version-now .rs-answer").First.WaitForAsync();
            await Expect(first, "at the head");
            // To the last chart or drawing, as far down as the page has any.
            await visit.Page.Locator(".version-now :is(.rs-chart, .rs-sheet, .rs-table)").First.WaitForAsync();
            await visit.Page.EvaluateAsync("() => [...document.querySelectorAll('.version-now :is(.rs-chart, .rs-sheet, "
                + ".rs-table)')].at(-1).scrollIntoView({ block: 'start' })");
            await Expect(later, "at the last chart");
            if (await visit.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth") is var wide && wide > width)
                told.Add($"{notebook}: {wide} wide");
            await DragAsync(visit.Page, () => Expect(later, "while a slider is dragged"));

            async Task Expect(string expected, string when)
            {
                var seen = await SeenAsync(visit.Page, expected);
                if (!expected.Split(' ').Contains(seen))
                    told.Add($"{notebook}, {when}: '{seen}' in sight");
            }
        }
        Assert.True(told.Count == 0, string.Join('\n', told));
        visit.AssertQuiet();
    }

    [Fact]
    public async Task The_line_opens_to_the_whole_answer_and_closes_again()
    {
        await using var visit = await Visit.BeginAsync(chromium, width: 390, height: 844);
        await visit.ReadAsync("01-one-build-one-day");
        await visit.Page.EvaluateAsync("() => scrollTo(0, 1500)");
        var line = visit.Page.Locator(".answer-line");
        await Assertions.Expect(line).ToContainTextAsync("No: stops at 14:31, after");
        var place = await visit.Page.EvaluateAsync<double>("() => scrollY");
        await line.ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#sight .rs-questions")).ToBeInViewportAsync();
        await Assertions.Expect(visit.Page.Locator("#sight .rs-cautions")).ToBeVisibleAsync();
        await visit.Page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(visit.Page.Locator("#sight .rs-questions")).Not.ToBeInViewportAsync();
        await Assertions.Expect(line).ToBeFocusedAsync();
        Assert.Equal(place, await visit.Page.EvaluateAsync<double>("() => scrollY"), 1);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task Enlarged_to_twice_the_size_the_controls_leave_most_of_the_window()
    {
        // 1280 x 800 at 200 %.
        await using var visit = await Visit.BeginAsync(chromium, width: 640, height: 400);
        foreach (var notebook in (string[])["05-one-kit-three-stances", "07-three-days-four-batteries"])
        {
            await visit.GoAsync($"/n/{notebook}");
            await visit.Page.Locator(".version-now .rs-answer").First.WaitForAsync();
            Assert.Equal("sentence", await SeenAsync(visit.Page, "sentence"));
            await visit.Page.EvaluateAsync("() => scrollTo(0, 1500)");
            await Assertions.Expect(visit.Page.Locator(".answer-line")).ToBeVisibleAsync();
            Assert.InRange(await CoveredAsync(), 0.05, 0.3);
            await visit.Page.Locator(".strip-fold").ClickAsync();
            await Assertions.Expect(visit.Page.Locator(".controls input").First).ToBeVisibleAsync();
            // The controls themselves less than half; with the line of the answer there is still room to see what changes.
            Assert.InRange(await visit.Page.EvaluateAsync<double>(
                "() => document.querySelector('.strip').offsetHeight / innerHeight"), 0.2, 0.499);
            Assert.InRange(await CoveredAsync(), 0.2, 0.65);
            // Whatever is in the strip can be reached.
            await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save…" }).ScrollIntoViewIfNeededAsync();
            await Assertions.Expect(visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save…" })).ToBeInViewportAsync();
        }
        visit.AssertQuiet();

        Task<double> CoveredAsync() => visit.Page.EvaluateAsync<double>(
            "() => ['.strip', '.answer-line'].reduce((sum, name) => sum + document.querySelector(name).offsetHeight, 0) "
                + "/ innerHeight");
    }

    [Fact]
    public async Task A_control_stands_on_the_files_own_value_and_says_where_it_moves_nothing()
    {
        await using var visit = await Visit.BeginAsync(chromium, ownNotebooks: false);
        await visit.ReadAsync("06-of-the-file");
        var page = visit.Page;
        var air = page.GetByLabel("Air of the day", new() { Exact = true });
        var answer = page.Locator(".version-now .rs-answer p").First;
        await Assertions.Expect(air).ToHaveValueAsync("-8");
        await Assertions.Expect(page.Locator(".of-file > span")).ToHaveTextAsync("as in the file");
        await Assertions.Expect(page.Locator(".moves-nothing:visible")).ToHaveTextAsync("It freezes anyway.");
        await air.FillAsync("5");
        await Assertions.Expect(answer).ToHaveTextAsync("The air is at 5 °C.");
        await Assertions.Expect(page.Locator(".of-file > span")).ToContainTextAsync("in the file: −8 °C");
        await Assertions.Expect(page.Locator(".moves-nothing:visible")).ToHaveCountAsync(0);
        // Another file has its own air.
        await page.GetByLabel("Kit and days").SelectOptionAsync("samples/teaching-kit.yaml");
        await Assertions.Expect(answer).ToHaveTextAsync("The air is at 21 °C.");
        await Assertions.Expect(air).ToHaveValueAsync("21");
        // What was given is let go of with a click.
        await page.GetByRole(AriaRole.Slider, new() { Name = "Air of the day, slider" }).FillAsync("30");
        await Assertions.Expect(answer).ToHaveTextAsync("The air is at 30 °C.");
        await page.WaitForFunctionAsync("() => location.hash.includes('air=30')");
        await page.Locator(".of-file-back").ClickAsync();
        await Assertions.Expect(answer).ToHaveTextAsync("The air is at 21 °C.");
        visit.AssertQuiet();
    }

    // The line comes when the browser has seen that the answer is gone.
    private static async Task<string> SeenAsync(IPage page, string expected)
    {
        var seen = "";
        for (var i = 0; i < 40 && !expected.Split(' ').Contains(seen); i++)
        {
            if (i > 0)
                await Task.Delay(50);
            seen = await page.EvaluateAsync<string>(Seen);
        }
        return seen;
    }

    private static async Task DragAsync(IPage page, Func<Task> meanwhile)
    {
        if (await page.Locator(".strip-fold").IsVisibleAsync())
            await page.Locator(".strip-fold").ClickAsync();
        var slider = page.Locator(".controls input[type=range]").First;
        if (await slider.CountAsync() == 0)
            return;
        await slider.ScrollIntoViewIfNeededAsync();
        var box = await StandingStill.BoxAsync(slider);
        var y = box.Y + (box.Height / 2);
        await page.Mouse.MoveAsync(box.X + (box.Width / 2), y);
        await page.Mouse.DownAsync();
        foreach (var part in (float[])[0.55f, 0.6f, 0.7f])
            await page.Mouse.MoveAsync(box.X + (box.Width * part), y);
        await meanwhile();
        await page.Mouse.UpAsync();
    }
}
