using RigScenarios.Charts.Balance;
using RigScenarios.Charts.Style;
using RigScenarios.Simulation;

namespace RigScenarios.Charts.Timeline;

/// <summary>The signs of a timeline, each explained under it. None is told apart by its colour alone.</summary>
internal static class TimelineSigns
{
    /// <summary>A battery at one place: its charge as a line over a foot, and what lies between them.</summary>
    public static void Stretch(SvgSheet sheet, BatteryPlace place, IReadOnlyList<(double X, double Y)> line, double foot)
    {
        if (place == BatteryPlace.OnRig)
            sheet.Polygon("rs-box", [.. line, (line[^1].X, foot), (line[0].X, foot)]);
        if (place == BatteryPlace.Charging)
            Strokes(sheet, line, foot);
        var kind = place switch
        {
            BatteryPlace.WaitingForBay or BatteryPlace.WaitingForPower or BatteryPlace.WaitingForTemperature =>
                "rs-level rs-waits",
            BatteryPlace.TooLow => "rs-level rs-spent",
            _ => "rs-level",
        };
        sheet.Path(kind, Joined(line));
        if (place == BatteryPlace.Full)
            sheet.Path("rs-level", Joined([.. line.Select(point => (point.X, point.Y + 3.5))]));
    }

    /// <summary>A swap: an arrow from the battery that comes off to the one that goes on, with a cross at its begin if the rig
    /// had stopped.</summary>
    public static void Swap(SvgSheet sheet, double x, double from, double to, bool forced)
    {
        var down = to > from ? 1 : -1;
        var path = $"M{SvgSheet.Number(x)} {SvgSheet.Number(from)}V{SvgSheet.Number(to)}m-4 {-6 * down}l4 {6 * down}l4 "
            + $"{-6 * down}";
        if (forced)
            path += $"M{SvgSheet.Number(x - 4)} {SvgSheet.Number(from - 4)}l8 8m0 -8l-8 8";
        sheet.Path("rs-halo rs-sign", path);
        sheet.Path("rs-sign", path);
    }

    /// <summary>Hours with power: a bar with ends.</summary>
    public static void Power(SvgSheet sheet, double from, double to, double top)
    {
        sheet.Path("rs-sign", $"M{SvgSheet.Number(from)} {SvgSheet.Number(top)}v10M{SvgSheet.Number(to)} "
            + $"{SvgSheet.Number(top)}v10");
        sheet.Rectangle("rs-rest-fill", from, top + 3, to - from, 4);
    }

    /// <summary>Explains the signs that the picture has, from a height on; gives the height under them.</summary>
    public static double Legend(SvgSheet sheet, TimelinePicture picture, double top, double width)
    {
        var places = picture.Result.Batteries.Values.SelectMany(battery => battery.Spans).Select(span => span.Place).ToHashSet();
        var entries = new List<(string Text, Action<double, double> Sign)>();
        void Battery(string text, params BatteryPlace[] of)
        {
            if (of.Any(places.Contains))
                entries.Add((text,
                    (x, y) =>
                    Stretch(sheet, of[0],
                    [(x, y + 2), (x + 28, of[0] is BatteryPlace.OnRig ? y + 8 : of[0] is BatteryPlace.Charging ? y - 3 : y + 2)],
                    y + 13)));
        }
        if (picture.Stretches.Any(stretch => stretch.Rolling))
            entries.Add(("the camera rolls", (x, y) => sheet.Rectangle("rs-take", x, y + 2, 28, 6)));
        Battery("battery on the rig", BatteryPlace.OnRig);
        Battery("resting", BatteryPlace.Resting);
        Battery("charging", BatteryPlace.Charging);
        Battery("full", BatteryPlace.Full);
        Battery("waiting for bay, power or temperature", BatteryPlace.WaitingForBay, BatteryPlace.WaitingForPower,
            BatteryPlace.WaitingForTemperature);
        Battery("empty", BatteryPlace.TooLow);
        if (picture.Result.Swaps.Any(swap => !swap.Forced))
            entries.Add(("swap", (x, y) => Swap(sheet, x + 14, y - 5, y + 13, forced: false)));
        if (picture.Result.Swaps.Any(swap => swap.Forced))
            entries.Add(("swap after the rig had stopped", (x, y) => Swap(sheet, x + 14, y - 3, y + 13, forced: true)));
        if (picture.Outages.Count > 0)
        {
            entries.Add(("rig down, not for a planned swap", (x, y) =>
            {
                sheet.Rectangle("rs-down", x, y - 2, 28, 14);
                for (var i = 0; i < 28; i += 8)
                    sheet.Line("rs-down-strokes", (x + i, y + 12),
                        (x + Math.Min(i + 8, 28), y + 12 - (14 * Math.Min(8, 28 - i) / 8.0)));
            }));
        }
        if (picture.Plan.Chargers.Values.Any(charger => charger.Bays > 0))
            entries.Add(("charger has power", (x, y) => Power(sheet, x, x + 28, y)));
        return Set(sheet, entries, top, width);
    }

    private static double Set(SvgSheet sheet, List<(string Text, Action<double, double> Sign)> entries, double top, double width)
    {
        var each = entries.Max(entry => ChartStyle.TextWidth(entry.Text, SvgSheet.TextSize)) + 56;
        var columns = Math.Clamp((int)((width - 8) / each), 1, 4);
        foreach (var (entry, i) in entries.Select((entry, i) => (entry, i)))
        {
            var (x, y) = (8 + (i % columns * (width - 8) / columns), top + (i / columns * 24) + 6);
            entry.Sign(x, y);
            sheet.Text(entry.Text, x + 38, y + 10);
        }
        return top + ((entries.Count + columns - 1) / columns * 24) + 4;
    }

    private static void Strokes(SvgSheet sheet, IReadOnlyList<(double X, double Y)> line, double foot)
    {
        var path = new System.Text.StringBuilder();
        var i = 0;
        for (var x = line[0].X + 2; x < line[^1].X; x += 4)
        {
            while (i + 2 < line.Count && line[i + 1].X < x)
                i++;
            var (a, b) = (line[i], line[i + 1]);
            var height = b.X > a.X ? a.Y + ((x - a.X) / (b.X - a.X) * (b.Y - a.Y)) : b.Y;
            path.Append(System.Globalization.CultureInfo.InvariantCulture,
                $"M{SvgSheet.Number(x)} {SvgSheet.Number(foot)}V{SvgSheet.Number(height)}");
        }
        if (path.Length > 0)
            sheet.Path("rs-strokes", path.ToString());
    }

    private static string Joined(IReadOnlyList<(double X, double Y)> line) =>
        "M" + string.Join('L', line.Select(point => $"{SvgSheet.Number(point.X)} {SvgSheet.Number(point.Y)}"));
}
