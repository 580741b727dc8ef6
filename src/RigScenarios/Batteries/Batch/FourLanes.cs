using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace RigScenarios.Batteries.Batch;

/// <summary>Four cases side by side.</summary>
internal readonly struct FourLanes(Vector256<double> all) : ILanes<FourLanes>
{
    private readonly Vector256<double> all = all;

    public static int Count => 4;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator +(FourLanes left, FourLanes right) => new(left.all + right.all);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator -(FourLanes left, FourLanes right) => new(left.all - right.all);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator *(FourLanes left, FourLanes right) => new(left.all * right.all);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator /(FourLanes left, FourLanes right) => new(left.all / right.all);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator &(FourLanes left, FourLanes right) => new(left.all & right.all);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator |(FourLanes left, FourLanes right) => new(left.all | right.all);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Of(double value) => new(Vector256.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Sum(FourLanes factor, FourLanes other, FourLanes added) =>
        new(Vector256.FusedMultiplyAdd(factor.all, other.all, added.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Root(FourLanes value) => new(Vector256.Sqrt(value.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Exponential(FourLanes value) => new(Vector256.Exp(value.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Size(FourLanes value) => new(Vector256.Abs(value.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Lower(FourLanes left, FourLanes right) => new(Vector256.MinNative(left.all, right.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Higher(FourLanes left, FourLanes right) => new(Vector256.MaxNative(left.all, right.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Below(FourLanes left, FourLanes right) => new(Vector256.LessThan(left.all, right.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes UpTo(FourLanes left, FourLanes right) => new(Vector256.LessThanOrEqual(left.all, right.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Choose(FourLanes condition, FourLanes yes, FourLanes no) =>
        new(Vector256.ConditionalSelect(condition.all, yes.all, no.all));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static uint Bits(FourLanes condition) => (uint)Vector256.ExtractMostSignificantBits(condition.all);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static unsafe void Look(FourLanes tables, FourLanes place, out FourLanes value, out FourLanes rise,
        out FourLanes cell)
    {
        // A whole number below 2^52 stands in the last bits of itself plus 2^52: a conversion that every processor is quick at.
        var whole = Vector256.Floor(place.all);
        cell = new(whole);
        var number = (whole + Vector256.Create(4503599627370496.0)).AsInt64() & Vector256.Create(0xFFFFFFFFFFFFFL);
        var places = (number << 3) + tables.all.AsInt64();
        var cells = Avx2.IsSupported ? Avx2.GatherVector256((long*)null, places, 1)
            : Vector256.Create(*(long*)places[0], *(long*)places[1], *(long*)places[2], *(long*)places[3]);

        // The halves of each cell are two numbers of single precision.
        value = new(Vector256.WidenLower(Vector256.Narrow(cells, cells).AsSingle()));
        rise = new(Vector256.WidenLower(Vector256.Narrow(cells >> 32, cells >> 32).AsSingle()));
    }
}
