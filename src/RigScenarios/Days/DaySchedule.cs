using RigScenarios.Builds;

namespace RigScenarios.Days;

/// <summary>A stretch in which every device keeps one state.</summary>
/// <param name="Day">Index of the day.</param>
/// <param name="Name">Short name of the block.</param>
/// <param name="Block">The block.</param>
/// <param name="Start">Begin, seconds from midnight of the first day.</param>
/// <param name="End">End.</param>
/// <param name="InReset">Whether it is a reset between takes.</param>
/// <param name="Rolling">Whether the camera rolls.</param>
/// <param name="BeginsBlock">Whether the block begins with it.</param>
internal sealed record DayStretch(int Day, string Name, DayBlock Block, double Start, double End, bool InReset, bool Rolling,
    bool BeginsBlock)
{
    public PowerState StateOf(string device) => InReset ? Block.StateInReset(device) : Block.StateOf(device);
}

/// <summary>The days of a plan on one line of time, in seconds from midnight of the first day.</summary>
internal sealed class DaySchedule
{
    private const double SecondsPerDay = 86400;

    private const double EightOClock = 8 * 3600;

    /// <param name="plan">The plan.</param>
    /// <exception cref="ArgumentException">There is no day, a day has no block or no length, or it lasts into the next
    /// one.</exception>
    public DaySchedule(DayPlan plan)
    {
        if (plan.Days.Count == 0)
            throw new ArgumentException("The plan has no day; accepted: one or more.", nameof(plan));
        var days = new List<(double Midnight, double Start, double End)>();
        for (var i = 0; i < plan.Days.Count; i++)
        {
            var day = plan.Days[i];
            var title = day.Title ?? $"day {i + 1}";
            var midnight = i * SecondsPerDay;
            var start = midnight + StartOf(day);
            if (day.Blocks.Count == 0)
                throw new ArgumentException($"{title} has no block; accepted: one or more.", nameof(plan));
            if (i > 0 && BeginsTooEarly(plan.Days[i - 1], day))
                throw new ArgumentException($"{title} begins before the day before it is over.", nameof(plan));
            days.Add((midnight, start, start + day.Length.Seconds));
        }
        Days = days;
    }

    /// <summary>When the first block of a day begins, seconds from its midnight.</summary>
    public static double StartOf(ShootingDay day) => day.Starts?.ToTimeSpan().TotalSeconds ?? EightOClock;

    /// <summary>Whether a day begins before the day right before it is over.</summary>
    public static bool BeginsTooEarly(ShootingDay before, ShootingDay day) =>
        SecondsPerDay + StartOf(day) < StartOf(before) + before.Length.Seconds - 1e-6;

    /// <summary>Midnight, begin and end of each day.</summary>
    public IReadOnlyList<(double Midnight, double Start, double End)> Days { get; }

    /// <summary>The stretches of a day, in order.</summary>
    public static IEnumerable<DayStretch> Stretches(ShootingDay day, int index, double start)
    {
        foreach (var (name, block) in day.Blocks)
        {
            foreach (var stretch in StretchesOf(index, name, block, start))
                yield return stretch;
            start += block.Length.Seconds;
        }
    }

    /// <summary>The stretches of a block that begins at a time: itself, or its takes and resets.</summary>
    public static IEnumerable<DayStretch> StretchesOf(int day, string name, DayBlock block, double start)
    {
        var end = start + block.Length.Seconds;
        if (block.Cycle is not { } cycle)
        {
            if (end > start)
                yield return new DayStretch(day, name, block, start, end, InReset: false, block.Rolling, BeginsBlock: true);
            yield break;
        }

        if (!(cycle.Take.Seconds > 0 && cycle.Reset.Seconds > 0))
            throw new ArgumentException(
                $"The takes of \"{name}\" have {cycle.Take.Seconds:G6} s and the resets {cycle.Reset.Seconds:G6} s; accepted: "
                    + "above 0 s.", nameof(block));
        var period = cycle.Take.Seconds + cycle.Reset.Seconds;
        for (var i = 0; start + (i * period) < end - 1e-6; i++)
        {
            var take = start + (i * period);
            yield return new DayStretch(day, name, block, take, Math.Min(end, take + cycle.Take.Seconds), InReset: false,
                Rolling: true, BeginsBlock: i == 0);
            if (take + cycle.Take.Seconds < end - 1e-6)
                yield return new DayStretch(day, name, block, take + cycle.Take.Seconds, Math.Min(end, take + period),
                    InReset: true, Rolling: false, BeginsBlock: false);
        }
    }
}
