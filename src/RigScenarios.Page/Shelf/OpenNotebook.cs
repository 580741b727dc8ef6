using RigScenarios.Notebooks.Compiler;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Notebooks.Live;
using RigScenarios.Requests.Reading;

namespace RigScenarios.Page.Shelf;

/// <summary>A notebook that is being compiled or is compiled, and how many read it. Let go when it is closed and the last reader
/// has left.</summary>
internal sealed class OpenNotebook(string file, DateTime changed, IReadOnlyList<ScenarioFolder> folders)
{
    private readonly Lock gate = new();
    // Started by the first reader; their leaving doesn't stop it, because the next one needs it too.
    private readonly Lazy<Task<LiveNotebook>> compiling =
        new(() => Task.Run(() => NotebookCompiler.CompileAsync(NotebookFile.Load(file), folders)));
    private int readers;
    private bool closed;

    /// <summary>When the file was last changed before it was compiled.</summary>
    public DateTime Changed { get; } = changed;

    public bool HasFailed => compiling is { IsValueCreated: true, Value.IsFaulted: true };

    public Reading Read()
    {
        lock (gate)
            readers++;
        return new Reading(this);
    }

    /// <summary>No new reader comes.</summary>
    public void Close()
    {
        lock (gate)
            closed = true;
        LetGo();
    }

    private void Leave()
    {
        lock (gate)
            readers--;
        LetGo();
    }

    private void LetGo()
    {
        lock (gate)
        {
            if (!closed || readers > 0 || !compiling.IsValueCreated)
                return;
        }
        _ = compiling.Value.ContinueWith(done => done.Result.Dispose(), CancellationToken.None,
            TaskContinuationOptions.OnlyOnRanToCompletion, TaskScheduler.Default);
    }

    /// <summary>One reader's hold on a notebook.</summary>
    internal sealed class Reading(OpenNotebook notebook) : INotebookReading
    {
        private bool left;

        /// <summary>The compiled notebook, as soon as it is.</summary>
        public Task<LiveNotebook> Live => notebook.compiling.Value;

        public void Dispose()
        {
            if (left)
                return;
            left = true;
            notebook.Leave();
        }
    }
}
