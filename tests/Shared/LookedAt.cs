namespace RigScenarios.Tests.Shared;

/// <summary>Counts the cases that a test really looked at, so that a test whose cases all fall away fails.</summary>
internal sealed class LookedAt
{
    private int count;

    public int Count => count;

    public void One() => Interlocked.Increment(ref count);

    /// <summary>Fails below this number.</summary>
    public void AtLeast(int least) =>
        Assert.True(Count >= least, $"Only {Count} cases were really looked at, at least {least} are wanted.");
}
