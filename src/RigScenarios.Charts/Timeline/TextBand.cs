using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Timeline;

/// <summary>A line of room for short texts beside one thing: the first that asks gets its place, one that finds none is left
/// out.</summary>
internal sealed class TextBand(double left, double right)
{
    private const double Air = 3;
    private readonly List<(double Left, double Right)> taken = [];

    /// <summary>What stands in it: text, its left end and its right end.</summary>
    public List<(string Text, double Left, double Right)> Placed { get; } = [];

    /// <summary>Keeps a stretch free.</summary>
    public void Reserve(double from, double to) => taken.Add((from, to));

    /// <summary>Places a text with its middle, left or right end near a point.</summary>
    /// <param name="text">The text.</param>
    /// <param name="x">The point.</param>
    /// <param name="side">-1 to the left of the point, 0 over it, 1 to the right.</param>
    /// <param name="within">If given, the stretch that it must not leave; the band otherwise.</param>
    public bool TryPlace(string text, double x, int side, (double Left, double Right)? within = null)
    {
        var width = ChartStyle.TextWidth(text, Balance.SvgSheet.TextSize);
        var bounds = within ?? (left, right);
        if (bounds.Right - bounds.Left < width)
            return false;
        var from = Math.Clamp(side switch { < 0 => x - width - Air, 0 => x - (width / 2), _ => x + Air }, bounds.Left,
            bounds.Right - width);
        if (taken.Exists(box => from < box.Right + Air && from + width > box.Left - Air))
            return false;
        taken.Add((from, from + width));
        Placed.Add((text, from, from + width));
        return true;
    }
}
