using RigScenarios.Balance;
using RigScenarios.Charts.Placement;
using RigScenarios.Files.Formats;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Charts.Balance;

/// <summary>An edge of the region: stretches of points in the axes' units.</summary>
internal sealed record DrawnEdge(BalanceEdge Limit, IReadOnlyList<IReadOnlyList<(double X, double Y)>> Runs)
{
    /// <summary>Whether it is the line beyond which the rig falls, and not that beyond which it creeps.</summary>
    public bool IsCreep { get; init; }
}

/// <summary>A build in the plane, with the limits that it breaks.</summary>
internal sealed record DrawnMark(string Name, IQuantity First, IQuantity Second, double X, double Y,
    IReadOnlyList<BalanceEdge> Broken, bool IsPresent);

/// <summary>An envelope in the units of its axes: outlines, edges by limit, marks.</summary>
internal sealed class EnvelopePicture
{
    private readonly BalanceEnvelope envelope;

    public EnvelopePicture(BalanceEnvelope envelope, EnvelopeChartOptions options)
    {
        this.envelope = envelope;
        X = Axis(envelope.First, options);
        Y = Axis(envelope.Second, options);
        var contours = envelope.Contours(options.Columns, options.Rows);
        Outlines = [.. contours.Select(contour =>
            (IReadOnlyList<(double, double)>)[.. contour.Points.Select(point => (X.Value(point.First), Y.Value(point.Second)))])];
        // The second line, beyond which it falls: only the tilt edge differs, the others are drawn once.
        var creep = envelope.Head.CreepMoment > envelope.Head.Friction
            ? EdgesOf(envelope.WithCreep().Contours(options.Columns, options.Rows)).Where(edge => edge.Limit == BalanceEdge.Tilt)
                .Select(edge => edge with { IsCreep = true }) : [];
        Edges = [.. EdgesOf(contours), .. creep];
        var present = options.Present is { } now
            ? new[] { (Mark: new EnvelopeMark("as it is", now.First, now.Second), IsPresent: true) } : [];
        Marks = [.. present.Concat(options.Alternatives.Select(mark => (Mark: mark, IsPresent: false)))
            .Select(entry => Marked(entry.Mark, entry.IsPresent))];
        XRange = AxisRange.For(X, [X.Value(envelope.First.Least), X.Value(envelope.First.Greatest),
            .. Marks.Select(mark => mark.X)], pad: false);
        YRange = AxisRange.For(Y, [Y.Value(envelope.Second.Least), Y.Value(envelope.Second.Greatest),
            .. Marks.Select(mark => mark.Y)], pad: false);
    }

    public ChartAxis X { get; }

    public ChartAxis Y { get; }

    public AxisRange XRange { get; }

    public AxisRange YRange { get; }

    public IReadOnlyList<IReadOnlyList<(double X, double Y)>> Outlines { get; }

    public IReadOnlyList<DrawnEdge> Edges { get; }

    public IReadOnlyList<DrawnMark> Marks { get; }

    private static ChartAxis Axis(RigVariable variable, EnvelopeChartOptions options)
    {
        var part = variable.Part is { } name ? (options.Names.TryGetValue(name, out var words) ? words : name) : null;
        return variable.Field switch
        {
            PlacementField.OffsetX when part is null =>
                ChartAxis.Of("centre of gravity ahead of the tripod socket", LengthUnit.Millimeter),
            PlacementField.Mass when part is null => ChartAxis.Of("mass of the whole rig", MassUnit.Kilogram),
            PlacementField.OffsetX => ChartAxis.Of($"{part}: forward on its carrier", LengthUnit.Millimeter),
            PlacementField.OffsetY => ChartAxis.Of($"{part}: to the left on its carrier", LengthUnit.Millimeter),
            PlacementField.OffsetZ => ChartAxis.Of($"{part}: up on its carrier", LengthUnit.Millimeter),
            PlacementField.Mass =>
                ChartAxis.Of($"{part}: mass", ((Mass)variable.Greatest).Kilograms < 2 ? MassUnit.Gram : MassUnit.Kilogram),
            PlacementField.Yaw => ChartAxis.Of($"{part}: turned left", AngleUnit.Degree),
            PlacementField.Pitch => ChartAxis.Of($"{part}: nose down", AngleUnit.Degree),
            _ => ChartAxis.Of($"{part}: left side up", AngleUnit.Degree),
        };
    }

    private DrawnMark Marked(EnvelopeMark mark, bool isPresent)
    {
        var margins = envelope.At(mark.First, mark.Second);
        var broken = new List<BalanceEdge>();
        if (margins.TravelFront.Meters < 0)
            broken.Add(BalanceEdge.TravelFrontEnd);
        if (margins.TravelRear.Meters < 0)
            broken.Add(BalanceEdge.TravelRearEnd);
        if (margins.Tilt.NewtonMeters < 0)
            broken.Add(BalanceEdge.Tilt);
        if (margins.Load is { Kilograms: < 0 })
            broken.Add(BalanceEdge.Load);
        return new(mark.Name, mark.First, mark.Second, X.Value(mark.First), Y.Value(mark.Second), broken, isPresent);
    }

    private List<DrawnEdge> EdgesOf(IReadOnlyList<EnvelopeContour> contours)
    {
        var runs = new SortedDictionary<BalanceEdge, List<IReadOnlyList<(double X, double Y)>>>();
        foreach (var contour in contours)
        {
            var points = contour.Points;
            List<(double X, double Y)>? run = null;
            BalanceEdge? limit = null;
            for (var i = 0; i < points.Count; i++)
            {
                var (from, to) = (points[i], points[(i + 1) % points.Count]);
                var next = LimitBetween(from, to);
                if (next is null || next != limit)
                {
                    run = null;
                    limit = next;
                }
                if (next is not { } named)
                    continue;
                if (run is null)
                {
                    run = [(X.Value(from.First), Y.Value(from.Second))];
                    if (!runs.TryGetValue(named, out var all))
                        runs[named] = all = [];
                    all.Add(run);
                }
                run.Add((X.Value(to.First), Y.Value(to.Second)));
            }
        }
        return [.. runs.Select(entry => new DrawnEdge(entry.Key, entry.Value))];
    }

    /// <summary>The limit along a piece of an outline; null along the end of a variable's range.</summary>
    private BalanceEdge? LimitBetween(EnvelopePoint from, EnvelopePoint to)
    {
        if (from.Limit is not { } a || to.Limit is not { } b)
            return null;
        if (a == b)
            return a;
        // Around a corner: that limit whose margin is the smaller share of its size midway.
        var middle = envelope.At(Middle(from.First, to.First, X), Middle(from.Second, to.Second, Y));
        return Share(middle, a) <= Share(middle, b) ? a : b;
    }

    private double Share(EnvelopeMargins margins, BalanceEdge limit) => Math.Abs(limit switch
    {
        BalanceEdge.TravelFrontEnd =>
            margins.TravelFront / (envelope.Head.CameraPlateTravel.Greatest - envelope.Head.CameraPlateTravel.Least),
        BalanceEdge.TravelRearEnd =>
            margins.TravelRear / (envelope.Head.CameraPlateTravel.Greatest - envelope.Head.CameraPlateTravel.Least),
        BalanceEdge.Tilt => margins.Tilt.NewtonMeters / Math.Max(envelope.Head.Friction.NewtonMeters, 0.01),
        _ => (margins.Load ?? Mass.Zero) / (envelope.Head.RatedLoad ?? Mass.FromKilograms(1)),
    });

    private static IQuantity Middle(IQuantity a, IQuantity b, ChartAxis axis) =>
        UsualUnits.From((axis.Value(a) + axis.Value(b)) / 2, axis.QuantityUnit!);
}
