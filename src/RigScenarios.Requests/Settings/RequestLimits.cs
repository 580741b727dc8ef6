namespace RigScenarios.Requests.Settings;

/// <summary>How much one page may ask for, so that no page and no slip of the hand can take the machine.</summary>
public record RequestLimits
{
    /// <summary>The largest request that carries the text of a file, in bytes.</summary>
    public int LargestFileBytes { get; init; } = 2 * 1024 * 1024;

    /// <summary>The largest power log, in bytes; a million rows have some 25 MB.</summary>
    public int LargestLogBytes { get; init; } = 64 * 1024 * 1024;

    /// <summary>The largest other request, in bytes.</summary>
    public int LargestJsonBytes { get; init; } = 256 * 1024;

    /// <summary>How many runs go on at once; others wait.</summary>
    public int Runs { get; init; } = 4;

    /// <summary>How long one run may take. On one thread nothing stops a run but its own end.</summary>
    public TimeSpan RunTime { get; init; } = TimeSpan.FromSeconds(120);

    /// <summary>How long a stopped run is waited for before the page goes on without it.</summary>
    public TimeSpan Grace { get; init; } = TimeSpan.FromSeconds(2);

    /// <summary>The memory of the whole program above which runs are stopped, in bytes.</summary>
    public long MemoryBytes { get; init; } = 1536L * 1024 * 1024;

    /// <summary>The least time between two progress messages of one run.</summary>
    public TimeSpan BetweenProgress { get; init; } = TimeSpan.FromMilliseconds(100);

    /// <summary>Tells the memory in use, in bytes. Tests put their own here.</summary>
    internal Func<long> MemoryInUse { get; init; } =
        () => OperatingSystem.IsBrowser() ? GC.GetTotalMemory(forceFullCollection: false) : Environment.WorkingSet;

    /// <summary>How often memory is looked at while runs go on. On one thread nobody could look.</summary>
    internal TimeSpan BetweenMemoryLooks { get; init; } =
        OperatingSystem.IsBrowser() ? Timeout.InfiniteTimeSpan : TimeSpan.FromMilliseconds(500);
}
