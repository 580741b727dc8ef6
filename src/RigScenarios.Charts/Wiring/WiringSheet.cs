using RigScenarios.Charts.Balance;
using RigScenarios.Charts.Pages;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Wiring;

/// <summary>One drawing of a wiring for one width: boxes under each other, each set in from what feeds it, joined by
/// lines.</summary>
internal sealed class WiringSheet
{
    private const double Margin = 10;
    private const double Line = 17;
    private const double Gap = 9;
    private readonly WiringTree tree;
    private readonly double width;
    private readonly bool isNarrow;
    private readonly double step;
    private readonly SvgSheet sheet = new();
    private readonly double[] bottoms;
    private double y = 4;

    public WiringSheet(WiringTree tree, double width, bool isNarrow)
    {
        (this.tree, this.width, this.isNarrow) = (tree, width, isNarrow);
        step = isNarrow ? 14 : 34;
        bottoms = new double[tree.Boxes.Count];
        if (!isNarrow)
            Heading();
        for (var i = 0; i < tree.Boxes.Count; i++)
            Draw(i, tree.Boxes[i]);
        Legend();
    }

    public string ToSvg(string shape) =>
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"{shape}\" viewBox=\"0 0 {SvgSheet.Number(width)} "
            + $"{SvgSheet.Number(y + 4)}\" role=\"img\" font-family=\"sans-serif\" "
                + $"aria-label=\"{HtmlText.Escape(tree.Alternative)}\">{sheet}</svg>";

    private double MarginColumn => width - Margin - 10;

    private double AmpereColumn => width - 132;

    private double VoltColumn => width - 214;

    private void Heading()
    {
        sheet.Text("volts", VoltColumn, y + 13, "end");
        sheet.Text("amperes", AmpereColumn, y + 13, "end");
        sheet.Text("least left", MarginColumn, y + 13, "end");
        y += 22;
    }

    private void Draw(int number, WiringBox box)
    {
        var x = Margin + (box.Depth * step);
        var fed = box.FedBy is { } feed ? $" data-fed-by=\"{HtmlText.Escape(feed)}\"" : "";
        sheet.Open("g", $"data-element=\"{HtmlText.Escape(box.Element)}\"{fed}");
        var trunk = x - (step / 2);
        if (box.Cable is { } cable)
        {
            var marked = box.IsCableWeakest;
            foreach (var line in Lines(marked ? $"{cable}: {tree.WeakestWords}" : cable, width - x - Margin - (marked ? 24 : 4)))
            {
                sheet.Text(line, x + (marked ? 22 : 4), y + 13, bold: marked);
                if (marked)
                    Sign((x + 10, y + 8));
                marked = false;
                y += Line;
            }
            y += 3;
        }
        var content = Content(box, width - x - Margin - 20);
        var height = (content.Count * Line) + 9;
        if (box.Parent >= 0)
        {
            var kind = box.Cable is null ? "rs-line" : "rs-rest-line";
            sheet.Path(kind, $"M{SvgSheet.Number(trunk)} "
                + $"{SvgSheet.Number(bottoms[box.Parent])}V{SvgSheet.Number(y + (height / 2))}H{SvgSheet.Number(x)}");
        }
        if (box.IsOff)
            sheet.Rectangle("rs-line rs-dashes", x, y, width - x - Margin, height);
        else
            sheet.Rectangle("rs-box", x, y, width - x - Margin, height);
        if (box.IsWeakest)
            sheet.Rectangle("rs-weakest", x, y, width - x - Margin, height);
        var indent = box.IsWeakest ? 28 : 10;
        if (box.IsWeakest)
            Sign((x + 15, y + (height / 2)));
        foreach (var (line, index) in content.Select((line, index) => (line, index)))
            sheet.Text(line, x + indent, y + 16 + (index * Line), bold: index == 0);
        if (!isNarrow)
        {
            // A regulator's two voltages are too wide for the column; they stand on a line of their own.
            sheet.Text(Short(box.Volts), VoltColumn, y + 16, "end");
            sheet.Text(box.Amperes.Replace("\u00a0A", "", StringComparison.Ordinal), AmpereColumn, y + 16, "end");
            sheet.Text(box.Margin, MarginColumn, y + 16, "end", bold: box.IsWeakest);
        }
        sheet.Close("g");
        y += height;
        bottoms[number] = y;
        y += Gap;
    }

    private List<string> Content(WiringBox box, double room)
    {
        var weak = box.IsWeakest ? $": {tree.WeakestWords}" : "";
        if (!isNarrow)
        {
            List<string> lines = [.. Lines(box.Name + weak, VoltColumn - 60 - (width - Margin - 20 - room))];
            if (box.Volts.Contains('\u2192', StringComparison.Ordinal))
                lines.Add($"gives {box.Volts[(box.Volts.IndexOf('\u2192', StringComparison.Ordinal) + 2)..]}");
            return lines;
        }
        var figures = string.Join(", ",
            new[] { box.Volts, box.IsOff ? "" : box.Amperes, box.Margin }.Where(text => text.Length > 0));
        return [.. Lines(box.Name + weak, room - (box.IsWeakest ? 18 : 0)), .. Lines(figures, room - (box.IsWeakest ? 18 : 0))];
    }

    private static string Short(string volts)
    {
        var arrow = volts.IndexOf(" \u2192", StringComparison.Ordinal);
        return (arrow < 0 ? volts : volts[..arrow]).Replace("\u00a0V", "", StringComparison.Ordinal);
    }

    private void Legend()
    {
        y += 4;
        Entry("a cable or plug with what it loses", at => sheet.Line("rs-rest-line", (at.X - 11, at.Y), (at.X + 11, at.Y)));
        Entry("no loss, or no cable given", at => sheet.Line("rs-line", (at.X - 11, at.Y), (at.X + 11, at.Y)));
        if (tree.Boxes.Exists(box => box.IsOff))
            Entry("off, or draws nothing at this moment",
                at => sheet.Rectangle("rs-line rs-dashes", at.X - 11, at.Y - 5, 22, 10));
        if (tree.Boxes.Exists(box => box.IsWeakest || box.IsCableWeakest))
            Entry(tree.WeakestWords, Sign);
    }

    private void Entry(string text, Action<(double X, double Y)> sign)
    {
        sign((Margin + 14, y + 9));
        sheet.Text(text, Margin + 36, y + 13.5);
        y += 20;
    }

    // A triangle with a stroke in it: read without colour.
    private void Sign((double X, double Y) at)
    {
        sheet.Polygon("rs-mark-fill", [(at.X, at.Y - 8), (at.X + 9, at.Y + 7), (at.X - 9, at.Y + 7)]);
        sheet.Line("rs-halo rs-sign", (at.X, at.Y - 2), (at.X, at.Y + 3));
    }

    private static List<string> Lines(string text, double room)
    {
        var characters = Math.Max(10, (int)(room / ChartStyle.TextWidth("n", SvgSheet.TextSize)));
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
}
