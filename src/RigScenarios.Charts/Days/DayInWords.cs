using RigScenarios.Answers;
using RigScenarios.Charts.Placement;
using UnitsNet;

namespace RigScenarios.Charts.Days;

/// <summary>A day's result in sentences that can be read aloud on set.</summary>
public static class DayInWords
{
    /// <summary>Whether the day is reached, when and why it ends, and by how much: one sentence or two.</summary>
    /// <param name="result">A day's result, with or without its series.</param>
    /// <param name="starts">When the first block begins; null tells times from the start of the day.</param>
    public static string Of(DayResult result, TimeOnly? starts = null)
    {
        ArgumentNullException.ThrowIfNull(result);
        return $"{DayWords.Answer(result)} {DayWords.Ending(result, starts)}";
    }

    /// <summary>A moment of the day: "at 14:31" where the day has a beginning, otherwise "after 8 h 31 min".</summary>
    public static string Moment(Duration fromStart, TimeOnly? starts) => starts is { } clock
        ? $"at {AxisLayout.ClockText(clock.ToTimeSpan().TotalHours + fromStart.Hours)}"
        : $"after {TradeUnits.Text(fromStart)}";

    /// <summary>A share in whole percent.</summary>
    internal static string Percent(Ratio share) => $"{Rounding.Text(Math.Round(share.Percent), 3)} %";
}
