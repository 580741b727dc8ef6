using RigScenarios.Charts.Style;
using RigScenarios.Days;
using RigScenarios.Simulation;

namespace RigScenarios.Charts.Timeline;

/// <summary>
/// Days with several batteries as a drawing: over one clock the blocks of the day with their takes, when the rig is down, where
/// each battery is and how full, and when chargers have power.
/// Days stand one under the other; a night is pressed into a strip.
/// </summary>
/// <remarks>
/// For pages that read it: a day is <c>g[data-day]</c>; in it a block is <c>g.rs-block[data-block]</c>, a take
/// <c>rect.rs-take</c>, a stretch of a battery <c>g.rs-span</c> with
/// <c>data-battery</c>, <c>data-place</c>, <c>data-from</c>, <c>data-to</c> (hours from midnight of the first day) and
/// <c>data-charge-from</c>, <c>data-charge-to</c> (percent), a swap
/// <c>g.rs-swap[data-at]</c>, a time without the rig <c>g.rs-outage</c> with <c>data-from</c> and <c>data-to</c>.
/// </remarks>
public static class DayTimeline
{
    /// <summary>The drawing.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="result">How it went; of this plan.</param>
    /// <param name="title">The line above it.</param>
    /// <param name="slug">Short name of the drawing, see <see cref="Drawing.Slug"/>.</param>
    /// <exception cref="ArgumentException">The result belongs to other days or batteries.</exception>
    public static Drawing Of(DayPlan plan, SimulationResult result, string title = "Where each battery is, hour by hour",
        string slug = "batteries-over-the-days")
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(result);
        if (plan.Days.Count != result.Days.Count || !plan.Batteries.Keys.SequenceEqual(result.Batteries.Keys))
            throw new ArgumentException("The result belongs to another plan: its days or batteries differ.", nameof(result));
        var picture = new TimelinePicture(plan, result);
        return new Drawing
        {
            Slug = slug,
            Title = title,
            Caption = TimelineWords.Caption(result),
            Cautions = TimelineCautions.Of(plan, result),
            AlternativeText = TimelineWords.Alternative(plan, result),
            Svg = new TimelineSheet(picture, ChartStyle.Width).ToSvg("rs-wide"),
            NarrowSvg = new TimelineSheet(picture, ChartStyle.NarrowWidth).ToSvg("rs-narrow"),
            Data = TimelineWords.Table(plan, result),
        };
    }
}

/// <summary>What a timeline shows, the same for all widths.</summary>
internal sealed record TimelinePicture(DayPlan Plan, SimulationResult Result)
{
    /// <summary>Blocks, takes and resets as planned.</summary>
    public IReadOnlyList<PlannedStretch> Stretches { get; } = Plan.Stretches();

    /// <summary>The times without the rig.</summary>
    public IReadOnlyList<Outage> Outages { get; } = Outage.Of(Result);
}
