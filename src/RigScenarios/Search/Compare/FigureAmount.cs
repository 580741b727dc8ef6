using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Search.Compare;

/// <summary>A figure, or a difference of two: a quantity with its unit, or money with its currency.</summary>
public sealed record FigureAmount
{
    private FigureAmount(IQuantity? quantity, Money? money) => (Quantity, Money) = (quantity, money);

    /// <summary>The quantity; null where it is money.</summary>
    public IQuantity? Quantity { get; }

    /// <summary>The money, of either sign; null where it is a quantity.</summary>
    public Money? Money { get; }

    /// <summary>The number, in the unit or the currency of the figure.</summary>
    internal double Number => Money is { } money ? (double)money.Amount : (double)Quantity!.Value;

    /// <summary>A quantity.</summary>
    /// <param name="quantity">The quantity.</param>
    public static FigureAmount Of(IQuantity quantity)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        return new(quantity, null);
    }

    /// <summary>An amount of money.</summary>
    /// <param name="money">The money, of either sign.</param>
    public static FigureAmount Of(Money money) => new(null, money);
}
