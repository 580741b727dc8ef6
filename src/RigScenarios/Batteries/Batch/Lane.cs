using System.Runtime.CompilerServices;

namespace RigScenarios.Batteries.Batch;

/// <summary>One lane of some.</summary>
internal static class Lane
{
    /// <summary>A condition that holds: all bits set.</summary>
    public static readonly double Holds = BitConverter.Int64BitsToDouble(-1);

    /// <summary>Sets the number in a lane.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Set<T>(ref T lanes, int lane, double value) where T : unmanaged, ILanes<T> =>
        Unsafe.Add(ref Unsafe.As<T, double>(ref lanes), lane) = value;

    /// <summary>The number in a lane.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Get<T>(in T lanes, int lane) where T : unmanaged, ILanes<T> =>
        Unsafe.Add(ref Unsafe.As<T, double>(ref Unsafe.AsRef(in lanes)), lane);
}
