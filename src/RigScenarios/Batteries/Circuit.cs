using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using RigScenarios.Numerics;

namespace RigScenarios.Batteries;

/// <summary>The state of a pack in plain numbers.</summary>
/// <param name="Charge">z, state of charge.</param>
/// <param name="Voltage1">v1, V of one group.</param>
/// <param name="Voltage2">v2, V of one group.</param>
/// <param name="Kelvin">T, K.</param>
/// <param name="Lag">w, how far the near well lags behind the state of charge; 0 for a pack with one well.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct PackState(double Charge, double Voltage1, double Voltage2, double Kelvin, double Lag = 0)
{
    /// <summary>zn, state of charge of the near well.</summary>
    public double Near => Charge - Lag;
}

/// <summary>The draw at the terminals in plain numbers: I = Current + Conductance·V + Power/V.</summary>
/// <param name="Power">P, W.</param>
/// <param name="Current">Ic, A.</param>
/// <param name="Conductance">g, S.</param>
/// <param name="Solved">What is asked instead of the formula; null for the formula.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct TerminalDraw(double Power, double Current, double Conductance, SolvedDraw? Solved = null)
{
    /// <summary>Whether there may be a limit to what the pack can deliver at all.</summary>
    public bool HasPowerLimit => Power > 0 || Solved is not null;
}

/// <summary>What the circuit does in one state under one draw.</summary>
/// <param name="Voltage">V at the terminals, V.</param>
/// <param name="Current">I, A.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct CircuitPoint(double Voltage, double Current);

/// <summary>Eight states side by side, one in each lane.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct StateLanes(
    Vector512<double> Charge, Vector512<double> Voltage1, Vector512<double> Voltage2, Vector512<double> Kelvin,
    Vector512<double> Lag)
{
    /// <summary>zn, state of charge of the near well.</summary>
    public Vector512<double> Near => Charge - Lag;

    /// <summary>The same state in all lanes.</summary>
    public static StateLanes Same(in PackState state) => new(
        Vector512.Create(state.Charge), Vector512.Create(state.Voltage1), Vector512.Create(state.Voltage2),
        Vector512.Create(state.Kelvin), Vector512.Create(state.Lag));

    /// <summary>The state in one lane.</summary>
    public PackState this[int lane] => new(Charge[lane], Voltage1[lane], Voltage2[lane], Kelvin[lane], Lag[lane]);
}

/// <summary>What the circuit does in eight states, one in each lane.</summary>
[StructLayout(LayoutKind.Auto)]
internal struct CircuitLanes
{
    /// <summary>V at the terminals, V.</summary>
    public Vector512<double> Voltage;

    /// <summary>I, A.</summary>
    public Vector512<double> Current;

    /// <summary>b² - 4·a·P·R, V² (negative for a negative b): below 0 the demand cannot be delivered. Infinite without constant
    /// power.</summary>
    public Vector512<double> PowerMargin;

    /// <summary>The voltage that may be watched, V: that at the terminals; where the draw is solved, the least of what its
    /// watched voltages stand above their thresholds.</summary>
    public Vector512<double> Watched;

    /// <summary>I·rho, the driver of both resistor-capacitor pairs, A (aR is in the resistances).</summary>
    public Vector512<double> PairDriver;

    /// <summary>dz/dt, 1/s.</summary>
    public Vector512<double> ChargeRate;

    /// <summary>1/tau(T), how fast the two wells even out, 1/s; not set for a pack with one well.</summary>
    public Vector512<double> ExchangeRate;

    /// <summary>Heat that the pack makes, W.</summary>
    public Vector512<double> Heat;

    /// <summary>What the cells give, W: current times open-circuit voltage, and the heat of mixing of the two wells.</summary>
    public Vector512<double> ChemicalPower;

    /// <summary>Voltage and current in one lane.</summary>
    public readonly CircuitPoint this[int lane] => new(Voltage[lane], Current[lane]);
}

/// <summary>
/// The algebra of the discharge model at one moment: from state and draw to voltage, current and rates; for eight states at once,
/// because a step
/// looks at eight places. The open-circuit pieces and the temperature band are given, so that all of it is smooth within a step.
/// </summary>
internal static class Circuit
{
    /// <summary>Solves the terminals in air of the given temperatures, K. Beyond the power limit the voltage stays at that of the
    /// limit, sqrt(P·R/a), so that a trial step can pass it.</summary>
    // Compiled well at its first call, like the other methods on lanes: left to itself it stays badly compiled through a whole
    // short run.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Solve(
        PackParameters pack, in StepPieces pieces, in TerminalDraw draw, in StateLanes state, Vector512<double> air,
        out CircuitLanes point)
    {
        if (PlainCollocation.IsQuicker)
        {
            PlainCircuit.Solve(pack, pieces, draw, state, air, Vector512<double>.Count, out point);
            return;
        }

        ref readonly var band = ref pieces.Band;
        var openCircuit = OpenCircuit(pieces.Near, state.Near);
        var factor = double.IsNaN(band.Floor)
            ? Vector512.Exp((Vector512<double>.One / state.Kelvin * pack.ActivationTemperature)
                - Vector512.Create(pack.ActivationTemperature / PackParameters.ReferenceTemperature))
            : Vector512.Create(band.Floor);
        var pairs = state.Voltage1 + state.Voltage2;
        var internalResistance = (factor * (pack.Groups * pack.Resistance0)) + Vector512.Create(pack.LeadResistance);
        var source = (openCircuit - pairs) * pack.Groups;

        // a = 1 + g·R, b = E - Ic·R; V = (b + sqrt(b² - 4·a·P·R))/(2a), the higher of the two solutions.
        var a = (internalResistance * draw.Conductance) + Vector512<double>.One;
        var b = source - (internalResistance * draw.Current);
        Unsafe.SkipInit(out point);
        if (draw.Solved is { } solvedDraw)
        {
            solvedDraw.Solve(source, internalResistance, air, ref point);
        }
        else if (draw.Power > 0)
        {
            // Below zero exactly where b < 2·sqrt(a·P·R), also for a negative b, and without a jump there.
            var product = a * internalResistance * draw.Power;
            point.PowerMargin = (b * Vector512.Abs(b)) - (product * 4);
            var solved = (b + Vector512.Sqrt(point.PowerMargin)) / (a * 2);
            var beyond = Vector512.Max(Vector512.Sqrt(product) / a, Vector512.Create(1e-9));
            point.Voltage = Vector512.ConditionalSelect(Vector512.GreaterThan(point.PowerMargin, Vector512<double>.Zero),
                solved, beyond);
            point.Current = (point.Voltage * draw.Conductance) + Vector512.Create(draw.Current)
                + (Vector512.Create(draw.Power) / point.Voltage);
        }
        else
        {
            point.PowerMargin = Vector512.Create(double.PositiveInfinity);
            point.Voltage = b / a;
            point.Current = (point.Voltage * draw.Conductance) + Vector512.Create(draw.Current);
        }

        if (draw.Solved is null)
            point.Watched = point.Voltage;
        var usable = ((state.Kelvin - Vector512.Create(band.Origin)) * band.UsableSlope) + Vector512.Create(band.Usable);
        point.PairDriver = point.Current * factor;
        point.ChargeRate = -point.Current / (usable * pack.ChargePerUnit);
        point.Heat = point.Current * ((point.Current * internalResistance) + (pairs * pack.Groups));
        point.ChemicalPower = point.Current * openCircuit * pack.Groups;
        if (draw.Solved is { ChargeFactor: not 1 } charger)
        {
            // What does not become charge becomes heat.
            point.ChargeRate *= charger.ChargeFactor;
            point.Heat -= point.ChemicalPower * (1 - charger.ChargeFactor);
            point.ChemicalPower *= charger.ChargeFactor;
        }

        if (pack.HasFarWell)
            Mix(pack, pieces, state, usable, openCircuit, ref point);
    }

    /// <summary>The same in one state, in all lanes.</summary>
    public static void SolveOne(
        PackParameters pack, in StepPieces pieces, in TerminalDraw draw, in PackState state, double air, out CircuitLanes point)
    {
        if (PlainCollocation.IsQuicker)
            PlainCircuit.Solve(pack, pieces, draw, StateLanes.Same(state), Vector512.Create(air), 1, out point);
        else
            Solve(pack, in pieces, in draw, StateLanes.Same(state), Vector512.Create(air), out point);
    }

    // The exchange of the two wells and its heat, which is never below zero: charge goes from the higher voltage to the lower.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Mix(PackParameters pack, in StepPieces pieces, in StateLanes state, Vector512<double> usable,
        Vector512<double> openCircuit, ref CircuitLanes point)
    {
        point.ExchangeRate = Vector512.Exp(Vector512.Create(pack.ExchangeLogarithm)
            - (Vector512<double>.One / state.Kelvin * pack.ExchangeActivationTemperature));
        var far = OpenCircuit(pieces.Far, state.Charge + (state.Lag * pack.FarPerLag));
        var mixing = usable * state.Lag * point.ExchangeRate * (far - openCircuit)
            * (pack.Groups * pack.ChargePerUnit * pack.NearShare);
        point.Heat += mixing;
        point.ChemicalPower += mixing;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector512<double> OpenCircuit(in MonotoneCubic.Piece piece, Vector512<double> charge)
    {
        var along = charge - Vector512.Create(piece.Start);
        return (((((along * piece.C3) + Vector512.Create(piece.C2)) * along) + Vector512.Create(piece.C1)) * along)
            + Vector512.Create(piece.C0);
    }
}
