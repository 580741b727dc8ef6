using UnitsNet;

namespace RigScenarios.Cells.Aging;

/// <summary>Aging of a 2.05 Ah NMC/graphite cell: the set <c>nmc</c>.</summary>
/// <remarks>
/// J. Schmalstieg et al. (2014), equations and constants as read in five public implementations, not in the paper. Those
/// differ: one prints 7.542 for 7.543, one +1.521e-5 for -1.521e-5, one takes the root of the throughput for the growth, too.
/// Its charge Q counts both ways, so a full cycle of its cell is 4.10 Ah.
/// </remarks>
internal static class Schmalstieg2014
{
    // Charge through the cell in a full cycle, both ways, Ah.
    private const double CycleAmpereHours = 4.10;

    // The slope and the foot of the calendar loss over the voltage; below the foot the straight line would heal.
    private const double LossSlope = 7.543, LossFoot = 23.75;

    public static AgingSet Set { get; } = new()
    {
        Name = "nmc",
        Description = "2.05 Ah cell of nickel-manganese-cobalt oxide on graphite",
        Chemistry = CellChemistries.Nmc,
        Source = new Citation("J. Schmalstieg, S. Käbitz, M. Ecker, D. U. Sauer",
            "A holistic aging model for Li(NiMnCo)O2 based 18650 lithium-ion batteries", 2014,
            "J. Power Sources 257, 325-334, doi:10.1016/j.jpowsour.2014.02.012; constants as read in public implementations",
            Standing.SecondHand),
        Tested = new AgingRange
        {
            Storage = new(Temperature.FromDegreesCelsius(35), Temperature.FromDegreesCelsius(50)),
            Cycles = new(Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(40)),
            RatePerHour = new(0, 1),
            Depth = new(Ratio.Zero, Ratio.FromDecimalFractions(1)),
            LongestTime = Duration.FromDays(500),
            MostCycles = 1000,
            Unsure = "storage temperature and 500 days from memory; cycled at 35 °C only, 20 to 40 °C and 1000 cycles are the "
                + "project's choice; its cycles know no temperature and no rate",
        },
        LeastVoltage = ElectricPotential.FromVolts(LossFoot / LossSlope),
        CalendarLoss = new(0.75, at => ((LossSlope * at.Volts) - LossFoot) * 1e6 * Math.Exp(-6976 / at.Kelvin)),
        CalendarGrowth = new(0.75, at => ((5.270 * at.Volts) - 16.32) * 1e5 * Math.Exp(-5986 / at.Kelvin)),
        CycleLoss = new(0.5, at => Math.Sqrt(CycleAmpereHours)
            * ((7.348e-3 * Square(at.Volts - 3.667)) + 7.600e-4 + (4.081e-3 * at.Depth))),
        CycleGrowth = new(1, at => CycleAmpereHours
            * Math.Max(1.5e-5, (2.153e-4 * Square(at.Volts - 3.725)) - 1.521e-5 + (2.798e-4 * at.Depth))),
    };

    private static double Square(double value) => value * value;
}
