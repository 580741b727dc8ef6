using UnitsNet;

namespace RigScenarios.Cells.Aging;

/// <summary>
/// The same history through every set that may speak for the battery: the spread of published fits, no bound on what a cell may
/// do.
/// </summary>
/// <param name="Lives">The battery by each set; the set that speaks for it is the first.</param>
public sealed record AgingBand(IReadOnlyList<LifeResult> Lives)
{
    /// <summary>Least capacity left at the end over the sets.</summary>
    public Ratio Least => Lives.Min(one => one.Age.CapacityLeft);

    /// <summary>Greatest capacity left at the end over the sets.</summary>
    public Ratio Greatest => Lives.Max(one => one.Age.CapacityLeft);

    /// <summary>The band of a history; its measurements count in each set.</summary>
    /// <param name="set">The set that speaks for the battery.</param>
    /// <param name="phases">What it went through.</param>
    /// <param name="pattern">What goes on after them; if null, the last phase that is no measurement.</param>
    /// <exception cref="ArgumentException">As for <see cref="BatteryLife.After"/>.</exception>
    public static AgingBand Of(AgingSet set, IReadOnlyList<LifePhase> phases, LifePhase? pattern = null) =>
        new([.. AgingSets.BandFor(set).Select(one => BatteryLife.After(one, false, phases, pattern))]);

    /// <summary>Least and greatest capacity left after a further time in which the pattern goes on.</summary>
    /// <param name="further">How much further; 0 or more.</param>
    public (Ratio Least, Ratio Greatest) After(Duration further)
    {
        var left = Lives.Select(one => one.After(further).CapacityLeft).ToList();
        return (left.Min(), left.Max());
    }
}
