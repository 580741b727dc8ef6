using System.Text.Json.Nodes;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Tests.Places;

namespace RigScenarios.Notebooks.Tests;

/// <summary>Every notebook in the folder notebooks, and the trial notebook: how it is committed, and that it runs.</summary>
[Collection(OneNotebookAtATime.Name)]
public sealed class CommittedNotebookTests
{
    public static TheoryData<string> All => [.. Checkout.Notebooks.Select(path => Path.GetRelativePath(Checkout.Root, path))];

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_committed_without_outputs_and_with_ids(string name)
    {
        var cells = JsonNode.Parse(File.ReadAllText(Full(name)))!["cells"]!.AsArray();
        Each.Of(cells, cell => Assert.False(string.IsNullOrEmpty(cell!["id"]?.GetValue<string>())));
        Assert.Equal(cells.Count, cells.Select(cell => cell!["id"]!.GetValue<string>()).Distinct().Count());
        Each.Of(cells.Where(cell => cell!["cell_type"]!.GetValue<string>() == "code"), cell =>
        {
            Assert.Empty(cell!["outputs"]!.AsArray());
            Assert.Null(cell["execution_count"]);
        });
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Its_parameters_say_what_they_are_and_hold_their_own_ranges(string name)
    {
        var parameters = NotebookFile.Load(Full(name)).Parameters;
        Each.Of(parameters.All, parameter => Assert.NotEqual(parameter.Name, parameter.Label));
        parameters.Resolve(parameters.All.ToDictionary(parameter => parameter.Name, parameter => parameter.Default));
    }

    [Theory]
    [MemberData(nameof(All))]
    public async Task It_runs_and_answers(string name)
    {
        var run = await NotebookRunner.RunAsync(NotebookFile.Load(Full(name)),
            cancellation: TestContext.Current.CancellationToken);
        Assert.Null(run.Failure);
        Assert.NotEmpty(run.Answers);
    }

    private static string Full(string name) => Path.Combine(Checkout.Root, name);
}
