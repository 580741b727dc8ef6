using RigScenarios.Numerics;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Cells;

/// <summary>
/// The open-circuit voltage of one group over state of charge: a table from empty (0) to full (1) with a monotone cubic
/// (PCHIP, slopes of SciPy and MATLAB) through it. Immutable; safe to share between threads.
/// </summary>
public sealed class OpenCircuitVoltage
{
    private readonly MonotoneCubic curve;

    /// <param name="points">At least two points, state of charge rising from exactly 0 to exactly 1, voltages above 0.</param>
    /// <exception cref="ArgumentException">The table breaks one of these rules; the message says which and where.</exception>
    public OpenCircuitVoltage(IEnumerable<OpenCircuitPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        Points = [.. points];
        var charge = Points.Select(point => point.StateOfCharge.DecimalFractions).ToArray();
        var volts = Points.Select(point => point.Voltage.Volts).ToArray();
        if (charge.Length < 2)
            throw new ArgumentException($"The open-circuit table has {charge.Length} points; accepted: two or more.",
                nameof(points));
        if (charge[0] != 0 || charge[^1] != 1)
            throw new ArgumentException(
                $"The open-circuit table runs from {charge[0]:G6} to {charge[^1]:G6}; accepted: state of charge from exactly "
                    + "0 to exactly 1.", nameof(points));
        for (var i = 0; i < charge.Length; i++)
        {
            if (i > 0 && !(charge[i] > charge[i - 1]))
                throw new ArgumentException(
                    $"Point {i + 1} of the open-circuit table has state of charge {charge[i]:G6} after {charge[i - 1]:G6}; "
                        + "accepted: rising values.", nameof(points));
            if (!(volts[i] > 0) || !double.IsFinite(volts[i]))
                throw new ArgumentException($"Point {i + 1} of the open-circuit table has {volts[i]:G6} V; accepted: above 0 V.",
                    nameof(points));
        }

        curve = new MonotoneCubic(charge, volts);
    }

    /// <summary>The points of the table, from empty to full.</summary>
    public IReadOnlyList<OpenCircuitPoint> Points { get; }

    /// <summary>The curve in plain numbers: state of charge 0…1 to volts.</summary>
    internal MonotoneCubic Curve => curve;

    /// <summary>A table from plain numbers: state of charge 0…1 and volts.</summary>
    /// <exception cref="ArgumentException">As for the constructor.</exception>
    public static OpenCircuitVoltage FromTable(IReadOnlyList<double> stateOfCharge, IReadOnlyList<double> volts)
    {
        ArgumentNullException.ThrowIfNull(stateOfCharge);
        ArgumentNullException.ThrowIfNull(volts);
        if (stateOfCharge.Count != volts.Count)
            throw new ArgumentException(
                $"The open-circuit table has {stateOfCharge.Count} states of charge and {volts.Count} voltages; accepted: as "
                    + "many of each.", nameof(volts));
        return new OpenCircuitVoltage(stateOfCharge.Zip(volts,
            (z, u) => new OpenCircuitPoint(Ratio.FromDecimalFractions(z), ElectricPotential.FromVolts(u))));
    }

    /// <summary>The open-circuit voltage of one group at a state of charge of 0…1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The state of charge lies outside 0…1 or is no number.</exception>
    public ElectricPotential At(Ratio stateOfCharge)
    {
        var z = stateOfCharge.DecimalFractions;
        Require.Within(z, 0, 1, "", nameof(stateOfCharge));
        return ElectricPotential.FromVolts(curve.At(z));
    }
}
