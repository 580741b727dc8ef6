using System.Text.Json.Nodes;
using Xunit;

namespace RigScenarios.Notebooks.Tests.Engine;

/// <summary>The committed notebooks run unchanged in Jupyter with the .NET kernel.</summary>
public sealed class JupyterTests
{
    public static TheoryData<string> Files =>
        [.. Directory.GetFiles(Path.Combine(TestNotebook.Root, "notebooks"), "*.ipynb").Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public async Task It_runs_in_Jupyter(string file)
    {
        var nbconvert = OutsideProgram.Find("jupyter-nbconvert");
        Assert.SkipWhen(nbconvert is null, "Jupyter's nbconvert is not installed.");
        var kernels = Path.Combine(TestNotebook.Root, "artifacts", "jupyter", "kernels");
        Assert.SkipUnless(Directory.Exists(Path.Combine(kernels, ".net-csharp")),
            "The .NET kernel for Jupyter is not installed in artifacts/jupyter (docs/notebooks.md says how).");
        Environment.SetEnvironmentVariable("JUPYTER_PATH", Path.GetDirectoryName(kernels));
        var folder = Directory.CreateTempSubdirectory("rigscenarios-jupyter-");
        try
        {
            var (code, output) = await OutsideProgram.RunAsync(nbconvert!, Path.Combine(TestNotebook.Root, "notebooks"),
                ["--to", "notebook", "--execute", file, "--output-dir", folder.FullName, "--output", "executed.ipynb", "--ExecutePreprocessor.timeout=300"], TestContext.Current.CancellationToken);
            Assert.True(code == 0, output);
            var executed = JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(folder.FullName, "executed.ipynb"), TestContext.Current.CancellationToken))!;
            var outputs = executed["cells"]!.AsArray().SelectMany(cell => cell!["outputs"]?.AsArray() ?? []).Select(one => one!.ToJsonString()).ToList();
            Assert.Contains(outputs, text => text.Contains("Plotly.newPlot", StringComparison.Ordinal) || text.Contains("figure", StringComparison.Ordinal));
            Assert.DoesNotContain(outputs, text => text.Contains("\"output_type\":\"error\"", StringComparison.Ordinal));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
