using RigScenarios.Answers;
using RigScenarios.Wiring;

namespace RigScenarios.Charts.Wiring;

/// <summary>The wiring of a day as tables.</summary>
public static class WiringTable
{
    /// <summary>Every limit with what is left to it, least first.</summary>
    /// <param name="wiring">A day's wiring.</param>
    /// <param name="most">At most so many rows.</param>
    public static ChartTable Of(WiringOfDay wiring, int most = 15)
    {
        ArgumentNullException.ThrowIfNull(wiring);
        return ChartTable.Of("where", "limit", "worst", "allowed", "left", "when", "what widens it").WithRows(wiring.Findings.Take(most).Select(finding => new object?[]
        {
            wiring.NameOf(finding.Element), finding.Limit, finding.Load, finding.Allowed, WiringWords.Left(finding).Replace("-", Rounding.Minus, StringComparison.Ordinal), WiringWords.ShortMoment(wiring, finding), finding.Remedy,
        })) with { Caption = "Limits of the wiring, the one with the least left first" };
    }

    /// <summary>What would fix the wiring, each run through the day.</summary>
    public static ChartTable Fixes(WiringOfDay wiring)
    {
        ArgumentNullException.ThrowIfNull(wiring);
        return ChartTable.Of("change", "runs longer by", "reaches the end of the day").WithRows(wiring.Fixes.Select(fix => new object?[] { fix.Words, fix.Gain.Minutes < 1 ? "" : fix.Gain, fix.ReachesEnd ? "yes" : "no" }));
    }

    internal static ChartTable OfMoment(WiringOfDay wiring) =>
        ChartTable.Of("element", "volts at its inlet", "amperes", "watts lost").WithRows(wiring.Network.Elements.Select(element => Row(wiring, element)));

    private static object?[] Row(WiringOfDay wiring, WiringElement element)
    {
        var at = wiring.Worst!.Point.Elements[element.Name];
        return [wiring.NameOf(element.Name), at.Inlet, at.Current, at.Loss];
    }
}
