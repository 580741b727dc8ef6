using UnitsNet;

namespace RigScenarios.Cells.Aging;

/// <summary>Aging of a 3 Ah LFP/graphite cell: the set <c>lfp</c>.</summary>
/// <remarks>
/// M. Naumann et al. (2018, 2020), the full digits from the function file that the authors released. The printed, rounded pair of
/// the cycles' growth gives a fifth of it at 1C. In the calendar growth the distance from half charge is squared; one public
/// implementation has it cubed. That growth falls below zero above 1.26C, hence the hold of the rate at 1C.
/// </remarks>
internal static class Naumann2020
{
    private const double SecondsADay = 86400;

    // The gas constant of the authors' file, J/(mol·K).
    private const double Gas = 8.314472673;

    public static AgingSet Set { get; } = new()
    {
        Name = "lfp",
        Description = "3 Ah cell of lithium iron phosphate on graphite",
        Chemistry = CellChemistries.Lfp,
        Source = new Citation("M. Naumann et al.", "", 2020,
            "J. Energy Storage 17 (2018) 153-169, doi:10.1016/j.est.2018.01.019; J. Power Sources 451, 227666, "
                + "doi:10.1016/j.jpowsour.2019.227666; full digits from the authors' released function file",
            Standing.SecondHand),
        Tested = new AgingRange
        {
            Storage = new(Temperature.FromDegreesCelsius(0), Temperature.FromDegreesCelsius(60)),
            Cycles = new(Temperature.FromDegreesCelsius(25), Temperature.FromDegreesCelsius(45)),
            RatePerHour = new(0.2, 1),
            Depth = new(Ratio.FromDecimalFractions(0.2), Ratio.FromDecimalFractions(1)),
            LongestTime = Duration.FromDays(885),
            MostCycles = 5000,
            Unsure = "depth and 885 days from memory; 5000 cycles are the project's choice; its cycles know no temperature",
        },
        CalendarLoss = new(0.5, at => Math.Sqrt(SecondsADay) * 1.2570527278588735e-5 * Arrhenius(17126.023893627058, at.Kelvin)
            * ((2.8574914597288177 * Cube(at.Charge - 0.5)) + 0.6022450126542257)),
        CalendarGrowth = new(1, at => SecondsADay * 3.419352708354734e-10 * Arrhenius(71827.15230329601, at.Kelvin)
            * ((-3.3903148865031594 * (at.Charge - 0.5) * (at.Charge - 0.5)) + 1.5604349252451155)),
        CycleLoss = new(0.5, at => 0.01 * ((0.06303575636331282 * Rate(at)) + 0.09705107000495405)
            * ((4.025280822570597 * Cube(at.Depth - 0.6)) + 1.0922780845544837)),
        CycleGrowth = new(1, at => 0.01 * ((-0.0018411620457524647 * Rate(at)) + 0.002328377628623146)
            * ((6.847717604040541 * Cube(at.Depth - 0.5)) + 0.9188245186469592)),
    };

    private static double Arrhenius(double joulesPerMole, double kelvin) =>
        Math.Exp(-joulesPerMole / Gas * ((1 / kelvin) - (1 / 298.15)));

    private static double Rate(AgingCondition at) => Math.Clamp(at.RatePerHour, 0.2, 1);

    private static double Cube(double value) => value * value * value;
}
