using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace RigScenarios.Batteries.Batch;

/// <summary>Runs cases, as many side by side as there are lanes: where one has ended, the next takes its place.</summary>
/// <typeparam name="T">The lanes.</typeparam>
/// <typeparam name="TWells">One well or two.</typeparam>
internal sealed unsafe class LaneRunner<T, TWells> : IDisposable where T : unmanaged, ILanes<T> where TWells : IWells
{
    private readonly LaneCase[] inLane = new LaneCase[T.Count];
    private LaneBlock<T>* memory;
    private LaneHinge<T>[] hinges = [];

    /// <summary>Takes the memory of the lanes.</summary>
    public LaneRunner()
    {
        memory = (LaneBlock<T>*)NativeMemory.AlignedAlloc((nuint)sizeof(LaneBlock<T>), 64);
        *memory = default;
    }

    /// <summary>Gives the memory back.</summary>
    public void Dispose()
    {
        NativeMemory.AlignedFree(memory);
        memory = null;
    }

    /// <summary>Runs cases to their ends.</summary>
    /// <param name="cases">The cases, in their places.</param>
    /// <param name="which">The places of those to be run.</param>
    /// <param name="ends">Where the ends go, to the same places.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Run(ReadOnlySpan<BatchCase> cases, ReadOnlySpan<int> which, Span<BatchCaseEnd> ends)
    {
        ref var block = ref *memory;
        hinges = new LaneHinge<T>[HingesIn(cases, which)];
        var next = 0;
        var running = 0u;
        for (var lane = 0; lane < T.Count; lane++)
        {
            // A lane without a case of its own goes along with the first one.
            var place = lane < which.Length ? lane : 0;
            Fill(ref block, lane, which[place], cases);
            if (lane >= which.Length)
                continue;
            running |= 1u << lane;
            next++;
        }

        while (running != 0)
        {
            LaneStep<T, TWells>.Begin(ref block, hinges);
            var atOnce = LaneJudge<T, TWells>.AtOnce(ref block) & running;
            if (atOnce != 0)
            {
                for (var left = atOnce; left != 0; left &= left - 1)
                {
                    var lane = BitOperations.TrailingZeroCount(left);
                    LaneEnd<T, TWells>.AtOnce(ref block, lane, inLane[lane], ref ends[inLane[lane].Place]);
                    Replace(ref block, lane, cases, which, ref next, ref running);
                }

                continue;
            }

            LaneJudge<T, TWells>.SetLengths(ref block);
            LaneStep<T, TWells>.Take(ref block, hinges);
            LaneJudge<T, TWells>.Judge(ref block);
            for (var left = T.Bits(block.Ended) & running; left != 0; left &= left - 1)
            {
                var lane = BitOperations.TrailingZeroCount(left);
                LaneEnd<T, TWells>.Within(ref block, lane, inLane[lane], ref ends[inLane[lane].Place]);
            }

            // What has ended is not taken: the new case of that lane has its own state by then.
            var arrived = Accept(ref block) & running;
            for (var left = T.Bits(block.Ended) & running; left != 0; left &= left - 1)
                Replace(ref block, BitOperations.TrailingZeroCount(left), cases, which, ref next, ref running);
            for (; arrived != 0; arrived &= arrived - 1)
            {
                var lane = BitOperations.TrailingZeroCount(arrived);
                ref var one = ref inLane[lane];
                if (one.Target == one.Limit)
                {
                    LaneEnd<T, TWells>.TimeOver(ref block, lane, one, ref ends[one.Place]);
                    Replace(ref block, lane, cases, which, ref next, ref running);
                }
                else
                {
                    one.Advance();
                    SetSegment(ref block, lane, ref one);
                }
            }
        }
    }

    // Takes the steps that are accepted; a bit for each lane that is at its target.
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    private static uint Accept(ref LaneBlock<T> block)
    {
        ref var demand = ref block.Demand;
        ref var state = ref block.State;
        ref readonly var end = ref block.End;
        var taken = block.Accepted;
        var arrived = taken & T.UpTo(demand.Target - demand.Time, demand.Length);
        state.Charge = T.Choose(taken, end.Charge, state.Charge);
        state.Voltage1 = T.Choose(taken, end.Voltage1, state.Voltage1);
        state.Voltage2 = T.Choose(taken, end.Voltage2, state.Voltage2);
        state.Kelvin = T.Choose(taken, end.Kelvin, state.Kelvin);
        if (TWells.HasFar)
            state.Lag = T.Choose(taken, end.Lag, state.Lag);
        block.Delivered = T.Choose(taken, block.Delivered + DeliveredIn(block), block.Delivered);
        block.LowestKelvin = T.Choose(taken, T.Lower(block.LowestKelvin, end.Kelvin), block.LowestKelvin);
        demand.Time = T.Choose(arrived, demand.Target, T.Choose(taken, demand.Time + demand.Length, demand.Time));
        demand.Fresh = T.Choose(taken, T.Of(0), demand.Fresh);
        return T.Bits(arrived);
    }

    /// <summary>Energy through the terminals in the step, J: Simpson's rule.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T DeliveredIn(in LaneBlock<T> block)
    {
        var middle = block.Middle.Voltage * block.Middle.Current * T.Of(4);
        var ends = T.Sum(block.First.Voltage, block.First.Current, block.Last.Voltage * block.Last.Current);
        return (middle + ends) * block.Demand.Length * T.Of(1.0 / 6);
    }

    private static int HingesIn(ReadOnlySpan<BatchCase> cases, ReadOnlySpan<int> which)
    {
        var most = 0;
        foreach (var place in which)
            most = Math.Max(most, cases[place].Curves.Hinges.Length);
        return most;
    }

    private void Replace(ref LaneBlock<T> block, int lane, ReadOnlySpan<BatchCase> cases, ReadOnlySpan<int> which, ref int next,
        ref uint running)
    {
        if (next < which.Length)
            Fill(ref block, lane, which[next++], cases);
        else
            running &= ~(1u << lane);
    }

    private void Fill(ref LaneBlock<T> block, int lane, int place, ReadOnlySpan<BatchCase> cases)
    {
        ref readonly var one = ref cases[place];
        LaneFill<T, TWells>.Pack(ref block.Pack, lane, one);
        LaneFill<T, TWells>.Hinges(hinges, lane, one.Curves);
        LaneFill<T, TWells>.Start(ref block, lane, one);
        inLane[lane] = new LaneCase(place, one);
        SetSegment(ref block, lane, ref inLane[lane]);
        Lane.Set(ref block.Demand.Time, lane, inLane[lane].Start);
        Lane.Set(ref block.Demand.Start, lane, inLane[lane].Start);
        Lane.Set(ref block.Demand.Fresh, lane, Lane.Holds);
        Lane.Set(ref block.Demand.Next, lane, double.PositiveInfinity);
        Lane.Set(ref block.Accepted, lane, Lane.Holds);
    }

    private static void SetSegment(ref LaneBlock<T> block, int lane, ref LaneCase one)
    {
        ref var demand = ref block.Demand;
        var (power, current, conductance) = one.Draw;
        var same = Lane.Get(demand.Power, lane) == power && Lane.Get(demand.Current, lane) == current
            && Lane.Get(demand.Conductance, lane) == conductance;
        if (one.EndVoltage is { } volts)
        {
            same &= Lane.Get(block.Pack.CutoffVoltage, lane) == volts;
            Lane.Set(ref block.Pack.CutoffVoltage, lane, volts);
        }

        Lane.Set(ref demand.Power, lane, power);
        Lane.Set(ref demand.Current, lane, current);
        Lane.Set(ref demand.Conductance, lane, conductance);
        Lane.Set(ref demand.Target, lane, one.Target);
        Lane.Set(ref demand.Fresh, lane, same ? 0 : Lane.Holds);
    }
}
