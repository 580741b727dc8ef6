using UnitsNet;

namespace RigScenarios.Cells.Aging;

/// <summary>A cycle that rainflow counting found in a day's course of charge.</summary>
/// <param name="Depth">Its range, 0…1.</param>
/// <param name="MeanCharge">The charge about which it goes, 0…1.</param>
/// <param name="Count">1 for a whole cycle, 0.5 for half of one.</param>
public sealed record AgedCycle(Ratio Depth, Ratio MeanCharge, double Count)
{
    /// <summary>Full equivalent cycles of it.</summary>
    public double FullCycles => Count * Depth.DecimalFractions;
}

/// <summary>What one shooting day contributes by its cycles.</summary>
/// <param name="Cycles">Its cycles, the deepest first.</param>
/// <param name="RatePerHour">Charge fallen per hour of falling (risen per hour of rising, if it never falls), 1/h.</param>
/// <param name="Temperature">Mean temperature, weighted by how much the charge changes; null if it doesn't.</param>
/// <param name="ChargingTemperature">Least temperature of a stretch in which it is charged; null if there is none.</param>
public sealed record AgedDay(
    IReadOnlyList<AgedCycle> Cycles, double RatePerHour, Temperature? Temperature, Temperature? ChargingTemperature)
{
    /// <summary>Full equivalent cycles of the day: half the sum of how far the charge went up and down.</summary>
    public double FullCycles => Cycles.Sum(cycle => cycle.FullCycles);

    /// <summary>The day's cycles out of its course, by rainflow counting.</summary>
    /// <param name="course">The day, from leaving the shelf to lying there again.</param>
    /// <exception cref="ArgumentNullException"><paramref name="course"/> is null.</exception>
    public static AgedDay Of(IReadOnlyList<CourseStretch> course)
    {
        ArgumentNullException.ThrowIfNull(course);
        var charges = course.SelectMany(one => new[] { one.From.DecimalFractions, one.To.DecimalFractions });
        var cycles = Rainflow.Count([.. charges])
            .Select(one => new AgedCycle(Ratio.FromDecimalFractions(one.Range), Ratio.FromDecimalFractions(one.Mean), one.Count))
            .OrderByDescending(one => Math.Round(one.Depth.DecimalFractions, 9))
            .ThenByDescending(one => one.MeanCharge.DecimalFractions);
        double fallen = 0, falling = 0, risen = 0, rising = 0, kelvins = 0;
        double? charging = null;
        foreach (var stretch in course)
        {
            var change = stretch.To.DecimalFractions - stretch.From.DecimalFractions;
            var kelvin = stretch.Temperature.Kelvins;
            kelvins += Math.Abs(change) * kelvin;
            if (change < 0)
            {
                fallen -= change;
                falling += stretch.Length.Hours;
            }
            else if (change > 0)
            {
                risen += change;
                rising += stretch.Length.Hours;
                charging = Math.Min(charging ?? kelvin, kelvin);
            }
        }

        var rate = fallen > 0 ? fallen / falling : risen > 0 ? risen / rising : 0;
        return new AgedDay([.. cycles], rate,
            fallen + risen > 0 ? UnitsNet.Temperature.FromKelvins(kelvins / (fallen + risen)) : null,
            charging is { } least ? UnitsNet.Temperature.FromKelvins(least) : null);
    }
}
