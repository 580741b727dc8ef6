using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>How far the prediction of one steady discharge was from the measured one.</summary>
/// <param name="Temperature">Temperature of the chamber, at which the cell began.</param>
/// <param name="Rate">Current over capacity, 1/h.</param>
/// <param name="Charge">Predicted charge, and so time at a steady current, over the measured one, less one: above zero too
/// much.</param>
/// <param name="Energy">The same of the energy, and so of the time at a steady power.</param>
public sealed record MeasuredDeviation(Temperature Temperature, double Rate, Ratio Charge, Ratio Energy)
{
    /// <summary>
    /// Each discharge of docs/measured-cells.md: one fresh 3 Ah NMC cell by P. Kollmeyer, C. Vidal, M. Naguib, M. Skells (2020),
    /// doi:10.17632/cp3473x7xv.3, CC BY 4.0, against the project's NMC defaults with two wells. A test holds it against the page.
    /// </summary>
    /// <remarks>The defaults were fitted on these same discharges: what they are off by is no prediction.</remarks>
    public static IReadOnlyList<MeasuredDeviation> All { get; } =
    [
        Row(40, 0.05, 4, 4.3),
        Row(40, 0.5, 4.3, 4.3),
        Row(40, 2, 4.3, 4.2),
        Row(25, 0.05, 0.3, 1),
        Row(25, 0.5, 0.8, 1.4),
        Row(25, 1, 1.2, 1.8),
        Row(25, 2, 1.4, 2.2),
        Row(10, 0.05, 0.1, 0.1),
        Row(10, 0.5, 2.1, 2.2),
        Row(10, 1, 1.3, 1.5),
        Row(10, 2, 1.1, 1.4),
        Row(0, 0.05, 0.7, 0.7),
        Row(0, 0.5, 1.9, 2.3),
        Row(0, 1, 0, 0.6),
        Row(0, 2, -1.4, -1.2),
        Row(-10, 0.05, 0.3, 0.5),
        Row(-10, 0.5, 1, 2.4),
        Row(-10, 1, -1.4, -0.3),
        Row(-10, 2, 4.3, 3.1),
        Row(-20, 0.05, 0.1, 0.7),
        Row(-20, 0.5, -0.3, 3.1),
        Row(-20, 1, 1.6, 2.7),
        Row(-20, 2, 4.6, 2.7),
    ];

    /// <summary>
    /// The same discharges against a battery whose charge lies in one well: what a file gets that has its own cold table or
    /// resistances and says nothing of wells. As it was with the defaults of that model (page as above, "before").
    /// </summary>
    public static IReadOnlyList<MeasuredDeviation> OneWell { get; } =
    [
        Row(40, 0.05, 4, 4.3),
        Row(40, 0.5, 4.3, 4.4),
        Row(40, 2, 4.6, 4.7),
        Row(25, 0.05, 0, 0.7),
        Row(25, 0.5, 0.8, 1.5),
        Row(25, 1, 1.6, 2.3),
        Row(25, 2, 2.1, 3.4),
        Row(10, 0.05, -2, -2),
        Row(10, 0.5, 0.7, 0.7),
        Row(10, 1, 0.8, 0.9),
        Row(10, 2, 2, 2.4),
        Row(0, 0.05, -2.1, -2.1),
        Row(0, 0.5, 0.7, 0.9),
        Row(0, 1, 0.2, 0.5),
        Row(0, 2, 0.7, 1),
        Row(-10, 0.05, -6.9, -6.8),
        Row(-10, 0.5, -0.1, 0.8),
        Row(-10, 1, 1.7, 2.4),
        Row(-10, 2, 12.7, 11.3),
        Row(-20, 0.05, -17.4, -16.9),
        Row(-20, 0.5, -0.7, 1.9),
        Row(-20, 1, 15.8, 15),
        Row(-20, 2, 25.8, 22.8),
    ];

    /// <summary>The larger of the two without its sign.</summary>
    public Ratio Largest => Ratio.FromPercent(Math.Max(Math.Abs(Charge.Percent), Math.Abs(Energy.Percent)));

    private static MeasuredDeviation Row(double celsius, double rate, double chargePercent, double energyPercent) =>
        new(Temperature.FromDegreesCelsius(celsius), rate, Ratio.FromPercent(chargePercent), Ratio.FromPercent(energyPercent));
}
