using System.Text.RegularExpressions;
using RigScenarios.Answers;
using RigScenarios.Answers.TakeAlong;
using RigScenarios.Charts.TakeAlong;
using RigScenarios.Files;
using Snapshooter.Xunit3;

namespace RigScenarios.Tests.Cli;

/// <summary>The sheet to take along: its words, and that the exercise tells no answer while the solution tells each.</summary>
[Collection(nameof(ConsoleRun))]
public sealed partial class TakeAlongCommandTests
{
    public static TheoryData<string> Demos => ["winter-harbour", "market-hall", "island-crossing", "night-dolly", "river-ferry",
        "teaching-kit"];

    [Theory]
    [MemberData(nameof(Demos))]
    public void The_sheet_of_the_day_says_what_the_answer_says(string demo)
    {
        var answer = Answer(demo);
        var text = SheetTextOf.Page(SheetPage.Of(TakeAlongSheets.Of(answer, SheetKind.Day)));
        Assert.Contains(AnswerSentences.Headline(answer), text, StringComparison.Ordinal);
        // No caution is ever left out for room, but for how far off times may be and what age does, which are told in short, and
        // what is for the days between jobs.
        var cautions = AnswerCautions.Of(answer).Where(caution => caution != PowerCautions.Keeping
            && caution != AgingSentences.Retire && caution != AnswerCautions.Predicted(answer.Simulation.ExpectedError));
        Each.Of(cautions, caution => Assert.Contains(caution.Split(" After three years")[0], text, StringComparison.Ordinal));
        Snapshot.Match(text, $"TakeAlongCommandTests.Day-{demo}");
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void The_exercise_tells_no_answer_and_the_solution_each(string demo)
    {
        var answer = Answer(demo);
        var blank = SheetTextOf.Page(SheetPage.Of(TakeAlongSheets.Of(answer, SheetKind.Exercise), whole: true));
        var solved = SheetTextOf.Page(SheetPage.Of(TakeAlongSheets.Of(answer, SheetKind.Solution)));
        var estimates = Estimates.Of(answer);
        var given = string.Join('\n', TakeAlongSheets.Of(answer, SheetKind.Exercise).Days);
        Each.Of(estimates, item =>
        {
            Assert.Contains(item.Question, blank, StringComparison.Ordinal);
            Assert.DoesNotContain(item.Answer, blank, StringComparison.Ordinal);
            Assert.Contains(item.Question, solved, StringComparison.Ordinal);
            Assert.Contains(item.Answer, solved, StringComparison.Ordinal);
            // Nor any figure with its unit that an answer tells and nobody gave; call times and wraps are given.
            foreach (var figure in Figure().Matches(item.Answer).Where(figure => !given.Contains(figure.Value,
                StringComparison.Ordinal)))
                Assert.DoesNotContain($" {figure.Value}", blank, StringComparison.Ordinal);
        }, atLeast: 7);
        Assert.DoesNotContain(AnswerSentences.Headline(answer), blank, StringComparison.Ordinal);
        Each.Of(AnswerSentences.Questions(answer), line =>
            Assert.DoesNotContain(line.Words.TrimEnd('.'), blank, StringComparison.Ordinal));
        Snapshot.Match(blank, $"TakeAlongCommandTests.Blanks-{demo}");
    }

    [Fact]
    public void What_is_left_out_is_told_and_stands_on_the_whole_sheet()
    {
        var sheet = TakeAlongSheets.Of(Answer("island-crossing"), SheetKind.Day);
        var (one, whole) = (SheetTextOf.Page(SheetPage.Of(sheet)), SheetTextOf.Page(SheetPage.Of(sheet, whole: true)));
        Assert.Matches(@"Left out for want of room: \d+ of \d+ ", one);
        Assert.DoesNotContain("Left out", whole, StringComparison.Ordinal);
        Each.Of(sheet.Sections.SelectMany(section => section.Rows).SelectMany(row => row).Where(cell => cell.Length > 0), cell =>
            Assert.Contains(cell, whole, StringComparison.Ordinal));
        Assert.Contains(sheet.Sections.SelectMany(section => section.Rows), row => !one.Contains(string.Join('\n', row),
            StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_command_writes_one_page_that_asks_nothing_of_a_network_and_names_no_folder()
    {
        using var folder = new TemporaryFolder();
        var page = Path.Combine(folder.Path, "sheet.html");
        var (code, text, error) = await ConsoleRun.RunAsync("take-along", Repository.Data("scenarios", "winter-harbour.yaml"),
            "--day", "day-one", "--out", page);
        Assert.Equal("", error);
        Assert.Equal(0, code);
        Assert.Contains("No: the camera stops at 14:31", text, StringComparison.Ordinal);
        var html = await File.ReadAllTextAsync(page, TestContext.Current.CancellationToken);
        Assert.DoesNotMatch("https?://|<script|url\\(|src=", html);
        Assert.DoesNotContain(Repository.Root, html, StringComparison.Ordinal);
        Assert.DoesNotContain(folder.Path, html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_exercise_prints_no_answer_either()
    {
        using var folder = new TemporaryFolder();
        var (code, text, _) = await ConsoleRun.RunAsync("take-along", Repository.Data("scenarios", "night-dolly.yaml"),
            "--build", "heavy-lead", "--blanks", "--out", Path.Combine(folder.Path, "blanks.html"));
        Assert.Equal(0, code);
        Assert.DoesNotMatch("Yes:|No:|Just:", text);
    }

    [Theory]
    [InlineData("--blanks and --solution", "--out", "sheet.html", "--blanks", "--solution")]
    [InlineData("Rigs and notebooks have such names", "--out", "sheet.yaml")]
    public async Task What_can_not_be_is_refused_before_anything_is_written(string told, params string[] options)
    {
        var (code, _, error) = await ConsoleRun.RunAsync(["take-along", Repository.Data("scenarios", "night-dolly.yaml"),
            .. options]);
        Assert.Equal(2, code);
        Assert.Contains(told, error, StringComparison.Ordinal);
        Assert.False(File.Exists("sheet.html") || File.Exists("sheet.yaml"));
    }

    private static RigAnswer Answer(string demo)
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", $"{demo}.yaml"));
        return RigAnswer.Of(scenario, scenario.Builds.Keys.First(), [], AnswerOptions.EndOnly with
        {
            Today = new DateOnly(2026, 11, 30),
        });
    }

    [GeneratedRegex(@"\d+ (Wh|N·m|m/s)|\d{2}:\d{2}|\d+\.\d+°", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Figure();
}
