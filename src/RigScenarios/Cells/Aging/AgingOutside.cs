using UnitsNet;

namespace RigScenarios.Cells.Aging;

/// <summary>Which of a phase's conditions a set was not tested on. The ends of a range are inside.</summary>
internal static class AgingOutside
{
    // Below this a charge plates lithium on the graphite; no set knows it.
    private const double ColdChargeKelvin = 283.15;

    // Charges and depths are differences of decimal fractions: 1 - 0.8 is a hair above 0.2.
    private const double Rounding = 1e-9;

    /// <summary>Adds the warnings of a phase.</summary>
    /// <param name="set">The set.</param>
    /// <param name="exposure">What the phase exposes the battery to.</param>
    /// <param name="daysInAll">Days from the start to the end of the phase.</param>
    /// <param name="cyclesInAll">Full cycles until then.</param>
    /// <param name="warnings">Where they go.</param>
    public static void Add(AgingSet set, Exposure exposure, double daysInAll, double cyclesInAll, ISet<AgingWarning> warnings)
    {
        var tested = set.Tested;
        foreach (var one in exposure.Standings.Where(one => one.Days > 0))
        {
            if (!set.KnowsStorage)
                warnings.Add(AgingWarning.NoCalendar);
            if (Outside(tested.Storage, one.Kelvin))
                warnings.Add(AgingWarning.CalendarTemperature);
            if (one.Volts is null && (Outside(tested.StorageCharge, one.From) || Outside(tested.StorageCharge, one.To)))
                warnings.Add(AgingWarning.ChargeState);
        }

        foreach (var (_, condition) in exposure.Cycles.Where(one => one.FullCycles > 0))
        {
            if (Outside(tested.Cycles, condition.Kelvin))
                warnings.Add(AgingWarning.CycleTemperature);
            if (tested.RatePerHour is { } rates && Outside(rates.Least, rates.Greatest, condition.RatePerHour))
                warnings.Add(AgingWarning.Rate);
            if (Outside(tested.Depth, condition.Depth))
                warnings.Add(AgingWarning.Depth);
            if (exposure.ChargingKelvin is { } charging && charging < ColdChargeKelvin - Rounding)
                warnings.Add(AgingWarning.ColdCharge);
        }

        if ((exposure.Days > 0 && daysInAll > tested.LongestTime?.Days)
            || (exposure.FullCycles > 0 && cyclesInAll > tested.MostCycles))
            warnings.Add(AgingWarning.BeyondTests);
        if (exposure.GivenVolts < set.LeastVoltage?.Volts)
            warnings.Add(AgingWarning.LowVoltage);
    }

    private static bool Outside(TestedRange<Temperature>? range, double kelvin) =>
        range is { } tested && Outside(tested.Least.Kelvins, tested.Greatest.Kelvins, kelvin);

    private static bool Outside(TestedRange<Ratio>? range, double share) =>
        range is { } tested && Outside(tested.Least.DecimalFractions, tested.Greatest.DecimalFractions, share);

    private static bool Outside(double least, double greatest, double value) =>
        value < least - Rounding || value > greatest + Rounding;
}
