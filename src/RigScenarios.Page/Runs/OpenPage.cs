namespace RigScenarios.Page.Runs;

/// <summary>A page that is open: when its reader last asked something, and a way to close it.</summary>
internal sealed class OpenPage(TimeProvider clock) : IDisposable
{
    private readonly CancellationTokenSource room = new();
    private long asked = clock.GetTimestamp();

    /// <summary>Tells whether a run goes on or waits.</summary>
    public Func<bool> IsBusy { get; set; } = () => false;

    /// <summary>Cancelled when its place is needed for another page.</summary>
    public CancellationToken MakesRoom => room.Token;

    /// <summary>How long nobody has asked anything.</summary>
    public TimeSpan Quiet => clock.GetElapsedTime(Volatile.Read(ref asked));

    /// <summary>Its reader asked something.</summary>
    public void Asked() => Volatile.Write(ref asked, clock.GetTimestamp());

    /// <summary>Closes it in favour of another; doesn't wait for that.</summary>
    public void MakeRoom() => _ = room.CancelAsync();

    public void Dispose() => room.Dispose();
}
