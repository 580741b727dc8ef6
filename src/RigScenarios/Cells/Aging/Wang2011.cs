using UnitsNet;

namespace RigScenarios.Cells.Aging;

/// <summary>
/// Aging of a 2.2 Ah LFP/graphite cell by the charge that it delivered: the set <c>lfp-throughput</c>. It knows no aging by
/// standing, no depth and no resistance.
/// </summary>
/// <remarks>
/// J. Wang et al. (2011), as read in public implementations. Q is the charge delivered; users disagree whether charging counts,
/// too. A fit of Wang et al. 2014 on NMC with LMO is left out: with its printed digits cycling heals between 13 and 36 °C.
/// </remarks>
internal static class Wang2011
{
    private const double CycleAmpereHours = 2.2;

    // The factor B over the rate, 1/h; straight between.
    private static readonly double[] Rates = [0.5, 2, 6, 10];
    private static readonly double[] Factors = [31630, 21681, 12934, 15512];

    public static AgingSet Set { get; } = new()
    {
        Name = "lfp-throughput",
        Description = "2.2 Ah cell of lithium iron phosphate on graphite, by the charge that it delivered",
        Chemistry = CellChemistries.Lfp,
        Source = new Citation("J. Wang et al.", "Cycle-life model for graphite-LiFePO4 cells", 2011,
            "J. Power Sources 196, 3942-3948, doi:10.1016/j.jpowsour.2010.11.134; constants as read in public implementations",
            Standing.SecondHand),
        Tested = new AgingRange
        {
            Cycles = new(Temperature.FromDegreesCelsius(-30), Temperature.FromDegreesCelsius(60)),
            RatePerHour = new(0.5, 10),
            Depth = new(Ratio.FromDecimalFractions(0.1), Ratio.FromDecimalFractions(0.9)),
            Unsure = "depth from memory; it knows no aging by standing",
        },
        CycleLoss = new(0.55, at =>
        {
            var rate = Math.Clamp(at.RatePerHour, Rates[0], Rates[^1]);
            return 0.01 * Math.Pow(CycleAmpereHours, 0.55) * Factor(rate)
                * Math.Exp(-(31700 - (370.3 * rate)) / (8.314 * at.Kelvin));
        }),
    };

    private static double Factor(double rate)
    {
        var i = 0;
        while (i < Rates.Length - 2 && rate >= Rates[i + 1])
            i++;
        return Factors[i] + ((Factors[i + 1] - Factors[i]) * (rate - Rates[i]) / (Rates[i + 1] - Rates[i]));
    }
}
