using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Engine;
using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Notebooks.Live;

/// <summary>
/// A notebook that listens: compiled once, then run as often as its parameters change. Any number of readers share it, each
/// with a session of its own.
/// </summary>
/// <remarks>
/// While it is open, what cells print goes to their readers and not to the console. Relative paths in cells start at the
/// process's current folder, which whoever opens notebooks sets to theirs.
/// </remarks>
public sealed class LiveNotebook : IDisposable
{
    private readonly CellCompiler compiler;
    private readonly ConsoleCapture capture = ConsoleCapture.Begin();

    private LiveNotebook(Notebook notebook, CellCompiler compiler,
        IReadOnlyList<CompiledCell> cells, IReadOnlyList<ScenarioFolder> folders)
    {
        Notebook = notebook;
        this.compiler = compiler;
        Cells = cells;
        Folders = folders;
    }

    /// <summary>The notebook as it was when it was compiled.</summary>
    public Notebook Notebook { get; }

    /// <summary>The folders whose scenario files a reader may choose; none leaves the file names of the notebook as they
    /// are.</summary>
    public IReadOnlyList<ScenarioFolder> Folders { get; }

    internal IReadOnlyList<CompiledCell> Cells { get; }

    /// <summary>Compiles a notebook. A cell that does not compile is told when a run reaches it.</summary>
    /// <param name="notebook">The notebook.</param>
    /// <param name="folders">The folders whose scenario files a reader may choose.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OperationCanceledException">The work was cancelled.</exception>
    public static Task<LiveNotebook> CompileAsync(Notebook notebook, IReadOnlyList<ScenarioFolder>? folders = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        return Task.Run(() => Compile(notebook, folders ?? [], cancellation), cancellation);
    }

    /// <summary>A new reader's session: nothing has been run in it yet.</summary>
    public LiveSession OpenSession() => new(this);

    /// <summary>Closes the notebook: what it was compiled to is unloaded once no session runs any more.</summary>
    public void Dispose()
    {
        capture.Dispose();
        compiler.Unload();
    }

    private static LiveNotebook Compile(Notebook notebook, IReadOnlyList<ScenarioFolder> folders, CancellationToken cancellation)
    {
        var compiling = new CellCompiler(Path.GetDirectoryName(notebook.FilePath)!);
        var cells = new List<CompiledCell>();
        foreach (var cell in notebook.Cells.Where(cell => cell.Kind == CellKind.Code))
        {
            cells.Add(compiling.Compile(cell, cancellation));
            if (cells[^1].Error is not null)
                break;
        }

        return new LiveNotebook(notebook, compiling, cells, folders);
    }
}
