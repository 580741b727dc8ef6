using RigScenarios.Parts;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Balance;

/// <summary>A figure of one part, or of the whole rig, that is varied over a range.</summary>
public sealed record RigVariable
{
    private RigVariable(string? part, PlacementField field, IQuantity least, IQuantity greatest)
    {
        (Part, Field, Least, Greatest) = (part, field, least, greatest);
        Low = Plain(least);
        High = Plain(greatest);
        Require.Finite(Low, Unit, nameof(least));
        if (!(High > Low) || !double.IsFinite(High))
            throw new ArgumentException($"The range ends at {High:G6} {Unit}; accepted: above its beginning, {Low:G6} {Unit}.",
                nameof(greatest));
        if (field == PlacementField.Mass)
            Require.NotNegative(Low, Unit, nameof(least));
    }

    /// <summary>The part; null for the whole rig.</summary>
    public string? Part { get; }

    /// <summary>What is varied. Of the whole rig, an offset is that of its centre.</summary>
    public PlacementField Field { get; }

    /// <summary>The beginning of the range: a length, a mass or an angle, as the field asks.</summary>
    public IQuantity Least { get; }

    /// <summary>The end of the range.</summary>
    public IQuantity Greatest { get; }

    internal double Low { get; }

    internal double High { get; }

    private string Unit => Field switch { PlacementField.Mass => "kg", >= PlacementField.Yaw => "rad", _ => "m" };

    /// <summary>An offset of a part along an axis of its carrier.</summary>
    /// <param name="part">The part's name.</param>
    /// <param name="field">Which of the three offsets.</param>
    /// <param name="range">The range; its ends differ.</param>
    /// <exception cref="ArgumentException">The field is not an offset, or the range has no width.</exception>
    public static RigVariable Offset(string part, PlacementField field, LengthRange range)
    {
        ArgumentNullException.ThrowIfNull(range);
        if (field > PlacementField.OffsetZ)
            throw new ArgumentException(
                $"{field} is not an offset; accepted: {PlacementField.OffsetX}, {PlacementField.OffsetY}, "
                    + $"{PlacementField.OffsetZ}.", nameof(field));
        return new(part, field, range.Least, range.Greatest);
    }

    /// <summary>The mass of a part: which battery, which lens.</summary>
    /// <param name="part">The part's name.</param>
    /// <param name="least">0 or more.</param>
    /// <param name="greatest">Above the least.</param>
    /// <exception cref="ArgumentException">The range has no width, or begins below 0.</exception>
    public static RigVariable OfMass(string part, Mass least, Mass greatest) => new(part, PlacementField.Mass, least, greatest);

    /// <summary>A turn of a part against its carrier.</summary>
    /// <param name="part">The part's name.</param>
    /// <param name="field">Yaw, pitch or roll.</param>
    /// <param name="least">The beginning.</param>
    /// <param name="greatest">Above the beginning.</param>
    /// <exception cref="ArgumentException">The field is not a turn, or the range has no width.</exception>
    public static RigVariable Turn(string part, PlacementField field, Angle least, Angle greatest)
    {
        if (field < PlacementField.Yaw)
            throw new ArgumentException(
                $"{field} is not a turn; accepted: {PlacementField.Yaw}, {PlacementField.Pitch}, {PlacementField.Roll}.",
                nameof(field));
        return new(part, field, least, greatest);
    }

    /// <summary>The x of the whole rig's centre, for the classic picture.</summary>
    internal static RigVariable CentreX(LengthRange range) => new(null, PlacementField.OffsetX, range.Least, range.Greatest);

    /// <summary>The mass of the whole rig, for the classic picture.</summary>
    internal static RigVariable TotalMass(Mass least, Mass greatest) => new(null, PlacementField.Mass, least, greatest);

    /// <summary>A value as a plain number: m, kg or rad.</summary>
    /// <exception cref="ArgumentException">The quantity is of another kind.</exception>
    internal double Plain(IQuantity value) => (Field, value) switch
    {
        (PlacementField.Mass, Mass mass) => mass.Kilograms,
        ( >= PlacementField.Yaw, Angle angle) => angle.Radians,
        ( <= PlacementField.OffsetZ, Length length) => length.Meters,
        _ => throw new ArgumentException($"{Field} is {value}; accepted: a value in {Unit}.", nameof(value)),
    };

    internal IQuantity Quantity(double plain) => Field switch
    {
        PlacementField.Mass => new Mass(plain, MassUnit.Kilogram),
        >= PlacementField.Yaw => new Angle(plain, AngleUnit.Radian),
        _ => new Length(plain, LengthUnit.Meter),
    };
}
