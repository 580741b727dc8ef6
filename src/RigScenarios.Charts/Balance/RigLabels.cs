using System.Runtime.CompilerServices;
using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Balance;

/// <summary>A part in a view that wants its number, and its name where there is room; pixels, y downwards.</summary>
internal sealed record LabelWish(string Name, string Short, string Long, double Sign, IReadOnlyList<(double X, double Y)> Outline)
{
    public double Area { get; } = ConvexOutline.Area(Outline);

    public Box Around { get; } = new(Outline.Min(p => p.X), Outline.Min(p => p.Y), Outline.Max(p => p.X), Outline.Max(p => p.Y));

    /// <summary>The outline's edges with the room that each takes: most lie far from any box and are passed over at
    /// once.</summary>
    public List<DrawnLine> Edges { get; } =
        [.. Outline.Select((corner, i) => new DrawnLine(corner, Outline[(i + 1) % Outline.Count]))];

    public (double X, double Y) Middle => ((Around.Left + Around.Right) / 2, (Around.Top + Around.Bottom) / 2);
}

/// <summary>A straight line in a view, pixels.</summary>
internal sealed record DrawnLine((double X, double Y) From, (double X, double Y) To)
{
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public bool Crosses(Box box) =>
        Math.Min(From.X, To.X) <= box.Right && Math.Max(From.X, To.X) >= box.Left && Math.Min(From.Y, To.Y) <= box.Bottom
            && Math.Max(From.Y, To.Y) >= box.Top
        && box.IsCrossed(From, To);
}

/// <summary>A label at its place.</summary>
/// <param name="Wish">What it names.</param>
/// <param name="Text">The number, or the number with the name.</param>
/// <param name="Box">Its box, the sign for "can be moved" included.</param>
/// <param name="Leader">Where a thin line to the part ends; null where the label stands on the part.</param>
internal sealed record RigLabel(LabelWish Wish, string Text, Box Box, (double X, double Y)? Leader);

/// <summary>
/// Finds room for the numbers of a rig's parts: on the part where nothing smaller lies there too, else beside it with a thin
/// line. No label lies over another or over
/// a mark. The smallest parts choose first, for they have the least room.
/// </summary>
internal sealed class RigLabels(Box frame, IReadOnlyList<LabelWish> wishes)
{
    private const double Height = 15;
    private const double Air = 1;

    // Two numbers side by side must not read as one.
    private const double Apart = 7;
    private const int Steps = 6;

    // From the middle outwards.
    private static readonly (int I, int J)[] Cells =
        [.. Enumerable.Range(-Steps, (2 * Steps) + 1)
            .SelectMany(i => Enumerable.Range(-Steps, (2 * Steps) + 1).Select(j => (I: i, J: j)))
            .OrderBy(cell => Math.Abs(cell.I) + Math.Abs(cell.J))];

    private readonly List<Box> taken = [];
    private readonly List<DrawnLine> leaders = [];

    /// <summary>Keeps labels off a mark.</summary>
    public void Reserve(Box box) => taken.Add(box);

    /// <summary>All labels, in the order of the wishes.</summary>
    public IReadOnlyList<RigLabel> Place()
    {
        var placed = wishes.OrderBy(wish => wish.Area).Select(wish => OnPart(wish) ?? Beside(wish))
            .ToDictionary(label => label.Wish.Name, StringComparer.Ordinal);
        // Names come last: they only take room that no number needed.
        return [.. wishes.Select(wish => WithName(placed[wish.Name]))];
    }

    private RigLabel? OnPart(LabelWish wish)
    {
        var width = ChartStyle.TextWidth(wish.Short, SvgSheet.TextSize) + wish.Sign;
        // A box on the part can only meet what meets the part's own frame.
        var near = wishes.Where(other => other != wish && other.Around.Overlaps(wish.Around)).ToList();
        var (best, least) = ((Box?)null, 1000.0);
        foreach (var box in Grid(wish.Around, width))
        {
            // How far it lies from the middle is told at once; the rest is looked at only where that leaves hope.
            var cost = Distance(Middle(box), wish.Middle) / 4;
            if (cost < least && wish.Around.Contains(box) && ConvexOutline.Holds(wish.Outline, Middle(box)) && IsFree(box)
                && (cost += Cost(wish, box, near)) < least - Box.Touch)
                (best, least) = (box, cost);
        }
        return best is null ? null : Take(new RigLabel(wish, wish.Short, best, null));
    }

    private RigLabel Beside(LabelWish wish)
    {
        var width = ChartStyle.TextWidth(wish.Short, SvgSheet.TextSize) + wish.Sign;
        var (best, least, end) = ((Box?)null, double.PositiveInfinity, default((double X, double Y)));
        // Above and below are often equally good: the first one is taken, and no rounding chooses.
        foreach (var box in Rings(wish.Around, width))
        {
            var cost = Distance(Middle(box), wish.Middle);
            if (cost >= least || !frame.Contains(box) || !IsFree(box) || (cost += 35 * Under(wish, box)) >= least - Box.Touch)
                continue;
            var at = Nearest(wish, Middle(box));
            var leader = new DrawnLine(Nearest(box, at), at);
            if (!CrossesTaken(leader))
                (best, least, end) = (box, cost, at);
        }
        // A rig that leaves no free spot anywhere still gets its number: on the part.
        if (best is null)
            return Take(new RigLabel(wish, wish.Short, At(wish.Middle, width), null));
        leaders.Add(new(Nearest(best, end), end));
        return Take(new RigLabel(wish, wish.Short, best, end));
    }

    private RigLabel WithName(RigLabel label)
    {
        if (label.Leader is not null)
            return label;
        var wish = label.Wish;
        var width = ChartStyle.TextWidth(wish.Long, SvgSheet.TextSize) + wish.Sign + 2;
        taken.Remove(label.Box);
        var edges = wishes.Where(other => other.Around.Overlaps(wish.Around)).SelectMany(other => other.Edges)
            .Where(edge => edge.Crosses(wish.Around)).ToList();
        var fits = Grid(wish.Around, width).FirstOrDefault(box => wish.Around.Contains(box) && IsFree(box)
            && !AnyCrosses(edges, box));
        return Take(fits is null ? label : label with { Text = wish.Long, Box = fits });
    }

    // A number is read as that of the smallest part it lies on: so it keeps off smaller ones.
    private static double Cost(LabelWish wish, Box box, List<LabelWish> near)
    {
        double cost = 0;
        foreach (var other in near)
        {
            if (other.Area <= wish.Area && ConvexOutline.Holds(other.Outline, Middle(box)))
                cost += 1000;
            if (AnyCrosses(other.Edges, box))
                cost += 25;
        }
        return cost;
    }

    private int Under(LabelWish wish, Box box)
    {
        var count = 0;
        foreach (var other in wishes)
        {
            if (other != wish && other.Around.Overlaps(box))
                count++;
        }
        return count;
    }

    // The innermost loops are asked some ten thousand times for one drawing: written out, and compiled in full at once, for a
    // page draws from its first second on.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static bool AnyCrosses(List<DrawnLine> lines, Box box)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            if (lines[i].Crosses(box))
                return true;
        }
        return false;
    }

    private bool CrossesTaken(DrawnLine leader)
    {
        for (var i = 0; i < taken.Count; i++)
        {
            if (leader.Crosses(taken[i]))
                return true;
        }
        return false;
    }

    private RigLabel Take(RigLabel label)
    {
        taken.Add(label.Box);
        return label;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool IsFree(Box box)
    {
        for (var i = 0; i < taken.Count; i++)
        {
            var other = taken[i];
            if (other.Left < box.Right + Apart && box.Left - Apart < other.Right && other.Top < box.Bottom + Air
                && box.Top - Air < other.Bottom)
                return false;
        }
        return !AnyCrosses(leaders, box);
    }

    private static IEnumerable<Box> Grid(Box around, double width)
    {
        var (x, y) = ((around.Left + around.Right) / 2, (around.Top + around.Bottom) / 2);
        var (dx, dy) = ((around.Right - around.Left - width - 3) / 2, (around.Bottom - around.Top - Height - 3) / 2);
        if (dx < 0 || dy < 0)
            yield break;
        foreach (var (i, j) in Cells)
            yield return At((x + (dx * i / Steps), y + (dy * j / Steps)), width);
    }

    private static IEnumerable<Box> Rings(Box around, double width)
    {
        var (x, y) = ((around.Left + around.Right) / 2, (around.Top + around.Bottom) / 2);
        for (var gap = 8.0; gap < 260; gap += 8)
        {
            var (a, b) = (((around.Right - around.Left + width) / 2) + gap, ((around.Bottom - around.Top + Height) / 2) + gap);
            for (var i = 0; i < 24; i++)
            {
                var (sin, cos) = Math.SinCos(i * Math.PI / 12);
                yield return At((x + (a * cos), y + (b * sin)), width);
            }
        }
    }

    private static (double X, double Y) Nearest(LabelWish wish, (double X, double Y) from)
    {
        // A little inside of the edge, so that the line's end can't be taken for that of a neighbour.
        var edge = Nearest(wish.Around, from);
        return (edge.X + ((wish.Middle.X - edge.X) * 0.25), edge.Y + ((wish.Middle.Y - edge.Y) * 0.25));
    }

    private static (double X, double Y) Nearest(Box box, (double X, double Y) from) =>
        (Math.Clamp(from.X, box.Left, box.Right), Math.Clamp(from.Y, box.Top, box.Bottom));

    private static Box At((double X, double Y) middle, double width) =>
        new(middle.X - (width / 2), middle.Y - (Height / 2), middle.X + (width / 2), middle.Y + (Height / 2));

    private static (double X, double Y) Middle(Box box) => ((box.Left + box.Right) / 2, (box.Top + box.Bottom) / 2);

    private static double Distance((double X, double Y) a, (double X, double Y) b) =>
        Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));
}
