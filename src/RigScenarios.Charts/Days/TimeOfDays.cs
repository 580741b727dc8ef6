using RigScenarios.Answers;
using RigScenarios.Charts.Lines;
using UnitsNet;

namespace RigScenarios.Charts.Days;

/// <summary>The horizontal axis of charts over the days of an answer, and what is shaded along it: the blocks of one day, or the
/// days of several.</summary>
internal sealed class TimeOfDays
{
    private readonly double zero;

    public TimeOfDays(RigAnswer answer)
    {
        var (plan, result) = (answer.Plan, answer.Simulation);
        var hasClock = plan.Days[0].Starts is not null;
        zero = hasClock ? 0 : result.Days[0].Start.Hours;
        Axis = hasClock ? ChartAxis.ClockTime() : new ChartAxis("time from the start of the day", "h");
        if (plan.Days.Count == 1)
        {
            Blocks = [.. result.Blocks.Select((block, i) => new ChartBlock(Rounding.Text(i + 1, 6), Hour(block.Start),
                Hour(block.End)))];
            Key = $"The numbers along the top are the blocks of the day: "
                + $"{string.Join(", ", result.Blocks.Select((block, i) => $"({i + 1})\u00a0{block.Title}"))}.";
        }
        else
        {
            Blocks = [.. result.Days.Select(day => new ChartBlock($"day {day.Number}", Hour(day.Start), Hour(day.End)))];
            Key = "";
        }
    }

    /// <summary>The axis.</summary>
    public ChartAxis Axis { get; }

    /// <summary>What is shaded.</summary>
    public IReadOnlyList<ChartBlock> Blocks { get; }

    /// <summary>What the shaded pieces are, in a sentence: names of a dozen blocks do not fit above a plot, their numbers do.
    /// Empty for several days.</summary>
    public string Key { get; }

    /// <summary>A moment on the axis.</summary>
    /// <param name="time">From midnight of the first day.</param>
    public double Hour(Duration time) => time.Hours - zero;
}
