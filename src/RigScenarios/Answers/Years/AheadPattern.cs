using RigScenarios.Cells.Aging;
using RigScenarios.Simulation;
using UnitsNet;

namespace RigScenarios.Answers.Years;

/// <summary>
/// What a battery goes through from now on: shooting days as the planned ones, and the shelf between them. Each planned day is
/// one shoot, with the course of charge and temperature that the simulation gave it.
/// </summary>
internal static class AheadPattern
{
    // To the shelf's charge and back: an ordinary charger takes two hours for a whole battery, in a room (common practice, no
    // source).
    private const double HoursOfAWholeCharge = 2;

    // Spans of rest lose a little by themselves; that is no cycle, and would make the rate of the day look gentler than it was.
    private const double Level = 0.02;

    private static readonly Temperature Room = Temperature.FromDegreesCelsius(20);

    private static readonly Duration Month = Duration.FromDays(LifeInWords.DaysOfMonth);

    /// <summary>The pattern of a month.</summary>
    /// <param name="life">How it is kept and how often it is used; what it leaves open is taken as usual.</param>
    /// <param name="timeline">How it went on the planned days.</param>
    /// <param name="days">How many days those are.</param>
    public static Shooting Of(LifeInWords life, BatteryTimeline timeline, int days)
    {
        var whole = life.Completed;
        var used = timeline.Spans.Where(span => span.End > span.Start).ToList();
        if (used.Count == 0)
            return life.Use(Month);
        var back = used[^1].ChargeAtEnd;
        var shelf = whole.Kept == Kept.AsItCameBack ? back : whole.Kept!.ChargeAfter(whole.Emptied!);
        List<CourseStretch> course = [.. Course(shelf, used)];
        var times = whole.ShootsPerMonth!.Value / days;
        // More shoots than a month has room for, each with its nights: then the words have to do.
        return times * course.Sum(stretch => stretch.Length.Days) > Month.Days ? life.Use(Month)
            : new Shooting(Month, whole.Place!.Temperature, shelf, times, course);
    }

    private static IEnumerable<CourseStretch> Course(Ratio shelf, List<BatterySpan> spans)
    {
        var at = shelf;
        foreach (var span in spans)
        {
            var isLevel = span.Place is not (BatteryPlace.OnRig or BatteryPlace.Charging);
            var from = isLevel ? span.ChargeAtEnd : span.ChargeAtStart;
            if (Between(at, from, Level) is { } before)
                yield return before;
            at = span.ChargeAtEnd;
            yield return new CourseStretch(span.End - span.Start, Held(from), Held(at), Temperature.FromKelvins(
                (span.TemperatureAtStart.Kelvins + span.TemperatureAtEnd.Kelvins) / 2));
        }
        if (Between(at, shelf, 0) is { } after)
            yield return after;
    }

    private static CourseStretch? Between(Ratio from, Ratio to, double level)
    {
        var change = Math.Abs(to.DecimalFractions - from.DecimalFractions);
        return change <= level ? null
            : new CourseStretch(Duration.FromHours(HoursOfAWholeCharge * change), Held(from), Held(to), Room);
    }

    private static Ratio Held(Ratio charge) => Ratio.FromDecimalFractions(Math.Clamp(charge.DecimalFractions, 0, 1));
}
