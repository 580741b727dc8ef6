using RigScenarios.Cells.Aging;
using UnitsNet;

namespace RigScenarios.Scenarios;

/// <summary>One battery of those that are swapped through the days, and the state it is in at the start.</summary>
public sealed record BatteryAtStart
{
    /// <summary>Its name in the kit.</summary>
    public string Item { get; init; } = "";

    /// <summary>Charge at the start; null means full.</summary>
    public Ratio? Charge { get; init; }

    /// <summary>Share of the capacity that aging has left; null if not known.</summary>
    public Ratio? CapacityLeft { get; init; }

    /// <summary>How many times the resistance of a new battery it has; null if not known: then it goes with the capacity by the
    /// rule of <see cref="Cells.Wear"/>.</summary>
    public double? ResistanceGrowth { get; init; }

    /// <summary>Its life so far in the words of a person; null if nobody told it. What was measured
    /// (<see cref="CapacityLeft"/>, <see cref="ResistanceGrowth"/>) goes before it.</summary>
    public LifeInWords? Life { get; init; }

    /// <summary>Its own temperature at the start; null means that of its place.</summary>
    public Temperature? StartTemperature { get; init; }

    /// <summary>One standard deviation of the runtime that a fit to this very battery leaves, as a share of it; null where
    /// nothing was fitted.</summary>
    public Ratio? RuntimeKnownTo { get; init; }

    /// <summary>What the fit rests on, for people: "5 notes and 1 log"; null where nothing was fitted or nobody
    /// said.</summary>
    public string? FittedFrom { get; init; }

    /// <summary>Temperature of the place where it rests; null means the air.</summary>
    public Temperature? RestsAt { get; init; }

    /// <summary>How many times the heat conductance in still air holds where it rests.</summary>
    public double HeatFactor { get; init; } = 1;

    /// <summary>Largest charging current by the maker; null if not known.</summary>
    public ElectricCurrent? MaximumChargeCurrent { get; init; }
}
