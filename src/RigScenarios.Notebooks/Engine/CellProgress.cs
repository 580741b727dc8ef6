namespace RigScenarios.Notebooks.Engine;

/// <summary>Shows in the cell how far a long search has come, in steps that a reader can follow.</summary>
/// <param name="text">What is being done.</param>
internal sealed class CellProgress(string text) : IProgress<double>
{
    private const double Step = 0.02;
    private double shown = -1;

    public void Report(double value)
    {
        if (value < shown + Step)
            return;
        shown = value;
        CellDisplay.Progress(value, text);
    }
}
