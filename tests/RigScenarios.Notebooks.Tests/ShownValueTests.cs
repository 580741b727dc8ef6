using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Notebooks.Tests.Places;

namespace RigScenarios.Notebooks.Tests;

/// <summary>A cell that ends with a result of the library shows it as what it is.</summary>
[Collection(OneNotebookAtATime.Name)]
public sealed class ShownValueTests
{
    [Fact]
    public async Task A_build_a_result_a_sweep_and_a_chart_show_themselves()
    {
        var run = await NotebookRunner.RunAsync(NotebookFile.Load(Checkout.TestNotebook("results.ipynb")),
            cancellation: TestContext.Current.CancellationToken);
        Assert.Null(run.Failure);
        Assert.Equal(
        [
            "script", "", "heading: Winter harbour documentary, table", "table", "figure: build-power", "answer, figure: day",
            "answer", "figure: over-ambient",
            "figure: runtime-over-field", "figure: runtime-map", "figure: day", "answer, printed: 10 h 30 min",
        ], run.Cells.Select(cell => string.Join(", ", cell.Outputs.Select(Word))));
        Assert.Equal("The shoot is on 2026-02-14.", run.Answers[^1].Text);
    }

    [Fact]
    public async Task A_date_is_a_parameter()
    {
        var notebook = NotebookFile.Load(Checkout.TestNotebook("results.ipynb"));
        var parameter = notebook.Parameters.All[0];
        Assert.Equal((Parameters.ParameterKind.Date, "2026-02-14", "day of the shoot"),
            (parameter.Kind, parameter.Default, parameter.Label));
        var run = await NotebookRunner.RunAsync(notebook, new Dictionary<string, string> { ["shoot"] = "2027-1-5" },
            cancellation: TestContext.Current.CancellationToken);
        Assert.Equal("The shoot is on 2027-01-05.", run.Answers[^1].Text);
        Assert.Equal("new DateOnly(2027, 1, 5)", ExecutedNotebook.Literal(parameter, "2027-01-05"));
        Assert.Throws<NotebookInputException>(() =>
            notebook.Parameters.Resolve(new Dictionary<string, string> { ["shoot"] = "5 January" }));
    }

    [Fact]
    public void A_scenario_file_and_what_it_holds_are_looked_up()
    {
        var parameters = NotebookFile.Load(Checkout.TestNotebook("results.ipynb")).Parameters;
        var kit = Path.Combine(Checkout.Root, "data", "scenarios", "teaching-kit.yaml");
        // The notebook's own build is none of the other scenario's: its first one is taken.
        Assert.Equal("camera-only", parameters.Resolve(new Dictionary<string, string> { ["scenario"] = kit })[2].Value);
        var wrong = Assert.Throws<NotebookInputException>(() =>
            parameters.Resolve(new Dictionary<string, string> { ["scenario"] = kit, ["build"] = "camera-onli" }));
        Assert.Equal(
            "build: the scenario has no \"camera-onli\". Did you mean \"camera-only\"? Expected (build of the camera): one of "
                + "camera-only | with-monitor | full-rig.", wrong.Message);
        var missing = Assert.Throws<NotebookInputException>(() =>
            parameters.Resolve(new Dictionary<string, string> { ["scenario"] = "nowhere.yaml" }));
        Assert.StartsWith("scenario: there is no scenario file \"nowhere.yaml\".", missing.Message, StringComparison.Ordinal);
    }

    private static string Word(PagePart part) => part switch
    {
        FigurePart figure => $"figure: {figure.Figure.Slug}",
        HeadingPart heading => $"heading: {heading.Text}",
        PrintedPart printed => $"printed: {printed.Text}",
        _ => part.GetType().Name.Replace("Part", "", StringComparison.Ordinal).ToLowerInvariant(),
    };
}
