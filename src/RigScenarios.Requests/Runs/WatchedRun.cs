namespace RigScenarios.Requests.Runs;

/// <summary>One run under watch: its place among those that go on at once, its time, and why it was stopped.</summary>
internal sealed class WatchedRun : IDisposable
{
    private readonly RunWatch watch;
    private readonly CancellationTokenSource stop;
    private readonly CancellationTokenSource time;
    private readonly CancellationTokenRegistration timeRegistration;
    private readonly Lock gate = new();
    private bool disposed;

    public WatchedRun(RunWatch watch, TimeSpan limit, CancellationToken cancellation)
    {
        this.watch = watch;
        stop = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        time = new CancellationTokenSource(limit);
        timeRegistration = time.Token.Register(() => Stop(StopReason.Time));
        Cancellation = stop.Token;
    }

    /// <summary>Cancelled when the run is to stop, for whatever reason.</summary>
    public CancellationToken Cancellation { get; }

    /// <summary>Why it passed a bound; null where it was stopped from outside, or not at all.</summary>
    public StopReason? Reason { get; private set; }

    public void Stop(StopReason reason)
    {
        lock (gate)
        {
            if (disposed)
                return;
            Reason ??= reason;
        }
        try
        {
            stop.Cancel();
        }
        catch (ObjectDisposedException)
        {
            // It ended by itself in this moment.
        }
    }

    public void Dispose()
    {
        lock (gate)
        {
            if (disposed)
                return;
            disposed = true;
        }
        timeRegistration.Unregister();
        time.Dispose();
        stop.Dispose();
        watch.Done(this);
    }
}
