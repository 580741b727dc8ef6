using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Tests.Places;

namespace RigScenarios.Notebooks.Tests;

/// <summary>The code on the page about notebooks is run as a notebook, so that it cannot go stale.</summary>
[Collection(OneNotebookAtATime.Name)]
public sealed partial class DocumentationTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("documentation-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task The_code_on_the_page_runs_as_one_notebook()
    {
        var page = await File.ReadAllTextAsync(Path.Combine(Checkout.Root, "docs", "notebooks.md"),
            TestContext.Current.CancellationToken);
        var code = Marked().Matches(page.ReplaceLineEndings("\n")).Select(match => match.Groups["code"].Value).ToList();
        Assert.Equal(5, code.Count);

        // The first piece runs a notebook from code; it is compiled here and not run, for a cell cannot start another run.
        code[0] = $"async Task RunFromCode()\n{{\n{code[0]}}}";
        // There is no such file from here, as where the library is installed as a tool: the line is passed over.
        code.Insert(0,
            "#r \"../artifacts/notebooks/RigScenarios.Notebooks.dll\"\nRigScenarios.Notebooks.NotebookSession.Start();");
        code.Insert(1, "using RigScenarios.Notebooks.Compiler; using RigScenarios.Notebooks.Documents; using "
            + "RigScenarios.Notebooks.Pages; using System.Threading;");
        var path = Path.Combine(folder, "documentation.ipynb");
        await File.WriteAllTextAsync(path, AsNotebook(code), TestContext.Current.CancellationToken);

        var run = await NotebookRunner.RunAsync(NotebookFile.Load(path), cancellation: TestContext.Current.CancellationToken);
        Assert.Null(run.Failure);
        Assert.Equal("The battery lasts 2 h 20 min.", Assert.Single(run.Answers).Text);
        Assert.Equal(3, run.Cells.SelectMany(cell => cell.Outputs).OfType<FigurePart>().Count());
    }

    private static string AsNotebook(IEnumerable<string> code) => new JsonObject
    {
        ["nbformat"] = 4,
        ["cells"] = new JsonArray([.. code.Select(text => new JsonObject { ["cell_type"] = "code", ["source"] = text })]),
    }.ToJsonString();

    [GeneratedRegex("^```csharp run\n(?<code>.*?)^```",
        RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Marked();
}
