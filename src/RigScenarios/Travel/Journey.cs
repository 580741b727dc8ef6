using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Travel;

/// <summary>How the batteries travel on one leg.</summary>
public enum Leg
{
    /// <summary>With people on a passenger flight, as baggage.</summary>
    Flight,

    /// <summary>As air cargo, without people.</summary>
    Cargo,

    /// <summary>By car or van.</summary>
    Road,
}

/// <summary>Who travels.</summary>
/// <param name="Names">A name for each; "traveller 1" and so on where only a number is known.</param>
/// <param name="Named">Whether the names are real ones.</param>
public sealed record Travellers(IReadOnlyList<string> Names, bool Named)
{
    /// <summary>One traveller without a name.</summary>
    public static Travellers One { get; } = Of(1);

    /// <summary>How many there are.</summary>
    public int Count => Names.Count;

    /// <summary>Whether the same people travel.</summary>
    public bool Equals(Travellers? other) =>
        other is not null && Named == other.Named && Names.SequenceEqual(other.Names, StringComparer.Ordinal);

    /// <inheritdoc/>
    public override int GetHashCode() => Names.Aggregate(Count, (hash, name) => HashCode.Combine(hash, name));

    /// <summary>A number of travellers without names.</summary>
    /// <param name="count">How many; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 1.</exception>
    public static Travellers Of(int count)
    {
        Require.AtLeast(count, 1, nameof(count));
        return new Travellers(count == 1 ? ["Traveller"]
            : [.. Enumerable.Range(1, count).Select(number => $"Traveller {number}")], false);
    }
}

/// <summary>Some equal batteries that travel in the same manner.</summary>
public sealed record PackedBattery
{
    /// <summary>Short name, as in the kit.</summary>
    public required string Name { get; init; }

    /// <summary>Name for people.</summary>
    public required string Title { get; init; }

    /// <summary>Watt-hours of one.</summary>
    public required RatedEnergy Rated { get; init; }

    /// <summary>Mass of one; null if not known.</summary>
    public Mass? Mass { get; init; }

    /// <summary>How many; 1 or more.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Whether they are in equipment; else they are spare.</summary>
    public bool Installed { get; init; }

    /// <summary>Whether contacts are covered; of no account for those in equipment.</summary>
    public bool ContactsCovered { get; init; } = true;

    /// <summary>Whether they count as power banks.</summary>
    public bool PowerBank { get; init; }

    /// <summary>Whether spare ones lie, as cargo, in one package with the equipment that they power.</summary>
    public bool WithEquipment { get; init; }

    /// <summary>State of charge when handed over; null if not known.</summary>
    public Ratio? Charge { get; init; }
}

/// <summary>A journey with batteries.</summary>
/// <param name="Title">Name for people.</param>
/// <param name="Date">The day of travel; picks the edition of the rules.</param>
/// <param name="Travellers">Who travels; of no account where nobody flies.</param>
/// <param name="Legs">How the batteries travel, in order; at least one.</param>
/// <param name="Batteries">What is packed.</param>
public sealed record Journey(string Title, DateOnly Date, Travellers Travellers,
    IReadOnlyList<Leg> Legs, IReadOnlyList<PackedBattery> Batteries);
