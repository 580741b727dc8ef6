using UnitsNet;

namespace RigScenarios.Cells.Aging;

/// <summary>Aging of a 3.2 Ah NCA/graphite cell: the set <c>nca</c>. Its cycles know no temperature (their exponentials are
/// 1), and it knows no resistance.</summary>
/// <remarks>Fitted in a public program (BSD-3-Clause) on data of P. Keil et al. (2016) and Y. Preger et al. (2020).</remarks>
internal static class Keil2016
{
    public static AgingSet Set { get; } = new()
    {
        Name = "nca",
        Description = "3.2 Ah cell of nickel-cobalt-aluminium oxide on graphite",
        Chemistry = CellChemistries.Nmc,
        Source = new Citation("P. Keil et al.; Y. Preger et al.", "", 2016,
            "fit on their data of 2016 and 2020 as read in a public implementation", Standing.SecondHand),
        Tested = new AgingRange
        {
            Storage = new(Temperature.FromDegreesCelsius(25), Temperature.FromDegreesCelsius(50)),
            Cycles = new(Temperature.FromDegreesCelsius(15), Temperature.FromDegreesCelsius(35)),
            RatePerHour = new(0, 2),
            Depth = new(Ratio.FromDecimalFractions(0.8), Ratio.FromDecimalFractions(1)),
            LongestTime = Duration.FromDays(300),
            Unsure = "its cycles know no temperature",
        },
        CalendarLoss = ExponentialAging.Storage(0.512, 75.4, -3340, 353),
        CycleLoss = ExponentialAging.Cycles(0.699, 1.86e-6, 4.74e-11, 1.77e-4, 3.34e-11, 2.81e-9),
    };
}
