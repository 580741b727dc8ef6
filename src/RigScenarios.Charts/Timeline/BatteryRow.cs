using System.Globalization;
using RigScenarios.Charts.Balance;
using RigScenarios.Charts.Pages;
using RigScenarios.Simulation;

namespace RigScenarios.Charts.Timeline;

/// <summary>A battery through one day: its charge as a line, what happens with it by what lies under the line, and the charge in
/// figures at the ends.</summary>
internal sealed class BatteryRow
{
    public const double Height = 50;
    private const double Level = 24;
    private readonly BatteryTimeline battery;
    private readonly string name;
    private readonly double top;
    private readonly TimelineScale scale;
    private readonly IReadOnlyList<(double From, double To)> pieces;
    private readonly double midnight;
    private readonly List<double> hours;

    public BatteryRow(BatteryTimeline battery, string name, double top, TimelineScale scale,
        IReadOnlyList<(double From, double To)> pieces, double midnight)
    {
        (this.battery, this.name, this.top, this.scale, this.pieces, this.midnight) = (battery, name, top, scale,
            pieces, midnight);
        hours = [.. battery.Charges.Select(point => point.Time.Hours)];
        Band = new TextBand(scale.X(pieces[0].From, pieces[0].From), scale.X(pieces[^1].To, pieces[^1].From));
    }

    /// <summary>Baseline of its figures.</summary>
    public double Baseline => top + 13;

    /// <summary>Middle of its line's room.</summary>
    public double Middle => Foot - (Level / 2);

    /// <summary>Room for its figures.</summary>
    public TextBand Band { get; }

    private double Foot => top + 20 + Level;

    /// <summary>Draws the stretches.</summary>
    public void Draw(SvgSheet sheet)
    {
        foreach (var (from, to) in pieces)
        {
            sheet.Line("rs-grid", (scale.X(from, from), Foot), (scale.X(to, from), Foot));
            foreach (var (span, start, end) in Within(from, to))
            {
                sheet.Open("g",
                    string.Create(CultureInfo.InvariantCulture,
                    $"class=\"rs-span\" data-battery=\"{HtmlText.Escape(name)}\" data-place=\"{span.Place.InWords()}\" "
                        + $"data-from=\"{Math.Round(start + midnight, 4)}\" data-to=\"{Math.Round(end + midnight, 4)}\" "
                            + $"data-charge-from=\"{Math.Round(100 * ChargeAt(start), 1)}\" "
                                + $"data-charge-to=\"{Math.Round(100 * ChargeAt(end), 1)}\""));
                TimelineSigns.Stretch(sheet, span.Place,
                    [.. Course(start, end).Select(point => (scale.X(point.Hour, from), Foot - (Level * point.Charge)))], Foot);
                sheet.Close("g");
            }
        }
    }

    /// <summary>Writes the charge at the ends, as far as there is room: the day's ends first, then those on the rig and of
    /// charging; then what happens, in words.</summary>
    public void Label(SvgSheet sheet)
    {
        var (from, to) = (pieces[0].From, pieces[^1].To);
        var first = Math.Clamp(battery.Spans[0].Start.Hours - midnight, from, pieces[0].To);
        var last = Math.Clamp(battery.Spans[^1].End.Hours - midnight, pieces[^1].From, to);
        Band.TryPlace(Figure(first), scale.X(first, from), 1);
        Band.TryPlace(Figure(last), scale.X(last, pieces[^1].From), -1);
        var spans = pieces.SelectMany(piece => Within(piece.From, piece.To)
            .Select(item => (item.Span, item.Start, item.End, Piece: piece.From))).ToList();
        foreach (var (_, start, end, piece) in spans.Where(item => item.Span.Place is BatteryPlace.OnRig or BatteryPlace.Charging)
            .OrderBy(item => item.Span.Place != BatteryPlace.OnRig))
        {
            Place(end, piece, ChargeAt(end) >= ChargeAt(start) ? 1 : -1);
            Place(start, piece, 1);
        }
        foreach (var (span, start, end, piece) in spans)
        {
            var (left, right) = (scale.X(start, piece), scale.X(end, piece));
            Band.TryPlace(span.Place.InWords(), (left + right) / 2, 0, (left, right));
        }
        foreach (var (text, left, _) in Band.Placed)
            sheet.Text(text, left, Baseline, halo: true);
    }

    // The same figure is not said twice in one place.
    private void Place(double hour, double piece, int side)
    {
        var (text, x) = (Figure(hour), scale.X(hour, piece));
        if (!Band.Placed.Exists(other => other.Text == text && other.Left < x + 32 && other.Right > x - 32))
            Band.TryPlace(text, x, side);
    }

    private string Figure(double hour) => Rounding.Text(Math.Round(100 * ChargeAt(hour)), 3);

    private IEnumerable<(BatterySpan Span, double Start, double End)> Within(double from, double to)
    {
        foreach (var span in battery.Spans)
        {
            var (start, end) = (Math.Max(from, span.Start.Hours - midnight), Math.Min(to, span.End.Hours - midnight));
            if (end > start + 1e-6)
                yield return (span, start, end);
        }
    }

    private IEnumerable<(double Hour, double Charge)> Course(double start, double end)
    {
        yield return (start, ChargeAt(start));
        for (var i = 0; i < hours.Count; i++)
        {
            var hour = hours[i] - midnight;
            if (hour > start && hour < end)
                yield return (hour, battery.Charges[i].Charge.DecimalFractions);
        }
        yield return (end, ChargeAt(end));
    }

    private double ChargeAt(double hour)
    {
        var i = hours.BinarySearch(hour + midnight);
        if (i >= 0)
            return battery.Charges[i].Charge.DecimalFractions;
        i = ~i;
        if (i == 0)
            return battery.Charges[0].Charge.DecimalFractions;
        if (i == hours.Count)
            return battery.Charges[^1].Charge.DecimalFractions;
        var part = (hour + midnight - hours[i - 1]) / (hours[i] - hours[i - 1]);
        return battery.Charges[i - 1].Charge.DecimalFractions
            + (part * (battery.Charges[i].Charge.DecimalFractions - battery.Charges[i - 1].Charge.DecimalFractions));
    }
}
