using System.Diagnostics;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Engine;
using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Notebooks.Compiler;

/// <summary>
/// Runs notebooks without a notebook program: all cells in order, with other parameter values where wished. Serves any number
/// of notebooks in one process; the first takes a few seconds longer, because the compiler warms up.
/// </summary>
/// <remarks>
/// While a notebook runs, the process's current folder is the notebook's, as in a notebook program, and its console is
/// captured; both are given back. Hence notebooks of one process run one at a time: a second call waits for the first.
/// </remarks>
public static class NotebookRunner
{
    // Process-wide like what it guards: console and current folder.
    private static readonly SemaphoreSlim OneAtATime = new(1, 1);

    /// <summary>Runs a notebook.</summary>
    /// <param name="notebook">The notebook.</param>
    /// <param name="values">Values of parameters by name, as a person writes them; the others keep the notebook's value.</param>
    /// <param name="progress">Told before each code cell, and by cells that take long.</param>
    /// <param name="cancellation">Stops between cells, and within one that watches
    /// <see cref="NotebookSession.Cancellation"/>.</param>
    /// <returns>What the cells showed; a failing cell ends the run and is told in <see cref="NotebookRun.Failure"/>.</returns>
    /// <exception cref="NotebookInputException">A value is unknown, of the wrong kind or out of range; nothing was
    /// run.</exception>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public static async Task<NotebookRun> RunAsync(
        Notebook notebook,
        IReadOnlyDictionary<string, string>? values = null,
        IProgress<NotebookProgress>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        var parameters = notebook.Parameters.Resolve(values);
        await OneAtATime.WaitAsync(cancellation);
        var folder = Environment.CurrentDirectory;
        try
        {
            Environment.CurrentDirectory = Path.GetDirectoryName(notebook.FilePath)!;
            return await RunCellsAsync(notebook, parameters, progress, cancellation);
        }
        finally
        {
            Environment.CurrentDirectory = folder;
            OneAtATime.Release();
        }
    }

    private static async Task<NotebookRun> RunCellsAsync(
        Notebook notebook, IReadOnlyList<ParameterValue> parameters, IProgress<NotebookProgress>? progress,
        CancellationToken cancellation)
    {
        var watch = Stopwatch.StartNew();
        using var live = await NotebookCompiler.CompileAsync(notebook, cancellation: cancellation);
        var session = new CellSession(live.Cells, notebook.Parameters.Cell);
        var typed = parameters.ToDictionary(value => value.Parameter.Name, value => value.Typed, StringComparer.Ordinal);
        var (_, failed) = await session.RunAsync(typed, new HashSet<int>(), new Reporting(notebook, progress), cancellation);
        return new NotebookRun(
            notebook, parameters, session.Shown, failed is { } f
                ? new NotebookFailure(notebook.FileName, f.Cell, f.Error.Line, f.Error.Message) : null, watch.Elapsed);
    }

    private sealed class Reporting(Notebook notebook, IProgress<NotebookProgress>? progress) : ICellObserver
    {
        private readonly List<NotebookCell> codeCells = [.. notebook.Cells.Where(cell => cell.Kind == CellKind.Code)];

        public void Begins(NotebookCell cell) => Report(cell, Heading(cell));

        public void Progress(NotebookCell cell, double fraction, string text) =>
            Report(cell, new ProgressNote(fraction, text).ToString());

        public void Showed(NotebookCell cell, IReadOnlyList<PagePart> parts)
        {
            // All is told at the end.
        }

        private void Report(NotebookCell cell, string text) =>
            progress?.Report(new NotebookProgress(notebook.FileName, codeCells.IndexOf(cell) + 1, codeCells.Count, text));

        private string Heading(NotebookCell cell) =>
            notebook.Cells.Take(cell.Number).Where(before => before.Kind == CellKind.Prose)
            .Select(before => LastHeading(before.Text)).LastOrDefault(heading => heading is not null) ?? notebook.Title;
    }

    private static string? LastHeading(string markdown) =>
        markdown.Split('\n').LastOrDefault(line => line.StartsWith('#'))?.TrimStart('#').Trim();
}
