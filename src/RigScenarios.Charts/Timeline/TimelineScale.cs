using UnitsNet;

namespace RigScenarios.Charts.Timeline;

/// <summary>
/// Time across a sheet, the same clock for every day: the hours of work at one scale, the night after them pressed into a strip.
/// In hours from the day's own
/// midnight and in pixels.
/// </summary>
internal sealed class TimelineScale
{
    private const double NightShare = 0.17;
    private const double NightGap = 8;
    private readonly double left;
    private readonly double right;
    private readonly double nightLeft;

    /// <param name="days">Begin and end of each day, from midnight of the first day.</param>
    /// <param name="left">Left end, pixels.</param>
    /// <param name="right">Right end, pixels.</param>
    public TimelineScale(IReadOnlyList<(Duration Start, Duration End)> days, double left, double right)
    {
        (this.left, this.right) = (left, right);
        From = Math.Floor(days.Select((day, i) => day.Start.Hours - (24 * i)).Min() + 1e-9);
        To = Math.Ceiling(days.Select((day, i) => day.End.Hours - (24 * i)).Max() - 1e-9);
        HasNights = days.Count > 1 && To < From + 24;
        nightLeft = HasNights ? right - (NightShare * (right - left)) : right;
        WorkRight = HasNights ? nightLeft - NightGap : right;
    }

    /// <summary>The first hour of work shown.</summary>
    public double From { get; }

    /// <summary>The last hour of work shown.</summary>
    public double To { get; }

    /// <summary>Whether nights are shown.</summary>
    public bool HasNights { get; }

    /// <summary>Right end of the hours of work, pixels.</summary>
    public double WorkRight { get; }

    /// <summary>The pieces of a day, each with one scale: hours of begin and end.</summary>
    /// <param name="last">Whether it is the last day, which has no night.</param>
    public IEnumerable<(double From, double To)> Pieces(bool last)
    {
        yield return (From, To);
        if (HasNights && !last)
            yield return (To, From + 24);
    }

    /// <summary>Where an hour of the day lies within a piece that begins at an hour.</summary>
    public double X(double hour, double pieceFrom) => pieceFrom >= To
        ? nightLeft + ((hour - To) / (From + 24 - To) * (right - nightLeft))
        : left + ((hour - From) / (To - From) * (WorkRight - left));

    /// <summary>Whole hours of work that have room for a clock time each.</summary>
    public IEnumerable<double> Ticks(double room)
    {
        var perHour = (WorkRight - left) / (To - From);
        var step = new[] { 1.0, 2, 3, 4, 6, 12 }.FirstOrDefault(hours => hours * perHour >= room, 24);
        for (var hour = Math.Ceiling(From / step) * step; hour <= To + 1e-9; hour += step)
            yield return hour;
    }
}
