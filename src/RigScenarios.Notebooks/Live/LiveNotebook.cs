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
    private readonly Action unload;
    private readonly ConsoleCapture capture = ConsoleCapture.Begin();

    /// <param name="notebook">The notebook.</param>
    /// <param name="cells">Its code cells, compiled; one that does not compile is the last.</param>
    /// <param name="folders">The folders whose scenario files a reader may choose.</param>
    /// <param name="unload">Lets go what the cells were compiled to, once nobody runs it any more.</param>
    internal LiveNotebook(Notebook notebook, IReadOnlyList<CompiledCell> cells, IReadOnlyList<ScenarioFolder> folders,
        Action unload)
    {
        Notebook = notebook;
        Cells = cells;
        Folders = folders;
        this.unload = unload;
    }

    /// <summary>The notebook as it was when it was compiled.</summary>
    public Notebook Notebook { get; }

    /// <summary>The folders whose scenario files a reader may choose; none leaves the file names of the notebook as they
    /// are.</summary>
    public IReadOnlyList<ScenarioFolder> Folders { get; }

    internal IReadOnlyList<CompiledCell> Cells { get; }

    /// <summary>A new reader's session: nothing has been run in it yet.</summary>
    public LiveSession OpenSession() => new(this);

    /// <summary>Closes the notebook: what it was compiled to is unloaded once no session runs any more.</summary>
    public void Dispose()
    {
        capture.Dispose();
        unload();
    }
}
