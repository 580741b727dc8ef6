using UnitsNet;

namespace RigScenarios.Cells.Aging;

/// <summary>A range in which a set was tested; both ends are inside.</summary>
/// <param name="Least">Lower end.</param>
/// <param name="Greatest">Upper end.</param>
/// <typeparam name="T">Type of the quantity.</typeparam>
public readonly record struct TestedRange<T>(T Least, T Greatest) where T : struct;

/// <summary>
/// What a set of aging constants was tested on. Null where the set has no such dependence (nothing can lie outside) or where
/// nothing is known of it.
/// </summary>
public sealed record AgingRange
{
    /// <summary>Temperature of storage.</summary>
    public TestedRange<Temperature>? Storage { get; init; }

    /// <summary>Charge in storage, 0…1.</summary>
    public TestedRange<Ratio>? StorageCharge { get; init; }

    /// <summary>Temperature while cycled.</summary>
    public TestedRange<Temperature>? Cycles { get; init; }

    /// <summary>Current over the capacity while cycled, 1/h (the C-rate).</summary>
    public TestedRange<double>? RatePerHour { get; init; }

    /// <summary>Depth of the cycles, 0…1.</summary>
    public TestedRange<Ratio>? Depth { get; init; }

    /// <summary>Longest test in time.</summary>
    public Duration? LongestTime { get; init; }

    /// <summary>Longest test in full cycles.</summary>
    public double? MostCycles { get; init; }

    /// <summary>Which of these are no published ranges but from memory or the project's choice; empty where none is.</summary>
    public string Unsure { get; init; } = "";
}
