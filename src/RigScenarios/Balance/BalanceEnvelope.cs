using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>
/// The region of two variables in which a rig can be balanced on a head and stays where it is let go: travel, tilt and load
/// margins all 0 or more, with plate and counterbalance chosen
/// anew at every point. A line can cross an edge several times: the steps of a counterbalance make bands.
/// </summary>
public sealed class BalanceEnvelope
{
    private readonly Func<RigPlane> plane;
    private readonly HeadKernel kernel;

    private BalanceEnvelope(FluidHead head, RigVariable first, RigVariable second, Func<RigPlane> plane,
        bool isCreepAllowed = false)
    {
        (Head, First, Second, this.plane, IsCreepAllowed) = (head, first, second, plane, isCreepAllowed);
        kernel = new HeadKernel(head, isCreepAllowed);
    }

    /// <summary>Whether the region is that in which the rig stays or creeps when it is let go, and not only that in which it
    /// stays.</summary>
    public bool IsCreepAllowed { get; }

    /// <summary>The larger region, in which the rig stays or creeps: its tilt edge is the second line of the picture.</summary>
    public BalanceEnvelope WithCreep() => new(Head, First, Second, plane, isCreepAllowed: true);

    /// <summary>The head.</summary>
    public FluidHead Head { get; }

    /// <summary>The first variable.</summary>
    public RigVariable First { get; }

    /// <summary>The second variable.</summary>
    public RigVariable Second { get; }

    /// <summary>The envelope over two figures of a build's parts.</summary>
    /// <param name="build">The build.</param>
    /// <param name="head">The head.</param>
    /// <param name="first">The first variable.</param>
    /// <param name="second">The second variable; another one than the first.</param>
    /// <exception cref="ArgumentException">A part is not in the build, or both variables are the same.</exception>
    public static BalanceEnvelope Of(PlacedBuild build, FluidHead head, RigVariable first, RigVariable second)
    {
        ArgumentNullException.ThrowIfNull(build);
        ArgumentNullException.ThrowIfNull(head);
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        build.Named(first.Part ?? "");
        build.Named(second.Part ?? "");
        if (first.Part == second.Part && first.Field == second.Field)
            throw new ArgumentException($"Both variables are {first.Field} of \"{first.Part}\"; accepted: two different ones.",
                nameof(second));
        return new(head, first, second, () => new PlacedRigPlane(build, first, second));
    }

    /// <summary>The classic picture: the centre's x against the mass of the whole rig, with the centre's height kept.</summary>
    /// <param name="head">The head.</param>
    /// <param name="height">z of the rig's centre.</param>
    /// <param name="centreX">The range of x.</param>
    /// <param name="least">The least mass; above 0.</param>
    /// <param name="greatest">The greatest mass.</param>
    /// <exception cref="ArgumentException">A range has no width.</exception>
    public static BalanceEnvelope OfCentreAndMass(FluidHead head, Length height, LengthRange centreX, Mass least, Mass greatest)
    {
        ArgumentNullException.ThrowIfNull(head);
        ArgumentNullException.ThrowIfNull(centreX);
        return new(head, RigVariable.CentreX(centreX), RigVariable.TotalMass(least, greatest),
            () => new CentreAndMassPlane(height.Meters));
    }

    /// <summary>The margins at a point.</summary>
    /// <param name="first">A value of the first variable.</param>
    /// <param name="second">A value of the second variable.</param>
    /// <exception cref="ArgumentException">A value is not of its variable's kind.</exception>
    public EnvelopeMargins At(IQuantity first, IQuantity second)
    {
        var line = plane();
        line.Line(First.Plain(first));
        var margins = kernel.Margins(line.At(Second.Plain(second)));
        return new(Length.FromMeters(margins.TravelFront), Length.FromMeters(margins.TravelRear),
            Torque.FromNewtonMeters(margins.Tilt),
            double.IsFinite(margins.Load) ? Mass.FromKilograms(margins.Load) : null, margins.Inside);
    }

    /// <summary>Every zero of every margin along the second variable at one value of the first, from low to high; solved, not
    /// read off a grid.</summary>
    /// <param name="first">A value of the first variable.</param>
    /// <exception cref="ArgumentException">The value is not of the variable's kind.</exception>
    public IReadOnlyList<EnvelopeEdge> EdgesAt(IQuantity first) =>
        [.. new EnvelopeLine(plane(), kernel).Edges(First.Plain(first), Second.Low, Second.High)
            .Select(edge => new EnvelopeEdge(first, Second.Quantity(edge.Second), edge.Limit, edge.Limiting))];

    /// <summary>
    /// The outlines of the region. Points on a grid line are solved for, as exactly as <see cref="EdgesAt"/>; where two limits
    /// meet inside a cell the
    /// corner is solved for. A band or a gap narrower than a cell can be missed.
    /// </summary>
    /// <param name="columns">Grid points along the first variable; 2 or more.</param>
    /// <param name="rows">Grid points along the second variable; 2 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 2.</exception>
    public IReadOnlyList<EnvelopeContour> Contours(int columns = 200, int rows = 200)
    {
        Parts.Require.AtLeast(columns, 2, nameof(columns));
        Parts.Require.AtLeast(rows, 2, nameof(rows));
        var trace = new EnvelopeTrace(plane(), kernel, (First.Low, First.High, columns), (Second.Low, Second.High, rows));
        return [.. trace.Outlines().Select(outline => new EnvelopeContour(
            [.. outline.Select(point => new EnvelopePoint(First.Quantity(point.First), Second.Quantity(point.Second),
                point.Limit))]))];
    }
}

/// <summary>The margins at a point of the envelope's plane.</summary>
/// <param name="TravelFront">s_max - x.</param>
/// <param name="TravelRear">x - s_min.</param>
/// <param name="Tilt">What the head holds less the worst residual: friction at rest, or where it is allowed to creep what it does
/// not fall under.</param>
/// <param name="Load">Rated load less the mass; null where no rating is known.</param>
/// <param name="Inside">Whether all are 0 or more.</param>
public sealed record EnvelopeMargins(Length TravelFront, Length TravelRear, Torque Tilt, Mass? Load, bool Inside);

/// <summary>A place where a margin is zero.</summary>
/// <param name="First">The value of the first variable.</param>
/// <param name="Second">The value of the second variable.</param>
/// <param name="Limit">The margin that is zero.</param>
/// <param name="Limiting">Whether all other margins are 0 or more there: an edge of the region itself.</param>
public sealed record EnvelopeEdge(IQuantity First, IQuantity Second, BalanceEdge Limit, bool Limiting);

/// <summary>A closed outline of the region, or of a hole in it; the last point joins the first.</summary>
/// <param name="Points">Its points in order.</param>
public sealed record EnvelopeContour(IReadOnlyList<EnvelopePoint> Points);

/// <summary>A point of an outline.</summary>
/// <param name="First">The value of the first variable.</param>
/// <param name="Second">The value of the second variable.</param>
/// <param name="Limit">The limit that is reached there; null where the outline runs along the end of a variable's range.</param>
public sealed record EnvelopePoint(IQuantity First, IQuantity Second, BalanceEdge? Limit);
