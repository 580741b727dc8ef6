namespace RigScenarios.Search.Choices;

/// <summary>When a search has to end: at its time limit, or when whoever started it wants it no more.</summary>
internal sealed class SearchDeadline : IDisposable
{
    private readonly CancellationTokenSource? limit;
    private readonly CancellationTokenSource? linked;
    private readonly CancellationToken outer;
    private readonly TimeProvider clock;
    private readonly long start;
    private readonly TimeSpan? length;

    public SearchDeadline(TimeSpan? length, TimeProvider clock, CancellationToken cancellation)
    {
        this.length = length;
        this.clock = clock;
        outer = cancellation;
        start = clock.GetTimestamp();
        Token = cancellation;
        if (length is not { } time)
            return;
        limit = new CancellationTokenSource(time, clock);
        linked = CancellationTokenSource.CreateLinkedTokenSource(limit.Token, cancellation);
        Token = linked.Token;
    }

    /// <summary>Stops work at either.</summary>
    public CancellationToken Token { get; }

    /// <summary>Whether the time limit is over.</summary>
    public bool IsOver => Left <= TimeSpan.Zero;

    /// <summary>What is left of the time limit; null without one.</summary>
    public TimeSpan? Left => length - clock.GetElapsedTime(start);

    /// <exception cref="OperationCanceledException">Whoever started the search wants it no more.</exception>
    public void ThrowIfStopped() => outer.ThrowIfCancellationRequested();

    public void Dispose()
    {
        linked?.Dispose();
        limit?.Dispose();
    }
}
