using System.Diagnostics;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Documents;
using RigScenarios.Notebooks.Engine;
using RigScenarios.Notebooks.Parameters;

namespace RigScenarios.Notebooks.Live;

/// <summary>One reader's run of a live notebook. Not for two threads at once.</summary>
public sealed class LiveSession
{
    private readonly LiveNotebook live;
    private readonly CellSession session;
    private readonly ScenarioChoices scenarios = new();
    private IReadOnlyList<ParameterValue> values = [];
    private TimeSpan elapsed;
    private NotebookFailure? failure;

    internal LiveSession(LiveNotebook live)
    {
        this.live = live;
        session = new CellSession(live.Cells, live.Notebook.Parameters.Cell);
    }

    /// <summary>
    /// Runs the notebook with the given values: all of it at first, later only the cells that rest on what changed since the
    /// session's last run. What a cancelled run left undone is done by the next.
    /// </summary>
    /// <param name="given">Values of parameters by name, as a person writes them; the others keep the notebook's value.</param>
    /// <param name="reader">Told what happens, in order.</param>
    /// <param name="cancellation">Stops between cells, and within one that watches
    /// <see cref="NotebookSession.Cancellation"/>.</param>
    /// <exception cref="NotebookInputException">A value is unknown, of the wrong kind or out of range; nothing was
    /// run.</exception>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public Task<LiveRun> RunAsync(IReadOnlyDictionary<string, string> given, ILiveObserver reader,
        CancellationToken cancellation = default) =>
        RunAsync(given, new HashSet<int>(), reader, cancellation);

    /// <summary>The same, but the cells that are wanted most come first, with all that they rest on; then, after a moment, the
    /// others.</summary>
    /// <param name="given">Values of parameters by name, as a person writes them; the others keep the notebook's value.</param>
    /// <param name="wanted">Numbers of the cells that are wanted most, such as those in the reader's sight; none: all in the
    /// notebook's order.</param>
    /// <param name="reader">Told what happens, in order.</param>
    /// <param name="cancellation">Stops between cells, and within one that watches
    /// <see cref="NotebookSession.Cancellation"/>.</param>
    /// <exception cref="NotebookInputException">A value is unknown, of the wrong kind or out of range; nothing was
    /// run.</exception>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public async Task<LiveRun> RunAsync(
        IReadOnlyDictionary<string, string> given, IReadOnlySet<int> wanted, ILiveObserver reader,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(wanted);
        ArgumentNullException.ThrowIfNull(reader);
        var watch = Stopwatch.StartNew();
        values = live.Notebook.Parameters.Resolve(given, new ParameterScope(live.Folders, scenarios, FallsBack: true));
        reader.Parameters([.. values.Select(value => new LiveParameter(value.Parameter, Shown(value),
            scenarios.Choices(value.Parameter, values, live.Folders, Path.GetDirectoryName(live.Notebook.FilePath)!)))]);
        var typed = values.ToDictionary(value => value.Parameter.Name, value => value.Typed, StringComparer.Ordinal);
        var (rerun, failed) = await session.RunAsync(typed, wanted, new Forwarding(reader, watch), cancellation);
        elapsed = watch.Elapsed;
        failure = failed is { } f ? new NotebookFailure(live.Notebook.FileName, f.Cell, f.Error.Line, f.Error.Message) : null;
        return new LiveRun(rerun, elapsed, failure);
    }

    /// <summary>All that the session shows now, as a run of the notebook: to make a page of it.</summary>
    public NotebookRun ToRun() => new(live.Notebook, values, session.Shown, failure, elapsed);

    private string Shown(ParameterValue value) => value.Parameter.Kind == ParameterKind.ScenarioFile
        ? live.Folders.Select(folder => folder.ValueOf(Path.GetFullPath(value.Value,
            Path.GetDirectoryName(live.Notebook.FilePath)!))).FirstOrDefault(shown => shown is not null) ?? value.Value
        : value.Value;

    private sealed class Forwarding(ILiveObserver reader, Stopwatch watch) : ICellObserver
    {
        public void Begins(NotebookCell cell) => reader.Progress(cell.Number, 0, "");

        public void Progress(NotebookCell cell, double fraction, string text) => reader.Progress(cell.Number, fraction, text);

        public void Showed(NotebookCell cell, IReadOnlyList<PagePart> parts) => reader.Cell(cell.Number, parts);

        public void WantedShown(IReadOnlyList<int> rerun) => reader.WantedShown(new LiveRun(rerun, watch.Elapsed, null));
    }
}

/// <summary>Told what happens while a session runs, in order and from the run's thread.</summary>
public interface ILiveObserver
{
    /// <summary>The values in use, and what may be chosen; some choices depend on others.</summary>
    void Parameters(IReadOnlyList<LiveParameter> parameters);

    /// <summary>A cell was run; this is all that it shows now.</summary>
    void Cell(int cell, IReadOnlyList<PagePart> parts);

    /// <summary>A cell begins (at 0, without a text) or tells how far it has come.</summary>
    void Progress(int cell, double fraction, string text);

    /// <summary>The cells that were wanted most are told; others are still to be run.</summary>
    /// <param name="soFar">The run as far as it has come.</param>
    void WantedShown(LiveRun soFar)
    {
        // Only a page that shows some cells and not others needs to know.
    }
}

/// <summary>A parameter as a reader sees it now.</summary>
/// <param name="Parameter">The parameter.</param>
/// <param name="Value">The value in use.</param>
/// <param name="Choices">What may be chosen; empty where any value of its kind is taken.</param>
public sealed record LiveParameter(NotebookParameter Parameter, string Value, IReadOnlyList<ParameterChoice> Choices);

/// <summary>How a run of a session went.</summary>
/// <param name="Rerun">Numbers of the cells that were run.</param>
/// <param name="Elapsed">How long it took.</param>
/// <param name="Failure">What stopped it; null where all went well.</param>
public sealed record LiveRun(IReadOnlyList<int> Rerun, TimeSpan Elapsed, NotebookFailure? Failure);
