using System.Text.Json.Nodes;
using RigScenarios.Notebooks.Tests.Places;

namespace RigScenarios.Notebooks.Tests;

/// <summary>The same notebooks in Jupyter with its C# kernel, where both are installed.</summary>
[Collection(OneNotebookAtATime.Name)]
public sealed class JupyterTests
{
    private static readonly string KernelFolder = Path.Combine(Checkout.Root, "artifacts", "jupyter");

    public static TheoryData<string> All => [.. Checkout.Notebooks.Select(path => Path.GetRelativePath(Checkout.Root, path))];

    [Theory]
    [MemberData(nameof(All))]
    public async Task It_runs_in_Jupyter_unchanged(string name)
    {
        var path = Path.Combine(Checkout.Root, name);
        var cancellation = TestContext.Current.CancellationToken;
        Assert.SkipWhen(OtherProgram.Find("jupyter-nbconvert") is null, "Jupyter (nbconvert) is not installed");
        Assert.SkipUnless(await HasKernelAsync(cancellation), "dotnet-interactive is not installed (dotnet tool restore)");

        var output = Directory.CreateTempSubdirectory("jupyter-").FullName;
        try
        {
            var (exitCode, _, errors) = await OtherProgram.RunAsync(
                OtherProgram.Find("jupyter-nbconvert")!,
                ["--to", "notebook", "--execute", path, "--output-dir", output],
                Path.GetDirectoryName(path)!,
                cancellation,
                ("JUPYTER_PATH", KernelFolder),
                ("DOTNET_INTERACTIVE_CLI_TELEMETRY_OPTOUT", "1"));
            Assert.True(exitCode == 0, errors);
            var executed = await File.ReadAllTextAsync(Path.Combine(output, Path.GetFileName(path)), cancellation);
            Assert.Contains("rs-answer", executed, StringComparison.Ordinal);
            Assert.DoesNotContain(JsonNode.Parse(executed)!["cells"]!.AsArray()
                .SelectMany(cell => cell!["outputs"]?.AsArray() ?? []),
                o => o!["output_type"]!.GetValue<string>() == "error");
        }
        finally
        {
            Directory.Delete(output, recursive: true);
        }
    }

    [Fact]
    public async Task What_a_cell_may_call_is_offered_while_one_types()
    {
        var cancellation = TestContext.Current.CancellationToken;
        var python = new[] { "/usr/bin/python3", OtherProgram.Find("python3") }.FirstOrDefault(File.Exists);
        Assert.SkipWhen(python is null, "Python is not installed");
        var (found, _, _) = await OtherProgram.RunAsync(python!, ["-c", "import jupyter_client"], Checkout.Root, cancellation);
        Assert.SkipUnless(found == 0, "Jupyter's client for Python (jupyter_client) is not installed");
        Assert.SkipUnless(await HasKernelAsync(cancellation), "dotnet-interactive is not installed (dotnet tool restore)");
        var (exitCode, output, errors) = await OtherProgram.RunAsync(
            python!,
            [
                Checkout.TestNotebook("complete.py"),
                "#r \"../artifacts/notebooks/RigScenarios.Notebooks.dll\"\nRigScenarios.Notebooks.NotebookSession.Start();",
                "RigAnswer.O", "Answ", "DayChart.O",
            ],
            Path.Combine(Checkout.Root, "notebooks"), cancellation, ("JUPYTER_PATH", KernelFolder),
            ("DOTNET_INTERACTIVE_CLI_TELEMETRY_OPTOUT", "1"));
        Assert.True(exitCode == 0, errors);
        var offered = output.Split('\n').Where(line => line.StartsWith("offered ", StringComparison.Ordinal)).ToList();
        Assert.Equal(3, offered.Count);
        Assert.Contains("Of", offered[0], StringComparison.Ordinal);
        Assert.Contains("Answer", offered[1], StringComparison.Ordinal);
        Assert.Contains("Of", offered[2], StringComparison.Ordinal);
    }

    // Writes the kernel's description into the checkout's own folder: nothing of the user's settings is touched.
    private static async Task<bool> HasKernelAsync(CancellationToken cancellation)
    {
        Directory.CreateDirectory(Path.Combine(KernelFolder, "kernels"));
        var (exitCode, _, _) = await OtherProgram.RunAsync(
            "dotnet", ["dotnet-interactive", "jupyter", "install", "--path", Path.Combine(KernelFolder, "kernels")],
            Checkout.Root, cancellation,
            ("DOTNET_INTERACTIVE_CLI_TELEMETRY_OPTOUT", "1"));
        return exitCode == 0;
    }
}
