using UnitsNet;

namespace RigScenarios.Balance;

/// <summary>
/// How a part is turned against what carries it. Yaw comes first, then pitch about the new y axis, then roll about the newest x
/// axis, each by the
/// right-hand rule: the part's axes are the columns of Rz(yaw)·Ry(pitch)·Rx(roll).
/// </summary>
/// <param name="Yaw">Above zero: the nose turns left.</param>
/// <param name="Pitch">Above zero: nose down.</param>
/// <param name="Roll">Above zero: the left side comes up.</param>
public readonly record struct Orientation(Angle Yaw, Angle Pitch, Angle Roll)
{
    /// <summary>Not turned.</summary>
    public static Orientation Straight { get; } = new(Angle.Zero, Angle.Zero, Angle.Zero);

    internal RotationMatrix RotationMatrix => RotationMatrix.From(Yaw.Radians, Pitch.Radians, Roll.Radians);
}
