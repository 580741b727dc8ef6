namespace RigScenarios.Tests.Shared;

/// <summary>Checks of every item of a list that fail when there is nothing, or too little, to look at.</summary>
internal static class Each
{
    /// <summary>Every item passes the check, and there are at least so many.</summary>
    public static void Of<T>(IEnumerable<T> items, Action<T> check, int atLeast = 1)
    {
        var all = items.ToList();
        Assert.True(all.Count >= atLeast, $"{all.Count} items to look at, at least {atLeast} are wanted.");
        Assert.All(all, check, throwIfEmpty: atLeast > 0);
    }

    /// <summary>No item has it, and there are at least so many that could.</summary>
    public static void HasNot<T>(IEnumerable<T> items, Func<T, bool> has, int atLeast = 1) =>
        Of(items, item => Assert.False(has(item), $"{item}"), atLeast);

    /// <summary>Each item beside its partner in a list that is as long.</summary>
    public static void Pair<TOne, TOther>(IEnumerable<TOne> some, IEnumerable<TOther> others, Action<TOne, TOther> check,
        int atLeast = 1)
    {
        var (one, other) = (some.ToList(), others.ToList());
        Assert.Equal(one.Count, other.Count);
        Of(one.Zip(other), pair => check(pair.First, pair.Second), atLeast);
    }

    /// <summary>Each item beside the one after it.</summary>
    public static void Step<T>(IEnumerable<T> items, Action<T, T> check, int atLeast = 1)
    {
        var all = items.ToList();
        Of(all.Zip(all.Skip(1)), pair => check(pair.First, pair.Second), atLeast);
    }
}
