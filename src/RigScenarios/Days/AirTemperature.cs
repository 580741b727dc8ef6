namespace RigScenarios.Days;

/// <summary>Temperature of the air over all the days: straight lines one after the other, in s and K.</summary>
internal sealed class AirTemperature
{
    private readonly double[] starts;
    private readonly double[] kelvins;
    private readonly double[] slopes;

    private AirTemperature(IReadOnlyList<(double Start, double Kelvin, double Slope)> lines)
    {
        starts = [.. lines.Select(line => line.Start)];
        kelvins = [.. lines.Select(line => line.Kelvin)];
        slopes = [.. lines.Select(line => line.Slope)];
    }

    /// <summary>The same all the time.</summary>
    public static AirTemperature Constant(double kelvin) => new([(double.NegativeInfinity, kelvin, 0)]);

    /// <summary>One day from its start to its end, seconds from midnight of the first day; the day's own midnight is
    /// given.</summary>
    public static AirTemperature OfDay(ShootingDay day, double otherwiseKelvin, double midnight, double start, double end) =>
        new(Lines(day, otherwiseKelvin, midnight, start, end));

    /// <summary>The air of the plan: that of each day while it lasts, that of the night between.</summary>
    public static AirTemperature Of(DayPlan plan, IReadOnlyList<(double Midnight, double Start, double End)> days)
    {
        var lines = new List<(double, double, double)>();
        for (var i = 0; i < days.Count; i++)
        {
            var (midnight, start, end) = days[i];
            lines.AddRange(Lines(plan.Days[i], plan.Ambient.Kelvins, midnight, i == 0 ? double.NegativeInfinity : start, end));
            if (i + 1 < days.Count)
                lines.Add((end, plan.NightTemperature.Kelvins, 0));
        }
        // After the last day it stays as it was at the end.
        var whole = new AirTemperature(lines);
        lines.Add((days[^1].End, whole.At(days[^1].End).Kelvin, 0));
        return new AirTemperature(lines);
    }

    /// <summary>Temperature at a time, K, how fast it rises, K/s, and until when that holds.</summary>
    public (double Kelvin, double Slope, double Until) At(double time)
    {
        var i = Array.BinarySearch(starts, time);
        if (i < 0)
            i = ~i - 1;
        var kelvin = slopes[i] == 0 ? kelvins[i] : kelvins[i] + (slopes[i] * (time - starts[i]));
        return (kelvin, slopes[i], i + 1 < starts.Length ? starts[i + 1] : double.PositiveInfinity);
    }

    private static List<(double Start, double Kelvin, double Slope)> Lines(
        ShootingDay day, double otherwise, double midnight, double start, double end)
    {
        var points = day.AmbientPoints.Zip(
            day.AmbientPointTimes(), (point, time) => (Time: midnight + time, point.Temperature.Kelvins)).ToList();
        if (points.Count == 0)
            return [(start, day.Ambient?.Kelvins ?? otherwise, 0)];
        var lines = new List<(double, double, double)> { (double.NegativeInfinity, points[0].Kelvins, 0) };
        foreach (var (from, to) in points.Zip(points.Skip(1)))
            lines.Add((from.Time, from.Kelvins, (to.Kelvins - from.Kelvins) / (to.Time - from.Time)));
        lines.Add((points[^1].Time, points[^1].Kelvins, 0));

        // Only what lies within the day; the line that holds at its start begins there.
        var course = new AirTemperature(lines);
        var within = lines.Where(line => line.Item1 > start && line.Item1 < end).ToList();
        if (double.IsNegativeInfinity(start))
            return [lines[0], .. within];
        var (kelvin, slope, _) = course.At(start);
        return [(start, kelvin, slope), .. within];
    }
}
