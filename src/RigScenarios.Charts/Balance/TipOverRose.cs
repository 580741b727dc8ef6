using RigScenarios.Balance;
using RigScenarios.Charts.Pages;
using RigScenarios.Charts.Style;
using UnitsNet;

namespace RigScenarios.Charts.Balance;

/// <summary>
/// The lean at which a stand tips over as a rose seen from above: the farther out the line is where the lens looks, the more lean
/// it stands. The feet are spokes, the rings
/// are degrees.
/// </summary>
public static class TipOverRose
{
    private const int Directions = 180;
    private const double Ring = 5;
    private const double TextRoom = 54;

    /// <summary>The drawing. Turned to the right the lens looks over foot 1; to the left is counter-clockwise.</summary>
    /// <param name="stability">The stand with its rig.</param>
    /// <param name="title">What the drawing answers; null for a plain title.</param>
    public static Drawing Of(StandStability stability, string? title = null)
    {
        ArgumentNullException.ThrowIfNull(stability);
        var pans = Enumerable.Range(0, Directions).Select(i => Angle.FromDegrees(i * 360.0 / Directions)).ToList();
        var tips = pans.ConvertAll(pan => stability.AtPan(pan));
        var worst = tips.MinBy(tip => tip.TipAngle.Degrees)!;
        var best = tips.MaxBy(tip => tip.TipAngle.Degrees)!;
        var words = worst.TipAngle.Degrees <= 0
            ? $"With the lens at {worst.Pan.Degrees:0}° it tips over by itself."
            : $"It tips soonest with the lens at {worst.Pan.Degrees:0}° from foot 1, at a lean of "
                + $"{worst.TipAngle.Degrees:0.0}°, and last at {best.Pan.Degrees:0}°, at {best.TipAngle.Degrees:0.0}°.";
        return new Drawing
        {
            Slug = "tip-over-rose",
            Title = title ?? "Where the lens should look, seen from above",
            Caption = $"{words} The head is tilted {stability.Tilt.Degrees:0.#}°. Rings: lean in degrees; the line is the "
                + "lean at which it tips, in the direction of the lens.",
            Cautions = [BalanceCautions.TipOver, BalanceCautions.Arithmetic],
            AlternativeText = $"A rose over the direction of the lens. {words}",
            Svg = Sheet(tips, worst, words, ChartStyle.Width, "rs-wide"),
            NarrowSvg = Sheet(tips, worst, words, ChartStyle.NarrowWidth, "rs-narrow"),
            Data = tips.Where((_, i) => i % 15 == 0).Aggregate(ChartTable.Of("pan (°)", "lean at which it tips (°)"),
                (table, tip) => table.With(Math.Round(tip.Pan.Degrees), Math.Round(tip.TipAngle.Degrees, 1))),
        };
    }

    private static string Sheet(List<PanStability> tips, PanStability worst, string words, double width, string kind)
    {
        var greatest = Ring * Math.Ceiling(Math.Max(15, tips.Max(tip => tip.TipAngle.Degrees)) / Ring);
        var radius = Math.Min(220, (width / 2) - TextRoom);
        double height = (2 * radius) + (2 * TextRoom), x = width / 2, y = height / 2;
        (double X, double Y) At(double pan, double degrees)
        {
            var (sin, cos) = Math.SinCos(pan * Math.PI / 180);
            var outward = radius * Math.Max(0, degrees) / greatest;
            return (x + (outward * cos), y - (outward * sin));
        }

        var sheet = new SvgSheet();
        sheet.Open("svg", $"class=\"{kind}\" xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {SvgSheet.Number(width)} "
            + $"{SvgSheet.Number(height)}\" role=\"img\" font-family=\"sans-serif\" aria-label=\"{HtmlText.Escape(words)}\"");
        for (var ring = Ring; ring <= greatest; ring += Ring)
            sheet.Circle(ring == 10 ? "rs-line rs-dashes" : "rs-line", (x, y), radius * ring / greatest);
        for (var foot = 0; foot < 3; foot++)
        {
            sheet.Line("rs-line", (x, y), At(foot * 120, greatest));
            // The first stands beside its spoke: nearer, so that its name has room on a phone.
            var name = At(foot * 120, greatest * (1 + ((foot == 0 ? 8 : 22) / radius)));
            sheet.Text($"foot {foot + 1}", name.X, name.Y + 5, foot == 0 ? "start" : "middle", bold: true);
        }

        sheet.Polygon("rs-rest-line", tips.Select(tip => At(tip.Pan.Degrees, tip.TipAngle.Degrees)));
        // Between the feet, where no spoke is in the way.
        for (var ring = Ring; ring <= greatest; ring += Ring)
        {
            var label = At(-30, ring);
            sheet.Text($"{ring:0}°", label.X, label.Y + 4, "middle", halo: true);
        }

        var mark = At(worst.Pan.Degrees, worst.TipAngle.Degrees);
        sheet.Circle("rs-mark-ring", mark, 5);
        var text = At(worst.Pan.Degrees, greatest * (1 + (30 / radius)));
        sheet.Text($"tips soonest: {worst.TipAngle.Degrees:0.0}°", Math.Clamp(text.X, 70, width - 70), text.Y + 4,
            "middle", halo: true);
        sheet.Text("pan 0°: the lens over foot 1", width - 8, 16, "end");
        return sheet.Close("svg").ToString();
    }
}
