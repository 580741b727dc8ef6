using System.Runtime.InteropServices;

namespace RigScenarios.Fits;

/// <summary>One thing that was observed.</summary>
/// <param name="Predictor">What predicts it.</param>
/// <param name="Output">Which of its outputs.</param>
/// <param name="Observed">What was seen.</param>
/// <param name="Deviation">One standard deviation of it; 0 where that belongs to an estimate.</param>
/// <param name="Note">Number of the note that it is of; -1 for none.</param>
/// <param name="IsBound">Whether the prediction should lie above it, instead of at it.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct FitDatum(
    int Predictor, int Output, double Observed, double Deviation, int Note = -1, bool IsBound = false)
{
    /// <summary>What a note says: its time, and the percentage that the battery showed then.</summary>
    public static IEnumerable<FitDatum> Of(FieldNote note, int number, int predictor)
    {
        var seconds = (note.Runtime ?? note.StillRunning!.Value).Seconds;
        yield return new FitDatum(predictor, 0, Math.Log(seconds), Spread.OfNote(note.Run, seconds, note.ClockError.Seconds),
            number, note.Runtime is null);
        if (note.PercentShown is { } shown)
            yield return new FitDatum(predictor, 1, shown.DecimalFractions, Spread.Percent, number);
    }
}
