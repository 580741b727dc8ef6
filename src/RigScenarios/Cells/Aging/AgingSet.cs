using UnitsNet;

namespace RigScenarios.Cells.Aging;

/// <summary>
/// A published set of aging laws: what is left of the capacity, and where it says so how the resistance grows, by storage and by
/// cycles. The laws with their constants stand in a file each, with the source (docs/aging.md has all of them).
/// </summary>
public sealed record AgingSet
{
    /// <summary>Short name: "nmc", "lfp", "lfp-throughput", "nca", "nmc811si".</summary>
    public required string Name { get; init; }

    /// <summary>What cell it was fitted on, in words.</summary>
    public required string Description { get; init; }

    /// <summary>Where laws and constants come from.</summary>
    public required Citation Source { get; init; }

    /// <summary>What it was tested on.</summary>
    public required AgingRange Tested { get; init; }

    /// <summary>The chemistry whose ratio of growth to loss holds where the set knows no growth.</summary>
    public required CellChemistry Chemistry { get; init; }

    /// <summary>Whether storage ages a battery in this set.</summary>
    public bool KnowsStorage => CalendarLoss is not null;

    /// <summary>Whether the set says how the resistance grows; else it follows the capacity by <see cref="Wear"/>.</summary>
    public bool KnowsResistance => CalendarGrowth is not null;

    /// <summary>Voltage of the set's cell below which its law of storage is no longer that of the fit; null where the set
    /// knows no voltage.</summary>
    public ElectricPotential? LeastVoltage { get; init; }

    /// <summary>Loss over days; null: none known.</summary>
    internal AgingPart? CalendarLoss { get; init; }

    /// <summary>Loss over full cycles.</summary>
    internal AgingPart CycleLoss { get; init; } = AgingPart.None;

    /// <summary>Growth over days; null: none known.</summary>
    internal AgingPart? CalendarGrowth { get; init; }

    /// <summary>Growth over full cycles; null: none known.</summary>
    internal AgingPart? CycleGrowth { get; init; }

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
