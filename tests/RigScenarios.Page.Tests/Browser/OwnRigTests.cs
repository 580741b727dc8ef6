using Microsoft.Playwright;
using RigScenarios.Answers;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>From nothing to a saved rig in the form, and from a file through the form back to the file.</summary>
public abstract class OwnRigTests(Chromium chromium, PagesEnd end)
{
    private Chromium Machine { get; } = chromium;

    [Fact]
    public async Task A_rig_made_in_the_form_is_saved_and_answers_the_same_without_the_page()
    {
        await using var visit = await Visit.BeginAsync(Machine, end: end);
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Start with your own rig" }).ClickAsync();
        await visit.Page.Locator("#title").FillAsync("Lake at dawn");
        await Form.ChooseAsync(visit.Page, "camera", "compact body b");
        await Form.ChooseAsync(visit.Page, "battery", "brick 98");
        await Form.ChooseAsync(visit.Page, "plate", "plate");
        var own = await Form.NotListedAsync(visit.Page, "monitor");
        await own.Locator("[data-field=name] input").FillAsync("My old monitor");
        await own.Locator("[data-field=power-record] input").FillAsync("9");
        await visit.Page.Locator("#typical-days button, #typical-days input").First.ClickAsync();
        await visit.Page.Locator("#ambient").FillAsync("-6 °C");
        await visit.Page.Locator("#answer-first .rs-answer").First.WaitForAsync();
        await Assertions.Expect(visit.Page.Locator("#wiring")).ToContainTextAsync("My old monitor");
        await Assertions.Expect(visit.Page.Locator("#answer-assumed")).ToBeVisibleAsync();
        await visit.Page.Locator("#save-name").FillAsync("lake.yaml");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#save-told")).ToContainTextAsync("Saved as lake.yaml");
        if (end == PagesEnd.Server)
            await Assertions.Expect(visit.Page.Locator("#save-command")).ToContainTextAsync("rigscenarios run");
        await visit.Page.WaitForFunctionAsync("() => document.querySelector('#answer').getAttribute('aria-busy') === null");

        var scenario = await visit.Own.ScenarioAsync("lake.yaml");
        Assert.Equal("Lake at dawn", scenario.Title);
        var headline = AnswerSentences.Headline(RigAnswer.Of(scenario, scenario.Builds.Keys.First(), [scenario.Days.Keys.First()],
            cancellation: TestContext.Current.CancellationToken));
        var onPage = (await visit.Page.Locator("#answer-first .rs-answer p").First.InnerTextAsync()).Replace('\u00a0', ' ');
        Assert.Contains(headline, onPage, StringComparison.Ordinal);

        // The folder of the tests has no notebooks.
        if (end == PagesEnd.Server)
        {
            await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Open it in notebook 00", Exact = false }).ClickAsync();
            await visit.Page.Locator(".version-now .rs-answer").First.WaitForAsync();
            Assert.Contains(headline, (await visit.AnswerAsync()).Replace('\u00a0', ' '), StringComparison.Ordinal);
        }
        visit.AssertQuiet();
    }

    [Fact]
    public async Task What_would_make_it_work_follows_the_answer_where_it_fails()
    {
        await using var visit = await Visit.BeginAsync(Machine, height: 1400, end: end);
        await visit.GoAsync("/rig?file=samples/winter-harbour.yaml&build=tripod&day=day-one");
        await visit.Page.Locator("#answer-first .rs-questions").WaitForAsync();
        // On less than half a charge the day is not reached; what follows was run.
        await visit.Page.Locator("#charge").FillAsync("40 %");
        await Assertions.Expect(visit.Page.Locator("#answer-first .rs-answer")).ToContainTextAsync("No: the camera stops");
        await Assertions.Expect(visit.Page.Locator("#answer-work")).ToBeVisibleAsync();
        await Assertions.Expect(visit.Page.Locator("#answer-work-parts")).ToContainTextAsync("work");
        await Assertions.Expect(visit.Page.Locator("#answer-work-search")).ToBeHiddenAsync();
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_file_goes_through_the_form_without_losing_a_comment()
    {
        await using var visit = await Visit.BeginAsync(Machine, end: end);
        var text = await visit.Own.PutDemoAsync("harbour.yaml", "winter-harbour.yaml");
        await visit.GoAsync("/rig?file=own/harbour.yaml&build=tripod&day=day-one");
        await Assertions.Expect(visit.Page.Locator("#ambient")).ToHaveValueAsync("-8 °C");
        await visit.Page.Locator("#answer-first .rs-answer").First.WaitForAsync();
        await visit.Page.Locator("#ambient").FillAsync("-13 °C");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#save-told")).ToContainTextAsync("Saved as harbour.yaml");
        var (changed, saved) = (text.Replace("ambient: -8 °C", "ambient: -13 °C", StringComparison.Ordinal),
            await visit.Own.TextAsync("harbour.yaml"));
        // A file that a browser keeps goes anywhere: the parts that it takes from other files stand in it.
        if (end == PagesEnd.Folder)
            (changed, saved) = (WithoutParts(changed), WithoutParts(saved));
        Assert.Equal(changed, saved);
        Assert.Contains("# ", changed, StringComparison.Ordinal);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_file_as_text_tells_its_mistakes_at_their_line_while_one_writes()
    {
        await using var visit = await Visit.BeginAsync(Machine, end: end);
        await visit.Own.PutAsync("mine.yaml", "rigscenarios: scenario 1\ntitle: Mine\nkitt: {}\n");
        await visit.GoAsync("/file/own/mine.yaml");
        await Assertions.Expect(visit.Page.Locator("#problems")).ToContainTextAsync("kitt");
        await Assertions.Expect(visit.Page.Locator("#problems")).ToContainTextAsync("3");
        await visit.Page.Locator("#text").FillAsync("rigscenarios: scenario 1\ntitle: Mine\nkit: {}\n");
        await Assertions.Expect(visit.Page.Locator("#problems")).Not.ToContainTextAsync("kitt");
        await visit.Page.Locator("#text").PressAsync("Control+s");
        await Assertions.Expect(visit.Page.Locator("#save-state")).ToContainTextAsync("aved");
        Assert.Contains("kit: {}", await visit.Own.TextAsync("mine.yaml"), StringComparison.Ordinal);
        visit.AssertQuiet();
    }

    // The lines of a file but for its parts and where they come from.
    private static string WithoutParts(string text)
    {
        var (kept, isPart) = (new List<string>(), false);
        foreach (var line in text.Split('\n'))
        {
            isPart = line.StartsWith("parts", StringComparison.Ordinal) || (isPart && line.StartsWith(' '));
            if (!isPart)
                kept.Add(line);
        }
        return string.Join('\n', kept);
    }

    [Collection(InABrowser.Name)]
    public sealed class InTheFolder(Chromium chromium) : OwnRigTests(chromium, PagesEnd.Folder);

    [Collection(InABrowser.Name)]
    public sealed class OnTheServer(Chromium chromium) : OwnRigTests(chromium, PagesEnd.Server)
    {
        [Fact]
        public async Task What_another_program_saved_meanwhile_is_not_overwritten_unasked()
        {
            await using var visit = await Visit.BeginAsync(Machine);
            var path = Path.Combine(visit.Server.Rigs, "kit.yaml");
            var text = Servers.Checkout.Sample("teaching-kit.yaml").Replace("parts-from: [../parts]",
                $"parts-from: [{Path.Combine(Servers.Checkout.Data, "parts")}]", StringComparison.Ordinal);
            await File.WriteAllTextAsync(path, text, TestContext.Current.CancellationToken);
            await visit.GoAsync("/rig?file=own/kit.yaml");
            await visit.Page.Locator("#answer-first .rs-answer").First.WaitForAsync();
            await File.WriteAllTextAsync(path, text + "# changed elsewhere\n", TestContext.Current.CancellationToken);
            visit.ExpectsTrouble = true;
            await visit.Page.Locator("#ambient").FillAsync("3 °C");
            await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
            await Assertions.Expect(visit.Page.Locator("#save-conflict")).ToBeVisibleAsync();
            Assert.EndsWith("# changed elsewhere\n", await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken),
                StringComparison.Ordinal);
        }
    }
}
