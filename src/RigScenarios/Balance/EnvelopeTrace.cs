using RigScenarios.Numerics;

namespace RigScenarios.Balance;

/// <summary>A point of an outline in plain numbers.</summary>
internal readonly record struct TracePoint(double First, double Second, BalanceEdge? Limit);

/// <summary>
/// Follows the edges of the envelope over a grid (marching squares). The grid has a rim of points outside, so that every outline
/// closes; the points
/// on the grid's lines and the corners between two limits are solved for.
/// </summary>
internal sealed class EnvelopeTrace
{
    private readonly RigPlane plane;
    private readonly HeadKernel head;
    private readonly (double Low, double High, int Points) across;
    private readonly (double Low, double High, int Points) along;
    private readonly bool[] inside;
    private readonly int width;
    private readonly Dictionary<int, TracePoint> crossings = [];
    private readonly List<(int From, int To, TracePoint? Corner)> segments = [];

    public EnvelopeTrace(RigPlane plane, HeadKernel head, (double Low, double High, int Points) across,
        (double Low, double High, int Points) along)
    {
        (this.plane, this.head, this.across, this.along) = (plane, head, across, along);
        width = along.Points + 2;
        inside = new bool[(across.Points + 2) * width];
        for (var c = 1; c <= across.Points; c++)
        {
            plane.Line(First(c));
            for (var r = 1; r <= along.Points; r++)
                inside[(c * width) + r] = head.Margins(plane.At(Second(r))).Inside;
        }
    }

    /// <summary>A margin this little below 0 is a root as it was found, m, N·m or kg.</summary>
    private const double Settled = 1e-9;

    public List<List<TracePoint>> Outlines()
    {
        for (var c = 0; c <= across.Points; c++)
        {
            for (var r = 0; r <= along.Points; r++)
                Cell(c, r);
        }

        return Joined();
    }

    private double First(int c) => At(across, c);

    private double Second(int r) => At(along, r);

    // The last point is the end of the range exactly.
    private static double At((double Low, double High, int Points) axis, int i) =>
        i == axis.Points ? axis.High : axis.Low + ((axis.High - axis.Low) * (i - 1) / (axis.Points - 1));

    private void Cell(int c, int r)
    {
        var a = (c * width) + r;
        var (b, d, e) = (a + width, a + width + 1, a + 1);
        bool inA = inside[a], inB = inside[b], inD = inside[d], inE = inside[e];
        if (inA == inB && inB == inD && inD == inE)
            return;
        // Grid edges by the point where they begin: even along the first variable, odd along the second.
        int bottom = 2 * a, left = (2 * a) + 1, right = (2 * b) + 1, top = 2 * e;
        if (inA == inD && inB == inE)
        {
            var middle = Margins((First(c) + First(c + 1)) / 2, (Second(r) + Second(r + 1)) / 2).Inside;
            if (middle == inA)
            {
                Join(c, r, bottom, right);
                Join(c, r, top, left);
            }
            else
            {
                Join(c, r, bottom, left);
                Join(c, r, top, right);
            }

            return;
        }

        var crossed = new List<int>(2);
        if (inA != inB)
            crossed.Add(bottom);
        if (inB != inD)
            crossed.Add(right);
        if (inE != inD)
            crossed.Add(top);
        if (inA != inE)
            crossed.Add(left);
        Join(c, r, crossed[0], crossed[1]);
    }

    private void Join(int c, int r, int from, int to)
    {
        TracePoint one = Crossing(from), other = Crossing(to);
        segments.Add((from, to, one.Limit is { } first && other.Limit is { } second
            && first != second ? Corner(c, r, one, other) : null));
    }

    private TracePoint Crossing(int edge)
    {
        if (crossings.TryGetValue(edge, out var known))
            return known;
        int from = edge / 2, to = edge % 2 == 0 ? from + width : from + 1;
        var (kept, lost) = inside[from] ? (from, to) : (to, from);
        double x = First(kept / width), y = Second(kept % width);
        var point = new TracePoint(x, y, null);
        int c = lost / width, r = lost % width;
        if (c >= 1 && c <= across.Points && r >= 1 && r <= along.Points)
            point = FirstBroken(x, y, First(c) - x, Second(r) - y);
        crossings[edge] = point;
        return point;
    }

    /// <summary>
    /// The first limit that breaks on the way from a point inside. A limit can break and hold again before the way's end, so that
    /// each crossing that is found is looked at
    /// for another that broke before it.
    /// </summary>
    private TracePoint FirstBroken(double x, double y, double dx, double dy)
    {
        var (part, point, start) = (1d, new TracePoint(x, y, null), Margins(x, y));
        for (var found = true; found;)
        {
            found = false;
            var here = Margins(x + (part * dx), y + (part * dy));
            var (end, broken) = (part, Enum.GetValues<BalanceEdge>()
                .Where(limit => here.Of(limit) < -Settled && limit != point.Limit).ToList());
            foreach (var limit in broken)
            {
                // A head without friction has a tilt margin of 0 wherever it is balanced: the edge is where that ends.
                var aside = start.Of(limit) > 0 ? 0 : Settled;
                var at = RootBracket.Root(share => Margins(x + (share * dx), y + (share * dy)).Of(limit) + aside, 0, end, 1e-12);
                if (at < part)
                    (part, point, found) = (at, new TracePoint(x + (at * dx), y + (at * dy), limit), true);
            }
        }
        return point;
    }

    /// <summary>Where two limits meet in a cell, by Newton's method with differences; null where they do not meet
    /// there.</summary>
    private TracePoint? Corner(int c, int r, TracePoint one, TracePoint other)
    {
        double width1 = First(c + 1) - First(c), width2 = Second(r + 1) - Second(r);
        double x = (one.First + other.First) / 2, y = (one.Second + other.Second) / 2;
        const double difference = 1e-5;
        (double P, double Q) Both(double u, double v)
        {
            var margins = Margins(u, v);
            return (margins.Of(one.Limit!.Value), margins.Of(other.Limit!.Value));
        }

        for (var i = 0; i < 20; i++)
        {
            var here = Both(x, y);
            var right = Both(x + (difference * width1), y);
            var up = Both(x, y + (difference * width2));
            double a = (right.P - here.P) / difference, b = (up.P - here.P) / difference;
            double d = (right.Q - here.Q) / difference, e = (up.Q - here.Q) / difference;
            var determinant = (a * e) - (b * d);
            if (determinant == 0)
                return null;
            double step1 = ((here.P * e) - (b * here.Q)) / determinant, step2 = ((a * here.Q) - (here.P * d)) / determinant;
            x -= step1 * width1;
            y -= step2 * width2;
            if (!(x >= First(c) && x <= First(c + 1) && y >= Second(r) && y <= Second(r + 1)))
                return null;
            if (Math.Abs(step1) + Math.Abs(step2) < 1e-9)
                return new TracePoint(x, y, one.Limit);
        }

        return null;
    }

    private HeadMargins Margins(double first, double second)
    {
        plane.Line(first);
        return head.Margins(plane.At(second));
    }

    private List<List<TracePoint>> Joined()
    {
        var at = segments.Index().SelectMany(one => new[] { (Edge: one.Item.From, one.Index), (Edge: one.Item.To, one.Index) })
            .ToLookup(pair => pair.Edge, pair => pair.Index);
        var used = new bool[segments.Count];
        var outlines = new List<List<TracePoint>>();
        for (var start = 0; start < segments.Count; start++)
        {
            if (used[start])
                continue;
            var outline = new List<TracePoint>();
            var edge = segments[start].From;
            for (var next = start; next >= 0;)
            {
                used[next] = true;
                Append(outline, crossings[edge]);
                if (segments[next].Corner is { } corner)
                    Append(outline, corner);
                edge = segments[next].From == edge ? segments[next].To : segments[next].From;
                next = at[edge].Where(index => !used[index]).DefaultIfEmpty(-1).First();
            }

            outlines.Add(outline);
        }

        return outlines;
    }

    private static void Append(List<TracePoint> outline, TracePoint point)
    {
        if (outline.Count == 0 || outline[^1].First != point.First || outline[^1].Second != point.Second)
            outline.Add(point);
    }
}
