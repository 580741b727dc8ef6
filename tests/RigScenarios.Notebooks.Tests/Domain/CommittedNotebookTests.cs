using System.Text.Json.Nodes;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Pages;
using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Notebooks.Tests.Domain;

public sealed class CommittedNotebookTests
{
    public static TheoryData<string> Files =>
        [.. Directory.GetFiles(DemoData.NotebookPath(""), "*.ipynb").Select(file => Path.GetFileName(file))
        .Order(StringComparer.Ordinal)];

    // Each with a change that turns its answer, and words that the changed answer must have.
    public static TheoryData<string, string, string, string> Changes => new()
    {
        { "00-will-it-work.ipynb", "days", "day-three", "it lasts until wrap" },
        { "01-one-build-one-day.ipynb", "day", "day-three", "it lasts until wrap" },
        { "02-battery-size-and-load-mix.ipynb", "myBattery", "190", "the camera stops at 16:53" },
        { "03-the-cold.ipynb", "warmStart", "0", "Starting at 0 °C" },
        { "03-the-cold.ipynb", "degreesColder", "10", "At −18 °C the build runs" },
        { "04-placement-and-balance.ipynb", "build", "shoulder", "13:33 on day 1" },
        { "05-one-kit-three-stances.ipynb", "scenario", "../data/scenarios/winter-harbour.yaml", "before wrap" },
        { "07-three-days-four-batteries.ipynb", "comes", "without the first", "at 07:39 on day 2" },
        { "08-which-uncertainty-matters.ipynb", "metered", "true", "8 of 10 last to wrap with" },
        { "08-which-uncertainty-matters.ipynb", "degreesColder", "15", "with 6 min left" },
        { "09-a-batterys-life.ipynb", "measured", "70", "70 % of the capacity left (measured)" },
        { "09-a-batterys-life.ipynb", "place", "hot van", "kept full in a hot van" },
        { "10-fit-your-own-battery.ipynb", "degreesColder", "15", "before wrap" },
        { "11-the-best-rig-for-the-money.ipynb", "budget", "600", "No: no rig of these parts holds all that must hold" },
        { "12-find-the-causes.ipynb", "first", "a worn battery", "lasts until wrap at 15:55" },
        { "12-find-the-causes.ipynb", "scenario", "../data/scenarios/winter-harbour.yaml", "at 14:31 on day 1" },
    };

    [Theory]
    [MemberData(nameof(Files))]
    public async Task It_runs_and_its_page_has_every_answer_with_its_caution(string file)
    {
        var run = await NotebookRunner.RunAsync(NotebookFile.Load(DemoData.NotebookPath(file)),
            cancellation: TestContext.Current.CancellationToken);
        Assert.True(run.Succeeded, run.Failure?.ToString());
        Assert.NotEmpty(run.Answers);
        Assert.Contains(run.Cells, cell => cell.Outputs.OfType<FigurePart>().Any());
        var page = Words(run);
        foreach (var answer in run.Answers)
        {
            Assert.Contains(HtmlText.Escape(answer.Text), page, StringComparison.Ordinal);
            Assert.Contains(answer.Cautions, caution => caution.Contains("measured", StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(Changes))]
    public async Task A_changed_parameter_turns_the_answer(string file, string name, string value, string expected)
    {
        var notebook = NotebookFile.Load(DemoData.NotebookPath(file));
        var before = await NotebookRunner.RunAsync(notebook, cancellation: TestContext.Current.CancellationToken);
        var after = await NotebookRunner.RunAsync(notebook, new Dictionary<string, string> { [name] = value },
            cancellation: TestContext.Current.CancellationToken);
        Assert.True(after.Succeeded, after.Failure?.ToString());
        Assert.DoesNotContain(expected, Said(before), StringComparison.Ordinal);
        Assert.Contains(expected, Said(after), StringComparison.Ordinal);
        Assert.Contains(HtmlText.Escape(after.Answers[0].Text), Words(after), StringComparison.Ordinal);
    }

    // The days of the island have a course of the air: each of its points moves.
    [Theory]
    [InlineData("01-one-build-one-day.ipynb", "day")]
    [InlineData("02-battery-size-and-load-mix.ipynb", "day")]
    [InlineData("03-the-cold.ipynb", "day")]
    [InlineData("07-three-days-four-batteries.ipynb", "build")]
    public async Task A_colder_day_moves_a_course(string file, string name)
    {
        var notebook = NotebookFile.Load(DemoData.NotebookPath(file));
        Dictionary<string, string> values = new()
        {
            ["scenario"] = Path.Combine(DemoData.Root, "data/scenarios/island-crossing.yaml"),
            [name] = name == "day" ? "crossing" : "tripod",
        };
        if (name == "day")
            values["build"] = "tripod";
        var planned = await NotebookRunner.RunAsync(notebook, values, cancellation: TestContext.Current.CancellationToken);
        var colder = await NotebookRunner.RunAsync(notebook, new Dictionary<string, string>(values) { ["degreesColder"] = "20" },
            cancellation: TestContext.Current.CancellationToken);

        Assert.True(colder.Succeeded, colder.Failure?.ToString());
        Assert.NotEqual(Said(planned), Said(colder));
        Assert.Contains("in the course of", Words(planned), StringComparison.Ordinal);
        Assert.Contains("as the file says", Words(planned), StringComparison.Ordinal);
        Assert.Contains("20 °C colder than the file says", Words(colder), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public async Task The_ends_of_every_parameters_range_run_too(string file)
    {
        var notebook = NotebookFile.Load(DemoData.NotebookPath(file));
        foreach (var end in new Func<Notebooks.Parameters.NotebookParameter, double?>[] { p => p.Minimum, p => p.Maximum })
        {
            var values = notebook.Parameters.All.Where(p => end(p) is not null)
                .ToDictionary(p => p.Name, p => FormattableString.Invariant($"{end(p)}"));
            var run = await NotebookRunner.RunAsync(notebook, values, cancellation: TestContext.Current.CancellationToken);
            Assert.True(run.Succeeded, $"{string.Join(", ", values)}: {run.Failure}");
        }
    }

    [Theory]
    [MemberData(nameof(Files))]
    public async Task It_shows_the_one_answer_first_with_every_question(string file)
    {
        var run = await NotebookRunner.RunAsync(NotebookFile.Load(DemoData.NotebookPath(file)),
            cancellation: TestContext.Current.CancellationToken);
        var answer = run.Answers[0];
        Assert.NotNull(answer.Verdict);
        Assert.Equal(answer.Verdict, answer.Lines.Select(line => line.Verdict).Max());
        Assert.True(answer.Lines.Count >= 4);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void It_names_its_kernel_and_every_parameter_says_what_it_is(string file)
    {
        var path = DemoData.NotebookPath(file);
        var json = JsonNode.Parse(File.ReadAllText(path))!;
        Assert.Equal((4, 5), (json["nbformat"]!.GetValue<int>(), json["nbformat_minor"]!.GetValue<int>()));
        Assert.Equal(".net-csharp", json["metadata"]!["kernelspec"]!["name"]!.GetValue<string>());
        Assert.NotEmpty(NotebookFile.Load(path).Parameters.All);
        Each.Of(NotebookFile.Load(path).Parameters.All, parameter =>
        {
            Assert.NotEqual(parameter.Name, parameter.Label);
            // Whoever drags a slider must find its ends, and whoever chooses must find choices.
            Assert.True(parameter.Kind is not (ParameterKind.Number or ParameterKind.WholeNumber)
                || parameter is { Minimum: not null, Maximum: not null, Unit.Length: > 0 }, parameter.Name);
            Assert.NotEqual(ParameterKind.Text, parameter.Choices.Count > 0 ? ParameterKind.YesNo : parameter.Kind);
        });
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void It_has_a_sentence_and_a_picture_for_the_shelf(string file)
    {
        var notebook = NotebookFile.Load(DemoData.NotebookPath(file));
        Assert.EndsWith("?", notebook.Sentence, StringComparison.Ordinal);
        Assert.NotNull(notebook.PictureFile);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void It_never_says_that_something_is_safe(string file) =>
        Assert.DoesNotMatch(@"(?i)\bsafe(ly|ty)?\b", File.ReadAllText(DemoData.NotebookPath(file)));

    private static string Said(NotebookRun run) =>
        string.Join('\n', run.Answers.SelectMany(answer => answer.Lines.Select(line => line.Words).Prepend(answer.Text)));

    // The page keeps a number and its unit on one line; here that is no matter.
    private static string Words(NotebookRun run) =>
        NotebookPage.Of(run).ToHtml().Replace('\u00a0', ' ').Replace("&nbsp;", " ", StringComparison.Ordinal);
}
