using RigScenarios.Answers;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Wiring;

/// <summary>
/// The wiring of a build as a drawing of our own: a tree from the battery down to the devices, each element a box with its
/// voltage, current and what is left,
/// cables as lines with what they lose; the weakest is marked with a sign and words. Drawn at the moment when the least is left.
/// </summary>
/// <remarks>For pages: each element is <c>g[data-element]</c> with its name in the network, and <c>data-fed-by</c> what feeds
/// it.</remarks>
public static class WiringDrawing
{
    /// <summary>The drawing.</summary>
    /// <param name="answer">An answer with its series.</param>
    /// <param name="title">The line above it; null for the build's own title.</param>
    /// <exception cref="ArgumentException">Nothing could be delivered at any moment, so that there is nothing to draw, or the
    /// answer has no series.</exception>
    public static Drawing Of(RigAnswer answer, string? title = null)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return Of(new WiringView(answer), title);
    }

    internal static Drawing Of(WiringView view, string? title)
    {
        var tree = new WiringTree(view);
        return new Drawing
        {
            Slug = $"wiring-{Figure.SlugOf(view.Answer.Build)}",
            Title = title ?? $"{view.Answer.TheBuild.Title ?? view.Answer.Build}: as it is {view.MomentWords}",
            Caption = "Volts are those at the inlet of each box. What is left is the least of all days to any limit of that "
                + "element, steady or for a moment; \"over\" and \"under\" say by how much a limit is passed.",
            Cautions = [AnswerCautions.Polarity, "Lines show what feeds what, not how long a cable is or where it lies."],
            AlternativeText = tree.Alternative,
            Svg = new WiringSheet(tree, ChartStyle.Width, isNarrow: false).ToSvg("rs-wide"),
            NarrowSvg = new WiringSheet(tree, ChartStyle.NarrowWidth, isNarrow: true).ToSvg("rs-narrow"),
            Data = WiringTable.OfMoment(view),
        };
    }
}
