using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Documents;

namespace RigScenarios.Notebooks.Engine;

/// <summary>What happens while a session runs; called in order, from the thread that runs the cells.</summary>
internal interface ICellObserver
{
    void Begins(NotebookCell cell);

    void Progress(NotebookCell cell, double fraction, string text);

    void Showed(NotebookCell cell, IReadOnlyList<PagePart> parts);

    /// <summary>The cells that were wanted most are shown; others are still to be run.</summary>
    /// <param name="rerun">Numbers of the cells that were run.</param>
    void WantedShown(IReadOnlyList<int> rerun)
    {
        // Only who wants some cells before the others needs to know.
    }
}

/// <summary>
/// One reader's run of a compiled notebook: the variables of its cells and what they showed. A change of parameters reruns only
/// the cells that rest on it.
/// </summary>
internal sealed class CellSession(IReadOnlyList<CompiledCell> cells, int? parametersCell)
{
    // Whoever drags asks again within this time: then none of the other cells is begun, and the next run need not wait for one.
    private static readonly TimeSpan BeforeTheOthers = TimeSpan.FromMilliseconds(80);

    // There one thread does all: between two cells it takes what came in the meantime, such as that the run is overtaken.
    private static readonly TimeSpan TurnOfOthers = TimeSpan.FromMilliseconds(1);

    // One slot for each cell's variables; the first is the compiler's own.
    private readonly object?[] slots = new object?[cells.Count + 2];
    private readonly ShownValues shown = new();
    private readonly Dictionary<int, IReadOnlyList<PagePart>> outputs = [];
    private readonly HashSet<int> stale = [.. cells.Select(cell => cell.Cell.Number)];
    private readonly Dictionary<string, object?> values = new(StringComparer.Ordinal);

    /// <summary>What the cells that ran showed last, in order.</summary>
    public IReadOnlyList<CellRun> Shown =>
        [.. cells.Where(cell => outputs.ContainsKey(cell.Cell.Number))
        .Select(cell => new CellRun(cell.Cell, outputs[cell.Cell.Number]))];

    /// <summary>Runs what is not up to date with the given values.</summary>
    /// <param name="given">Values of parameters; those that aren't named keep what the notebook says.</param>
    /// <param name="wanted">Numbers of the cells that come first, with all that they rest on; none: all in the notebook's
    /// order.</param>
    /// <param name="reader">Told what happens.</param>
    /// <param name="cancellation">Stops between cells, and within one that watches it. What was not run is run next time.</param>
    /// <returns>The cells that were run, and the one that failed with its error.</returns>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public async Task<(IReadOnlyList<int> Rerun, (int Cell, CellError Error)? Failure)> RunAsync(
        IReadOnlyDictionary<string, object?> given, IReadOnlySet<int> wanted, ICellObserver reader,
        CancellationToken cancellation)
    {
        MarkStale(given);
        var rerun = new List<int>();
        var first = First(wanted);
        foreach (var cell in cells.Where(cell => stale.Contains(cell.Cell.Number))
            .OrderByDescending(cell => first.Contains(cell.Cell.Number)).ToList())
        {
            if (rerun.Count > 0 && rerun.Count == first.Count)
            {
                reader.WantedShown(rerun);
                await Task.Delay(BeforeTheOthers, cancellation);
            }

            if (OperatingSystem.IsBrowser())
                await Task.Delay(TurnOfOthers, CancellationToken.None);
            cancellation.ThrowIfCancellationRequested();
            reader.Begins(cell.Cell);
            rerun.Add(cell.Cell.Number);
            var context = new CellContext(shown, (fraction, text) => reader.Progress(cell.Cell, fraction, text), cancellation);
            var error = cell.Error ?? await Task.Run(() => RunCellAsync(cell, context), CancellationToken.None);
            cancellation.ThrowIfCancellationRequested();
            outputs[cell.Cell.Number] = context.Parts;
            reader.Showed(cell.Cell, context.Parts);
            if (error is not null)
                return (rerun, (cell.Cell.Number, error));
            if (cell.Cell.Number == parametersCell)
                Assign(cell);
            stale.Remove(cell.Cell.Number);
        }

        return (rerun, null);
    }

    /// <summary>
    /// The stale cells that are wanted most and the stale ones that they rest on; none where the notebook's order is to be kept:
    /// in the first run, and where a cell changes what an earlier one declared.
    /// </summary>
    private HashSet<int> First(IReadOnlySet<int> wanted)
    {
        var open = cells.Where(cell => stale.Contains(cell.Cell.Number)).ToList();
        if (open.Count == cells.Count || open.Exists(cell => cell.Uses.Writes.Count > 0 || cell.Cell.Number == parametersCell))
            return [];
        var first = new HashSet<int>();
        // From the last: whatever a cell rests on stands before it.
        foreach (var cell in open.AsEnumerable().Reverse())
        {
            if (wanted.Contains(cell.Cell.Number) || first.Contains(cell.Cell.Number))
                first.UnionWith(cell.Uses.Cells.Where(stale.Contains).Append(cell.Cell.Number));
        }

        return first;
    }

    private async Task<CellError?> RunCellAsync(CompiledCell cell, CellContext context)
    {
        context.Enter();
        try
        {
            if (cell.Run is not null && await cell.Run(slots) is { } value)
            {
                foreach (var part in shown.Parts(value))
                    context.Show(part);
            }

            return null;
        }
#pragma warning disable CA1031 // Whatever a cell throws is its own failure, told to the reader of the notebook.
        catch (Exception exception)
#pragma warning restore CA1031
        {
            return CellError.OfException(exception);
        }
    }

    private void MarkStale(IReadOnlyDictionary<string, object?> given)
    {
        var declared = cells.FirstOrDefault(cell => cell.Cell.Number == parametersCell);
        var changed = given.Where(value => !values.TryGetValue(value.Key, out var before) || !Equals(before, value.Value))
            .Select(value => value.Key).ToList();
        foreach (var name in changed)
            values[name] = given[name];
        if (declared is null || stale.Contains(declared.Cell.Number))
            return;
        // A cell that changes a parameter leaves no way back to the value before it but to begin anew.
        if (cells.Any(cell => cell.Uses.Writes.Any(write => write.Cell == parametersCell)))
        {
            if (changed.Count > 0)
                stale.UnionWith(cells.Select(cell => cell.Cell.Number));
            return;
        }

        Assign(declared);
        foreach (var cell in cells.Where(cell => changed.Any(name => cell.Uses.Reads.Contains((declared.Cell.Number, name)))))
            stale.Add(cell.Cell.Number);
        Spread();
    }

    // What rests on a stale cell is stale. A cell that changes an earlier cell's variable can only be repeated together with it.
    private void Spread()
    {
        for (var before = -1; before != stale.Count;)
        {
            before = stale.Count;
            foreach (var cell in cells)
            {
                if (stale.Contains(cell.Cell.Number))
                    stale.UnionWith(cell.Uses.Writes.Select(write => write.Cell));
                else if (cell.Uses.Cells.Overlaps(stale.Where(number => number != parametersCell))
                    || ReadsWhatAnotherChanged(cell))
                    stale.Add(cell.Cell.Number);
            }
        }
    }

    private bool ReadsWhatAnotherChanged(CompiledCell reader) => cells.Any(other =>
        other.Cell.Number < reader.Cell.Number && stale.Contains(other.Cell.Number)
            && other.Uses.Writes.Overlaps(reader.Uses.Reads));

    // Values go straight into the cell's variables, typed: no text of theirs ever becomes code.
    private void Assign(CompiledCell declared)
    {
        if (declared.Variables is null
            || slots.FirstOrDefault(slot => slot?.GetType() == declared.Variables) is not { } variables)
            return;
        foreach (var (name, value) in values)
        {
            if (declared.Variable(name) is { } field)
            {
                var type = Nullable.GetUnderlyingType(field.FieldType) ?? field.FieldType;
                field.SetValue(variables, value is IConvertible && type != value.GetType()
                    ? Convert.ChangeType(value, type, System.Globalization.CultureInfo.InvariantCulture)
                    : value);
            }
        }
    }
}
