using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace RigScenarios.Batteries.Batch;

/// <summary>Eight cases side by side.</summary>
internal readonly struct EightLanes(Vector512<double> all) : ILanes<EightLanes>
{
    private readonly Vector512<double> all = all;

    public static int Count => 8;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator +(EightLanes left, EightLanes right) => new(left.all + right.all);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator -(EightLanes left, EightLanes right) => new(left.all - right.all);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator *(EightLanes left, EightLanes right) => new(left.all * right.all);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator /(EightLanes left, EightLanes right) => new(left.all / right.all);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator &(EightLanes left, EightLanes right) => new(left.all & right.all);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator |(EightLanes left, EightLanes right) => new(left.all | right.all);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Of(double value) => new(Vector512.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Sum(EightLanes factor, EightLanes other, EightLanes added) =>
        new(Vector512.FusedMultiplyAdd(factor.all, other.all, added.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Root(EightLanes value) => new(Vector512.Sqrt(value.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Exponential(EightLanes value) => new(Vector512.Exp(value.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Size(EightLanes value) => new(Vector512.Abs(value.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Lower(EightLanes left, EightLanes right) => new(Vector512.MinNative(left.all, right.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Higher(EightLanes left, EightLanes right) => new(Vector512.MaxNative(left.all, right.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Below(EightLanes left, EightLanes right) => new(Vector512.LessThan(left.all, right.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes UpTo(EightLanes left, EightLanes right) => new(Vector512.LessThanOrEqual(left.all, right.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Choose(EightLanes condition, EightLanes yes, EightLanes no) =>
        new(Vector512.ConditionalSelect(condition.all, yes.all, no.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static uint Bits(EightLanes condition) => (uint)Vector512.ExtractMostSignificantBits(condition.all);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static unsafe void Look(EightLanes tables, EightLanes place, out EightLanes value, out EightLanes rise,
        out EightLanes cell)
    {
        var number = Vector512.ConvertToInt64Native(place.all);
        cell = new(Vector512.ConvertToDouble(number));
        var places = (number << 3) + tables.all.AsInt64();
        Vector256<long> low, high;
        if (Avx2.IsSupported)
        {
            low = Avx2.GatherVector256((long*)null, places.GetLower(), 1);
            high = Avx2.GatherVector256((long*)null, places.GetUpper(), 1);
        }
        else
        {
            low = Vector256.Create(*(long*)places[0], *(long*)places[1], *(long*)places[2], *(long*)places[3]);
            high = Vector256.Create(*(long*)places[4], *(long*)places[5], *(long*)places[6], *(long*)places[7]);
        }

        // The halves of each cell are two numbers of single precision.
        var values = Vector256.Narrow(low, high).AsSingle();
        var rises = Vector256.Narrow(low >> 32, high >> 32).AsSingle();
        value = new(Vector512.Create(Vector256.WidenLower(values), Vector256.WidenUpper(values)));
        rise = new(Vector512.Create(Vector256.WidenLower(rises), Vector256.WidenUpper(rises)));
    }
}
