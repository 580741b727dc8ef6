using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Simulation;

/// <summary>What shall be left over.</summary>
/// <param name="LeastAtSwap">Charge that each battery shall still hold when it comes off; null for no such wish.</param>
/// <param name="TimeLeft">How long what is left at the end shall last (<see cref="Reserve"/>); null for no such wish.</param>
public sealed record KitWish(Ratio? LeastAtSwap = null, Duration? TimeLeft = null)
{
    /// <summary>Nothing but that the days complete.</summary>
    public static KitWish None { get; } = new();
}

/// <summary>One kit that was looked at.</summary>
/// <param name="Batteries">Its batteries, by their names in the plan.</param>
/// <param name="Bays">The bays of each charger.</param>
/// <param name="Simulated">Whether the days were run with it; false where a bound proves that it fails.</param>
/// <param name="Survives">Whether the days complete with what shall be left over.</param>
/// <param name="Where">Where and why it fails; empty if it survives.</param>
public sealed record KitTrial(IReadOnlyList<string> Batteries, OrderedMap<int> Bays, bool Simulated, bool Survives, string Where)
{
    /// <summary>All bays together.</summary>
    public int BayCount => Bays.Values.Sum();
}

/// <summary>The least kit with what proves it.</summary>
/// <param name="Least">The kit with the fewest batteries, and of those the fewest bays; null if none survives, with all that the
/// plan has.</param>
/// <param name="Result">How the days go with it; null if none survives.</param>
/// <param name="Tried">Every kit that was looked at, smallest first: all but the last fail.</param>
public sealed record LeastKitResult(KitTrial? Least, SimulationResult? Result, IReadOnlyList<KitTrial> Tried);

/// <summary>How far a search is.</summary>
/// <param name="Tried">Kits looked at.</param>
/// <param name="AtMost">Kits that there are.</param>
/// <param name="Last">The last one.</param>
public sealed record LeastKitProgress(int Tried, long AtMost, KitTrial Last);
