using RigScenarios.Charts.Pages;

namespace RigScenarios.Notebooks.Engine;

/// <summary>
/// A cell while it runs here, without a notebook program: collects what it shows. It is found by the thread that runs the cell
/// and by those that it starts, so that notebooks of several readers can run at once.
/// </summary>
internal sealed class CellContext(ShownValues shown, Action<double, string> progress, CancellationToken cancellation)
{
    private static readonly AsyncLocal<CellContext?> Running = new();

    private readonly List<PagePart> parts = [];
    private readonly Lock door = new();

    /// <summary>The cell that runs on this thread; null where none does, and in a notebook program.</summary>
    public static CellContext? Current => Running.Value;

    public CancellationToken Cancellation { get; } = cancellation;

    public ShownValues Shown { get; } = shown;

    /// <summary>Makes this the cell that runs, for the rest of the calling method.</summary>
    public void Enter() => Running.Value = this;

    public void Show(PagePart part)
    {
        lock (door)
            parts.Add(part);
    }

    /// <summary>Adds to what the cell printed; texts that follow each other are one.</summary>
    public void Print(string text)
    {
        lock (door)
        {
            if (parts.LastOrDefault() is PrintedPart before)
                parts[^1] = new PrintedPart(before.Text + text);
            else
                parts.Add(new PrintedPart(text));
        }
    }

    public void Progress(ProgressNote note) => progress(note.Fraction, note.Text);

    /// <summary>Everything shown so far, in order.</summary>
    public IReadOnlyList<PagePart> Parts
    {
        get
        {
            lock (door)
                return [.. parts];
        }
    }
}
