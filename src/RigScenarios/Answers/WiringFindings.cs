using RigScenarios.Limits;
using UnitsNet;
using UnitsNet.Units;

namespace RigScenarios.Answers;

/// <summary>The limits of a day's wiring as findings.</summary>
internal static class WiringFindings
{
    /// <summary>All limits, the one with the least left first.</summary>
    public static IReadOnlyList<WiringFinding> Of(WiringOfDay wiring, Duration start) => [.. wiring.Run.Limits.Where(limit => limit.Kind != LimitKind.Temperature).Select(limit =>
    {
        var volts = limit.Worst is ElectricPotential;
        var unit = volts ? "V" : "A";
        var blocks = wiring.Day.Blocks.Keys.ToList();
        return new WiringFinding(
            limit.Element, Words(limit), limit.Case, $"{(double)limit.Worst.Value:0.00} {unit}", $"{(double)limit.Allowed!.Value:0.00} {unit}",
            Ratio.FromDecimalFractions(limit.Share ?? 0).ToUnit(RatioUnit.Percent), limit.At!.Time - start, blocks.IndexOf(limit.At.Block), limit.Situation, limit.Basis.Source, "")
        {
            IsVoltage = volts, Current = limit.Worst is ElectricCurrent current ? current : null,
        };
    })];

    private static string Words(Limit limit) => limit.Kind switch
    {
        LimitKind.RatedCurrent => "rated current of the cable",
        LimitKind.Fuse => "fuse, steady",
        LimitKind.OutputCurrent => "current out of it",
        LimitKind.LowestVoltage => "lowest voltage that it takes",
        LimitKind.Input => "lowest voltage of its input window",
        LimitKind.SwitchOff => "voltage below which it switches off",
        LimitKind.CutOff => "its own cut-off",
        _ => "current through it",
    };
}
