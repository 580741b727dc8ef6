using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Placement;

/// <summary>An axis in plotly.js's members, in the house style.</summary>
internal static class AxisLayout
{
    private static readonly double[] ClockSteps = [0.25, 0.5, 1, 2, 3, 4, 6, 12, 24];

    /// <summary>The members of an axis.</summary>
    /// <param name="axis">What it shows.</param>
    /// <param name="range">From where to where.</param>
    /// <param name="pixels">Its length, which decides how many numbers fit.</param>
    /// <param name="isHorizontal">Horizontal axes carry their title; vertical ones have it above the panel, where it needs no
    /// tilted head.</param>
    public static Dictionary<string, object?> Members(ChartAxis axis, AxisRange range, double pixels, bool isHorizontal)
    {
        var members = new Dictionary<string, object?>
        {
            ["range"] = new[] { range.From, range.To },
            ["gridcolor"] = ChartStyle.Grid,
            ["linecolor"] = ChartStyle.LimitInk,
            ["showline"] = true,
            ["zeroline"] = false,
            ["ticks"] = "outside",
            ["ticklen"] = 4,
            ["tickcolor"] = ChartStyle.LimitInk,
            ["fixedrange"] = true,
            ["nticks"] = MostTicks(pixels, isHorizontal),
        };
        if (!isHorizontal && axis.Scale == AxisScale.Linear && StepOfFewTicks(range, MostTicks(pixels, isHorizontal)) is { } step)
            members["dtick"] = step;
        if (isHorizontal)
            members["title"] = new { text = PlotlyText.Escape(axis.Label), standoff = 10,
                font = new { size = ChartStyle.FontSize } };
        if (range.IsLogarithmic)
            members["type"] = "log";
        if (axis.Scale == AxisScale.Clock)
            AddClockTicks(members, range, pixels);
        return members;
    }

    /// <summary>Hours since midnight as a clock time: 6.5 is 06:30; after midnight the day is counted on ("+1").</summary>
    public static string ClockText(double hours)
    {
        var minutes = (long)Math.Round(hours * 60);
        var (day, minute) = (Math.DivRem(minutes, 1440).Quotient, ((minutes % 1440) + 1440) % 1440);
        if (minutes < 0)
            day = (minutes - 1439) / 1440;
        // Each point of a day's chart has one.
        var (hour, rest) = Math.DivRem((int)minute, 60);
        ReadOnlySpan<char> digits = [Digit(hour / 10), Digit(hour % 10), ':', Digit(rest / 10), Digit(rest % 10)];
        var text = new string(digits);
        return day == 0 ? text : $"{text} {day:+0;−0}";
    }

    private static char Digit(int value) => (char)('0' + value);

    /// <summary>A value as it is read on an axis: a clock time, or a number with its unit.</summary>
    public static string Text(ChartAxis axis, double value, int digits = 4) => axis.Scale == AxisScale.Clock
        ? double.IsFinite(value) ? ClockText(value) : "–"
        : $"{Rounding.Text(value, digits)} {axis.Unit}".TrimEnd();

    private static int MostTicks(double pixels, bool isHorizontal) => Math.Max(3, (int)(pixels / (isHorizontal ? 64 : 40)));

    /// <summary>A step of our own where plotly.js would take the next larger one and be left with a number or two, as on a low
    /// panel from -40 to 40; null where its own choice will do.</summary>
    private static double? StepOfFewTicks(AxisRange range, int most)
    {
        var length = range.To - range.From;
        return length > 0 && length / AxisRange.NiceStep(length / most * 1.0001) < 3 ? AxisRange.NiceStep(length / most) : null;
    }

    private static void AddClockTicks(Dictionary<string, object?> members, AxisRange range, double pixels)
    {
        var step = ClockSteps.FirstOrDefault(s => (range.To - range.From) / s * 64 <= pixels, ClockSteps[^1]);
        var ticks = new List<double>();
        for (var tick = Math.Ceiling(range.From / step - 1e-9) * step; tick <= range.To + 1e-9; tick += step)
            ticks.Add(Math.Round(tick, 6));
        members["tickmode"] = "array";
        members["tickvals"] = ticks;
        members["ticktext"] = ticks.Select(ClockText).ToList();
    }
}
