using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace RigScenarios.Batteries.Batch;

/// <summary>How far something is from its limit at the start, in the middle and at the end of a step; above 0 before
/// it.</summary>
[StructLayout(LayoutKind.Sequential)]
internal readonly struct LaneGaps<T>(T first, T middle, T last) where T : unmanaged, ILanes<T>
{
    /// <summary>At the end.</summary>
    public T Last => last;

    /// <summary>The least of the three.</summary>
    public T Least => T.Lower(T.Lower(first, middle), last);

    /// <summary>Where the least is small against the range of the three: a parabola through them may reach zero.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Close(T part)
    {
        var least = Least;
        var most = T.Higher(T.Higher(first, middle), last);
        return T.UpTo(least, (most - least) * part);
    }

    /// <summary>The first zero of the parabola through the three, as a part of the step; also somewhat beyond it. Infinite where
    /// there is none ahead.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T FirstRoot()
    {
        var none = T.Of(0);
        var bend = ((first - middle) + (last - middle)) * T.Of(2);
        var slope = (last - first) - bend;
        var discriminant = (slope * slope) - (first * bend * T.Of(4));
        var below = T.Root(T.Higher(discriminant, none)) - slope;
        var root = (first + first) / below;
        var isThere = T.UpTo(none, discriminant) & T.Below(none, below);
        return T.Choose(T.UpTo(first, none), none, T.Choose(isThere, root, T.Of(double.PositiveInfinity)));
    }
}
