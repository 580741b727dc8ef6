using MathNet.Numerics.Integration;
using RigScenarios.Numerics;

namespace RigScenarios.Batteries;

/// <summary>
/// A pack at rest: the circuit at no current, in closed form. The pairs decay, the temperature follows that of the place, a
/// little charge goes by itself.
/// </summary>
internal static class PackRest
{
    /// <summary>Self-discharge at 20 °C, part of the capacity in a second: 3 % in 30 days, doubling every 10 K. Rough:
    /// encyclopaedias give 2 to 3 % a month.</summary>
    public const double SelfDischargePerSecond = 0.03 / (30 * 86400.0);

    private const double SelfDischargeKelvin = 293.15;

    /// <summary>The state after a rest.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="state">The state before.</param>
    /// <param name="ambientKelvin">Temperature of the place at the start, K.</param>
    /// <param name="ambientSlope">How fast it rises, K/s.</param>
    /// <param name="factor">How many times the heat conductance in still air holds there.</param>
    /// <param name="seconds">How long, s.</param>
    public static PackState After(PackParameters pack, in PackState state, double ambientKelvin, double ambientSlope,
        double factor, double seconds)
    {
        if (seconds <= 0)
            return state;
        var start = state.Kelvin;
        double At(double time) => KelvinAfter(pack, start, ambientKelvin, ambientSlope, factor, time);
        var lost = GaussLegendreRule.Integrate(time => Math.Pow(2, (At(time) - SelfDischargeKelvin) / 10), 0, seconds,
            20) * SelfDischargePerSecond;
        return new PackState(
            Math.Max(0, state.Charge - lost),
            state.Voltage1 * Math.Exp(-seconds / pack.TimeConstant1),
            state.Voltage2 * Math.Exp(-seconds / pack.TimeConstant2),
            At(seconds));
    }

    /// <summary>The first time, s, at which the temperature lies within [low, high]; infinite if that is not before the
    /// end.</summary>
    public static double TimeUntilWithin(
        PackParameters pack, double kelvin, double ambientKelvin, double ambientSlope, double factor, double low,
        double high, double seconds)
    {
        if (kelvin >= low && kelvin <= high)
            return 0;

        // The difference decays, the ambient is a line: the temperature turns once at most.
        var rate = pack.HeatConductance * factor / pack.HeatCapacity;
        var target = kelvin < low ? low : high;
        double At(double time) => KelvinAfter(pack, kelvin, ambientKelvin, ambientSlope, factor, time) - target;
        var turn = seconds;
        if (rate > 0 && ambientSlope != 0)
        {
            var ratio = ((kelvin - ambientKelvin) * rate / ambientSlope) + 1;
            if (ratio > 1)
                turn = Math.Min(seconds, Math.Log(ratio) / rate);
        }

        foreach (var (from, to) in new[] { (0.0, turn), (turn, seconds) })
        {
            if (to > from && Math.Sign(At(from)) != Math.Sign(At(to)))
                return RootBracket.Root(At, from, to, 1e-6);
        }

        return double.PositiveInfinity;
    }

    private static double KelvinAfter(PackParameters pack, double kelvin, double ambientKelvin, double ambientSlope,
        double factor, double time)
    {
        var rate = pack.HeatConductance * factor / pack.HeatCapacity;
        if (rate == 0)
            return kelvin;
        var lag = ambientSlope / rate;
        return ambientKelvin + (ambientSlope * time) - lag + ((kelvin - ambientKelvin + lag) * Math.Exp(-rate * time));
    }
}
