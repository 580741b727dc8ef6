using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Cells.Aging;

/// <summary>How far a shoot empties a battery: a word or a share. What a word stands for is this project's choice.</summary>
public sealed record Emptied
{
    private Emptied(string? word, Ratio depth) => (Word, Depth) = (word, depth);

    /// <summary>A fifth of it.</summary>
    public static Emptied ALittle { get; } = new("a little", Ratio.FromDecimalFractions(0.2));

    /// <summary>Half of it.</summary>
    public static Emptied Half { get; } = new("half", Ratio.FromDecimalFractions(0.5));

    /// <summary>Four fifths of it.</summary>
    public static Emptied Mostly { get; } = new("mostly", Ratio.FromDecimalFractions(0.8));

    /// <summary>All of it.</summary>
    public static Emptied ToTheEnd { get; } = new("to the end", Ratio.FromDecimalFractions(1));

    /// <summary>The words, the shallowest first.</summary>
    public static IReadOnlyList<Emptied> All { get; } = [ALittle, Half, Mostly, ToTheEnd];

    /// <summary>The word as files write it; null where a share is given.</summary>
    public string? Word { get; }

    /// <summary>The share, 0…1.</summary>
    public Ratio Depth { get; }

    /// <summary>A share of its own.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It lies outside 0…1.</exception>
    public static Emptied By(Ratio depth)
    {
        Require.Within(depth.DecimalFractions, 0, 1, "", nameof(depth));
        return new(null, depth);
    }

    /// <summary>The entry of a word; null if it is none of them.</summary>
    public static Emptied? Find(string? word) => All.FirstOrDefault(one => WordText.Same(one.Word, word));
}

/// <summary>At which charge a battery is kept: a word or a share.</summary>
public sealed record Kept
{
    private readonly Ratio? charge;

    private Kept(string? word, Ratio? charge) => (Word, this.charge) = (word, charge);

    /// <summary>Charged full after each shoot.</summary>
    public static Kept Full { get; } = new("full", Ratio.FromDecimalFractions(1));

    /// <summary>At half charge.</summary>
    public static Kept Half { get; } = new("half", Ratio.FromDecimalFractions(0.5));

    /// <summary>As it came back from the shoot, charged right before the next.</summary>
    public static Kept AsItCameBack { get; } = new("as it came back", null);

    /// <summary>The words.</summary>
    public static IReadOnlyList<Kept> All { get; } = [Full, Half, AsItCameBack];

    /// <summary>The word as files write it; null where a share is given.</summary>
    public string? Word { get; }

    /// <summary>A share of its own.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It lies outside 0…1.</exception>
    public static Kept At(Ratio charge)
    {
        Require.Within(charge.DecimalFractions, 0, 1, "", nameof(charge));
        return new(null, charge);
    }

    /// <summary>The entry of a word; null if it is none of them.</summary>
    public static Kept? Find(string? word) => All.FirstOrDefault(one => WordText.Same(one.Word, word));

    /// <summary>The charge in 0…1, for a battery that a shoot empties so far.</summary>
    public Ratio ChargeAfter(Emptied emptied)
    {
        ArgumentNullException.ThrowIfNull(emptied);
        return charge ?? Ratio.FromDecimalFractions(1 - emptied.Depth.DecimalFractions);
    }
}

/// <summary>Where a battery is kept: a word or a temperature, which holds all the time.</summary>
public sealed record StoragePlace
{
    private StoragePlace(string? word, Temperature temperature) => (Word, Temperature) = (word, temperature);

    /// <summary>8 °C.</summary>
    public static StoragePlace Fridge { get; } = new("fridge", Temperature.FromDegreesCelsius(8));

    /// <summary>20 °C.</summary>
    public static StoragePlace Room { get; } = new("room", Temperature.FromDegreesCelsius(20));

    /// <summary>30 °C.</summary>
    public static StoragePlace WarmStore { get; } = new("warm store", Temperature.FromDegreesCelsius(30));

    /// <summary>45 °C all the time; a summer in it is a phase of its own.</summary>
    public static StoragePlace HotVan { get; } = new("hot van", Temperature.FromDegreesCelsius(45));

    /// <summary>The words, the coolest first.</summary>
    public static IReadOnlyList<StoragePlace> All { get; } = [Fridge, Room, WarmStore, HotVan];

    /// <summary>The word as files write it; null where a temperature is given.</summary>
    public string? Word { get; }

    /// <summary>The temperature.</summary>
    public Temperature Temperature { get; }

    /// <summary>A temperature of its own.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not above absolute zero.</exception>
    public static StoragePlace At(Temperature temperature)
    {
        Require.Positive(temperature.Kelvins, "K", nameof(temperature));
        return new(null, temperature);
    }

    /// <summary>The entry of a word; null if it is none of them.</summary>
    public static StoragePlace? Find(string? word) => All.FirstOrDefault(one => WordText.Same(one.Word, word));
}

/// <summary>Words of a file: spaces or hyphens between them, capital letters or small.</summary>
internal static class WordText
{
    public static bool Same(string? word, string? given) => word is not null
        && string.Equals(word, given?.Trim().Replace('-', ' '), StringComparison.OrdinalIgnoreCase);
}
