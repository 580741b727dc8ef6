namespace RigScenarios.Page.Settings;

/// <summary>How much one reader may ask of the server, so that no page and no slip of the hand can take the machine.</summary>
public sealed record PageLimits
{
    /// <summary>The largest request that carries the text of a file, in bytes.</summary>
    public int LargestFileBytes { get; init; } = 2 * 1024 * 1024;

    /// <summary>The largest power log, in bytes; a million rows have some 25 MB.</summary>
    public int LargestLogBytes { get; init; } = 64 * 1024 * 1024;

    /// <summary>The largest other request, in bytes.</summary>
    public int LargestJsonBytes { get; init; } = 256 * 1024;

    /// <summary>The largest message of a living page, in bytes.</summary>
    public int LargestMessageBytes { get; init; } = 64 * 1024;

    /// <summary>How many living pages may be open at once where only this machine is listened to.</summary>
    public int Readers { get; init; } = 12;

    /// <summary>How many living pages may be open at once where others on the network have them too, such as a class.</summary>
    public int ReadersOnNetwork { get; init; } = 40;

    /// <summary>How long nobody has asked anything of a page before it may be closed to make room for another.</summary>
    public TimeSpan Idle { get; init; } = TimeSpan.FromSeconds(60);

    /// <summary>The part of <see cref="MemoryBytes"/> in use above which a new page takes the place of an idle one.</summary>
    public double MemoryForNewPages { get; init; } = 0.75;

    /// <summary>How many connections may be open that have shown the key.</summary>
    public int Connections { get; init; } = 400;

    /// <summary>How many connections may be open that have not shown the key; one more closes the oldest.</summary>
    public int Strangers { get; init; } = 64;

    /// <summary>How long a connection has to show the key.</summary>
    public TimeSpan StrangerTime { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>How many runs go on at once; others wait.</summary>
    public int Runs { get; init; } = 4;

    /// <summary>How long one run may take.</summary>
    public TimeSpan RunTime { get; init; } = TimeSpan.FromSeconds(120);

    /// <summary>How long a search for the best rig looks before it gives what it has; shorter than a run may take.</summary>
    public TimeSpan SearchTime { get; init; } = TimeSpan.FromSeconds(40);

    /// <summary>How long a stopped run is waited for before the page goes on without it.</summary>
    public TimeSpan Grace { get; init; } = TimeSpan.FromSeconds(2);

    /// <summary>The memory of the whole program above which runs are stopped, in bytes.</summary>
    public long MemoryBytes { get; init; } = 1536L * 1024 * 1024;

    /// <summary>The least time between two progress messages of one run.</summary>
    public TimeSpan BetweenProgress { get; init; } = TimeSpan.FromMilliseconds(100);

    /// <summary>Tells the memory in use, in bytes. Tests put their own here.</summary>
    internal Func<long> MemoryInUse { get; init; } = () => Environment.WorkingSet;

    /// <summary>How often memory is looked at.</summary>
    internal TimeSpan BetweenMemoryLooks { get; init; } = TimeSpan.FromMilliseconds(500);
}
