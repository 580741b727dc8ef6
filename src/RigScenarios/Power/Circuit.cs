using System.Runtime.InteropServices;
using RigScenarios.Cells;

namespace RigScenarios.Power;

/// <summary>The state of a pack in plain numbers.</summary>
/// <param name="Charge">z, state of charge.</param>
/// <param name="Voltage1">v1, V of one group.</param>
/// <param name="Voltage2">v2, V of one group.</param>
/// <param name="Kelvin">T, K.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct PackState(double Charge, double Voltage1, double Voltage2, double Kelvin);

/// <summary>The draw at the terminals in plain numbers: I = Current + Conductance·V + Power/V.</summary>
/// <param name="Power">P, W.</param>
/// <param name="Current">Ic, A.</param>
/// <param name="Conductance">g, S.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct TerminalDraw(double Power, double Current, double Conductance);

/// <summary>What the circuit does in one state under one draw.</summary>
[StructLayout(LayoutKind.Auto)]
internal struct CircuitPoint
{
    /// <summary>V at the terminals, V.</summary>
    public double Voltage;

    /// <summary>I, A.</summary>
    public double Current;

    /// <summary>b² - 4·a·P·R, V² (negative for a negative b): below 0 the demand cannot be delivered. Infinite without constant power.</summary>
    public double PowerMargin;

    /// <summary>I·rho, the driver of both resistor-capacitor pairs, A (aR is in the resistances).</summary>
    public double PairDriver;

    /// <summary>dz/dt, 1/s.</summary>
    public double ChargeRate;

    /// <summary>Heat that the pack makes, W.</summary>
    public double Heat;

    /// <summary>Power at the open-circuit voltage, W.</summary>
    public double ChemicalPower;
}

/// <summary>
/// The algebra of the discharge model at one moment: from state and draw to voltage, current and rates. The open-circuit piece and the
/// temperature band are given, so that all of it is smooth within a step.
/// </summary>
internal static class Circuit
{
    /// <summary>Solves the terminals. Beyond the power limit the voltage stays at that of the limit, sqrt(P·R/a), so that a trial step can pass it.</summary>
    public static void Solve(
        PackParameters pack, in MonotoneCubic.Piece piece, in TemperatureBand band, in TerminalDraw draw, in PackState state, ref CircuitPoint point)
    {
        var openCircuit = piece.At(state.Charge);
        var factor = double.IsNaN(band.Floor)
            ? Math.Exp(pack.ActivationTemperature * ((1 / state.Kelvin) - (1 / PackParameters.ReferenceTemperature)))
            : band.Floor;
        var pairs = state.Voltage1 + state.Voltage2;
        var internalResistance = (pack.Groups * pack.Resistance0 * factor) + pack.LeadResistance;
        var source = pack.Groups * (openCircuit - pairs);

        // a = 1 + g·R, b = E - Ic·R; V = (b + sqrt(b² - 4·a·P·R))/(2a), the higher of the two solutions.
        var a = 1 + (draw.Conductance * internalResistance);
        var b = source - (draw.Current * internalResistance);
        double voltage, current;
        if (draw.Power > 0)
        {
            var product = a * draw.Power * internalResistance;
            // Below zero exactly where b < 2·sqrt(a·P·R), also for a negative b, and without a jump there.
            point.PowerMargin = (b * Math.Abs(b)) - (4 * product);
            voltage = point.PowerMargin > 0
                ? (b + Math.Sqrt(point.PowerMargin)) / (2 * a)
                : Math.Max(Math.Sqrt(product) / a, 1e-9);
            current = draw.Current + (draw.Conductance * voltage) + (draw.Power / voltage);
        }
        else
        {
            point.PowerMargin = double.PositiveInfinity;
            voltage = b / a;
            current = draw.Current + (draw.Conductance * voltage);
        }

        point.Voltage = voltage;
        point.Current = current;
        point.PairDriver = current * factor;
        point.ChargeRate = -current / (pack.ChargePerUnit * band.UsableAt(state.Kelvin));
        point.Heat = current * ((current * internalResistance) + (pack.Groups * pairs));
        point.ChemicalPower = pack.Groups * current * openCircuit;
    }
}
