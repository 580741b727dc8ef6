using System.Runtime.InteropServices;
using RigScenarios.Cells;

namespace RigScenarios.Batteries;

/// <summary>
/// A range of temperature in which the usable capacity is one straight line and the resistance factor is either its floor or the
/// exponential.
/// Inside a band the model is smooth; a step ends where the temperature leaves its band.
/// </summary>
/// <param name="From">Lower end, K; 0 for the coldest.</param>
/// <param name="To">Upper end, K; infinite for the warmest.</param>
/// <param name="Usable">kappa at <paramref name="Origin"/>.</param>
/// <param name="UsableSlope">Slope of kappa, 1/K.</param>
/// <param name="Origin">Temperature from which the slope counts, K.</param>
/// <param name="Floor">The resistance factor where it is constant; NaN where it is the exponential.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct TemperatureBand(double From, double To, double Usable, double UsableSlope,
    double Origin, double Floor)
{
    /// <summary>The bands of a pack, from cold to warm.</summary>
    /// <param name="usable">kappa.</param>
    /// <param name="floor">rhoMin; 0 for none.</param>
    /// <param name="activationTemperature">Ea over the gas constant, K.</param>
    public static TemperatureBand[] Of(UsableCapacity usable, double floor, double activationTemperature)
    {
        var kelvins = usable.Kelvins;
        var fractions = usable.Fractions;

        // Above this temperature the floor holds: exp(A(1/T - 1/Tref)) = floor.
        var floorFrom = FloorFrom(floor, activationTemperature);
        var edges = new List<double> { 0 };
        foreach (var kelvin in kelvins)
            edges.Add(kelvin);
        if (floorFrom > 0 && double.IsFinite(floorFrom))
            edges.Add(floorFrom);
        edges.Add(double.PositiveInfinity);
        edges.Sort();

        var bands = new List<TemperatureBand>(edges.Count);
        for (var i = 1; i < edges.Count; i++)
        {
            var (from, to) = (edges[i - 1], edges[i]);
            if (!(to > from))
                continue;
            var (value, slope, origin) = Line(kelvins, fractions, from);
            bands.Add(new TemperatureBand(from, to, value, slope, origin, from >= floorFrom ? floor : double.NaN));
        }

        return [.. bands];
    }

    private static double FloorFrom(double floor, double activationTemperature)
    {
        if (floor <= 0)
            return double.PositiveInfinity;
        if (activationTemperature == 0)
            return floor >= 1 ? 0 : double.PositiveInfinity;
        var inverse = (1 / PackParameters.ReferenceTemperature) + (Math.Log(floor) / activationTemperature);
        return inverse > 0 ? 1 / inverse : double.PositiveInfinity;
    }

    private static (double Value, double Slope,
        double Origin) Line(ReadOnlySpan<double> kelvins, ReadOnlySpan<double> fractions, double from)
    {
        if (from < kelvins[0])
            return (fractions[0], 0, kelvins[0]);
        for (var i = 1; i < kelvins.Length; i++)
        {
            if (from < kelvins[i])
                return (fractions[i - 1], (fractions[i] - fractions[i - 1]) / (kelvins[i] - kelvins[i - 1]), kelvins[i - 1]);
        }

        return (fractions[^1], 0, kelvins[^1]);
    }
}
