using RigScenarios.Notebooks.Compiler;
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
        var notebook = NotebookFile.Load(Checkout.TestNotebook("trial.ipynb"));
        Assert.Equal("How long does an invented battery last in the cold?", notebook.Title);
        Assert.Equal(CellKind.Prose, notebook.Cells[0].Kind);
        Assert.Equal(["parameters"], notebook.Cells[3].Tags);
        Assert.StartsWith("double ambientCelsius = -8;", notebook.Cells[3].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_notebook_is_told_with_those_that_are_there()
    {
        var problem = Assert.Throws<NotebookInputException>(() => NotebookFile.Load(Checkout.TestNotebook("trail.ipynb")));
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
        var problem = Assert.Throws<NotebookInputException>(() => NotebookFile.Load(path));
        Assert.Contains("broken.ipynb", problem.Message, StringComparison.Ordinal);
        Assert.Contains(expected, problem.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", problem.Message, StringComparison.Ordinal);
    }

    [Fact(Timeout = 60_000)]
    public async Task Pipes_and_devices_are_no_notebooks()
    {
        Assert.SkipUnless(File.Exists("/dev/zero"), "this system has no such files");
        var pipe = Path.Combine(folder, "pipe.ipynb");
        using (var made = System.Diagnostics.Process.Start("mkfifo", [pipe]))
            await made.WaitForExitAsync(TestContext.Current.CancellationToken);
        foreach (var path in (string[])[pipe, "/dev/zero"])
        {
            var problem = await Assert.ThrowsAsync<NotebookInputException>(() => Task.Run(() => NotebookFile.Load(path)));
            Assert.Contains("no plain file", problem.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_notebook_without_end_is_refused_before_it_fills_the_memory()
    {
        var path = Path.Combine(folder, "large.ipynb");
        using (var stream = File.Create(path))
            stream.SetLength(4L * 1024 * 1024 * 1024);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var problem = Assert.Throws<NotebookInputException>(() => NotebookFile.Load(path));
        Assert.Contains("larger than 32 MB", problem.Message, StringComparison.Ordinal);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 2L * Notebook.LargestBytes);
    }

    [Theory]
    [InlineData("ambientCelsius", "-１５", "-15")]
    [InlineData("ambientCelsius", "٥ °C", "5")]
    public void Digits_of_any_script_mean_their_value_in_a_parameter(string name, string given, string read)
    {
        var parameter = NotebookFile.Load(Checkout.TestNotebook("trial.ipynb")).Parameters.All.Single(one => one.Name == name);
        Assert.Equal(read, parameter.Read(given).Value);
    }
}
