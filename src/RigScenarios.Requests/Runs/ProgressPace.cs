using System.Diagnostics;

namespace RigScenarios.Requests.Runs;

/// <summary>Lets through so many progress messages as a person can follow; the end of a cell, and what is news, always.</summary>
internal sealed class ProgressPace(TimeSpan between)
{
    private long? last;

    public bool Lets(double fraction, bool isNews)
    {
        if (fraction < 1 && !isNews && last is { } before && Stopwatch.GetElapsedTime(before) < between)
            return false;
        last = Stopwatch.GetTimestamp();
        return true;
    }
}
