using System.Diagnostics;
using System.Text.RegularExpressions;
using RigScenarios.Notebooks.Engine;
using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Notebooks;

/// <summary>
/// Runs notebooks without a notebook program: all cells in order, with other parameter values where wished. Serves any number
/// of notebooks in one process; the first takes a few seconds longer, because the compiler warms up.
/// </summary>
/// <remarks>
/// While a notebook runs, the process's current folder is the notebook's, as in a notebook program, and its console is
/// captured; both are given back. Hence notebooks of one process run one at a time: a second call waits for the first.
/// </remarks>
public static partial class NotebookRunner
{
    // Process-wide like what it guards: console and current folder.
    private static readonly SemaphoreSlim OneAtATime = new(1, 1);

    /// <summary>Runs a notebook.</summary>
    /// <param name="notebook">The notebook.</param>
    /// <param name="values">Values of parameters by name, as a person writes them; the others keep the notebook's value.</param>
    /// <param name="progress">Told before each code cell, and by cells that take long.</param>
    /// <param name="cancellation">Stops between cells, and within one that watches <see cref="NotebookSession.Cancellation"/>.</param>
    /// <returns>What the cells showed; a failing cell ends the run and is told in <see cref="NotebookRun.Failure"/>.</returns>
    /// <exception cref="NotebookInputException">A value is unknown, of the wrong kind or out of range; nothing was run.</exception>
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
        var (output, error, folder) = (Console.Out, Console.Error, Environment.CurrentDirectory);
        try
        {
            Environment.CurrentDirectory = Path.GetDirectoryName(notebook.FilePath)!;
            using var engine = new CellEngine();
            return await RunCellsAsync(engine, notebook, parameters, progress, cancellation);
        }
        finally
        {
            Environment.CurrentDirectory = folder;
            Console.SetOut(output);
            Console.SetError(error);
            OneAtATime.Release();
        }
    }

    private static async Task<NotebookRun> RunCellsAsync(
        CellEngine engine,
        Notebook notebook,
        IReadOnlyList<ParameterValue> parameters,
        IProgress<NotebookProgress>? progress,
        CancellationToken cancellation)
    {
        var watch = Stopwatch.StartNew();
        var runs = new List<CellRun>();
        var count = notebook.Cells.Count(cell => cell.Kind == CellKind.Code);
        var heading = notebook.Title;
        foreach (var cell in notebook.Cells)
        {
            if (cell.Kind == CellKind.Prose)
                heading = LastHeading(cell.Text) ?? heading;
            if (cell.Kind != CellKind.Code)
                continue;
            var number = runs.Count + 1;
            void Report(string text) => progress?.Report(new NotebookProgress(notebook.FileName, number, count, text));
            Report(heading);
            var result = await engine.RunAsync(cell.Number, WithoutLoadedReferences(cell.Text), Report, cancellation);
            if (result.Error is null && cell.Number == notebook.Parameters.Cell && Assignments(parameters) is { Length: > 0 } assignments)
                result = result with { Error = (await engine.RunAsync(cell.Number, assignments, Report, cancellation)).Error };
            runs.Add(new CellRun(cell, result.Outputs));
            if (result.Error is { } error)
                return new NotebookRun(notebook, parameters, runs, new NotebookFailure(notebook.FileName, cell.Number, error.Line, error.Message), watch.Elapsed);
        }

        return new NotebookRun(notebook, parameters, runs, null, watch.Elapsed);
    }

    // Assignments and not new declarations: the type that the notebook declares stays.
    private static string Assignments(IReadOnlyList<ParameterValue> parameters) => string.Join(
        ' ', parameters.Where(p => p.IsGiven).Select(p => $"{p.Parameter.Name} = {p.Parameter.Literal(p.Value)};"));

    // A notebook names the library's file for a notebook program. Here the library is loaded already, and where it is installed
    // as a tool that file is not there at all. The line stays as a comment, so that line numbers hold.
    private static string WithoutLoadedReferences(string code) => FileReference().Replace(
        code, match => File.Exists(Path.Combine(SessionImports.Folder, FileNameOf(match.Groups["path"].Value))) ? "// " + match.Value : match.Value);

    // Written on one system, read on another: both kinds of separators count.
    private static string FileNameOf(string path) => path[(path.LastIndexOfAny(['/', '\\']) + 1)..];

    private static string? LastHeading(string markdown) =>
        markdown.Split('\n').LastOrDefault(line => line.StartsWith('#'))?.TrimStart('#').Trim();

    [GeneratedRegex(@"^[ \t]*#r[ \t]+""(?<path>[^"":]+\.dll)""", RegexOptions.Multiline | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex FileReference();
}
