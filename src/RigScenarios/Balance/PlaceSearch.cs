using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>Solves for the place of a part: the offset along its carrier's x axis at which the rig's centre lies where it is
/// wanted.</summary>
public static class PlaceSearch
{
    /// <summary>Gain below which a part is taken not to move the centre at all.</summary>
    private const double LeastGain = 1e-12;

    /// <summary>The offset of a part, with all that hangs on it, at which the rig's x equals a wanted value.</summary>
    /// <param name="build">The build.</param>
    /// <param name="part">The part to move.</param>
    /// <param name="range">Where it can be moved.</param>
    /// <param name="centreX">The x wanted for the rig's centre.</param>
    /// <exception cref="ArgumentException">There is no such part.</exception>
    public static PlaceAnswer OffsetFor(PlacedBuild build, string part, LengthRange range, Length centreX)
    {
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(range);
        build.Named(part);
        var kernel = new PlacementKernel(build);
        var moved = Enumerable.Range(0, kernel.Names.Count).First(i => kernel.Names[i] == part);
        // The centre moves in proportion: by the moved share of the mass, along the carrier's x axis.
        var share = Enumerable.Range(moved, kernel.Names.Count - moved).Where(i => kernel.HangsOn(i, moved))
            .Sum(kernel.Kilograms);
        var total = kernel.Total();
        var gain = share / total.Kilograms * kernel.CarrierAxes(moved).X.X;
        var present = build.Parts[part].Placement.Offset.X.Meters;
        double CentreAt(double offset) => total.Centre.X + (gain * (offset - present));

        double wanted = centreX.Meters, least = range.Least.Meters, greatest = range.Greatest.Meters;
        if (Math.Abs(gain) < LeastGain)
            return Answer(PlaceLimit.DoesNotMoveTheCentre, present, wanted, total.Centre.X);
        var exact = present + ((wanted - total.Centre.X) / gain);
        if (exact >= least && exact <= greatest)
            return Answer(null, exact, wanted, CentreAt(exact));
        return exact < least
            ? Answer(PlaceLimit.LowEnd, least, wanted, CentreAt(least))
            : Answer(PlaceLimit.HighEnd, greatest, wanted, CentreAt(greatest));
    }

    private static PlaceAnswer Answer(PlaceLimit? limit, double offset, double wanted, double reached) =>
        new(limit, Length.FromMeters(offset), Length.FromMeters(reached),
            Length.FromMeters(limit is null ? 0 : wanted - reached));
}

/// <summary>Why there is no place.</summary>
public enum PlaceLimit
{
    /// <summary>The place lies below the range.</summary>
    LowEnd,

    /// <summary>The place lies above the range.</summary>
    HighEnd,

    /// <summary>Moving the part along that axis does not move the rig's x.</summary>
    DoesNotMoveTheCentre,
}

/// <summary>A place, or the nearest that there is.</summary>
/// <param name="Limit">What stands in the way; null if the place was found.</param>
/// <param name="OffsetX">The offset found, or the nearer end of the range.</param>
/// <param name="CentreX">The rig's x there.</param>
/// <param name="Missing">What is missing of the wanted x, signed; 0 if it was found.</param>
public sealed record PlaceAnswer(PlaceLimit? Limit, Length OffsetX, Length CentreX, Length Missing)
{
    /// <summary>Whether the place was found.</summary>
    public bool Solved => Limit is null;

    /// <summary>The limit in words; null if the place was found.</summary>
    public string? LimitInWords => Limit switch
    {
        null => null,
        PlaceLimit.LowEnd => "low end of the range",
        PlaceLimit.HighEnd => "high end of the range",
        _ => "the part does not move the centre",
    };
}
