using System.Runtime.CompilerServices;

namespace RigScenarios.Batteries.Batch;

/// <summary>What becomes of a step: taken or tried again shorter, ended by a limit or not, and how long the next may
/// be.</summary>
/// <typeparam name="T">The lanes.</typeparam>
/// <typeparam name="TWells">One well or two.</typeparam>
internal static class LaneJudge<T, TWells> where T : unmanaged, ILanes<T> where TWells : IWells
{
    // How far the current at the end of a step may lie from the line through start and middle, over the current.
    private const double CurrentTolerance = 3e-3;

    // What the correction may make of the voltage: V of a group, and a part of what is left to the cut-off.
    private const double VoltageTolerance = 2e-4;
    private const double GapTolerance = 2e-3;

    // What it may make of the temperature where its limit is near, K, and of the charge of the near well.
    private const double GapKelvin = 1e-3;
    private const double LeastKelvin = 5e-4;
    private const double ChargeTolerance = 1e-4;

    // An end is found when it is known to this part of the time, and to this, s. A step of half of that is taken whatever its
    // error.
    private const double TimeTolerance = 2e-5;
    private const double LeastTime = 2e-3;

    // A parabola through three gaps goes below the least of them by less than this part of their range.
    private const double Overshoot = 0.15;

    /// <summary>The change of resistances and capacity that a limit is held against to say that it was only just
    /// missed.</summary>
    public const double Trifle = 2e-4;

    /// <summary>Sets the lengths of the steps.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void SetLengths(ref LaneBlock<T> block)
    {
        ref var demand = ref block.Demand;
        var remaining = demand.Target - demand.Time;
        var half = remaining * T.Of(0.5);
        var length = T.Choose(T.Below(half, demand.Next), half, demand.Next);
        length = T.Choose(T.Below(remaining * T.Of(0.9), demand.Next), remaining, length);

        // One that is tried again is as short as was said.
        demand.Length = T.Choose(block.Accepted, length, T.Lower(demand.Next, remaining));
    }

    /// <summary>Where a limit holds right after a step of the demand.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static uint AtOnce(ref LaneBlock<T> block)
    {
        ref readonly var pack = ref block.Pack;
        ref readonly var first = ref block.First;
        var none = T.Of(0);
        var gap = first.Voltage - pack.CutoffVoltage;
        var near = block.State.Charge - block.State.Lag;
        var limit = (T.Below(none, block.Demand.Power) & T.Below(first.Margin, none)) | T.UpTo(gap, none)
            | T.UpTo(near, none) | T.UpTo(pack.MaximumCurrent, first.Current)
            | T.UpTo(pack.MaximumKelvin, block.State.Kelvin);
        var trifles = Trifles(block, first, block.State.Charge);
        var misses = (T.Below(gap, trifles) | T.Below(pack.MaximumCurrent - first.Current, trifles * T.Size(first.Response)))
            & block.Demand.Fresh;
        block.Grazed = T.Choose(misses, T.Lower(block.Grazed, block.Demand.Time), block.Grazed);
        return T.Bits(limit & block.Demand.Fresh);
    }

    /// <summary>Judges a step.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static void Judge(ref LaneBlock<T> block)
    {
        ref readonly var pack = ref block.Pack;
        ref readonly var first = ref block.First;
        ref readonly var middle = ref block.Middle;
        ref readonly var last = ref block.Last;
        ref var demand = ref block.Demand;
        var none = T.Of(0);
        var one = T.Of(1);
        var voltages = new LaneGaps<T>(first.Voltage - pack.CutoffVoltage, middle.Voltage - pack.CutoffVoltage,
            last.Voltage + block.VoltageChange - pack.CutoffVoltage);
        var currents = new LaneGaps<T>(pack.MaximumCurrent - first.Current, pack.MaximumCurrent - middle.Current,
            pack.MaximumCurrent - last.Current);
        var kelvins = new LaneGaps<T>(pack.MaximumKelvin - block.State.Kelvin, pack.MaximumKelvin - block.MiddleKelvin,
            pack.MaximumKelvin - block.End.Kelvin);
        var nears = TWells.HasFar
            ? new LaneGaps<T>(block.State.Charge - block.State.Lag, block.MiddleNear, block.End.Charge - block.End.Lag)
            : new LaneGaps<T>(block.State.Charge, block.MiddleNear, block.End.Charge);
        var unpowered = T.UpTo(demand.Power, none);
        var margins = new LaneGaps<T>(T.Choose(unpowered, one, first.Margin), T.Choose(unpowered, one, middle.Margin),
            T.Choose(unpowered, one, last.Margin));

        var allowed = T.Sum(T.Higher(voltages.Last, none), T.Of(GapTolerance), pack.Groups * T.Of(VoltageTolerance));
        var error = T.Higher(block.CurrentBend / T.Sum(first.Current, T.Of(CurrentTolerance), T.Of(1e-12)),
            T.Size(block.VoltageChange) / allowed);
        var kelvin = T.Lower(T.Of(TWells.KelvinTolerance),
            T.Sum(T.Higher(kelvins.Last, none), T.Of(GapKelvin), T.Of(LeastKelvin)));
        error = T.Higher(error, T.Higher(T.Size(block.KelvinChange) / kelvin,
            T.Size(block.NearChange) * T.Of(1 / ChargeTolerance)));
        block.Error = error;
        var close = voltages.Close(T.Of(Overshoot)) | currents.Close(T.Of(Overshoot)) | kelvins.Close(T.Of(Overshoot))
            | nears.Close(T.Of(Overshoot)) | margins.Close(T.Of(Overshoot))
            | T.Below(voltages.Least, pack.Groups * T.Of(2e-3)) | T.Below(currents.Least, first.Current * T.Of(2e-3));
        var length = demand.Length;
        var tolerance = T.Sum(demand.Time + length - demand.Start, T.Of(TimeTolerance), T.Of(LeastTime));
        var good = T.UpTo(error, one) | T.UpTo(length, tolerance * T.Of(0.5));
        var growth = T.Of(0.9) / T.Root(T.Higher(block.Error, T.Of(0.01)));
        demand.Next = length * T.Higher(growth, T.Of(0.2));
        block.Accepted = good;
        block.Ended = none;
        if (T.Bits(close) == 0)
            return;

        block.PowerRoot = margins.FirstRoot();

        // Before a power limit the voltage falls ever faster, but not past that of the limit.
        var halts = T.Below(block.PowerRoot, T.Of(2)) & T.Below(none, voltages.Least);
        block.VoltageRoot = T.Choose(halts, T.Of(double.PositiveInfinity), voltages.FirstRoot());
        block.EmptyRoot = nears.FirstRoot();
        block.CurrentRoot = currents.FirstRoot();
        block.KelvinRoot = kelvins.FirstRoot();
        var soonest = T.Lower(T.Lower(T.Lower(block.PowerRoot, block.VoltageRoot), T.Lower(block.EmptyRoot, block.CurrentRoot)),
            block.KelvinRoot);
        block.Soonest = soonest;
        var crosses = T.UpTo((soonest - one) * length, tolerance);
        var known = T.UpTo(length, tolerance) | T.UpTo((one - soonest) * length, tolerance);
        block.Ended = crosses & known & good;
        var shorter = T.Lower(demand.Next, length * T.Lower(T.Higher(soonest, T.Of(0.02)), T.Of(0.98)));
        demand.Next = T.Choose(crosses, shorter, demand.Next);
        var taken = T.Choose(crosses, none, good);
        block.Accepted = taken;
        var trifles = Trifles(block, last, block.End.Charge);
        var misses = T.Below(voltages.Least, trifles) | T.Below(currents.Least, trifles * T.Size(last.Response));
        misses = misses & taken & close;
        block.Grazed = T.Choose(misses, T.Lower(block.Grazed, demand.Time + length), block.Grazed);
    }

    /// <summary>What a trifle more of the resistances and less of the capacity would make of the voltage, V.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Trifles(in LaneBlock<T> block, in LaneNode<T> node, T charge)
    {
        var groups = block.Pack.Groups;
        var lost = (groups * node.OpenCircuit) - node.Voltage;
        return T.Of(Trifle) * T.Sum(groups * node.Slope, block.Pack.StartCharge - charge, lost);
    }
}
