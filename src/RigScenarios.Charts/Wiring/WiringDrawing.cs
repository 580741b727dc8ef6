using RigScenarios.Answers;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Wiring;

/// <summary>
/// The wiring of a build as a drawing of our own: a tree from the battery down to the devices, each element a box with its voltage, current and least margin, cables as lines with
/// what they lose; the weakest is marked with a sign and words. Drawn at the moment when the least is left.
/// </summary>
/// <remarks>For pages: each element is <c>g[data-element]</c> with its name in the network, and <c>data-fed-by</c> what feeds it.</remarks>
public static class WiringDrawing
{
    /// <summary>The drawing.</summary>
    /// <param name="wiring">A day's wiring.</param>
    /// <param name="title">The line above it; null for the build's own title.</param>
    /// <exception cref="ArgumentException">Nothing could be delivered at any moment, so that there is nothing to draw.</exception>
    public static Drawing Of(WiringOfDay wiring, string? title = null)
    {
        ArgumentNullException.ThrowIfNull(wiring);
        var tree = WiringTree.Of(wiring);
        return new Drawing
        {
            Slug = $"wiring-{Figure.SlugOf(wiring.BuildName)}",
            Title = title ?? $"{wiring.Build.Title ?? wiring.BuildName}: {WiringTree.MomentWords(wiring)}",
            Caption = "Volts are those at the inlet of each box. The margin is the least of the day to any limit of that element, in the steady state or for a moment; \"past\" and \"short\" say by how much a limit is passed.",
            Cautions = [WiringWords.Polarity, "Lines show what feeds what, not how long a cable is or where it lies."],
            AlternativeText = tree.Alternative,
            Svg = new WiringSheet(tree, ChartStyle.Width, isNarrow: false).ToSvg("rs-wide"),
            NarrowSvg = new WiringSheet(tree, ChartStyle.NarrowWidth, isNarrow: true).ToSvg("rs-narrow"),
            Data = WiringTable.OfMoment(wiring),
        };
    }
}
