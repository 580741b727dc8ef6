using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>
/// A part with its place on the rig: a box of even density, as long as nothing better is known. Immutable; "what if" is
/// <c>with</c>.
/// </summary>
public sealed record PlacedPart
{
    /// <summary>Its mass; 0 or more.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or not finite.</exception>
    public Mass Mass { get; init => field = Checked(value); }

    /// <summary>Half-width of the uncertainty of the mass; 0 takes it as exact.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or not finite.</exception>
    public Mass MassUncertainty { get; init => field = Checked(value); }

    /// <summary>The outer box, edges along the part's own axes.</summary>
    public BoxSize Size { get; init; } = new(Length.Zero, Length.Zero, Length.Zero);

    /// <summary>The middle of the box, from the part's mounting point, along its own axes.</summary>
    public RigPoint BoxMiddle { get; init; } = RigPoint.Origin;

    /// <summary>The centre of mass, from the mounting point, along its own axes; null where nobody knows it: then the middle of
    /// the box.</summary>
    public RigPoint? MassCentre { get; init; }

    /// <summary>Half-widths of the uncertainty of the part's own centre along the <b>rig's</b> axes; 0 takes it as
    /// exact.</summary>
    public RigPoint CentreUncertainty { get; init; } = RigPoint.Origin;

    /// <summary>Whether other parts can be inside its box, as with a cage, a pair of rods or a bent arm; such a box is not
    /// reported as in the way.</summary>
    public bool IsHollow { get; init; }

    /// <summary>Where it sits.</summary>
    public Placement Placement { get; init; } = new();

    /// <summary>The centre that is used.</summary>
    public RigPoint CentreUsed => MassCentre ?? BoxMiddle;

    /// <summary>A part of a parts file at its place. Its mounting point is taken as the middle of the box's under side.</summary>
    /// <param name="part">The part; it must say its mass and size.</param>
    /// <param name="placement">Where it sits.</param>
    /// <exception cref="ArgumentException">The part has no mass or no size.</exception>
    public static PlacedPart From(Part part, Placement placement)
    {
        ArgumentNullException.ThrowIfNull(part);
        if (part.Mass is not { } mass || part.Size is not { } size)
            throw new ArgumentException(
                $"\"{part.Name}\" has no {(part.Mass is null ? "mass" : "size")}; accepted: a part with both, for instance "
                    + "450 g and 100 mm x 60 mm x 40 mm.", nameof(part));
        return new() { Mass = mass, Size = size, BoxMiddle = new(Length.Zero, Length.Zero, size.Height / 2),
            Placement = placement };
    }

    private static Mass Checked(Mass value, [System.Runtime.CompilerServices.CallerMemberName] string name = "")
    {
        Require.NotNegative(value.Kilograms, "kg", name);
        return value;
    }
}
