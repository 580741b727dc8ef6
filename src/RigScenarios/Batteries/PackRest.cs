using MathNet.Numerics.Integration;
using RigScenarios.Numerics;
using UnitsNet;

namespace RigScenarios.Batteries;

/// <summary>
/// A pack at rest: the circuit at no current. The pairs decay, the two wells even out, the temperature follows that of the place,
/// a little charge goes by itself. All of that in closed form, as long as the heat of mixing of the wells warms nothing.
/// </summary>
internal static class PackRest
{
    /// <summary>Self-discharge at 20 °C, part of the capacity in a second: 3 % in 30 days, doubling every 10 K. Rough:
    /// encyclopaedias give 2 to 3 % a month.</summary>
    public const double SelfDischargePerSecond = 0.03 / (30 * 86400.0);

    private const double SelfDischargeKelvin = 293.15;

    // A heat of mixing that warms the pack by less than this, K, is left out.
    private const double LeastWarming = 1e-3;

    // So many exchange times are run before it is asked again whether the heat of mixing still matters: it falls with the square
    // of the lag, to a fiftieth in this time.
    private const double MixingTimes = 2;

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
        var mixes = state.Lag != 0 && WarmingByMixing(pack, state) > LeastWarming;
        var mixing = mixes ? MixingTimes / pack.ExchangeRateAt(state.Kelvin) : seconds;
        if (mixing < seconds)
        {
            // Mixing is over long before a night is.
            var mixed = After(pack, state, ambientKelvin, ambientSlope, factor, mixing);
            return After(pack, mixed, ambientKelvin + (ambientSlope * mixing), ambientSlope, factor, seconds - mixing);
        }

        var start = state.Kelvin;
        double At(double time) => KelvinAfter(pack, start, ambientKelvin, ambientSlope, factor, time);
        var lost = GaussLegendreRule.Integrate(time => Math.Pow(2, (At(time) - SelfDischargeKelvin) / 10), 0, seconds,
            20) * SelfDischargePerSecond;
        var charge = Math.Max(0, state.Charge - lost);
        if (mixes)
        {
            var mixed = Mixed(pack.WithConductance(factor), state, ambientKelvin, ambientSlope, seconds);
            return mixed with { Charge = charge, Lag = Within(pack, charge, mixed.Lag) };
        }

        return new PackState(
            charge,
            state.Voltage1 * Math.Exp(-seconds / pack.TimeConstant1),
            state.Voltage2 * Math.Exp(-seconds / pack.TimeConstant2),
            At(seconds),
            state.Lag == 0 ? 0 : Within(pack, charge, state.Lag * Math.Exp(-Exchanged(pack, At, factor, seconds))));
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

    // The integral of 1/tau(T) over the rest: while the temperature settles, and afterwards.
    private static double Exchanged(PackParameters pack, Func<double, double> kelvinAt, double factor, double seconds)
    {
        var settled = Math.Min(seconds, 5 * pack.HeatCapacity / Math.Max(pack.HeatConductance * factor, 1e-9));
        double Between(double from, double to) => to > from
            ? GaussLegendreRule.Integrate(time => pack.ExchangeRateAt(kelvinAt(time)), from, to, 20) : 0;
        return Between(0, settled) + Between(settled, seconds);
    }

    // What evening out the wells would warm the pack by, K, if no heat left it; a little more than that.
    private static double WarmingByMixing(PackParameters pack, in PackState state)
    {
        var far = state.Charge + (state.Lag * pack.FarPerLag);
        return pack.Groups * pack.ChargePerUnit * pack.NearShare * state.Lag
            * (pack.OpenCircuit.At(far) - pack.OpenCircuit.At(state.Near)) / pack.HeatCapacity;
    }

    // A run in which nothing is drawn.
    private static PackState Mixed(PackParameters pack, in PackState state, double ambientKelvin, double ambientSlope,
        double seconds)
    {
        var end = new DischargeRun(
            pack,
            Temperature.FromKelvins(ambientKelvin),
            DischargeStart.Of(state),
            new DemandCursor([default], [seconds], 0),
            new DischargeOptions { TimeLimit = Duration.FromSeconds(seconds), SeriesPoints = 0 },
            observer: null,
            ambientSlope,
            ChargeWindow.Rest).Run(CancellationToken.None).FinalState;
        return end.State(end.Temperature!.Value.Kelvins);
    }

    // Self-discharge takes from both wells alike; neither falls below empty.
    private static double Within(PackParameters pack, double charge, double lag) =>
        Math.Clamp(lag, pack.FarPerLag > 0 ? -charge / pack.FarPerLag : -1, charge);

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
