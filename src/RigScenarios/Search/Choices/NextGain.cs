namespace RigScenarios.Search.Choices;

/// <summary>What more money buys along a front.</summary>
/// <param name="From">The best entry for the money so far; null if nothing is to be had for it.</param>
/// <param name="To">The best entry for more money; the same one where more money buys nothing better.</param>
/// <param name="Extra">How much more <paramref name="To"/> costs; its whole cost without <paramref name="From"/>.</param>
/// <param name="Gain">By how much the goal gets less; NaN without <paramref name="From"/>, zero where more money buys
/// nothing.</param>
public sealed record NextGain(FrontEntry? From, FrontEntry To, double Extra, double Gain)
{
    /// <summary>The steps along the front in money: from the cheapest entry to the next one that is better in the goal, and so
    /// on. Entries for which one of both is not known are left out.</summary>
    /// <param name="front">The front.</param>
    /// <param name="money">The goal that is money, by its place.</param>
    /// <param name="goal">The goal that shall get better.</param>
    public static IReadOnlyList<NextGain> Along(FrontResult front, int money, int goal)
    {
        var stairs = Stairs(front, money, goal);
        return [.. stairs.Zip(stairs.Skip(1)).Select(pair => Step(pair.First, pair.Second, money, goal))];
    }

    /// <summary>What so much more buys on top of a budget.</summary>
    /// <param name="front">The front.</param>
    /// <param name="money">The goal that is money, by its place.</param>
    /// <param name="goal">The goal that shall get better.</param>
    /// <param name="budget">The money so far, in the unit of the goal.</param>
    /// <param name="extra">The more, at least zero.</param>
    /// <returns>The gain; null if even then nothing is to be had.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The more is less than zero or no number.</exception>
    public static NextGain? Within(FrontResult front, int money, int goal, double budget, double extra)
    {
        if (!(extra >= 0))
            throw new ArgumentOutOfRangeException(nameof(extra), extra, "More money is zero or more, for example 100.");
        var stairs = Stairs(front, money, goal);
        return stairs.LastOrDefault(entry => entry.Goals[money] <= budget + extra) is { } to
            ? Step(stairs.LastOrDefault(entry => entry.Goals[money] <= budget), to, money, goal) : null;
    }

    private static NextGain Step(FrontEntry? from, FrontEntry to, int money, int goal) =>
        new(from, to, to.Goals[money] - (from?.Goals[money] ?? 0), from is null ? double.NaN : from.Goals[goal] - to.Goals[goal]);

    // Each entry is dearer than the one before and better in the goal.
    private static List<FrontEntry> Stairs(FrontResult front, int money, int goal)
    {
        ArgumentNullException.ThrowIfNull(front);
        var stairs = new List<FrontEntry>();
        foreach (var entry in front.Entries.Where(entry => !double.IsNaN(entry.Goals[money]) && !double.IsNaN(entry.Goals[goal]))
            .OrderBy(entry => entry.Goals[money]).ThenBy(entry => entry.Goals[goal]))
        {
            if (stairs.Count == 0 || entry.Goals[goal] < stairs[^1].Goals[goal])
                stairs.Add(entry);
        }
        return stairs;
    }
}
