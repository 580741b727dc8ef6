using System.Runtime.CompilerServices;

namespace RigScenarios.Batteries.Batch;

/// <summary>One case alone, in scalar numbers: for machines without vectors, and to hold the others against.</summary>
internal readonly struct OneLane(double only) : ILanes<OneLane>
{
    private readonly double only = only;

    public static int Count => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane operator +(OneLane left, OneLane right) => new(left.only + right.only);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane operator -(OneLane left, OneLane right) => new(left.only - right.only);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane operator *(OneLane left, OneLane right) => new(left.only * right.only);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane operator /(OneLane left, OneLane right) => new(left.only / right.only);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane operator &(OneLane left, OneLane right) => Bitwise(Raw(left) & Raw(right));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane operator |(OneLane left, OneLane right) => Bitwise(Raw(left) | Raw(right));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane Of(double value) => new(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane Sum(OneLane factor, OneLane other, OneLane added) => new((factor.only * other.only) + added.only);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane Root(OneLane value) => new(Math.Sqrt(value.only));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane Exponential(OneLane value) => new(Math.Exp(value.only));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane Size(OneLane value) => new(Math.Abs(value.only));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane Lower(OneLane left, OneLane right) => left.only < right.only ? left : right;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane Higher(OneLane left, OneLane right) => left.only > right.only ? left : right;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane Below(OneLane left, OneLane right) => Bitwise(left.only < right.only ? -1L : 0L);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane UpTo(OneLane left, OneLane right) => Bitwise(left.only <= right.only ? -1L : 0L);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static OneLane Choose(OneLane condition, OneLane yes, OneLane no) => Raw(condition) != 0 ? yes : no;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static uint Bits(OneLane condition) => Raw(condition) != 0 ? 1u : 0u;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static unsafe void Look(OneLane tables, OneLane place, out OneLane value, out OneLane rise, out OneLane cell)
    {
        var number = (long)place.only;
        cell = new(number);
        var pair = (float*)(Raw(tables) + (number << 3));
        value = new(pair[0]);
        rise = new(pair[1]);
    }

    private static long Raw(OneLane lane) => BitConverter.DoubleToInt64Bits(lane.only);

    private static OneLane Bitwise(long bits) => new(BitConverter.Int64BitsToDouble(bits));
}
