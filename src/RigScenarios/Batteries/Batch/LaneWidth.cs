using System.Runtime.Intrinsics;

namespace RigScenarios.Batteries.Batch;

/// <summary>How many cases stand side by side.</summary>
internal enum LaneWidth
{
    /// <summary>One: scalar numbers.</summary>
    One,

    /// <summary>Four: 256 bits.</summary>
    Four,

    /// <summary>Eight: 512 bits.</summary>
    Eight,
}

/// <summary>The widths of this machine.</summary>
internal static class LaneWidths
{
    /// <summary>The widest that this machine has vectors for.</summary>
    public static LaneWidth Widest => Vector512.IsHardwareAccelerated ? LaneWidth.Eight
        : Vector256.IsHardwareAccelerated ? LaneWidth.Four : LaneWidth.One;
}
