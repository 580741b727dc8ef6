using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Live;
using RigScenarios.Notebooks.Pages;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Notebooks.Tests.Places;

namespace RigScenarios.Notebooks.Tests;

/// <summary>A notebook whose drawing has parts to move, without a page to move them on.</summary>
[Collection(OneNotebookAtATime.Name)]
public sealed class MovedPlacesPageTests
{
    private static readonly Notebook Moves = NotebookFile.Load(Checkout.TestNotebook("moves.ipynb"));

    [Fact]
    public async Task A_static_page_shows_what_was_moved_and_promises_no_moving()
    {
        var run = await NotebookRunner.RunAsync(Moves, new Dictionary<string, string> { ["places"] = "plate -150 mm" },
            progress: null, TestContext.Current.CancellationToken);
        Assert.Null(run.Failure);
        var page = NotebookPage.Of(run).ToHtml();
        Assert.Contains("data-at=\"-0.15\"", page, StringComparison.Ordinal);
        Assert.Contains("plate −150 mm", page.Replace('\u00a0', ' '), StringComparison.Ordinal);
        Assert.DoesNotContain("role=\"slider\"", page, StringComparison.Ordinal);
        Assert.DoesNotMatch("<(g|rect|path) [^>]*tabindex", page[page.IndexOf("<body", StringComparison.Ordinal)..]);
        var still = await NotebookRunner.RunAsync(Moves, new Dictionary<string, string>(), progress: null,
            TestContext.Current.CancellationToken);
        Assert.Contains("nothing moved", NotebookPage.Of(still).ToHtml().Replace('\u00a0', ' '), StringComparison.Ordinal);
        Assert.NotEqual(still.Answers[0].Text, run.Answers[0].Text);
    }

    [Fact]
    public async Task On_the_living_page_another_build_forgets_what_it_has_no_place_for()
    {
        using var live = await NotebookCompiler.CompileAsync(Moves, cancellation: TestContext.Current.CancellationToken);
        var session = live.OpenSession();
        var reader = new Reader();
        await session.RunAsync(new Dictionary<string, string> { ["build"] = "shoulder",
            ["places"] = "pad -150 mm; plate -250 mm" }, reader, TestContext.Current.CancellationToken);
        Assert.Equal("pad -150 mm; plate -250 mm", reader.Value("places"));
        Assert.Contains(reader.Last, parameter =>
            parameter.Choices.Any(choice => choice is { Value: "pad", Stretch: { Least: -200, Greatest: -110, At: -150 } }));
        // The tripod build has no pad. Its plate has another stretch, and that is no thing to guess at.
        await session.RunAsync(new Dictionary<string, string> { ["places"] = "pad -150 mm" }, reader,
            TestContext.Current.CancellationToken);
        Assert.Equal("", reader.Value("places"));
        var problem = await Assert.ThrowsAsync<NotebookInputException>(() =>
            session.RunAsync(new Dictionary<string, string> { ["places"] = "plate -250 mm" }, reader,
            TestContext.Current.CancellationToken));
        Assert.Contains("-190 mm to -136 mm", Assert.Single(problem.Problems), StringComparison.Ordinal);
    }

    private sealed class Reader : ILiveObserver
    {
        public IReadOnlyList<LiveParameter> Last { get; private set; } = [];

        public string Value(string name) => Last.Single(parameter => parameter.Parameter.Name == name).Value;

        public void Parameters(IReadOnlyList<LiveParameter> parameters) => Last = parameters;

        public void Cell(int cell, IReadOnlyList<PagePart> parts)
        {
        }

        public void Progress(int cell, double fraction, string text)
        {
        }
    }
}
