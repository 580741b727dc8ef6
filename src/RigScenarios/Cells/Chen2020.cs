using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Cells;

/// <summary>
/// Open-circuit voltage of an NMC811/graphite-SiOx cell (5 Ah, 21700) from the two electrode functions of Chen et al. 2020.
/// </summary>
/// <remarks>
/// C.-H. Chen et al. (2020), doi:10.1149/1945-7111/ab9050. Functions and electrode capacities were read in a public
/// implementation of the paper, not in the paper itself. The paper's own start state gives 4.181 V and not 4.2 V; the
/// window used here is the one that meets 2.5 V and 4.2 V with the lithium of that start state. A curve over the paper's printed
/// window differs by about 40 mV at half charge.
/// </remarks>
public static class Chen2020
{
    // Electrode capacities from the parameter set (volume fraction, thickness, area, concentration), Ah, and its start state.
    private const double NegativeCapacity = 5.8276;
    private const double PositiveCapacity = 8.7323;
    private const double Lithium = (0.90140 * NegativeCapacity) + (0.27000 * PositiveCapacity);

    private const double EmptyVolts = 2.5;
    private const double FullVolts = 4.2;

    /// <summary>The citation.</summary>
    public static Citation Source { get; } = new(
        "C.-H. Chen, F. Brosa Planella, K. O'Regan, D. Gastol, W. D. Widanage, E. Kendrick",
        "",
        2020,
        "doi:10.1149/1945-7111/ab9050; functions read in a public implementation, window solved for 2.5 V and 4.2 V",
        Standing.SecondHand);

    /// <summary>The curve as a table: steps of 0.5 % up to 20 % of charge, where it is steep, then of 2.5 %.</summary>
    public static OpenCircuitVoltage OpenCircuitVoltage { get; } = Tabulate();

    /// <summary>Potential of the negative electrode (graphite-SiOx) over its lithiation x, V.</summary>
    internal static double Negative(double x) =>
        (1.9793 * Math.Exp(-39.3631 * x)) + 0.2482
        - (0.0909 * Math.Tanh(29.8538 * (x - 0.1234)))
        - (0.04478 * Math.Tanh(14.9159 * (x - 0.2769)))
        - (0.0205 * Math.Tanh(30.4444 * (x - 0.6103)));

    /// <summary>Potential of the positive electrode (NMC811) over its lithiation y, V.</summary>
    internal static double Positive(double y) =>
        (-0.8090 * y) + 4.4875
        - (0.0428 * Math.Tanh(18.5138 * (y - 0.5542)))
        - (17.7326 * Math.Tanh(15.7890 * (y - 0.3117)))
        + (17.5842 * Math.Tanh(15.9308 * (y - 0.3120)));

    /// <summary>Voltage of the cell over the lithiation of its negative electrode, V.</summary>
    internal static double Cell(double x) => Positive((Lithium - (x * NegativeCapacity)) / PositiveCapacity) - Negative(x);

    /// <summary>Lithiation of the negative electrode at which the cell has the voltage; bisection, the curve rises with
    /// x.</summary>
    internal static double LithiationAt(double volts)
    {
        double low = 0.005, high = 0.95;
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (Cell(middle) < volts)
                low = middle;
            else
                high = middle;
        }

        return (low + high) / 2;
    }

    private static OpenCircuitVoltage Tabulate()
    {
        var empty = LithiationAt(EmptyVolts);
        var full = LithiationAt(FullVolts);
        var charges = Enumerable.Range(0, 40).Select(i => i / 200.0).Concat(Enumerable.Range(8, 33).Select(i => i / 40.0));
        return new OpenCircuitVoltage(charges.Select(z => new OpenCircuitPoint(
            Ratio.FromDecimalFractions(z), ElectricPotential.FromVolts(Cell(empty + (z * (full - empty)))))));
    }
}
