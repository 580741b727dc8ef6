using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>What is odd about where parts sit: boxes that run into each other, parts outside the range of their mount.</summary>
public sealed record PlacementCheck
{
    /// <summary>Overlaps up to this depth are not reported: feet, screws and rounding.</summary>
    public static Length AcceptedOverlap { get; } = Length.FromMillimeters(2);

    private PlacementCheck(IReadOnlyList<BoxOverlap> overlaps, IReadOnlyList<string> outsideRange) =>
        (Overlaps, OutsideRange) = (overlaps, outsideRange);

    /// <summary>Pairs of parts whose boxes run into each other deeper than accepted, the deepest first. Parts that carry each
    /// other, and hollow ones, are left out.</summary>
    public IReadOnlyList<BoxOverlap> Overlaps { get; }

    /// <summary>Parts whose offset lies outside the range of their mount.</summary>
    public IReadOnlyList<string> OutsideRange { get; }

    /// <summary>Checks a build.</summary>
    public static PlacementCheck Of(PlacedBuild build)
    {
        ArgumentNullException.ThrowIfNull(build);
        var names = build.Parts.Keys.ToList();
        var overlaps = new List<BoxOverlap>();
        for (var i = 0; i < names.Count; i++)
        {
            for (var j = i + 1; j < names.Count; j++)
            {
                PlacedPart one = build.Parts[names[i]], other = build.Parts[names[j]];
                if (one.IsHollow || other.IsHollow || one.Placement.Carrier == names[j] || other.Placement.Carrier == names[i])
                    continue;
                var depth = Depth(Box(build, names[i]), Box(build, names[j]));
                if (depth > AcceptedOverlap.Meters)
                    overlaps.Add(new(names[i], names[j], Length.FromMeters(depth)));
            }
        }

        return new([.. overlaps.OrderByDescending(overlap => overlap.Depth)],
            [.. build.Parts.Where(part => part.Value.Placement is { OffsetXRange: { } range } placement
                && !range.Holds(placement.Offset.X)).Select(part => part.Key)]);
    }

    private static (Vector Middle, RotationMatrix Axes, Vector Half) Box(PlacedBuild build, string name)
    {
        var place = build.MassProperties.Parts[name];
        var size = build.Parts[name].Size;
        return (place.BoxMiddle, place.Axes, new Vector(size.Length.Meters / 2, size.Width.Meters / 2, size.Height.Meters / 2));
    }

    /// <summary>
    /// How deep two turned boxes run into each other, m; 0 or less if they don't. The separating-axis test: two boxes are apart
    /// if they are
    /// along one of 15 directions (S. Gottschalk, M. C. Lin, D. Manocha, "OBBTree", SIGGRAPH 1996; from memory).
    /// </summary>
    private static double Depth((Vector Middle, RotationMatrix Axes, Vector Half) a,
        (Vector Middle, RotationMatrix Axes, Vector Half) b)
    {
        Vector[] first = [a.Axes.X, a.Axes.Y, a.Axes.Z], second = [b.Axes.X, b.Axes.Y, b.Axes.Z];
        var depth = double.PositiveInfinity;
        foreach (var direction in first.Concat(second).Concat(first.SelectMany(one => second.Select(one.Cross))))
        {
            var length = direction.Length;
            // Edges side by side: the faces' directions decide.
            if (length < 1e-9)
                continue;
            var reach = (Reach(a, direction) + Reach(b, direction) - Math.Abs((b.Middle - a.Middle).Dot(direction))) / length;
            depth = Math.Min(depth, reach);
        }

        return depth;
    }

    private static double Reach((Vector Middle, RotationMatrix Axes, Vector Half) box, Vector direction) =>
        (box.Half.X * Math.Abs(box.Axes.X.Dot(direction))) + (box.Half.Y * Math.Abs(box.Axes.Y.Dot(direction)))
            + (box.Half.Z * Math.Abs(box.Axes.Z.Dot(direction)));
}

/// <summary>Two parts whose boxes run into each other.</summary>
/// <param name="One">One part.</param>
/// <param name="Other">The other part.</param>
/// <param name="Depth">How far one would have to move to be free.</param>
public sealed record BoxOverlap(string One, string Other, Length Depth);
