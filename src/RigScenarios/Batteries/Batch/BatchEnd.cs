using System.Runtime.InteropServices;
using UnitsNet;

namespace RigScenarios.Batteries.Batch;

/// <summary>How one discharge of a batch ended.</summary>
/// <param name="EndTime">From the start to the end.</param>
/// <param name="Cause">What ended it.</param>
/// <param name="AtStep">True where the cause held right after a step of the demand, or at the start.</param>
/// <param name="SegmentsFinished">Demand segments that were finished before the end; one that ends with the time limit doesn't
/// count.</param>
/// <param name="StateOfCharge">z at the end: what is left behind.</param>
/// <param name="NearCharge">State of charge of the near well at the end: what the terminals see.</param>
/// <param name="Temperature">Temperature of the pack at the end.</param>
/// <param name="LowestTemperature">The lowest that the pack had, at the ends of the steps that were taken.</param>
/// <param name="Delivered">Energy that reached the terminals.</param>
/// <param name="GrazesLimit">True where some limit was only just missed before the end: a change of a ten-thousandth in
/// resistance or capacity may then move the end far. A cheap test: it may be true where the end is well conditioned.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct BatchEnd(
    Duration EndTime, EndCause Cause, bool AtStep, int SegmentsFinished, Ratio StateOfCharge, Ratio NearCharge,
    Temperature Temperature, Temperature LowestTemperature, Energy Delivered, bool GrazesLimit)
{
    /// <summary>The end of a case with units.</summary>
    internal static BatchEnd Of(in BatchCaseEnd end) => new(
        Duration.FromSeconds(end.Seconds), end.Cause, end.AtStep, end.SegmentsFinished,
        Ratio.FromDecimalFractions(Math.Clamp(end.Charge, 0, 1)), Ratio.FromDecimalFractions(Math.Clamp(end.NearCharge, 0, 1)),
        Temperature.FromKelvins(end.Kelvin), Temperature.FromKelvins(end.LowestKelvin),
        Energy.FromJoules(end.DeliveredJoules), end.GrazesLimit);
}
