using RigScenarios.Charts.Bars;
using RigScenarios.Limits;
using RigScenarios.Search.Compare;

namespace RigScenarios.Charts.Compare;

/// <summary>What is left to each limit of several rigs, a bar for each rig beside the others': which limit breaks, and in which
/// rig. Passed limits reach below zero and are hatched.</summary>
public static class MarginsSideBySide
{
    // A rating next to 0 is passed by thousands of percent, and nothing else would be seen.
    private const double MostPercent = 150;

    private const int MostLimits = 8;

    /// <summary>The figure; null where no limit is passed or near in any of them, or none of those has a share.</summary>
    /// <param name="side">The comparison.</param>
    /// <param name="title">What the chart answers.</param>
    public static Figure? Of(SideBySide side, string title = "Which limit is nearest, and in which rig?")
    {
        ArgumentNullException.ThrowIfNull(side);
        var rows = side.Limits.Where(row => row.Limits.OfType<Limit>().All(HasShare)).ToList();
        List<ChartBar> bars = [.. rows.Take(MostLimits).SelectMany(row => row.Limits.Index().Where(item => item.Item is not null)
            .Select(item => new ChartBar($"{SideBySideWords.Name(row)} ({side.Rigs[item.Index].Name})",
                Math.Clamp(100 * item.Item!.Share!.Value, -MostPercent, MostPercent))
            {
                Note = SideBySideWords.Left(item.Item), IsEmphasised = item.Item.IsPassed,
            }))];
        // Two limits of one name are told apart by nothing that could be written on a bar.
        bars = [.. bars.GroupBy(bar => bar.Name, StringComparer.Ordinal).Select(group => group.MinBy(bar => bar.To)!)];
        if (bars.Count == 0)
            return null;
        var more = side.Limits.Count - Math.Min(rows.Count, MostLimits);
        return new BarChart
        {
            Slug = "margins-side-by-side",
            Title = title,
            Value = new ChartAxis("left of what is allowed", "%"),
            Bars = bars,
            Limits = [new BarLimit("past it from here to the left", 0)],
            Caption = "What is left to each limit that is passed or near in one of the rigs, the least left first. A rig without "
                + "a bar has no such thing." + (more > 0 ? $" {more} more stand in the table." : ""),
        }.ToFigure();
    }

    private static bool HasShare(Limit limit) =>
        limit.Kind != LimitKind.Temperature && limit.Share is { } share && double.IsFinite(share);
}
