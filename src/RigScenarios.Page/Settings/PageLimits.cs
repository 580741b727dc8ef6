using RigScenarios.Requests.Settings;

namespace RigScenarios.Page.Settings;

/// <summary>How much one reader may ask of the server, so that no page and no slip of the hand can take the machine.</summary>
public sealed record PageLimits : RequestLimits
{
    /// <summary>The largest message of a living page, in bytes.</summary>
    public int LargestMessageBytes { get; init; } = 64 * 1024;

    /// <summary>How many living pages may be open at once where only this machine is listened to.</summary>
    public int Readers { get; init; } = 12;

    /// <summary>How many living pages may be open at once where others on the network have them too, such as a class.</summary>
    public int ReadersOnNetwork { get; init; } = 40;

    /// <summary>How long nobody has asked anything of a page before it may be closed to make room for another.</summary>
    public TimeSpan Idle { get; init; } = TimeSpan.FromSeconds(60);

    /// <summary>The part of <see cref="RequestLimits.MemoryBytes"/> in use above which a new page takes the place of an idle
    /// one.</summary>
    public double MemoryForNewPages { get; init; } = 0.75;

    /// <summary>How many connections may be open that have shown the key.</summary>
    public int Connections { get; init; } = 400;

    /// <summary>How many connections may be open that have not shown the key; one more closes the oldest.</summary>
    public int Strangers { get; init; } = 64;

    /// <summary>How long a connection has to show the key.</summary>
    public TimeSpan StrangerTime { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>How long a search for the best rig looks before it gives what it has; shorter than a run may take.</summary>
    public TimeSpan SearchTime { get; init; } = TimeSpan.FromSeconds(40);
}
