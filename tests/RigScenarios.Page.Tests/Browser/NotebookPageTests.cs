using Microsoft.Playwright;
using RigScenarios.Files;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>A notebook's page as a reader uses it.</summary>
[Collection(InABrowser.Name)]
public sealed class NotebookPageTests(Chromium chromium)
{
    private const string Colder = "Colder than the file says, the whole course of the day";
    private const string ColderSlider = $"{Colder}, slider";

    private const string First = "01-one-build-one-day";

    [Fact]
    public async Task A_slider_moves_the_answer_and_the_chart()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        await visit.ReadAsync(First);
        var (answer, line) = (await visit.AnswerAsync(), await LineAsync(visit.Page));
        await visit.Page.GetByRole(AriaRole.Slider, new() { Name = ColderSlider }).FillAsync("12");
        await Assertions.Expect(visit.Page.Locator(".version-now .rs-answer p").First).Not.ToHaveTextAsync(answer);
        await Assertions.Expect(visit.Page.Locator("figure .rs-figure-title").First).ToContainTextAsync("−20");
        await visit.Page.WaitForFunctionAsync($"before => ({Line})(document.querySelector('.version-now .rs-chart')) !== before",
            line);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task The_old_picture_stays_until_the_new_one_is_there()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        await visit.ReadAsync(First);
        // What is out of sight is drawn last.
        await visit.Page.Locator(".version-now .rs-chart .main-svg").First.WaitForAsync();
        // Were a chart ever emptied for a moment, the observer would see it.
        await visit.Page.EvaluateAsync("""
            () => {
              window.seenEmpty = 0;
              new MutationObserver(() => {
                if (!document.querySelector('.version-now .rs-chart .main-svg')
                  || !document.querySelector('.version-now .rs-answer p')?.textContent) window.seenEmpty++;
              }).observe(document.getElementById('article'), { childList: true, subtree: true });
            }
            """);
        var slider = visit.Page.GetByRole(AriaRole.Slider, new() { Name = ColderSlider });
        foreach (var value in (string[])["3", "9", "-4", "15", "0", "7"])
            await slider.FillAsync(value);
        await Visit.SettledAsync(visit.Page);
        Assert.Equal(0, await visit.Page.EvaluateAsync<int>("() => window.seenEmpty"));
        visit.AssertQuiet();
    }

    [Fact]
    public async Task The_address_carries_the_state_through_a_reload()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        await visit.ReadAsync(First);
        await visit.Page.GetByLabel("Build of the camera").SelectOptionAsync("shoulder");
        await visit.Page.GetByLabel(Colder, new() { Exact = true }).FillAsync("7.5");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Pin this version" }).ClickAsync();
        await visit.Page.GetByLabel(Colder, new() { Exact = true }).FillAsync("-3");
        await visit.Page.WaitForFunctionAsync("() => location.hash.includes('degreesColder=-3') && "
            + "location.hash.includes('pinned?')");
        await Visit.SettledAsync(visit.Page);
        var shown = await visit.Page.Locator(".rs-answer p").AllInnerTextsAsync();
        await visit.Page.ReloadAsync();
        await visit.Page.Locator(".version-pinned .rs-answer").First.WaitForAsync();
        await Visit.SettledAsync(visit.Page);
        await Assertions.Expect(visit.Page.GetByLabel(Colder, new() { Exact = true }))
            .ToHaveValueAsync("-3");
        Assert.Equal(shown, await visit.Page.Locator(".rs-answer p").AllInnerTextsAsync());
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_pinned_version_stays_beside_the_present_one_and_can_be_swapped_and_let_go()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        await visit.ReadAsync(First);
        var first = await visit.AnswerAsync();
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Pin this version" }).ClickAsync();
        await visit.Page.GetByLabel(Colder, new() { Exact = true }).FillAsync("15");
        var (pinned, now) = (visit.Page.Locator(".version-pinned .rs-answer p").First,
            visit.Page.Locator(".version-now .rs-answer p").First);
        await Assertions.Expect(now).Not.ToHaveTextAsync(first);
        await Assertions.Expect(pinned).ToHaveTextAsync(first);
        var (left, right) = (await pinned.BoundingBoxAsync(), await now.BoundingBoxAsync());
        Assert.True(left!.X + left.Width <= right!.X, "The two versions do not stand side by side.");
        await Assertions.Expect(visit.Page.Locator(".pinned-words")).ToContainTextAsync($"{Colder}: pinned 0");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Swap" }).ClickAsync();
        await Assertions.Expect(now).ToHaveTextAsync(first);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Unpin" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".version-pinned:visible")).ToHaveCountAsync(0);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_long_run_shows_its_progress_and_can_be_stopped_and_overtaken()
    {
        await using var visit = await Visit.BeginAsync(chromium, ownNotebooks: false);
        await visit.ReadAsync("02-slow");
        var seconds = visit.Page.GetByLabel("How long it works", new() { Exact = true });
        await seconds.FillAsync("300");
        await Assertions.Expect(visit.Page.Locator(".strip .state")).ToContainTextAsync("working");
        await Assertions.Expect(visit.Page.Locator(".version-now .rs-answer p")).ToHaveTextAsync("Worked 0 s.");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Stop" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator(".strip .state")).ToContainTextAsync("Stopped");
        await seconds.FillAsync("200");
        await Assertions.Expect(visit.Page.Locator(".strip .state")).ToContainTextAsync("working");
        await seconds.FillAsync("0.1");
        await Assertions.Expect(visit.Page.Locator(".version-now .rs-answer p")).ToHaveTextAsync("Worked 0.1 s.");
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_wrong_value_and_a_failing_cell_are_told_in_words_where_they_are()
    {
        await using var visit = await Visit.BeginAsync(chromium, ownNotebooks: false);
        await visit.ReadAsync("01-quick");
        // Told once the reader has left the field: half of a number is no mistake.
        await visit.Page.GetByLabel("How much", new() { Exact = true }).FillAsync("99");
        await visit.Page.GetByLabel("How much", new() { Exact = true }).PressAsync("Tab");
        await Assertions.Expect(visit.Page.Locator(".control .problem:visible")).ToContainTextAsync("outside 0 to 10");
        await visit.GoAsync("/n/03-fails");
        await Assertions.Expect(visit.Page.Locator(".version-now .problem:visible"))
            .ToContainTextAsync("The lens is <b>missing</b>.");
        await visit.Page.GetByLabel("Whether it fails", new() { Exact = true }).FillAsync("0");
        await Assertions.Expect(visit.Page.Locator(".version-now .rs-answer p")).ToHaveTextAsync("All is well.");
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_broken_scenario_is_told_in_words_and_another_choice_goes_on()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        await File.WriteAllTextAsync(Path.Combine(visit.Server.Rigs, "broken.yaml"),
            "rigscenarios: scenario 1\ntitle: Broken\nkit: {}\n", TestContext.Current.CancellationToken);
        await visit.ReadAsync(First);
        var choice = visit.Page.GetByLabel("Kit, builds and days");
        await choice.SelectOptionAsync("own/broken.yaml");
        await Assertions.Expect(visit.Page.Locator(".control .problem:visible")).ToContainTextAsync("broken.yaml");
        await choice.SelectOptionAsync("samples/teaching-kit.yaml");
        await Assertions.Expect(visit.Page.Locator("figure .rs-figure-title").First).ToContainTextAsync("Workshop day");
        await Assertions.Expect(visit.Page.GetByLabel("Build of the camera")).ToHaveValueAsync("camera-only");
        visit.AssertQuiet();
    }

    [Fact]
    public async Task What_is_shown_can_be_kept_as_page_picture_numbers_and_scenario()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        await visit.ReadAsync(First);
        await visit.Page.GetByLabel(Colder, new() { Exact = true }).FillAsync("4");
        await Assertions.Expect(visit.Page.Locator("figure .rs-figure-title").First).ToContainTextAsync("−12");
        await Visit.SettledAsync(visit.Page);

        var tools = visit.Page.Locator("figure .tools").First;
        Assert.StartsWith("<svg", (await DownloadAsync(visit.Page, tools.GetByRole(AriaRole.Button, new() { Name = "SVG" })))
            .TrimStart(), StringComparison.Ordinal);
        Assert.Contains("PNG", await DownloadAsync(visit.Page, tools.GetByRole(AriaRole.Button, new() { Name = "PNG" })),
            StringComparison.Ordinal);
        var csv = await DownloadAsync(visit.Page, tools.GetByRole(AriaRole.Button, new() { Name = "CSV" }));
        Assert.True(csv.Split("\r\n").Length > 20, csv);

        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save…", Exact = true }).ClickAsync();
        var page = await DownloadAsync(visit.Page, visit.Page.GetByRole(AriaRole.Button, new() { Name = "HTML page" }));
        Assert.Contains(await visit.AnswerAsync(), System.Net.WebUtility.HtmlDecode(page), StringComparison.Ordinal);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Close" }).ClickAsync();

        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save as a scenario file…" }).First.ClickAsync();
        await visit.Page.GetByLabel("Name of the file").FillAsync("colder");
        await visit.Page.GetByRole(AriaRole.Dialog)
            .GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Assertions.Expect(visit.Page.GetByRole(AriaRole.Dialog)).ToContainTextAsync("colder.yaml");
        Assert.Equal(-12,
            ScenarioFile.Read(Path.Combine(visit.Server.Rigs, "colder.yaml")).Days["day-one"].Ambient!.Value.DegreesCelsius, 6);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task Two_pages_at_once_know_nothing_of_each_other()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        await visit.ReadAsync(First);
        var other = await visit.OpenPageAsync();
        await other.GotoAsync(visit.Server.At($"/n/{First}#degreesColder=18").ToString());
        await other.Locator(".version-now .rs-answer").First.WaitForAsync();
        await Visit.SettledAsync(other);
        var (here, there) = (await visit.AnswerAsync(), await other.Locator(".version-now .rs-answer p").First.InnerTextAsync());
        Assert.NotEqual(here, there);
        for (var i = 0; i < 5; i++)
        {
            await visit.Page.GetByRole(AriaRole.Slider, new() { Name = ColderSlider })
                .FillAsync($"{i}");
            await other.GetByRole(AriaRole.Slider, new() { Name = ColderSlider })
                .FillAsync($"{18 - i}");
        }
        await visit.Page.GetByRole(AriaRole.Slider, new() { Name = ColderSlider }).FillAsync("0");
        await other.GetByRole(AriaRole.Slider, new() { Name = ColderSlider }).FillAsync("18");
        await Assertions.Expect(visit.Page.Locator(".version-now .rs-answer p").First).ToHaveTextAsync(here);
        await Assertions.Expect(other.Locator(".version-now .rs-answer p").First).ToHaveTextAsync(there);
        visit.AssertQuiet();
    }

    [Theory]
    [InlineData(390)]
    [InlineData(1280)]
    [InlineData(2560)]
    public async Task Nothing_is_wider_than_the_window_and_no_text_of_a_chart_lies_over_another(int width)
    {
        await using var visit = await Visit.BeginAsync(chromium, width: width);
        foreach (var notebook in (string[])[First, "02-battery-size-and-load-mix", "03-the-cold"])
        {
            await visit.ReadAsync(notebook);
            await visit.Page.EvaluateAsync("async () => { for (let y = 0; y < document.body.scrollHeight; y += 500) { "
                + "scrollTo(0, y); await new Promise(done => setTimeout(done, 60)); } }");
            await visit.Page.WaitForFunctionAsync("() => [...document.querySelectorAll('.version-now .rs-chart')].every(c => "
                + "c.querySelector('.main-svg'))");
            Assert.Equal("", await visit.Page.EvaluateAsync<string>(Overlaps));
        }
        visit.AssertQuiet();
    }

    // The numbers of cells of a heat map may be crossed by its dashed line, but by no other text.
    private const string Overlaps = """
        () => {
          const told = [];
          if (document.documentElement.scrollWidth > innerWidth + 1)
            told.push(`the page is ${document.documentElement.scrollWidth} wide`);
          for (const chart of document.querySelectorAll('.version-now .rs-chart')) {
            const texts = [...chart.querySelectorAll('text')]
              .filter(t => t.textContent.trim() !== '' && t.getBoundingClientRect().width > 0);
            texts.forEach((a, i) => texts.slice(i + 1).forEach(b => {
              const p = a.getBoundingClientRect(), q = b.getBoundingClientRect();
              if (Math.min(p.right, q.right) - Math.max(p.left, q.left) > 2
                && Math.min(p.bottom, q.bottom) - Math.max(p.top, q.top) > 2) told.push(`${a.textContent} / ${b.textContent}`);
            }));
          }
          return told.join('; ');
        }
        """;

    // The curves as drawn.
    private const string Line =
        "chart => [...chart.querySelectorAll('.scatterlayer path.js-line')].map(path => path.getAttribute('d')).join(' ')";

    private static Task<string> LineAsync(IPage page) => page.Locator(".version-now .rs-chart").First.EvaluateAsync<string>(Line);

    private static async Task<string> DownloadAsync(IPage page, ILocator button)
    {
        var download = await page.RunAndWaitForDownloadAsync(() => button.ClickAsync());
        return await File.ReadAllTextAsync(await download.PathAsync());
    }
}
