using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Notebooks.Tests.Places;

namespace RigScenarios.Notebooks.Tests;

public sealed class NotebookFileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("notebooks-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Cells_title_and_tags_are_read()
    {
        var notebook = Notebook.Load(Checkout.TestNotebook("trial.ipynb"));
        Assert.Equal("How long does an invented battery last in the cold?", notebook.Title);
        Assert.Equal(CellKind.Prose, notebook.Cells[0].Kind);
        Assert.Equal(["parameters"], notebook.Cells[3].Tags);
        Assert.StartsWith("double ambientCelsius = -8;", notebook.Cells[3].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_notebook_is_told_with_those_that_are_there()
    {
        var problem = Assert.Throws<NotebookInputException>(() => Notebook.Load(Checkout.TestNotebook("trail.ipynb")));
        Assert.Contains("trial.ipynb", problem.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{ \"cells\": [\n  oops\n]}", "line 2")]
    [InlineData("{ \"cells\": [], \"nbformat\": 3 }", "\"nbformat\": 4")]
    [InlineData("[1, 2]", "a cell of this notebook is not as the format wants it")]
    [InlineData("{ \"cells\": [ { \"cell_type\": \"code\", \"source\": 7 } ], \"nbformat\": 4 }", "a cell of this notebook")]
    public void A_broken_file_is_told_plainly(string content, string expected)
    {
        var path = Path.Combine(folder, "broken.ipynb");
        File.WriteAllText(path, content);
        var problem = Assert.Throws<NotebookInputException>(() => Notebook.Load(path));
        Assert.Contains("broken.ipynb", problem.Message, StringComparison.Ordinal);
        Assert.Contains(expected, problem.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", problem.Message, StringComparison.Ordinal);
    }
}
