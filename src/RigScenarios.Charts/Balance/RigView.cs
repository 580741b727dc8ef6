using RigScenarios.Balance;

namespace RigScenarios.Charts.Balance;

/// <summary>From where a rig is looked at.</summary>
internal enum RigSide
{
    /// <summary>From the camera's right: the lens points right, up is up.</summary>
    Right,

    /// <summary>From above: the lens points right, the camera's left is up.</summary>
    Above,
}

/// <summary>A part as it is seen: its outline in metres, y upwards.</summary>
/// <param name="Name">The part's name in the build.</param>
/// <param name="Number">Its number in the drawing's list, from 1.</param>
/// <param name="Outline">Corners of the projected box.</param>
/// <param name="Middle">The middle of the projected box.</param>
/// <param name="Nearness">What is larger lies nearer to the eye.</param>
/// <param name="Along">One metre along its carrier's x axis, as it is seen.</param>
internal sealed record SeenPart(string Name, int Number, IReadOnlyList<(double X, double Y)> Outline, (double X, double Y) Middle,
    double Nearness, (double X, double Y) Along);

/// <summary>A build seen from one side.</summary>
internal sealed class RigView
{
    private readonly PlacedBuild build;

    public RigView(PlacedBuild build, RigSide side)
    {
        this.build = build;
        Side = side;
        var places = build.MassProperties.Parts;
        Parts = [.. build.Parts.Index().Select(entry => See(entry.Item.Key, entry.Index + 1, entry.Item.Value, places))];
        Centre = Project(build.MassProperties.Centre);
    }

    public RigSide Side { get; }

    /// <summary>The parts in the order of the build.</summary>
    public IReadOnlyList<SeenPart> Parts { get; }

    /// <summary>The centre of gravity, m.</summary>
    public (double X, double Y) Centre { get; }

    /// <summary>All that the view must have room for, wherever in their ranges the parts that can be moved stand.</summary>
    public IEnumerable<(double X, double Y)> Points(RigScenarios.Parts.OrderedMap<LengthRange> moveable)
    {
        yield return Centre;
        var seen = Parts.ToDictionary(part => part.Name, StringComparer.Ordinal);
        foreach (var part in Parts)
        {
            double left = 0, right = 0, down = 0, up = 0;
            for (var name = part.Name; name is not null && moveable.Count > 0; name = build.Parts[name].Placement.Carrier)
            {
                if (!moveable.TryGetValue(name, out var range))
                    continue;
                var at = build.Parts[name].Placement.Offset.X;
                var (back, forward) = (Math.Min(0, (range.Least - at).Meters), Math.Max(0, (range.Greatest - at).Meters));
                var (x, y) = seen[name].Along;
                (left, right) = (left + Math.Min(back * x, forward * x), right + Math.Max(back * x, forward * x));
                (down, up) = (down + Math.Min(back * y, forward * y), up + Math.Max(back * y, forward * y));
            }
            foreach (var (x, y) in part.Outline)
            {
                yield return (x + left, y + down);
                yield return (x + right, y + up);
            }
        }
    }

    private SeenPart See(string name, int number, PlacedPart part, RigScenarios.Parts.OrderedMap<PartInPlace> places)
    {
        var place = places[name];
        var corners = Corners(part).Select(place.InRig).ToList();
        var middle = place.InRig(part.BoxMiddle);
        var along = RigPoint.FromMetres(1, 0, 0);
        if (part.Placement.Carrier is { } carrier)
        {
            var (from, to) = (places[carrier].InRig(RigPoint.Origin), places[carrier].InRig(along));
            along = new(to.X - from.X, to.Y - from.Y, to.Z - from.Z);
        }
        return new(name, number, ConvexOutline.Of(corners.Select(Project)), Project(middle),
            Side == RigSide.Right ? -middle.Y.Meters : middle.Z.Meters, Project(along));
    }

    private static IEnumerable<RigPoint> Corners(PlacedPart part)
    {
        foreach (var x in new[] { -0.5, 0.5 })
        {
            foreach (var y in new[] { -0.5, 0.5 })
            {
                foreach (var z in new[] { -0.5, 0.5 })
                    yield return new(part.BoxMiddle.X + (x * part.Size.Length), part.BoxMiddle.Y + (y * part.Size.Width),
                        part.BoxMiddle.Z + (z * part.Size.Height));
            }
        }
    }

    // Rounded to a nanometre: the eight corners of a straight box are then four points.
    private (double X, double Y) Project(RigPoint point) =>
        (Math.Round(point.X.Meters, 9), Math.Round((Side == RigSide.Right ? point.Z : point.Y).Meters, 9));
}
