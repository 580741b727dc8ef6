using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Placement;

/// <summary>A label that has found its place: the box of its text in pixels, and to which side the text is set.</summary>
internal sealed record PlacedLabel(Box Box, bool SetRight);

/// <summary>
/// Finds room for labels at the ends of lines: beside the end where nothing is crossed, or in the margin to the right for lines
/// that reach the plot's edge. A label that finds none gets no place, and its line goes into the legend.
/// </summary>
internal sealed class LabelPlacement
{
    private const double Gap = 9;

    private readonly PlotArea area;
    private readonly double rightMargin;
    private readonly IReadOnlyList<IReadOnlyList<(double X, double Y)>> lines;
    private readonly List<Box> taken = [];

    /// <param name="area">The plot.</param>
    /// <param name="rightMargin">Room to the right of the plot, in pixels.</param>
    /// <param name="lines">All that is drawn, in pixels; labels keep off it.</param>
    public LabelPlacement(PlotArea area, double rightMargin, IReadOnlyList<IReadOnlyList<(double X, double Y)>> lines)
    {
        this.area = area;
        this.rightMargin = rightMargin;
        this.lines = lines;
    }

    /// <summary>
    /// Labels in the margin beside the plot, each as near as can be to its own height, none over another. Null where the
    /// margin's height does not suffice.
    /// </summary>
    public IReadOnlyList<PlacedLabel>? InMargin(IReadOnlyList<(string Text, double Y)> labels)
    {
        var order = labels.Select((label, index) => (label.Text, label.Y, Index: index)).OrderBy(l => l.Y).ToList();
        var heights = order.Select(l => TextHeight(l.Text)).ToList();
        if (heights.Sum() > area.Height + ChartStyle.TextHeight)
            return null;
        var tops = new double[order.Count];
        for (var i = 0; i < order.Count; i++)
        {
            var wished = order[i].Y - heights[i] / 2;
            tops[i] = i == 0 ? Math.Max(wished, -ChartStyle.TextHeight / 2) : Math.Max(wished, tops[i - 1] + heights[i - 1]);
        }

        // What slid out below is pushed back up, from the lowest.
        var floor = area.Height + ChartStyle.TextHeight / 2;
        for (var i = order.Count - 1; i >= 0; i--)
        {
            tops[i] = Math.Min(tops[i], floor - heights[i]);
            floor = tops[i];
        }

        var placed = new PlacedLabel[order.Count];
        for (var i = 0; i < order.Count; i++)
        {
            var left = area.Width + Gap;
            var box = new Box(left, tops[i], left + ChartStyle.TextWidth(order[i].Text), tops[i] + heights[i]);
            taken.Add(box);
            placed[order[i].Index] = new PlacedLabel(box, SetRight: false);
        }

        return placed;
    }

    /// <summary>A label beside a line's end, or null where all places around it would cover something.</summary>
    public PlacedLabel? BesideEnd(string text, (double X, double Y) end)
    {
        var (width, height) = (ChartStyle.TextWidth(text), TextHeight(text));
        foreach (var (left, dx) in new[] { (false, Gap), (true, -Gap) })
        {
            foreach (var dy in new[] { 0.0, -1, 1, -1.7, 1.7 })
            {
                var x = end.X + dx;
                var y = end.Y + dy * (height / 2 + 5);
                var box = new Box(left ? x - width : x, y - height / 2, left ? x : x + width, y + height / 2);
                if (Take(box))
                    return new PlacedLabel(box, SetRight: left);
            }
        }

        return null;
    }

    /// <summary>A label along a horizontal line at the given height: above or below it, at the first free place from the
    /// left.</summary>
    public PlacedLabel? AlongLine(string text, double y)
    {
        var (width, height) = (ChartStyle.TextWidth(text), TextHeight(text));
        for (var step = 0; step <= 8; step++)
        {
            var left = 4 + (area.Width - width - 8) * step / 8;
            foreach (var top in new[] { y - height - 2, y + 2 })
            {
                var box = new Box(left, top, left + width, top + height);
                if (Take(box))
                    return new PlacedLabel(box, SetRight: false);
            }
        }

        return null;
    }

    /// <summary>Keeps labels off a rectangle, such as the mark at a line's end.</summary>
    public void Reserve(Box box) => taken.Add(box);

    private bool Take(Box box)
    {
        var frame = new Box(Box.Touch, Box.Touch, area.Width + rightMargin - 2 - Box.Touch, area.Height - Box.Touch);
        if (!frame.Contains(box) || taken.Exists(other => other.Overlaps(box)))
            return false;
        // Asked for every piece of every line, for each place that is tried.
        foreach (var line in lines)
        {
            for (var i = 1; i < line.Count; i++)
            {
                if (box.IsCrossed(line[i - 1], line[i]))
                    return false;
            }
        }

        taken.Add(box);
        return true;
    }

    private static double TextHeight(string text) => text.Split("<br>").Length * ChartStyle.TextHeight;
}
