using System.Globalization;
using System.Text;
using RigScenarios.Charts.Pages;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Balance;

/// <summary>Writes the elements of an SVG drawing. Classes carry the colours of the page; the attributes beside them those of a
/// file that stands alone.</summary>
internal sealed class SvgSheet
{
    public const double TextSize = 13;

    // By class: what a style sheet may replace.
    private static readonly Dictionary<string, string> Attributes = new()
    {
        ["rs-box"] = "fill=\"#9db8ca\" fill-opacity=\"0.45\" stroke=\"#222222\" stroke-width=\"1.2\" stroke-linejoin=\"round\"",
        ["rs-line"] = "fill=\"none\" stroke=\"#444444\" stroke-width=\"1.2\"",
        ["rs-line rs-dashes"] = "fill=\"none\" stroke=\"#444444\" stroke-width=\"1.2\" stroke-dasharray=\"7 4\"",
        ["rs-line rs-leader"] = "fill=\"none\" stroke=\"#444444\" stroke-width=\"0.9\"",
        ["rs-sign"] = "fill=\"none\" stroke=\"#222222\" stroke-width=\"1.6\" stroke-linecap=\"round\" stroke-linejoin=\"round\"",
        ["rs-halo rs-sign"] = "fill=\"none\" stroke=\"#ffffff\" stroke-width=\"4\" stroke-linecap=\"round\"",
        ["rs-mark-line"] = "fill=\"none\" stroke=\"#b34f00\" stroke-width=\"1.6\" stroke-dasharray=\"2 3\"",
        ["rs-mark-fill"] = "fill=\"#b34f00\"",
        ["rs-mark-ring"] = "fill=\"#ffffff\" stroke=\"#b34f00\" stroke-width=\"2.2\"",
        ["rs-weakest"] = "fill=\"none\" stroke=\"#b34f00\" stroke-width=\"3\" stroke-linejoin=\"round\"",
        ["rs-rest-line"] = "fill=\"none\" stroke=\"#0067a1\" stroke-width=\"2\"",
        ["rs-rest-fill"] = "fill=\"#0067a1\"",
        ["rs-grid"] = "fill=\"none\" stroke=\"#dddddd\" stroke-width=\"1\"",
        ["rs-night"] = "fill=\"#efefef\" stroke=\"none\"",
        ["rs-take"] = "fill=\"#222222\" stroke=\"none\"",
        ["rs-level"] = "fill=\"none\" stroke=\"#222222\" stroke-width=\"1.3\" stroke-linejoin=\"round\"",
        ["rs-level rs-waits"] = "fill=\"none\" stroke=\"#222222\" stroke-width=\"1.3\" stroke-dasharray=\"6 4\"",
        ["rs-level rs-spent"] = "fill=\"none\" stroke=\"#222222\" stroke-width=\"1.8\" stroke-dasharray=\"1.5 4\"",
        ["rs-strokes"] = "fill=\"none\" stroke=\"#0067a1\" stroke-width=\"1.6\"",
        ["rs-down"] = "fill=\"#ffffff\" stroke=\"#b34f00\" stroke-width=\"2\"",
        ["rs-down-strokes"] = "fill=\"none\" stroke=\"#b34f00\" stroke-width=\"1.6\"",
        ["rs-reach"] = "fill=\"none\" pointer-events=\"all\"",
    };

    private const double MostPlain = 1e6;

    private readonly StringBuilder svg = new();

    /// <summary>A place in a drawing: two decimals at most. A drawing has a thousand of them, so they go through no
    /// format.</summary>
    public static string Number(double value)
    {
        var rounded = Math.Round(value, 2);
        if (!(Math.Abs(rounded) < MostPlain))
            return rounded.ToString("0.##", CultureInfo.InvariantCulture);
        var (whole, part) = Math.DivRem((int)Math.Round(Math.Abs(rounded) * 100), 100);
        Span<char> text = stackalloc char[12];
        var at = text.Length;
        if (part % 10 != 0)
            text[--at] = Digit(part % 10);
        if (part != 0)
        {
            text[--at] = Digit(part / 10);
            text[--at] = '.';
        }

        do
        {
            text[--at] = Digit(whole % 10);
            whole /= 10;
        }
        while (whole > 0);
        if (double.IsNegative(rounded))
            text[--at] = '-';
        return new string(text[at..]);
    }

    private static char Digit(int digit) => (char)('0' + digit);

    public SvgSheet Open(string name, string attributes)
    {
        svg.Append(CultureInfo.InvariantCulture, $"<{name} {attributes}>");
        return this;
    }

    public SvgSheet Close(string name)
    {
        svg.Append(CultureInfo.InvariantCulture, $"</{name}>");
        return this;
    }

    public void Line(string kind, (double X, double Y) from, (double X, double Y) to) =>
        svg.Append(CultureInfo.InvariantCulture,
            $"<line class=\"{kind}\" {Attributes[kind]} x1=\"{Number(from.X)}\" y1=\"{Number(from.Y)}\" x2=\"{Number(to.X)}\" "
                + $"y2=\"{Number(to.Y)}\"/>");

    public void Polygon(string kind, IEnumerable<(double X, double Y)> corners) =>
        svg.Append(CultureInfo.InvariantCulture,
            $"<polygon class=\"{kind}\" {Attributes[kind]} "
                + $"points=\"{string.Join(' ', corners.Select(corner => $"{Number(corner.X)},{Number(corner.Y)}"))}\"/>");

    public void Rectangle(string kind, double x, double y, double width, double height) =>
        svg.Append(CultureInfo.InvariantCulture,
            $"<rect class=\"{kind}\" {Attributes[kind]} x=\"{Number(x)}\" y=\"{Number(y)}\" width=\"{Number(width)}\" "
                + $"height=\"{Number(height)}\"/>");

    public void Circle(string kind, (double X, double Y) centre, double radius) =>
        svg.Append(CultureInfo.InvariantCulture,
            $"<circle class=\"{kind}\" {Attributes[kind]} cx=\"{Number(centre.X)}\" cy=\"{Number(centre.Y)}\" "
                + $"r=\"{Number(radius)}\"/>");

    public void Path(string kind, string path) =>
        svg.Append(CultureInfo.InvariantCulture, $"<path class=\"{kind}\" {Attributes[kind]} d=\"{path}\"/>");

    /// <summary>A line of text.</summary>
    /// <param name="text">Not escaped yet.</param>
    /// <param name="x">Its left end, middle or right end, as <paramref name="anchor"/> says.</param>
    /// <param name="baseline">y of the baseline.</param>
    /// <param name="anchor">"start", "middle" or "end".</param>
    /// <param name="bold">Whether it is bold.</param>
    /// <param name="halo">Whether it is set off from what lies below it.</param>
    public void Text(string text, double x, double baseline, string anchor = "start", bool bold = false, bool halo = false)
    {
        var extra = (bold ? " font-weight=\"600\"" : "")
            + (halo ? " class=\"rs-halo\" stroke=\"#ffffff\" stroke-width=\"3.5\" stroke-linejoin=\"round\" "
                + "paint-order=\"stroke\"" : "")
            + (anchor == "start" ? "" : $" text-anchor=\"{anchor}\"");
        svg.Append(CultureInfo.InvariantCulture,
            $"<text x=\"{Number(x)}\" y=\"{Number(baseline)}\" font-size=\"{TextSize}\"{extra}>{HtmlText.Escape(text)}</text>");
    }

    /// <summary>A text broken into lines that fit into a width.</summary>
    public static List<string> Lines(string text, double room)
    {
        var characters = Math.Max(8, (int)(room / ChartStyle.TextWidth("n", TextSize)));
        var lines = new List<string>();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (lines.Count > 0 && lines[^1].Length + 1 + word.Length <= characters)
                lines[^1] += " " + word;
            else
                lines.Add(word);
        }
        return lines;
    }

    public override string ToString() => svg.ToString();
}
