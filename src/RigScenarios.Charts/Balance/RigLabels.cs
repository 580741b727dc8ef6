using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Balance;

/// <summary>A part in a view that wants its number, and its name where there is room; pixels, y downwards.</summary>
internal sealed record LabelWish(string Name, string Short, string Long, double Sign, IReadOnlyList<(double X, double Y)> Outline)
{
    public double Area { get; } = ConvexOutline.Area(Outline);

    public Box Around { get; } = new(Outline.Min(p => p.X), Outline.Min(p => p.Y), Outline.Max(p => p.X), Outline.Max(p => p.Y));

    /// <summary>The outline's edges with the room that each takes: most lie far from any box and are passed over at once.</summary>
    public IReadOnlyList<DrawnLine> Edges { get; } = [.. Outline.Select((corner, i) => new DrawnLine(corner, Outline[(i + 1) % Outline.Count]))];

    public (double X, double Y) Middle => ((Around.Left + Around.Right) / 2, (Around.Top + Around.Bottom) / 2);
}

/// <summary>A straight line in a view, pixels.</summary>
internal sealed record DrawnLine((double X, double Y) From, (double X, double Y) To)
{
    public bool Crosses(Box box) =>
        Math.Min(From.X, To.X) <= box.Right && Math.Max(From.X, To.X) >= box.Left && Math.Min(From.Y, To.Y) <= box.Bottom && Math.Max(From.Y, To.Y) >= box.Top
        && box.IsCrossed(From, To);
}

/// <summary>A label at its place.</summary>
/// <param name="Wish">What it names.</param>
/// <param name="Text">The number, or the number with the name.</param>
/// <param name="Box">Its box, the sign for "can be moved" included.</param>
/// <param name="Leader">Where a thin line to the part ends; null where the label stands on the part.</param>
internal sealed record RigLabel(LabelWish Wish, string Text, Box Box, (double X, double Y)? Leader);

/// <summary>
/// Finds room for the numbers of a rig's parts: on the part where nothing smaller lies there too, else beside it with a thin line. No label lies over another or over
/// a mark. The smallest parts choose first, for they have the least room.
/// </summary>
internal sealed class RigLabels(Box frame, IReadOnlyList<LabelWish> wishes)
{
    private const double Height = 15;
    private const double Air = 1;

    // Two numbers side by side must not read as one.
    private const double Apart = 7;
    private readonly List<Box> taken = [];
    private readonly List<DrawnLine> leaders = [];

    /// <summary>Keeps labels off a mark.</summary>
    public void Reserve(Box box) => taken.Add(box);

    /// <summary>All labels, in the order of the wishes.</summary>
    public IReadOnlyList<RigLabel> Place()
    {
        var placed = wishes.OrderBy(wish => wish.Area).Select(wish => OnPart(wish) ?? Beside(wish)).ToDictionary(label => label.Wish.Name, StringComparer.Ordinal);
        // Names come last: they only take room that no number needed.
        return [.. wishes.Select(wish => WithName(placed[wish.Name]))];
    }

    private RigLabel? OnPart(LabelWish wish)
    {
        var width = ChartStyle.TextWidth(wish.Short, SvgSheet.TextSize) + wish.Sign;
        var best = Grid(wish.Around, width)
            .Where(box => wish.Around.Contains(box) && ConvexOutline.Holds(wish.Outline, Middle(box)) && IsFree(box))
            .Select(box => (Box: box, Cost: Cost(wish, box)))
            .Where(choice => choice.Cost < 1000)
            .OrderBy(choice => choice.Cost).FirstOrDefault();
        return best.Box is null ? null : Take(new RigLabel(wish, wish.Short, best.Box, null));
    }

    private RigLabel Beside(LabelWish wish)
    {
        var width = ChartStyle.TextWidth(wish.Short, SvgSheet.TextSize) + wish.Sign;
        var around = wish.Around;
        var best = Rings(around, width)
            .Where(box => frame.Contains(box) && IsFree(box))
            .Select(box => (Box: box, End: Nearest(wish, Middle(box)), Cost: Distance(Middle(box), wish.Middle) + (35 * wishes.Count(other => other != wish && other.Around.Overlaps(box)))))
            .Where(choice => new DrawnLine(Nearest(choice.Box, choice.End), choice.End) is var leader && !taken.Exists(leader.Crosses))
            .OrderBy(choice => choice.Cost).FirstOrDefault();
        // A rig that leaves no free spot anywhere still gets its number: on the part.
        var box = best.Box ?? At(wish.Middle, width);
        (double X, double Y)? end = best.Box is null ? null : best.End;
        if (end is { } at)
            leaders.Add(new(Nearest(box, at), at));
        return Take(new RigLabel(wish, wish.Short, box, end));
    }

    private RigLabel WithName(RigLabel label)
    {
        if (label.Leader is not null)
            return label;
        var wish = label.Wish;
        var width = ChartStyle.TextWidth(wish.Long, SvgSheet.TextSize) + wish.Sign + 2;
        taken.Remove(label.Box);
        var fits = Grid(wish.Around, width).FirstOrDefault(box => wish.Around.Contains(box) && IsFree(box)
            && !wishes.Any(other => other.Edges.Any(edge => edge.Crosses(box))));
        return Take(fits is null ? label : label with { Text = wish.Long, Box = fits });
    }

    // A number is read as that of the smallest part it lies on: so it keeps off smaller ones.
    private double Cost(LabelWish wish, Box box) =>
        (Distance(Middle(box), wish.Middle) / 4)
        + (1000 * wishes.Count(other => other != wish && other.Area <= wish.Area && ConvexOutline.Holds(other.Outline, Middle(box))))
        + (25 * wishes.Count(other => other != wish && other.Edges.Any(edge => edge.Crosses(box))));

    private RigLabel Take(RigLabel label)
    {
        taken.Add(label.Box);
        return label;
    }

    private bool IsFree(Box box)
    {
        var wide = new Box(box.Left - Apart, box.Top - Air, box.Right + Apart, box.Bottom + Air);
        return !taken.Exists(other => other.Overlaps(wide)) && !leaders.Exists(leader => leader.Crosses(box));
    }

    private static IEnumerable<Box> Grid(Box around, double width)
    {
        const int steps = 6;
        var (x, y) = ((around.Left + around.Right) / 2, (around.Top + around.Bottom) / 2);
        var (dx, dy) = ((around.Right - around.Left - width - 3) / 2, (around.Bottom - around.Top - Height - 3) / 2);
        if (dx < 0 || dy < 0)
            yield break;
        foreach (var (i, j) in Enumerable.Range(-steps, (2 * steps) + 1).SelectMany(i => Enumerable.Range(-steps, (2 * steps) + 1).Select(j => (I: i, J: j))).OrderBy(cell => Math.Abs(cell.I) + Math.Abs(cell.J)))
            yield return At((x + (dx * i / steps), y + (dy * j / steps)), width);
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

    private static double Distance((double X, double Y) a, (double X, double Y) b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));
}
