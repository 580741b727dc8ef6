using RigScenarios.Batteries;
using RigScenarios.Batteries.Batch;
using RigScenarios.Sweeps.Discharges;

namespace RigScenarios.Sweeps.Evaluation;

/// <summary>One scenario of a sweep as discharges: what goes into the batch and what comes out of it.</summary>
internal sealed class PreparedPoint
{
    private readonly DayDischarges days;
    private readonly BatchCase[] cases;
    private readonly BatchCaseEnd[] ends;
    private BatchCaseEnd[]? inDays;

    /// <param name="days">The days as discharges.</param>
    /// <param name="curves">The curves of their battery.</param>
    public PreparedPoint(DayDischarges days, BatchCurves curves)
    {
        this.days = days;
        cases = new BatchCase[days.Limits.Length];
        for (var day = 0; day < cases.Length; day++)
            cases[day] = days.CaseOf(day, curves);
        ends = new BatchCaseEnd[cases.Length];
    }

    /// <summary>How many days there are.</summary>
    public int Count => cases.Length;

    /// <summary>The discharge of a day, through the reserve after the last one.</summary>
    /// <param name="day">The day.</param>
    public ref readonly BatchCase CaseOf(int day) => ref cases[day];

    /// <summary>The discharge of a day, no further than the day.</summary>
    /// <param name="day">The day.</param>
    public BatchCase InDay(int day)
    {
        var one = cases[day];
        one.TimeLimit = days.Shape.Days[day].Length;
        return one;
    }

    /// <summary>Takes the end of a day's discharge.</summary>
    /// <param name="day">The day.</param>
    /// <param name="end">How it ended.</param>
    public void Take(int day, in BatchCaseEnd end) => ends[day] = end;

    /// <summary>What was taken so far are ends within the days. Whether the last one lasts, so that its reserve is to be
    /// run.</summary>
    public bool GoesOn()
    {
        inDays = [.. ends];
        return ends[^1].Cause == EndCause.TimeLimit;
    }

    /// <summary>The figures; null where the ends don't say them.</summary>
    public DayFigures? Read()
    {
        var figures = new DayEnds(days).Read(ends);
        // Where part of the rig goes on after what was missed, the battery is not at rest.
        return figures is null || inDays is null ? figures
            : DayEnds.IsOver(days, inDays) ? BatteryAtEnd.With(figures, days, inDays) : null;
    }
}
