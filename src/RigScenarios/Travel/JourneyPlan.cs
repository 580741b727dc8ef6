using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Travel;

/// <summary>How one kind of battery of the kit is packed.</summary>
public sealed record BatteryPacking
{
    /// <summary>How many of them are in equipment; the others are spare.</summary>
    public int Installed { get; init; }

    /// <summary>Whether the contacts of the spare ones are covered, by a cap, tape, packaging or a bag for each.</summary>
    public bool ContactsCovered { get; init; } = true;

    /// <summary>Whether they count as power banks.</summary>
    public bool PowerBank { get; init; }

    /// <summary>Whether, as cargo, the spare ones lie in one package with the equipment that they power.</summary>
    public bool WithEquipment { get; init; }

    /// <summary>State of charge when handed over.</summary>
    public Ratio? Charge { get; init; }
}

/// <summary>A journey as a scenario plans it: it names batteries of the kit.</summary>
public sealed record JourneyPlan
{
    /// <summary>Its name for people.</summary>
    public string? Title { get; init; }

    /// <summary>The day of travel; null for the day on which it is asked.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Who travels.</summary>
    public Travellers Travellers { get; init; } = Travellers.One;

    /// <summary>How the batteries travel.</summary>
    public IReadOnlyList<Leg> By { get; init; } = [Leg.Flight];

    /// <summary>Whether it comes after the days, as a flight home does: what stays behind on it is missed on no day.</summary>
    public bool AfterDays { get; init; }

    /// <summary>The batteries that come along, by their names in the kit; none means all.</summary>
    public IReadOnlyList<string> Batteries { get; init; } = [];

    /// <summary>How they are packed, by their names in the kit; what is not named is spare with covered contacts.</summary>
    public OrderedMap<BatteryPacking> Packed { get; init; } = OrderedMap<BatteryPacking>.Empty;
}
