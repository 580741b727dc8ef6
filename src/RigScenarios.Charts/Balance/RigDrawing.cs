using RigScenarios.Balance;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Balance;

/// <summary>
/// A rig drawn to scale from the camera's right and from above, one under the other and in line: parts as the outlines of their
/// boxes, the centre of gravity, what carries
/// the rig. The lens points right in both.
/// </summary>
/// <remarks>
/// For pages that let a reader move parts: both views are <c>g[data-view]</c> ("side", "above"); a part is
/// <c>g.rs-part[data-part]</c>, with <c>data-on</c> its carrier; its label is
/// <c>g.rs-label[data-label]</c>. A part that can be moved has <c>data-move="dx,dy"</c>, SVG units a metre of offset in that
/// view, and <c>data-at</c>, <c>data-least</c>,
/// <c>data-greatest</c> in metres, and <c>data-words</c>, its name; its range is drawn in <c>g.rs-rail[data-rail]</c> right after
/// it. The centre's mark is <c>g.rs-centre</c>.
/// Scale and frame hold for the whole range of all that can be moved, so that nothing else jumps while a part is moved.
/// </remarks>
public static class RigDrawing
{
    /// <summary>The drawing.</summary>
    /// <param name="build">The build.</param>
    /// <param name="options">What to show beside the parts; null for nothing.</param>
    /// <exception cref="ArgumentException">A part that is to be moveable is not in the build.</exception>
    public static Drawing Of(PlacedBuild build, RigDrawingOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(build);
        options ??= new();
        if (options.Moveable.Keys.FirstOrDefault(name => !build.Parts.ContainsKey(name)) is { } missing)
            throw new ArgumentException(
                $"There is no part \"{missing}\" to move; accepted: "
                    + $"{string.Join(", ", build.Parts.Keys.Select(name => $"\"{name}\""))}.", nameof(options));
        return new Drawing
        {
            Slug = options.Slug,
            Title = options.Title,
            Caption = RigWords.Caption(build),
            Cautions = RigWords.Cautions(options),
            AlternativeText = RigWords.Alternative(build, options),
            Svg = new RigSheet(build, options, ChartStyle.Width).ToSvg("rs-wide"),
            NarrowSvg = new RigSheet(build, options, ChartStyle.NarrowWidth).ToSvg("rs-narrow"),
            Data = RigWords.Table(build, options),
        };
    }
}
