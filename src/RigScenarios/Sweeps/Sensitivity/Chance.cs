using UnitsNet;

namespace RigScenarios.Sweeps.Sensitivity;

/// <summary>In how many of many runs something is so, as a probability with its error.</summary>
/// <param name="Yes">In how many runs it is so.</param>
/// <param name="No">In how many it is not.</param>
/// <param name="Unknown">In how many nobody can say: they count neither way, and are told.</param>
public sealed record Chance(long Yes, long No, long Unknown = 0)
{
    /// <summary>Runs in which it is known.</summary>
    public long Known => Yes + No;

    /// <summary>The share of the runs in which it is so, of those in which it is known; null where it is known in none.</summary>
    public Ratio? Share => Known > 0 ? Ratio.FromDecimalFractions((double)Yes / Known) : null;
}
