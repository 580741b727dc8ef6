using System.Globalization;
using RigScenarios.Balance;
using RigScenarios.Charts.Pages;
using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;
using UnitsNet;

namespace RigScenarios.Charts.Balance;

/// <summary>One drawing of a rig for one width: both views at one scale and in line, what carries the rig, the scale, the signs
/// and the list of parts.</summary>
internal sealed class RigSheet
{
    private const double Margin = 12;

    // Around each view: room for numbers that stand beside their parts.
    private const double Air = 26;
    private const double Row = 17;
    private readonly PlacedBuild build;
    private readonly RigDrawingOptions options;
    private readonly double width;
    private readonly SvgSheet sheet = new();
    private readonly double left;
    private readonly double least;
    private double y;

    public RigSheet(PlacedBuild build, RigDrawingOptions options, double width)
    {
        (this.build, this.options, this.width) = (build, options, width);
        var (side, above) = (new RigView(build, RigSide.Right), new RigView(build, RigSide.Above));
        List<(double X, double Y)> sidePoints = [.. side.Points(options.Moveable)],
        abovePoints = [.. above.Points(options.Moveable)];
        double[] heights = [0, .. sidePoints.Select(point => point.Y),
            .. options.Head is { } head ? [-head.Head.AxisDepth.Meters] : Array.Empty<double>()];
        double[] asides = [0, .. abovePoints.Select(point => point.Y)];
        double[] along = [0, .. sidePoints.Select(point => point.X), .. Supports()];
        least = along.Min();
        var longest = Math.Max(along.Max() - least, 0.01);
        PerMetre = Math.Min((width - (2 * Air)) / longest,
            0.75 * width / Math.Max(0.01, Math.Max(heights.Max() - heights.Min(), asides.Max() - asides.Min())));
        left = (width - (longest * PerMetre)) / 2;

        Heading("From the camera's right", withLens: true);
        Views.Add(Draw(side, heights.Min(), heights.Max()));
        if (options.Head is { } plate)
            y = SupportStrip.Plate(sheet, plate, build.MassProperties.Centre.X, X, y, width, options.Moveable.Count > 0) + 8;
        if (options.Shoulder is { } shoulder)
            y = SupportStrip.Shoulder(sheet, shoulder, build.MassProperties.Centre.X, X, y, width, options.Moveable.Count > 0)
                + 8;
        Heading("From above", withLens: true);
        Views.Add(Draw(above, asides.Min(), asides.Max()));
        ScaleBar(longest);
        Legend();
        Key();
    }

    /// <summary>SVG units a metre.</summary>
    public double PerMetre { get; }

    /// <summary>The views with their labels, side view first.</summary>
    public List<DrawnView> Views { get; } = [];

    public string ToSvg(string shape)
    {
        var box = $"viewBox=\"0 0 {SvgSheet.Number(width)} {SvgSheet.Number(y + 4)}\"";
        return $"<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"{shape}\" {box} role=\"img\" font-family=\"sans-serif\" "
            + $"aria-label=\"{HtmlText.Escape(RigWords.Alternative(build, options))}\">{sheet}</svg>";
    }

    private double X(Length length) => left + ((length.Meters - least) * PerMetre);

    private IEnumerable<double> Supports()
    {
        if (options.Head is { } head)
        {
            foreach (var at in new[] { head.Head.CameraPlateTravel.Least, head.Head.CameraPlateTravel.Greatest,
                head.CameraPlate })
                yield return at.Meters;
        }
        if (options.Shoulder is { } shoulder)
        {
            yield return shoulder.Support.Pad.Meters;
            yield return shoulder.Support.Hands.Meters;
        }
    }

    private void Heading(string text, bool withLens)
    {
        sheet.Text(text, Margin, y + 15, bold: true);
        if (withLens)
        {
            sheet.Text("lens this way", width - Margin - 26, y + 15, "end");
            sheet.Path("rs-sign", $"M{SvgSheet.Number(width - Margin - 20)} {SvgSheet.Number(y + 10.5)}h18m-5 -5l5 5l-5 5");
        }
        y += 22;
    }

    private DrawnView Draw(RigView view, double low, double high)
    {
        var top = y + Air;
        var bottom = top + ((high - low) * PerMetre);
        (double X, double Y) Pixel((double X, double Y) point) =>
            (left + ((point.X - least) * PerMetre), bottom - ((point.Y - low) * PerMetre));
        (double X, double Y) Direction(SeenPart part) => (part.Along.X * PerMetre, -part.Along.Y * PerMetre);
        bool Moves(SeenPart part) => options.Moveable.ContainsKey(part.Name);

        sheet.Open("g", $"data-view=\"{(view.Side == RigSide.Right ? "side" : "above")}\"");
        if (view.Side == RigSide.Right)
            sheet.Line("rs-line rs-dashes", (Margin, Pixel((0, 0)).Y), (width - Margin, Pixel((0, 0)).Y));
        foreach (var part in view.Parts.OrderBy(part => part.Nearness))
            DrawnPart.Write(sheet, build, options, part, [.. part.Outline.Select(Pixel)], Direction(part));

        var centre = Pixel(view.Centre);
        var labels = new RigLabels(new Box(2, y, width - 2, bottom + Air), [.. view.Parts.Select(part => new LabelWish(
            part.Name,
            part.Number.ToString(CultureInfo.InvariantCulture),
            $"{part.Number} {options.NameOf(part.Name)}",
            Moves(part) && IsSeen(Direction(part)) ? 22 : 0,
            [.. part.Outline.Select(Pixel)]))]);
        if (!options.OnlyParts)
            labels.Reserve(RigSigns.Around(centre, RigSigns.CentreRadius + 2));
        (double X, double Y)? axis = view.Side == RigSide.Right && options.Head is { } head
            ? Pixel((head.CameraPlate.Meters, -head.Head.AxisDepth.Meters)) : null;
        if (axis is { } at)
            labels.Reserve(RigSigns.Around(at, 11));
        var placed = labels.Place();
        DrawLabels(placed, view.Parts.ToDictionary(part => part.Name, Direction, StringComparer.Ordinal));
        if (axis is { } sign)
            RigSigns.Axis(sheet, sign);
        if (!options.OnlyParts)
            Centre(view.Side, centre, bottom + Air - 2);
        sheet.Close("g");
        y = bottom + Air + 4;
        return new DrawnView(view, placed, centre, Pixel);
    }

    private void Centre(RigSide side, (double X, double Y) centre, double end)
    {
        sheet.Open("g", "class=\"rs-centre\"");
        if (side == RigSide.Right)
            sheet.Line("rs-mark-line", (centre.X, centre.Y + RigSigns.CentreRadius), (centre.X, end));
        RigSigns.Centre(sheet, centre);
        sheet.Close("g");
    }

    private void DrawLabels(IReadOnlyList<RigLabel> labels, Dictionary<string, (double X, double Y)> directions)
    {
        foreach (var label in labels)
        {
            sheet.Open("g", $"class=\"rs-label\" data-label=\"{HtmlText.Escape(label.Wish.Name)}\"");
            var middle = (label.Box.Top + label.Box.Bottom) / 2;
            if (label.Leader is { } end)
            {
                sheet.Line("rs-line rs-leader", (Math.Clamp(end.X, label.Box.Left, label.Box.Right),
                    Math.Clamp(end.Y, label.Box.Top, label.Box.Bottom)), end);
                sheet.Circle("rs-sign", end, 0.8);
            }
            sheet.Text(label.Text, (label.Box.Left + label.Box.Right - label.Wish.Sign) / 2, middle + 4.7, "middle",
                bold: true, halo: true);
            if (label.Wish.Sign > 0)
                RigSigns.Move(sheet, (label.Box.Right - 10, middle), directions[label.Wish.Name]);
            sheet.Close("g");
        }
    }

    /// <summary>Whether a move can be seen in a view at all, or goes to and from the eye.</summary>
    internal static bool IsSeen((double X, double Y) direction) => Math.Abs(direction.X) + Math.Abs(direction.Y) > 1;

    private void ScaleBar(double longest)
    {
        var millimetres = AxisRange.NiceStep(longest * 1000 * 0.12);
        var length = millimetres / 1000 * PerMetre;
        sheet.Path("rs-sign", $"M{Margin} {SvgSheet.Number(y + 4)}v10m0 -5h{SvgSheet.Number(length)}m0 -5v10");
        sheet.Text($"{Rounding.Text(millimetres)} mm, both views", Margin + length + 8, y + 13.5);
        y += 26;
    }

    private void Legend()
    {
        var rig = build.MassProperties;
        if (!options.OnlyParts)
            Entry($"centre of gravity, {TradeUnits.Text(rig.Mass)}: {RigWords.Place(rig.Centre)}",
                at => RigSigns.Centre(sheet, at));
        Entry("base plane of the body, z = 0", at => sheet.Line("rs-line rs-dashes", (at.X - 11, at.Y), (at.X + 11, at.Y)));
        if (options.Head is not null)
            Entry("tilt axis of the head", at => RigSigns.Axis(sheet, at));
        if (options.Moveable.Count > 0)
            Entry("can be moved this way", at => RigSigns.Move(sheet, at, (1, 0)));
        y += 6;
    }

    private void Entry(string text, Action<(double X, double Y)> sign)
    {
        const double indent = 42;
        sign((Margin + 12, y + 9));
        foreach (var line in SvgSheet.Lines(text, width - indent - 4))
        {
            sheet.Text(line, indent, y + 13.5);
            y += Row;
        }
        y += 4;
    }

    private void Key()
    {
        const double indent = 26;
        var names = build.Parts.Index().Select(entry => (Number: entry.Index + 1,
            Text: $"{options.NameOf(entry.Item.Key)}, {TradeUnits.Text(entry.Item.Value.Mass)}")).ToList();
        var columns =
            Math.Clamp((int)((width - Margin) / (names.Max(name => ChartStyle.TextWidth(name.Text, SvgSheet.TextSize))
            + indent + 10)), 1, 4);
        var rows = (names.Count + columns - 1) / columns;
        var each = (width - (2 * Margin)) / columns;
        var (top, lowest) = (y, y);
        foreach (var column in names.Chunk(rows).Index())
        {
            y = top;
            foreach (var (number, text) in column.Item)
            {
                var x = Margin + (column.Index * each);
                sheet.Text(number.ToString(CultureInfo.InvariantCulture), x + 18, y + 13.5, "end", bold: true);
                foreach (var line in SvgSheet.Lines(text, each - indent))
                {
                    sheet.Text(line, x + indent, y + 13.5);
                    y += Row;
                }
            }
            lowest = Math.Max(lowest, y);
        }
        y = lowest;
    }
}

/// <summary>A view as it was drawn.</summary>
internal sealed record DrawnView(RigView View, IReadOnlyList<RigLabel> Labels, (double X, double Y) Centre,
    Func<(double X, double Y), (double X, double Y)> Pixel);
