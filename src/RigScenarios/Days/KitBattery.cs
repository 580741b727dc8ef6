using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Cells.Aging;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Days;

/// <summary>Where a battery rests while it is neither on the rig nor on a charger.</summary>
/// <param name="Temperature">Temperature of the place, such as a pocket or a warm box; null for the air of the moment.</param>
/// <param name="ConductanceFactor">How many times the heat conductance in still air holds there: less where it is wrapped; 0 or
/// more.</param>
public sealed record RestingPlace(Temperature? Temperature = null, double ConductanceFactor = 1)
{
    /// <summary>In the open.</summary>
    public static RestingPlace Open { get; } = new();
}

/// <summary>One battery of the kit: its own pack with its own state.</summary>
/// <remarks>Each value is checked when it is set; one outside its range throws an <see cref="ArgumentException"/>.</remarks>
public sealed record KitBattery
{
    /// <param name="part">The part; a battery.</param>
    /// <exception cref="ArgumentException">The part is no battery.</exception>
    public KitBattery(Part part) => Part = part;

    /// <summary>The part; a battery.</summary>
    public Part Part
    {
        get;
        init
        {
            ArgumentNullException.ThrowIfNull(value);
            if (value.Battery is null)
                throw new ArgumentException($"\"{value.Name}\" is no battery.", nameof(value));
            field = value;
        }
    }

    /// <summary>Charge at the start, 0…1; full unless given.</summary>
    public Ratio Charge
    {
        get;
        init
        {
            Require.Within(value.DecimalFractions, 0, 1, "");
            field = value;
        }
    } = Ratio.FromDecimalFractions(1);

    /// <summary>Share of the capacity that aging has left; null if not known.</summary>
    public Ratio? CapacityLeft { get; init; }

    /// <summary>How many times the resistance of a new battery it has; null if not known: then it goes with the capacity by the
    /// rule of <see cref="Cells.Wear"/>.</summary>
    public double? ResistanceGrowth { get; init; }

    /// <summary>Its life so far in the words of a person; null if nobody told it. What was measured
    /// (<see cref="CapacityLeft"/>, <see cref="ResistanceGrowth"/>) goes before it.</summary>
    public LifeInWords? Life { get; init; }

    /// <summary>Its own temperature at the start; that of its resting place if null.</summary>
    public Temperature? StartTemperature { get; init; }

    /// <summary>One standard deviation of the runtime that a fit to this very battery leaves, as a share of it; null where
    /// nothing was fitted.</summary>
    public Ratio? RuntimeKnownTo { get; init; }

    /// <summary>What the fit rests on, for people: "5 notes and 1 log"; null where nothing was fitted or nobody
    /// said.</summary>
    public string? FittedFrom { get; init; }

    /// <summary>Where it rests.</summary>
    public RestingPlace Rests { get; init; } = RestingPlace.Open;

    /// <summary>Largest charging current by the maker; null if not known.</summary>
    public ElectricCurrent? MaximumChargeCurrent { get; init; }

    /// <summary>The voltage at which a charger holds it when it is nearly full.</summary>
    public ElectricPotential ChargeVoltage
    {
        get
        {
            var pack = MakePack().Pack;
            return pack.SeriesGroups * pack.FullVoltage;
        }
    }

    /// <summary>Its whole state at the start, where it comes from another run: instead of <see cref="Charge"/> and
    /// <see cref="StartTemperature"/>; null for a battery at rest.</summary>
    internal DischargeStart? Begins { get; init; }

    /// <summary>The pack, where it is known as such; null to make it from the part.</summary>
    internal PackAssumptions? Made { get; init; }

    /// <summary>What is known of its age: what was measured, else what its life says.</summary>
    public KnownAge KnownAge => new(Part.Battery!.Chemistry, Life, CapacityLeft, ResistanceGrowth);

    /// <summary>The same battery at an age that is known, whatever was said of it.</summary>
    /// <param name="age">The age.</param>
    public KitBattery At(Age age)
    {
        ArgumentNullException.ThrowIfNull(age);
        return this with { Life = null, CapacityLeft = age.CapacityLeft, ResistanceGrowth = age.ResistanceFactor };
    }

    /// <summary>The pack, with all that had to be assumed.</summary>
    internal PackAssumptions MakePack() => Made ?? PackModel.Of(Part.Battery!, Part.Mass, Part.Size, KnownAge);
}
