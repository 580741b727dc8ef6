namespace RigScenarios.Search.Choices;

/// <summary>When a search has to end: at its time limit, when whoever started it has enough and wants what there is, or when they
/// want nothing of it any more.</summary>
internal sealed class SearchDeadline : IDisposable
{
    private readonly CancellationTokenSource? limit;
    private readonly CancellationTokenSource? linked;
    private readonly CancellationToken outer;
    private readonly CancellationToken enough;
    private readonly TimeProvider clock;
    private readonly long start;
    private readonly TimeSpan? length;

    public SearchDeadline(TimeSpan? length, TimeProvider clock, CancellationToken cancellation, CancellationToken enough)
    {
        this.enough = enough;
        this.length = length;
        this.clock = clock;
        outer = cancellation;
        start = clock.GetTimestamp();
        Token = cancellation;
        if (length is null && !enough.CanBeCanceled)
            return;
        limit = length is { } time ? new CancellationTokenSource(time, clock) : new CancellationTokenSource();
        linked = CancellationTokenSource.CreateLinkedTokenSource(limit.Token, enough, cancellation);
        Token = linked.Token;
    }

    /// <summary>Stops work at any of these.</summary>
    public CancellationToken Token { get; }

    /// <summary>Whether the time limit is over, or what there is is enough.</summary>
    public bool IsOver => Left <= TimeSpan.Zero;

    /// <summary>What is left of the time limit, nothing where what there is is enough; null without a limit.</summary>
    public TimeSpan? Left => enough.IsCancellationRequested ? TimeSpan.Zero : length - clock.GetElapsedTime(start);

    /// <exception cref="OperationCanceledException">Whoever started the search wants it no more.</exception>
    public void ThrowIfStopped() => outer.ThrowIfCancellationRequested();

    public void Dispose()
    {
        linked?.Dispose();
        limit?.Dispose();
    }
}
