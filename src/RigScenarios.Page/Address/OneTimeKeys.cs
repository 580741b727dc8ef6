namespace RigScenarios.Page.Address;

/// <summary>What became of a one-time key that was shown.</summary>
internal enum OneTimeKey
{
    /// <summary>It was given out by this start and nobody had used it: now it is used up.</summary>
    Taken,

    /// <summary>It was given out, and somebody used it before, or it is too old.</summary>
    Spent,

    /// <summary>It was never given out here.</summary>
    Unknown,
}

/// <summary>
/// Keys that open the pages once. The address that a browser is started with stands in the machine's list of processes, where
/// every user can read it for as long as the browser runs: so it carries one of these, and never the lasting key.
/// </summary>
internal sealed class OneTimeKeys(TimeProvider clock)
{
    /// <summary>How long a key waits for the browser: a cold one on a busy machine takes its time.</summary>
    public static TimeSpan Life { get; } = TimeSpan.FromMinutes(2);

    private const int Most = 16;

    private readonly Lock gate = new();
    private readonly List<Given> given = [];

    /// <summary>A new key. Of many that nobody used only the newest are kept.</summary>
    public string New()
    {
        var key = AccessToken.New();
        lock (gate)
        {
            given.Add(new Given(key, clock.GetUtcNow()));
            if (given.Count > Most)
                given.RemoveAt(0);
        }
        return key.Text;
    }

    /// <summary>Takes a key, once.</summary>
    public OneTimeKey Take(string? text)
    {
        lock (gate)
        {
            var found = given.Find(known => known.Key.Is(text));
            if (found is null)
                return OneTimeKey.Unknown;
            if (found.IsSpent || clock.GetUtcNow() - found.At > Life)
                return OneTimeKey.Spent;
            found.IsSpent = true;
            return OneTimeKey.Taken;
        }
    }

    private sealed class Given(AccessToken key, DateTimeOffset at)
    {
        public AccessToken Key { get; } = key;

        public DateTimeOffset At { get; } = at;

        public bool IsSpent { get; set; }
    }
}
