using RigScenarios.Answers.Exercises;
using RigScenarios.Files;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Pages;

namespace RigScenarios.Notebooks.Tests.Domain;

/// <summary>Notebook 12: what may be suspected, that a right suspicion counts, and that no answer shows by itself.</summary>
public sealed class FindTheCausesTests
{
    private const string File = "12-find-the-causes.ipynb";

    [Fact]
    public void Everything_that_can_be_wrong_can_be_suspected_and_nothing_else()
    {
        var kinds = Enum.GetValues<CauseKind>().Select(kind => kind.InWords()).Prepend("nothing");
        var parameters = NotebookFile.Load(DemoData.NotebookPath(File)).Parameters.All;
        Each.Of(parameters.Where(parameter => parameter.Name is "first" or "second" or "third"),
            parameter => Assert.Equal(kinds, parameter.Choices), atLeast: 3);
    }

    [Fact]
    public async Task All_causes_suspected_are_solved_and_the_key_shows_only_when_it_is_asked_for()
    {
        var exercise = Exercise.Draw(ScenarioFile.Read(Path.Combine(DemoData.Root, "data/scenarios/pottery-class.yaml")),
            "tripod", [], 2, cancellation: TestContext.Current.CancellationToken);
        var hidden = await PageAsync([]);
        Assert.Contains("Not solved yet", hidden, StringComparison.Ordinal);
        Assert.Contains("Three causes are still there.", hidden, StringComparison.Ordinal);
        var solved = await PageAsync(new()
        {
            ["first"] = exercise.Causes[2].Kind.InWords(), ["second"] = exercise.Causes[0].Kind.InWords(),
            ["third"] = exercise.Causes[1].Kind.InWords(),
        });
        Assert.Contains("Solved: it lasts until wrap", solved, StringComparison.Ordinal);
        var wrong = await PageAsync(new() { ["first"] = CauseKind.ColdBattery.InWords() });
        Assert.Contains("Three causes are still there.", wrong, StringComparison.Ordinal);
        var shown = await PageAsync(new() { ["key"] = "true", ["hints"] = "3" });
        Each.Of(exercise.Causes, cause =>
        {
            Each.Of([hidden, solved, wrong], page => Assert.DoesNotContain(cause.Words, page, StringComparison.Ordinal));
            Assert.Contains(cause.Words, shown, StringComparison.Ordinal);
            Each.Of(cause.Hints, hint => Assert.Contains(hint, shown, StringComparison.Ordinal), atLeast: 3);
        }, atLeast: 3);
    }

    [Fact]
    public async Task A_rig_that_fails_as_it_is_says_why_it_makes_no_exercise()
    {
        var page = await PageAsync(new() { ["scenario"] = "../data/scenarios/winter-harbour.yaml" });
        Assert.Contains("No exercise with this rig: An exercise starts from a rig that works", page, StringComparison.Ordinal);
    }

    private static async Task<string> PageAsync(Dictionary<string, string> values)
    {
        var run = await NotebookRunner.RunAsync(NotebookFile.Load(DemoData.NotebookPath(File)), values,
            cancellation: TestContext.Current.CancellationToken);
        Assert.True(run.Succeeded, run.Failure?.ToString());
        return System.Net.WebUtility.HtmlDecode(NotebookPage.Of(run).ToHtml()).Replace('\u00a0', ' ');
    }
}
