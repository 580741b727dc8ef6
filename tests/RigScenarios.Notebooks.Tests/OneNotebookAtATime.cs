using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Tests.Places;

namespace RigScenarios.Notebooks.Tests;

/// <summary>
/// The engine, the console and the current folder belong to the whole process: all tests that run notebooks are one collection,
/// and nothing runs beside it.
/// </summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class OneNotebookAtATime : ICollectionFixture<TrialRun>
{
    public const string Name = "notebooks";
}

/// <summary>The trial notebook, run once with two values of its own.</summary>
public sealed class TrialRun : IAsyncLifetime
{
    private NotebookRun? run;

    public NotebookRun Run => run ?? throw new InvalidOperationException("The trial notebook has not been run.");

    public async ValueTask InitializeAsync() => run = await NotebookRunner.RunAsync(
        NotebookFile.Load(Checkout.TestNotebook("trial.ipynb")),
        new Dictionary<string, string> { ["ambientCelsius"] = "-20 °C", ["place"] = "In a pocket" });

    public ValueTask DisposeAsync() => ValueTask.CompletedTask;
}
