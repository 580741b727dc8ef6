using RigScenarios.Days;
using UnitsNet;

namespace RigScenarios.Answers;

/// <summary>Lengths and moments in the one way in which every face writes them.</summary>
/// <param name="days">The days of the plan.</param>
public sealed class AnswerTimes(IReadOnlyList<ShootingDay> days)
{
    private const double EightOClock = 8;

    /// <summary>A length of time: "45 min", "8 h", "1 h 27 min"; below zero with a minus.</summary>
    /// <param name="time">The length.</param>
    public static string Length(Duration time)
    {
        var minutes = (long)Math.Round(Math.Abs(time.Minutes), MidpointRounding.AwayFromZero);
        var sign = time.Minutes < 0 && minutes > 0 ? "-" : "";
        return (minutes / 60, minutes % 60) switch
        {
            (0, var rest) => $"{sign}{rest} min",
            (var hours, 0) => $"{sign}{hours} h",
            var (hours, rest) => $"{sign}{hours} h {rest} min",
        };
    }

    /// <summary>A moment: "22:24", "14:05 on day 2", or "3 h 10 min into the day" where the day has no clock.</summary>
    /// <param name="time">From midnight of the first day.</param>
    public string At(Duration time)
    {
        var number = DayOf(time);
        var day = days[number];
        var on = days.Count > 1 ? $" on day {number + 1}" : "";
        if (day.Starts is null)
            return $"{Length(time - Start(number))} into {(days.Count > 1 ? $"day {number + 1}" : "the day")}";
        return $"{Clock(time)}{on}";
    }

    /// <summary>A clock time within its day, to the nearest minute: "22:24".</summary>
    /// <param name="time">From midnight of any day; 0 or more.</param>
    public static string Clock(Duration time)
    {
        var minutes = (long)Math.Round(time.Minutes, MidpointRounding.AwayFromZero) % (24 * 60);
        return $"{minutes / 60:00}:{minutes % 60:00}";
    }

    /// <summary>The moment with its preposition: "at 22:24", "after 3 h 10 min".</summary>
    /// <param name="time">From midnight of the first day.</param>
    public string When(Duration time) => days[DayOf(time)].Starts is null ? At(time) : $"at {At(time)}";

    /// <summary>Begin of a day, from midnight of the first day.</summary>
    /// <param name="number">Number of the day, from 0.</param>
    public Duration Start(int number) =>
        Duration.FromHours((24 * number) + (days[number].Starts?.ToTimeSpan().TotalHours ?? EightOClock));

    /// <summary>End of a day's last block, from midnight of the first day.</summary>
    /// <param name="number">Number of the day, from 0.</param>
    public Duration Wrap(int number) => Start(number) + days[number].Length;

    /// <summary>The title of a block for people.</summary>
    /// <param name="day">Number of the day, from 1.</param>
    /// <param name="block">The block's short name.</param>
    public string Title(int day, string block) =>
        days[day - 1].Blocks.TryGetValue(block, out var found) ? found.Title ?? block : block;

    private int DayOf(Duration time)
    {
        var number = days.Count - 1;
        while (number > 0 && time < Start(number) - Duration.FromSeconds(1))
            number--;
        return number;
    }
}
