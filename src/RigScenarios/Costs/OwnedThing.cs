using RigScenarios.Parts;

namespace RigScenarios.Costs;

/// <summary>A thing that can be bought, or bought and rented.</summary>
/// <param name="Name">Its short name.</param>
/// <param name="Price">What one costs to buy, 0 or more.</param>
public sealed record OwnedThing(string Name, decimal Price)
{
    /// <summary>How many of them.</summary>
    public int Count { get; init; } = 1;

    /// <summary>What one costs to rent; null where nobody says.</summary>
    public RentPrice? Rent { get; init; }

    /// <summary>What one brings when it is sold at the end of the years; null to work it out from the price.</summary>
    public decimal? Resale { get; init; }

    /// <summary>Years after which it is worn out and replaced, by the shooting days a year: a battery. Null where it lasts;
    /// the years null where so few days never wear it out.</summary>
    public Func<int, double?>? WearsOutIn { get; init; }

    /// <summary>Of a line of a kit's cost with its part.</summary>
    /// <param name="line">The line.</param>
    /// <param name="part">Its part.</param>
    /// <param name="wearsOutIn">As <see cref="WearsOutIn"/>.</param>
    /// <returns>Null where its price is not known.</returns>
    internal static OwnedThing? Of(KitCostLine line, Part part, Func<int, double?>? wearsOutIn) =>
        part.Buy is not { } price ? null : new OwnedThing(line.Name, price.Amount)
        {
            Count = line.Count, Rent = RentPrice.Of(part), Resale = part.Resale?.Amount, WearsOutIn = wearsOutIn,
        };
}
