using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Notebooks.Tests.Places;

namespace RigScenarios.Notebooks.Tests;

[Collection(OneNotebookAtATime.Name)]
public sealed class RunnerTests(TrialRun trial)
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public void Given_values_reach_the_cells()
    {
        Assert.Null(trial.Run.Failure);
        // 98 Wh, 40 % less at -20 °C, 42 W: 1.4 h.
        Assert.Equal("One battery of 98 Wh lasts 1 h 24 min at −20 °C.", Assert.Single(trial.Run.Answers).Text);
        Assert.Contains(Outputs<PrintedPart>(), part => part.Text == "Batteries in the case: 2, spare waits in a pocket.\n");
    }

    [Fact]
    public void Charts_tables_and_quantities_come_out_as_what_they_are()
    {
        Assert.Equal(["voltage", "cold-and-load"], Outputs<FigurePart>().Select(part => part.Figure.Slug));
        Assert.Equal(["98 Wh", "1 h 24 min", "12.35 Wh"], Assert.Single(Outputs<TablePart>()).Table.Rows[0]);
        Assert.Equal("1 h 24 min", Outputs<PrintedPart>()[^1].Text);
    }

    [Fact]
    public async Task Progress_is_told_for_each_cell_and_from_within()
    {
        var told = new Told();
        await NotebookRunner.RunAsync(NotebookFile.Load(Checkout.TestNotebook("trial.ipynb")), progress: told,
            cancellation: Cancellation);
        Assert.Equal(new NotebookProgress("trial.ipynb", 1, 7, "How long does an invented battery last in the cold?"),
            told.All[0]);
        Assert.Contains(new NotebookProgress("trial.ipynb", 6, 7, "50 % halfway"), told.All);
        Assert.Equal(Enumerable.Range(1, 7), told.All.Select(p => p.Cell).Distinct());
    }

    [Fact]
    public async Task A_cell_that_does_not_compile_is_told_with_its_place()
    {
        var run = await NotebookRunner.RunAsync(NotebookFile.Load(Checkout.TestNotebook("compile-error.ipynb")),
            cancellation: Cancellation);
        Assert.Equal("compile-error.ipynb, cell 4, line 3: The name 'aa' does not exist in the current context (CS0103)",
            run.Failure?.ToString());
    }

    [Fact]
    public async Task A_cell_that_fails_is_told_with_its_place_and_no_stack_trace()
    {
        var run = await NotebookRunner.RunAsync(NotebookFile.Load(Checkout.TestNotebook("runtime-error.ipynb")),
            cancellation: Cancellation);
        Assert.Equal("runtime-error.ipynb, cell 3, line 4: The divisor is zero; give another.", run.Failure?.ToString());
        Assert.Equal(3, run.Cells[^1].Cell.Number);
    }

    [Fact]
    public async Task A_wrong_value_is_refused_before_anything_runs()
    {
        var told = new Told();
        await Assert.ThrowsAsync<NotebookInputException>(() => NotebookRunner.RunAsync(
            NotebookFile.Load(Checkout.TestNotebook("trial.ipynb")), new Dictionary<string, string> { ["batteries"] = "many" },
            told, Cancellation));
        Assert.Empty(told.All);
    }

    [Fact]
    public async Task A_run_can_be_stopped_within_a_cell_and_leaves_all_as_it_was()
    {
        var (console, folder) = (Console.Out, Environment.CurrentDirectory);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(Cancellation);
        var told = new Told(p =>
        {
            if (p.Text.Contains("step 3", StringComparison.Ordinal))
                stop.Cancel();
        });
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => NotebookRunner.RunAsync(
            NotebookFile.Load(Checkout.TestNotebook("long.ipynb")), null, told, stop.Token));
        Assert.Equal((console, folder), (Console.Out, Environment.CurrentDirectory));
        Each.HasNot(told.All, p => p.Text.Contains("step 100", StringComparison.Ordinal));

        var next = await NotebookRunner.RunAsync(NotebookFile.Load(Checkout.TestNotebook("trial.ipynb")),
            cancellation: Cancellation);
        Assert.True(next.Succeeded);
    }

    private List<T> Outputs<T>()
        where T : PagePart => [.. trial.Run.Cells.SelectMany(cell => cell.Outputs).OfType<T>()];

    private sealed class Told(Action<NotebookProgress>? also = null) : IProgress<NotebookProgress>
    {
        public List<NotebookProgress> All { get; } = [];

        public void Report(NotebookProgress value)
        {
            lock (All)
                All.Add(value);
            also?.Invoke(value);
        }
    }
}
