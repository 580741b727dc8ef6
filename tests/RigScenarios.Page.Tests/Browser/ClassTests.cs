using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using RigScenarios.Page.Tests.Servers;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>A teacher at the page for a class, and students who open the address in browsers of their own.</summary>
[Collection(InABrowser.Name)]
public sealed partial class ClassTests(Chromium chromium)
{
    /// <summary>A student's browser: it has nothing of the teacher's, and all that it is sent is kept.</summary>
    private sealed class Student(IBrowserContext context, IPage page) : IAsyncDisposable
    {
        private readonly StringBuilder sent = new();

        public IPage Page => page;

        public string Sent
        {
            get
            {
                lock (sent)
                    return sent.ToString();
            }
        }

        public static async Task<Student> ComeAsync(IBrowser browser, string address, int width, bool night = false)
        {
            var context = await browser.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = 800 },
                ColorScheme = night ? ColorScheme.Dark : ColorScheme.Light });
            context.SetDefaultTimeout(MachineBrowser.Patience);
            var student = new Student(context, await context.NewPageAsync());
            student.Page.Response += async (_, response) =>
            {
                if (!response.Url.Contains("/api/", StringComparison.Ordinal))
                    return;
                var text = await TextOfAsync(response);
                lock (student.sent)
                    student.sent.AppendLine(text);
            };
            await student.Page.GotoAsync(address);
            await student.Page.Locator("#lesson").WaitForAsync();
            return student;
        }

        public async ValueTask DisposeAsync() => await context.CloseAsync();

        private static async Task<string> TextOfAsync(IResponse response)
        {
            try
            {
                return await response.TextAsync();
            }
            catch (PlaywrightException)
            {
                // The page gave the question up, was loaded anew, or closed: it has not read it either.
                return "";
            }
        }
    }

    private static async Task ReadyAsync(IPage page) => await page.WaitForFunctionAsync(
        "() => document.querySelector('#questions input') && !document.querySelector('#task').hasAttribute('aria-busy')");

    /// <summary>Makes the task of the harbour in the page and keeps it; gives the address.</summary>
    private static async Task<string> MakeAsync(Visit visit, string reveal = "by-teacher")
    {
        await visit.GoAsync("/class");
        await ReadyAsync(visit.Page);
        await visit.Page.Locator("#scenario").SelectOptionAsync("samples/winter-harbour.yaml");
        await Assertions.Expect(visit.Page.Locator("#headline")).ToContainTextAsync("14:31");
        await ReadyAsync(visit.Page);
        await visit.Page.Locator("#title").FillAsync("How cold may it be?");
        await visit.Page.Locator("#text").FillAsync("Estimate first.\n\nThen make it colder.");
        await visit.Page.Locator("#controls summary").First.ClickAsync();
        await visit.Page.GetByLabel("coldest air").First.CheckAsync();
        await visit.Page.GetByLabel("from for coldest air").FillAsync("-20");
        await visit.Page.Locator($"input[name=reveal][value={reveal}]").CheckAsync();
        await visit.Page.Locator("#save").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#save-told")).ToContainTextAsync("how-cold-may-it-be.task.yaml",
            new() { Timeout = MachineBrowser.Patience });
        return (await visit.Page.Locator("#address").TextContentAsync())!;
    }

    /// <summary>What the teacher's page says of the rig, in pieces that stand in no task.</summary>
    private static readonly string[] Answers = ["14:31", "guard switches off", "152 Wh", "26 mm ahead", "13.7 m/s", "can't fly"];

    [Theory]
    [InlineData(1280, false)]
    [InlineData(390, true)]
    public async Task A_teacher_makes_a_task_and_a_class_sees_its_answer_only_when_it_is_shown(int width, bool night)
    {
        await using var visit = await Visit.BeginAsync(chromium, width: width, night: night);
        var faults = new AxeFaults();
        var address = await MakeAsync(visit);
        await faults.LookAsync(visit.Page, "the teacher's page");
        await using var student = await Student.ComeAsync(chromium.Browser, address, width, night);
        var page = student.Page;
        await Assertions.Expect(page.Locator("#text")).ToContainTextAsync("Then make it colder.");
        await Assertions.Expect(page.Locator("#answer-told")).ToContainTextAsync("Hidden: Power");
        await faults.LookAsync(page, "a task, hidden");
        // Colder, to the end of what is open: the rig that is given follows, the answer does not come.
        await page.Locator("#control-air").FillAsync("-18");
        await Assertions.Expect(page.Locator("#days")).ToContainTextAsync("air -18 °C");
        await page.Locator("#control-air").FillAsync("-21");
        await Assertions.Expect(page.Locator("#control-air-problem")).ToContainTextAsync("It goes from");
        await page.Locator("#as-it-was").ClickAsync();
        await Assertions.Expect(page.Locator("#days")).ToContainTextAsync("air -8 °C");
        await page.Locator("#estimate-energy").FillAsync("200 Wh");
        await page.Locator("#hand-in").ClickAsync();
        await Assertions.Expect(page.Locator("#in-told")).ToContainTextAsync("name");
        await page.Locator("#student-name").FillAsync("Ada");
        await page.Locator("#hand-in").ClickAsync();
        await Assertions.Expect(page.Locator("#in-told")).ToContainTextAsync("Handed in.");
        await Assertions.Expect(visit.Page.Locator("#hand-ins")).ToContainTextAsync("Ada: 200 Wh");
        // Neither in the page nor in anything that it was ever sent.
        var before = await page.ContentAsync() + student.Sent;
        Assert.Contains("200", before, StringComparison.Ordinal);
        Assert.True(Regex.Count(student.Sent, "\"isHiding\":true") >= 3, "The answers to the page were not read.");
        foreach (var answer in Answers)
            Assert.DoesNotContain(answer, Plain(before), StringComparison.Ordinal);
        // Nor where the class could read it from the wall.
        Assert.DoesNotContain("152 Wh", await visit.Page.Locator("#hand-ins").InnerTextAsync(), StringComparison.Ordinal);
        await visit.Page.Locator("#reveal").ClickAsync();
        await Assertions.Expect(page.Locator("#answer-told")).ToContainTextAsync("14:31");
        foreach (var answer in Answers)
            Assert.Contains(answer, Plain(await page.ContentAsync()), StringComparison.Ordinal);
        await Assertions.Expect(page.Locator("#hand-in")).ToBeHiddenAsync();
        await faults.LookAsync(page, "a task, shown");
        await Assertions.Expect(visit.Page.Locator("#hand-ins")).ToContainTextAsync("152 Wh");
        await faults.LookAsync(visit.Page, "the lesson");
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"), "it runs over");
        faults.AssertNone(atLeast: 4);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task Who_hands_in_sees_it_alone_and_finds_the_work_again_after_a_reload()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        var address = await MakeAsync(visit, "on-hand-in");
        await using var one = await Student.ComeAsync(chromium.Browser, address, 390);
        await using var other = await Student.ComeAsync(chromium.Browser, address, 390);
        await one.Page.Locator("#estimate-until").FillAsync("until lunch");
        await one.Page.Locator("#student-name").FillAsync("Bo");
        await one.Page.Locator("#control-air").FillAsync("-12");
        await Assertions.Expect(one.Page.Locator("#days")).ToContainTextAsync("air -12 °C");
        await one.Page.ReloadAsync();
        await Assertions.Expect(one.Page.Locator("#days")).ToContainTextAsync("air -12 °C");
        Assert.Equal("until lunch", await one.Page.Locator("#estimate-until").InputValueAsync());
        await one.Page.Locator("#hand-in").ClickAsync();
        await Assertions.Expect(one.Page.Locator("#model-until")).ToContainTextAsync("The program:");
        await Assertions.Expect(visit.Page.Locator("#hand-ins")).ToContainTextAsync("coldest air: -8 °C → -12 °C");
        // Whoever comes back to an answer sees its chart, too.
        await one.Page.ReloadAsync();
        await Assertions.Expect(one.Page.Locator("#parts .rs-chart .main-svg").First).ToBeVisibleAsync();
        await Assertions.Expect(other.Page.Locator("#answer-told")).ToContainTextAsync("Hidden");
        Assert.DoesNotContain("The program:", await other.Page.ContentAsync(), StringComparison.Ordinal);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task A_task_is_found_again_changed_and_printed()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        var address = await MakeAsync(visit);
        await visit.GoAsync("/");
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "A task for a class" }).ClickAsync();
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "How cold may it be?" }).ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#address")).ToHaveTextAsync(address);
        // Its answers are folded away: the page may be on the wall.
        await Assertions.Expect(visit.Page.Locator("#headline")).ToBeHiddenAsync();
        await visit.Page.Locator("#edit-title").ClickAsync();
        await Assertions.Expect(visit.Page.GetByLabel("coldest air").First).ToBeCheckedAsync();
        Assert.Equal("-20", await visit.Page.GetByLabel("from for coldest air").InputValueAsync());
        await visit.Page.Locator("#own").FillAsync("Why?\nWhat then?");
        foreach (var (button, mark, isTold) in new[] { ("#sheet", "What then?", false), ("#solution", "14:31", true) })
        {
            var download = await visit.Page.RunAndWaitForDownloadAsync(() => visit.Page.Locator(button).ClickAsync());
            var sheet = await File.ReadAllTextAsync((await download.PathAsync())!, TestContext.Current.CancellationToken);
            Assert.Contains(mark, Plain(sheet), StringComparison.Ordinal);
            Assert.Contains("Then make it colder.", Plain(sheet), StringComparison.Ordinal);
            Assert.Equal(isTold, Plain(sheet).Contains("14:31", StringComparison.Ordinal));
            var page = await chromium.Browser.NewPageAsync();
            await page.SetContentAsync(sheet);
            foreach (var paper in (string[])["A4", "Letter"])
                Assert.Equal((button, paper, 1), (button, paper, OfAPage().Count(Encoding.Latin1.GetString(
                    await page.PdfAsync(new() { Format = paper })))));
            await page.CloseAsync();
        }
        await visit.Page.Locator("#save").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#save-told")).ToContainTextAsync("Saved as");
        Assert.Equal(address, await visit.Page.Locator("#address").TextContentAsync());
        await using var student = await Student.ComeAsync(chromium.Browser, address, 1280);
        await Assertions.Expect(student.Page.Locator("#asked")).ToContainTextAsync("What then?");
        // A student's page prints, with what was written.
        await student.Page.Locator("#estimate-energy").FillAsync("200 Wh");
        Assert.InRange(OfAPage().Count(Encoding.Latin1.GetString(await student.Page.PdfAsync(new() { Format = "A4" }))), 1, 7);
        visit.AssertQuiet();
    }

    [Fact]
    public async Task An_exercise_is_drawn_repaired_with_the_controls_and_found_right()
    {
        await using var visit = await Visit.BeginAsync(chromium);
        await visit.GoAsync("/class");
        await ReadyAsync(visit.Page);
        await visit.Page.Locator("#scenario").SelectOptionAsync("samples/pottery-class.yaml");
        await Assertions.Expect(visit.Page.Locator("#headline")).ToContainTextAsync("Yes");
        await visit.Page.Locator("#causes").SelectOptionAsync("1");
        await Assertions.Expect(visit.Page.Locator("#choices-told")).ToContainTextAsync("Find the cause");
        await ReadyAsync(visit.Page);
        await visit.Page.Locator("#title").FillAsync("What is wrong?");
        // Whatever the cause is: everything is open.
        await visit.Page.EvaluateAsync("() => { for (const box of document.querySelectorAll('.opened input[type=checkbox]')) "
            + "if (!box.checked) box.click(); }");
        await visit.Page.Locator("#save").ClickAsync();
        await Assertions.Expect(visit.Page.Locator("#save-told")).ToContainTextAsync("Saved as");
        var address = (await visit.Page.Locator("#address").TextContentAsync())!;
        await using var student = await Student.ComeAsync(chromium.Browser, address, 1280);
        await Assertions.Expect(student.Page.Locator("#check")).ToContainTextAsync("Not solved yet");
        await Assertions.Expect(student.Page.Locator("#text")).ToContainTextAsync("Find the cause");
        // The teacher looks the key up where only the teacher can, and sets it as a student would.
        var room = new ClassRoom(visit.Server);
        var key = (await room.LessonAsync(name: "what-is-wrong.task.yaml")).GetProperty("asked")[0].Text("answer");
        Assert.DoesNotContain(key, Plain(await student.Page.ContentAsync() + student.Sent), StringComparison.Ordinal);
        foreach (var (path, value) in RepairOf(visit))
        {
            var control = student.Page.Locator($"[id='control-{path}']");
            if (await control.EvaluateAsync<string>("control => control.tagName") == "SELECT")
                await control.SelectOptionAsync(value);
            else
                await control.FillAsync(value);
        }
        await Assertions.Expect(student.Page.Locator("#check")).ToContainTextAsync("Solved:");
        await Assertions.Expect(student.Page.Locator("#model-cause-1")).ToBeHiddenAsync();
        visit.AssertQuiet();
    }

    private static IEnumerable<(string Path, string Value)> RepairOf(Visit visit)
    {
        var text = File.ReadAllText(Path.Combine(visit.Server.Rigs, "what-is-wrong.task.yaml"));
        var task = RigScenarios.Answers.Classes.ClassTaskFile.TryReadText(text, "").Task!;
        var scenario = RigScenarios.Files.ScenarioFile.Read(Path.Combine(Checkout.Data, "scenarios", "pottery-class.yaml"));
        var lesson = RigScenarios.Answers.Classes.ClassLesson.Of(task, scenario, null, TestContext.Current.CancellationToken);
        return lesson.Exercise!.Causes.SelectMany(cause => cause.Repair.Settings)
            .Select(setting => (setting.Path, setting.Value.Split(' ')[0]));
    }

    // Pages keep numbers beside their units with a space that does not break; JSON escapes what it may.
    private static string Plain(string text) => Regex.Unescape(text.Replace("\\", "\\\\", StringComparison.Ordinal)
        .Replace("\\\\u", "\\u", StringComparison.Ordinal)).Replace("&nbsp;", " ", StringComparison.Ordinal)
        .Replace('\u00a0', ' ').Replace("&#39;", "'", StringComparison.Ordinal);

    [GeneratedRegex(@"/Type\s*/Page\b", RegexOptions.CultureInvariant, 10_000)]
    private static partial Regex OfAPage();
}
