using System.Runtime.CompilerServices;

namespace RigScenarios.Batteries.Batch;

/// <summary>
/// One step of cases side by side, each of its own length: what drives the states is a parabola through start, middle and end of
/// the step, apart from a quick part that decays with the first pair and is known beforehand; the answer of pairs, lag and
/// temperature to it is exact, however long the step is against their time constants.
/// </summary>
/// <remarks>Exponential integration: M. Hochbruck and A. Ostermann, "Exponential integrators", Acta Numerica 19 (2010) 209-286
/// (from memory).</remarks>
/// <typeparam name="T">The lanes.</typeparam>
/// <typeparam name="TWells">One well or two.</typeparam>
internal static class LaneStep<T, TWells> where T : unmanaged, ILanes<T> where TWells : IWells
{
    // Below this part of a time constant the answers are reckoned as series: differences would drown in rounding.
    private const double SmallPart = 1e-3;

    // A quick part of the current beyond this part of it is not reckoned with: near a power limit the response has no bound.
    private const double MostQuick = 0.25;

    // A correction of the voltage beyond this part of it is not reckoned with, for the same reason.
    private const double MostChange = 0.02;

    /// <summary>Solves the circuits at the start of the step.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Begin(ref LaneBlock<T> block, ReadOnlySpan<LaneHinge<T>> hinges) =>
        LaneCircuit<T, TWells>.Solve(block, hinges, block.State, T.Of(0), out block.First);

    /// <summary>Takes the step of the length that is set, from the state and the circuits at its start to a corrected state at
    /// its end.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Take(ref LaneBlock<T> block, ReadOnlySpan<LaneHinge<T>> hinges)
    {
        Weigh(ref block);
        var decay = T.Of(0);
        if (TWells.HasFar)
        {
            decay = block.Exchange.Rate;
            block.First.LagDriver = T.Sum(block.First.ChargeDriver, block.Pack.LagPerCharge,
                (decay - block.First.ExchangeRate) * block.State.Lag);
        }

        ToMiddle(ref block);
        LaneCircuit<T, TWells>.Solve(block, hinges, block.Trial, decay, out block.Middle);
        ToEnd(ref block);
        LaneCircuit<T, TWells>.Solve(block, hinges, block.Trial, decay, out block.Last);
        Correct(ref block);
    }

    // How each branch answers in a step of this length.
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static void Weigh(ref LaneBlock<T> block)
    {
        ref readonly var pack = ref block.Pack;
        var length = block.Demand.Length;
        var part = length * pack.Rate1;
        Branch(part, part, out block.Pair1);
        var (quickHalf, quick) = (block.Pair1.LeftHalf, block.Pair1.Left);
        block.Pair1.QuickHalf = part * T.Of(0.5) * quickHalf;
        block.Pair1.Quick = part * quick;

        part = length * pack.Rate2;
        Branch(part, part, out block.Pair2);
        block.Pair2.QuickHalf = pack.QuickOn2 * (quickHalf - block.Pair2.LeftHalf);
        block.Pair2.Quick = pack.QuickOn2 * (quick - block.Pair2.Left);

        Branch(length * pack.CoolingRate, length * pack.KelvinPerJoule, out block.Heat);
        block.Heat.QuickHalf = pack.QuickOnHeat * (quickHalf - block.Heat.LeftHalf);
        block.Heat.Quick = pack.QuickOnHeat * (quick - block.Heat.Left);
        if (!TWells.HasFar)
            return;

        // Any rate will do, the driver makes up for it: not that of the first pair, where the answer would be nothing by nothing.
        var rate = block.First.ExchangeRate;
        rate = T.Choose(T.Below(T.Size(rate - pack.Rate1), pack.Rate1 * T.Of(1e-3)), pack.Rate1 * T.Of(1.001), rate);
        Branch(length * rate, length, out block.Exchange);
        block.Exchange.Rate = rate;
        var between = T.Of(1) / (rate - pack.Rate1);
        block.Exchange.QuickHalf = between * (quickHalf - block.Exchange.LeftHalf);
        block.Exchange.Quick = between * (quick - block.Exchange.Left);
    }

    // The answers to 1, s and s² over a step of a part of the time constant, times a gain.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Branch(T part, T gain, out LaneBranch<T> branch)
    {
        Unsafe.SkipInit(out branch);
        var one = T.Of(1);
        var half = T.Exponential(part * T.Of(-0.5));
        var left = half * half;
        var inverse = gain / part;
        var inversePart = one / part;
        branch.LeftHalf = half;
        branch.Left = left;
        branch.SteadyHalf = (one - half) * inverse;
        branch.Steady = (one - left) * inverse;
        var linear = (one - ((one - left) * inversePart)) * inversePart;
        branch.Linear = linear * gain;
        branch.Square = (one - (linear * T.Of(2))) * inverse;
        if (T.Bits(T.Below(part, T.Of(SmallPart))) != 0)
            SmallBranch(part, gain, ref branch);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void SmallBranch(T part, T gain, ref LaneBranch<T> branch)
    {
        var small = T.Below(part, T.Of(SmallPart));
        branch.SteadyHalf = T.Choose(small, Series(1.0 / 2, -1.0 / 8, 1.0 / 48, -1.0 / 384), branch.SteadyHalf);
        branch.Steady = T.Choose(small, Series(1, -1.0 / 2, 1.0 / 6, -1.0 / 24), branch.Steady);
        branch.Linear = T.Choose(small, Series(1.0 / 2, -1.0 / 6, 1.0 / 24, -1.0 / 120), branch.Linear);
        branch.Square = T.Choose(small, Series(1.0 / 3, -1.0 / 12, 1.0 / 60, -1.0 / 360), branch.Square);

        T Series(double c0, double c1, double c2, double c3) =>
            gain * T.Sum(part, T.Sum(part, T.Sum(part, T.Of(c3), T.Of(c2)), T.Of(c1)), T.Of(c0));
    }

    // The drivers stay what they are at the start, but for the quick part.
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static void ToMiddle(ref LaneBlock<T> block)
    {
        ref readonly var pack = ref block.Pack;
        ref readonly var first = ref block.First;
        ref readonly var state = ref block.State;
        ref var quick = ref block.Quick;
        ref var trial = ref block.Trial;

        // How far v1 is from where it settles, and what that makes of the current.
        var unsettled = state.Voltage1 - (pack.Resistance1 * first.PairDriver);
        var most = first.Current * T.Of(MostQuick);
        var current = T.Of(0) - (first.Response * pack.Groups * unsettled);
        current = T.Choose(T.Below(T.Size(current), most), current, T.Of(0));
        quick.Current = current;
        quick.Pair = current * first.Factor;
        quick.Charge = current * first.UnitRate;
        quick.Heat = first.Current * pack.Groups * unsettled;

        var steadyPair = first.PairDriver - quick.Pair;
        trial.Charge = state.Charge - T.Sum((first.ChargeDriver - quick.Charge) * T.Of(0.5), block.Demand.Length,
            quick.Charge * block.Pair1.SteadyHalf * pack.TimeConstant1);
        trial.Voltage1 = T.Sum(block.Pair1.LeftHalf, state.Voltage1, pack.Resistance1
            * T.Sum(block.Pair1.SteadyHalf, steadyPair, block.Pair1.QuickHalf * quick.Pair));
        trial.Voltage2 = T.Sum(block.Pair2.LeftHalf, state.Voltage2, pack.Resistance2
            * T.Sum(block.Pair2.SteadyHalf, steadyPair, block.Pair2.QuickHalf * quick.Pair));
        trial.Kelvin = pack.AmbientKelvin + T.Sum(block.Heat.LeftHalf, state.Kelvin - pack.AmbientKelvin,
            T.Sum(block.Heat.SteadyHalf, first.Heat - quick.Heat, block.Heat.QuickHalf * quick.Heat));
        if (!TWells.HasFar)
            return;
        quick.Lag = quick.Charge * pack.LagPerCharge;
        trial.Lag = T.Sum(block.Exchange.LeftHalf, state.Lag,
            T.Sum(block.Exchange.SteadyHalf, first.LagDriver - quick.Lag, block.Exchange.QuickHalf * quick.Lag));
    }

    // The drivers go on along the lines through start and middle.
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static void ToEnd(ref LaneBlock<T> block)
    {
        ref readonly var pack = ref block.Pack;
        ref readonly var first = ref block.First;
        ref readonly var middle = ref block.Middle;
        ref readonly var state = ref block.State;
        ref readonly var quick = ref block.Quick;
        ref var trial = ref block.Trial;
        var left = block.Pair1.LeftHalf;
        var two = T.Of(2);
        block.MiddleKelvin = trial.Kelvin;
        block.MiddleNear = TWells.HasFar ? trial.Charge - trial.Lag : trial.Charge;

        // Over a whole step a line through start and middle gives what stands in the middle.
        var middleCharge = middle.ChargeDriver - (left * quick.Charge);
        trial.Charge = state.Charge - T.Sum(middleCharge, block.Demand.Length,
            quick.Charge * block.Pair1.Steady * pack.TimeConstant1);
        var steadyPair = first.PairDriver - quick.Pair;
        var risePair = (middle.PairDriver - (left * quick.Pair) - steadyPair) * two;
        trial.Voltage1 = Ahead(block.Pair1, state.Voltage1, pack.Resistance1, steadyPair, risePair, quick.Pair);
        trial.Voltage2 = Ahead(block.Pair2, state.Voltage2, pack.Resistance2, steadyPair, risePair, quick.Pair);
        var steadyHeat = first.Heat - quick.Heat;
        trial.Kelvin = pack.AmbientKelvin + Ahead(block.Heat, state.Kelvin - pack.AmbientKelvin, T.Of(1), steadyHeat,
            (middle.Heat - (left * quick.Heat) - steadyHeat) * two, quick.Heat);
        if (!TWells.HasFar)
            return;
        var steadyLag = first.LagDriver - quick.Lag;
        trial.Lag = Ahead(block.Exchange, state.Lag, T.Of(1), steadyLag,
            (middle.LagDriver - (left * quick.Lag) - steadyLag) * two, quick.Lag);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Ahead(in LaneBranch<T> branch, T before, T gain, T steady, T rise, T quick) =>
        T.Sum(branch.Left, before, gain * T.Sum(branch.Steady, steady, T.Sum(branch.Linear, rise, branch.Quick * quick)));

    // The drivers are the parabolas through start, middle and end: what that changes, and what it makes of the voltage.
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static void Correct(ref LaneBlock<T> block)
    {
        ref readonly var pack = ref block.Pack;
        ref readonly var first = ref block.First;
        ref readonly var middle = ref block.Middle;
        ref readonly var last = ref block.Last;
        ref readonly var trial = ref block.Trial;
        ref readonly var quick = ref block.Quick;
        ref var end = ref block.End;
        var (half, left) = (block.Pair1.LeftHalf, block.Pair1.Left);
        var quickBend = (T.Of(1) - (half * T.Of(2))) + left;
        var bendCharge = Bend(first.ChargeDriver, middle.ChargeDriver, last.ChargeDriver) - (quickBend * quick.Charge);
        var bendPair = Bend(first.PairDriver, middle.PairDriver, last.PairDriver) - (quickBend * quick.Pair);
        var bendHeat = Bend(first.Heat, middle.Heat, last.Heat) - (quickBend * quick.Heat);
        var charge = bendCharge * block.Demand.Length * T.Of(-1.0 / 6);
        var voltage1 = bendPair * pack.Resistance1 * Curved(block.Pair1);
        var voltage2 = bendPair * pack.Resistance2 * Curved(block.Pair2);
        end.Charge = trial.Charge + charge;
        end.Voltage1 = trial.Voltage1 + voltage1;
        end.Voltage2 = trial.Voltage2 + voltage2;
        block.KelvinChange = bendHeat * Curved(block.Heat);
        end.Kelvin = trial.Kelvin + block.KelvinChange;
        var near = charge;
        if (TWells.HasFar)
        {
            var bendLag = Bend(first.LagDriver, middle.LagDriver, last.LagDriver) - (quickBend * quick.Lag);
            var lag = bendLag * Curved(block.Exchange);
            end.Lag = trial.Lag + lag;
            near -= lag;
        }
        else
        {
            end.Lag = T.Of(0);
        }

        block.NearChange = near;
        var source = pack.Groups * ((last.Slope * near) - voltage1 - voltage2);

        // Past the power limit, and right before it, where the slope has no bound, the line along it says nothing.
        var change = source * last.Voltage / last.Root;
        block.VoltageChange = T.Choose(T.Below(T.Size(change), last.Voltage * T.Of(MostChange)), change, T.Of(0));
        block.CurrentBend = T.Size(Bend(first.Current, middle.Current, last.Current) - (quickBend * quick.Current));
    }

    // What a bend adds to the answer to the line through start and middle.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Curved(in LaneBranch<T> branch) => (branch.Square * T.Of(2)) - branch.Linear;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Bend(T first, T middle, T last) => (first - middle) + (last - middle);
}
