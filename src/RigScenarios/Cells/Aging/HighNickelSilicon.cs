using UnitsNet;

namespace RigScenarios.Cells.Aging;

/// <summary>Aging of a 3.5 Ah cell of NMC811 on graphite with silicon: the set <c>nmc811si</c>. It knows no resistance.</summary>
/// <remarks>Fitted in a public program (BSD-3-Clause) on the data of a European research project's report D2.3.</remarks>
internal static class HighNickelSilicon
{
    public static AgingSet Set { get; } = new()
    {
        Name = "nmc811si",
        Description = "3.5 Ah cell of NMC811 on graphite with silicon",
        Chemistry = CellChemistries.Nmc,
        Source = new Citation("EVERLASTING project", "Report D2.3", null,
            "fit on its data as read in a public implementation", Standing.SecondHand),
        Tested = new AgingRange
        {
            Storage = new(Temperature.FromDegreesCelsius(0), Temperature.FromDegreesCelsius(50)),
            StorageCharge = new(Ratio.FromDecimalFractions(0.1), Ratio.FromDecimalFractions(0.9)),
            Cycles = new(Temperature.FromDegreesCelsius(0), Temperature.FromDegreesCelsius(50)),
            RatePerHour = new(0, 3),
            Depth = new(Ratio.FromDecimalFractions(0.2), Ratio.FromDecimalFractions(0.8)),
        },
        CalendarLoss = ExponentialAging.Storage(0.743, 0.0353, -1030, 57.7),
        CycleLoss = ExponentialAging.Cycles(0.695, 1.77e-7, 8.08e-13, 2.21e-7, 2250, 11400),
    };
}
