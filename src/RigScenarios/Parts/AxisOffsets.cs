using UnitsNet;

namespace RigScenarios.Parts;

/// <summary>How far one point lies from another along three axes: those of the rig, or of a part. Below zero: backward, right,
/// down.</summary>
/// <param name="Forward">Along the lens.</param>
/// <param name="Left">To the camera's left.</param>
/// <param name="Up">Upward.</param>
public sealed record AxisOffsets(Length Forward, Length Left, Length Up)
{
    /// <summary>No way at all.</summary>
    public static AxisOffsets None { get; } = new(Length.Zero, Length.Zero, Length.Zero);
}
