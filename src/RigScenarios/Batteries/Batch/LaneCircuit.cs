using System.Runtime.CompilerServices;

namespace RigScenarios.Batteries.Batch;

/// <summary>The algebra of the discharge model at one moment, for cases side by side: from state and draw to voltage, current and
/// what drives the state.</summary>
/// <typeparam name="T">The lanes.</typeparam>
/// <typeparam name="TWells">One well or two.</typeparam>
internal static class LaneCircuit<T, TWells> where T : unmanaged, ILanes<T> where TWells : IWells
{
    // The least root of the power margin that is reckoned with, V: the current turns there with an infinite slope.
    private const double LeastRoot = 1e-6;

    // A voltage below this one, V, ends every run; it keeps P/V finite in a trial step.
    private const double LeastVoltage = 1e-3;

    /// <summary>Solves the circuits.</summary>
    /// <param name="block">Packs and demands.</param>
    /// <param name="hinges">Of their usable capacities.</param>
    /// <param name="state">The states.</param>
    /// <param name="decay">The rate of the exchange, 1/s, at the start of the step: the lag's driver is what goes beyond
    /// it.</param>
    /// <param name="node">What comes out.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static void Solve(in LaneBlock<T> block, ReadOnlySpan<LaneHinge<T>> hinges, in LaneState<T> state, in T decay,
        out LaneNode<T> node)
    {
        ref readonly var pack = ref block.Pack;
        ref readonly var demand = ref block.Demand;
        Unsafe.SkipInit(out node);
        var one = T.Of(1);
        var kelvin = state.Kelvin;
        var inverse = one / kelvin;
        var factor = T.Higher(pack.Floor, T.Exponential(T.Sum(pack.ActivationTemperature, inverse, pack.ActivationShift)));
        var near = TWells.HasFar ? state.Charge - state.Lag : state.Charge;
        var (openCircuit, rise) = OpenCircuit(pack, near);
        var pairs = state.Voltage1 + state.Voltage2;
        var resistance = T.Sum(factor, pack.GroupResistance0, pack.LeadResistance);

        // a = 1 + g·R, b = E - Ic·R; V = (b + sqrt(b² - 4·a·P·R))/(2a), the higher of the two solutions; without P it is b/a.
        var a = T.Sum(resistance, demand.Conductance, one);
        var b = ((openCircuit - pairs) * pack.Groups) - (resistance * demand.Current);
        var product = a * resistance * demand.Power;
        var margin = (b * T.Size(b)) - (product * T.Of(4));
        var root = T.Root(T.Higher(margin, T.Of(LeastRoot * LeastRoot)));
        var voltage = T.Higher((T.Higher(b, T.Of(0)) + root) / (a + a), T.Of(LeastVoltage));
        var powered = demand.Power / voltage;
        var conducted = demand.Conductance * voltage;
        var current = conducted + demand.Current + powered;

        var usable = pack.ColdestUsable;
        foreach (ref readonly var hinge in hinges)
            usable = T.Sum(T.Lower(T.Higher(kelvin - hinge.From, T.Of(0)), hinge.Width), hinge.Slope, usable);

        node.Voltage = voltage;
        node.Current = current;
        node.Margin = margin;
        node.Root = root;
        node.Response = (conducted - powered) / root;
        node.Resistance = resistance;
        node.Factor = factor;
        node.PairDriver = current * factor;
        var unitRate = pack.UnitsPerCharge / usable;
        node.UnitRate = unitRate;
        var drawn = current * unitRate;
        node.ChargeDriver = drawn;
        var heat = current * T.Sum(current, resistance, pairs * pack.Groups);
        node.OpenCircuit = openCircuit;
        node.Slope = rise * pack.TableCells;
        if (TWells.HasFar)
        {
            var rate = T.Exponential(pack.ExchangeLogarithm - (inverse * pack.ExchangeTemperature));
            node.ExchangeRate = rate;
            node.LagDriver = T.Sum(drawn, pack.LagPerCharge, (decay - rate) * state.Lag);

            // The heat of mixing: charge goes from the higher voltage to the lower, never the other way.
            var (far, _) = OpenCircuit(pack, T.Sum(state.Lag, pack.FarPerLag, state.Charge));
            heat = T.Sum(usable * state.Lag * rate, (far - openCircuit) * pack.MixingCharge, heat);
        }

        node.Heat = heat;
    }

    // Outside 0…1 the last line goes on.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (T Value, T Rise) OpenCircuit(in LanePack<T> pack, T charge)
    {
        var place = charge * pack.TableCells;
        T.Look(pack.Tables, T.Lower(T.Higher(place, T.Of(0)), pack.LastCell), out var value, out var rise, out var cell);
        return (T.Sum(place - cell, rise, value), rise);
    }
}
