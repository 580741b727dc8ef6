using RigScenarios.Parts;

namespace RigScenarios.Answers;

/// <summary>One field set to a value, as <c>--set PATH=VALUE</c> takes it.</summary>
/// <param name="Path">The field's path in the file; a whole entry of a map where the value is a group in braces.</param>
/// <param name="Value">The value as the file would hold it.</param>
public sealed record FieldSetting(string Path, string Value)
{
    /// <summary>As it is typed: <c>path=value</c>.</summary>
    public override string ToString() => $"{Path}={Value}";
}

/// <summary>What a change asks for, the least first.</summary>
public enum ChangeEffort
{
    /// <summary>Nothing to buy and nothing given up.</summary>
    Nothing,

    /// <summary>Something that the kit has.</summary>
    FromKit,

    /// <summary>Nothing to buy, but something is given up: a device that stays off.</summary>
    GivesUp,

    /// <summary>Something to buy or rent.</summary>
    Buy,
}

/// <summary>A change of a scenario that a crew can make.</summary>
/// <param name="Words">What to do, as an order without a full stop: "Take a second Brick 98 Wh".</param>
/// <param name="Settings">The same as settings of fields, in the order in which they are applied.</param>
/// <param name="Effort">What it asks for.</param>
/// <param name="Slot">What it decides; two changes of one slot exclude each other.</param>
public sealed record RigChange(string Words, IReadOnlyList<FieldSetting> Settings, ChangeEffort Effort, string Slot)
{
    /// <summary>What must be so besides, and no model knows: "its 0.3 m cable reaches"; null for nothing.</summary>
    public string? Provided { get; init; }

    /// <summary>What it costs to buy; null where nothing is bought or no price is known.</summary>
    public Money? Price { get; init; }

    /// <summary>The thing of the kit that is bought anew where no other setting names it; null for none.</summary>
    internal string? Renews { get; init; }

    /// <summary>What stands for its price in an order: nothing bought costs nothing, and a price that nobody knows comes behind
    /// all that are known.</summary>
    internal decimal PriceInOrder => Effort == ChangeEffort.Buy ? Price?.Amount ?? Unpriced : 0;

    private const decimal Unpriced = 1e12m;
}
