using System.Globalization;
using RigScenarios.Charts.Balance;
using RigScenarios.Charts.Pages;
using RigScenarios.Charts.Placement;
using RigScenarios.Charts.Style;
using RigScenarios.Days;

namespace RigScenarios.Charts.Timeline;

/// <summary>The rows of one day: clock, blocks with takes, the rig, the batteries, the chargers.</summary>
internal sealed class TimelineRows
{
    private const double BandHeight = 16;
    private const double NameHeight = 18;
    private readonly TimelinePicture picture;
    private readonly SvgSheet sheet;
    private readonly TimelineScale scale;
    private readonly int number;
    private readonly double nameRoom;
    private readonly bool beside;
    private readonly double width;
    private readonly IReadOnlyList<(double From, double To)> pieces;
    private readonly Dictionary<string, BatteryRow> rows = new(StringComparer.Ordinal);
    private readonly List<(string Name, double Baseline)> names = [];
    private double y;

    public TimelineRows(TimelinePicture picture, SvgSheet sheet, TimelineScale scale, int number, double nameRoom,
        bool beside, double width)
    {
        (this.picture, this.sheet, this.scale, this.number, this.nameRoom, this.beside, this.width) = (picture, sheet, scale,
            number, nameRoom, beside, width);
        pieces = [.. scale.Pieces(number == picture.Result.Days.Count)];
    }

    public List<(double Baseline, TextBand Band)> Bands { get; } = [];

    /// <summary>The names of the rows, to find how much room they take.</summary>
    public static IReadOnlyList<string> Names(TimelinePicture picture) =>
        ["blocks, takes", "rig", .. picture.Plan.Batteries.SelectMany(battery => new[] { battery.Key, battery.Value.Part.Name }),
            .. Chargers(picture).Select(name => name + " has power")];

    /// <summary>How wide the name of a row is; bold text is wider than what is reckoned with elsewhere.</summary>
    public static double NameWidth(string name) => ChartStyle.TextWidth(name, SvgSheet.TextSize) * 1.12;

    /// <summary>Draws them from a height on and gives the height under them.</summary>
    public double Draw(double top)
    {
        y = top;
        sheet.Open("g", $"data-day=\"{number}\"");
        var clock = y;
        y += NameHeight;
        var heights = Heights();
        Night(y, y + heights);
        Clock(clock, y + heights);
        Blocks();
        Rig();
        foreach (var name in picture.Plan.Batteries.Keys)
            Battery(name);
        Swaps();
        foreach (var row in rows.Values)
        {
            row.Label(sheet);
            Bands.Add((row.Baseline, row.Band));
        }
        foreach (var name in Chargers(picture))
            Charger(name);
        // Above the rows they lie in the way of swaps, so they come last.
        foreach (var (name, baseline) in names)
            sheet.Text(name, 8, baseline, bold: true, halo: true);
        sheet.Close("g");
        return y + 4;
    }

    private static IEnumerable<string> Chargers(TimelinePicture picture) =>
        picture.Plan.Chargers.Where(charger => charger.Value.Bays > 0).Select(charger => charger.Key);

    private double Midnight => 24 * (number - 1);

    // Letters of outages stand above the rig's line.
    private double RigBand => picture.Outages.Count > 0 ? BandHeight : 0;

    private double Heights()
    {
        var above = beside ? 0 : NameHeight;
        return (above + 36) + (above + 20 + RigBand) + (picture.Plan.Batteries.Count * (above + BatteryRow.Height))
            + (Chargers(picture).Count() * (above + 22));
    }

    private void Name(string name, double baseline, string? second = null)
    {
        if (beside)
        {
            sheet.Text(Cut(name), 8, baseline, bold: true);
            if (second is not null)
                sheet.Text(Cut(second), 8, baseline + 16);
            return;
        }
        names.Add((Cut(second is null ? name : $"{name}, {second}"), y + 14));
        y += NameHeight;
    }

    // A name that is too long for its room goes on in the table.
    private string Cut(string name)
    {
        var cut = name;
        while (cut.Length > 1 && NameWidth(cut + (cut == name ? "" : "…")) > nameRoom)
            cut = cut[..^1];
        return cut == name ? name : cut.TrimEnd() + "…";
    }

    private void Night(double top, double bottom)
    {
        foreach (var (from, to) in pieces.Skip(1))
            sheet.Rectangle("rs-night", scale.X(from, from), top, scale.X(to, from) - scale.X(from, from), bottom - top);
    }

    private void Clock(double top, double bottom)
    {
        foreach (var hour in scale.Ticks(58))
        {
            var x = scale.X(hour, scale.From);
            sheet.Line("rs-grid", (x, top + NameHeight), (x, bottom));
            var text = AxisLayout.ClockText(hour % 24);
            var half = ChartStyle.TextWidth(text, SvgSheet.TextSize) / 2;
            sheet.Text(text, Math.Clamp(x, half, width - half - 2), top + 13, "middle");
        }
        foreach (var (from, to) in pieces.Skip(1))
        {
            var middle = (scale.X(from, from) + scale.X(to, from)) / 2;
            if (ChartStyle.TextWidth("night", SvgSheet.TextSize) < scale.X(to, from) - scale.X(from, from))
                sheet.Text("night", middle, top + NameHeight + 14, "middle", halo: true);
        }
    }

    private void Blocks()
    {
        Name("blocks, takes", y + 17);
        foreach (var (block, i) in picture.Stretches.Where(stretch => stretch.Day == number).GroupBy(stretch => stretch.Block)
            .Select((group, i) => (group, i)))
        {
            var (from, to) = (X(block.First().Start.Hours), X(block.Last().End.Hours));
            sheet.Open("g", $"class=\"rs-block\" data-block=\"{HtmlText.Escape(block.Key)}\"");
            sheet.Rectangle("rs-box", from, y + 2, to - from, 20);
            var text = Rounding.Text(i + 1, 3);
            if (ChartStyle.TextWidth(text, SvgSheet.TextSize) < to - from - 2)
                sheet.Text(text, (from + to) / 2, y + 16.5, "middle");
            foreach (var take in block.Where(stretch => stretch.Rolling))
                sheet.Rectangle("rs-take", X(take.Start.Hours), y + 25,
                    Math.Max(0.8, X(take.End.Hours) - X(take.Start.Hours)), 6);
            sheet.Close("g");
        }
        y += 36;
    }

    private void Rig()
    {
        Name("rig", y + 10 + RigBand);
        var day = picture.Result.Days[number - 1];
        var middle = y + RigBand + 7;
        sheet.Line("rs-level", (X(day.Start.Hours), middle), (X(day.End.Hours), middle));
        var band = new TextBand(X(scale.From + Midnight), X(scale.To + Midnight));
        foreach (var outage in picture.Outages.Where(outage => outage.Downs[0].Day == number))
        {
            var (from, to) = (X(outage.Start.Hours), Math.Max(X(outage.End.Hours), X(outage.Start.Hours) + 3));
            sheet.Open("g", string.Create(CultureInfo.InvariantCulture, $"class=\"rs-outage\" "
                + $"data-from=\"{Math.Round(outage.Start.Hours, 4)}\" data-to=\"{Math.Round(outage.End.Hours, 4)}\""));
            sheet.Rectangle("rs-down", from, y + RigBand, to - from, 14);
            for (var x = from; x + 4 < to; x += 8)
                sheet.Line("rs-down-strokes", (x, y + RigBand + 14),
                    (Math.Min(x + 8, to), y + RigBand + 14 - (14 * Math.Min(8, to - x) / 8)));
            band.TryPlace(outage.Letter, (from + to) / 2, 0);
            sheet.Close("g");
        }
        foreach (var (text, left, _) in band.Placed)
            sheet.Text(text, left, y + 13, bold: true, halo: true);
        Bands.Add((y + 13, band));
        y += RigBand + 20;
    }

    private void Battery(string name)
    {
        Name(name, y + 22, picture.Plan.Batteries[name].Part.Name);
        var row = new BatteryRow(picture.Result.Batteries[name], name, y, scale, pieces, Midnight);
        row.Draw(sheet);
        rows.Add(name, row);
        y += BatteryRow.Height;
    }

    private void Swaps()
    {
        foreach (var swap in picture.Result.Swaps.Where(swap => swap.Day == number))
        {
            var x = X(swap.Time.Hours);
            var to = rows[swap.On].Middle;
            var from = swap.Off is { } off ? rows[off].Middle : to - 16;
            sheet.Open("g",
                string.Create(CultureInfo.InvariantCulture, $"class=\"rs-swap\" data-at=\"{Math.Round(swap.Time.Hours, 4)}\" "
                + $"data-off=\"{HtmlText.Escape(swap.Off ?? "")}\" data-on=\"{HtmlText.Escape(swap.On)}\""));
            TimelineSigns.Swap(sheet, x, from, to, swap.Forced);
            sheet.Close("g");
            foreach (var row in rows.Values.Where(row => row.Baseline > Math.Min(from, to) - 10
                && row.Baseline < Math.Max(from, to) + 12))
                row.Band.Reserve(x - 6, x + 6);
        }
    }

    private void Charger(string name)
    {
        Name(name + " has power", y + 15);
        var charger = picture.Plan.Chargers[name];
        var hours = charger.PowerHours;
        foreach (var (from, to) in charger.WallLimit is { Watts: 0 } ? [] : pieces)
        {
            foreach (var (start, end) in hours.Count == 0 ? [(from, to)] : hours.SelectMany(range => Clocked(range)))
            {
                var (left, right) = (Math.Max(start, from), Math.Min(end, to));
                if (right > left)
                    TimelineSigns.Power(sheet, scale.X(left, from), scale.X(right, from), y + 6);
            }
        }
        y += 22;
    }

    // Of the day before, of this day and of the next, in hours from this day's midnight.
    private static IEnumerable<(double, double)> Clocked(ClockRange range)
    {
        var from = range.From.ToTimeSpan().TotalHours;
        var length = range.To.ToTimeSpan().TotalHours - from;
        length = length > 0 ? length : length + 24;
        return new[] { -24.0, 0, 24 }.Select(day => (from + day, from + day + length));
    }

    private double X(double hours) => scale.X(hours - Midnight, scale.From);
}
